import type { PageField } from '../place/field.js';
import { refusal } from '../tellings.js';
import type { Paper } from './papers.js';

/** mm left empty at each side of a page, where printers do not reach. */
export interface Margins {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

/**
 * 10 mm all round. Laser printers leave 4 to 4.3 mm blank and small inkjets up to 6.7 mm at the bottom, so this holds
 * for those; a printer driver that keeps half an inch (12.7 mm) at the ends needs `margins` of its own.
 * Source: check-values §8, printer definitions and manuals listed there.
 */
export const defaultMargin = 10;
/** mm that neighbouring pages share: enough for a glue stick or tape, and for the eye to line the pages up. */
export const defaultOverlap = 10;
/** The printer's error that may be corrected; beyond 5 % the page is being fitted or the printer is not sound. */
const largestCorrection = 0.05;

/** Which way up a page stands. */
export type Orientation = 'portrait' | 'landscape';

/** What the maker measured of the 50 mm test square, across and down, in mm. */
export interface PrintedSquare {
  readonly across: number;
  readonly down: number;
}

/** One page's geometry: the paper as it is fed, its printable window in sheet mm, and what the printer must be told. */
export interface PageFormat {
  readonly paper: Paper;
  readonly orientation: Orientation;
  /** mm, as printed: width then height. */
  readonly size: readonly [number, number];
  readonly margins: Margins;
  readonly field: PageField;
  /** Paper mm for a mm of the sheet, across and down: 1 unless the printer is corrected. */
  readonly stretch: { readonly across: number; readonly down: number };
}

/** What a maker may choose of a page: lengths in mm. */
export interface FormatOptions {
  readonly margins?: number | Margins;
  readonly overlap?: number;
  readonly printed?: PrintedSquare;
}

/** mm: a smaller window does not hold the two test squares side by side. */
const smallestWindow = 120;

/**
 * @throws PatternError `margins-too-wide`, `overlap-out-of-range`, `correction-out-of-range`
 */
export function pageFormat(paper: Paper, orientation: Orientation, options: FormatOptions = {}): PageFormat {
  const { margins: asked = defaultMargin, overlap = defaultOverlap, printed } = options;
  const margins =
    typeof asked === 'number' ? { top: asked, right: asked, bottom: asked, left: asked } : asked;
  const size =
    orientation === 'portrait'
      ? ([paper.width, paper.height] as const)
      : ([paper.height, paper.width] as const);
  const stretch = printed ? correction(printed) : { across: 1, down: 1 };
  const width = (size[0] - margins.left - margins.right) / stretch.across;
  const height = (size[1] - margins.top - margins.bottom) / stretch.down;
  if (
    ![margins.top, margins.right, margins.bottom, margins.left].every(m => m >= 0) ||
    !(Math.min(width, height) >= smallestWindow)
  )
    throw refusal('margins-too-wide', {
      widthMm: Math.max(width, 0),
      heightMm: Math.max(height, 0),
      leastMm: smallestWindow,
      usualMm: defaultMargin,
    });
  if (!(overlap >= 0 && overlap <= Math.min(width, height) / 4))
    throw refusal('overlap-out-of-range', { overlapMm: overlap, usualMm: defaultOverlap });
  return { paper, orientation, size, margins, field: { width, height, overlap }, stretch };
}

/** The stretch that makes a printed 50 mm come out at 50 mm. */
function correction({ across, down }: PrintedSquare): PageFormat['stretch'] {
  const stretch = { across: 50 / across, down: 50 / down };
  if (![stretch.across, stretch.down].every(s => Math.abs(s - 1) <= largestCorrection))
    throw refusal('correction-out-of-range', {
      acrossMm: across,
      downMm: down,
      mostPercent: largestCorrection * 100,
    });
  return stretch;
}
