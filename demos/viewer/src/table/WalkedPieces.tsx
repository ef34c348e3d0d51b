import { Show } from 'solid-js';
import type { Walk } from '../engine/pictures.js';
import type { Box, PieceView } from '../engine/view.js';
import { Drawn } from './Drawn.jsx';

/** Room round a piece for another that rolls along it. */
export const around = ([x, y, width, height]: Box): Box => {
  const more = Math.max(width, height) * 0.6;
  return [x - more, y - more / 4, width + 2 * more, height + more / 2];
};

/** px: the ring at the stitch that is being sewn. */
const ring = 7;

/** Two pieces of a seam at one stitch of it: the one lies, the other has rolled along it so far. */
export function WalkedPieces(props: {
  readonly walk: Walk;
  readonly station: number;
  readonly pieces: readonly PieceView[];
  readonly scale: number;
}) {
  const at = () => props.walk.stations[Math.min(props.station, props.walk.stations.length - 1)];
  const piece = (name: string | undefined) => props.pieces.find(p => p.name === name);
  const never = () => false;
  return (
    <Show when={at()}>
      {here => (
        <>
          <Show when={piece(here().a)}>
            {a => <Drawn piece={a()} scale={props.scale} isTouched={never} isLit={never} />}
          </Show>
          <g transform={`matrix(${here().matrix.join(' ')})`} class="rolling">
            <Show when={piece(here().b)}>
              {b => <Drawn piece={b()} scale={props.scale} isTouched={never} isLit={never} untitled />}
            </Show>
          </g>
          <circle class="stitch-ring" cx={here().at[0]} cy={here().at[1]} r={ring / props.scale} />
        </>
      )}
    </Show>
  );
}
