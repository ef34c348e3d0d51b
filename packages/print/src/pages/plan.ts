import type { Point } from '@paperhinge/geometry';
import { compose, translation } from '@paperhinge/geometry/plane';
import { ownPart } from '../place/field.js';
import type { Rectangle } from '../plane/rectangle.js';
import type { PageFormat } from './format.js';
import type { SheetLayout, SheetPiece, Tile } from './layout.js';

/** What one page shows. */
export interface Page {
  /** Place in the file, from 1. */
  readonly number: number;
  readonly kind: 'cover' | 'tile';
  readonly row: number;
  readonly column: number;
  /** The part of the large sheet it shows: x, y, width, height in mm. */
  readonly window: readonly [number, number, number, number];
  /** The part of the large sheet that no page before it shows. */
  readonly own: Rectangle;
  /** Where the window's top left corner lies on the paper, mm. */
  readonly contentAt: readonly [number, number];
  /** Of a tile: which sheet it is glued into, from 0. */
  readonly sheet?: number;
  /** No line of the pattern is on it: any blank sheet of the paper can take its place. */
  readonly blank?: true;
  /** "B3": row letter and column number; a cover page has none. */
  readonly label: string;
  /** Labels of the pages it joins; absent where there is none. */
  readonly neighbours: Readonly<Partial<Record<Side, string>>>;
}
export type Side = 'left' | 'right' | 'above' | 'below';

/** The pages, and the pieces and blocks moved down below the cover pages. */
export interface PagePlan {
  readonly pages: readonly Page[];
  readonly pieces: readonly SheetPiece[];
}

/**
 * The pages of a file: cover pages along the top of the large sheet as row 0, then a row of tiles for each row of
 * windows, sheet by sheet, pages without any part of a piece left out.
 */
export function planPages(
  { format, pieces, blocks }: Pick<SheetLayout, 'format' | 'pieces' | 'blocks'>,
  covers: number,
): PagePlan {
  const top = covers > 0 ? format.field.height : 0;
  const tiles = distinct([...pieces, ...blocks].flatMap(p => p.tiles));
  const present = new Map(tiles.map(t => [keyOf(t.sheet, t.own.row, t.own.column), pageLabel(t)]));
  return {
    pages: [
      ...Array.from({ length: covers }, (_, i) => coverPage(format, i)),
      ...tiles.map((tile, i) => tilePage(tile, covers + i + 1, { format, top, present })),
    ],
    pieces: pieces.map(p => ({
      ...p,
      matrix: compose(p.matrix, translation({ x: 0, y: top })),
      polygons: p.polygons.map(polygon => polygon.map(q => ({ x: q.x, y: q.y + top }))),
    })),
  };
}

const keyOf = (sheet: number, row: number, column: number): string => `${sheet} ${row} ${column}`;

function coverPage({ field: { width, height }, margins }: PageFormat, i: number): Page {
  return {
    number: i + 1,
    kind: 'cover',
    row: 0,
    column: i,
    label: '',
    neighbours: {},
    contentAt: [margins.left, margins.top],
    window: [i * width, 0, width, height],
    own: [i * width, 0, (i + 1) * width, height],
  };
}

interface Plan {
  readonly format: PageFormat;
  /** mm that the tiles lie below the top. */
  readonly top: number;
  /** Labels of all tiles by their place. */
  readonly present: ReadonlyMap<string, string>;
}

function tilePage(tile: Tile, number: number, { format, top, present }: Plan): Page {
  const { field, margins } = format;
  const corner: Point = { x: tile.corner.x, y: tile.corner.y + top };
  const sheetTop = { x: 0, y: corner.y - tile.own.row * (field.height - field.overlap) };
  const [x0, y0, x1, y1] = ownPart(field, tile.own);
  return {
    number,
    kind: 'tile',
    sheet: tile.sheet,
    row: tile.row + (top > 0 ? 1 : 0),
    column: tile.column,
    label: pageLabel(tile),
    contentAt: [margins.left, margins.top],
    window: [corner.x, corner.y, field.width, field.height],
    own: [x0, y0 + sheetTop.y, x1, y1 + sheetTop.y],
    neighbours: neighboursIn(tile, present),
  };
}

/** "A1" is the top left tile, "A2" the one right of it, "B1" the one below; rows are lettered on from sheet to sheet. */
export function pageLabel({ row, column }: Pick<Tile, 'row' | 'column'>): string {
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
export const labelsOf = (piece: SheetPiece): readonly string[] => piece.tiles.map(pageLabel);

function distinct(tiles: readonly Tile[]): readonly Tile[] {
  const byLabel = new Map(tiles.map(t => [pageLabel(t), t]));
  return [...byLabel.values()].sort((a, b) => a.row - b.row || a.column - b.column);
}

function neighboursIn({ sheet, own: { row, column } }: Tile, present: Plan['present']): Page['neighbours'] {
  const all = {
    left: present.get(keyOf(sheet, row, column - 1)),
    right: present.get(keyOf(sheet, row, column + 1)),
    above: present.get(keyOf(sheet, row - 1, column)),
    below: present.get(keyOf(sheet, row + 1, column)),
  };
  return Object.fromEntries(Object.entries(all).filter(([, label]) => label !== undefined));
}
