import { type Accessor, createSignal, onCleanup, onMount } from 'solid-js';

/** Whether an element is in sight. */
export function createInSight(element: () => HTMLElement): Accessor<boolean> {
  const [seen, setSeen] = createSignal(false);
  onMount(() => {
    const watch = new IntersectionObserver(([entry]) => setSeen(entry!.isIntersecting));
    watch.observe(element());
    onCleanup(() => watch.disconnect());
  });
  return seen;
}
