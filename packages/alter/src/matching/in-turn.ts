import type { Pattern, Saying } from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { nothingBecame } from '../became/became.js';
import { inTurn } from '../became/in-turn.js';
import { saying } from './tellings.js';

/** Whole steps, each done to what the one before it left, as one that says all they did. */
export function stepsInTurn(
  pattern: Pattern,
  steps: readonly ((pattern: Pattern) => Alteration)[],
): Alteration {
  const done: Alteration[] = [];
  for (const step of steps) done.push(step(done.at(-1)?.pattern ?? pattern));
  return {
    pattern: done.at(-1)?.pattern ?? pattern,
    did: saying('did-each', { steps: done.map(({ did }) => did as Saying) }),
    findings: done.flatMap(({ findings }) => findings),
    became: done.reduce((became, one) => inTurn(became, one.became ?? nothingBecame), nothingBecame),
  };
}
