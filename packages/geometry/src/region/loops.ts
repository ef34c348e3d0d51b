import {
  between,
  endOf,
  isLine,
  pointAt,
  reversed,
  type Segment,
  startOf,
  tangentAt,
} from '../curve/segment.js';
import { angleTolerance } from '../tolerance.js';
import { angleBetween, type Point, subtract } from '../vector.js';
import { type Arc, drawnTo, type Origin, type Ring } from './arcs.js';

/** An arc of a boundary, in the direction in which what is surrounded lies on its right. */
export interface Step {
  readonly curve: Segment;
  readonly from: number;
  readonly to: number;
  readonly origin: Origin;
}

/** An arc as a step along it, or against it. */
export const stepOf = ({ curve, from, to, origin }: Arc, isAlong: boolean): Step =>
  isAlong
    ? { curve, from, to, origin }
    : {
        curve: reversed(curve),
        from: to,
        to: from,
        origin: { ...origin, from: origin.to, to: origin.from },
      };

/** Closed loops, or where one stays open. */
export type Loops = { readonly loops: readonly (readonly Step[])[] } | { readonly openAfter: Step };

/**
 * Steps linked to closed loops, each simple: where several meet, on along the one that turns most to the right, so that
 * surfaces which touch at a point stay apart; a loop that comes back to a place of its own is cut in two there.
 * @returns where at some place not as many steps arrive as leave, the last step of a way that ends there
 */
export function loopsOf(steps: readonly Step[]): Loops {
  const leaving = new Map<number, Step[]>();
  for (const step of steps) leaving.set(step.from, [...(leaving.get(step.from) ?? []), step]);
  const loops: (readonly Step[])[] = [];
  const used = new Set<Step>();
  for (const first of steps) {
    if (used.has(first)) continue;
    const way: Step[] = [];
    let step: Step | undefined = first;
    while (step) {
      used.add(step);
      way.push(step);
      const back = way.findIndex(s => s.from === step!.to);
      if (back >= 0) loops.push(way.splice(back));
      if (way.length === 0) break;
      step = rightmost(
        way.at(-1)!,
        (leaving.get(way.at(-1)!.to) ?? []).filter(s => !used.has(s)),
      );
    }
    if (way.length > 0) return { openAfter: way.at(-1)! };
  }
  return { loops };
}

function rightmost(arriving: Step, leaving: readonly Step[]): Step | undefined {
  if (leaving.length < 2) return leaving[0];
  const direction = tangentAt(arriving.curve, 1);
  const turns = leaving.map(step => ({ step, turn: turnInto(direction, step) }));
  return turns.reduce((best, next) => (isFurtherRight(next, best) ? next : best)).step;
}

interface Turning {
  readonly step: Step;
  readonly turn: number;
}

function isFurtherRight(a: Turning, b: Turning): boolean {
  if (Math.abs(a.turn - b.turn) > 1e3 * angleTolerance) return a.turn > b.turn;
  // They leave as one: which bends away to the right shows a little further on.
  return angleBetween(ahead(b.step), ahead(a.step)) > 0;
}

/** rad, to the right of straight on; straight back is the very last to the right. */
function turnInto(direction: Point, { curve }: Step): number {
  const turn = angleBetween(direction, tangentAt(curve, 0));
  return turn <= angleTolerance - Math.PI ? Math.PI : turn;
}

const ahead = ({ curve }: Step): Point => subtract(pointAt(curve, 1 / 8), startOf(curve));

/** The steps of a loop; those cut from one segment of the drawing that stayed side by side as one. */
export function stretchesOfLoop(loop: readonly Step[], rings: readonly Ring[]): readonly Step[] {
  const joint = loop.findIndex((step, i) => !runsOn(loop.at(i - 1)!, step));
  const turned = joint > 0 ? [...loop.slice(joint), ...loop.slice(0, joint)] : loop;
  const stretches: Step[][] = [];
  for (const step of turned) {
    const stretch = stretches.at(-1);
    if (stretch && runsOn(stretch.at(-1)!, step)) stretch.push(step);
    else stretches.push([step]);
  }
  return stretches.map(stretch => asOne(stretch, rings));
}

function asOne(stretch: readonly Step[], rings: readonly Ring[]): Step {
  const first = stretch[0]!,
    last = stretch.at(-1)!;
  if (first === last) return first;
  const origin = { ...first.origin, to: last.origin.to };
  return { curve: wholeAgain(first, last, rings), from: first.from, to: last.to, origin };
}

function wholeAgain(first: Step, last: Step, rings: readonly Ring[]): Segment {
  const start = startOf(first.curve),
    end = endOf(last.curve);
  if (isLine(first.curve)) return [start, end];
  const { ring, index, from } = first.origin,
    { to } = last.origin;
  const source = rings[ring]!.path.segments[index]!;
  return drawnTo(from < to ? between(source, from, to) : reversed(between(source, to, from)), start, end);
}

const runsOn = (a: Step, b: Step): boolean =>
  a.origin.ring === b.origin.ring && a.origin.index === b.origin.index && a.origin.to === b.origin.from;
