import { requireDistance, requirePoint } from '@paperhinge/geometry/internal';
import { boxOf } from '../plane/polygon.js';
import { type Arrangement, isBetter, type Shape } from './arrangement.js';
import { type Candidate, candidatesOf } from './candidates.js';
import { type PageField, stepX, stepY, windowsFor } from './field.js';
import { laidAgain, layOut, type Task } from './lay.js';
import { ordersOf, shuffled } from './orders.js';
import { cell } from './shape-cells.js';
import type { SheetPlan } from './sheet.js';
import { type Turning, turnings } from './turning.js';

/** What is kept between shapes and round them, in mm, and how they may be turned. */
export interface ArrangeOptions {
  /** By how much shapes may be turned where it saves pages. Default: by quarters, as paper has no grain. */
  readonly turning?: Turning;
  /** How many of the first shapes are laid before all others, upright: what must come on the first page. */
  readonly ahead?: number;
  /** mm, either way up: no sheet is put together larger, but for a shape that is larger itself. Without, one sheet. */
  readonly largest?: { readonly width: number; readonly height: number };
  /** Whether length is saved, not pages: paper off a roll, sheets of one page. */
  readonly shortest?: boolean;
  /** Orders tried where length is saved, times the shapes. Default 600. */
  readonly tries?: number;
}

/** Shapes beyond this many are laid out in fewer ways, each but once, so that hundreds are still quick. */
const manyShapes = 16;
/** The same for pages that the shapes' boxes would fill. */
const manyPages = 36;
/** Orders beyond the first that are tried over all widths of sheet, times the ways in which all shapes may lie. */
const mostTries = 160;
/** Orders tried where length is saved, times the shapes. */
const mostShortTries = 600;
/** Times that each shape is taken up and laid down again, at most. */
const rounds = 3;

/**
 * Lays shapes on the page grid without overlap so that few pages are needed and few joins are crossed. Greedy by cells
 * over several orders and widths of sheet; in the best of these each shape is then taken up and laid down again while
 * that saves something. A freer hand to turn never does worse: what a lesser turn finds is tried as well; among many
 * shapes, and where length is saved, quarter turns alone do without what half turns would find. The same shapes always
 * lie the same way; the time taken grows as the number of shapes.
 * @throws PatternError `coordinate-out-of-range`, `not-a-number`
 */
export function arrange(
  shapes: readonly Shape[],
  field: PageField,
  options: ArrangeOptions = {},
): Arrangement {
  for (const { polygons } of shapes) polygons.flat().forEach(requirePoint);
  for (const mm of [field.width, field.height, field.overlap]) requireDistance(mm, 'length');
  const { turning = 'quarter' } = options;
  const many = isMany(shapes, field);
  const all = turningsBelow(turning);
  const lesser = many || options.shortest ? all.slice(-1).filter(t => t !== 'half') : all;
  const found = [...lesser, turning].map(t => arrangeTurned(shapes, field, { ...options, turning: t }, many));
  return inSequence(found.reduce((best, next) => (isBetter(next, best) ? next : best)));
}

const turningsBelow = (turning: Turning): readonly Turning[] => turnings.slice(0, turnings.indexOf(turning));

function isMany(shapes: readonly Shape[], field: PageField): boolean {
  return shapes.length > manyShapes || areaOf(shapes) > manyPages * stepX(field) * stepY(field);
}

const areaOf = (shapes: readonly Shape[]): number =>
  shapes.reduce((sum, { polygons }) => {
    const { width, height } = boxOf(polygons);
    return sum + width * height;
  }, 0);

function arrangeTurned(
  shapes: readonly Shape[],
  field: PageField,
  options: ArrangeOptions & { readonly turning: Turning },
  many: boolean,
): Arrangement {
  const { ahead = 0, turning } = options;
  // Leaning shapes among very many are tried by their long sides alone.
  const candidates = shapes.map((shape, i) =>
    candidatesOf(shape, i < ahead ? 'none' : many && turning === 'any' ? 'sides' : turning),
  );
  const plans = plansFor(candidates, areaOf(shapes), field, { ...options, many });
  const task = { shapes, candidates, ahead };
  return options.shortest
    ? shortest(task, plans[0]!, many ? 0 : (options.tries ?? mostShortTries))
    : fewestPages(task, plans, many);
}

