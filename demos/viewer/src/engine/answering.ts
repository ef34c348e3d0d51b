import { sheetOfRecord } from '@paperhinge/sheet';
import { catalogueOf, wordsOf } from '@paperhinge/sheet/words';
import { clothsOf } from './cloths.js';
import { measured } from './measured.js';
import type { Answer, AskMade, Question, TryOut } from './questions.js';
import { sewnOf } from './sewn.js';
import { fileFor, pagesOf } from './take-away.js';
import { told } from './told.js';
import { tracedPattern } from './trace.js';
import { tracedDrawing } from './traced-drawing.js';
import { triedOut } from './try-out.js';
import { createViews } from './views.js';
import { walkOf } from './walk.js';
import { wholeOf } from './whole.js';
import type { Worked } from './work.js';

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
  async function bring<T extends object>(id: number, work: (done: Worked) => T | Promise<T>): Promise<void> {
    const worked = await views.latest();
    try {
      if (worked) answer({ id, ...(await work(worked)) } as unknown as Answer);
    } catch (error) {
      answer({ id, refused: worked ? told(error, worked.words) : String(error) });
    }
  }

  return question => {
    const { id } = question;
    if ('take' in question) void bring(id, async done => ({ file: await fileFor(question, done) }));
    else if ('pagesOn' in question)
      void bring(id, async done => ({ pages: await pagesOf(question.pagesOn, done) }));
    else if ('tried' in question) void tryOut(question, answer);
    else if ('make' in question) void make(question, answer);
    else if ('whole' in question)
      void bring(id, ({ states, before }) => ({ whole: wholeOf(states.at(-1)!.pattern, before) }));
    else if ('cloths' in question) void bring(id, done => ({ cloths: clothsOf(done) }));
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

async function tryOut({ id, tried, unit, language }: TryOut, answer: Send): Promise<void> {
  answer({ id, tried: triedOut(tried, wordsOf(await catalogueOf(language), unit)) });
}

async function make({ id, make: what, unit, language }: AskMade, answer: Send): Promise<void> {
  const words = wordsOf(await catalogueOf(language), unit);
  try {
    if ('record' in what) answer({ id, made: sheetOfRecord(JSON.parse(what.record)) });
    else if ('drawing' in what) answer({ id, ...(await tracedDrawing(what, words)) });
    else answer({ id, made: await tracedPattern(what.pictures, what.name) });
  } catch (error) {
    answer({ id, refused: told(error, words) });
  }
}
