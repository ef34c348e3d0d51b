import { compose, inverse } from '@paperhinge/geometry/plane';
import { For, Match, Switch } from 'solid-js';
import type { Walk } from '../engine/pictures.js';
import type { Part, Touched } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';
import type { Layout } from './layout.js';
import { type Lie, turnedBy, turnedOver } from './lie.js';
import { spacedName } from './slip-words.js';

/** How the table's things can be laid: a piece turned, another laid to an edge where they are sewn together. */
export function LayDown(props: {
  readonly garment: Garment;
  readonly thing: Touched;
  readonly part: Part | undefined;
  readonly layout: Layout;
}) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const turn = (piece: string, about: (place: readonly [number, number]) => Lie) =>
    props.layout.moving.move(piece, about(props.layout.middleOf(piece)));
  const layBack = () => {
    garment.setTouched(undefined);
    props.layout.moving.clear();
  };
  const layToIt = async (seam: string, piece: string) => {
    garment.setTouched(undefined);
    const walk = await garment.engine.walk(seam);
    const other = walk && laidTo(walk, piece);
    if (other) props.layout.lay(other.piece, compose(other.onto, props.layout.lieOf(piece)));
  };
  return (
    <Switch>
      <Match when={props.thing.kind === 'piece' && props.thing.piece}>
        {piece => (
          <>
            <li>
              <button type="button" onClick={() => turn(piece(), place => turnedBy(90, place))}>
                {say().turnQuarter}
              </button>
            </li>
            <li>
              <button type="button" onClick={() => turn(piece(), turnedOver)}>
                {say().turnOver}
              </button>
            </li>
          </>
        )}
      </Match>
      <Match when={props.thing.kind === 'table' && props.layout.moving.hasMoved()}>
        <li>
          <button type="button" onClick={layBack}>
            {say().layBack}
          </button>
        </li>
      </Match>
      <Match when={props.thing.kind === 'edge' && props.thing.piece}>
        {piece => (
          <For each={props.part?.seams}>
            {seam => (
              <li>
                <button type="button" onClick={() => layToIt(seam, piece())}>
                  {say().layToIt}: {spacedName(seam)}
                </button>
              </li>
            )}
          </For>
        )}
      </Match>
    </Switch>
  );
}

/** The piece that is sewn to one in the middle of their seam, and what carries it into that one's own mm. */
function laidTo(
  { stations }: Walk,
  piece: string,
): { readonly piece: string; readonly onto: Lie } | undefined {
  const shared = stations.filter(s => s.a !== s.b && (s.a === piece || s.b === piece));
  const middle = shared[Math.floor(shared.length / 2)];
  if (!middle) return undefined;
  const [a, b, c, d, e, f] = middle.matrix;
  const onto = { a, b, c, d, e, f };
  return middle.a === piece ? { piece: middle.b, onto } : { piece: middle.a, onto: inverse(onto) };
}
