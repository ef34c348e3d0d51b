import { cornerTurn } from '../tolerance.js';
import { add, dot, type Point, scale, subtract } from '../vector.js';
import { type Arm, armAfter, armBefore } from './arm.js';
import { mitreLimit } from './corner-rule.js';
import { overCorner } from './inner-joint.js';
import { type Joint, jointOf, type Leaving } from './joint.js';
import { meetingWithLine } from './meeting-with-line.js';
import { type Run, turnBetween } from './run.js';
import { straight } from './strand.js';

/**
 * A corner at a fold, as the same corner of the piece opened out: the other edge's cutting line is run on, or cut, to the
 * straight line of the fold and stays on it to the corner. Past the limit of a mitre its tip is cut square to the fold.
 * Where its parallel does not come as far as the fold, it is led over the corner: what then lies beyond the fold goes
 * when the whole line is cleared of loops.
 */
export function foldJoint(before: Run, after: Run, fold: 'before' | 'after'): Joint {
  const first = armBefore(before),
    second = armAfter(after);
  const joint =
    fold === 'before'
      ? jointOf({ place: 0, way: [] }, wayToFold(second, first))
      : jointOf(wayToFold(first, second), { place: 0, way: [] });
  // Opened out, the corner turns by twice as much as it seems to, less the half turn of the fold itself.
  const isSnipped = 2 * turnBetween(before, after) - Math.PI < -cornerTurn;
  if (!isSnipped) return joint;
  return {
    ...joint,
    snip: { to: second.corner, after: fold === 'before' ? joint.bridge.length : 0 },
  };
}

/** From the other edge's parallel to the corner, the last of it along the fold. */
function wayToFold(arm: Arm, fold: Arm): Leaving {
  const outward = scale(fold.away, -1);
  const meeting = meetingWithLine(arm, outward, Number.POSITIVE_INFINITY);
  if (!meeting) return overCorner(arm);
  const { place, way, point, along } = meeting;
  const limit = mitreLimit * arm.allowance;
  if (way.length > 0 && along > limit) return { place, way: wayOverCutTip(arm, fold.of, outward, limit) };
  return { place, way: [...way, ...straight(point, arm.corner, fold.of)] };
}

/** A tip too long for a mitre is cut square to the fold: on the line that runs on, and on the fold. */
function wayOverCutTip({ base, square, away, corner, of }: Arm, fold: string, outward: Point, limit: number) {
  const reach = (limit - dot(subtract(square, corner), outward)) / -dot(away, outward);
  const first = subtract(square, scale(away, reach)),
    second = add(corner, scale(outward, limit));
  return [...straight(base, first, of), ...straight(first, second, of), ...straight(second, corner, fold)];
}
