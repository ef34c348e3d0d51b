import { pointAt, type Segment, tangentAt } from '../curve/segment.js';
import { coincidenceTolerance } from '../tolerance.js';
import { distance, type Point } from '../vector.js';
import type { Arc } from './arcs.js';
import { crossingsToTheRight } from './contains.js';

/** How often each set winds round the ground to the right of an arc, and to the left; clockwise positive. */
export interface Sides {
  readonly right: readonly number[];
  readonly left: readonly number[];
}

/**
 * What lies on both sides of each arc. It is looked at from two points close beside the arc: the two must differ by how
 * often the arc itself is passed, or else something lies between, and others are tried, ever closer.
 */
export function sidesOf(arcs: readonly Arc[]): readonly Sides[] {
  const sets = arcs[0]?.passes.length ?? 0;
  const windings = (p: Point): readonly number[] => {
    const counts = new Array<number>(sets).fill(0);
    for (const { curve, passes } of arcs) {
      const crossed = crossingsToTheRight(curve, p);
      if (crossed !== 0) for (let set = 0; set < sets; set++) counts[set]! += crossed * passes[set]!;
    }
    return counts;
  };
  return arcs.map(({ curve, passes }) => {
    const reach = sizeOf(curve) / 8;
    let seen: Sides | undefined;
    for (const near of closeness)
      for (const t of places) {
        const by = Math.min(near, reach);
        const { x, y } = pointAt(curve, t),
          { x: dx, y: dy } = tangentAt(curve, t);
        // To the right of travel, y down, lies (−dy, dx).
        const right = windings({ x: x - by * dy, y: y + by * dx }),
          left = windings({ x: x + by * dy, y: y - by * dx });
        seen = { right, left };
        if (passes.every((count, set) => right[set]! - left[set]! === count)) return seen;
      }
    return seen!;
  });
}

const sizeOf = (curve: Segment): number =>
  Math.max(...curve.map(p => distance(p, curve[0])), coincidenceTolerance);

/** mm beside the arc: off it beyond doubt, and down to where rounding begins to tell. */
const closeness = [10, 1, 0.1, 0.01].map(times => times * coincidenceTolerance);
/** Odd places along an arc, so that symmetric drawings do not meet their own symmetry. */
const places = [0.4871, 0.3137, 0.7239, 0.1093, 0.8911];
