import { For, Index, Show } from 'solid-js';
import type { Sewn } from '../engine/pictures.js';
import type { Box } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { tilesOf } from '../sheet/Pages.jsx';
import { boxOfPages, PagesInk } from '../sheet/PagesDrawn.jsx';

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
