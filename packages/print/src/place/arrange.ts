import type { Point } from '@paperhinge/geometry';
import type { Polygon } from '../drawing/room.js';
import { bestSpot, type Candidate, cell, newTally, touchedPages } from './best-spot.js';
import { emptyBoard, takeCells } from './board.js';
import { boxOf } from './extent.js';
import { type Cell, type Field, pagesOf, stepX, stepY, windowsFor } from './field.js';
import { rasterOf } from './raster.js';
import { sliversOf } from './slivers.js';
import { type Turn, type Turning, turnedPoint, turnsFor } from './turning.js';

/** Something to lay down, upright, by the polygons that enclose it; the first is the piece itself. */
export interface Shape {
  readonly polygons: readonly Polygon[];
}

/** Where a shape lies: its points turned, then moved by `by`. */
export interface Placing {
  readonly turn: Turn;
  readonly by: Point;
}

/** Where every shape was laid, and how large the field is. */
export interface Arrangement {
  /** In the order of the shapes. */
  readonly placings: readonly Placing[];
  /** The pages of each shape. */
  readonly pages: readonly (readonly Cell[])[];
  /** The pages on which a shape leaves less than 8 mm of itself beyond a join; none unless there is no way round it. */
  readonly slivers: readonly (readonly Cell[])[];
  /** Pages in all, each counted once. */
  readonly count: number;
  /** Joins that shapes run across: pages a shape lies on, less one, summed. */
  readonly crossings: number;
}

/** What is kept between shapes and round them, in mm, and how they may be turned. */
export interface ArrangeOptions {
  /** By how much shapes may be turned where it saves pages. Default: half round. */
  readonly turning?: Turning;
  /** How many of the first shapes are laid before all others, upright: what must come on the first page. */
  readonly ahead?: number;
}

/** Cells of paper kept between neighbours so that scissors pass. */
const gapCells = 1;
/** Shapes beyond this many are laid out in fewer ways, each but once, so that a coat of sixty pages is still quick. */
const manyShapes = 16;
/** The same for pages that the shapes' boxes would fill. */
const manyPages = 36;
/** Orders beyond the first that are tried over all widths of sheet, times the ways in which all shapes may lie. */
const mostTries = 300;
/** Times that each shape is taken up and laid down again, at most. */
const rounds = 3;

/**
 * Lays shapes on the page grid without overlap so that few pages are needed and few joins are crossed. Greedy by cells
 * over several orders and widths of sheet; in the best of these each shape is then taken up and laid down again while
 * that saves something. The same shapes always lie the same way.
 */
export function arrange(shapes: readonly Shape[], field: Field, options: ArrangeOptions = {}): Arrangement {
  const { ahead = 0, turning = 'half' } = options;
  const candidates = shapes.map((shape, i) => candidatesOf(shape, i < ahead ? 'none' : turning));
  const narrowest = Math.max(...candidates.map(list => Math.min(...list.map(c => c.raster.columns)))) * cell;
  const fewest = windowsFor(narrowest, field.width, field.overlap);
  const area = shapes.reduce((sum, s) => sum + boxArea(s), 0);
  const likely = Math.ceil(Math.sqrt(area / (stepX(field) * stepY(field)))) + 1;
  // Few shapes are tried on every width of sheet from the narrowest; many on sheets about as wide as high.
  const many = shapes.length > manyShapes || area > manyPages * stepX(field) * stepY(field);
  const from = many ? Math.max(fewest, likely - 1) : fewest;
  const widths = Array.from({ length: Math.max(likely - from + 2, 2) }, (_, i) => from + i);
  let best: Arrangement | undefined;
  let left = many ? 0 : Math.floor(mostTries / candidates.reduce((sum, c) => sum + c.length, 0));
  // A freer hand does not always find the better place, so the pieces as they stand are tried as well.
  const asTheyStand = candidates.map(list => list.slice(0, 1));
  const ways = turning === 'none' || many ? [candidates] : [candidates, asTheyStand];
  for (const way of ways)
    for (const columns of widths.filter(w => way.every(list => list.some(c => fitsIn(c, w, field)))))
      for (const [n, order] of orders(shapes, way, ahead).entries()) {
        if (n > 0 && left-- <= 0) break;
        if (best?.count === 1 && best.slivers.every(s => s.length === 0)) return best;
        const sheet = { order, columns, field, ahead, rounds: many ? 0 : rounds };
        const found = laidAgain(shapes, way, layOut(shapes, way, order, columns, field), sheet);
        if (!best || isBetter(found, best)) best = found;
      }
  return best!;
}

