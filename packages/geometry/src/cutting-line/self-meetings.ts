import { type Box, boundsOf, boxesMeet } from '../curve/bounds.js';
import { intersectSegments } from '../curve/intersect.js';
import { runsOn } from '../curve/runs-on.js';
import { pointAt } from '../curve/segment.js';
import { coincidenceTolerance, parameterTolerance } from '../tolerance.js';
import { distance } from '../vector.js';
import type { Strand } from './strand.js';

/** A place on a closed chain: index of the strand plus the parameter on it. */
export type Position = number;

/** Two places of a chain that are one point. */
export interface SelfMeeting {
  readonly a: Position;
  readonly b: Position;
}

/** Every two places of the chain that are one point, but for the joints of neighbours. */
export function selfMeetings(chain: readonly Strand[]): readonly SelfMeeting[] {
  const n = chain.length;
  const boxes: readonly Box[] = chain.map(s => boundsOf(s.segment));
  const found: SelfMeeting[] = [];
  for (let i = 0; i < n; i++)
    for (let k = i + 1; k < n; k++) {
      if (!boxesMeet(boxes[i]!, boxes[k]!, coincidenceTolerance)) continue;
      const first = chain[i]!.segment,
        second = chain[k]!.segment;
      if (runsOn(first, second) || runsOn(second, first)) continue;
      for (const { ta, tb } of intersectSegments(first, second)) {
        const a = onChain(chain, i, ta),
          b = onChain(chain, k, tb);
        if (isSame(a, b, n)) continue;
        if (!found.some(f => isSame(f.a, a, n) && isSame(f.b, b, n))) found.push({ a, b });
      }
    }
  return found;
}

/** Whether two positions on a closed chain of `n` strands are one. */
export const isSame = (a: Position, b: Position, n: number): boolean =>
  Math.abs(a - b) <= parameterTolerance || n - Math.abs(a - b) <= parameterTolerance;

/** The position of a parameter; one within a coincidence of a joint is the joint. */
function onChain(chain: readonly Strand[], index: number, t: number): Position {
  const { segment } = chain[index]!;
  const p = pointAt(segment, t);
  if (distance(p, pointAt(segment, 1)) <= coincidenceTolerance && t > 1 / 2)
    return (index + 1) % chain.length;
  return distance(p, pointAt(segment, 0)) <= coincidenceTolerance && t < 1 / 2 ? index : index + t;
}
