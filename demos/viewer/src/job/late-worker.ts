import type { Answer, Question } from '../engine/questions.js';
import { engineWorker } from './worker-beside.js';

/**
 * The engine's worker. It is larger than the page: it starts once the page stands, and is asked then what was asked
 * meanwhile.
 * @returns asks it
 */
export function createLateWorker(onAnswer: (answer: Answer) => void): (question: Question) => void {
  let worker: Worker | undefined;
  const early: Question[] = [];
  const start = () => {
    worker = engineWorker();
    worker.onmessage = ({ data }: MessageEvent<Answer>) => onAnswer(data);
    for (const question of early.splice(0)) worker.postMessage(question);
  };
  requestAnimationFrame(() => setTimeout(start, 0));
  return question => {
    if (worker) worker.postMessage(question);
    else early.push(question);
  };
}
