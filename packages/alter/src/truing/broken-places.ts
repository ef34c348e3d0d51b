import type { Path, Point } from '@paperhinge/geometry';
import { pointAt, segmentLength, tangentAt } from '@paperhinge/geometry/curves';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { angleBetween, cross, distance, subtract } from '@paperhinge/geometry/plane';

/** A place where a line is not smooth: a kink (from = to) or a step, in mm from the line's start. */
export interface BrokenPlace {
  readonly from: number;
  readonly to: number;
  /** rad: the sharpest turn there. */
  readonly turn: number;
  /** mm by which a step shifts the line sideways; 0 for a kink. */
  readonly stepMm: number;
}

/** The places of a line to be trued, and the corners so sharp that they are taken to be meant. */
export interface BrokenPlaces {
  readonly places: readonly BrokenPlace[];
  readonly corners: readonly BrokenPlace[];
}

interface Turn {
  readonly along: number;
  readonly turn: number;
  readonly before: Point;
  readonly after: Point;
  readonly at: Point;
}

/**
 * Where a line turns by more than `kinkTurn` between two of its segments. Two turns, one way and back, after which
 * the line goes on much as it came, are a step, however sharp each: what was slashed and laid over or apart, or drawn
 * in two runs, was never meant to jump. A single turn over `sharpest` is a corner that is meant, unless an alteration
 * left it.
 *
 * @param left mm along the line of the corners that alterations left
 */
export function brokenPlaces(path: Path, left: readonly number[]): BrokenPlaces {
  const turns = turnsOf(path);
  const places: BrokenPlace[] = [],
    corners: BrokenPlace[] = [];
  for (let i = 0; i < turns.length; i++) {
    const first = turns[i]!;
    const last = stepEnd(turns, i);
    if (last > i) {
      const stop = turns[last]!;
      const turn = turns.slice(i, last + 1).reduce((most, t) => Math.max(most, Math.abs(t.turn)), 0);
      places.push({ from: first.along, to: stop.along, turn, stepMm: shift(first, stop) });
      i = last;
    } else {
      const place = { from: first.along, to: first.along, turn: Math.abs(first.turn), stepMm: 0 };
      const isLeft = left.some(at => Math.abs(at - first.along) <= tolerances.visibleLength);
      (Math.abs(first.turn) > sharpest && !isLeft ? corners : places).push(place);
    }
  }
  return { places, corners };
}

/** rad. A swing of more than this at one place is rare; a corner so sharp was drawn on purpose. */
const sharpest = Math.PI / 4;
/** mm. Two turns farther apart than this are two places, unless both are sharp: then the line jumps between them. */
const nearTurns = tolerances.stepReach;
/** mm. The longest jump: as far as a piece is likely to be laid over or apart at one slash. */
const longestJump = 60;

function turnsOf(path: Path): readonly Turn[] {
  const lasting = path.segments.filter(s => segmentLength(s) > tolerances.joiningGap);
  let along = 0;
  return lasting.slice(1).flatMap((segment, i): readonly Turn[] => {
    const last = lasting[i]!;
    along += segmentLength(last);
    const before = tangentAt(last, 1),
      after = tangentAt(segment, 0);
    const turn = angleBetween(before, after);
    return Math.abs(turn) > tolerances.kinkTurn
      ? [{ along, turn, before, after, at: pointAt(segment, 0) }]
      : [];
  });
}

/** The last turn of the step that begins at turn `i`; `i` itself where none does. */
function stepEnd(turns: readonly Turn[], i: number): number {
  const first = turns[i]!;
  for (let j = i + 1; j < turns.length; j++) {
    const last = turns[j]!;
    const apart = last.along - first.along;
    const sharp = Math.min(Math.abs(first.turn), Math.abs(last.turn)) > tolerances.cornerTurn;
    if (apart > (sharp ? longestJump : nearTurns)) return i;
    const back = Math.sign(first.turn) !== Math.sign(last.turn);
    const goesOn = Math.abs(angleBetween(first.before, last.after)) <= sharpest;
    if (back && goesOn && (sharp || shift(first, last) > tolerances.joiningGap)) return j;
  }
  return i;
}

/** mm by which the line has shifted sideways between two turns. */
function shift(first: Turn, last: Turn): number {
  if (distance(first.at, last.at) === 0) return 0;
  const way = subtract(last.at, first.at);
  return Math.max(Math.abs(cross(first.before, way)), Math.abs(cross(last.after, way)));
}
