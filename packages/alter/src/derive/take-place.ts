import {
  type EdgeRun,
  type Finding,
  type Pattern,
  PatternError,
  type Piece,
  type Seam,
  type TakenUp,
  validatePiece,
} from '@paperhinge/geometry';
import { holdsEdge } from '../edge-refs.js';
import { withoutLost } from '../settled.js';
import { finding, refusal } from './tellings.js';

/** A seam between a drafted piece and the edges it was drafted for. */
export interface DraftedSeam {
  /** Runs of the drafted piece, and of the garment in the same order. */
  readonly own: readonly EdgeRun[];
  readonly partner: readonly EdgeRun[];
  /** mm by which its own side is longer. */
  readonly easeMm: number;
  /** How the longer side is made to fit; absent = eased in. */
  readonly takenUp?: TakenUp;
}

/** A seam of a drafted piece with itself. */
export type JoinSeam = Omit<Seam, 'name' | 'ease'>;

/**
 * Puts a drafted piece into a pattern, in the place of a piece of its name where there is one: then it takes over
 * that piece's seam with the edges it was drafted for, and the rest of its seams go, each with a finding.
 *
 * @param sewn absent where the piece is not sewn to its edges by a seam (a stay)
 * @param ends seam of the piece with itself
 * @throws PatternError `drafted-along-itself`, `drafted-misshapen`
 */
export function takePlace(
  pattern: Pattern,
  piece: Piece,
  sewn: DraftedSeam | undefined,
  ends?: JoinSeam,
): { readonly pattern: Pattern; readonly findings: readonly Finding[]; readonly replaced: boolean } {
  const { name } = piece;
  const along = piece.madeFor ?? [];
  if (along.some(ref => ref.piece === name))
    throw refusal('drafted-along-itself', { piece: name }, { piece: name });
  requireShape(piece);
  const old = pattern.pieces.find(p => p.name === name);
  const pieces = old ? pattern.pieces.map(p => (p === old ? piece : p)) : [...pattern.pieces, piece];
  const isOwn = (run: EdgeRun): boolean => run.piece === name;
  const isAlong = (run: EdgeRun): boolean => holdsEdge(along, run);
  const taken = pattern.seams.find(
    ({ a, b }) => (a.some(isOwn) && b.some(isAlong)) || (b.some(isOwn) && a.some(isAlong)),
  );
  // Seams of the old piece with itself (its own join) go with it; they are not missed.
  const others = pattern.seams.filter(({ a, b }) => ![...a, ...b].every(isOwn));
  const free = (wanted: string): string => {
    const names = new Set(others.filter(s => s !== taken).map(s => s.name));
    let unused = wanted;
    for (let n = 2; names.has(unused); n++) unused = `${wanted}-${n}`;
    return unused;
  };
  const seams = others.flatMap((seam): readonly Seam[] =>
    seam !== taken ? [seam] : sewn ? [seamOf(seam.name, sewn, seam.b.some(isOwn))] : [],
  );
  const added: Seam[] = sewn && !taken ? [seamOf(free(name), sewn, false)] : [];
  if (ends) added.push({ name: free(`${name} join`), ...ends, ease: { mm: 0 } });
  const kept = withoutLost({ ...pattern, pieces, seams: [...seams, ...added] });
  const inSeam = taken && sewn ? { seam: { seam: taken.name } } : {};
  const replaced = finding('note', 'piece-replaced', { piece: name }, { piece: name, ...inSeam });
  return {
    pattern: kept.pattern,
    findings: [...(old ? [replaced] : []), ...kept.findings],
    replaced: old !== undefined,
  };
}

/** @throws PatternError `drafted-misshapen`: measures that no piece can have */
function requireShape(piece: Piece): void {
  try {
    validatePiece(piece);
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    throw refusal('drafted-misshapen', { piece: piece.name }, { piece: piece.name });
  }
}

const seamOf = (name: string, { own, partner, easeMm, takenUp }: DraftedSeam, ownIsB: boolean): Seam => ({
  name,
  ...(ownIsB
    ? { a: partner, b: own, ease: { mm: 0 - easeMm } }
    : { a: own, b: partner, ease: { mm: easeMm } }),
  ...(takenUp === undefined || takenUp === 'eased' ? {} : { takenUp }),
});
