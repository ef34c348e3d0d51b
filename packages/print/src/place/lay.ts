import { type Arrangement, isBetter, judged, type Placing, type Shape } from './arrangement.js';
import { bestSpot, costs, type Spot } from './best-spot.js';
import type { Candidate } from './candidates.js';
import { cell } from './shape-cells.js';
import { newSheet, type Sheet, type SheetPlan, takeOn, touchedPages } from './sheet.js';

/** What is laid: the shapes, how each may lie, and in which order. */
export interface Task {
  readonly shapes: readonly Shape[];
  readonly candidates: readonly (readonly Candidate[])[];
  readonly order: readonly number[];
  /** How many of the first shapes stay where they were laid first. */
  readonly ahead: number;
}

/** Of many sheets only so many are looked at for a place, the last ones: the others are full. */
const openSheets = 3;

/** Lays each shape in turn where it is cheapest; on a sheet more where the others have no place for it. */
export function layOut(task: Task, plan: SheetPlan): Arrangement {
  const sheets: Sheet[] = [];
  const placings: Placing[] = new Array(task.shapes.length);
  for (const i of task.order) placings[i] = layOn(sheets, task.candidates[i]!, plan);
  return judged(task.shapes, placings, plan.field);
}

function layOn(sheets: Sheet[], candidates: readonly Candidate[], plan: SheetPlan): Placing {
  const open = cheapestOn(sheets, candidates, plan);
  if (open && (plan.shortest || isFilling(sheets[open.on]!, open.spot))) return take(sheets, open);
  const fresh = newSheet(plan, candidates);
  const spot = bestSpot(fresh, candidates, plan);
  if (open && (!spot || open.spot.cost <= spot.cost + costs.sheet)) return take(sheets, open);
  sheets.push(fresh);
  return take(sheets, { on: sheets.length - 1, spot: spot! });
}

/** A spot on one of several sheets. */
interface SpotOn {
  readonly on: number;
  readonly spot: Spot;
}

function cheapestOn(
  sheets: readonly Sheet[],
  candidates: readonly Candidate[],
  plan: SheetPlan,
): SpotOn | undefined {
  let best: SpotOn | undefined;
  for (let on = Math.max(sheets.length - openSheets, 0); on < sheets.length; on++) {
    const spot = bestSpot(sheets[on]!, candidates, plan);
    if (spot && (!best || spot.cost < best.spot.cost)) best = { on, spot };
  }
  return best;
}

function take(sheets: readonly Sheet[], { on, spot: { candidate, column, row } }: SpotOn): Placing {
  const { cells, turn, home } = candidate;
  takeOn(sheets[on]!, cells, column, row);
  return { sheet: on, turn, by: { x: home.x + column * cell, y: home.y + row * cell } };
}

/** Whether a place needs no page more: no new sheet can be cheaper. */
const isFilling = (sheet: Sheet, { candidate, column, row }: Spot): boolean =>
  touchedPages(candidate.cells, column, row, sheet).every(page => sheet.used[page]);

/** Takes up each shape, the last laid first, and lays it down where it is cheapest now that all others lie. */
export function laidAgain(task: Task, plan: SheetPlan, start: Arrangement, rounds: number): Arrangement {
  let best = start;
  for (let round = 0; round < rounds; round++) {
    const before = best;
    for (const i of [...task.order].reverse()) {
      if (i < task.ahead) continue;
      const again = layOn(sheetsWithout(task, plan, best.placings, i), task.candidates[i]!, plan);
      if (isSame(again, best.placings[i]!)) continue;
      const found = judged(task.shapes, best.placings.with(i, again), plan.field, best);
      if (isBetter(found, best)) best = found;
    }
    if (best === before) break;
  }
  return best;
}

/** The sheets as all shapes but one lie on them. */
function sheetsWithout(
  { candidates }: Task,
  plan: SheetPlan,
  placings: readonly Placing[],
  without: number,
): Sheet[] {
  const lying = placings.map(({ sheet, turn, by }, i) => {
    const { cells, home } = candidates[i]!.find(k => k.turn === turn)!;
    const column = Math.round((by.x - home.x) / cell),
      row = Math.round((by.y - home.y) / cell);
    return { i, sheet, cells, column, row };
  });
  const count = Math.max(...lying.map(l => l.sheet)) + 1;
  return Array.from({ length: count }, (_, n) => {
    const own = lying.filter(l => l.sheet === n);
    const sheet = newSheet(plan, candidates[without]!, {
      columns: Math.max(...own.map(l => l.column + l.cells.columns), 0),
      rows: Math.max(...own.map(l => l.row + l.cells.rows.length), 0),
    });
    for (const { i, cells, column, row } of own) if (i !== without) takeOn(sheet, cells, column, row);
    return sheet;
  });
}

const isSame = (p: Placing, q: Placing): boolean =>
  p.sheet === q.sheet && p.turn === q.turn && p.by.x === q.by.x && p.by.y === q.by.y;
