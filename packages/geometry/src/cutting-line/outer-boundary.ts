import { type Box, boundsOf, boxesMeet } from '../curve/bounds.js';
import { intersectSegments } from '../curve/intersect.js';
import { isLine, pointAt, type Segment, tangentAt } from '../curve/segment.js';
import { rootsInUnit } from '../polynomial.js';
import { angleTolerance, coincidenceTolerance, parameterTolerance } from '../tolerance.js';
import { angleBetween, cross, distance, dot, type Point, subtract } from '../vector.js';
import { type Strand, strandsBetween } from './strand.js';

/** A place on a closed chain: index of the strand plus the parameter on it. */
export type Position = number;

/** What was left out between two places of a chain that are one point. */
export interface Shortcut {
  readonly from: Position;
  readonly to: Position;
  readonly at: Point;
}

export interface OuterBoundary {
  readonly strands: readonly Strand[];
  readonly shortcuts: readonly Shortcut[];
}

/**
 * The outermost way round a closed clockwise chain that crosses itself: walked from a place on its hull, and at each
 * crossing on along whichever branch turns most to the outside (left). Loops of parallels, which lie within the
 * allowances, are so left out, and what is left is simple.
 *
 * This holds as the parallels of a region wind round every point that they cover at least once and round no point
 * less than zero times (the winding number of a convolution counts the pieces of the region within reach).
 * Source: Guibas, Ramshaw, Stolfi, A kinetic framework for computational geometry, 1983.
 *
 * @returns undefined where the walk does not close
 */
export function outerBoundary(chain: readonly Strand[]): OuterBoundary | undefined {
  const crossings = selfMeetings(chain);
  if (crossings.length === 0) return { strands: chain, shortcuts: [] };
  const exits = exitsOf(crossings);
  for (const direction of hullDirections) {
    const start = furthest(chain, direction);
    if (exits.some(e => isSame(e.here, start.position, chain.length)) || !start.isClockwise) continue;
    const walked = walk(chain, exits, start.position);
    if (walked) return walked;
  }
  return undefined;
}

/** From each meeting, both ways to go on. In the order of the chain. */
export const exitsOf = (meetings: readonly SelfMeeting[]): readonly Exit[] =>
  meetings
    .flatMap(({ a, b, at }) => [
      { here: a, there: b, at },
      { here: b, there: a, at },
    ])
    .sort((p, q) => p.here - q.here);

export interface Exit {
  readonly here: Position;
  readonly there: Position;
  readonly at: Point;
}

/** Along the chain from a place between exits, at each on along the branch furthest left, until it is reached again. */
export function walk(
  chain: readonly Strand[],
  exits: readonly Exit[],
  start: Position,
): OuterBoundary | undefined {
  const n = chain.length;
  const strands: Strand[] = [];
  const shortcuts: Shortcut[] = [];
  let position = start;
  for (let step = 0; step <= exits.length + 1; step++) {
    const ahead = nextExits(exits, position, n);
    const next = ahead[0];
    const toStart = forward(position, start, n, true);
    if (!next || forward(position, next.here, n, true) >= toStart) {
      strands.push(...part(chain, position, start, step === 0));
      return { strands, shortcuts };
    }
    strands.push(...part(chain, position, next.here, false));
    const here = next.here;
    const branch = leftmost(chain, here, ahead);
    if (branch !== undefined) shortcuts.push({ from: here, to: branch, at: next.at });
    position = branch ?? here;
  }
  return undefined;
}

/** How far ahead one position lies of another, round the chain; `strictly`: the same position is a whole turn away. */
function forward(from: Position, to: Position, n: number, strictly: boolean): number {
  const d = to - from;
  if (Math.abs(d) <= parameterTolerance) return strictly ? n : 0;
  return d > 0 ? d : d + n;
}

const isSame = (a: Position, b: Position, n: number): boolean =>
  Math.abs(a - b) <= parameterTolerance || n - Math.abs(a - b) <= parameterTolerance;

/** The exits at the first place after a position, round the chain. `exits` are in order. */
function nextExits(exits: readonly Exit[], position: Position, n: number): readonly Exit[] {
  const isHere = (e: Exit): boolean => isSame(e.here, position, n);
  const next = exits.find(e => e.here > position && !isHere(e)) ?? exits.find(e => !isHere(e));
  return next ? exits.filter(e => isSame(e.here, next.here, n)) : [];
}