const fitsIn = ({ raster }: Candidate, columns: number, field: Field): boolean =>
  raster.columns <= Math.floor((columns * stepX(field) + field.overlap) / cell);

/** No sliver first, then fewer pages, then fewer joins. */
const isBetter = (a: Arrangement, b: Arrangement): boolean => {
  const slivers = (x: Arrangement) => x.slivers.reduce((sum, s) => sum + s.length, 0);
  const rank = [slivers(a) - slivers(b), a.count - b.count, a.crossings - b.crossings].find(d => d !== 0);
  return rank !== undefined && rank < 0;
};

function candidatesOf(shape: Shape, turning: Turning): readonly Candidate[] {
  const all = turnsFor(shape.polygons, turning).map(turn => candidate(shape, turn));
  // A shape that looks the same when turned need not be tried twice.
  const looks = all.map(c => `${c.raster.columns}:${c.raster.rows}`);
  return all.filter((_, i) => looks.indexOf(looks[i]!) === i);
}

function candidate({ polygons }: Shape, turn: Turn): Candidate {
  const turned = polygons.map(polygon => polygon.map(p => turnedPoint(p, turn)));
  const { x0, y0 } = boxOf(turned);
  const home = { x: inset - x0, y: inset - y0 };
  const moved = turned.map(polygon => polygon.map(p => ({ x: p.x + home.x, y: p.y + home.y })));
  const leaning = turn.x !== 0 && turn.y !== 0;
  const cost = turn.x === 1 ? 0 : leaning ? 15 : turn.x === -1 ? 5 : 8;
  return { turn, cost, raster: rasterOf(moved, cell), polygon: moved[0]!, home };
}
/** mm: keeps the cutting line's own width on the page. */
const inset = 0.5;

function boxArea({ polygons }: Shape): number {
  const { width, height } = boxOf(polygons);
  return width * height;
}

/** The orders in which shapes are laid: largest first, tallest first, widest first, then each shape in turn before the others. */
function orders(
  shapes: readonly Shape[],
  candidates: readonly (readonly Candidate[])[],
  ahead: number,
): readonly (readonly number[])[] {
  const first = (i: number) => Math.min(i, ahead);
  const by = (size: (i: number) => number) =>
    shapes.map((_, i) => i).sort((a, b) => first(a) - first(b) || size(b) - size(a) || a - b);
  const tall = (i: number) => candidates[i]![0]!.raster.rows.length,
    wide = (i: number) => candidates[i]![0]!.raster.columns;
  const largest = by(i => tall(i) * wide(i));
  const led = largest
    .slice(ahead + 1)
    .map(i => by(k => (k === i ? Number.POSITIVE_INFINITY : tall(k) * wide(k))));
  const all = [largest, by(tall), by(wide), ...led];
  return all.filter((order, i) => all.findIndex(o => o.join() === order.join()) === i);
}

interface Sheet {
  readonly order: readonly number[];
  readonly columns: number;
  readonly field: Field;
}

