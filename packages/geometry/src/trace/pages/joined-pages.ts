import type { Finding } from '../../telling.js';
import { leastSeen } from '../../tolerance.js';
import type { ForeignDrawing } from '../drawing/drawing.js';
import { finding, refusal } from '../drawing/tellings.js';
import type { Watch } from '../watch.js';
import { withoutFurniture } from './furniture.js';
import { type Laid, laidInGrid } from './grid.js';
import { betterLaid, laidByThemselves, prepared } from './laid-by-themselves.js';
import type { DrawnPage, GridWishes } from './page.js';
import { oneSheet } from './same-sheet.js';
import { testSquareOf } from './test-square.js';
import { withoutCovers } from './without-covers.js';

/** Ends of lines at pages' edges: where of so many fewer than this share run on, pages do not lie so. */
const enoughEnds = 8,
  leastRunOn = 0.25;

/** Pages joined to one drawing, and how truly. */
export interface JoinedPages {
  readonly drawing: ForeignDrawing;
  readonly findings: readonly Finding[];
  readonly residualMm?: number;
  readonly worstMm?: number;
}

/**
 * The pages of a pattern printed in tiles as one drawing: by the lines that stand on several of them, where each page
 * is a window onto the whole sheet; else laid in the grid that is told, or by their own frames, letters and lines that
 * run on, and moved so that lines run on across the joins. One page is its own drawing. The test square is found and
 * measured.
 *
 * @throws PatternError `pages-without-lines` for scans and pages of words; `pages-not-joined` where nothing tells how
 *   they lie; `pages-lie-otherwise`, `pages-do-not-run-on` where they do not lie as is told; `work-stopped`
 */
export function joinedPages(
  pages: readonly DrawnPage[],
  grid?: GridWishes,
  watch: Watch<'pages'> = {},
): JoinedPages {
  const drawn = pages.filter(page => page.drawing.lines.length > 0);
  if (drawn.length === 0) throw refusal('pages-without-lines', { pages: pages.length });
  const square = squareFindings(pages);
  if (drawn.length === 1) return { drawing: drawn[0]!.drawing, findings: square };
  if (grid) {
    // Blank pages keep their places.
    const { laid, pages: own } = withoutCovers(pages, some => laidInGrid(prepared(some), grid))!;
    refuseMislaid(own, grid, laid, watch);
    const { drawing, residualMm, worstMm, joins } = laid;
    const others = pages.length - own.length;
    const told = finding(
      worstMm > 1 ? 'warning' : 'note',
      'pages-laid',
      {},
      { pages: own.length, others, joins, residualMm, worstMm },
    );
    return { drawing, residualMm, worstMm, findings: [...square, told] };
  }
  const sheet = oneSheet(withoutFurniture(drawn));
  // Blank pages keep their places, unless the others lie as if they had none.
  if (!sheet) return bySelves(pages, square, watch);
  const { drawing, pages: used, worstMm } = sheet;
  return {
    drawing,
    residualMm: worstMm,
    worstMm,
    findings: [
      ...square,
      finding('note', 'pages-of-one-sheet', {}, { pages: used, others: pages.length - used }),
    ],
  };
}

/** @throws PatternError `pages-lie-otherwise`, `pages-do-not-run-on`: a pattern laid wrongly would be cut wrongly */
function refuseMislaid(
  pages: readonly DrawnPage[],
  { columns, overlap }: GridWishes,
  laid: Laid,
  watch: Watch<'pages'>,
): void {
  const better = betterLaid(pages, columns, laid, watch);
  if (better)
    throw refusal('pages-lie-otherwise', {
      columns: better.columns,
      overlapMm: better.overlapMm,
      isOverlapAlone: better.columns === columns,
      toldMm: overlap,
    });
  const { joins, ends } = laid;
  if (ends >= enoughEnds && 2 * joins < leastRunOn * ends)
    throw refusal('pages-do-not-run-on', { joins, ends: Math.ceil(ends / 2) });
}

/** Pages laid by their frames and letters, or by the lines that run on. @throws PatternError `pages-not-joined` */
function bySelves(
  pages: readonly DrawnPage[],
  square: readonly Finding[],
  watch: Watch<'pages'>,
): JoinedPages {
  const found = withoutCovers(pages, own => laidByThemselves(own, watch));
  if (!found) throw refusal('pages-not-joined', { pages: pages.length });
  const { drawing, residualMm, worstMm, joins, by, columns, overlapMm } = found.laid;
  const others = pages.length - found.pages.length;
  const how = { pages: found.pages.length, others, by, columns, overlapMm, joins, residualMm, worstMm };
  return {
    drawing,
    residualMm,
    worstMm,
    findings: [...square, finding(worstMm > 1 ? 'warning' : 'note', 'pages-laid-by-themselves', {}, how)],
  };
}

function squareFindings(pages: readonly DrawnPage[]): readonly Finding[] {
  const square = testSquareOf(pages);
  if (!square) return [finding('note', 'no-test-square', {}, {})];
  const { acrossMm, downMm, saidMm } = square;
  const isTrue = Math.max(Math.abs(acrossMm - saidMm), Math.abs(downMm - saidMm)) <= leastSeen;
  return isTrue
    ? [finding('note', 'test-square-true', {}, { saidMm })]
    : [finding('warning', 'test-square-off', {}, { acrossMm, downMm, saidMm })];
}
