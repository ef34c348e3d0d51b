import { segmentLength } from '../curve/arc-length.js';
import { offsetSegment } from '../curve/offset.js';
import { endOf, type Segment, tangentAt } from '../curve/segment.js';
import { PatternError } from '../errors.js';
import type { Edge } from '../pattern/types.js';
import { coincidenceTolerance } from '../tolerance.js';
import { distance } from '../vector.js';
import { selfMeetings } from './outer-boundary.js';
import { isSmooth } from './run.js';
import { isBefore, type Place, type Strand, startingAt, strandsBetween } from './strand.js';

/** A stretch of a drawn outline without a corner, and what it becomes moved inwards, untrimmed. */
export interface Flank {
  readonly of: string;
  /** mm by which it is moved. */
  readonly allowance: number;
  readonly drawn: readonly Segment[];
  readonly strands: readonly Strand[];
}

/** An edge cut at the corners in it, each part moved inwards. @throws PatternError `edge-without-length` */
export function flanksOf(edge: Edge, allowance: number): readonly Flank[] {
  const groups: Segment[][] = [];
  for (const segment of edge.path.segments) {
    if (segment.every(p => distance(p, segment[0]) <= coincidenceTolerance)) continue;
    const group = groups.at(-1);
    if (group && isSmooth(tangentAt(group.at(-1)!, 1), tangentAt(segment, 0), allowance)) group.push(segment);
    else groups.push([segment]);
  }
  if (groups.length === 0)
    throw new PatternError('edge-without-length', {
      message: `Edge "${edge.name}" has no length.`,
      remedy: 'Draw the edge, or leave it out.',
      where: { edge: edge.name },
    });
  return groups.map(drawn => ({
    of: edge.name,
    allowance,
    drawn,
    strands: withoutLoops(movedIn(edge.name, drawn, allowance)),
  }));
}

function movedIn(of: string, segments: readonly Segment[], allowance: number): readonly Strand[] {
  const strands: Strand[] = [];
  for (const segment of segments)
    for (const piece of allowance === 0 ? [segment] : offsetSegment(segment, -allowance)) {
      const before = strands.at(-1);
      strands.push({
        segment: before ? startingAt(piece, endOf(before.segment)) : piece,
        of,
        shape: 'parallel',
      });
    }
  return strands;
}

/** An open chain with the loops left out that a bend tighter than the allowance makes of its parallel. */
function withoutLoops(strands: readonly Strand[]): readonly Strand[] {
  const meetings = [...selfMeetings(strands)].sort((p, q) => p.a - q.a || q.b - p.b);
  const end: Place = { index: strands.length - 1, t: 1 };
  const kept: Strand[] = [];
  let from: Place = { index: 0, t: 0 };
  for (const { a, b } of meetings) {
    const leave = placeOf(a);
    if (b <= a || !isBefore(from, leave)) continue;
    kept.push(...strandsBetween(strands, from, leave));
    from = placeOf(b);
  }
  return kept.length === 0 && from.index === 0 && from.t === 0
    ? strands
    : [...kept, ...strandsBetween(strands, from, end)];
}

const placeOf = (position: number): Place => ({ index: Math.floor(position), t: position % 1 });

/** mm of the stretch as it was drawn. */
export const flankLength = (flank: Flank): number =>
  flank.drawn.reduce((sum, s) => sum + segmentLength(s), 0);
