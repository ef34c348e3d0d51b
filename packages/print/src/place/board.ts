import type { Raster } from './raster.js';

/** The board that shapes are laid on, as taken cells; `sums` makes asking for a run one subtraction. */
export interface Board {
  readonly columns: number;
  readonly rows: number;
  readonly taken: Uint8Array;
  /** taken cells left of a cell, row by row: (columns + 1) a row. */
  readonly sums: Int32Array;
}

export const emptyBoard = (columns: number, rows: number): Board => ({
  columns,
  rows,
  taken: new Uint8Array(columns * rows),
  sums: new Int32Array((columns + 1) * rows),
});

/** Whether a shape lies free with its first cell at (column, row). */
export function liesFree(board: Board, shape: Raster, column: number, row: number): boolean {
  if (column < 0 || row < 0 || column + shape.columns > board.columns || row + shape.rows.length > board.rows)
    return false;
  const { sums, columns } = board;
  const count = shape.rows.length;
  // Rows far apart first: what is taken shows soonest so.
  for (let first = 0; first < stride && first < count; first++)
    for (let r = first; r < count; r += stride) {
      const line = (row + r) * (columns + 1) + column;
      for (const [from, to] of shape.rows[r]!) if (sums[line + to] !== sums[line + from]) return false;
    }
  return true;
}
const stride = 8;

/** Takes the cells of a shape and `gap` cells round them. Changes the board. */
export function takeCells(board: Board, shape: Raster, column: number, row: number, gap: number): void {
  const { columns, rows, taken, sums } = board;
  const top = Math.max(row - gap, 0),
    bottom = Math.min(row + shape.rows.length + gap, rows);
  for (const [r, runs] of shape.rows.entries())
    for (const [from, to] of runs)
      for (let y = Math.max(row + r - gap, 0); y < Math.min(row + r + gap + 1, rows); y++)
        taken.fill(
          1,
          y * columns + Math.max(column + from - gap, 0),
          y * columns + Math.min(column + to + gap, columns),
        );
  for (let y = top; y < bottom; y++) {
    let count = 0;
    for (let x = 0; x < columns; x++) {
      count += taken[y * columns + x]!;
      sums[y * (columns + 1) + x + 1] = count;
    }
  }
}
