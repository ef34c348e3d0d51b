import { goesOnBeyond, type Laid } from './grid.js';
import { prepared } from './laid-by-themselves.js';
import type { DrawnPage } from './page.js';

/** Pages as they were laid, and how many of all they are. */
export interface LaidPages<L extends Laid> {
  readonly laid: L;
  readonly pages: readonly DrawnPage[];
}

/**
 * Pages laid with all of them; or without those at the beginning on which no line goes on beyond the page, a cover's and
 * the instructions'; or without blank ones: whichever way most lines run on, the first of several that are as good.
 */
export function withoutCovers<L extends Laid>(
  pages: readonly DrawnPage[],
  lay: (pages: readonly DrawnPage[]) => L | undefined,
): LaidPages<L> | undefined {
  let best: LaidPages<L> | undefined;
  for (const own of choices(pages)) {
    const laid = lay(own);
    if (laid && (!best || laid.joins > best.laid.joins)) best = { laid, pages: own };
  }
  return best;
}

/** Which pages may be those of the pattern, each choice once. */
function choices(pages: readonly DrawnPage[]): readonly (readonly DrawnPage[])[] {
  const drawn = pages.filter(page => page.drawing.lines.length > 0);
  const goOn = prepared(drawn).map(goesOnBeyond);
  const first = drawn[goOn.indexOf(true)];
  const from = (list: readonly DrawnPage[]): number => (first ? list.indexOf(first) : 0);
  // All of a cover, or all but its last page, which may be the first of the pattern; blank pages keep their places first.
  const all = [pages, drawn].flatMap(list =>
    [0, from(list), from(list) - 1].map(k => list.slice(Math.max(0, k))),
  );
  const isSame = (a: readonly DrawnPage[], b: readonly DrawnPage[]): boolean =>
    a.length === b.length && a.every((page, i) => page === b[i]);
  return all.filter((own, i) => own.length > 1 && all.findIndex(other => isSame(own, other)) === i);
}
