import { type EdgeRole, type LineRole, type Pattern, pieceNamed, type Seam } from '@paperhinge/geometry';
import { edgesOfRole, neighboursOf } from '@paperhinge/geometry/pattern';
import { sideLength, stretchOf } from '../../moved-edges/seam-place.js';
import { acrossAt, levelPoint } from './landmarks.js';

/** Where a level meets the first side of a seam, as a share of its length; undefined where none of its pieces has it. */
export function shareAtLevel(
  pattern: Pattern,
  seam: Seam,
  roles: readonly LineRole[],
  role: EdgeRole,
): number | undefined {
  let before = 0;
  for (const run of seam.a) {
    const piece = pieceNamed(pattern, run.piece);
    const [from, to] = stretchOf(pattern, run);
    const has = piece.lines.some(line => line.kind === 'level' && roles.some(one => line.role === one));
    const met = has ? acrossAt(piece, levelPoint(piece, roles), role) : undefined;
    if (met?.edge === run.edge) {
      const along = run.reversed ? to - met.along : met.along - from;
      return (before + along) / sideLength(pattern, seam.a);
    }
    before += to - from;
  }
  return undefined;
}

/** The end of a seam at which its first side touches an edge of these roles: its beginning 0, its end 1. */
export function endTouching(pattern: Pattern, seam: Seam, roles: readonly EdgeRole[]): 0 | 1 | undefined {
  const touches = (index: number, atEnd: boolean): boolean => {
    const run = seam.a.at(index)!;
    const piece = pieceNamed(pattern, run.piece);
    const beside = neighboursOf(piece, run.edge);
    return edgesOfRole(piece, ...roles).includes(atEnd === run.reversed ? beside.start : beside.end);
  };
  if (touches(0, false)) return 0;
  return touches(-1, true) ? 1 : undefined;
}
