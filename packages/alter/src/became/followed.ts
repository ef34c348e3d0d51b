import type { EdgeRef, EdgeRun, Fastening, Pattern, Piece, Seam } from '@paperhinge/geometry';
import { sameEdge } from '../edge-refs.js';
import { followedRun, joinedRuns, type Step } from './run.js';
import { followPlace, followThing } from './things.js';

/**
 * The pattern after a step with its seams, fastenings, the corners left to be trued and what its pieces were made for
 * following what became of their edges. What the step made anew (another object than before) is its own affair and stays as it made it.
 */
export function followed(step: Step): Pattern {
  const { before, after } = step;
  const pieces = after.pieces.map(piece => withMadeFor(step, piece));
  const seams = after.seams.map(seam => (before.seams.includes(seam) ? followedSeam(step, seam) : seam));
  const fastenings = after.fastenings?.map(one =>
    before.fastenings?.includes(one) ? followedFastening(step, one) : one,
  );
  const { leftToTrue } = before;
  return {
    ...after,
    pieces,
    // The same list where none has changed: what is known of seams and of their pieces is known on.
    seams: seams.every((seam, i) => seam === after.seams[i]) ? after.seams : seams,
    ...(fastenings ? { fastenings } : {}),
    ...(leftToTrue && leftToTrue === after.leftToTrue
      ? { leftToTrue: leftToTrue.flatMap(place => followPlace(step.became, place)) }
      : {}),
  };
}

function followedSeam(step: Step, seam: Seam): Seam {
  const side = (which: 'a' | 'b') => {
    const runs = seam[which].flatMap(run => kept(followedRun(step, run), run));
    return sameInOrder(runs, seam[which], sameRun) ? seam[which] : joinedRuns(step.after, runs);
  };
  const a = side('a'),
    b = side('b');
  return a === seam.a && b === seam.b ? seam : { ...seam, a, b };
}

const sameInOrder = <T>(a: readonly T[], b: readonly T[], same: (one: T, other: T) => boolean): boolean =>
  a.length === b.length && a.every((one, i) => same(one, b[i]!));

const sameRun = (a: EdgeRun, b: EdgeRun): boolean =>
  sameEdge(a, b) && a.reversed === b.reversed && a.part?.from === b.part?.from && a.part?.to === b.part?.to;

function followedFastening(step: Step, fastening: Fastening): Fastening {
  const [along] = followedRun(step, fastening.along);
  return along === undefined || sameRun(along, fastening.along) ? fastening : { ...fastening, along };
}

/** What is gone keeps its name here, so that it can be said what was lost; `withoutLost` takes it out. */
const kept = <T>(now: readonly T[], was: T): readonly T[] => (now.length === 0 ? [was] : now);

function withMadeFor({ before, became }: Step, piece: Piece): Piece {
  const { madeFor } = piece;
  if (!madeFor || !before.pieces.some(p => p.madeFor === madeFor)) return piece;
  const places = madeFor.map((ref): readonly EdgeRef[] => kept(followThing(became, ref), ref));
  // In the order they stood in; mirrored copies follow at the end.
  const now = [...places.map(own => own[0]!), ...places.flatMap(own => own.slice(1))];
  return sameInOrder(now, madeFor, sameEdge) ? piece : { ...piece, madeFor: now };
}
