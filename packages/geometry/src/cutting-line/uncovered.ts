import { pointAt, tangentAt } from '../curve/segment.js';
import type { Path } from '../path/path.js';
import { signedArea } from '../region/area.js';
import { windingNumber } from '../region/contains.js';
import { coincidenceTolerance } from '../tolerance.js';
import { add, distance, leftOf, type Point, scale } from '../vector.js';
import {
  type Exit,
  exitsOf,
  isWithin,
  type OuterBoundary,
  type Position,
  type Shortcut,
  selfMeetings,
  walk,
} from './outer-boundary.js';
import type { Strand } from './strand.js';

/** A boundary between what a chain of parallels covers, on its right, and what it leaves free, on its left. */
export type FreeBoundary = OuterBoundary;

/**
 * All boundaries of what a closed chain of parallels leaves uncovered, each simple: the chain cut at its crossings,
 * the parts that have free ground on their left followed round, at each crossing on along the leftmost branch.
 *
 * Free ground is told by its winding number alone: each point within reach of the outline adds one to it, so that
 * ground out of reach has the lowest. That is 0 outside a clockwise outline, and −1 inside one that is travelled
 * anticlockwise, as for a parallel to its inside. One thing deceives it: inside, where the whole outline is within
 * reach of a place (the number is an Euler characteristic, and the reach has a hole there); the caller looks.
 * Source: Chen, McMains, Polygon offsetting by computing winding numbers, 2005; for the convolution of curves
 * Guibas, Ramshaw, Stolfi, A kinetic framework for computational geometry, 1983.
 */
export function freeBoundaries(chain: readonly Strand[], lowest: 0 | -1): readonly FreeBoundary[] {
  const path: Path = { segments: chain.map(s => s.segment) };
  const exits = exitsOf(selfMeetings(chain));
  // A simple chain winds round its inside once, in its own sense: the ground on its left is free or it is not.
  if (exits.length === 0)
    return (signedArea(path) > 0 ? 0 : -1) === lowest ? [{ strands: chain, shortcuts: [] }] : [];
  const found: FreeBoundary[] = [];
  const walked: Shortcut[] = [];
  for (const probe of probesOf(chain, exits)) {
    const isWalked = walked.some(stretch => isWithin(probe.position, stretch, chain.length));
    if (isWalked || windingNumber(path, probe.left) !== lowest) continue;
    const boundary = walk(chain, exits, probe.position);
    if (!boundary) continue;
    walked.push(...stretchesWalked(boundary, probe));
    found.push(boundary);
  }
  return found;
}

interface Probe {
  readonly position: Position;
  readonly at: Point;
  /** A point so near that nothing lies between, on the left. */
  readonly left: Point;
}

/** In each part of the chain from one exit to the next, the middle of its longest piece. */
function probesOf(chain: readonly Strand[], exits: readonly Exit[]): readonly Probe[] {
  const n = chain.length;
  return exits.flatMap(({ here }, i) => {
    const next = exits[i + 1]?.here ?? exits[0]!.here + n;
    let best: Probe | undefined,
      longest = 0;
    for (let index = Math.floor(here); index < next; index++) {
      const from = Math.max(here, index) - index,
        to = Math.min(next, index + 1) - index;
      const { segment } = chain[index % n]!;
      const size = distance(pointAt(segment, from), pointAt(segment, to));
      if (size <= longest) continue;
      longest = size;
      const t = (from + to) / 2,
        at = pointAt(segment, t);
      const left = add(at, scale(leftOf(tangentAt(segment, t)), Math.min(size, nearby)));
      best = { position: (index % n) + t, at, left };
    }
    return best && longest > coincidenceTolerance ? [best] : [];
  });
}

/** mm. Ten coincidences: off the chain beyond doubt, and nearer than any other part of it that can be told apart. */
const nearby = 10 * coincidenceTolerance;

/** What a walk passed, between the places it left out. */
function stretchesWalked({ shortcuts }: OuterBoundary, { position, at }: Probe): readonly Shortcut[] {
  const starts = [position, ...shortcuts.map(s => s.to)],
    ends = [...shortcuts.map(s => s.from), position];
  return starts.map((from, i) => ({ from, to: ends[i]!, at }));
}
