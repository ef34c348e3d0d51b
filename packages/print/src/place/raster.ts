import type { Point } from '@paperhinge/geometry';

/** A shape as the cells it touches, row by row: runs [from, to) in ascending order. */
export interface Raster {
  readonly columns: number;
  readonly rows: readonly (readonly (readonly [number, number])[])[];
  /**
   * The same runs one after the other as row, from, to, rows far apart first: in that order what is taken of a board
   * shows soonest. It is asked a million times a layout.
   */
  readonly probes: Int32Array;
}

/** Rows between one and the next in `probes`. */
const stride = 8;

/** Sub-rows sampled in each row of cells, so that no part wider than a quarter cell slips between them. */
const samples = 4;

/**
 * The cells of side `cell` mm that polygons touch, counted from (0, 0). Boundaries are walked, insides filled by
 * even-odd: a cell that a polygon enters at all is taken.
 */
export function rasterOf(polygons: readonly (readonly Point[])[], cell: number): Raster {
  const all = polygons.flat();
  const columns = Math.max(Math.floor(Math.max(...all.map(p => p.x)) / cell) + 1, 1);
  const rowCount = Math.max(Math.floor(Math.max(...all.map(p => p.y)) / cell) + 1, 1);
  const taken = new Uint8Array(columns * rowCount);
  for (const polygon of polygons) {
    fillEvenOdd(taken, columns, rowCount, polygon, cell);
    walkBoundary(taken, columns, rowCount, polygon, cell);
  }
  const rows = Array.from({ length: rowCount }, (_, r) =>
    runsOf(taken.subarray(r * columns, (r + 1) * columns)),
  );
  return { columns, rows, probes: probesOf(rows) };
}

function probesOf(rows: Raster['rows']): Int32Array {
  const probes: number[] = [];
  for (let first = 0; first < stride; first++)
    for (let r = first; r < rows.length; r += stride)
      for (const [from, to] of rows[r]!) probes.push(r, from, to);
  return Int32Array.from(probes);
}

function fillEvenOdd(
  taken: Uint8Array,
  columns: number,
  rowCount: number,
  polygon: readonly Point[],
  cell: number,
): void {
  for (let s = 0; s < rowCount * samples; s++) {
    const y = ((s + 0.5) * cell) / samples;
    const crossings: number[] = [];
    for (let i = 0, j = polygon.length - 1; i < polygon.length; j = i++) {
      const a = polygon[j]!,
        b = polygon[i]!;
      if (a.y > y !== b.y > y) crossings.push(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y));
    }
    crossings.sort((p, q) => p - q);
    const row = Math.floor(s / samples) * columns;
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const from = Math.max(Math.floor(crossings[i]! / cell), 0);
      const to = Math.min(Math.floor(crossings[i + 1]! / cell), columns - 1);
      taken.fill(1, row + from, row + to + 1);
    }
  }
}

function walkBoundary(
  taken: Uint8Array,
  columns: number,
  rowCount: number,
  polygon: readonly Point[],
  cell: number,
): void {
  for (let i = 0, j = polygon.length - 1; i < polygon.length; j = i++) {
    const a = polygon[j]!,
      b = polygon[i]!;
    const steps = Math.max(Math.ceil((2 * Math.hypot(b.x - a.x, b.y - a.y)) / cell), 1);
    for (let k = 0; k <= steps; k++) {
      const c = Math.floor((a.x + ((b.x - a.x) * k) / steps) / cell),
        r = Math.floor((a.y + ((b.y - a.y) * k) / steps) / cell);
      if (c >= 0 && c < columns && r >= 0 && r < rowCount) taken[r * columns + c] = 1;
    }
  }
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
