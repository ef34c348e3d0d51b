import type { Edge, EdgeRef, OutlinePart, Pattern, Piece, Point } from '@paperhinge/geometry';
import { isCornerLeft } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  type JoinedLine,
  joinedLinesAcrossFolds,
  joinedLinesOf,
  weldedLines,
} from '@paperhinge/geometry/measure';
import { endTangent, startTangent } from '@paperhinge/geometry/paths';
import { angleBetween, apply, dot, leftOf, rightOf, rotation } from '@paperhinge/geometry/plane';
import { holdsEdge } from '../edge-refs.js';

/** A better direction for an end of a line, and whether it alone is reason enough to redraw the line. */
export interface WantedEnd {
  readonly direction: Point;
  readonly needed: boolean;
  /** What is wrong while it is not drawn so: out of square with the fold, or a corner where it runs on. */
  readonly what: 'fold' | 'across';
}

export interface WantedEnds {
  readonly start?: WantedEnd;
  readonly end?: WantedEnd;
}

type End = 'start' | 'end';

/**
 * Directions that the ends of a run of parts should have; absent: they are well as they are.
 * @param trued the edges that are redrawn: a corner between two of them is shared by both
 */
export function wantedEnds(
  pattern: Pattern,
  piece: Piece,
  first: Edge,
  last: Edge,
  trued: readonly EdgeRef[],
): WantedEnds {
  const start = wantedEnd(pattern, piece, first, 'start', trued);
  const end = wantedEnd(pattern, piece, last, 'end', trued);
  return { ...(start ? { start } : {}), ...(end ? { end } : {}) };
}

function wantedEnd(
  pattern: Pattern,
  piece: Piece,
  part: Edge,
  end: End,
  trued: readonly EdgeRef[],
): WantedEnd | undefined {
  const ring = piece.outline.parts;
  const step = end === 'start' ? ring.length - 1 : 1;
  const beside = ring[(ring.indexOf(part) + step) % ring.length]!;
  const present = end === 'start' ? startTangent(part.path) : endTangent(part.path);
  if (beside.type === 'edge' && beside.kind === 'fold') {
    const [ending, beginning] = end === 'start' ? [beside, part] : [part, beside];
    return squareToFold(beside, end, present, isCornerLeft(pattern, piece, ending.name, beginning.name));
  }
  const corner = cornerBeyond(pattern, piece, part, beside, trued);
  if (corner === undefined || Math.abs(corner.share) <= tolerances.angleTolerance) return undefined;
  const turn = end === 'start' ? -corner.share : corner.share;
  return {
    direction: apply(rotation(turn), present),
    needed: Math.abs(corner.whole) > corner.most,
    what: 'across',
  };
}

function squareToFold(fold: Edge, end: End, present: Point, isLeft: boolean): WantedEnd | undefined {
  const direction = end === 'start' ? rightOf(endTangent(fold.path)) : leftOf(startTangent(fold.path));
  const off = Math.abs(angleBetween(present, direction));
  // More than a corner away from square is meant, as in a V neck, where no alteration left it.
  const isMeant = off > tolerances.cornerTurn && !isLeft;
  if (off <= tolerances.angleTolerance || isMeant || dot(present, direction) <= 0) return undefined;
  return { direction, needed: off > tolerances.squareTurn, what: 'fold' };
}

interface CornerBeyond {
  /** rad by which the cloth's angle at this end should grow. */
  readonly share: number;
  /** The whole corner, and how large it may be before it shows. */
  readonly whole: number;
  readonly most: number;
}

/** The corner that a line makes where it runs on: over the mouth of a dart or pleat, into an edge welded to it, or across a seam. */
function cornerBeyond(
  pattern: Pattern,
  piece: Piece,
  part: Edge,
  beside: OutlinePart,
  trued: readonly EdgeRef[],
): CornerBeyond | undefined {
  if (beside.type !== 'edge') {
    const across = joinedLinesAcrossFolds(pattern, piece).find(
      ({ closed }) => (closed?.dart ?? closed?.pleat) === beside.name,
    );
    return across && shared(across, piece, part, trued, tolerances.joinedCorner);
  }
  const welded = weldedLines(pattern, piece).find(line => isBetween(line, part, beside));
  if (welded) {
    const corner = shared(welded, piece, part, trued, tolerances.kinkTurn);
    // A corner where two edges meet as they are drawn may be meant; where something was sewn shut it never is.
    const isLeft = isCornerLeft(pattern, piece, welded.first.edge, welded.second.edge);
    return Math.abs(corner.whole) > tolerances.cornerTurn && !isLeft ? undefined : corner;
  }
  const isOwn = (one: EdgeRef): boolean => one.piece === piece.name && one.edge === part.name;
  for (const seam of pattern.seams) {
    const here = [...seam.a, ...seam.b].some(r => r.piece === piece.name && r.edge === beside.name);
    if (!here) continue;
    for (const line of joinedLinesOf(pattern, seam, 0))
      if (isOwn(line.first) || isOwn(line.second))
        return shared(line, piece, part, trued, tolerances.joinedCorner);
  }
  return undefined;
}

const isBetween = ({ first, second }: JoinedLine, part: Edge, beside: Edge): boolean =>
  (first.edge === part.name && second.edge === beside.name) ||
  (first.edge === beside.name && second.edge === part.name);

/** A line joined to itself (a sleeve's hem across its one seam) shares the corner between its two ends. */
function shared(
  { first, second, cornerDeg }: JoinedLine,
  piece: Piece,
  part: Edge,
  trued: readonly EdgeRef[],
  most: number,
): CornerBeyond {
  const other = first.piece === piece.name && first.edge === part.name ? second : first;
  const both = holdsEdge(trued, other);
  const whole = (cornerDeg * Math.PI) / 180;
  return { share: both ? whole / 2 : whole, whole, most };
}