/** The board and the pages in use once shapes lie where they lie; one may be left out. */
function boardWith(
  candidates: readonly (readonly Candidate[])[],
  { order, columns, field }: Sheet,
  placings: readonly (Placing | undefined)[],
) {
  const width = columns * stepX(field) + field.overlap;
  const tallest = (i: number) => Math.max(...candidates[i]!.map(c => c.raster.rows.length));
  const height = order.reduce((sum, i) => sum + tallest(i) + gapCells, 0) * cell + field.height;
  const board = emptyBoard(Math.floor(width / cell), Math.ceil(height / cell));
  const tally = newTally(board, field);
  let lowest = 0;
  const take = (c: Candidate, column: number, row: number) => {
    takeCells(board, c.raster, column, row, gapCells);
    lowest = Math.max(lowest, row + c.raster.rows.length + gapCells);
    for (const page of touchedPages(c.raster, column, row, tally)) tally.used[page] = 1;
  };
  for (const i of order) {
    const placing = placings[i];
    if (!placing) continue;
    const c = candidates[i]!.find(k => k.turn === placing.turn)!;
    take(c, Math.round((placing.by.x - c.home.x) / cell), Math.round((placing.by.y - c.home.y) / cell));
  }
  return {
    /** Lays one more shape where it is cheapest. */
    lay(i: number): Placing {
      const { candidate: c, column, row } = bestSpot(board, candidates[i]!, tally, lowest, field);
      take(c, column, row);
      return { turn: c.turn, by: { x: c.home.x + column * cell, y: c.home.y + row * cell } };
    },
  };
}

function layOut(
  shapes: readonly Shape[],
  candidates: readonly (readonly Candidate[])[],
  order: readonly number[],
  columns: number,
  field: Field,
): Arrangement {
  const placings: Placing[] = new Array(shapes.length);
  const board = boardWith(candidates, { order, columns, field }, placings);
  for (const i of order) placings[i] = board.lay(i);
  return judged(shapes, placings, field);
}

/** Takes up each shape, the smallest first, and lays it down where it is cheapest now that all others lie. */
function laidAgain(
  shapes: readonly Shape[],
  candidates: readonly (readonly Candidate[])[],
  start: Arrangement,
  sheet: Sheet & { readonly ahead: number; readonly rounds: number },
): Arrangement {
  let best = start;
  for (let round = 0; round < sheet.rounds; round++) {
    const before = best;
    for (const i of [...sheet.order].reverse()) {
      if (i < sheet.ahead) continue;
      const placings: (Placing | undefined)[] = [...best.placings];
      placings[i] = undefined;
      const again = boardWith(candidates, sheet, placings).lay(i);
      if (isSame(again, best.placings[i]!)) continue;
      placings[i] = again;
      const found = judged(shapes, placings as Placing[], sheet.field, best);
      if (isBetter(found, best)) best = found;
    }
    if (best === before) break;
  }
  return best;
}

const isSame = (p: Placing, q: Placing): boolean =>
  p.turn === q.turn && p.by.x === q.by.x && p.by.y === q.by.y;

/**
 * The arrangement's true page counts, from the polygons themselves.
 * @param before one on the same field, in which shapes that kept their placing are judged already
 */
export function judged(
  shapes: readonly Shape[],
  placings: readonly Placing[],
  field: Field,
  before?: Arrangement,
): Arrangement {
  const each = shapes.map(({ polygons }, i) => {
    if (before && before.placings[i] === placings[i])
      return { pages: before.pages[i]!, slivers: before.slivers[i]! };
    const laid = polygons.map(p => placed(p, placings[i]!));
    return { pages: pagesOf(field, laid), slivers: sliversOf(field, laid[0]!) };
  });
  const pages = each.map(e => e.pages),
    slivers = each.map(e => e.slivers);
  const count = new Set(pages.flat().map(c => `${c.row} ${c.column}`)).size;
  const crossings = pages.reduce((sum, p) => sum + p.length - 1, 0);
  return { placings, pages, slivers, count, crossings };
}

export const placed = (polygon: Polygon, { turn, by }: Placing): Polygon =>
  polygon.map(p => {
    const q = turnedPoint(p, turn);
    return { x: by.x + q.x, y: by.y + q.y };
  });
