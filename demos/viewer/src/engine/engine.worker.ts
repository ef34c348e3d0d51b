import { sheetOfRecord } from '@paperhinge/sheet';
import { catalogueOf, wordsOf } from '@paperhinge/sheet/words';
import { clothsOf } from './cloths.js';
import { heldOf } from './handles.js';
import { measured } from './measured.js';
import type { Answer, Ask, AskMade, Question, TryOut } from './questions.js';
import { sewnOf } from './sewn.js';
import { fileFor, pagesOf } from './take-away.js';
import { faultsTold, told } from './told.js';
import { tracedPattern } from './trace.js';
import { tracedDrawing } from './traced-drawing.js';
import { triedOut } from './try-out.js';
import { walkOf } from './walk.js';
import { wholeOf } from './whole.js';
import { type Worked, work } from './work.js';

let worked: Worked | undefined;
let waiting: Ask | undefined;

const answer = (message: Answer) => self.postMessage(message);

/** Only the latest question is answered: what came in while one was worked out replaces what came before it. */
self.onmessage = ({ data }: MessageEvent<Question>) => {
  if ('take' in data) void bring(data.id, async done => ({ file: await fileFor(data, done) }));
  else if ('pagesOn' in data)
    void bring(data.id, async done => ({ pages: await pagesOf(data.pagesOn, done) }));
  else if ('tried' in data) void tryOut(data);
  else if ('make' in data) void make(data);
  else if ('whole' in data)
    void bring(data.id, async ({ states, before }) => ({ whole: wholeOf(states.at(-1)!.pattern, before) }));
  else if ('cloths' in data) void bring(data.id, async done => ({ cloths: clothsOf(done) }));
  else if ('sewn' in data) void bring(data.id, async done => ({ sewn: sewnOf(done, data.sewn) }));
  else if ('measure' in data)
    void bring(data.id, async ({ states }) => ({
      measured: measured(states.at(-1)!.pattern, data.measure),
    }));
  else if ('walk' in data) answer({ id: data.id, walk: walked(data.walk) });
  else {
    if (!waiting) setTimeout(() => void next());
    waiting = data;
  }
};

async function next(): Promise<void> {
  const catalogue = await catalogueOf(waiting!.language);
  const ask = waiting!;
  waiting = undefined;
  try {
    const done = work(ask, catalogue);
    worked = done.worked;
    answer({ id: ask.id, view: done.view });
    setTimeout(() => handles(ask), 0);
  } catch (error) {
    const words = wordsOf(catalogue, ask.unit);
    answer({ id: ask.id, refused: told(error, words), faults: faultsTold(error, words) });
  }
}

/** What can be taken hold of, once nothing else is waiting. */
function handles({ id, open, needle }: Ask): void {
  if (!worked || waiting) return;
  const { states, steps } = worked;
  const step = open !== undefined && open < needle ? open : undefined;
  answer({ id, held: heldOf(states, steps, step, () => waiting !== undefined) });
}

const walked = (seam: string) => worked && walkOf(worked.states.at(-1)!.pattern, seam, worked.words);

async function tryOut({ id, tried, unit, language }: TryOut): Promise<void> {
  answer({ id, tried: triedOut(tried, wordsOf(await catalogueOf(language), unit)) });
}

async function make({ id, make: what, unit, language }: AskMade): Promise<void> {
  const words = wordsOf(await catalogueOf(language), unit);
  try {
    if ('record' in what) answer({ id, made: sheetOfRecord(JSON.parse(what.record)) });
    else if ('drawing' in what) answer({ id, ...(await tracedDrawing(what, words)) });
    else answer({ id, made: await tracedPattern(what.pictures, what.name) });
  } catch (error) {
    answer({ id, refused: told(error, words) });
  }
}

/** Answers with what a promise brings, or with why it could not be brought. */
async function bring<T extends object>(id: number, work: (done: Worked) => Promise<T>): Promise<void> {
  try {
    if (worked) answer({ id, ...(await work(worked)) } as unknown as Answer);
  } catch (error) {
    answer({ id, refused: worked ? told(error, worked.words) : String(error) });
  }
}
