import type { Answer, Ask } from '../engine/questions.js';
import { restored } from '../engine/spared.js';
import type { Fault, FirstView, Held, Proof, View } from '../engine/view.js';

/** What the engine has answered last, as the page shows it. */
export interface Shown {
  /** The number of the question whose view is shown, and what it asked. */
  readonly of: number;
  readonly question: Ask | undefined;
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
  question: undefined,
  view: undefined,
  proof: undefined,
  isProved: false,
  held: { handles: [], points: [] },
  refused: '',
  faults: [],
  received: {},
};

/** What was worked out before the engine started. @param question the one that it answers */
export const firstShown = (had: Shown, { view, proof }: FirstView, question: Ask | undefined): Shown => ({
  ...had,
  question,
  view,
  proof,
  isProved: true,
});

/**
 * What is shown once an answer has come. A view leaves what was found out of the one before it unproved, unless it was
 * asked the same again; what is found out of a view that is not the one shown is not shown at all.
 * @param question the one that is answered
 */
export function shownAfter(had: Shown, answer: Answer, question?: Ask): Shown {
  if ('view' in answer) {
    const view = restored<View>(answer.view, had.received.view);
    const isProved = had.isProved && asksTheSame(had.question, question);
    const received = { ...had.received, view };
    const told = { refused: '', faults: view.errors };
    return { ...had, of: answer.id, question, view, isProved, ...told, received };
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

/** Whether two questions are of the same garment in the same words; whose handles they want is another matter. */
function asksTheSame(one: Ask | undefined, other: Ask | undefined): boolean {
  if (!one || !other) return false;
  const { id, open, ...asked } = one;
  return (Object.keys(asked) as (keyof typeof asked)[]).every(key => one[key] === other[key]);
}
