import { edgePath, type Piece } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { edgeParts, isCentreEdge } from '@paperhinge/geometry/pattern';
import { angleBetween, subtract } from '@paperhinge/geometry/plane';

/** Whether a piece's grain line lies nearer to 45° than to its fold or centre edge, or to square with it. */
export function isBias(piece: Piece): boolean {
  const centre = edgeParts(piece).find(isCentreEdge);
  const grain = piece.lines.find(l => l.kind === 'grain');
  if (!centre || !grain) return false;
  const path = edgePath(piece, centre.name);
  const angle = angleBetween(
    subtract(pathEnd(path), pathStart(path)),
    subtract(pathEnd(grain.path), pathStart(grain.path)),
  );
  const fromSquare = Math.abs(angle) % (Math.PI / 2);
  return fromSquare > Math.PI / 8 && fromSquare < (3 * Math.PI) / 8;
}
