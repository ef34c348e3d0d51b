import { createSignal } from 'solid-js';
import type { Answer, Going, Question } from '../engine/questions.js';
import type { Unnumbered } from './asking.js';
import { engineWorker } from './worker-beside.js';

interface Waiting {
  readonly question: Question;
  readonly answered: (answer: Answer) => void;
}

/**
 * Work that takes longer than a hand waits: tracing, reading pages, laying them out. It has an engine of its own, so that
 * the drawing goes on answering; what is told of it is `going`. What goes on cannot hear: it is stopped by ending its
 * engine, and with that nothing of it is left.
 */
export function createLongWork() {
  const [going, setGoing] = createSignal<Going>();
  const waiting = new Map<number, Waiting>();
  let worker: Worker | undefined;
  let last = 0;
  const hear = ({ data }: MessageEvent<Answer>): void => {
    if ('going' in data) return void setGoing(data.going);
    // Views are another engine's; this one is never asked for any.
    const asked = waiting.get(data.id);
    waiting.delete(data.id);
    if (![...waiting.values()].some(({ question }) => isTold(question))) setGoing(undefined);
    asked?.answered(data);
  };
  const post = (question: Question): void => {
    if (!worker) {
      worker = engineWorker();
      worker.onmessage = hear;
    }
    worker.postMessage(question);
  };
  return {
    going,
    request: (what: Unnumbered<Question>): Promise<Answer> =>
      new Promise(answered => {
        const question = { ...what, id: ++last } as Question;
        waiting.set(question.id, { question, answered });
        post(question);
      }),
    /** Ends what goes on, which is answered by nothing; what the page itself asked for meanwhile is asked again. */
    stop: (): void => {
      worker?.terminate();
      worker = undefined;
      setGoing(undefined);
      for (const [id, { question, answered }] of [...waiting])
        if (isTold(question)) {
          waiting.delete(id);
          answered({ id, refused: '' });
        } else post(question);
    },
  };
}

/** Whether a maker has asked for it herself, and may stop it. */
const isTold = (question: Question): boolean => 'make' in question || 'take' in question;
