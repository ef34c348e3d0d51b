import type { ShapeCells } from './shape-cells.js';

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
export function liesFree(board: Board, shape: ShapeCells, column: number, row: number): boolean {
  if (column < 0 || row < 0 || column + shape.columns > board.columns || row + shape.rows.length > board.rows)
    return false;
  const { sums } = board,
    { probes } = shape;
  const width = board.columns + 1,
    first = row * width + column;
  for (let i = 0; i < probes.length; i += 3) {
    const line = first + probes[i]! * width;
    if (sums[line + probes[i + 2]!] !== sums[line + probes[i + 1]!]) return false;
  }
  return true;
}

/** Takes the cells of a shape and `gap` cells round them. Changes the board. */
export function takeCells(board: Board, shape: ShapeCells, column: number, row: number, gap: number): void {
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
