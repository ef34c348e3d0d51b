import { type Pattern, type Piece, pieceNamed, type Seam } from '@paperhinge/geometry';
import type { Job } from './jobs.js';

/**
 * The seams of a piece in two layers that sew another such piece between them: the stand of a shirt collar takes in
 * the fall, which is sewn to nothing else, and is itself sewn on to the garment.
 */
export function takenBetween(pattern: Pattern, { pieces: [name = ''] }: Job): readonly Seam[] {
  const holds = ({ a, b }: Seam, piece: string) => [...a, ...b].some(run => run.piece === piece);
  const isLaidOn = (seam: Seam): boolean =>
    [...seam.a, ...seam.b].some(run => !isLayered(pieceNamed(pattern, run.piece)));
  const own = pattern.seams.filter(seam => holds(seam, name));
  if (!own.some(isLaidOn)) return [];
  return own.filter(seam => {
    const others = new Set([...seam.a, ...seam.b].map(run => run.piece).filter(piece => piece !== name));
    return (
      others.size > 0 &&
      [...others].every(
        piece =>
          isLayered(pieceNamed(pattern, piece)) &&
          pattern.seams.every(one => one === seam || !holds(one, piece)),
      )
    );
  });
}

const isLayered = ({ cutting }: Piece): boolean => (cutting.layers ?? 1) > 1;
