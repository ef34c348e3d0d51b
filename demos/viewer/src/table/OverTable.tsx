import { Show } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';
import { Corner } from './Corner.jsx';
import { pxPerMm } from './camera.js';
import { Handles } from './Handles.jsx';
import { ListView } from './ListView.jsx';
import { Measure } from './Measure.jsx';
import { Shelf } from './Shelf.jsx';
import { Slip } from './Slip.jsx';
import type { Showing } from './showing.js';
import { Walking } from './Walking.jsx';

/** What lies over the drawing: handles and measurements, the corner's words, the shelf, the foot of a walk, a slip. */
export function OverTable(props: { readonly garment: Garment; readonly showing: Showing }) {
  const { garment } = props;
  const { camera, layout, touching, hold, ghosts, turnGhosts, shelf, setShelf } = props.showing;
  const { pieces, lieOf } = layout;
  return (
    <>
      <ListView garment={garment} pieces={pieces()} onTouch={touching.touch} />
      <Measure garment={garment} camera={camera()} lieOf={lieOf} />
      <Show when={!garment.walk() && !garment.whole() && !garment.measuring() && !garment.answers()}>
        <Handles garment={garment} camera={camera()} lieOf={lieOf} onDrag={hold} />
      </Show>
      <Corner
        garment={garment}
        ghosts={ghosts()}
        onGhosts={turnGhosts}
        shelf={shelf()}
        onShelf={() => setShelf(s => !s)}
      />
      <Show when={shelf()}>
        <Shelf garment={garment} onDone={() => setShelf(false)} />
      </Show>
      <p class="scale">
        {pageWords[garment.language()].squares}, 1 : {(pxPerMm / camera().scale).toFixed(1)}
      </p>
      <WalkOrSlip garment={garment} showing={props.showing} />
    </>
  );
}

/** While a seam is walked, the foot of the walk; else the slip of what was touched. */
function WalkOrSlip(props: { readonly garment: Garment; readonly showing: Showing }) {
  const { garment } = props;
  const { layout, touching, station, setStation } = props.showing;
  return (
    <Show
      when={garment.walk()}
      fallback={
        <Show when={garment.touched()}>
          {thing => (
            <Slip
              garment={garment}
              thing={thing()}
              at={touching.slipAt()}
              piece={layout.pieces().find(p => p.name === thing().piece)}
              layout={layout}
            />
          )}
        </Show>
      }
    >
      {walk => (
        <Walking
          garment={garment}
          walk={walk()}
          station={Math.min(station(), walk().stations.length - 1)}
          onStation={setStation}
          onDone={() => garment.setWalking(undefined)}
        />
      )}
    </Show>
  );
}
