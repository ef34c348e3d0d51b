import { For, Show } from 'solid-js';
import type { Part, PieceView } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';

/** Girths as level lines across a piece, the body's own measure beside each. */
export function Levels(props: {
  readonly garment: Garment;
  readonly piece: PieceView;
  readonly scale: number;
  /** Stands its words upright. */
  readonly upright: string;
}) {
  const girth = ({ name }: Part) => props.garment.engine.view()?.girths.find(g => g.level === name);
  const levels = () => props.piece.parts.filter(p => p.kind === 'line' && p.sort === 'level');
  const say = () => pageWords[props.garment.language()];
  return (
    <For each={levels()}>
      {line => (
        <Show when={girth(line)}>
          {row => (
            <>
              <path class="read" d={line.path} />
              <g
                class="girth"
                transform={`translate(${props.piece.box[0]} ${heightOf(line)}) scale(${1 / props.scale}) ${props.upright}`}
              >
                <text x="10" y="-6">
                  {row().text}
                </text>
                <text x="10" y="15" class="small">
                  {say().body} {row().body}, {row().detail}
                </text>
              </g>
            </>
          )}
        </Show>
      )}
    </For>
  );
}

/** How far down a level line begins. */
const heightOf = ({ path }: Part): number => Number(/^M\S+?[ ,](\S+?)(?=[ LC]|$)/.exec(path)?.[1] ?? 0);
