import {
  angleBetween,
  apply,
  dot,
  type Edge,
  type EdgeRef,
  endTangent,
  joinedLinesOf,
  leftOf,
  neighboursOf,
  type Pattern,
  type Point,
  partsOfEdge,
  pieceNamed,
  rightOf,
  rotation,
  startTangent,
  tolerances,
} from '@paperhinge/geometry';

/** A better direction for an end of a line, and whether it alone is reason enough to redraw the line. */
export interface WantedEnd {
  readonly direction: Point;
  readonly needed: boolean;
  /** What is wrong while it is not drawn so. */
  readonly what: string;
}

export interface WantedEnds {
  readonly start?: WantedEnd;
  readonly end?: WantedEnd;
}

/** Directions that the ends of part `index` of `count` of an edge should have; absent: they are well as they are. */
export function wantedEnds(
  pattern: Pattern,
  ref: EdgeRef,
  index: number,
  count: number,
  trued: readonly EdgeRef[],
): WantedEnds {
  // Inner ends lie at a dart's mouth, where the line must keep its angle to the leg.
  const start = index === 0 ? wantedEnd(pattern, ref, 'start', trued) : undefined;
  const end = index === count - 1 ? wantedEnd(pattern, ref, 'end', trued) : undefined;
  return { ...(start ? { start } : {}), ...(end ? { end } : {}) };
}

function wantedEnd(
  pattern: Pattern,
  ref: EdgeRef,
  end: 'start' | 'end',
  trued: readonly EdgeRef[],
): WantedEnd | undefined {
  const piece = pieceNamed(pattern, ref.piece);
  const parts = partsOfEdge(piece, ref.edge);
  const own = end === 'start' ? parts[0]! : parts.at(-1)!;
  const ring = piece.outline.parts;
  const step = end === 'start' ? ring.length - 1 : 1;
  const beside = ring[(ring.indexOf(own) + step) % ring.length]!;
  const present = end === 'start' ? startTangent(own.path) : endTangent(own.path);
  if (beside.type === 'edge' && beside.kind === 'fold') return squareToFold(beside, end, present);
  const corner = cornerAcrossSeams(pattern, ref, end, trued);
  if (corner === undefined || Math.abs(corner.share) <= tolerances.kinkTurn / 2) return undefined;
  const turn = end === 'start' ? -corner.share : corner.share;
  return {
    direction: apply(rotation(turn), present),
    needed: Math.abs(corner.whole) > tolerances.joinedCorner,
    what: 'with a corner across the seam',
  };
}

function squareToFold(fold: Edge, end: 'start' | 'end', present: Point): WantedEnd | undefined {
  const direction = end === 'start' ? rightOf(endTangent(fold.path)) : leftOf(startTangent(fold.path));
  const off = Math.abs(angleBetween(present, direction));
  // More than a corner away from square is meant, as in a V neck.
  if (off <= tolerances.angleTolerance || off > tolerances.cornerTurn || dot(present, direction) <= 0)
    return undefined;
  return { direction, needed: off > tolerances.squareTurn, what: 'out of square with the fold' };
}

/** rad by which the cloth's angle at this end should grow, and the whole corner that is shared out. */
function cornerAcrossSeams(
  pattern: Pattern,
  ref: EdgeRef,
  end: 'start' | 'end',
  trued: readonly EdgeRef[],
): { readonly share: number; readonly whole: number } | undefined {
  const piece = pieceNamed(pattern, ref.piece);
  const neighbour = neighboursOf(piece, ref.edge)[end];
  const isOwn = (one: EdgeRef): boolean => one.piece === ref.piece && one.edge === ref.edge;
  for (const seam of pattern.seams) {
    const here = [...seam.a, ...seam.b].some(r => r.piece === ref.piece && r.edge === neighbour);
    if (!here) continue;
    for (const line of joinedLinesOf(pattern, seam, 0)) {
      if (!isOwn(line.first) && !isOwn(line.second)) continue;
      const other = isOwn(line.first) ? line.second : line.first;
      // A line joined to itself (a sleeve's hem across its one seam) shares the corner between its two ends.
      const shared = trued.some(t => t.piece === other.piece && t.edge === other.edge);
      const whole = (line.cornerDeg * Math.PI) / 180;
      return { share: shared ? whole / 2 : whole, whole };
    }
  }
  return undefined;
}
