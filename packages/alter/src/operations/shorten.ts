import { type Finding, formatLength, type Pattern, pieceNamed, withPiece } from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { moveHem } from '../edit/move-hem.js';
import { shortenAtLine } from '../edit/shorten-at-line.js';

/** Shorten (or, with a negative amount, lengthen) pieces at the hem or at a drawn line. Amount in mm. */
export interface Shorten {
  readonly pieces: readonly string[];
  /** `hem`, or the name of a line of each piece. */
  readonly at: string;
  readonly by: number;
}

/**
 * Shortens pieces by `by` mm along the grain; a negative amount lengthens.
 *
 * At the hem: it moves, and it and its neighbours run on straight or are cut at their crossing. At a line: the part
 * away from the neck (or cap) moves, and each edge the line crosses is sheared square to the grain so that its two
 * parts meet.
 *
 * @throws PatternError `unknown-piece`; `no-hem`, `several-hems`; `unknown-line`; `shorten-beyond-piece`;
 *   `line-off-piece`, `line-through-corner`, `line-crosses-edge-twice`; `grain-across`; `dart-legs-differ`
 */
export function shorten(pattern: Pattern, { pieces, at, by }: Shorten): Alteration {
  const findings: Finding[] = [];
  let altered = pattern;
  for (const name of new Set(pieces)) {
    const piece = pieceNamed(altered, name);
    const done = at === 'hem' ? moveHem(piece, by) : shortenAtLine(piece, at, by);
    findings.push(...done.findings);
    altered = withPiece(altered, done.piece);
  }
  const verb = by < 0 ? 'lengthened' : 'shortened';
  const where = at === 'hem' ? 'at the hem' : `at the line "${at}"`;
  return {
    pattern: altered,
    did: `${verb} ${[...new Set(pieces)].join(', ')} ${where} by ${formatLength(Math.abs(by), pattern.unit)}`,
    findings,
  };
}
