import { lengthBetween } from '../curve/arc-length.js';
import { inUnit } from '../curve/segment.js';
import type { Shortcut } from './boundaries.js';
import type { Run } from './run.js';
import type { Position, Strand } from './strand.js';
import { footAt, isBackwards } from './tight-bends.js';

/** A stretch of a run's stitching line, in mm from the run's start; none where it ends before it begins. */
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

/** The stretch of a run whose parallel lies between the two places of a shortcut; none where it has no part in it. */
export function lostToLoop(run: Run, raw: readonly Strand[], cut: Shortcut): readonly LostStretch[] {
  const around = [...raw, ...raw];
  const own = [...around.keys()].filter(i => i > cut.from - 1 && i < cut.to && isBeside(run, around[i]!));
  if (own.length === 0) return [];
  const first = own[0]!,
    last = own.at(-1)!;
  // Crumbs about a bend's centre have no parallel: where none of the run's is kept before or after, all of it goes.
  const from = cut.from > first ? footOf(run, around[first]!, cut.from - first) : 0,
    to = cut.to < last + 1 ? footOf(run, around[last]!, cut.to - last) : run.stitching.length;
  return [{ from: lengthTo(run, from), to: lengthTo(run, to) }];
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
  const back = bend.whole.filter(strand => isBackwards(bend, strand)).map(stretchOf);
  const whole = lengthTo(bend, bend.stitching.length);
  return gapsBetween(kept, whole).flatMap(gap => {
    const isCorners = (isInner.start && gap.from === 0) || (isInner.end && gap.to === whole);
    if (!isCorners) return [gap];
    return back.map(({ from, to }) => ({ from: Math.max(from, gap.from), to: Math.min(to, gap.to) }));
  });
}

/** Before, between and after; of those without a length some end before they begin. */
function gapsBetween(kept: readonly LostStretch[], whole: number): readonly LostStretch[] {
  const gaps: LostStretch[] = [];
  let done = 0;
  for (const { from, to } of [...kept].sort((a, b) => a.from - b.from)) {
    gaps.push({ from: done, to: from });
    done = Math.max(done, to);
  }
  return [...gaps, { from: done, to: whole }];
}

const isBeside = ({ stitching }: Run, { shape, beside }: Strand): boolean =>
  shape === 'parallel' && stitching.includes(beside!);

/** The place of a run that a place of its parallel lies square to. */
const footOf = (run: Run, strand: Strand, t: number): Position =>
  run.stitching.indexOf(strand.beside!) + footAt(run, strand, t);

/** mm from a run's start. */
const lengthTo = ({ stitching }: Run, place: Position): number =>
  stitching.reduce((sum, segment, i) => sum + lengthBetween(segment, 0, inUnit(place - i)), 0);
