import { createEffect, createRoot, on } from 'solid-js';
import type { Handle } from '../engine/view.js';
import { figureInSheet } from '../table/handle-figures.js';
import type { Garment } from './garment.js';
import { withValue } from './written.js';

/** ms that a step takes as the scissors do it; how many pictures of it there are at most. */
const long = 900,
  pictures = 30;

/** The figure by which a step can be played: the first that says how much. */
export const playable = (garment: Garment, step: number): Handle | undefined =>
  garment.engine.held().handles.find(h => h.step === step && !h.isPlace && h.value !== 0);

/** Plays a step from nothing to all of its figure: a dart swings shut on its hinge, a hem is cut and drops. */
export function play(garment: Garment, handle: Handle): Promise<void> {
  const written = garment.unitWritten();
  const verb = garment.steps()[handle.step]?.verb;
  const text = garment.history.now();
  if (verb === undefined) return Promise.resolve();
  const least = Math.max(handle.least, 0);
  const shown = (share: number) => {
    const figure = Math.max(handle.value * share, least);
    return withValue(
      text,
      ['steps', handle.step, verb, ...handle.way],
      figureInSheet(handle, Number(figure.toFixed(4)), written),
    );
  };
  const begun = performance.now();
  return new Promise(resolve =>
    createRoot(dispose => {
      let count = 0;
      const next = () => {
        const share = Math.min(1, (performance.now() - begun) / long);
        // Somebody wrote meanwhile: what is played would be of another sheet.
        if (share >= 1 || ++count > pictures || garment.history.now() !== text) {
          garment.setPlayed(undefined);
          dispose();
          resolve();
        } else garment.setPlayed(shown(share));
      };
      garment.setPlayed(shown(0));
      createEffect(on(garment.engine.view, () => requestAnimationFrame(next), { defer: true }));
    }),
  );
}
