import type { Point } from '@paperhinge/geometry';
import { crossingsAt, type Polygon } from './polygon.js';

/** Square cells in rows, a byte each. */
export interface Cells {
  /** mm: side of a cell. */
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
  readonly bytes: Uint8Array;
  /** Where the first cell's corner lies. */
  readonly origin: Point;
}

export const emptyCells = (
  cell: number,
  columns: number,
  rows: number,
  origin: Point = { x: 0, y: 0 },
): Cells => ({ cell, columns, rows, origin, bytes: new Uint8Array(columns * rows) });

/** Marks the cells whose middle lies inside a polygon (even-odd). Changes the cells. */
export function markMiddlesInside(cells: Cells, polygon: Polygon): void {
  markRows(cells, polygon, 1, (from, to) => [Math.ceil(from - 0.5), Math.floor(to - 0.5)]);
}

/** Lines sampled in each row of cells, so that no part wider than a quarter cell slips between them. */
const samples = 4;

/** Marks the cells that a polygon enters at all. Changes the cells. */
export function markTouched(cells: Cells, polygon: Polygon): void {
  markRows(cells, polygon, samples, (from, to) => [Math.floor(from), Math.floor(to)]);
  for (let i = 0, j = polygon.length - 1; i < polygon.length; j = i++)
    markAlong(cells, polygon[j]!, polygon[i]!, { value: 1, reach: 0 });
}

/** @param ends the first and the last column of a stretch inside, both given in cells from the first */
function markRows(
  { cell, columns, rows, origin, bytes }: Cells,
  polygon: Polygon,
  lines: number,
  ends: (from: number, to: number) => readonly [number, number],
): void {
  for (let n = 0; n < rows * lines; n++) {
    const crossings = crossingsAt(polygon, origin.y + ((n + 0.5) * cell) / lines);
    const row = Math.floor(n / lines) * columns;
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const [from, to] = ends((crossings[i]! - origin.x) / cell, (crossings[i + 1]! - origin.x) / cell);
      bytes.fill(1, row + Math.max(from, 0), row + Math.min(to, columns - 1) + 1);
    }
  }
}

/** What is written along a line, and how far beside it, mm. */
export interface Trail {
  readonly value: 0 | 1;
  readonly reach: number;
}

/** Writes the cells along a line, by squares round points closer together than a cell. Changes the cells. */
export function markAlong(cells: Cells, a: Point, b: Point, { value, reach }: Trail): void {
  const { cell, columns, rows, origin, bytes } = cells;
  const apart = reach > 0 ? cell : cell / 2;
  const steps = Math.max(Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / apart), 1);
  for (let i = 0; i <= steps; i++) {
    const x = a.x + ((b.x - a.x) * i) / steps - origin.x,
      y = a.y + ((b.y - a.y) * i) / steps - origin.y;
    const c0 = Math.max(Math.floor((x - reach) / cell), 0),
      c1 = Math.min(Math.floor((x + reach) / cell), columns - 1);
    const r0 = Math.max(Math.floor((y - reach) / cell), 0),
      r1 = Math.min(Math.floor((y + reach) / cell), rows - 1);
    if (c1 < c0) continue;
    for (let r = r0; r <= r1; r++) bytes.fill(value, r * columns + c0, r * columns + c1 + 1);
  }
}
