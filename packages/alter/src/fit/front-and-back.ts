import { type Edge, edgePath, type Pattern, type Piece, pieceNamed, roleOf } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { edgeParts, neighboursOf } from '@paperhinge/geometry/pattern';
import { dot, subtract, unit } from '@paperhinge/geometry/plane';

/**
 * Whether a bodice piece is the back: its neck lies less deep than that of the piece its shoulder is sewn to (common
 * practice, no source). False where nothing can be compared.
 */
export function isBack(pattern: Pattern, piece: Piece): boolean {
  const own = neckDepth(piece);
  const partner = shoulderPartner(pattern, piece);
  const other = partner && neckDepth(partner);
  return own !== undefined && other !== undefined && own < other;
}

/** mm from the neck's end at the shoulder down to its other end, along the edge there: a fold, a seam or an opening. */
function neckDepth(piece: Piece): number | undefined {
  const neck = withRole(piece, 'neck');
  const shoulder = withRole(piece, 'shoulder');
  if (!neck || !shoulder) return undefined;
  const { start, end } = neighboursOf(piece, neck.name);
  if (start !== shoulder.name && end !== shoulder.name) return undefined;
  const centre = edgeParts(piece).find(({ name }) => name === (start === shoulder.name ? end : start));
  if (!centre) return undefined;
  const path = edgePath(piece, neck.name);
  const [atCentre, atShoulder] =
    start === centre.name ? [pathStart(path), pathEnd(path)] : [pathEnd(path), pathStart(path)];
  const down = edgePath(piece, centre.name);
  const along = unit(subtract(pathEnd(down), pathStart(down)));
  return Math.abs(dot(subtract(atCentre, atShoulder), along));
}

function shoulderPartner(pattern: Pattern, piece: Piece): Piece | undefined {
  const shoulder = withRole(piece, 'shoulder');
  for (const { a, b } of pattern.seams)
    for (const [own, other] of [
      [a, b],
      [b, a],
    ] as const)
      if (own.some(r => r.piece === piece.name && r.edge === shoulder?.name)) {
        const partner = other.find(r => r.piece !== piece.name);
        if (partner) return pieceNamed(pattern, partner.piece);
      }
  return undefined;
}

const withRole = (piece: Piece, role: Edge['role']): Edge | undefined =>
  edgeParts(piece).find(e => roleOf(e) === role);
