import first from 'virtual:first-view';
import { batch, createSignal } from 'solid-js';
import type {
  Answer,
  Ask,
  AskMade,
  AskMeasured,
  Declared,
  Fault,
  Held,
  Measured,
  Question,
  TakeAway,
  Tried,
  TryOut,
  View,
  Walk,
  Whole,
} from '../engine/view.js';
import { keepOffline } from './offline-beside.js';
import { engineWorker } from './worker-beside.js';

/** A question before it has its number. */
type Unnumbered<Q> = Q extends unknown ? Omit<Q, 'id'> : never;

/** The engine in its worker: asked for a view, it answers the latest question only. */
export function createEngine() {
  const [view, setView] = createSignal<View>();
  const [held, setHeld] = createSignal<Held>({ handles: [], points: [] });
  const [refused, setRefused] = createSignal('');
  const [faults, setFaults] = createSignal<readonly Fault[]>([]);
  const waiting = new Map<number, (answer: Answer) => void>();
  let last = 0;
  let hasAnswered = false;
  // The engine is larger than the page: it starts once the page stands, and is asked then what was asked meanwhile.
  let worker: Worker | undefined;
  const early: Question[] = [];
  const post = (question: Question): void => {
    if (worker) worker.postMessage(question);
    else early.push(question);
  };
  const start = () => {
    worker = engineWorker();
    worker.onmessage = answered;
    for (const question of early.splice(0)) worker.postMessage(question);
  };
  requestAnimationFrame(() => setTimeout(start, 0));
  const answered = ({ data }: MessageEvent<Answer>) => {
    const asker = waiting.get(data.id);
    if (asker) {
      waiting.delete(data.id);
      asker(data);
    } else if ('view' in data) {
      if (!hasAnswered) keepOffline();
      hasAnswered = true;
      batch(() => {
        setRefused('');
        setFaults(data.view.errors);
        setView(data.view);
      });
    } else if ('held' in data) setHeld(data.held);
    else if ('refused' in data) {
      setRefused(data.refused);
      setFaults(data.faults ?? []);
    }
  };
  const request = (what: Unnumbered<Question>): Promise<Answer> =>
    new Promise(resolve => {
      const id = ++last;
      waiting.set(id, resolve);
      post({ ...what, id } as Question);
    });
  return {
    view,
    held,
    verbs: (): readonly Declared[] => first.verbs,
    refused,
    faults,
    ask: (question: Omit<Ask, 'id'>) => post({ ...question, id: ++last }),
    /** Shows what was worked out before the engine started. */
    show: setView,
    take: (what: Omit<TakeAway, 'id'>) => request(what),
    pages: (paper: string) => request({ pagesOn: paper }),
    whole: async (): Promise<Whole | undefined> => {
      const answer = await request({ whole: true });
      return 'whole' in answer ? answer.whole : undefined;
    },
    measure: async (measure: AskMeasured['measure']): Promise<Measured | undefined> => {
      const answer = await request({ measure });
      return 'measured' in answer ? answer.measured : undefined;
    },
    make: async (
      what: Omit<AskMade, 'id'>,
    ): Promise<{ readonly made: string } | { readonly refused: string }> => {
      const answer = await request(what);
      return 'made' in answer ? answer : { refused: 'refused' in answer ? answer.refused : '' };
    },
    walk: async (seam: string): Promise<Walk | undefined> => {
      const answer = await request({ walk: seam });
      return 'walk' in answer ? answer.walk : undefined;
    },
    tryOut: async (what: Omit<TryOut, 'id'>): Promise<Tried> => {
      const answer = await request(what);
      return 'tried' in answer ? answer.tried : {};
    },
  };
}
