import { createEffect, createSignal, For, on, onCleanup, onMount, Show } from 'solid-js';
import type { PagesPicture } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';

/** ms of quiet before pages are laid out again. */
const quiet = 350;

/** A live picture of the pages, while it is in sight: the large sheet, cut apart as it will come out. */
export function Pages(props: { readonly garment: Garment; readonly paper: string }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const [seen, setSeen] = createSignal(false);
  const [picture, setPicture] = createSignal<PagesPicture>();
  const [refused, setRefused] = createSignal('');
  let place: HTMLDivElement | undefined;
  onMount(() => {
    const watch = new IntersectionObserver(([entry]) => setSeen(entry!.isIntersecting));
    watch.observe(place!);
    onCleanup(() => watch.disconnect());
  });
  let asked = 0;
  createEffect(
    on([seen, garment.engine.view, () => props.paper], ([isSeen, view, paper]) => {
      if (!isSeen || !view) return;
      const mine = ++asked;
      const timer = setTimeout(async () => {
        const answer = await garment.engine.pages(paper);
        if (mine !== asked) return;
        setPicture('pages' in answer ? answer.pages : undefined);
        setRefused('refused' in answer ? answer.refused : '');
      }, quiet);
      onCleanup(() => clearTimeout(timer));
    }),
  );
  const cutting = (name: string) => garment.engine.view()?.pieces.find(p => p.name === name)?.cutting;
  const tiles = () => picture()?.pages.filter(p => p.kind === 'tile') ?? [];
  const box = () => {
    const windows = tiles().map(p => p.window);
    const x = Math.min(...windows.map(w => w[0])),
      y = Math.min(...windows.map(w => w[1]));
    const right = Math.max(...windows.map(w => w[0] + w[2])),
      bottom = Math.max(...windows.map(w => w[1] + w[3]));
    return `${x - 8} ${y - 8} ${right - x + 16} ${bottom - y + 16}`;
  };
  return (
    <div ref={place} class="pages">
      <Show when={refused()}>
        <p class="came fault">▲ {refused()}</p>
      </Show>
      <Show when={picture() && tiles().length > 0 && picture()}>
        {shown => (
          <>
            <p class="came" role="status">
              {shown().pages.length} {say().pagesOn} {shown().paper.toUpperCase()}
            </p>
            <svg
              viewBox={box()}
              role="img"
              aria-label={`${tiles().length} ${say().pagesOn} ${shown().paper}`}
            >
              <For each={tiles()}>
                {page => (
                  <rect
                    class="tile"
                    x={page.window[0]}
                    y={page.window[1]}
                    width={page.window[2]}
                    height={page.window[3]}
                  />
                )}
              </For>
              <For each={shown().pieces}>
                {placed => (
                  <path
                    class="placed"
                    d={cutting(placed.piece)}
                    transform={`matrix(${placed.matrix.join(' ')})`}
                  />
                )}
              </For>
              <For each={tiles()}>
                {page => (
                  <text x={page.window[0] + page.window[2] / 2} y={page.window[1] + page.window[3] / 2 + 18}>
                    {page.label}
                  </text>
                )}
              </For>
            </svg>
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
