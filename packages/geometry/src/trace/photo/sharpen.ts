import { distance, type Point } from '../../vector.js';
import { type Arm, armThrough, meetingOfArms } from './arm.js';
import { outlineStep } from './edge-of-patch.js';
import type { OutlineCorner } from './outline-corner.js';

/** mm: so far the points of a straight edge may lie from it, in the mean of its stretches of `stretchMm`. */
const straightFit = 0.09;
const stretchMm = 12;
/** mm along a curved edge that its end is found from, longest first, and how well a parabola must fit. */
const endLengths = [40, 28, 20, 14, 9];
const endFit = 0.06;
/** mm. A corner is moved no farther from where it was first found, or than is soft about it. */
const farthest = 1.2;

/** The points of an outline between two corners, those in the soft stretches beside them left out. */
export function pointsBetween(
  points: readonly Point[],
  from: OutlineCorner,
  to: OutlineCorner,
): readonly Point[] {
  const n = points.length;
  const count = (to.index - from.index + n - 1) % n || n - 1;
  return Array.from({ length: count }, (_, i) => points[(from.index + 1 + i) % n]!).filter(
    p => distance(p, from.at) > from.soft && distance(p, to.at) > to.soft,
  );
}

/** The straight line through an edge's points; undefined if it is no straight edge. */
export function straightThrough(between: readonly Point[]): Arm | undefined {
  if (between.length < 4) return undefined;
  const arm = armThrough(between, true);
  const off = between.map(p => arm.along.x * (p.y - arm.origin.y) - arm.along.y * (p.x - arm.origin.x));
  const along = between.map(p => arm.along.x * (p.x - arm.origin.x) + arm.along.y * (p.y - arm.origin.y));
  const size = Math.max(3, Math.min(Math.round(stretchMm / outlineStep), Math.ceil(between.length / 3)));
  // Noise cancels in the mean of a stretch; a bend does not.
  for (let i = 0; i < between.length; i += size) {
    const end = Math.min(between.length, i + size),
      begin = Math.max(0, end - size);
    let sum = 0;
    for (let k = begin; k < end; k++) sum += off[k]! - arm.a - arm.b * along[k]!;
    if (Math.abs(sum / (end - begin)) > straightFit) return undefined;
  }
  return arm;
}

/** Corners where the edges as wholes meet: straight ones by all their points, curved ones by their ends. */
export function sharpened(
  points: readonly Point[],
  corners: readonly OutlineCorner[],
): readonly OutlineCorner[] {
  if (corners.length < 2) return corners;
  const edges = corners.map((from, k) => {
    const between = pointsBetween(points, from, corners[(k + 1) % corners.length]!);
    return { between, straight: straightThrough(between) };
  });
  return corners.map((corner, k) => {
    const before = edges.at(k - 1)!,
      after = edges[k]!;
    const back = before.straight
      ? leaning(before.straight, before.between.at(-1)!)
      : endArm([...before.between].reverse());
    const forth = after.straight ? leaning(after.straight, after.between[0]!) : endArm(after.between);
    const meeting = back && forth && meetingOfArms(back, forth);
    const moved = meeting ? distance(meeting.at, corner.at) : 0;
    if (!meeting || moved > Math.max(farthest, corner.soft)) return corner;
    return { ...corner, at: meeting.at, soft: corner.soft + moved };
  });
}

/** A straight arm with its frame at the point of it next to a corner. */
function leaning(arm: Arm, end: Point): Arm {
  const x = arm.along.x * (end.x - arm.origin.x) + arm.along.y * (end.y - arm.origin.y);
  const y = arm.a + arm.b * x;
  return {
    ...arm,
    a: 0,
    origin: {
      x: arm.origin.x + arm.along.x * x - arm.along.y * y,
      y: arm.origin.y + arm.along.y * x + arm.along.x * y,
    },
  };
}

/** The end of a curved edge as a parabola; the points lead away from the corner. */
function endArm(between: readonly Point[]): Arm | undefined {
  const noise = between.length > 8 ? armThrough(between.slice(0, 8), false).rms : 0;
  for (const mm of endLengths) {
    const count = Math.round(mm / outlineStep);
    if (count > between.length && mm !== endLengths.at(-1)) continue;
    const near = between.slice(0, count);
    if (near.length < 6) return undefined;
    const arm = armThrough(near, false);
    if (arm.rms < Math.max(endFit, noise * 1.3) || mm === endLengths.at(-1)) return arm;
  }
  return undefined;
}
