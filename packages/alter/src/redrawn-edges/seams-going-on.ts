import type { EdgeRun, Finding, Seam } from '@paperhinge/geometry';
import type { GoesOn } from './grown-on.js';
import { finding } from './tellings.js';

/** Of each piece by its name, the edges that go on in a facing. */
export type Grown = ReadonlyMap<string, readonly GoesOn[]>;

/**
 * Seams whose two sides both go on in facings are sewn through them; where only one does, that is told.
 */
export function seamsGoingOn(
  seams: readonly Seam[],
  grown: Grown,
): { readonly seams: readonly Seam[]; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const longer = seams.map((seam): Seam => {
    const { a, b } = seam;
    let sides = { a, b };
    for (const where of ['start', 'end'] as const) {
      const [one, other] = [a, b].map(runs => goingOn(runs, grown, where));
      if (one && other) sides = { a: added(sides.a, one, where), b: added(sides.b, other, where) };
      else if (one || other) findings.push(alone((one ?? other)!, one ? b : a, where));
    }
    return sides.a === a ? seam : { ...seam, ...sides };
  });
  return { seams: longer, findings };
}

/** The run of the facing that a side goes on in at one end of its seam. */
function goingOn(runs: readonly EdgeRun[], grown: Grown, where: 'start' | 'end'): EdgeRun | undefined {
  const last = where === 'end' ? runs.at(-1) : runs[0];
  if (!last || last.part) return undefined;
  // The end of the edge that lies at this end of the seam.
  const at = (where === 'end') !== last.reversed ? 'end' : 'start';
  const found = grown.get(last.piece)?.find(one => one.edge === last.edge && one.at === at);
  return found && { piece: last.piece, edge: found.facing, reversed: last.reversed };
}

const added = (runs: readonly EdgeRun[], run: EdgeRun, where: 'start' | 'end'): readonly EdgeRun[] =>
  where === 'end' ? [...runs, run] : [run, ...runs];

function alone(run: EdgeRun, others: readonly EdgeRun[], where: 'start' | 'end'): Finding {
  const edge = { piece: run.piece, edge: run.edge };
  const beside = where === 'end' ? others.at(-1)! : others[0]!;
  return finding('note', 'grown-on-alone', edge, { edge, beside: { piece: beside.piece } });
}
