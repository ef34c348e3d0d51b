import type { Finding, Pattern, Saying } from '@paperhinge/geometry';
import type { Alteration } from '../../alteration.js';
import type { Became } from '../../became/became.js';
import { inTurn } from '../../became/in-turn.js';
import { saying } from './tellings.js';

/** A step of a composition: done to the pattern as the steps before left it. */
export type Part = (pattern: Pattern) => Alteration;

/** Steps one after the other as one alteration that says all they did. */
export function inSteps(
  pattern: Pattern,
  parts: readonly Part[],
  told: { what: string; byMm: number },
): Alteration {
  let findings: readonly Finding[] = [];
  const steps: Saying[] = [];
  let now = pattern;
  let became: Became | undefined;
  for (const part of parts) {
    const done = part(now);
    now = done.pattern;
    const redrawn = redrawnBy(done);
    findings = [...findings.filter(one => !redrawn(one)), ...done.findings];
    if (typeof done.did !== 'string') steps.push(done.did);
    became = became && done.became ? inTurn(became, done.became) : (became ?? done.became);
  }
  return {
    pattern: now,
    did: saying('adjusted', { ...told, steps }),
    findings,
    ...(became ? { became } : {}),
  };
}

/** Whether a finding is of an edge that a step drew anew, so that what was to be trued there no longer is. */
function redrawnBy({ did, findings }: Alteration): (finding: Finding) => boolean {
  if (typeof did === 'string' || did.code !== 'trued') return () => false;
  const left = findings.map(({ where }) => `${where.piece}.${where.edge}`);
  const trued = (did.facts.edges as readonly Saying[]).flatMap(({ code, facts }) => {
    const { piece, edge } = facts.edge as { piece: string; edge: string };
    return code === 'trued-edge' ? [`${piece}.${edge}`] : [];
  });
  return ({ where }) => {
    const edge = `${where.piece}.${where.edge}`;
    return trued.includes(edge) && !left.includes(edge);
  };
}
