import { createEffect, createSignal, onCleanup } from 'solid-js';

/** ms that a whole seam takes to be walked. */
const wholeWalk = 6000;

/** A walk that goes on by itself to the last station; from the last it begins again. */
export function createPlaying(walk: {
  readonly station: () => number;
  readonly last: () => number;
  readonly goTo: (station: number) => void;
}) {
  const { station, last, goTo } = walk;
  const [playing, setPlaying] = createSignal(false);
  createEffect(() => {
    if (!playing()) return;
    const from = station() >= last() ? 0 : station();
    const begun = performance.now() - (from / last()) * wholeWalk;
    let frame = requestAnimationFrame(function go() {
      const share = Math.min(1, (performance.now() - begun) / wholeWalk);
      goTo(Math.round(share * last()));
      if (share < 1) frame = requestAnimationFrame(go);
      else setPlaying(false);
    });
    onCleanup(() => cancelAnimationFrame(frame));
  });
  return { playing, setPlaying };
}
