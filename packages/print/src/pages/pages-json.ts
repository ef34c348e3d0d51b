import type { PageFormat } from './format.js';
import type { SheetPiece } from './layout.js';
import type { Page } from './plan.js';

/** What was printed where, as the command and the record give it. All lengths in mm. */
export interface PagesJson {
  readonly paper: string;
  /** As it is fed: width, height. */
  readonly paperMm: readonly [number, number];
  readonly testSquareMm: number;
  readonly pages: readonly PageJson[];
  readonly pieces: readonly PlacedPieceJson[];
}
/** One page: which part of the large sheet it shows, and where on the paper. Lengths in mm. */
export interface PageJson {
  /** The page of the file, from 1. */
  readonly number: number;
  readonly row: number;
  readonly column: number;
  /** The part of the large sheet that the page shows: x, y, width, height. */
  readonly windowMm: readonly [number, number, number, number];
  /** Where that part's top left corner lies on the paper. */
  readonly contentAtMm: readonly [number, number];
}
/** One piece on the large sheet: the map that carries it there from its own mm, in SVG order. */
export interface PlacedPieceJson {
  readonly piece: string;
  readonly copy: number;
  /** SVG order: carries a piece from its own millimetres to the large sheet. */
  readonly matrix: readonly [number, number, number, number, number, number];
}

/** mm: the side of the test square on the first page. */
export const testSquare = 50;

export const pagesJson = (
  format: PageFormat,
  pages: readonly Page[],
  pieces: readonly SheetPiece[],
): PagesJson => ({
  paper: format.paper.name,
  paperMm: format.size,
  testSquareMm: testSquare,
  pages: pages.map(({ number, row, column, window, contentAt }) => ({
    number,
    row,
    column,
    windowMm: window,
    contentAtMm: contentAt,
  })),
  pieces: pieces.map(({ piece, copy, matrix: { a, b, c, d, e, f } }) => ({
    piece,
    copy,
    matrix: [a, b, c, d, e, f],
  })),
});
