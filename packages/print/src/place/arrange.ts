import type { Point } from '@paperhinge/geometry';
import type { Polygon } from '../drawing/room.js';
import { type Board, emptyBoard, liesFree, takeCells } from './board.js';
import { type Cell, type Field, ownerOf, pagesOf, stepX, stepY, windowsFor } from './field.js';
import { type Raster, rasterOf } from './raster.js';

/** Something to lay down, upright, by the polygons that enclose it. */
export interface Shape {
  readonly polygons: readonly Polygon[];
}

/** Where a shape lies: its points turned half round if `turned`, then moved by `by`. */
export interface Placing {
  readonly turned: boolean;
  readonly by: Point;
}

export interface Arrangement {
  /** In the order of the shapes. */
  readonly placings: readonly Placing[];
  /** The pages of each shape. */
  readonly pages: readonly (readonly Cell[])[];
  /** Pages in all, each counted once. */
  readonly count: number;
  /** Joins that shapes run across: pages a shape lies on, less one, summed. */
  readonly crossings: number;
}

export interface ArrangeOptions {
  /** Turning by half a turn allowed where it saves pages. Default yes. */
  readonly halfTurns?: boolean;
}

/** mm: side of the cells that shapes are laid out by, and paper kept between neighbours so that scissors pass. */
const cell = 5;
const gapCells = 1;
/** mm: a part of a piece smaller than this alone on a page is easily lost. */
const sliver = 8;
/** Shapes beyond this many are laid out in fewer ways, so that a coat of sixty pages is still quick. */
const manyShapes = 16;

interface Candidate {
  readonly shape: number;
  readonly turned: boolean;
  readonly raster: Raster;
  /** What moves the shape's own coordinates so that its box starts at (0, 0), after the turn. */
  readonly home: Point;
}

/**
 * Lays shapes on the page grid without overlap so that few pages are needed and few joins are crossed. Greedy by cells
 * over several orders and widths of sheet, the best kept; the same shapes always lie the same way.
 */
export function arrange(shapes: readonly Shape[], field: Field, options: ArrangeOptions = {}): Arrangement {
  const candidates = shapes.map((shape, i) => candidatesOf(shape, i, options.halfTurns ?? true));
  const widest = Math.max(...candidates.map(c => c[0]!.raster.columns)) * cell;
  const fewest = windowsFor(widest, field.width, field.overlap);
  const area = shapes.reduce((sum, s) => sum + boxArea(s), 0);
  const likely = Math.ceil(Math.sqrt(area / (stepX(field) * stepY(field)))) + 1;
  const widths = Array.from({ length: Math.max(likely - fewest + 3, 2) }, (_, i) => fewest + i);
  const tried = shapes.length > manyShapes ? widths.filter((_, i) => i % 3 === 0) : widths;
  let best: Arrangement | undefined;
  for (const columns of tried)
    for (const order of orders(shapes, candidates)) {
      const found = layOut(shapes, candidates, order, columns, field);
      if (
        !best ||
        found.count < best.count ||
        (found.count === best.count && found.crossings < best.crossings)
      )
        best = found;
    }
  return best!;
}

function candidatesOf(shape: Shape, index: number, halfTurns: boolean): readonly Candidate[] {
  const upright = candidate(shape, index, false);
  return halfTurns ? [upright, candidate(shape, index, true)] : [upright];
}

function candidate({ polygons }: Shape, shape: number, turned: boolean): Candidate {
  const sign = turned ? -1 : 1;
  const all = polygons.flat();
  const home = {
    x: -Math.min(...all.map(p => sign * p.x)) + inset,
    y: -Math.min(...all.map(p => sign * p.y)) + inset,
  };
  const moved = polygons.map(polygon =>
    polygon.map(p => ({ x: sign * p.x + home.x, y: sign * p.y + home.y })),
  );
  return { shape, turned, raster: rasterOf(moved, cell), home };
}
/** mm: keeps the cutting line's own width on the page. */
const inset = 0.5;

const boxArea = ({ polygons }: Shape): number => {
  const all = polygons.flat();
  const xs = all.map(p => p.x),
    ys = all.map(p => p.y);
  return (Math.max(...xs) - Math.min(...xs)) * (Math.max(...ys) - Math.min(...ys));
};

