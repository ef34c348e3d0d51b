import { pathLength } from '../../path/length.js';
import { edgeNames, edgePath } from '../../pattern/outline.js';
import type { Piece, PieceRole } from '../../pattern/types.js';
import type { PieceProposal } from './propose-pieces.js';

/** mm: edges of a piece and of its lining, traced from one another, differ by less. */
const asTraced = 0.5;

/**
 * Which layer of a garment each piece belongs to: 0, or 1 for one that has the outline of another before it, as a
 * lining has. One such pair of a kind alone is a front and a back that are cut alike.
 */
export function layersOf(
  pieces: readonly Piece[],
  proposals: readonly PieceProposal[],
): ReadonlyMap<string, number> {
  const rings = pieces.map(piece => edgeNames(piece).map(name => pathLength(edgePath(piece, name))));
  const roles = pieces.map(piece => proposals.find(p => p.piece === piece.name)?.role);
  const before = rings.map((ring, i) => rings.slice(0, i).filter(other => sameRing(other, ring)).length);
  const isLined = (role: PieceRole | undefined): boolean =>
    before.filter((count, i) => count === 1 && roles[i] === role).length > 1;
  return new Map(pieces.map((piece, i) => [piece.name, isLined(roles[i]) ? before[i]! : 0]));
}

function sameRing(a: readonly number[], b: readonly number[]): boolean {
  if (a.length !== b.length || a.length < 4) return false;
  const turned = [...b].reverse();
  const matches = (ring: readonly number[], from: number): boolean =>
    a.every((length, i) => Math.abs(length - ring[(i + from) % ring.length]!) <= asTraced);
  return a.some((_, from) => matches(b, from) || matches(turned, from));
}
