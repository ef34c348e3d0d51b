import { powerForm } from '../curve/power-form.js';
import { asCubic } from '../curve/segment.js';
import { rootsInUnit } from '../polynomial.js';
import type { Point } from '../vector.js';
import type { Position, Strand } from './strand.js';

/** Where a chain that begins within a circle first meets it; undefined where it stays within. */
export function leavingCircle(chain: readonly Strand[], centre: Point, radius: number): Position | undefined {
  for (const [index, { segment }] of chain.entries()) {
    const { x0, x1, x2, x3, y0, y1, y2, y3 } = powerForm(asCubic(segment));
    const x = x0 - centre.x,
      y = y0 - centre.y;
    // |B(t) − centre|² − radius², by powers of t.
    const [t] = rootsInUnit([
      x * x + y * y - radius * radius,
      2 * (x * x1 + y * y1),
      2 * (x * x2 + y * y2) + x1 * x1 + y1 * y1,
      2 * (x * x3 + y * y3 + x1 * x2 + y1 * y2),
      2 * (x1 * x3 + y1 * y3) + x2 * x2 + y2 * y2,
      2 * (x2 * x3 + y2 * y3),
      x3 * x3 + y3 * y3,
    ]);
    if (t !== undefined) return index + t;
  }
  return undefined;
}
