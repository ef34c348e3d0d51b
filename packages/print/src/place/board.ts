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
export const liesFree = (board: Board, shape: ShapeCells, column: number, row: number): boolean =>
  firstFree(board, shape, column, row, row) === row;

/**
 * The first row from `from` to `to` at which a shape lies free in a column. Rows that cannot be free are passed over: a
 * taken cell keeps a shape off for as many rows as it reaches above the cell that met it.
 */
export function firstFree(
  board: Board,
  shape: ShapeCells,
  column: number,
  from: number,
  to: number,
): number | undefined {
  if (column < 0 || from < 0 || column + shape.columns > board.columns) return undefined;
  const last = Math.min(to, board.rows - shape.rows.length);
  for (let row = from; row <= last; ) {
    const blocked = rowsBlocked(board, shape, column, row);
    if (blocked === 0) return row;
    row += blocked;
  }
  return undefined;
}

/** Rows by which a shape must go down at least from where it does not lie free; 0 where it does. */
function rowsBlocked(
  { columns, sums, taken }: Board,
  shape: ShapeCells,
  column: number,
  row: number,
): number {
  const { probes, tops } = shape;
  const first = row * (columns + 1) + column;
  for (let i = 0; i < probes.length; i += 3) {
    const r = probes[i]!,
      from = probes[i + 1]!,
      to = probes[i + 2]!;
    const line = first + r * (columns + 1);
    if (sums[line + to] === sums[line + from]) continue;
    const cells = (row + r) * columns + column;
    let most = 1;
    for (let c = from; c < to; c++) {
      const top = tops[c]!;
      if (top >= 0 && r - top >= most && taken[cells + c]) most = r - top + 1;
    }
    return most;
  }
  return 0;
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
