import { For } from 'solid-js';
import type { PieceView } from '../engine/view.js';
import { placesOf } from './places.js';

/** The pieces as a projector throws them: cut edges and what lies on them, without marks to be touched. */
export function Projected(props: {
  readonly pieces: readonly PieceView[];
  readonly at: readonly [number, number];
  readonly scale: number;
  readonly turnedOver: boolean;
}) {
  const places = () => placesOf(props.pieces);
  const across = () => (props.turnedOver ? -props.scale : props.scale);
  return (
    <g transform={`translate(${props.at.join(' ')}) scale(${across()} ${props.scale})`}>
      <For each={props.pieces}>
        {piece => (
          <g transform={`translate(${(places().get(piece.name) ?? [0, 0]).join(' ')})`}>
            <path class="cut" d={piece.cutting} />
            <For each={piece.parts.filter(p => p.kind !== 'mark')}>
              {part => <path class={part.kind} d={part.path} />}
            </For>
          </g>
        )}
      </For>
    </g>
  );
}
