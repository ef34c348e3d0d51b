import first from 'virtual:first-view';
import { createMemo, createSignal } from 'solid-js';
import type { LaidCloth, Measured, Sewn, Walk, Whole } from '../engine/pictures.js';
import type {
  Answer,
  Ask,
  AskMade,
  AskMeasured,
  Made,
  Standing,
  TakeAway,
  Tried,
  TryOut,
} from '../engine/questions.js';
import type { Declared, FirstView } from '../engine/view.js';
import { createAsking } from './asking.js';
import { createLongWork } from './long-work.js';
import { keepOffline } from './offline-beside.js';
import { firstShown, nothingShown, shownAfter } from './shown.js';

/** What the engine has answered last: the view, what was found out of it, the handles of its steps, or why there is none. */
function createAnswered() {
  const [shown, setShown] = createSignal(nothingShown);
  /** What was asked and may be answered still: of questions only the latest is. */
  let asked: readonly Ask[] = [];
  const view = createMemo(() => shown().view);
  const proof = createMemo(() => shown().proof);
  const isProved = createMemo(() => shown().isProved);
  return {
    view,
    /** What was found out last. It is true of the view only where that is proved: else it is shown as worked on. */
    proof,
    isProved,
    /** What is true only once it is proved; until then, that it is worked on. */
    proved: (figure: string): string => (isProved() ? figure : worksOn),
    held: createMemo(() => shown().held),
    refused: createMemo(() => shown().refused),
    faults: createMemo(() => shown().faults),
    asks: (question: Ask): void => {
      asked = [...asked, question];
    },
    /** Shows what was worked out before the engine started, of what was asked last. */
    show: (first: FirstView): void => {
      setShown(had => firstShown(had, first, asked.at(-1)));
    },
    take: (answer: Answer): void => {
      const question = asked.find(q => q.id === answer.id);
      if ('view' in answer && shown().received.view === undefined) keepOffline();
      setShown(had => shownAfter(had, answer, question));
      asked = asked.filter(q => q.id >= answer.id);
    },
  };
}

/** Stands for a figure that is being worked out. */
const worksOn = '…';

/** The engine in its worker: asked for a view, it answers the latest question only. */
export function createEngine() {
  const { take, asks, ...answered } = createAnswered();
  const { ask, request } = createAsking(take);
  const { going, stop, request: requestLong } = createLongWork();
  /** What was asked for last, which long work goes by. */
  let standing: Standing | undefined;
  return {
    ...answered,
    verbs: (): readonly Declared[] => first.verbs,
    ask: (question: Omit<Ask, 'id'>): void => {
      const { open, ...rest } = question;
      standing = rest;
      asks(ask<Ask>(question));
    },
    /** What long work is told of itself, and how it is stopped. */
    going,
    stop,
    take: (what: Omit<TakeAway, 'id' | 'of'>) => requestLong({ ...what, of: standing! }),
    pages: (paper: string) => requestLong({ pagesOn: paper, of: standing! }),
    whole: async (): Promise<Whole | undefined> => {
      const answer = await request({ whole: true });
      return 'whole' in answer ? answer.whole : undefined;
    },
    cloths: async (): Promise<readonly LaidCloth[]> => {
      const answer = await requestLong({ cloths: true, of: standing! });
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
      const answer = await requestLong(what);
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
