import type { Answer } from '../engine/questions.js';
import { restored } from '../engine/spared.js';
import type { Fault, FirstView, Held, Proof, View } from '../engine/view.js';

/** What the engine has answered last, as the page shows it. */
export interface Shown {
  /** The question whose view is shown. */
  readonly of: number;
  readonly view: View | undefined;
  /** What was found out last; of the view that is shown only where that is proved. */
  readonly proof: Proof | undefined;
  readonly isProved: boolean;
  readonly held: Held;
  /** Why there is no newer view, in words, and what is wrong in the sheet's text. */
  readonly refused: string;
  readonly faults: readonly Fault[];
  /** What came over last: what comes next leaves out what is the same. */
  readonly received: { readonly view?: View; readonly proof?: Proof };
}

export const nothingShown: Shown = {
  of: 0,
  view: undefined,
  proof: undefined,
  isProved: false,
  held: { handles: [], points: [] },
  refused: '',
  faults: [],
  received: {},
};

/** What was worked out before the engine started. */
export const firstShown = (had: Shown, { view, proof }: FirstView): Shown => ({
  ...had,
  view,
  proof,
  isProved: true,
});

/**
 * What is shown once an answer has come. A view leaves what was found out of the one before it unproved; what is found
 * out of a view that is not the one shown is not shown at all.
 */
export function shownAfter(had: Shown, answer: Answer): Shown {
  if ('view' in answer) {
    const view = restored<View>(answer.view, had.received.view);
    const received = { ...had.received, view };
    return { ...had, of: answer.id, view, isProved: false, refused: '', faults: view.errors, received };
  }
  if ('proof' in answer) {
    const proof = restored<Proof>(answer.proof, had.received.proof);
    const received = { ...had.received, proof };
    return answer.id === had.of ? { ...had, proof, isProved: true, received } : { ...had, received };
  }
  if ('held' in answer) return answer.id === had.of ? { ...had, held: answer.held } : had;
  if ('refused' in answer) return { ...had, refused: answer.refused, faults: answer.faults ?? [] };
  return had;
}
