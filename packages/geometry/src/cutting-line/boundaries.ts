import { endOf, startOf } from '../curve/segment.js';
import type { Origin } from '../region/arcs.js';
import { signedArea } from '../region/area.js';
import { groundOf } from '../region/ground.js';
import type { Step } from '../region/loops.js';
import { isPlainlySimple } from '../region/plainly-simple.js';
import { selfCrossings } from '../region/self-crossings.js';
import { parameterTolerance } from '../tolerance.js';
import type { Point } from '../vector.js';
import type { OtherHalf } from './beyond-fold.js';
import { type Position, pathOfStrands, type Strand } from './strand.js';

/** What was left out between two places of a chain: they are one point, or the boundary passes from one to the other. */
export interface Shortcut {
  readonly from: Position;
  /** Ahead of `from`: past the chain's length where it runs over its start. */
  readonly to: Position;
  /** Where the boundary comes back to the chain, and both ends of each fold that it passes along before. */
  readonly by: readonly Point[];
}

/** A boundary between what a chain of parallels covers, on its right, and what it leaves free, on its left. */
export interface Boundary {
  readonly strands: readonly Strand[];
  readonly shortcuts: readonly Shortcut[];
}

/** All boundaries, or the name of what a boundary that cannot be closed was cut from last. */
export type Boundaries = readonly Boundary[] | { readonly openAt: string };

/**
 * All boundaries of what a closed chain of parallels leaves uncovered, each simple: loops of parallels, which lie within
 * the allowances, are so left out.
 *
 * Ground beyond a fold is free, whatever covers it, and what the other half strays over on this side is covered. Other free ground is told by its winding number alone: each piece of the outline's surface within reach of a place adds one
 * to it, so that ground out of reach has the lowest. That is 0 outside a clockwise outline, and −1 inside one that is
 * travelled anticlockwise, as for a parallel to its inside. One thing deceives it: inside, where the whole outline is
 * within reach of a place (the number is an Euler characteristic, and the reach has a hole there); the caller looks.
 * Source: Chen, McMains, Polygon offsetting by computing winding numbers, 2005; for the convolution of curves
 * Guibas, Ramshaw, Stolfi, A kinetic framework for computational geometry, 1983.
 */
export function boundariesOf(chain: readonly Strand[], lowest: 0 | -1, besides: Besides = {}): Boundaries {
  const { halves = [], covers = [] } = besides;
  const sources: readonly Source[] = [
    { strands: chain, set: parallels },
    ...halves.map(({ stray }) => ({ strands: stray, set: parallels })),
    ...halves.map(half => ({ strands: strandsAlongFold(half), set: alongFolds })),
    ...covers.map((strands, i) => ({ strands, set: alongFolds + 1 + i })),
  ];
  // A simple chain winds round its inside once, in its own sense: the ground on its left is free or it is not.
  const path = pathOfStrands(chain);
  if (sources.length === 1 && (isPlainlySimple(path) || selfCrossings(path).length === 0)) {
    const around = signedArea(path) > 0 ? 0 : -1;
    return around === lowest ? [{ strands: chain, shortcuts: [] }] : [];
  }
  const rings = sources.map(({ strands, set }) => ({ path: pathOfStrands(strands), set }));
  const ground = groundOf(
    rings,
    alongFolds + 1 + covers.length,
    ([windings, beyond, ...laidOn]) =>
      beyond === 0 && (windings! > lowest || laidOn.some(count => count !== 0)),
  );
  if ('openAfter' in ground) return { openAt: sourceOf(ground.openAfter, sources).of };
  return ground.boundaries.map(({ steps }) => ({
    strands: steps.map(({ curve, origin }) => ({ ...sourceOf(origin, sources), segment: curve })),
    shortcuts: shortcutsOf(steps, chain.length, ({ origin }) => sources[origin.ring]!.set === alongFolds),
  }));
}

/** What decides besides the chain itself. */
export interface Besides {
  /** Beyond folds. */
  readonly halves?: readonly OtherHalf[];
  /** Closed chains round ground that is covered in any case. */
  readonly covers?: readonly (readonly Strand[])[];
}

const strandsAlongFold = ({ fold, beyond }: OtherHalf): readonly Strand[] =>
  beyond.segments.map(segment => ({ segment, of: fold, shape: 'corner' }));

/** A closed chain, and with which others its windings are counted. */
interface Source {
  readonly strands: readonly Strand[];
  readonly set: number;
}
const parallels = 0,
  alongFolds = 1;

function sourceOf({ ring, index }: Origin, sources: readonly Source[]): Strand {
  const { strands } = sources[ring]!;
  return strands[index % strands.length]!;
}

function shortcutsOf(
  steps: readonly Step[],
  n: number,
  isAlongFold: (step: Step) => boolean,
): readonly Shortcut[] {
  const around = [...steps, ...steps];
  const own = steps.flatMap(({ origin }, i) => (origin.ring === 0 ? [i] : []));
  return own.flatMap((index, k): readonly Shortcut[] => {
    const next = own[k + 1] ?? own[0]! + steps.length;
    const left = steps[index]!.origin,
      { curve, origin } = around[next]!;
    const from = (left.index + left.to) % n,
      past = lengthOnto(from, origin.index + origin.from, n);
    if (Math.min(past, n - past) <= parameterTolerance) return [];
    const folds = around.slice(index + 1, next).filter(isAlongFold);
    const by = [startOf(curve), ...folds.flatMap(step => [startOf(step.curve), endOf(step.curve)])];
    return [{ from, to: from + past, by }];
  });
}

/** How far ahead one place of a closed chain of `n` strands lies of another. */
const lengthOnto = (from: Position, to: Position, n: number): number => (to - from + n) % n;

/** Whether a shortcut leaves out the place of a chain of `n` strands, or ends there. */
export const isWithin = (place: Position, { from, to }: Shortcut, n: number): boolean =>
  lengthOnto(from, place, n) <= to - from + parameterTolerance;
