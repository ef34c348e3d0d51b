import first from 'virtual:first-view';
import { batch, createSignal } from 'solid-js';
import type { LaidCloth, Measured, Sewn, Walk, Whole } from '../engine/pictures.js';
import type {
  Answer,
  Ask,
  AskMade,
  AskMeasured,
  Made,
  TakeAway,
  Tried,
  TryOut,
} from '../engine/questions.js';
import type { Declared, Fault, Held, View } from '../engine/view.js';
import { createAsking } from './asking.js';
import { keepOffline } from './offline-beside.js';

/** What the engine has answered last: the view, the handles of its steps, or why there is none. */
function createAnswered() {
  const [view, setView] = createSignal<View>();
  const [held, setHeld] = createSignal<Held>({ handles: [], points: [] });
  const [refused, setRefused] = createSignal('');
  const [faults, setFaults] = createSignal<readonly Fault[]>([]);
  let hasAnswered = false;
  const take = (answer: Answer): void => {
    if ('view' in answer) {
      if (!hasAnswered) keepOffline();
      hasAnswered = true;
      batch(() => {
        setRefused('');
        setFaults(answer.view.errors);
        setView(answer.view);
      });
    } else if ('held' in answer) setHeld(answer.held);
    else if ('refused' in answer) {
      setRefused(answer.refused);
      setFaults(answer.faults ?? []);
    }
  };
  return { view, setView, held, refused, faults, take };
}

/** The engine in its worker: asked for a view, it answers the latest question only. */
export function createEngine() {
  const { view, setView, held, refused, faults, take } = createAnswered();
  const { ask, request } = createAsking(take);
  return {
    view,
    held,
    verbs: (): readonly Declared[] => first.verbs,
    refused,
    faults,
    ask: (question: Omit<Ask, 'id'>) => ask(question),
    /** Shows what was worked out before the engine started. */
    show: setView,
    take: (what: Omit<TakeAway, 'id'>) => request(what),
    pages: (paper: string) => request({ pagesOn: paper }),
    whole: async (): Promise<Whole | undefined> => {
      const answer = await request({ whole: true });
      return 'whole' in answer ? answer.whole : undefined;
    },
    cloths: async (): Promise<readonly LaidCloth[]> => {
      const answer = await request({ cloths: true });
      return 'cloths' in answer ? answer.cloths : [];
    },
    sewn: async (job: number): Promise<Sewn | undefined> => {
      const answer = await request({ sewn: job });
      return 'sewn' in answer ? answer.sewn : undefined;
    },
    measure: async (measure: AskMeasured['measure']): Promise<Measured | undefined> => {
      const answer = await request({ measure });
      return 'measured' in answer ? answer.measured : undefined;
    },
    make: async (what: Omit<AskMade, 'id'>): Promise<Made | { readonly refused: string }> => {
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
export type Engine = ReturnType<typeof createEngine>;
