import { type Finding, type Pattern, PatternError, pieceNamed } from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { withoutLostRuns } from '../edit/seam-runs.js';

/** Take a piece out of the pattern. */
export interface RemovePiece {
  readonly piece: string;
}

/**
 * Takes a piece out of the pattern. A seam that it made one side of is gone; one that it shared with other pieces
 * keeps their runs. Findings say which, and which pieces were drafted for its edges.
 *
 * @throws PatternError `unknown-piece`; `last-piece` where no other would be left
 */
export function removePiece(pattern: Pattern, { piece: name }: RemovePiece): Alteration {
  const piece = pieceNamed(pattern, name);
  const pieces = pattern.pieces.filter(p => p !== piece);
  if (pieces.length === 0)
    throw new PatternError('last-piece', {
      message: `"${name}" is the only piece of the pattern.`,
      remedy: 'Keep it, or start from another pattern.',
      where: { piece: name },
    });
  const kept = withoutLostRuns({ ...pattern, pieces });
  const orphans = pieces
    .filter(p => p.madeFor?.some(e => e.piece === name))
    .map(
      (p): Finding => ({
        severity: 'warning',
        code: 'made-for-removed-piece',
        where: { piece: p.name },
        message: `"${p.name}" was made for an edge of "${name}", which is gone.`,
        remedy: `Remove it too: remove piece: { piece: ${p.name} }, or draft it anew.`,
      }),
    );
  const gone = pattern.seams.length - kept.pattern.seams.length;
  return {
    pattern: kept.pattern,
    did: `removed piece ${name}${gone > 0 ? ` and ${gone === 1 ? 'the seam' : `${gone} seams`} it was one side of` : ''}`,
    findings: [...kept.findings, ...orphans],
  };
}
