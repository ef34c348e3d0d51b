import type { Point } from '@paperhinge/geometry';
import type { Polygon } from '../drawing/room.js';
import { type Cell, pagesOf, stepX, stepY } from '../place/field.js';
import type { PageFormat } from './format.js';

/** What one page shows. */
export interface Page {
  /** Place in the file, from 1. */
  readonly number: number;
  readonly kind: 'cover' | 'tile';
  readonly row: number;
  readonly column: number;
  /** The part of the large sheet it shows: x, y, width, height in mm. */
  readonly window: readonly [number, number, number, number];
  /** Where the window's top left corner lies on the paper, mm. */
  readonly contentAt: readonly [number, number];
  /** "B3": row letter and column number; a cover page has none. */
  readonly label: string;
  /** Labels of the pages it joins; absent where there is none. */
  readonly neighbours: Readonly<Partial<Record<Side, string>>>;
}
export type Side = 'left' | 'right' | 'above' | 'below';

/** A piece where it lies on the large sheet. */
export interface PlacedPiece {
  readonly polygons: readonly Polygon[];
}

/**
 * The pages of a file: cover pages along the top of the large sheet as row 0, then a row of tiles for each row of
 * windows, pages without any part of a piece left out. The tiles' windows start at `tilesAt`.
 */
export function planPages(
  format: PageFormat,
  covers: number,
  pieces: readonly PlacedPiece[],
): readonly Page[] {
  const { field, margins } = format;
  const contentAt = [margins.left, margins.top] as const;
  const top = tilesAt(format, covers).y;
  const coverPages = Array.from(
    { length: covers },
    (_, i): Page => ({
      number: i + 1,
      kind: 'cover',
      row: 0,
      column: i,
      label: '',
      neighbours: {},
      contentAt,
      window: [i * field.width, 0, field.width, field.height],
    }),
  );
  const shifted = pieces.map(p => p.polygons.map(polygon => polygon.map(q => ({ x: q.x, y: q.y - top }))));
  const cells = distinct(shifted.flatMap(polygons => pagesOf(field, polygons)));
  const present = new Set(cells.map(pageLabel));
  const rowOffset = covers > 0 ? 1 : 0;
  const tiles = cells.map(
    (cell, i): Page => ({
      number: covers + i + 1,
      kind: 'tile',
      row: cell.row + rowOffset,
      column: cell.column,
      label: pageLabel(cell),
      contentAt,
      window: [cell.column * stepX(field), top + cell.row * stepY(field), field.width, field.height],
      neighbours: neighboursIn(cell, present),
    }),
  );
  return [...coverPages, ...tiles];
}

/** Where the first tile's window starts on the large sheet: below the cover pages. */
export const tilesAt = (format: PageFormat, covers: number): Point => ({
  x: 0,
  y: covers > 0 ? format.field.height : 0,
});

/** "A1" is the top left tile, "A2" the one right of it, "B1" the one below. */
export function pageLabel({ row, column }: Cell): string {
  let letters = '',
    rest = row;
  for (;;) {
    letters = String.fromCharCode(65 + (rest % 26)) + letters;
    if (rest < 26) break;
    rest = Math.floor(rest / 26) - 1;
  }
  return `${letters}${column + 1}`;
}

/** The tiles on which a piece lies, by label. */
export const labelsOf = (format: PageFormat, covers: number, piece: PlacedPiece): readonly string[] => {
  const top = tilesAt(format, covers).y;
  return pagesOf(
    format.field,
    piece.polygons.map(polygon => polygon.map(q => ({ x: q.x, y: q.y - top }))),
  ).map(pageLabel);
};

function distinct(cells: readonly Cell[]): readonly Cell[] {
  const byLabel = new Map(cells.map(c => [pageLabel(c), c]));
  return [...byLabel.values()].sort((a, b) => a.row - b.row || a.column - b.column);
}

function neighboursIn({ row, column }: Cell, present: ReadonlySet<string>): Page['neighbours'] {
  const all: readonly (readonly [Side, Cell])[] = [
    ['left', { row, column: column - 1 }],
    ['right', { row, column: column + 1 }],
    ['above', { row: row - 1, column }],
    ['below', { row: row + 1, column }],
  ];
  return Object.fromEntries(
    all
      .filter(([, c]) => c.row >= 0 && c.column >= 0 && present.has(pageLabel(c)))
      .map(([side, c]) => [side, pageLabel(c)]),
  );
}
