import { type Edge, type EdgeRef, type Finding, type Pattern, pieceNamed } from '@paperhinge/geometry';
import { withPiece } from '@paperhinge/geometry/pattern';
import { finding } from './tellings.js';

/**
 * The pattern ready for a piece to be sewn to these edges: what was a hem among them is a seam, since it is no longer
 * turned up, with the allowance asked for, or the one most seams of its piece have, or of the pattern.
 * @param made the piece that is sewn on, for the finding
 */
export function hemsAsSeams(
  pattern: Pattern,
  along: readonly EdgeRef[],
  made: string,
  asked: number | undefined,
): { readonly pattern: Pattern; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  let ready = pattern;
  for (const name of new Set(along.map(ref => ref.piece))) {
    const piece = pieceNamed(ready, name);
    const isMeant = (part: { readonly type: string; readonly name: string }): boolean =>
      part.type === 'edge' && along.some(ref => ref.piece === name && ref.edge === part.name);
    const hems = piece.outline.parts.filter(
      (p): p is Edge => p.type === 'edge' && p.kind === 'hem' && isMeant(p),
    );
    if (hems.length === 0) continue;
    const allowanceMm = asked ?? usualAllowance(pattern, name) ?? hems[0]!.allowance;
    const parts = piece.outline.parts.map(part =>
      hems.includes(part as Edge) ? asSeam(part as Edge, allowanceMm) : part,
    );
    ready = withPiece(ready, { ...piece, outline: { parts } });
    const names = [...new Set(hems.map(hem => hem.name))];
    const facts = {
      piece: made,
      edges: names.map(edge => ({ piece: name, edge })),
      wasMm: hems[0]!.allowance,
      allowanceMm,
    };
    findings.push(finding('note', 'hem-becomes-seam', { piece: name, edge: names[0]! }, facts));
  }
  return { pattern: ready, findings };
}

/** A hem's finish and the corners of its turning go with it. */
function asSeam({ finish: _, corners: { start, end }, ...hem }: Edge, allowance: number): Edge {
  const corners = {
    ...(start && start !== 'turned-up' ? { start } : {}),
    ...(end && end !== 'turned-up' ? { end } : {}),
  };
  return { ...hem, kind: 'seam', allowance, corners };
}

/** The allowance that most seams of a piece have, else most of the pattern; undefined where none has any. */
function usualAllowance(pattern: Pattern, name: string): number | undefined {
  const ofSeams = (pieces: Pattern['pieces']): readonly number[] =>
    pieces.flatMap(({ outline }) =>
      outline.parts.flatMap(p =>
        p.type === 'edge' && p.kind === 'seam' && p.allowance > 0 ? [p.allowance] : [],
      ),
    );
  return mostCommon(ofSeams([pieceNamed(pattern, name)])) ?? mostCommon(ofSeams(pattern.pieces));
}

function mostCommon(values: readonly number[]): number | undefined {
  const times = (value: number): number => values.filter(v => v === value).length;
  return values.reduce<number | undefined>(
    (best, value) => (best === undefined || times(value) > times(best) ? value : best),
    undefined,
  );
}
