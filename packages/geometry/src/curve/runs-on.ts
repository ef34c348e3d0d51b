import { hypot } from '../arithmetic.js';
import { coincidenceTolerance } from '../tolerance.js';
import { endOf, type Segment, startOf } from './segment.js';

/**
 * Whether a segment starts just where another ends, and it is plain to see that they meet nowhere else: along the mean
 * of the two chords, every leg of both control polygons leads forwards. A point of one and a point of the other then lie
 * apart by at least `forwards` of the way between them by the joint. False says nothing.
 */
export function runsOn(before: Segment, after: Segment): boolean {
  const from = startOf(before),
    joint = endOf(before),
    next = startOf(after),
    to = endOf(after);
  if (next.x !== joint.x || next.y !== joint.y) return false;
  const a = hypot(joint.x - from.x, joint.y - from.y),
    b = hypot(to.x - joint.x, to.y - joint.y);
  // Of what is hardly longer than a coincidence, other ends may be one, too.
  if (!(a > leastChord && b > leastChord)) return false;
  const x = (joint.x - from.x) / a + (to.x - joint.x) / b,
    y = (joint.y - from.y) / a + (to.y - joint.y) / b;
  // A curve and its way back have no direction in common, in which every leg could lead.
  return (x !== 0 || y !== 0) && leadsAlong(before, x, y) && leadsAlong(after, x, y);
}

function leadsAlong(segment: Segment, x: number, y: number): boolean {
  const least = forwards * hypot(x, y);
  for (let i = 1; i < segment.length; i++) {
    const dx = segment[i]!.x - segment[i - 1]!.x,
      dy = segment[i]!.y - segment[i - 1]!.y;
    if (!(dx * x + dy * y >= least * hypot(dx, dy))) return false;
  }
  return true;
}

/** Of a leg's length: up to 84 degrees off the direction. */
const forwards = 0.1;
/** mm. So that ends which are not the joint lie farther apart than a coincidence. */
const leastChord = (2 * coincidenceTolerance) / forwards;
