import type { Point } from '@paperhinge/geometry';
import type { Polygon } from '../drawing/room.js';
import { bestSpot, type Candidate, cell, newTally, touchedPages } from './best-spot.js';
import { emptyBoard, takeCells } from './board.js';
import { type Cell, type Field, pagesOf, stepX, stepY, windowsFor } from './field.js';
import { rasterOf } from './raster.js';

/** Something to lay down, upright, by the polygons that enclose it. */
export interface Shape {
  readonly polygons: readonly Polygon[];
}

/** Where a shape lies: its points turned half round if `turned`, then moved by `by`. */
export interface Placing {
  readonly turned: boolean;
  readonly by: Point;
}

export interface Arrangement {
  /** In the order of the shapes. */
  readonly placings: readonly Placing[];
  /** The pages of each shape. */
  readonly pages: readonly (readonly Cell[])[];
  /** Pages in all, each counted once. */
  readonly count: number;
  /** Joins that shapes run across: pages a shape lies on, less one, summed. */
  readonly crossings: number;
}

export interface ArrangeOptions {
  /** Turning by half a turn allowed where it saves pages. Default yes. */
  readonly halfTurns?: boolean;
  /** How many of the first shapes are laid before all others, upright: what must come on the first page. */
  readonly ahead?: number;
}

/** Cells of paper kept between neighbours so that scissors pass. */
const gapCells = 1;
/** Shapes beyond this many are laid out in fewer ways, so that a coat of sixty pages is still quick. */
const manyShapes = 16;

/**
 * Lays shapes on the page grid without overlap so that few pages are needed and few joins are crossed. Greedy by cells
 * over several orders and widths of sheet, the best kept; the same shapes always lie the same way.
 */
export function arrange(shapes: readonly Shape[], field: Field, options: ArrangeOptions = {}): Arrangement {
  const ahead = options.ahead ?? 0;
  const candidates = shapes.map((shape, i) => candidatesOf(shape, i >= ahead && (options.halfTurns ?? true)));
  const widest = Math.max(...candidates.map(c => c[0]!.raster.columns)) * cell;
  const fewest = windowsFor(widest, field.width, field.overlap);
  const area = shapes.reduce((sum, s) => sum + boxArea(s), 0);
  const likely = Math.ceil(Math.sqrt(area / (stepX(field) * stepY(field)))) + 1;
  // Few shapes are tried on every width of sheet from the narrowest; many on sheets about as wide as high.
  const many = shapes.length > manyShapes;
  const from = many ? Math.max(fewest, likely - 1) : fewest;
  const widths = Array.from({ length: Math.max(likely - from + 2, 2) }, (_, i) => from + i);
  let best: Arrangement | undefined;
  for (const columns of widths)
    for (const order of orders(shapes, candidates, ahead).slice(0, many ? 1 : undefined)) {
      const found = layOut(shapes, candidates, order, columns, field);
      if (
        !best ||
        found.count < best.count ||
        (found.count === best.count && found.crossings < best.crossings)
      )
        best = found;
    }
  return best!;
}

function candidatesOf(shape: Shape, halfTurns: boolean): readonly Candidate[] {
  const upright = candidate(shape, false);
  if (!halfTurns) return [upright];
  const turned = candidate(shape, true);
  // A shape that looks the same when turned need not be tried twice.
  return String(turned.raster.rows) === String(upright.raster.rows) ? [upright] : [upright, turned];
}

function candidate({ polygons }: Shape, turned: boolean): Candidate {
  const sign = turned ? -1 : 1;
  const all = polygons.flat();
  const home = {
    x: -Math.min(...all.map(p => sign * p.x)) + inset,
    y: -Math.min(...all.map(p => sign * p.y)) + inset,
  };
  const moved = polygons.map(polygon =>
    polygon.map(p => ({ x: sign * p.x + home.x, y: sign * p.y + home.y })),
  );
  return { turned, raster: rasterOf(moved, cell), home };
}
/** mm: keeps the cutting line's own width on the page. */
const inset = 0.5;

const boxArea = ({ polygons }: Shape): number => {
  const all = polygons.flat();
  const xs = all.map(p => p.x),
    ys = all.map(p => p.y);
  return (Math.max(...xs) - Math.min(...xs)) * (Math.max(...ys) - Math.min(...ys));
};

/** The orders in which shapes are laid: largest first, tallest first, widest first. */
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
  const all = [by(i => tall(i) * wide(i)), by(tall), by(wide)];
  return all.filter((order, i) => all.findIndex(o => o.join() === order.join()) === i);
}

function layOut(
  shapes: readonly Shape[],
  candidates: readonly (readonly Candidate[])[],
  order: readonly number[],
  columns: number,
  field: Field,
): Arrangement {
  const width = columns * stepX(field) + field.overlap;
  const height =
    order.reduce((sum, i) => sum + candidates[i]![0]!.raster.rows.length + gapCells, 0) * cell + field.height;
  const board = emptyBoard(Math.floor(width / cell), Math.ceil(height / cell));
  const tally = newTally(board, field);
  let lowest = 0;
  const placings: Placing[] = new Array(shapes.length);
  for (const i of order) {
    const { candidate: c, column, row } = bestSpot(board, candidates[i]!, tally, lowest, field);
    takeCells(board, c.raster, column, row, gapCells);
    lowest = Math.max(lowest, row + c.raster.rows.length + gapCells);
    for (const page of touchedPages(c.raster, column, row, tally)) tally.used[page] = 1;
    placings[i] = { turned: c.turned, by: { x: c.home.x + column * cell, y: c.home.y + row * cell } };
  }
  return judged(shapes, placings, field);
}

/** The arrangement's true page counts, from the polygons themselves. */
export function judged(shapes: readonly Shape[], placings: readonly Placing[], field: Field): Arrangement {
  const pages = shapes.map((shape, i) =>
    pagesOf(
      field,
      shape.polygons.map(p => placed(p, placings[i]!)),
    ),
  );
  const count = new Set(pages.flat().map(c => `${c.row} ${c.column}`)).size;
  return { placings, pages, count, crossings: pages.reduce((sum, p) => sum + p.length - 1, 0) };
}

export const placed = (polygon: Polygon, { turned, by }: Placing): Polygon =>
  polygon.map(p => (turned ? { x: by.x - p.x, y: by.y - p.y } : { x: by.x + p.x, y: by.y + p.y }));
