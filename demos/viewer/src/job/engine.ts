import { createSignal } from 'solid-js';
import type { Answer, Ask, TakeAway, View } from '../engine/view.js';
import { engineWorker } from './worker-beside.js';

/** The engine in its worker: asked for a view, it answers the latest question only. */
export function createEngine() {
  const worker = engineWorker();
  const [view, setView] = createSignal<View>();
  const [refused, setRefused] = createSignal('');
  const files = new Map<number, (answer: Answer) => void>();
  let last = 0;
  worker.onmessage = ({ data }: MessageEvent<Answer>) => {
    const waiting = files.get(data.id);
    if (waiting) {
      files.delete(data.id);
      waiting(data);
    } else if ('view' in data) {
      setRefused('');
      setView(data.view);
    } else if ('refused' in data) setRefused(data.refused);
  };
  return {
    view,
    refused,
    ask: (question: Omit<Ask, 'id'>) => worker.postMessage({ ...question, id: ++last } satisfies Ask),
    take: (what: Omit<TakeAway, 'id'>): Promise<Answer> =>
      new Promise(resolve => {
        const id = ++last;
        files.set(id, resolve);
        worker.postMessage({ ...what, id } satisfies TakeAway);
      }),
  };
}
export type Engine = ReturnType<typeof createEngine>;
