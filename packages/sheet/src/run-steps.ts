import { type AnyVerb, verbs as allVerbs } from '@paperhinge/alter';
import type { Pattern, PatternError, Where } from '@paperhinge/geometry';
import { oncePerAll } from '@paperhinge/geometry/internal';
import { locating } from '@paperhinge/geometry/sayings';
import { applyStep, type StepDone } from './apply-step.js';
import { refuse } from './faults.js';
import { namesAfter, namesIn, unknownNames } from './names.js';
import { requireState, requireSteps } from './require-sheet.js';
import type { Step, StepPlaces } from './sheet.js';
import type { State } from './state.js';
import { refusal } from './tellings.js';

/** Where steps come from, so that faults and findings are told there. */
export interface StepSource {
  /** The verbs the steps may use; absent = all there are. */
  readonly verbs?: readonly AnyVerb[];
  readonly file?: string;
  /** In the order of the steps. */
  readonly places?: readonly StepPlaces[];
}

/**
 * Does steps in their order. What is known is not done again: with the same first steps from the same state, a run
 * begins at the first step that is another object than before.
 *
 * @throws SheetFaults names that the pattern cannot have at a step, as many as can be told before it is done
 * @throws PatternError what a step refuses, with its number and place
 */
export function runSteps(start: State, steps: readonly Step[], source: StepSource = {}): readonly StepDone[] {
  requireState(start);
  requireSteps(steps);
  const { verbs = allVerbs } = source;
  const done: StepDone[] = [];
  let state = start;
  for (const [i, step] of steps.entries()) {
    const where = whereOf(source, i);
    const verb = verbOf(step, verbs, where);
    if (!step.off && !knowsNames(state, step, verb))
      refuse(unknownNames(verb, step, namesIn(state.pattern), where, source.places?.[i]));
    const one = locating(where, () => applyStep(state, step, verb));
    done.push(one);
    state = one.state;
  }
  return done;
}

/** Whether what stands has every name that a step uses; asked once. */
const knowsNames = /* @__PURE__ */ oncePerAll(
  (state: State, step: Step, verb: AnyVerb) => [state, step, verb],
  (state, step, verb) => unknownNames(verb, step, namesIn(state.pattern), {}).length === 0,
);

/** Where a step stands: its number, and its line if its source has lines. */
export const whereOf = ({ file, places }: StepSource, index: number): Where => ({
  ...fileOf(places?.[index]?.file ?? file),
  ...places?.[index]?.verb,
  step: index + 1,
});

const fileOf = (file: string | undefined): Where => (file === undefined ? {} : { file });

function verbOf({ verb: name }: Step, verbs: readonly AnyVerb[], where: Where): AnyVerb {
  const verb = verbs.find(v => v.verb === name);
  if (verb) return verb;
  throw refusal('unknown-verb', { name, names: verbs.map(v => v.verb) }, where);
}

/** Every name in the steps that the pattern cannot have there, as far as it can be told without doing any. */
export function unknownBeforehand(
  pattern: Pattern,
  steps: readonly Step[],
  source: StepSource,
): readonly PatternError[] {
  const { verbs = allVerbs } = source;
  let names = namesIn(pattern);
  return steps.flatMap((step, i) => {
    if (step.off) return [];
    const where = whereOf(source, i);
    const verb = verbOf(step, verbs, where);
    const unknown = unknownNames(verb, step, names, where, source.places?.[i]);
    names = namesAfter(verb, step, names);
    return unknown;
  });
}
