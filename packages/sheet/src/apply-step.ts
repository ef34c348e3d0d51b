import { type AnyVerb, alterSoThat, type Became, changedSeams } from '@paperhinge/alter';
import { type Finding, type Saying, validatePattern } from '@paperhinge/geometry';
import { oncePerAll } from '@paperhinge/geometry/internal';
import { caused } from './caused.js';
import { madeForAfter } from './made-for.js';
import { onFirstUse } from './on-first-use.js';
import { requireState, requireSteps } from './require-sheet.js';
import type { Step } from './sheet.js';
import { type State, walkedLater } from './state.js';

/** A step that was done, or passed over as it is switched off. */
export interface StepDone {
  readonly step: Step;
  /** What was done; absent where it is switched off. */
  readonly did?: Saying | string;
  /** What the operation found, and what stands now that did not stand before it; worked out when first asked for. */
  readonly findings: readonly Finding[];
  /** What became of the edges, corners, darts, notches, lines and marks there were; absent where it is switched off. */
  readonly became?: Became;
  /** What stands after it. */
  readonly state: State;
}

/**
 * Does one step to what stands. The same step on the same state is done once: asked again, what came of it is given
 * again.
 *
 * @param verb the step's own
 * @throws PatternError whatever the verb refuses
 */
export function applyStep(state: State, step: Step, verb: AnyVerb): StepDone {
  requireState(state);
  requireSteps([step]);
  return appliedOnce(state, step, verb);
}

const appliedOnce = /* @__PURE__ */ oncePerAll(
  (state: State, step: Step, verb: AnyVerb) => [state, step, verb],
  (state, step, verb): StepDone => {
    if (step.off) return { step, findings: [], state };
    const done = alterSoThat(verb, state.pattern, step.parameters);
    // A step may ask for what no paper can be (a spread that crosses itself): better told here than on reading back.
    validatePattern(done.pattern);
    const drafted = done.derived?.map(d => d.name) ?? [];
    const made = madeForAfter(state.made, done.pattern, drafted);
    const next = walkedLater({
      pattern: done.pattern,
      derived: [...state.derived.filter(d => !drafted.includes(d.name)), ...(done.derived ?? [])],
      making: [...state.making, ...(done.making ?? [])],
      made,
    });
    const findings = onFirstUse(() => [
      ...done.findings,
      ...changedSeams(state.pattern, done.pattern, { verb: step.verb, canMatch: canMatch(step, verb) }),
      ...caused(state.standing, next.standing),
    ]);
    return {
      step,
      did: done.did,
      ...(done.became === undefined ? {} : { became: done.became }),
      get findings() {
        return findings();
      },
      state: next,
    };
  },
);

/** Whether the step would carry a change to the other side of a seam if it were asked to, and was not. */
const canMatch = ({ parameters }: Step, { fields }: AnyVerb): boolean =>
  Object.hasOwn(fields, 'matching') && parameters.matching !== true;
