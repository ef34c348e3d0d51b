import {
  type Edge,
  type EdgeRef,
  type EdgeRun,
  edgeNamed,
  edgeNames,
  edgePath,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  roleOf,
} from '@paperhinge/geometry';
import { copiesInGarment, neighboursOf } from '@paperhinge/geometry/pattern';
import { holdsEdge, sameEdge } from '../edge-refs.js';

/** A slit that runs into an edge from one of its ends: its two sides one after the other, and how many there are. */
export interface Slit {
  /** From the open end up one side, and down the other. */
  readonly sides: readonly EdgeRun[];
  readonly count: number;
}

/**
 * A slit of a length in mm in an edge: left open in the seam that the edge is sewn into, so that its other side is the
 * other side of that seam; where the edge is sewn into none, both sides are its own. It runs in from the end that lies at
 * a hem or wrist, else at a neck or waist, else at whatever is not sewn.
 */
export function slitIn(pattern: Pattern, along: EdgeRef, length: number): Slit {
  const piece = pieceNamed(pattern, along.piece);
  const from = openEnd(pattern, piece, along.edge);
  const own = stretch(pattern, along, from, length);
  const across = acrossFrom(pattern, along);
  const other = across ? stretch(pattern, across, across.turned ? opposite[from] : from, length) : own;
  const copies = copiesInGarment(piece);
  // A centre seam sews the copies of its piece to one another: they share their slits.
  const count = across && sameEdge(across, along) ? Math.max(1, copies / 2) : copies;
  return { sides: [own, { ...other, reversed: !other.reversed }], count };
}

type End = 'start' | 'end';
const opposite = { start: 'end', end: 'start' } as const;

/** The stretch of an edge that begins at one of its ends, walked from there. */
function stretch(pattern: Pattern, { piece, edge }: EdgeRef, from: End, length: number): EdgeRun {
  const whole = pathLength(edgePath(pieceNamed(pattern, piece), edge));
  const part = from === 'start' ? { from: 0, to: length } : { from: whole - length, to: whole };
  return { piece, edge, reversed: from === 'end', part };
}

/** The end of an edge that a slit runs in from. */
function openEnd(pattern: Pattern, piece: Piece, edge: string): End {
  const beside = neighboursOf(piece, edge);
  const rank = (name: string): number => {
    if (!edgeNames(piece).includes(name)) return 3;
    const other: Edge = edgeNamed(piece, name);
    const role = roleOf(other);
    if (other.kind === 'hem' || role === 'hem' || role === 'wrist') return 0;
    if (role === 'neck' || role === 'waist') return 1;
    const isSewn = pattern.seams.some(({ a, b }) =>
      holdsEdge([...a, ...b], { piece: piece.name, edge: name }),
    );
    return isSewn ? 3 : 2;
  };
  return rank(beside.start) < rank(beside.end) ? 'start' : 'end';
}

/** The edge that lies across a seam from one, where that is one whole edge on either side; `turned`: it runs the other way. */
function acrossFrom(pattern: Pattern, along: EdgeRef): (EdgeRef & { readonly turned: boolean }) | undefined {
  for (const { a, b } of pattern.seams)
    for (const [own, other] of [
      [a, b],
      [b, a],
    ] as const)
      if (own.length === 1 && other.length === 1 && sameEdge(own[0]!, along)) {
        const { piece, edge, reversed } = other[0]!;
        return { piece, edge, turned: reversed !== own[0]!.reversed };
      }
  return undefined;
}
