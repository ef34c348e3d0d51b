import { type Edge, type OutlinePart, type Piece, roleOf } from '@paperhinge/geometry';
import { partsOfEdge } from '@paperhinge/geometry/pattern';

const isHem = (part: OutlinePart): boolean =>
  part.type === 'edge' && (part.kind === 'hem' || roleOf(part) === 'hem');

/** The end of an edge at which the hem lies, and the part of the edge that ends there; nothing where neither or both do. */
export function hemEnd(
  piece: Piece,
  edge: string,
): { readonly at: 'start' | 'end'; readonly part: Edge } | undefined {
  const ring = piece.outline.parts;
  const own = partsOfEdge(piece, edge);
  const first = ring.indexOf(own[0]!),
    last = ring.indexOf(own.at(-1)!);
  const before = isHem(ring[(first + ring.length - 1) % ring.length]!),
    after = isHem(ring[(last + 1) % ring.length]!);
  if (before === after) return undefined;
  return before ? { at: 'start', part: own[0]! } : { at: 'end', part: own.at(-1)! };
}
