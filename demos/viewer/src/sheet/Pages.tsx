import { For, Show } from 'solid-js';
import type { PagesPicture } from '../engine/pictures.js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';
import { PagesDrawn } from './PagesDrawn.jsx';
import { createPages } from './pages-asked.js';

/** The pages that the large sheet is cut into: not the cover, nor the lists. */
export const tilesOf = ({ pages }: PagesPicture) => pages.filter(p => p.kind === 'tile');

/** A live picture of the pages, while it is in sight: the large sheet, cut apart as it will come out. */
export function Pages(props: { readonly garment: Garment; readonly paper: string }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  let place: HTMLDivElement | undefined;
  const { picture, refused } = createPages(
    garment,
    () => props.paper,
    () => place!,
  );
  /** Nothing where all lies elsewhere than on tiles. */
  const tiled = () => {
    const pages = picture();
    return pages && tilesOf(pages).length > 0 ? pages : undefined;
  };
  return (
    <div ref={place} class="pages">
      <Show when={refused()}>
        <p class="came fault">▲ {refused()}</p>
      </Show>
      <Show when={tiled()}>
        {shown => (
          <>
            <p class="came" role="status">
              {shown().pages.length} {say().pagesOn} {shown().paper.toUpperCase()}
            </p>
            <PagesDrawn
              garment={garment}
              tiles={tilesOf(shown())}
              pieces={shown().pieces}
              label={`${tilesOf(shown()).length} ${say().pagesOn} ${shown().paper}`}
            />
            <For each={shown().findings.filter(f => f.severity !== 'note')}>
              {finding => (
                <p class="came care">
                  ▲ {finding.message} {finding.remedy}
                </p>
              )}
            </For>
          </>
        )}
      </Show>
    </div>
  );
}
