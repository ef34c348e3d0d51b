import { type Accessor, createEffect, createSignal, on, onCleanup, onMount } from 'solid-js';
import type { PagesPicture } from '../engine/view.js';
import type { Garment } from '../job/garment.js';

/** ms of quiet before pages are laid out again. */
const quiet = 350;

/** Whether an element is in sight. */
function createInSight(element: () => HTMLElement): Accessor<boolean> {
  const [seen, setSeen] = createSignal(false);
  onMount(() => {
    const watch = new IntersectionObserver(([entry]) => setSeen(entry!.isIntersecting));
    watch.observe(element());
    onCleanup(() => watch.disconnect());
  });
  return seen;
}

/** The pages on a paper, laid out anew after each change while their place is in sight; or why there are none. */
export function createPages(garment: Garment, paper: Accessor<string>, place: () => HTMLElement) {
  const seen = createInSight(place);
  const [picture, setPicture] = createSignal<PagesPicture>();
  const [refused, setRefused] = createSignal('');
  let asked = 0;
  createEffect(
    on([seen, garment.engine.view, paper], ([isSeen, view, wanted]) => {
      if (!isSeen || !view) return;
      const mine = ++asked;
      const timer = setTimeout(async () => {
        const answer = await garment.engine.pages(wanted);
        if (mine !== asked) return;
        setPicture('pages' in answer ? answer.pages : undefined);
        setRefused('refused' in answer ? answer.refused : '');
      }, quiet);
      onCleanup(() => clearTimeout(timer));
    }),
  );
  return { picture, refused };
}
