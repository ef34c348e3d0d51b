import type { PageFormat } from './format.js';
import type { SheetPiece } from './layout.js';
import type { Page } from './plan.js';

/** What was printed where, as the command and the record give it. All lengths in mm. */
export interface PagesJson {
  readonly paper: string;
  /** As it is fed: width, height. */
  readonly paperMm: readonly [number, number];
  readonly testSquareMm: number;
  /** Paper mm for a mm of the sheet, where the printer is corrected. */
  readonly scale?: { readonly across: number; readonly down: number };
  readonly pages: readonly PageJson[];
  readonly pieces: readonly PlacedPieceJson[];
}
/** One page: which part of the large sheet it shows, and where on the paper. Lengths in mm. */
export interface PageJson {
  /** The page of the file, from 1. */
  readonly number: number;
  /** A cover to read, or a tile that shows pieces. */
  readonly kind: 'cover' | 'tile';
  /** As printed in its corner; a cover has none. */
  readonly label?: string;
  /** Of a tile: the sheet that it is glued into, from 1. */
  readonly sheet?: number;
  /** No line is on it: any blank sheet of the paper can take its place. */
  readonly blank?: true;
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
): PagesJson => {
  const { across, down } = format.stretch;
  const corrected = across !== 1 || down !== 1;
  return {
    paper: format.paper.name,
    paperMm: [millimetre(format.size[0]), millimetre(format.size[1])],
    testSquareMm: testSquare,
    ...(corrected ? { scale: { across: millimetre(across), down: millimetre(down) } } : {}),
    pages: pages.map(pageJson),
    pieces: pieces.map(({ piece, copy, matrix: { a, b, c, d, e, f } }) => ({
      piece,
      copy,
      matrix: [share(a), share(b), share(c), share(d), millimetre(e), millimetre(f)],
    })),
  };
};

const pageJson = ({ number, kind, label, sheet, blank, row, column, window, contentAt }: Page): PageJson => ({
  number,
  kind,
  ...(label ? { label } : {}),
  ...(sheet === undefined ? {} : { sheet: sheet + 1 }),
  ...(blank ? { blank } : {}),
  row,
  column,
  windowMm: [millimetre(window[0]), millimetre(window[1]), millimetre(window[2]), millimetre(window[3])],
  contentAtMm: [millimetre(contentAt[0]), millimetre(contentAt[1])],
});

/** A millionth of a mm: more is the noise of sums. */
const millimetre = (value: number): number => rounded(value, 6);
/** A cosine, so that turned pieces keep their size. */
const share = (value: number): number => rounded(value, 14);
const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals)) + 0;
