import { tell, type Watch } from '../watch.js';
import { inCommonWindow } from './common-window.js';
import { framed } from './frames.js';
import { withoutFurniture } from './furniture.js';
import { type GridPlace, inRows, type Laid, laidAt } from './grid.js';
import { placesByMarks } from './marks.js';
import { type DrawnPage, windowOf } from './page.js';

/** Pages laid by what is on them. */
export interface LaidByThemselves extends Laid {
  readonly by: 'marks' | 'lines';
  readonly columns: number;
  readonly overlapMm: number;
  readonly places: readonly GridPlace[];
}

/** mm: overlaps that are common: none, and strips to glue in mm and in inches. */
const overlaps = [0, 5, 6.35, 8, 10, 12, 12.7, 15, 19.05, 20, 25.4] as const;
/** More pages are not tried in every number of columns. */
const mostPages = 60;
/** Of the lines that end at pages' edges: so many run on, where pages lie as they should; and mm that they miss. */
const mostEnds = 0.55,
  mostMiss = 1;
/** Fewer joins may be chance, as may another way to lay them that is nearly as good. */
const fewestJoins = 2,
  clearly = 0.88;

/**
 * Pages laid by their own frames, where they have any: by the letters at their edges, else in the number of columns, by
 * row or by column, and with the overlap, with which most lines run on from page to page. `undefined` where none does,
 * or several do as well.
 */
export function laidByThemselves(
  pages: readonly DrawnPage[],
  watch: Watch<'pages'>,
): LaidByThemselves | undefined {
  const own = prepared(pages);
  const places = placesByMarks(own);
  if (places) {
    const laid = bestOf(own, [places], watch);
    return laid && { ...laid, by: 'marks' };
  }
  if (own.length > mostPages) return undefined;
  const laid = bestOf(own, ways(own.length), watch);
  return laid && { ...laid, by: 'lines' };
}

/** Pages in the windows that they are cut off at, without what belongs to the paper. */
export const prepared = (pages: readonly DrawnPage[]): readonly DrawnPage[] =>
  inCommonWindow(withoutFurniture(framed(pages)));

/** Of the best score: less is no slip of a tenth of a millimetre, but another way to lie. */
const nearlyBest = 0.9;

/**
 * How pages lie in rows if not as they were laid: what more of their lines run on with, and more truly, so that there is
 * no doubt; `undefined` where nothing is clearly better.
 */
export function betterLaid(
  pages: readonly DrawnPage[],
  columns: number,
  laid: Laid,
  watch: Watch<'pages'>,
): Omit<LaidByThemselves, 'by'> | undefined {
  const best = laidByThemselves(pages, watch) ?? bestOf(prepared(pages), [inRows(pages.length, columns)], {});
  const isBetter = best && runsOn(best) && score(laid) < nearlyBest * score(best);
  // What lies in columns from the top down cannot be told in rows.
  const rows = inRows(pages.length, best?.columns ?? columns);
  const isInRows = best?.places.every(
    ({ column, row }, i) => column === rows[i]!.column && row === rows[i]!.row,
  );
  return isBetter && isInRows ? best : undefined;
}

/** Every way to lay so many pages in full columns and rows, the last row or column as it comes. */
function ways(count: number): readonly (readonly GridPlace[])[] {
  return Array.from({ length: count }, (_, i) => i + 1).flatMap(columns => {
    const byRow = inRows(count, columns);
    // In columns from the top down; one row or one column is the same both ways.
    const byColumn = byRow.map(({ column, row }) => ({ column: row, row: column }));
    return columns === 1 || columns === count ? [byRow] : [byRow, byColumn];
  });
}

function bestOf(
  pages: readonly DrawnPage[],
  all: readonly (readonly GridPlace[])[],
  watch: Watch<'pages'>,
): Omit<LaidByThemselves, 'by'> | undefined {
  const boxes = pages.map(windowOf);
  const [wide, high] = [
    Math.max(...boxes.map(({ min, max }) => max.x - min.x)),
    Math.max(...boxes.map(({ min, max }) => max.y - min.y)),
  ];
  const lay = (places: readonly GridPlace[], overlapMm: number) => ({
    ...laidAt(pages, places, { wide: wide - overlapMm, high: high - overlapMm, overlap: overlapMm }),
    columns: 1 + Math.max(...places.map(p => p.column)),
    overlapMm,
    places,
  });
  const tried = all.flatMap((places, i) => {
    tell(watch, 'pages', i / all.length);
    return overlaps.map(overlapMm => lay(places, overlapMm));
  });
  const [best, ...others] = [...tried].sort((a, b) => score(b) - score(a));
  const second = others.find(({ places }) => places !== best!.places);
  const isClear = best !== undefined && runsOn(best) && (!second || score(second) < clearly * score(best));
  // Letters say where pages lie even if no line crosses a join.
  return best && (isClear || all.length === 1) ? closer(best, mm => lay(best.places, mm)) : undefined;
}

/** mm: steps in which an overlap that is none of the common ones is come nearer to. */
const nearer = [1, 0.3, 0.1, 0.02] as const;
/** mm: lines that run on so truly need no other overlap. */
const trulyOn = 0.0005;

/** The overlap beside a common one with which lines run on most truly. */
function closer<L extends Laid & { readonly overlapMm: number }>(from: L, lay: (mm: number) => L): L {
  let best = from;
  for (const step of nearer)
    for (const way of [-1, 1])
      while (best.joins > 0 && best.missMm > trulyOn) {
        const next = lay(best.overlapMm + way * step);
        if (next.overlapMm < 0 || next.joins < best.joins || next.missMm >= best.missMm) break;
        best = next;
      }
  return best;
}

/** Joins alone would favour small overlaps, which cut more lines: the share that run on and how truly tell. */
const score = ({ joins, ends, residualMm, missMm }: Laid): number =>
  ends === 0 ? 0 : ((2 * joins) / ends) * Math.exp(-residualMm - ofMiss * missMm);
/** What a miss counts that pages can be moved to mend: no page lies to a hair, and moving mends a wrong overlap, too. */
const ofMiss = 0.1;

const runsOn = ({ joins, ends, residualMm }: Laid): boolean =>
  joins >= fewestJoins && 2 * joins >= mostEnds * ends && residualMm <= mostMiss;
