import { createSignal } from 'solid-js';
import { pxPerMm } from './camera.js';

const keptUnder = 'paperhinge-projector';

/** A private window may forbid it. */
const remembered = (): number => {
  try {
    return Number(localStorage.getItem(keptUnder)) || pxPerMm;
  } catch {
    return pxPerMm;
  }
};
const remember = (scale: number): void => {
  try {
    localStorage.setItem(keptUnder, String(scale));
  } catch {
    // A private window keeps nothing: it is set again next time.
  }
};

/** The projector's px a mm, as it was set last; where it never was, a screen's. */
export function createProjectorScale() {
  const [scale, setScale] = createSignal(remembered());
  const set = (to: number): void => {
    setScale(to);
    remember(to);
  };
  return { scale, set, grow: (by: number) => set(scale() * by) };
}
