import { type EdgeRun, edgeNames, type Finding, type Pattern, type Seam } from '@paperhinge/geometry';

/** Takes runs along edges that are gone out of every seam, and seams that lost a side; each with a finding. */
export function withoutLostRuns(pattern: Pattern): {
  readonly pattern: Pattern;
  readonly findings: readonly Finding[];
} {
  const edges = new Set(pattern.pieces.flatMap(p => edgeNames(p).map(e => `${p.name}\n${e}`)));
  const there = (run: EdgeRun): boolean => edges.has(`${run.piece}\n${run.edge}`);
  const findings: Finding[] = [];
  const seams = pattern.seams.flatMap((seam): readonly Seam[] => {
    if (seam.a.every(there) && seam.b.every(there)) return [seam];
    const lost = [...new Set([...seam.a, ...seam.b].filter(r => !there(r)).map(r => `${r.piece}.${r.edge}`))];
    const left = { ...seam, a: seam.a.filter(there), b: seam.b.filter(there) };
    const gone = left.a.length === 0 || left.b.length === 0;
    findings.push({
      severity: 'warning',
      code: gone ? 'seam-gone' : 'seam-run-gone',
      where: {},
      message: gone
        ? `The seam "${seam.name}" is gone with ${lost.join(', ')}.`
        : `The seam "${seam.name}" lost ${lost.join(', ')}.`,
      remedy: 'Say anew what is sewn to the edges that are left.',
    });
    return gone ? [] : [left];
  });
  return { pattern: findings.length === 0 ? pattern : { ...pattern, seams }, findings };
}
