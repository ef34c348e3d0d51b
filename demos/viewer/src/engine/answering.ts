import { sheetOfRecord } from '@paperhinge/sheet';
import { catalogueOf, type Words, wordsOf } from '@paperhinge/sheet/words';
import { clothsOf } from './cloths.js';
import { measured } from './measured.js';
import type { Answer, AskCloths, AskMade, AskPages, Going, Question, TakeAway, TryOut } from './questions.js';
import { sewnOf } from './sewn.js';
import { fileFor, pagesOf } from './take-away.js';
import type { Tell } from './tell.js';
import { told } from './told.js';
import { tracedPattern } from './trace.js';
import { tracedDrawing } from './traced-drawing.js';
import { triedOut } from './try-out.js';
import { createViews } from './views.js';
import { walkOf } from './walk.js';
import { wholeOf } from './whole.js';
import { type Worked, work } from './work.js';

/** What the engine stands in: where its answers go, and how it lets time pass. */
export interface Surroundings {
  readonly answer: (message: Answer) => void;
  /** Resolves once every question that has come in has been heard. */
  readonly turn: () => Promise<void>;
  /** Calls once the hand has rested; the function returned keeps it from being called. */
  readonly atRest: (call: () => void) => () => void;
}

type Send = Surroundings['answer'];

/**
 * The engine: hears questions and answers them. Of views only the latest is worked out: what came in while one was worked
 * out replaces what came before it. What is found out of a view, and where the hand can take hold of it, is told once the
 * hand rests, and never of a view that another has followed.
 */
export function createAnswering(surroundings: Surroundings): (question: Question) => void {
  const { answer } = surroundings;
  const views = createViews(surroundings);

  /** Answers with what comes of the latest view, or with why nothing does. */
  const bring = async <T extends object>(id: number, work: (done: Worked) => T): Promise<void> => {
    const worked = await views.latest();
    if (worked) await answered(answer, id, worked.words, () => work(worked));
  };

  return question => {
    const { id } = question;
    if ('of' in question) void takenFrom(question, answer);
    else if ('tried' in question) void tryOut(question, answer);
    else if ('make' in question) void make(question, answer);
    else if ('whole' in question)
      void bring(id, ({ states, before }) => ({ whole: wholeOf(states.at(-1)!.pattern, before) }));
    else if ('sewn' in question) void bring(id, done => ({ sewn: sewnOf(done, question.sewn) }));
    else if ('measure' in question)
      void bring(id, ({ states }) => ({ measured: measured(states.at(-1)!.pattern, question.measure) }));
    else if ('walk' in question)
      void bring(id, ({ states, words }) => ({
        walk: walkOf(states.at(-1)!.pattern, question.walk, words),
      }));
    else views.ask(question);
  };
}

/** Answers with what work brings, or with why it brought nothing. */
async function answered(
  answer: Send,
  id: number,
  words: Words,
  work: () => object | Promise<object>,
): Promise<void> {
  try {
    answer({ id, ...(await work()) } as unknown as Answer);
  } catch (error) {
    answer({ id, refused: told(error, words) });
  }
}

/** What takes long, of the garment that the question brings with it. */
async function takenFrom(question: TakeAway | AskPages | AskCloths, answer: Send): Promise<void> {
  const { id, of } = question;
  const catalogue = await catalogueOf(of.language);
  const words = wordsOf(catalogue, of.unit);
  await answered(answer, id, words, async () => {
    const { worked } = work({ ...of, id, open: undefined }, catalogue);
    if ('take' in question) return { file: await fileFor(question, worked, telling(answer, id)) };
    if ('pagesOn' in question) return { pages: await pagesOf(question.pagesOn, worked) };
    return { cloths: clothsOf(worked) };
  });
}

async function tryOut({ id, tried, unit, language }: TryOut, answer: Send): Promise<void> {
  answer({ id, tried: triedOut(tried, wordsOf(await catalogueOf(language), unit)) });
}

async function make({ id, make: what, unit, language }: AskMade, answer: Send): Promise<void> {
  const words = wordsOf(await catalogueOf(language), unit);
  await answered(answer, id, words, async () => {
    if ('record' in what) return { made: sheetOfRecord(JSON.parse(what.record)) };
    const tell = telling(answer, id);
    if ('drawing' in what) return tracedDrawing(what, words, tell);
    return { made: await tracedPattern(what, words, tell) };
  });
}

/** Tells how far work has come: often asked to, it tells each whole hundredth once. */
function telling(answer: Send, id: number): Tell {
  let last = '';
  return (text, share) => {
    const going: Going = { text, ...(share === undefined ? {} : { share: Math.round(share * 100) / 100 }) };
    const said = JSON.stringify(going);
    if (said !== last) answer({ id, going });
    last = said;
  };
}
