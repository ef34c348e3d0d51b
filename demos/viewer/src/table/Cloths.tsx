import { For, Show } from 'solid-js';
import type { LaidCloth } from '../engine/pictures.js';
import type { Box } from '../engine/view.js';
import type { Room } from './room.js';

/** mm between cloths that lie side by side or one below the other, and under one for its name. */
const gap = 160,
  nameRoom = 60;

/** px that a letter of a title takes, across and down. */
const letter = 9,
  line = 22;

/** Cloths as they lie on the table, and all that they take of it. */
export interface PlacedCloths {
  readonly cloths: readonly { readonly cloth: LaidCloth; readonly left: number; readonly top: number }[];
  readonly box: Box;
}

/** The cloths that pieces could be laid on, side by side or one below the other: whichever shows them larger. */
export function placedCloths(all: readonly LaidCloth[], { width, height }: Room): PlacedCloths | undefined {
  const laid = all.filter(c => !c.isTooNarrow);
  if (laid.length === 0) return undefined;
  const scaleOf = ({ box }: PlacedCloths) => Math.min(width / box[2], height / box[3]);
  const [row, column] = [inRow(laid), inColumn(laid)];
  return scaleOf(row) >= scaleOf(column) ? row : column;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

function inRow(laid: readonly LaidCloth[]): PlacedCloths {
  const left = (i: number) => sum(laid.slice(0, i).map(c => c.acrossMm + gap));
  return {
    cloths: laid.map((cloth, i) => ({ cloth, left: left(i), top: 0 })),
    box: [0, 0, left(laid.length) - gap, Math.max(...laid.map(c => c.lengthMm)) + nameRoom],
  };
}

function inColumn(laid: readonly LaidCloth[]): PlacedCloths {
  const top = (i: number) => sum(laid.slice(0, i).map(c => c.lengthMm + gap));
  return {
    cloths: laid.map((cloth, i) => ({ cloth, left: 0, top: top(i) })),
    box: [0, 0, Math.max(...laid.map(c => c.acrossMm)), top(laid.length) - gap + nameRoom],
  };
}

const holds = (title: string, width: number, height: number, scale: number): boolean =>
  width * scale > title.length * letter && height * scale > line;

/** The titles of pieces too small to carry them, to be said beside the cloth's name. */
function untitled({ cut }: LaidCloth, scale: number): readonly string[] {
  const small = cut.filter(({ title, width, height }) => !holds(title, width, height, scale));
  return small.length === 0 ? [] : [[...new Set(small.map(c => c.title))].join(', ')];
}

/** Each cloth under what is cut of it. */
export function ClothsLaid(props: { readonly placed: PlacedCloths; readonly scale: number }) {
  return (
    <g class="cloths">
      <For each={props.placed.cloths}>
        {({ cloth, left, top }) => (
          <g transform={`translate(${left} ${top})`}>
            <rect class="cloth" width={cloth.acrossMm} height={cloth.lengthMm} />
            <For each={cloth.cut}>
              {({ path, title, middle, width, height }) => (
                <>
                  <path class="paper" d={path} />
                  <Show when={holds(title, width, height, props.scale)}>
                    <text transform={`translate(${middle.join(' ')}) scale(${1 / props.scale})`}>
                      {title}
                    </text>
                  </Show>
                </>
              )}
            </For>
            <text class="name" transform={`translate(0 ${cloth.lengthMm}) scale(${1 / props.scale})`} y="20">
              {[cloth.name, ...untitled(cloth, props.scale)].join(': ')}
            </text>
          </g>
        )}
      </For>
    </g>
  );
}
