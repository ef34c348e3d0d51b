import { fitTolerance } from '../tolerance.js';
import { distance } from '../vector.js';
import { isLine, type Segment } from './segment.js';

/**
 * The same curve, its handles drawn onto the ends that they all but lie on: an editor's rounding leaves such stubs, and
 * their directions, which a curve follows for no more than a few thousandths of a millimetre, say nothing.
 * Error: under half of `fitTolerance`, as a curve follows its handles by 4/9 at most.
 */
export function withoutStubs(segment: Segment): Segment {
  if (isLine(segment)) return segment;
  const [p, q, r, s] = segment;
  const isStub = distance(p, q) <= fitTolerance,
    isLastStub = distance(r, s) <= fitTolerance;
  // What is that short altogether has no other direction.
  if (!(isStub || isLastStub) || distance(p, s) <= 2 * fitTolerance) return segment;
  return [p, isStub ? p : q, isLastStub ? s : r, s];
}
