import { For, Show } from 'solid-js';
import type { Part, PieceView } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';

/** px across a piece that the words of a girth need; where there are less, only what it has more than the body is said. */
const wordsRoom = 160;

/** Girths as level lines across a piece, the body's own measure beside each. */
export function Levels(props: {
  readonly garment: Garment;
  readonly piece: PieceView;
  readonly scale: number;
  /** Stands its words upright. */
  readonly upright: string;
}) {
  const girth = ({ name }: Part) => props.garment.engine.proof()?.girths.find(g => g.level === name);
  const levels = () => props.piece.parts.filter(isLevel);
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
                <Show
                  when={props.piece.box[2] * props.scale > wordsRoom}
                  fallback={
                    <text x="4" y="15" class="small">
                      {props.garment.engine.proved(row().detail)}
                    </text>
                  }
                >
                  <text x="10" y="-6">
                    {props.garment.engine.proved(row().text)}
                  </text>
                  <text x="10" y="15" class="small">
                    {say().body} {row().body}, {props.garment.engine.proved(row().detail)}
                  </text>
                </Show>
              </g>
            </>
          )}
        </Show>
      )}
    </For>
  );
}

const isLevel = ({ kind, sort }: Part): boolean => kind === 'line' && sort === 'level';
export const hasLevels = ({ parts }: PieceView): boolean => parts.some(isLevel);

/** How far down a level line begins. */
const heightOf = ({ path }: Part): number => Number(/^M\S+?[ ,](\S+?)(?=[ LC]|$)/.exec(path)?.[1] ?? 0);
