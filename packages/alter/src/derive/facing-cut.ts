import { line, type OutlinePart, type Path, type Point, pathLength, pathOf } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  endTangent,
  intersectPaths,
  pointAlong,
  reversedPath,
  startTangent,
  tangentAlong,
} from '@paperhinge/geometry/paths';
import { add, angleBetween, distance, leftOf, scale } from '@paperhinge/geometry/plane';
import { reachOf, runOn } from '../moved-edges/meet.js';

/** Where a facing that runs down the edge beside what it faces is cut off. */
export interface FacingCut {
  /** mm from the corner along the edge beside. */
  readonly along: number;
  readonly onEdge: Point;
  /** Where the cut meets the inner line, and mm along that, run on past its end. */
  readonly point: Point;
  readonly alongA: number;
}

/** Times the width. A facing runs down the edge beside what it faces so far and no farther; common practice, no source. */
export const longestEnd = 2.5;

/**
 * The cut square to the edge beside a faced one, for an inner line that comes to it too far down: a facing follows a
 * steep neck's front edge or fold, and is cut across there. Nothing where the edge runs on with the faced one as one
 * line, turns away from it at a corner of its own, or is no edge.
 *
 * @param end which end of the inner line lies at the edge beside
 */
export function squareCut(
  inside: Path,
  beside: OutlinePart | undefined,
  end: 'start' | 'end',
  width: number,
): FacingCut | undefined {
  if (beside?.type !== 'edge') return undefined;
  const [inner, away] =
    end === 'end' ? [inside, beside.path] : [reversedPath(inside), reversedPath(beside.path)];
  const turn = Math.abs(angleBetween(endTangent(inner), startTangent(away)));
  if (beside.kind !== 'fold' && turn > steep) return undefined;
  const along = Math.min(longestEnd * width, pathLength(away) - tolerances.joiningGap);
  if (along < width) return undefined;
  const onEdge = pointAlong(away, along);
  const across = scale(leftOf(tangentAlong(away, along)), nearing * width);
  const cut = pathOf(line(add(onEdge, scale(across, -1)), add(onEdge, across)));
  return intersectPaths(runOn(inner, reachOf(inside)), cut)
    .filter(m => m.alongA > pathLength(inside) / 2)
    .map(({ point, alongA }) => ({ along, onEdge, point, alongA }))
    .sort((a, b) => distance(a.point, onEdge) - distance(b.point, onEdge))[0];
}

/** rad between a faced edge and one beside it up to which that is a front edge followed down: a corner of its own is cut across there. */
const steep = Math.PI / 9;
/** Of the width. An inner line that has come no nearer to the edge beside by the cut goes side by side with it. */
const nearing = 0.85;
