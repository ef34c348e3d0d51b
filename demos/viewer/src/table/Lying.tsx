import { Index, Show } from 'solid-js';
import type { PieceView } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { Drawn } from './Drawn.jsx';
import { hasLevels, Levels } from './Levels.jsx';
import type { Layout } from './layout.js';
import { inSvg, upright } from './lie.js';

/** The pieces as they lie on the table, before as a ghost under after; while the hand holds a figure, the ghost is what it took hold of. */
export function Lying(props: {
  readonly garment: Garment;
  readonly layout: Layout;
  readonly scale: number;
  readonly ghosts: boolean;
  readonly held: ReadonlyMap<string, string> | undefined;
  readonly isTouched: (piece: string, name?: string) => boolean;
}) {
  const heldGhost = ({ name, stitching }: PieceView) => {
    const had = props.held?.get(name);
    return had === stitching ? undefined : had;
  };
  return (
    <Index each={props.layout.pieces()}>
      {piece => (
        <g transform={inSvg(props.layout.lieOf(piece().name))}>
          <Show when={!props.held && props.ghosts && piece().before}>
            {ghost => <path class="ghost" d={ghost()} />}
          </Show>
          <Drawn
            piece={piece()}
            scale={props.scale}
            upright={upright(props.layout.lieOf(piece().name))}
            titleBelow={props.garment.reading() === 'for-whom' && hasLevels(piece())}
            onGrab={event => props.layout.moving.grab(event, piece().name)}
            isTouched={name => props.isTouched(piece().name, name)}
            isLit={name => props.garment.lit()?.has(`${piece().name}.${name}`) ?? false}
          />
          <Show when={props.garment.reading() === 'for-whom'}>
            <Levels
              garment={props.garment}
              piece={piece()}
              scale={props.scale}
              upright={upright(props.layout.lieOf(piece().name))}
            />
          </Show>
          <Show when={heldGhost(piece())}>{ghost => <path class="ghost" d={ghost()} />}</Show>
        </g>
      )}
    </Index>
  );
}
