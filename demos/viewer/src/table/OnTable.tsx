import { Match, Switch } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { PagesLaid, SewnSoFar } from './Answered.jsx';
import { ClothsLaid, placedCloths } from './Cloths.jsx';
import { Lying } from './Lying.jsx';
import type { Showing } from './showing.js';
import { WalkedPieces } from './WalkedPieces.jsx';
import { WholeGarment } from './Whole.jsx';

/** What is drawn on the table: the seam that is walked, else the garment seen whole, else the pieces. */
export function OnTable(props: { readonly garment: Garment; readonly showing: Showing }) {
  const { garment } = props;
  const { camera, scale, room, layout, ghosts, held, station, touching } = props.showing;
  return (
    <svg
      class="lying"
      width="100%"
      height="100%"
      aria-hidden="true"
      style={{ transform: `translate(${camera().x}px, ${camera().y}px)` }}
    >
      <g transform={`scale(${scale()})`}>
        <Switch
          fallback={
            <Lying
              garment={garment}
              layout={layout}
              scale={scale()}
              ghosts={ghosts()}
              held={held()}
              isTouched={touching.isTouched}
            />
          }
        >
          <Match when={garment.walk()}>
            {walk => (
              <WalkedPieces walk={walk()} station={station()} pieces={layout.pieces()} scale={scale()} />
            )}
          </Match>
          <Match when={garment.reading() === 'cloth' && placedCloths(garment.cloths() ?? [], room())}>
            {placed => <ClothsLaid placed={placed()} scale={scale()} />}
          </Match>
          <Match when={garment.reading() === 'away' && garment.pages()}>
            <PagesLaid garment={garment} />
          </Match>
          <Match when={garment.sewn()}>{sewn => <SewnSoFar garment={garment} sewn={sewn()} />}</Match>
          <Match when={garment.whole()}>{seen => <WholeGarment whole={seen()} ghosts={ghosts()} />}</Match>
        </Switch>
      </g>
    </svg>
  );
}