/** The orders in which shapes are laid: largest first, tallest first, widest first. */
function orders(
  shapes: readonly Shape[],
  candidates: readonly (readonly Candidate[])[],
): readonly (readonly number[])[] {
  const by = (size: (i: number) => number) =>
    shapes.map((_, i) => i).sort((a, b) => size(b) - size(a) || a - b);
  const tall = (i: number) => candidates[i]![0]!.raster.rows.length,
    wide = (i: number) => candidates[i]![0]!.raster.columns;
  const all = [by(i => tall(i) * wide(i)), by(tall), by(wide)];
  return all.filter((order, i) => all.findIndex(o => o.join() === order.join()) === i);
}

function layOut(
  shapes: readonly Shape[],
  candidates: readonly (readonly Candidate[])[],
  order: readonly number[],
  columns: number,
  field: Field,
): Arrangement {
  const width = columns * stepX(field) + field.overlap;
  const height =
    order.reduce((sum, i) => sum + candidates[i]![0]!.raster.rows.length + gapCells, 0) * cell + field.height;
  const board = emptyBoard(Math.floor(width / cell), Math.ceil(height / cell));
  const tally = newTally(board, field);
  const placings: Placing[] = new Array(shapes.length);
  for (const i of order) {
    const { candidate: c, column, row } = bestSpot(board, candidates[i]!, tally, field);
    takeCells(board, c.raster, column, row, gapCells);
    for (const page of touchedPages(c.raster, column, row, tally)) tally.used[page] = 1;
    placings[i] = { turned: c.turned, by: { x: c.home.x + column * cell, y: c.home.y + row * cell } };
  }
  return judged(shapes, placings, field);
}

/** The arrangement's true page counts, from the polygons themselves. */
export function judged(shapes: readonly Shape[], placings: readonly Placing[], field: Field): Arrangement {
  const pages = shapes.map((shape, i) =>
    pagesOf(
      field,
      shape.polygons.map(p => placed(p, placings[i]!)),
    ),
  );
  const count = new Set(pages.flat().map(c => `${c.row} ${c.column}`)).size;
  return { placings, pages, count, crossings: pages.reduce((sum, p) => sum + p.length - 1, 0) };
}

export const placed = (polygon: Polygon, { turned, by }: Placing): Polygon =>
  polygon.map(p => (turned ? { x: by.x - p.x, y: by.y - p.y } : { x: by.x + p.x, y: by.y + p.y }));

interface Spot {
  readonly candidate: Candidate;
  readonly column: number;
  readonly row: number;
}

/** The place that needs fewest new pages, then crosses fewest joins, then lies nearest the top left. */
function bestSpot(board: Board, candidates: readonly Candidate[], tally: Tally, field: Field): Spot {
  let best: Spot | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const c of candidates)
    for (const column of columnsToTry(board, c.raster, field))
      for (const row of rowsToTry(board, c.raster, column, field)) {
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
interface Tally {
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

function newTally(board: Board, field: Field): Tally {
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
function touchedPages(shape: Raster, column: number, row: number, tally: Tally): readonly number[] {
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

/** In a column: the first free row from the top and from the start of each row of pages. */
function rowsToTry(board: Board, shape: Raster, column: number, field: Field): readonly number[] {
  const rows = new Set<number>();
  const last = board.rows - shape.rows.length;
  const lowest = lowestTaken(board);
  let from = 0;
  for (let page = 0; from <= last; page++) {
    let row = from;
    while (row <= last && !liesFree(board, shape, column, row)) row++;
    if (row > last) break;
    rows.add(row);
    // What lies free here already starts a later page: nothing nearer the top is left to find.
    const next = Math.ceil(((page + 1) * stepY(field) + field.overlap) / cell);
    if (row > lowest) break;
    from = Math.max(next, from + 1);
  }
  return [...rows];
}

function lowestTaken(board: Board): number {
  for (let r = board.rows - 1; r >= 0; r--)
    if (board.sums[r * (board.columns + 1) + board.columns]! > 0) return r;
  return -1;
}
