import { type AnyVerb, verbs } from '@paperhinge/alter';
import { english } from '@paperhinge/sheet/words';
import { firstVisit, undoneStep } from '../job/lessons.js';
import { finished } from './in-parts.js';
import { proofOf } from './proof.js';
import type { Declared, FirstView } from './view.js';
import { work } from './work.js';

/**
 * What a first visitor sees, and what is declared of the verbs: worked out when the page is built, so that the page need
 * not wait for its engine to show it.
 */
export async function firstView(): Promise<FirstView> {
  const laid = await firstVisit();
  const steps = Number.POSITIVE_INFINITY;
  const { view, worked } = work(
    { id: 0, ...laid, needle: steps, open: undoneStep, unit: 'cm', language: 'en' },
    english,
  );
  return {
    verbs: verbs.map(declared),
    view: { ...view, milliseconds: 0 },
    proof: { ...finished(proofOf(worked)), milliseconds: 0 },
  };
}

const declared = ({ verb, does, fields, oneOf, sentence, startsAt }: AnyVerb): Declared => ({
  verb,
  does,
  fields,
  sentence,
  startsAt,
  ...(oneOf ? { oneOf } : {}),
});
