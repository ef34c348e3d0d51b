import type { Piece, Point } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { subtract, unit } from '@paperhinge/geometry/plane';

/** Unit direction of a piece's grain line from its start to its end. */
export function grainDirection(piece: Piece): Point | undefined {
  const grain = piece.lines.find(l => l.kind === 'grain');
  return grain && unit(subtract(pathEnd(grain.path), pathStart(grain.path)));
}
