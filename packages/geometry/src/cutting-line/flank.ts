import { segmentLength } from '../curve/arc-length.js';
import { offsetSegment } from '../curve/offset.js';
import { endOf, type Segment, startOf } from '../curve/segment.js';
import { withoutStubs } from '../curve/stubs.js';
import { refusal } from '../pattern/tellings.js';
import type { Edge } from '../pattern/types.js';
import type { Point } from '../vector.js';
import { smoothGroups } from './run.js';
import { withoutSpecks } from './specks.js';
import { type Strand, startingAt } from './strand.js';
import { pathWithoutLoops } from './without-loops.js';

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
  const { segments } = edge.path;
  const groups = smoothGroups(allowance === 0 ? segments : withoutSpecks(segments), allowance);
  if (groups.length === 0) throw refusal('edge-without-length', {}, { edge: edge.name });
  return groups.map(drawn => ({
    of: edge.name,
    allowance,
    drawn,
    strands: pathWithoutLoops({ segments: movedIn(drawn, allowance) }).segments.map(segment => ({
      segment,
      of: edge.name,
      shape: 'parallel',
    })),
  }));
}

function movedIn(drawn: readonly Segment[], allowance: number): readonly Segment[] {
  const moved: Segment[] = [];
  for (const segment of drawn)
    for (const piece of allowance === 0 ? [segment] : offsetSegment(withoutStubs(segment), -allowance)) {
      const before = moved.at(-1);
      moved.push(before ? startingAt(piece, endOf(before)) : piece);
    }
  return moved;
}

/** Where a stretch, moved, starts. */
export const flankStart = ({ strands }: Flank): Point => startOf(strands[0]!.segment);
/** Where it ends. */
export const flankEnd = ({ strands }: Flank): Point => endOf(strands.at(-1)!.segment);

/** mm of the stretch as it was drawn. */
export const flankLength = (flank: Flank): number =>
  flank.drawn.reduce((sum, s) => sum + segmentLength(s), 0);
