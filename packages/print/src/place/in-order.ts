import type { Point } from '@paperhinge/geometry';
import { boxOf } from '../plane/polygon.js';
import type { ArrangeOptions } from './arrange.js';
import { type Arrangement, judged, type Placing, placed, placedShafts, type Shape } from './arrangement.js';
import { type PageField, stepX, stepY, windowsFor } from './field.js';
import { runsAlongJoin } from './shafts.js';
import { sliversOf } from './slivers.js';

/** mm: keeps the cutting line's own width on the page, and paper between neighbours so that scissors pass. */
const inset = 0.5;
const gap = 6;
const upright = { x: 1, y: 0 } as const;

/** Every shape has a sheet of its own, in the order given: any piece can be printed alone. */
export function onOwnPages(shapes: readonly Shape[], field: PageField): Arrangement {
  const placings = shapes.map((shape, sheet): Placing => {
    const { x0, y0, width, height } = boxOf(shape.polygons);
    const start = { sheet, turn: upright, by: { x: inset - x0, y: inset - y0 } };
    const across = windowsFor(width + 2 * inset, field.width, field.overlap) * stepX(field) + field.overlap;
    const down = windowsFor(height + 2 * inset, field.height, field.overlap) * stepY(field) + field.overlap;
    return clearOfSlivers(shape, field, start, {
      x: across - width - 2 * inset,
      y: down - height - 2 * inset,
    });
  });
  return judged(shapes, placings, field);
}

/**
 * Shapes from left to right and from top to bottom in the order given, on a sheet about as wide as it is high; on the
 * next where that would become larger than `largest`.
 */
export function inReadingOrder(
  shapes: readonly Shape[],
  field: PageField,
  { largest }: Pick<ArrangeOptions, 'largest'> = {},
): Arrangement {
  const boxes = shapes.map(s => boxOf(s.polygons));
  const area = boxes.reduce((sum, b) => sum + (b.width + gap) * (b.height + gap), 0);
  const widest = Math.max(...boxes.map(b => b.width)) + 2 * inset;
  const [short, long] = largest
    ? [Math.min(largest.width, largest.height), Math.max(largest.width, largest.height)]
    : [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const columns = windowsFor(Math.max(widest, Math.min(Math.sqrt(area), short)), field.width, field.overlap);
  const room = columns * stepX(field) + field.overlap;
  let [sheet, left, top, below] = [0, 0, 0, 0];
  const placings = boxes.map(({ x0, y0, width, height }, i): Placing => {
    if (left > 0 && left + width + 2 * inset > room) [left, top] = [0, below];
    if (below > 0 && top + height + 2 * inset > long) [sheet, left, top, below] = [sheet + 1, 0, 0, 0];
    const start = { sheet, turn: upright, by: { x: left + inset - x0, y: top + inset - y0 } };
    const placing = clearOfSlivers(shapes[i]!, field, start, {
      x: room - left - width - 2 * inset,
      y: 0,
    });
    left = placing.by.x + x0 - inset + width + gap;
    below = Math.max(below, placing.by.y + y0 - inset + height + gap);
    return placing;
  });
  return judged(shapes, placings, field);
}

/** mm by which a shape is shifted at a time to get it clear, and how far at most. */
const shift = 2;
const furthest = 40;
const steps = Array.from({ length: furthest / shift + 1 }, (_, i) => i * shift);

/** How many pages are joined shows once all shapes lie. */
const anyPages = { columns: Number.POSITIVE_INFINITY, rows: Number.POSITIVE_INFINITY } as const;

/** The placing moved right and down as little as it takes to leave no sliver and no shaft on a join; first within the room there is for it. */
function clearOfSlivers(shape: Shape, field: PageField, start: Placing, room: Point): Placing {
  const { shafts = [] } = shape;
  const isClear = (p: Placing) =>
    sliversOf(field, placed(shape.polygons[0]!, p)).length === 0 &&
    !placedShafts(shafts, p).some(s => runsAlongJoin(field, anyPages, s));
  if (isClear(start)) return start;
  const beyond = (v: Point) => Math.max(v.x - room.x, 0) + Math.max(v.y - room.y, 0);
  const moves = steps
    .flatMap(y => steps.map(x => ({ x, y })))
    .sort((a, b) => Math.sign(beyond(a)) - Math.sign(beyond(b)) || a.x + a.y - b.x - b.y || a.y - b.y);
  for (const v of moves) {
    // A shape that would leave the sheet on its right cannot be shown.
    if (v.x > Math.max(room.x, 0) && v.x > 0 && room.y === 0) continue;
    const moved = { ...start, by: { x: start.by.x + v.x, y: start.by.y + v.y } };
    if (isClear(moved)) return moved;
  }
  return start;
}
