import { segmentLength } from '../curve/arc-length.js';
import { offsetSegment } from '../curve/offset.js';
import { endOf, type Segment } from '../curve/segment.js';
import { withoutStubs } from '../curve/stubs.js';
import { refusal } from '../pattern/tellings.js';
import type { Edge } from '../pattern/types.js';
import { smoothGroups } from './run.js';
import { type Strand, startingAt } from './strand.js';
import { withoutLoops } from './without-loops.js';

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
  const groups = smoothGroups(edge.path.segments, allowance);
  if (groups.length === 0) throw refusal('edge-without-length', {}, { edge: edge.name });
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
    for (const piece of allowance === 0 ? [segment] : offsetSegment(withoutStubs(segment), -allowance)) {
      const before = strands.at(-1);
      strands.push({
        segment: before ? startingAt(piece, endOf(before.segment)) : piece,
        of,
        shape: 'parallel',
      });
    }
  return strands;
}

/** mm of the stretch as it was drawn. */
export const flankLength = (flank: Flank): number =>
  flank.drawn.reduce((sum, s) => sum + segmentLength(s), 0);
