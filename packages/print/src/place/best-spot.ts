import type { Point } from '@paperhinge/geometry';
import { type Board, liesFree } from './board.js';
import { type Field, ownerOf, stepX, stepY } from './field.js';
import type { Raster } from './raster.js';

/** mm: side of the cells that shapes are laid out by. */
export const cell = 5;
/** mm: a part of a piece smaller than this alone on a page is easily lost. */
const sliver = 8;

/** A shape as it may lie: upright or turned, as cells. */
export interface Candidate {
  readonly turned: boolean;
  readonly raster: Raster;
  /** What moves the shape's own coordinates so that its box starts at (0, 0), after the turn. */
  readonly home: Point;
}

export interface Spot {
  readonly candidate: Candidate;
  readonly column: number;
  readonly row: number;
}

/** The place that needs fewest new pages, then crosses fewest joins, then lies nearest the top left. */
export function bestSpot(
  board: Board,
  candidates: readonly Candidate[],
  tally: Tally,
  lowest: number,
  field: Field,
): Spot {
  let best: Spot | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const c of candidates)
    for (const column of columnsToTry(board, c.raster, field))
      for (const row of rowsToTry(board, c.raster, column, lowest, field)) {
        // Where it lies counts least; a half turn must save something.
        const cost = costOf(c.raster, column, row, tally) + (row + column / 3) / 50 + (c.turned ? 5 : 0);
        if (cost < least) {
          least = cost;
          best = { candidate: c, column, row };
        }
      }
  return best!;
}

/** A new page outweighs any number of joins crossed; a sliver alone on a page is nearly as bad as a page. */
const costs = { page: 1000, join: 20, sliver: 400 } as const;

function costOf(shape: Raster, column: number, row: number, tally: Tally): number {
  const pages = touchedPages(shape, column, row, tally);
  let fresh = 0,
    slivers = 0;
  for (const p of pages) {
    if (!tally.used[p]) fresh++;
    const wide = tally.x1[p]! - tally.x0[p]!,
      high = tally.y1[p]! - tally.y0[p]!;
    if (pages.length > 1 && Math.min(wide, high) * cell < sliver) slivers++;
  }
  return fresh * costs.page + pages.length * costs.join + slivers * costs.sliver;
}

/** Which page each row and column of cells belongs to, and counters that are used again and again. */
export interface Tally {
  readonly pageColumns: number;
  readonly columnOf: Int32Array;
  /** The first cell beyond each column of pages. */
  readonly columnEnd: Int32Array;
  readonly rowOf: Int32Array;
  readonly used: Uint8Array;
  readonly x0: Int32Array;
  readonly x1: Int32Array;
  readonly y0: Int32Array;
  readonly y1: Int32Array;
}

export function newTally(board: Board, field: Field): Tally {
  const owners = (count: number, window: number) =>
    Int32Array.from({ length: count }, (_, i) => ownerOf((i + 0.5) * cell, window, field.overlap));
  const columnOf = owners(board.columns, field.width),
    rowOf = owners(board.rows, field.height);
  const pageColumns = columnOf.at(-1)! + 1,
    pages = pageColumns * (rowOf.at(-1)! + 1);
  const columnEnd = new Int32Array(pageColumns);
  for (const [i, owner] of columnOf.entries()) columnEnd[owner] = i + 1;
  const counters = () => new Int32Array(pages);
  return {
    pageColumns,
    columnOf,
    columnEnd,
    rowOf,
    used: new Uint8Array(pages),
    x0: counters(),
    x1: counters(),
    y0: counters(),
    y1: counters(),
  };
}

/** The pages a shape touches at a place; their extents in cells are left in the tally. */
export function touchedPages(shape: Raster, column: number, row: number, tally: Tally): readonly number[] {
  const { columnOf, columnEnd, rowOf, pageColumns, x0, x1, y0, y1 } = tally;
  const pages: number[] = [];
  for (let r = 0; r < shape.rows.length; r++) {
    const y = row + r,
      base = rowOf[y]! * pageColumns;
    for (const [from, to] of shape.rows[r]!) {
      let start = column + from;
      const end = column + to;
      while (start < end) {
        const owner = columnOf[start]!,
          p = base + owner;
        const stop = Math.min(end, columnEnd[owner]!);
        if (!pages.includes(p)) {
          pages.push(p);
          x0[p] = start;
          x1[p] = stop;
          y0[p] = y;
        }
        if (start < x0[p]!) x0[p] = start;
        if (stop > x1[p]!) x1[p] = stop;
        y1[p] = y + 1;
        start = stop;
      }
    }
  }
  return pages;
}

/** Columns worth trying: every fourth cell, and those that align a side with the edge of a page. */
function columnsToTry(board: Board, shape: Raster, field: Field): readonly number[] {
  const last = board.columns - shape.columns;
  const columns = new Set<number>();
  for (let c = 0; c <= last; c += 4) columns.add(c);
  for (let page = 0; page * stepX(field) < board.columns * cell; page++) {
    columns.add(Math.ceil((page * stepX(field) + (page > 0 ? field.overlap : 0)) / cell));
    columns.add(Math.floor(((page + 1) * stepX(field) + field.overlap) / cell) - shape.columns);
  }
  columns.add(last);
  return [...columns].filter(c => c >= 0 && c <= last).sort((a, b) => a - b);
}

/** Beyond this many free rows in a column the rest lie further down and would need new pages as well. */
const enoughRows = 4;

/**
 * In a column: the first free row from the top and from the start of each row of pages.
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
    if (row >= lowest) break;
    const page = ownerOf((row + 0.5) * cell, field.height, field.overlap) + 1;
    row = Math.ceil((page * stepY(field) + field.overlap) / cell);
  }
  return rows;
}
