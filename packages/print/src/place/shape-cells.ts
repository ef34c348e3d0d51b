import { boxOf, type Polygon } from '../plane/polygon.js';
import { emptyCells, markTouched } from '../plane/raster.js';

/** mm: side of the cells that shapes are laid out by. */
export const cell = 5;

/** A shape as the cells it touches, row by row: runs [from, to) in ascending order. */
export interface ShapeCells {
  readonly columns: number;
  readonly rows: readonly (readonly (readonly [number, number])[])[];
  /**
   * The same runs one after the other as row, from, to, rows far apart first, from the lowest up: in that order what is
   * taken of a board shows soonest, and what keeps the shape off farthest. It is asked a million times a layout.
   */
  readonly probes: Int32Array;
  /** The first row of each column whose cells are one block; -1 for a column with a gap. */
  readonly tops: Int32Array;
  /** Where every row is one run and meets the next, the runs' ends in turn: from, to, from, to ... */
  readonly runs?: Int32Array;
  /** Cells in all. */
  readonly area: number;
}

/** Rows between one and the next in `probes`. */
const stride = 8;

/** The cells that polygons touch, counted from (0, 0). */
export function shapeCells(polygons: readonly Polygon[]): ShapeCells {
  const { x1, y1 } = boxOf(polygons);
  const columns = Math.max(Math.floor(x1 / cell) + 1, 1),
    rowCount = Math.max(Math.floor(y1 / cell) + 1, 1);
  const cells = emptyCells(cell, columns, rowCount);
  for (const polygon of polygons) markTouched(cells, polygon);
  const rows = Array.from({ length: rowCount }, (_, r) =>
    runsOf(cells.bytes.subarray(r * columns, (r + 1) * columns)),
  );
  const area = cells.bytes.reduce((sum, taken) => sum + taken, 0);
  const runs = plainRuns(rows);
  return {
    columns,
    rows,
    probes: probesOf(rows),
    tops: topsOf(rows, columns),
    area,
    ...(runs ? { runs } : {}),
  };
}

function topsOf(rows: ShapeCells['rows'], columns: number): Int32Array {
  const tops = new Int32Array(columns).fill(-1);
  const ends = new Int32Array(columns).fill(-1);
  const broken = new Uint8Array(columns);
  for (const [r, runs] of rows.entries())
    for (const [from, to] of runs)
      for (let c = from; c < to; c++) {
        if (tops[c]! < 0) tops[c] = r;
        else if (ends[c] !== r - 1) broken[c] = 1;
        ends[c] = r;
      }
  return tops.map((top, c) => (broken[c] ? -1 : top));
}

function plainRuns(rows: ShapeCells['rows']): Int32Array | undefined {
  const isPlain = rows.every((runs, r) => {
    const [next] = rows[r + 1] ?? runs;
    return runs.length === 1 && next && next[0] < runs[0]![1] && next[1] > runs[0]![0];
  });
  return isPlain ? Int32Array.from(rows.flat(2)) : undefined;
}

function probesOf(rows: ShapeCells['rows']): Int32Array {
  const probes: number[] = [];
  for (let first = 0; first < stride; first++)
    for (let r = rows.length - 1 - first; r >= 0; r -= stride)
      for (const [from, to] of rows[r]!) probes.push(r, from, to);
  return Int32Array.from(probes);
}

function runsOf(cells: Uint8Array): readonly (readonly [number, number])[] {
  const runs: [number, number][] = [];
  for (let c = 0; c < cells.length; c++) {
    if (!cells[c]) continue;
    const from = c;
    while (c < cells.length && cells[c]) c++;
    runs.push([from, c]);
  }
  return runs;
}
