import type { Point } from '@paperhinge/geometry';
import { type Board, firstFree, liesFree } from './board.js';
import type { Candidate } from './candidates.js';
import { ownerOf, type PageField, stepX, stepY } from './field.js';
import { carriedShaft, runsAlongJoin } from './shafts.js';
import { cell, type ShapeCells } from './shape-cells.js';
import { type Sheet, type SheetPlan, touchedPages } from './sheet.js';
import { sliver, sliversOf } from './slivers.js';

/** Where a shape may go on a sheet, and what that costs: new pages and joins, or how far down it reaches. */
export interface Spot {
  readonly candidate: Candidate;
  readonly column: number;
  readonly row: number;
  readonly cost: number;
}

/** How many of the cheapest places are looked at for one without a sliver, and with no shaft along a join. */
const placesLookedAt = 60;

/**
 * The place that needs fewest new pages, then crosses fewest joins, then lies nearest the top left; but no place that
 * leaves a sliver of the shape alone on a page, or its shaft on a join, while there is one that does not. None where
 * the sheet is full.
 */
export function bestSpot(sheet: Sheet, candidates: readonly Candidate[], plan: SheetPlan): Spot | undefined {
  const spots: Spot[] = [];
  for (const c of candidates)
    if (c.cells.area <= sheet.free)
      for (const spot of plan.shortest ? highestSpots(sheet, c) : pageSpots(sheet, c, plan.field))
        spots.push(spot);
  const cheapest = cheapestOf(spots);
  const isGood = (s: Spot) => leavesNoSliver(s, plan.field) && keepsOffJoins(s, sheet, plan.field);
  if (!cheapest || isGood(cheapest)) return cheapest;
  spots.sort((a, b) => a.cost - b.cost);
  return (
    spots.slice(1, placesLookedAt).find(isGood) ??
    spots.slice(placesLookedAt).find((s, i) => i % 4 === 0 && isGood(s)) ??
    spots.slice(0, placesLookedAt).find(s => leavesNoSliver(s, plan.field)) ??
    cheapest
  );
}

/** The first of the cheapest: most often it will do, and thousands need not be sorted. */
function cheapestOf(spots: readonly Spot[]): Spot | undefined {
  let best = spots[0];
  for (const spot of spots) if (spot.cost < best!.cost) best = spot;
  return best;
}

const leavesNoSliver = ({ candidate, column, row }: Spot, field: PageField): boolean =>
  sliversOf(
    field,
    candidate.polygon.map(p => ({ x: p.x + column * cell, y: p.y + row * cell })),
  ).length === 0;

function keepsOffJoins({ candidate, column, row }: Spot, sheet: Sheet, field: PageField): boolean {
  const joined = { columns: sheet.pageColumns, rows: sheet.rowOf.at(-1)! + 1 };
  const carry = (p: Point): Point => ({ x: p.x + column * cell, y: p.y + row * cell });
  return !candidate.shafts.some(s => runsAlongJoin(field, joined, carriedShaft(s, carry)));
}

/** A new page outweighs any number of joins crossed; a new sheet counts less than a join. */
export const costs = { page: 1000, join: 20, sheet: 10 } as const;

function* pageSpots(sheet: Sheet, candidate: Candidate, field: PageField): Generator<Spot> {
  const { cells } = candidate;
  for (const column of columnsToTry(sheet.board, cells, field))
    for (const row of rowsToTry(sheet, cells, column, field)) {
      const pages = touchedPages(cells, column, row, sheet);
      let fresh = 0;
      for (const page of pages) if (!sheet.used[page]) fresh++;
      // Where it lies counts least.
      const nearness = (row + column / 3) / 50;
      const cost = fresh * costs.page + pages.length * costs.join + nearness + candidate.cost;
      yield { candidate, column, row, cost };
    }
}

/** In every column the highest free place; what counts is how far down the shape reaches there. */
function highestSpots(sheet: Sheet, candidate: Candidate): readonly Spot[] {
  const { cells } = candidate;
  const { board } = sheet;
  const spots: Spot[] = [];
  const last = candidate.atLeft ? 0 : board.columns - cells.columns;
  for (let column = 0; column <= last; column++) {
    const row = firstFree(board, cells, column, startRow(sheet), board.rows);
    if (row === undefined) continue;
    spots.push({ candidate, column, row, cost: row + cells.rows.length + column / 1000 });
  }
  return spots;
}

/** Rows further up than this above the lowest are not searched any more, so that no sheet takes longer the longer it is. */
const searchedRows = 500;
const startRow = ({ lowest }: Sheet): number => Math.max(lowest - searchedRows, 0);

/** Columns worth trying: every sixth cell, and those that align a side with the edge of a page, or stand well clear of it. */
function columnsToTry(board: Board, cells: ShapeCells, field: PageField): readonly number[] {
  const last = board.columns - cells.columns;
  const columns = new Set<number>();
  for (let c = 0; c <= last; c += 6) columns.add(c);
  for (let page = 0; page * stepX(field) < board.columns * cell; page++) {
    const starts = Math.ceil((page * stepX(field) + (page > 0 ? field.overlap : 0)) / cell);
    const ends = Math.floor(((page + 1) * stepX(field) + field.overlap) / cell) - cells.columns;
    for (const c of [starts, starts - clear, ends, ends + clear]) columns.add(c);
  }
  columns.add(last);
  return [...columns].filter(c => c >= 0 && c <= last).sort((a, b) => a - b);
}

/** Cells from a page's edge that leave no sliver on either side of it. */
const clear = Math.ceil(sliver / cell) + 1;

/** Beyond this many free rows in a column the rest lie further down and would need new pages as well. */
const enoughRows = 6;

/** In a column: the first free row from the top and from the start of each row of pages, and the row well clear of it. */
function rowsToTry(sheet: Sheet, cells: ShapeCells, column: number, field: PageField): readonly number[] {
  const { board, lowest } = sheet;
  const rows: number[] = [];
  const last = board.rows - cells.rows.length;
  let from = startRow(sheet);
  while (from <= last && rows.length < enoughRows) {
    const row = firstFree(board, cells, column, from, last);
    if (row === undefined) break;
    rows.push(row);
    if (row + clear <= last && liesFree(board, cells, column, row + clear)) rows.push(row + clear);
    if (row >= lowest) break;
    const page = ownerOf((row + 0.5) * cell, field.height, field.overlap) + 1;
    from = Math.ceil((page * stepY(field) + field.overlap) / cell);
  }
  return rows;
}