/** The widths of sheet that are tried: few shapes on every one from the narrowest, many on sheets about as wide as high. */
function plansFor(
  candidates: readonly (readonly Candidate[])[],
  area: number,
  field: PageField,
  { largest, shortest = false, many }: ArrangeOptions & { readonly many: boolean },
): readonly SheetPlan[] {
  const narrowest = Math.max(...candidates.map(list => Math.min(...list.map(c => c.cells.columns)))) * cell;
  const fewest = windowsFor(narrowest, field.width, field.overlap);
  const tall = candidates.map(list => Math.max(...list.map(c => c.cells.rows.length)));
  const wide = candidates.map(list => Math.max(...list.map(c => c.cells.columns)));
  const [together, abreast] = [tall, wide].map(all =>
    all.reduce((sum, cells) => sum + cells + slackCells, 0),
  ) as [number, number];
  // Beside what the shapes take, one that keeps clear of a join may start on the next row of pages.
  const pageRows = Math.ceil(field.height / cell);
  // Where all fit on one page there is no join to keep clear of: of its width, and height, no more is looked at.
  const enoughRows =
    shortest || together <= pageRows
      ? together
      : together + pageRows * (Math.min(tall.length, mostSteps) + 2);
  const enoughColumns = shortest || abreast * cell <= field.width ? abreast : Number.POSITIVE_INFINITY;
  const plan = (columns: number): SheetPlan => ({
    field,
    columns,
    rows: largest ? rowsWithin(columns, field, largest) : Number.POSITIVE_INFINITY,
    shortest,
    enoughRows,
    enoughColumns,
  });
  if (shortest) return [plan(1)];
  const likely = Math.ceil(Math.sqrt(area / (stepX(field) * stepY(field)))) + 1;
  const from = many ? Math.max(fewest, likely - 1) : fewest;
  const widths = Array.from({ length: Math.max(likely - from + 2, 2) }, (_, i) => from + i);
  const most = largest
    ? Math.max(Math.floor((longSide(largest) - field.overlap) / stepX(field)), 1)
    : Number.POSITIVE_INFINITY;
  const within = [...new Set(widths.map(w => Math.min(w, most)))];
  return within.map(plan);
}

/** Rows of pages that shapes can leave empty above them on one sheet. */
const mostSteps = 40;

/** Cells between shapes: the gap, and the step clear of a page's edge. */
const slackCells = 5;

const longSide = ({ width, height }: { readonly width: number; readonly height: number }) =>
  Math.max(width, height);

/** Rows of pages on a sheet of so many columns, whichever way up it is within the largest. */
function rowsWithin(
  columns: number,
  field: PageField,
  largest: { readonly width: number; readonly height: number },
): number {
  const [short, long] = [Math.min(largest.width, largest.height), longSide(largest)];
  const width = columns * stepX(field) + field.overlap;
  return Math.max(Math.floor(((width <= short ? long : short) - field.overlap) / stepY(field)), 1);
}

function fewestPages(task: Omit<Task, 'order'>, plans: readonly SheetPlan[], many: boolean): Arrangement {
  const orders = ordersOf(task.candidates, task.ahead);
  let left = many ? 0 : Math.floor(mostTries / task.candidates.reduce((sum, c) => sum + c.length, 0));
  let best: Arrangement | undefined;
  for (const plan of plans)
    for (const [n, order] of orders.entries()) {
      if (n > 0 && left-- <= 0) break;
      if (best?.count === 1 && best.held === 0 && best.slivers.every(s => s.length === 0)) return best;
      const start = layOut({ ...task, order }, plan);
      const found = many ? start : laidAgain({ ...task, order }, plan, start, rounds);
      if (!best || isBetter(found, best)) best = found;
    }
  return best!;
}

/** Many orders in turn, each with some shapes held to one way of lying: which of them ends highest cannot be foreseen. */
function shortest(task: Omit<Task, 'order'>, plan: SheetPlan, mostTries: number): Arrangement {
  const { candidates, ahead } = task;
  const orders = ordersOf(candidates, ahead).slice(0, mostTries === 0 ? 3 : undefined);
  const [first, ...others] = orders.map(order => layOut({ ...task, order }, plan));
  let best = others.reduce((a, b) => (isBetter(b, a) ? b : a), first!);
  const tries = Math.floor(mostTries / candidates.length);
  const draw = shuffled(candidates, ahead);
  for (let n = 0; n < tries; n++) {
    const { order, held } = draw();
    const found = layOut({ ...task, order, candidates: held }, plan);
    if (isBetter(found, best)) best = found;
  }
  return best;
}

/** The sheets numbered without gaps, in the order in which shapes come on them. */
function inSequence(arrangement: Arrangement): Arrangement {
  const numbers = new Map<number, number>();
  for (const { sheet } of arrangement.placings) if (!numbers.has(sheet)) numbers.set(sheet, numbers.size);
  const placings = arrangement.placings.map(p => ({ ...p, sheet: numbers.get(p.sheet)! }));
  return { ...arrangement, placings };
}
