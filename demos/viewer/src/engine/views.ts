import { catalogueOf, wordsOf } from '@paperhinge/sheet/words';
import type { Surroundings } from './answering.js';
import { heldOf } from './handles.js';
import { inTurns } from './in-parts.js';
import { proofOf } from './proof.js';
import type { Ask } from './questions.js';
import { crossing, sameRows } from './spared.js';
import { faultsTold, told } from './told.js';
import type { Proof, View } from './view.js';
import { type Worked, work } from './work.js';

/** Answers what is drawn at once, of the latest question only; what is found out of it, once the hand rests. */
export function createViews({ answer, turn, atRest }: Surroundings) {
  let worked: Worked | undefined;
  /** The latest question, until its view is worked out; and the answering of it. */
  let waiting: Ask | undefined;
  let answering: Promise<void> = Promise.resolve();
  let keepFromResting = (): void => {};
  const send = createSending(answer);

  async function next(): Promise<void> {
    await turn();
    let ask = waiting!;
    const catalogue = await catalogueOf(ask.language);
    // Another may have come in meanwhile, and in another language.
    if (waiting!.language !== ask.language) return next();
    ask = waiting!;
    waiting = undefined;
    try {
      const done = work(ask, catalogue);
      worked = done.worked;
      send.view(ask.id, done.view);
      keepFromResting = atRest(() => void rested(ask, done.worked));
    } catch (error) {
      const words = wordsOf(catalogue, ask.unit);
      answer({ id: ask.id, refused: told(error, words), faults: faultsTold(error, words) });
    }
  }

  async function rested({ id, open, needle }: Ask, done: Worked): Promise<void> {
    const isWanted = () => worked === done && waiting === undefined;
    try {
      const proof = await inTurns(proofOf(done), turn, isWanted);
      if (!proof) return;
      send.proof(id, proof);
      const step = open !== undefined && open < needle ? open : undefined;
      const held = await inTurns(heldOf(done.states, done.steps, step), turn, isWanted);
      if (held) answer({ id, held });
    } catch (error) {
      answer({ id, refused: told(error, done.words) });
    }
  }

  return {
    ask: (ask: Ask): void => {
      keepFromResting();
      const isAwaited = waiting !== undefined;
      waiting = ask;
      if (!isAwaited) answering = next();
    },
    /** What was worked out last, once nothing waits to be. */
    latest: async (): Promise<Worked | undefined> => {
      await answering;
      return worked;
    },
  };
}

/** Sends views and proofs; what of them was sent before, and is the same still, is not sent again. */
function createSending(answer: Surroundings['answer']) {
  let view: View | undefined;
  let proof: Proof | undefined;
  return {
    view: (id: number, now: View): void => {
      answer({ id, view: crossing(now, view) });
      view = now;
    },
    proof: (id: number, made: Proof): void => {
      const { verdict, seams, girths, levels, findings, left, making } = made;
      const now: Proof = {
        ...made,
        verdict: sameRows(verdict, proof?.verdict),
        seams: sameRows(seams, proof?.seams),
        girths: sameRows(girths, proof?.girths),
        levels: sameRows(levels, proof?.levels),
        findings: sameRows(findings, proof?.findings),
        left: sameRows(left, proof?.left),
        making: sameRows(making, proof?.making),
      };
      answer({ id, proof: crossing(now, proof) });
      proof = now;
    },
  };
}
