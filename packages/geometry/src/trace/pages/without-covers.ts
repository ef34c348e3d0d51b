import { goesOnBeyond, type Laid } from './grid.js';
import { prepared } from './laid-by-themselves.js';
import type { DrawnPage } from './page.js';

/** Pages as they were laid, and how many of all they are. */
export interface LaidPages<L extends Laid> {
  readonly laid: L;
  readonly pages: readonly DrawnPage[];
}

/**
 * Pages laid with all of them; or without blank ones, or without those at the beginning on which no line goes on beyond
 * the page, a cover's and the instructions', where more lines run on then.
 */
export function withoutCovers<L extends Laid>(
  pages: readonly DrawnPage[],
  lay: (pages: readonly DrawnPage[]) => L | undefined,
): LaidPages<L> | undefined {
  const drawn = pages.filter(page => page.drawing.lines.length > 0);
  const first = prepared(drawn).findIndex(goesOnBeyond);
  const begins = Array.from({ length: Math.max(0, first) + 1 }, (_, k) => drawn.slice(k));
  let best: LaidPages<L> | undefined;
  for (const own of [pages, ...begins]) {
    if (own.length < 2 || own.length === best?.pages.length) continue;
    const laid = lay(own);
    if (!laid || (best && laid.joins <= best.laid.joins)) continue;
    best = { laid, pages: own };
    // Where every line runs on, no page is one too many.
    if (2 * laid.joins === laid.ends) break;
  }
  return best;
}
