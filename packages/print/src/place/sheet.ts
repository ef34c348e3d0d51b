import { type Board, emptyBoard, takeCells } from './board.js';
import type { Candidate } from './candidates.js';
import { ownerOf, type PageField, stepX, stepY } from './field.js';
import { cell, type ShapeCells } from './shape-cells.js';

/** How large a sheet is put together, in pages, and what is saved on it. */
export interface SheetPlan {
  readonly field: PageField;
  readonly columns: number;
  readonly rows: number;
  /** Whether to end as high up as may be, not on few pages: paper off a roll, or a sheet that is one page. */
  readonly shortest: boolean;
  /** Rows of cells that all shapes together can need; a roll is no longer. */
  readonly enoughRows: number;
  /** Columns of cells that they can need side by side; a larger sheet is no wider. */
  readonly enoughColumns: number;
}

/** A sheet on which shapes are laid: the cells that are taken, and the pages in use. Changes as shapes are laid. */
export interface Sheet {
  readonly board: Board;
  readonly pageColumns: number;
  /** Which page each row and column of cells belongs to. */
  readonly columnOf: Int32Array;
  readonly rowOf: Int32Array;
  /** The first cell beyond each column of pages. */
  readonly columnEnd: Int32Array;
  readonly used: Uint8Array;
  /** First row below all that is taken. */
  lowest: number;
  /** Cells not taken. */
  free: number;
}

/**
 * A new sheet of the plan's size, or larger where a shape needs more: then about as many pages as it takes.
 * @param reach cells that lie on it already
 */
export function newSheet(
  plan: SheetPlan,
  candidates: readonly Candidate[],
  reach: { readonly columns: number; readonly rows: number } = { columns: 0, rows: 0 },
): Sheet {
  const { field } = plan;
  const pagesFor = ({ cells }: Candidate) => ({
    columns: Math.max(Math.ceil((cells.columns * cell - field.overlap) / stepX(field)), 1),
    rows: Math.max(Math.ceil((cells.rows.length * cell - field.overlap) / stepY(field)), 1),
  });
  const needed = candidates.map(pagesFor);
  const fits = needed.some(n => n.columns <= plan.columns && n.rows <= plan.rows);
  const least = needed.reduce((a, b) => (b.columns * b.rows < a.columns * a.rows ? b : a));
  // A row and a column more leave room to lay an oversized shape so that no join leaves a sliver.
  const columns = fits ? plan.columns : Math.max(least.columns + 1, plan.columns),
    rows = fits ? plan.rows : Math.max(least.rows + 1, plan.rows);
  const cellsIn = (pages: number, step: number) => Math.floor((pages * step + field.overlap) / cell);
  const tallest = Math.min(...candidates.map(c => c.cells.rows.length));
  const height = Math.max(Math.min(cellsIn(rows, stepY(field)), plan.enoughRows), tallest, reach.rows);
  const widest = Math.min(...candidates.map(c => c.cells.columns));
  const width = Math.max(Math.min(cellsIn(columns, stepX(field)), plan.enoughColumns), widest, reach.columns);
  return sheetOf(emptyBoard(width, height), field);
}

function sheetOf(board: Board, field: PageField): Sheet {
  const owners = (count: number, window: number) =>
    Int32Array.from({ length: count }, (_, i) => ownerOf((i + 0.5) * cell, window, field.overlap));
  const columnOf = owners(board.columns, field.width),
    rowOf = owners(board.rows, field.height);
  const pageColumns = columnOf.at(-1)! + 1;
  const columnEnd = new Int32Array(pageColumns);
  for (const [i, owner] of columnOf.entries()) columnEnd[owner] = i + 1;
  return {
    board,
    pageColumns,
    columnOf,
    columnEnd,
    rowOf,
    used: new Uint8Array(pageColumns * (rowOf.at(-1)! + 1)),
    lowest: 0,
    free: board.columns * board.rows,
  };
}

/** Cells of paper kept between neighbours so that scissors pass. */
const gapCells = 1;

/** Takes the cells of a shape at a place. */
export function takeOn(sheet: Sheet, cells: ShapeCells, column: number, row: number): void {
  takeCells(sheet.board, cells, column, row, gapCells);
  sheet.lowest = Math.max(sheet.lowest, row + cells.rows.length + gapCells);
  sheet.free -= cells.area;
  for (const page of touchedPages(cells, column, row, sheet)) sheet.used[page] = 1;
}

/** The pages a shape touches at a place. */
export function touchedPages(
  cells: ShapeCells,
  column: number,
  row: number,
  sheet: Sheet,
): readonly number[] {
  if (cells.runs) return pagesOfRuns(cells.runs, column, row, sheet);
  const { columnOf, columnEnd, rowOf, pageColumns } = sheet;
  const most = columnOf[column + cells.columns - 1]! - columnOf[column]! + 1;
  const pages: number[] = [];
  let band = -1,
    inBand = 0;
  for (let r = 0; r < cells.rows.length; r++) {
    const own = rowOf[row + r]!;
    if (own !== band) {
      band = own;
      inBand = 0;
    }
    // Once every page of a row of pages is known to be touched, its other cells tell nothing new.
    if (inBand === most) continue;
    const base = own * pageColumns;
    const runs = cells.rows[r]!;
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

/** The same where each row is one run that meets the next: in a row of pages they are all from the first to the last. */
function pagesOfRuns(
  runs: Int32Array,
  column: number,
  row: number,
  { columnOf, rowOf, pageColumns }: Sheet,
): readonly number[] {
  const pages: number[] = [];
  for (let i = 0, r = row; i < runs.length; ) {
    const band = rowOf[r]!;
    let from = runs[i]!,
      to = runs[i + 1]!;
    for (; i < runs.length && rowOf[r] === band; i += 2, r++) {
      if (runs[i]! < from) from = runs[i]!;
      if (runs[i + 1]! > to) to = runs[i + 1]!;
    }
    for (let page = columnOf[column + from]!; page <= columnOf[column + to - 1]!; page++)
      pages.push(band * pageColumns + page);
  }
  return pages;
}
