import { curvatureAt } from '../curve/curvature.js';
import { offsetSegment } from '../curve/offset.js';
import { endOf, type Segment, startOf, tangentAt } from '../curve/segment.js';
import type { Edge } from '../pattern/types.js';
import { angleTolerance, coincidenceTolerance, fitTolerance, smoothJoint } from '../tolerance.js';
import { add, angleBetween, distance, dot, leftOf, type Point, scale } from '../vector.js';
import { edgeAllowance } from './corner-rule.js';
import { type Strand, startingAt } from './strand.js';

/**
 * A stretch of the stitching line without a corner, and its parallel at its allowance: a whole edge, or the part of
 * one between two corners in it, or the straight line over the mouth of a dart that cannot be folded.
 */
export interface Run {
  readonly of: string;
  /** The edge this is a part of; absent over a dart's mouth. */
  readonly edge?: Edge;
  /** Whether the run reaches the edge's end, clockwise first and last. */
  readonly isFirst: boolean;
  readonly isLast: boolean;
  readonly allowance: number;
  readonly stitching: readonly Segment[];
  readonly start: Point;
  readonly end: Point;
  readonly startTangent: Point;
  readonly endTangent: Point;
  /**
   * From square to the start to square to the end. With no allowance the stitching line itself. Where an end of the
   * run bends in more tightly than its allowance, the parallel begins at the cusp where it turns to run forwards.
   */
  readonly parallel: readonly Strand[];
  /** There, the centre of the bend at the run's start and end: the run's own cloth covers nothing beyond it. */
  readonly startFocus?: Point;
  readonly endFocus?: Point;
}

/** The runs of one part of the outline: cut where its direction turns by more than its allowance hides. */
export const runsOf = (edge: Edge): readonly Run[] =>
  runsAlong(edge.name, edge.path.segments, edgeAllowance(edge), edge);

/** The runs of a chain moved `allowance` mm to the left of its travel. */
export function runsAlong(
  of: string,
  chain: readonly Segment[],
  allowance: number,
  edge?: Edge,
): readonly Run[] {
  const groups: Segment[][] = [];
  for (const segment of chain) {
    if (isPoint(segment)) continue;
    const group = groups.at(-1);
    if (group && isSmooth(tangentAt(group.at(-1)!, 1), tangentAt(segment, 0), allowance)) group.push(segment);
    else groups.push([segment]);
  }
  return groups.map((group, i) =>
    runOf(of, group, allowance, {
      ...(edge ? { edge } : {}),
      isFirst: i === 0,
      isLast: i === groups.length - 1,
    }),
  );
}

/** A run along segments that join without a corner. */
export function runOf(
  of: string,
  segments: readonly Segment[],
  allowance: number,
  place: Pick<Run, 'edge' | 'isFirst' | 'isLast'> = { isFirst: true, isLast: true },
): Run {
  const first = segments[0]!,
    last = segments.at(-1)!;
  const startTangent = tangentAt(first, 0),
    endTangent = tangentAt(last, 1);
  const whole = parallelOf(of, segments, allowance);
  const parallel = forwards(whole, startTangent, endTangent);
  const isCut = (at: 0 | -1): boolean => parallel.at(at) !== whole.at(at);
  return {
    of,
    ...place,
    allowance,
    stitching: segments,
    start: startOf(first),
    end: endOf(last),
    startTangent,
    endTangent,
    parallel,
    ...(isCut(0) ? { startFocus: squareOut(startOf(first), startTangent, -1 / curvatureAt(first, 0)) } : {}),
    ...(isCut(-1) ? { endFocus: squareOut(endOf(last), endTangent, -1 / curvatureAt(last, 1)) } : {}),
  };
}

/**
 * Turn of the stitching line from one run to the next, in rad from −π to π: positive at an outer corner. Where it goes
 * back the way it came, the bends on both sides tell a spike (π) from a slit (−π).
 */
export function turnBetween(before: Run, after: Run): number {
  const turn = angleBetween(before.endTangent, after.startTangent);
  if (Math.abs(turn) < Math.PI - angleTolerance) return turn;
  const bends = curvatureAt(before.stitching.at(-1)!, 1) + curvatureAt(after.stitching[0]!, 0);
  return bends > 0 ? -Math.PI : Math.PI;
}

/**
 * Whether two directions make no corner at this allowance: the ends of the two parallels lie so near that they are
 * welded. A turn back on itself is never smooth.
 */
export const isSmooth = (arriving: Point, leaving: Point, allowance: number): boolean =>
  Math.abs(angleBetween(arriving, leaving)) * Math.max(allowance, 1) <= smoothJoint;

function parallelOf(of: string, segments: readonly Segment[], allowance: number): readonly Strand[] {
  if (allowance === 0) return segments.map(segment => ({ segment, of, shape: 'parallel' }));
  const strands: Strand[] = [];
  let skipped: Segment | undefined;
  const add = (segment: Segment): void => {
    const before = strands.at(-1);
    strands.push({
      segment: before ? startingAt(segment, endOf(before.segment)) : segment,
      of,
      shape: 'parallel',
    });
  };
  for (const segment of segments)
    for (const piece of offsetSegment(segment, allowance)) {
      // About its own centre a bend's parallel shrinks to crumbs, which say nothing and cross each other without end.
      const from = strands.length > 0 ? endOf(strands.at(-1)!.segment) : startOf(piece);
      if (piece.every(p => distance(p, from) <= fitTolerance)) skipped = piece;
      else {
        if (skipped && strands.length > 0 && distance(from, startOf(piece)) > coincidenceTolerance)
          add([from, startOf(piece)]);
        add(piece);
        skipped = undefined;
      }
    }
  if (skipped && (strands.length === 0 || distance(endOf(strands.at(-1)!.segment), endOf(skipped)) > 0))
    add(skipped);
  return strands;
}

/**
 * Leaves out what runs backwards at either end of a parallel, up to its first and from its last cusp: it lies within
 * the allowance, but without a neighbour's parallel to cross it would stay as a spur.
 */
function forwards(strands: readonly Strand[], startTangent: Point, endTangent: Point): readonly Strand[] {
  const cusps = strands.flatMap(({ segment }, i) =>
    i > 0 && dot(tangentAt(strands[i - 1]!.segment, 1), tangentAt(segment, 0)) < 0 ? [i] : [],
  );
  if (cusps.length === 0) return strands;
  const from = dot(tangentAt(strands[0]!.segment, 0), startTangent) < 0 ? cusps[0]! : 0;
  const to = dot(tangentAt(strands.at(-1)!.segment, 1), endTangent) < 0 ? cusps.at(-1)! : strands.length;
  return from < to ? strands.slice(from, to) : strands;
}

const isPoint = (segment: Segment): boolean =>
  segment.every(p => distance(p, segment[0]) <= coincidenceTolerance);

/** The point square to a place on the stitching line, at a distance in mm outside. */
export const squareOut = (point: Point, tangent: Point, by: number): Point =>
  add(point, scale(leftOf(tangent), by));
