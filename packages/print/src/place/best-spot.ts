import type { Point } from '@paperhinge/geometry';
import type { Polygon } from '../drawing/room.js';
import { type Board, liesFree } from './board.js';
import { type Field, ownerOf, stepX, stepY } from './field.js';
import type { Raster } from './raster.js';
import { sliver, sliversOf } from './slivers.js';
import type { Turn } from './turning.js';

/** mm: side of the cells that shapes are laid out by. */
export const cell = 5;

/** A shape as it may lie: turned in one way, as cells. */
export interface Candidate {
  readonly turn: Turn;
  /** What turning it costs: as it stands nothing, half round a little, leaning more, so that a turn must save something. */
  readonly cost: number;
  readonly raster: Raster;
  /** Its main polygon turned, with its box starting at (0, 0) of the cells. */
  readonly polygon: Polygon;
  /** What moves the shape's own coordinates so that its box starts at (0, 0), after the turn. */
  readonly home: Point;
}

export interface Spot {
  readonly candidate: Candidate;
  readonly column: number;
  readonly row: number;
}

/** How many of the cheapest places are looked at for one without a sliver. */
const placesLookedAt = 60;

/**
 * The place that needs fewest new pages, then crosses fewest joins, then lies nearest the top left; but no place that
 * leaves a sliver of the shape alone on a page while there is one that does not.
 */
export function bestSpot(
  board: Board,
  candidates: readonly Candidate[],
  tally: Tally,
  lowest: number,
  field: Field,
): Spot {
  const spots: (Spot & { readonly cost: number })[] = [];
  for (const candidate of candidates)
    for (const column of columnsToTry(board, candidate.raster, field))
      for (const row of rowsToTry(board, candidate.raster, column, lowest, field)) {
        // Where it lies counts least.
        const cost = costOf(candidate.raster, column, row, tally) + (row + column / 3) / 50 + candidate.cost;
        spots.push({ candidate, column, row, cost });
      }
  spots.sort((a, b) => a.cost - b.cost);
  return (
    spots.slice(0, placesLookedAt).find(s => leavesNoSliver(s, field)) ??
    spots.slice(placesLookedAt).find((s, i) => i % 4 === 0 && leavesNoSliver(s, field)) ??
    spots[0]!
  );
}

const leavesNoSliver = ({ candidate, column, row }: Spot, field: Field): boolean =>
  sliversOf(
    field,
    candidate.polygon.map(p => ({ x: p.x + column * cell, y: p.y + row * cell })),
  ).length === 0;

/** A new page outweighs any number of joins crossed. */
const costs = { page: 1000, join: 20 } as const;

function costOf(shape: Raster, column: number, row: number, tally: Tally): number {
  const pages = touchedPages(shape, column, row, tally);
  let fresh = 0;
  for (const p of pages) if (!tally.used[p]) fresh++;
  return fresh * costs.page + pages.length * costs.join;
}

/** Which page each row and column of cells belongs to, and which pages are in use. */
export interface Tally {
  readonly pageColumns: number;
  readonly columnOf: Int32Array;
  /** The first cell beyond each column of pages. */
  readonly columnEnd: Int32Array;
  readonly rowOf: Int32Array;
  readonly used: Uint8Array;
}

export function newTally(board: Board, field: Field): Tally {
  const owners = (count: number, window: number) =>
    Int32Array.from({ length: count }, (_, i) => ownerOf((i + 0.5) * cell, window, field.overlap));
  const columnOf = owners(board.columns, field.width),
    rowOf = owners(board.rows, field.height);
  const pageColumns = columnOf.at(-1)! + 1;
  const columnEnd = new Int32Array(pageColumns);
  for (const [i, owner] of columnOf.entries()) columnEnd[owner] = i + 1;
  return {
    pageColumns,
    columnOf,
    columnEnd,
    rowOf,
    used: new Uint8Array(pageColumns * (rowOf.at(-1)! + 1)),
  };
}

/** The pages a shape touches at a place. */
export function touchedPages(shape: Raster, column: number, row: number, tally: Tally): readonly number[] {
  const { columnOf, columnEnd, rowOf, pageColumns } = tally;
  const most = columnOf[column + shape.columns - 1]! - columnOf[column]! + 1;
  const pages: number[] = [];
  let band = -1,
    inBand = 0;
  for (let r = 0; r < shape.rows.length; r++) {
    const own = rowOf[row + r]!;
    if (own !== band) {
      band = own;
      inBand = 0;
    }
    // Once every page of a row of pages is known to be touched, its other cells tell nothing new.
    if (inBand === most) continue;
    const base = own * pageColumns;
    const runs = shape.rows[r]!;
    for (let i = 0; i < runs.length; i++) {
      const end = column + runs[i]![1];
      for (let start = column + runs[i]![0]; start < end; ) {
        const owner = columnOf[start]!;
        if (!pages.includes(base + owner)) {
          pages.push(base + owner);
          inBand++;
        }
        start = columnEnd[owner]!;
      }
    }
  }
  return pages;
}

/** Columns worth trying: every sixth cell, and those that align a side with the edge of a page, or stand well clear of it. */
function columnsToTry(board: Board, shape: Raster, field: Field): readonly number[] {
  const last = board.columns - shape.columns;
  const columns = new Set<number>();
  for (let c = 0; c <= last; c += 6) columns.add(c);
  for (let page = 0; page * stepX(field) < board.columns * cell; page++) {
    const starts = Math.ceil((page * stepX(field) + (page > 0 ? field.overlap : 0)) / cell);
    const ends = Math.floor(((page + 1) * stepX(field) + field.overlap) / cell) - shape.columns;
    for (const c of [starts, starts - clear, ends, ends + clear]) columns.add(c);
  }
  columns.add(last);
  return [...columns].filter(c => c >= 0 && c <= last).sort((a, b) => a - b);
}

/** Cells from a page's edge that leave no sliver on either side of it. */
const clear = Math.ceil(sliver / cell) + 1;

/** Beyond this many free rows in a column the rest lie further down and would need new pages as well. */
const enoughRows = 6;

/**
 * In a column: the first free row from the top and from the start of each row of pages, and the row well clear of it.
 * @param lowest first row below all that is taken
 */
function rowsToTry(
  board: Board,
  shape: Raster,
  column: number,
  lowest: number,
  field: Field,
): readonly number[] {
  const rows: number[] = [];
  const last = board.rows - shape.rows.length;
  let row = 0;
  while (row <= last && rows.length < enoughRows) {
    while (row <= last && !liesFree(board, shape, column, row)) row++;
    if (row > last) break;
    rows.push(row);
    if (row + clear <= last && liesFree(board, shape, column, row + clear)) rows.push(row + clear);
    if (row >= lowest) break;
    const page = ownerOf((row + 0.5) * cell, field.height, field.overlap) + 1;
    row = Math.ceil((page * stepY(field) + field.overlap) / cell);
  }
  return rows;
}
