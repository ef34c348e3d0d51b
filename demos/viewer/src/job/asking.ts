import type { Answer, Question } from '../engine/questions.js';
import { createLateWorker } from './late-worker.js';

/** A question before it has its number. */
export type Unnumbered<Q> = Q extends unknown ? Omit<Q, 'id'> : never;

/** Questions by number: one is told to whoever asked it, and what nobody waits for is shown. */
export function createAsking(onShown: (answer: Answer) => void) {
  const waiting = new Map<number, (answer: Answer) => void>();
  let last = 0;
  const post = createLateWorker(answer => {
    const asker = waiting.get(answer.id);
    waiting.delete(answer.id);
    if (asker) asker(answer);
    else onShown(answer);
  });
  return {
    /** Its answer is shown. @returns the question with its number */
    ask: <Q extends Question>(what: Unnumbered<Q>): Q => {
      const question = { ...what, id: ++last } as unknown as Q;
      post(question);
      return question;
    },
    /** Its answer is waited for. */
    request: (what: Unnumbered<Question>): Promise<Answer> =>
      new Promise(resolve => {
        const id = ++last;
        waiting.set(id, resolve);
        post({ ...what, id } as Question);
      }),
  };
}
