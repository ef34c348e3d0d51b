import { curvatureAt } from '../curve/curvature.js';
import { offsetSegment } from '../curve/offset.js';
import { endOf, type Segment, startOf, tangentAt } from '../curve/segment.js';
import { withoutStubs } from '../curve/stubs.js';
import type { Edge } from '../pattern/types.js';
import { isSamePoint } from '../same-point.js';
import { angleTolerance, fitTolerance, smoothJoint } from '../tolerance.js';
import { angleBetween, distance, dot, type Point, scale, subtract } from '../vector.js';
import { leavingCircle } from './circle-crossings.js';
import { edgeAllowance } from './edge-allowance.js';
import { withoutSpecks } from './specks.js';
import {
  type Position,
  pointOnChain,
  type Strand,
  startingAt,
  strandsBetween,
  strandsReversed,
} from './strand.js';

/**
 * A stretch of the stitching line without a corner, and its parallel at its allowance: a whole edge, or the part of
 * one between two corners in it, or the straight line over the mouth of a dart that cannot be folded.
 */
export interface Run {
  readonly of: string;
  /** The edge this is a part of; absent over a dart's mouth. */
  readonly edge?: Edge | undefined;
  /** That edge, where it starts or ends with this run. */
  readonly starts?: Edge | undefined;
  readonly ends?: Edge | undefined;
  readonly allowance: number;
  readonly stitching: readonly Segment[];
  readonly start: Point;
  readonly end: Point;
  readonly startTangent: Point;
  readonly endTangent: Point;
  /**
   * From square to the start to square to the end. With no allowance the stitching line itself. Where an end of the
   * run bends in more tightly than its allowance, the parallel begins where it leaves the circle about that end, with
   * the allowance as radius: nearer, the end itself is the nearest of the run, and its corner's rule decides.
   */
  readonly parallel: readonly Strand[];
  /** The parallel before any of it is so cut. */
  readonly whole: readonly Strand[];
  /** Whether the parallel is so cut at its start or end. */
  readonly isStartCut: boolean;
  readonly isEndCut: boolean;
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
  // Without a parallel to be drawn, the stitching line itself is the cutting line, bit for bit.
  const groups = smoothGroups(allowance === 0 ? chain : withoutSpecks(chain), allowance);
  return groups.map((group, i) =>
    runOf(of, group, allowance, {
      edge,
      starts: i === 0 ? edge : undefined,
      ends: i === groups.length - 1 ? edge : undefined,
    }),
  );
}

/** A run along segments that join without a corner. */
export function runOf(
  of: string,
  segments: readonly Segment[],
  allowance: number,
  ofEdge: Pick<Run, 'edge' | 'starts' | 'ends'> = {},
): Run {
  const first = withoutStubs(segments[0]!),
    last = withoutStubs(segments.at(-1)!);
  const startTangent = tangentAt(first, 0),
    endTangent = tangentAt(last, 1);
  const start = startOf(first),
    end = endOf(last);
  const whole = parallelOf(of, segments, allowance);
  const cuts = [
    cutAtStart(whole, start, startTangent, allowance),
    cutAtStart(strandsReversed(whole), end, scale(endTangent, -1), allowance),
  ] as const;
  const hasRoom = (cuts[0] ?? 0) + (cuts[1] ?? 0) <= whole.length;
  const [from, back] = hasRoom ? cuts : [];
  return {
    of,
    ...ofEdge,
    allowance,
    stitching: segments,
    start,
    end,
    startTangent,
    endTangent,
    parallel: strandsBetween(whole, from ?? 0, whole.length - (back ?? 0)),
    whole,
    isStartCut: from !== undefined,
    isEndCut: back !== undefined,
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

/** A chain cut at the corners in it, at this allowance; what is no more than a point is left out. */
export function smoothGroups(chain: readonly Segment[], allowance: number): readonly (readonly Segment[])[] {
  const groups: Segment[][] = [];
  for (const segment of chain) {
    if (isPoint(segment)) continue;
    const group = groups.at(-1);
    if (group && joinsSmoothly(group.at(-1)!, segment, allowance)) group.push(segment);
    else groups.push([segment]);
  }
  return groups;
}

/** Whether the second of two segments runs on from the first without a corner, at this allowance. */
const joinsSmoothly = (first: Segment, second: Segment, allowance: number): boolean =>
  isSmooth(tangentAt(withoutStubs(first), 1), tangentAt(withoutStubs(second), 0), allowance);

/**
 * Whether two directions make no corner at this allowance: the ends of the two parallels lie so near that they are
 * welded. A turn back on itself is never smooth.
 */
const isSmooth = (arriving: Point, leaving: Point, allowance: number): boolean =>
  Math.abs(angleBetween(arriving, leaving)) * Math.max(allowance, 1) <= smoothJoint;

function parallelOf(of: string, stitching: readonly Segment[], allowance: number): readonly Strand[] {
  if (allowance === 0) return stitching.map(beside => ({ segment: beside, of, shape: 'parallel', beside }));
  const strands: Strand[] = [];
  let skipped: Strand | undefined;
  const add = (segment: Segment, beside: Segment): void => {
    const before = strands.at(-1);
    const joined = before ? startingAt(segment, endOf(before.segment)) : segment;
    strands.push({ segment: joined, of, shape: 'parallel', beside });
  };
  for (const beside of stitching)
    for (const piece of offsetSegment(withoutStubs(beside), allowance)) {
      // About its own centre a bend's parallel shrinks to crumbs, which say nothing and cross each other without end.
      const from = strands.length > 0 ? endOf(strands.at(-1)!.segment) : startOf(piece);
      if (piece.every(p => distance(p, from) <= fitTolerance))
        skipped = { segment: piece, of, shape: 'parallel', beside };
      else {
        if (!isSamePoint(from, startOf(piece))) add([from, startOf(piece)], beside);
        add(piece, beside);
      }
    }
  // A last crumb may run back on the rest: the corner's own way to square covers what it leaves.
  return skipped && strands.length === 0 ? [skipped] : strands;
}

/**
 * Where a parallel begins, if not at its start: it runs backwards there, or does so soon between two cusps, and the
 * second lies within the circle about the run's end. What comes before lies within the allowance, but where no
 * neighbour's parallel crosses it, it would stay. It begins anew where it leaves that circle on the corner's side; a
 * first part that runs backwards goes in any case.
 */
function cutAtStart(
  strands: readonly Strand[],
  end: Point,
  tangent: Point,
  allowance: number,
): Position | undefined {
  const cusps = strands.flatMap(({ segment }, i) =>
    i > 0 && dot(tangentAt(strands[i - 1]!.segment, 1), tangentAt(segment, 0)) < 0 ? [i] : [],
  );
  const isBackwards = dot(tangentAt(strands[0]!.segment, 0), tangent) < 0;
  const cusp = isBackwards ? cusps[0] : cusps[1];
  if (cusp === undefined) return undefined;
  const found =
    distance(startOf(strands[cusp]!.segment), end) < allowance
      ? leavingCircle(strands.slice(cusp), end, allowance)
      : undefined;
  if (found !== undefined && dot(subtract(pointOnChain(strands, cusp + found), end), tangent) <= 0)
    return cusp + found;
  return isBackwards ? cusp : undefined;
}

const isPoint = (segment: Segment): boolean => segment.every(p => isSamePoint(p, segment[0]));
