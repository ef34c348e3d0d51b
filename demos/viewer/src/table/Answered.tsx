import { For, Index, Show } from 'solid-js';
import type { LaidCloth, Sewn } from '../engine/pictures.js';
import type { Box } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { tilesOf } from '../sheet/Pages.jsx';
import { boxOfPages, PagesInk } from '../sheet/PagesDrawn.jsx';

/** mm between cloths that lie side by side, and under one for its name. */
const gap = 160,
  nameRoom = 60;

/** px that a letter of a title takes, across and down. */
const letter = 9,
  line = 22;

const holds = (title: string, width: number, height: number, scale: number): boolean =>
  width * scale > title.length * letter && height * scale > line;

/** The titles of pieces too small to carry them, to be said beside the cloth's name. */
function untitled({ cut }: LaidCloth, scale: number): readonly string[] {
  const small = cut.filter(({ title, width, height }) => !holds(title, width, height, scale));
  return small.length === 0 ? [] : [[...new Set(small.map(c => c.title))].join(', ')];
}

/** Where a cloth lies, from the left. */
const leftOf = (cloths: readonly LaidCloth[], i: number): number =>
  cloths.slice(0, i).reduce((left, c) => left + c.acrossMm + gap, 0);

/** Cloths that pieces could be laid on. */
const laidOf = (cloths: readonly LaidCloth[]) => cloths.filter(c => !c.isTooNarrow);

export function boxOfCloths(cloths: readonly LaidCloth[]): Box | undefined {
  const laid = laidOf(cloths);
  if (laid.length === 0) return undefined;
  return [0, 0, leftOf(laid, laid.length) - gap, Math.max(...laid.map(c => c.lengthMm)) + nameRoom];
}

/** The cloths side by side, each under what is cut of it. */
export function ClothsLaid(props: { readonly cloths: readonly LaidCloth[]; readonly scale: number }) {
  const laid = () => laidOf(props.cloths);
  return (
    <g class="cloths">
      <For each={laid()}>
        {(cloth, i) => (
          <g transform={`translate(${leftOf(laid(), i())} 0)`}>
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
            <text
              class="name"
              transform={`translate(${cloth.acrossMm / 2} ${cloth.lengthMm}) scale(${1 / props.scale})`}
              y="26"
            >
              {[cloth.name, ...untitled(cloth, props.scale)].join(': ')}
            </text>
          </g>
        )}
      </For>
    </g>
  );
}

/** The pages, cut apart as they will come out. */
export function PagesLaid(props: { readonly garment: Garment }) {
  return (
    <Show when={props.garment.pages()}>
      {pages => (
        <g class="pages">
          <PagesInk garment={props.garment} tiles={tilesOf(pages())} pieces={pages().pieces} />
        </g>
      )}
    </Show>
  );
}

export const boxOfLaidPages = (garment: Garment): Box | undefined => {
  const tiles = tilesOf(garment.pages() ?? { paper: '', pages: [], pieces: [], findings: [] });
  return tiles.length > 0 ? boxOfPages(tiles.map(t => t.window)) : undefined;
};

/** What a job of the making is done to, joined as far as it is by then. */
export function SewnSoFar(props: { readonly garment: Garment; readonly sewn: Sewn }) {
  const view = (name: string) => props.garment.engine.view()?.pieces.find(p => p.name === name);
  return (
    <g class="sewn">
      <Index each={props.sewn.pieces}>{piece => <path class="paper" d={piece().path} />}</Index>
      <Index each={props.sewn.pieces}>
        {piece => (
          <g transform={`matrix(${piece().matrix.join(' ')})`}>
            <For
              each={view(piece().piece)?.parts.filter(p =>
                props.sewn.lit.includes(`${piece().piece}.${p.name}`),
              )}
            >
              {part => <path class="lit" d={part.path} />}
            </For>
          </g>
        )}
      </Index>
    </g>
  );
}

export function boxOfSewn({ pieces }: Sewn): Box | undefined {
  if (pieces.length === 0) return undefined;
  const right = Math.max(...pieces.map(p => p.box[0] + p.box[2])),
    bottom = Math.max(...pieces.map(p => p.box[1] + p.box[3]));
  return [0, 0, right, bottom];
}
