import type { Grey } from './picture.js';
import { inTone, type SeenTarget } from './read-target.js';
import { type PrintedStretch, seenSheets } from './seen-sheets.js';
import { solved } from './solve.js';

/** Figures in step with light, and those of most screens. */
const [even, screen] = [1, 2.2];
/** No camera's figures lie beyond. */
const mostTone = 2.8;

/**
 * How a picture's figures grow with light, as an exponent: light = figure ^ tone. A lens blurs light; where figures are
 * not in step with light every soft edge seems to lie nearer to the dark than it does. The tone is the one with which
 * the targets, whose distances are known, come out as large as they are. Spread ink of 0.05 mm is taken for 0.2 of it,
 * which moves no edge by more than the ink did.
 */
export function toneOf(grey: Grey, targets: readonly SeenTarget[], printed: PrintedStretch): number {
  const spread = (tone: number) =>
    solved([
      {
        ...grey,
        sheets: seenSheets(
          targets.map(t => inTone(grey, t, tone)),
          printed,
        ),
      },
    ])?.bleed;
  const [a, b] = [spread(even), spread(screen)];
  if (a === undefined || b === undefined || a === b) return even;
  return Math.min(mostTone, Math.max(even, even + ((screen - even) * a) / (a - b)));
}
