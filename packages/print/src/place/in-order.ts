import { type Arrangement, judged, type Placing, type Shape } from './arrange.js';
import { type Field, stepX, stepY, windowsFor } from './field.js';

/** mm: keeps the cutting line's own width on the page, and paper between neighbours so that scissors pass. */
const inset = 0.5;
const gap = 6;

/** Every shape starts on a page of its own, one below the other in the order given: any piece can be printed alone. */
export function onOwnPages(shapes: readonly Shape[], field: Field): Arrangement {
  let row = 0;
  const placings = shapes.map((shape): Placing => {
    const { x, y, height } = boxOf(shape);
    // The band shared with the page above belongs to that page: the shape starts below it.
    const top = row === 0 ? 0 : row * stepY(field) + field.overlap;
    row += windowsFor(height + inset + (row === 0 ? 0 : field.overlap), field.height, field.overlap);
    return { turned: false, by: { x: inset - x, y: top + inset - y } };
  });
  return judged(shapes, placings, field);
}

/** Shapes from left to right and from top to bottom in the order given, on a sheet about as wide as it is high. */
export function inReadingOrder(shapes: readonly Shape[], field: Field): Arrangement {
  const boxes = shapes.map(boxOf);
  const area = boxes.reduce((sum, b) => sum + (b.width + gap) * (b.height + gap), 0);
  const widest = Math.max(...boxes.map(b => b.width)) + 2 * inset;
  const columns = windowsFor(Math.max(widest, Math.sqrt(area)), field.width, field.overlap);
  const room = columns * stepX(field) + field.overlap;
  let left = 0,
    top = 0,
    below = 0;
  const placings = boxes.map(({ x, y, width, height }): Placing => {
    if (left > 0 && left + width + 2 * inset > room) {
      left = 0;
      top = below;
    }
    const by = { x: left + inset - x, y: top + inset - y };
    left += width + gap;
    below = Math.max(below, top + height + gap);
    return { turned: false, by };
  });
  return judged(shapes, placings, field);
}

function boxOf({ polygons }: Shape) {
  const xs = polygons.flat().map(p => p.x),
    ys = polygons.flat().map(p => p.y);
  const x = Math.min(...xs),
    y = Math.min(...ys);
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}
