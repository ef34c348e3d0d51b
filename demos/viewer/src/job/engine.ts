import { createSignal } from 'solid-js';
import type { Answer, Ask, Declared, Held, TakeAway, View } from '../engine/view.js';
import { keepOffline } from './offline-beside.js';
import { engineWorker } from './worker-beside.js';

/** The engine in its worker: asked for a view, it answers the latest question only. */
export function createEngine() {
  const worker = engineWorker();
  const [view, setView] = createSignal<View>();
  const [held, setHeld] = createSignal<Held>({ handles: [], points: [] });
  const [verbs, setVerbs] = createSignal<readonly Declared[]>([]);
  const [refused, setRefused] = createSignal('');
  const files = new Map<number, (answer: Answer) => void>();
  let last = 0;
  worker.onmessage = ({ data }: MessageEvent<Answer>) => {
    const waiting = files.get(data.id);
    if (waiting) {
      files.delete(data.id);
      waiting(data);
    } else if ('view' in data) {
      if (!view()) keepOffline();
      setRefused('');
      setView(data.view);
    } else if ('verbs' in data) setVerbs(data.verbs);
    else if ('held' in data) setHeld(data.held);
    else if ('refused' in data) setRefused(data.refused);
  };
  return {
    view,
    held,
    verbs,
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
