import {
  type EdgeRef,
  type EdgeRun,
  type Finding,
  type Pattern,
  PatternError,
  type Piece,
  type Seam,
} from '@paperhinge/geometry';
import { withoutLost } from '../became/settled.js';

/** A seam between a drafted piece and the edges it was drafted for. */
export interface DraftedSeam {
  /** Runs of the drafted piece, and of the garment in the same order. */
  readonly own: readonly EdgeRun[];
  readonly partner: readonly EdgeRun[];
  /** mm by which its own side is longer. */
  readonly easeMm: number;
}

/**
 * Puts a drafted piece into a pattern, in the place of a piece of its name where there is one: then it takes over
 * that piece's seam with the edges it was drafted for, and the rest of its seams go, each with a finding.
 *
 * @param sewn absent where the piece is not sewn to its edges by a seam (a stay)
 * @param ends seam of the piece with itself
 * @throws PatternError `drafted-along-itself`
 */
export function takePlace(
  pattern: Pattern,
  piece: Piece,
  sewn: DraftedSeam | undefined,
  ends?: Omit<Seam, 'name' | 'ease'>,
): { readonly pattern: Pattern; readonly findings: readonly Finding[]; readonly replaced: boolean } {
  const { name } = piece;
  const along = piece.madeFor ?? [];
  if (along.some(ref => ref.piece === name))
    throw new PatternError('drafted-along-itself', {
      message: `"${name}" cannot be drafted along its own edges.`,
      remedy: 'Give the new piece another name.',
      where: { piece: name },
    });
  const old = pattern.pieces.find(p => p.name === name);
  const pieces = old ? pattern.pieces.map(p => (p === old ? piece : p)) : [...pattern.pieces, piece];
  const isOwn = (run: EdgeRun): boolean => run.piece === name;
  const isAlong = (run: EdgeRun): boolean =>
    along.some((a: EdgeRef) => a.piece === run.piece && a.edge === run.edge);
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
  const replaced: Finding = {
    severity: 'note',
    code: 'piece-replaced',
    where: { piece: name },
    message: `The drafted ${name} takes the place of the pattern's own${taken && sewn ? `, in its seam "${taken.name}" too` : ''}.`,
    remedy: 'Give the new piece another name if both are wanted.',
  };
  return {
    pattern: kept.pattern,
    findings: [...(old ? [replaced] : []), ...kept.findings],
    replaced: old !== undefined,
  };
}

const seamOf = (name: string, { own, partner, easeMm }: DraftedSeam, ownIsB: boolean): Seam =>
  ownIsB
    ? { name, a: partner, b: own, ease: { mm: 0 - easeMm } }
    : { name, a: own, b: partner, ease: { mm: easeMm } };
