import { lengthBetween, segmentLength } from '../curve/arc-length.js';
import type { Shortcut } from './boundaries.js';
import type { Run } from './run.js';
import type { Place, Strand } from './strand.js';
import { footAt, isBackwards } from './tight-bends.js';

/** A stretch of a run's stitching line, in mm from the run's start. */
export interface LostStretch {
  readonly from: number;
  readonly to: number;
}

/** mm that stretches of one run cover together; where two of them lie on each other, once. */
export function lengthOfAll(stretches: readonly LostStretch[]): number {
  let sum = 0,
    done = 0;
  for (const { from, to } of [...stretches].sort((a, b) => a.from - b.from)) {
    sum += Math.max(0, to - Math.max(from, done));
    done = Math.max(done, to);
  }
  return sum;
}

export const endOfCut = ({ from, to }: Shortcut, n: number): number => (to > from ? to : to + n);

/** The strands of a chain of `n` that a shortcut leaves out, in whole or in part; from the second turn of it on, beyond `n`. */
export const indicesWithin = (cut: Shortcut, n: number): readonly number[] => {
  const first = Math.floor(cut.from);
  return Array.from({ length: Math.ceil(endOfCut(cut, n)) - first }, (_, i) => first + i);
};

/** The stretch of a run whose parallel lies between the two places of a shortcut; none where it has no part in it. */
export function lostToLoop(run: Run, raw: readonly Strand[], cut: Shortcut): readonly LostStretch[] {
  const { from } = cut;
  const n = raw.length,
    end = endOfCut(cut, n);
  const left = indicesWithin(cut, n).filter(i => isBeside(run, raw[i % n]!));
  const first = left[0],
    last = left.at(-1);
  if (first === undefined || last === undefined) return [];
  const start = from > first ? footOf(run, raw[first % n]!, from - first) : runStart,
    stop = end < last + 1 ? footOf(run, raw[last % n]!, end - last) : endOfRun(run);
  return [{ from: lengthTo(run, start), to: lengthTo(run, stop) }];
}

/** Which of a bend's two corners are inner ones, or none. */
interface InnerEnds {
  readonly start: boolean;
  readonly end: boolean;
}

/**
 * The stretches of a tight bend beside which the line that is cut does not run forwards: what its own centre, its own
 * other side or a neighbour's tip keep it from. At an inner corner the parallel ends before the corner in any case:
 * there only what runs back on itself is lost.
 */
export function lostOfBend(bend: Run, line: readonly Strand[], isInner: InnerEnds): readonly LostStretch[] {
  const stretchOf = (strand: Strand): LostStretch => {
    const [a, b] = [0, 1].map(t => lengthTo(bend, footOf(bend, strand, t))) as [number, number];
    return { from: Math.min(a, b), to: Math.max(a, b) };
  };
  const beside = line.filter(strand => isBeside(bend, strand));
  const kept = beside.filter(strand => !isBackwards(bend, strand)).map(stretchOf);
  const back = bend.parallel.filter(strand => isBackwards(bend, strand)).map(stretchOf);
  const whole = lengthTo(bend, endOfRun(bend));
  return gapsBetween(kept, whole).flatMap(gap => {
    const isCorners = (isInner.start && gap.from === 0) || (isInner.end && gap.to === whole);
    if (!isCorners) return [gap];
    return back
      .map(({ from, to }) => ({ from: Math.max(from, gap.from), to: Math.min(to, gap.to) }))
      .filter(({ from, to }) => to > from);
  });
}

function gapsBetween(kept: readonly LostStretch[], whole: number): readonly LostStretch[] {
  const gaps: LostStretch[] = [];
  let done = 0;
  for (const { from, to } of [...kept].sort((a, b) => a.from - b.from)) {
    if (from > done) gaps.push({ from: done, to: from });
    done = Math.max(done, to);
  }
  return done < whole ? [...gaps, { from: done, to: whole }] : gaps;
}

const isBeside = ({ stitching }: Run, { beside }: Strand): boolean =>
  beside !== undefined && stitching.includes(beside);

const runStart: Place = { index: 0, t: 0 };
const endOfRun = ({ stitching }: Run): Place => ({ index: stitching.length - 1, t: 1 });

/** The place of a run that a place of its parallel lies square to. */
const footOf = (run: Run, strand: Strand, t: number): Place => ({
  index: run.stitching.indexOf(strand.beside!),
  t: footAt(run, strand, t),
});

/** mm from a run's start. */
const lengthTo = ({ stitching }: Run, { index, t }: Place): number =>
  stitching
    .slice(0, index)
    .reduce((sum, segment) => sum + segmentLength(segment), lengthBetween(stitching[index]!, 0, t));