/** The branch that turns most to the left; undefined where that is straight on along the chain itself. */
function leftmost(chain: readonly Strand[], here: Position, exits: readonly Exit[]): Position | undefined {
  const arriving = directionBefore(chain, here);
  let best = turnTo(arriving, chain, here);
  let branch: Position | undefined;
  for (const { there } of exits) {
    const turn = turnTo(arriving, chain, there);
    if (turn < best - angleTolerance) {
      best = turn;
      branch = there;
    }
  }
  return branch;
}

/** Rad to the right of the direction of arrival; straight back counts as to the right. */
function turnTo(arriving: Point, chain: readonly Strand[], there: Position): number {
  const turn = angleBetween(arriving, directionAfter(chain, there));
  return turn <= angleTolerance - Math.PI ? Math.PI : turn;
}

function directionAfter(chain: readonly Strand[], position: Position): Point {
  const index = Math.floor(position);
  return tangentAt(chain[index % chain.length]!.segment, position - index);
}

function directionBefore(chain: readonly Strand[], position: Position): Point {
  const index = Math.floor(position),
    t = position - index;
  return t > 0
    ? tangentAt(chain[index]!.segment, t)
    : tangentAt(chain[(index + chain.length - 1) % chain.length]!.segment, 1);
}

function part(chain: readonly Strand[], from: Position, to: Position, wholeTurn: boolean): readonly Strand[] {
  const n = chain.length;
  const end = to > from && !wholeTurn ? to : to + n;
  const twice = [...chain, ...chain];
  const last = Math.ceil(end) - 1;
  return strandsBetween(
    twice,
    { index: Math.floor(from), t: from - Math.floor(from) },
    { index: last, t: end - last },
  );
}

export interface SelfMeeting {
  readonly a: Position;
  readonly b: Position;
  readonly at: Point;
}

/** Every two places of the chain that are one point, but for the joints of neighbours. */
export function selfMeetings(chain: readonly Strand[]): readonly SelfMeeting[] {
  const n = chain.length;
  const boxes: readonly Box[] = chain.map(s => boundsOf(s.segment));
  const found: SelfMeeting[] = [];
  for (let i = 0; i < n; i++)
    for (let k = i + 1; k < n; k++) {
      if (!boxesMeet(boxes[i]!, boxes[k]!, coincidenceTolerance)) continue;
      for (const { ta, tb, point } of intersectSegments(chain[i]!.segment, chain[k]!.segment)) {
        const a = onChain(chain, i, ta),
          b = onChain(chain, k, tb);
        if (isSame(a, b, n)) continue;
        if (!found.some(f => isSame(f.a, a, n) && isSame(f.b, b, n))) found.push({ a, b, at: point });
      }
    }
  return found;
}

/** The position of a parameter; one within a coincidence of a joint is the joint. */
function onChain(chain: readonly Strand[], index: number, t: number): Position {
  const { segment } = chain[index]!;
  const p = pointAt(segment, t);
  if (distance(p, pointAt(segment, 1)) <= coincidenceTolerance && t > 1 / 2)
    return (index + 1) % chain.length;
  return distance(p, pointAt(segment, 0)) <= coincidenceTolerance && t < 1 / 2 ? index : index + t;
}

/** Odd directions, so that no straight edge of an ordinary piece lies square to one. */
const hullDirections: readonly Point[] = [0.37, 1.91, 3.53, 5.11, 2.67, 4.43].map(angle => ({
  x: Math.cos(angle),
  y: Math.sin(angle),
}));

/** The place of a chain that lies furthest in a direction, and whether it is passed clockwise there. */
function furthest(chain: readonly Strand[], direction: Point) {
  let best = Number.NEGATIVE_INFINITY,
    position: Position = 0;
  for (const [index, { segment }] of chain.entries())
    for (const t of [0, ...turningParameters(segment, direction)]) {
      const height = dot(pointAt(segment, t), direction);
      if (height > best) {
        best = height;
        position = index + t;
      }
    }
  const isClockwise =
    cross(direction, directionBefore(chain, position)) > 0 ||
    cross(direction, directionAfter(chain, position)) > 0;
  return { position, isClockwise };
}

function turningParameters(segment: Segment, direction: Point): readonly number[] {
  if (isLine(segment)) return [];
  const [p, q, r, s] = segment;
  const a = dot(subtract(q, p), direction),
    b = dot(subtract(r, q), direction),
    c = dot(subtract(s, r), direction);
  return rootsInUnit([a, 2 * (b - a), a - 2 * b + c]);
}

/** Whether a shortcut leaves out the place of a chain of `n` strands. */
export function isWithin(index: Position, cut: Shortcut, n: number): boolean {
  const to = cut.to > cut.from ? cut.to : cut.to + n;
  return (index >= cut.from && index <= to) || (index + n >= cut.from && index + n <= to);
}
