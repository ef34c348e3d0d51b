import { verbs } from '@paperhinge/alter';
import { PatternError } from '@paperhinge/geometry';
import { applyStep, type State, type Step, type StepDone } from '@paperhinge/sheet';
import { faultsIn, type Words } from '@paperhinge/sheet/words';
import type { readableSheet } from './readable-sheet.js';
import type { Fault, StepView } from './view.js';

/** What came of the steps: what stood before each and after the last, and what the page says of them. */
export interface Done {
  readonly states: readonly State[];
  /** For each step; one that could not be done stands as one that is switched off. */
  readonly done: readonly StepDone[];
  readonly steps: readonly StepView[];
  readonly errors: readonly Fault[];
}

/** The steps of the last sheet; older ones are let go, and what came of them with them. */
let known = new Map<string, Step>();

/** Steps that were there before are the same objects, so that what is known of them is not done again. */
export function sameObjects(steps: readonly Step[]): readonly Step[] {
  const now = new Map<string, Step>();
  const same = steps.map(step => {
    const key = JSON.stringify(step);
    const have = known.get(key) ?? step;
    now.set(key, have);
    return have;
  });
  known = now;
  return same;
}

/** Does the steps up to the needle; one that cannot be done is told, and the others go on from what stood before it. */
export function doneSteps(
  start: State,
  written: readonly Step[],
  needle: number,
  { sheet, faults }: ReturnType<typeof readableSheet>,
  words: Words,
): Done {
  const states: State[] = [start];
  const done: StepDone[] = [];
  const steps: StepView[] = [];
  const errors: Fault[] = [];
  const notDone = (i: number) => {
    states.push(states[i]!);
    done.push({ step: written[i]!, findings: [], state: states[i]! });
  };
  const fault = (i: number, error: PatternError) => {
    const { message, remedy } = words.error(error);
    const text = `${message} ${remedy}`;
    notDone(i);
    steps.push({ did: '', fault: text });
    errors.push({ line: sheet.stepPlaces[i]!.verb.line, text });
  };
  for (const [i, step] of written.entries()) {
    const unread = faults.get(i);
    if (unread) fault(i, unread);
    else if (i >= needle) {
      notDone(i);
      steps.push(nothingDone);
    } else
      try {
        const one = applyStep(states[i]!, step, verbs.find(v => v.verb === step.verb)!);
        states.push(one.state);
        done.push(one);
        steps.push(stepView(one, words));
      } catch (error) {
        if (!(error instanceof PatternError)) throw error;
        fault(i, faultsIn(error)[0]!);
      }
  }
  return { states, done, steps, errors };
}

const nothingDone: StepView = { did: '' };

/** What was said of steps, and in which words. */
const said = new WeakMap<StepDone, { readonly words: Words; readonly view: StepView }>();

/** What the page says of a step that was done; of the same in the same words the same object. */
function stepView(one: StepDone, words: Words): StepView {
  const before = said.get(one);
  if (before?.words === words) return before.view;
  const { did } = one;
  const view = did === undefined ? nothingDone : { did: words.sentence(did) };
  said.set(one, { words, view });
  return view;
}
