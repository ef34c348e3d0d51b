import { distance, type Point } from '../../vector.js';
import { type Arm, armThrough, directionOfArm, meetingOfArms } from './arm.js';
import { outlineStep } from './edge-of-patch.js';
import type { OutlineCorner } from './outline-corner.js';
import { sharpened } from './sharpen.js';

/** mm beside a place over which a turn is first looked for. */
const near = 4.5;
/** rad. A first turn that makes a place worth a second look. */
const worthALook = (14 * Math.PI) / 180;
/** rad. What turns less is a curve. */
const leastTurn = (13 * Math.PI) / 180;
/** mm along each arm beyond the soft stretch, longest first; an arm that no parabola fits is too long. */
const armLengths = [15, 10, 7, 4.5, 3];
/** mm, and times the noise of the outline: how well a parabola must fit an arm. */
const armFit = 0.04,
  armNoise = 1.7;
/** mm. A corner farther from the outline than this is a rounding, drawn as a curve. */
const farthest = 1.3;
/**
 * mm. The same across a point so sharp that its two sides run into one another: as far as the picture is soft, which
 * rounds a point off no broader, and no farther than this. What ends broader is the end of a strip.
 */
const farthestSharp = 2.4;

/**
 * The corners of an outline of even points, clockwise.
 * @param soft mm beside a corner in which the picture is soft: left out of what the corner is found from
 */
export function cornersOfOutline(points: readonly Point[], soft: number): readonly OutlineCorner[] {
  const found: Outline = { points, soft, fit: Math.max(armFit, armNoise * noiseOf(points)) };
  const turns = points.map((_, i) => Math.abs(turnAt(points, i, soft)));
  const candidates = peaks(turns, Math.round((near * 0.8) / outlineStep));
  const first = keep(found, candidates);
  // Again with the arms as long as the corners that are left allow.
  const second = keep(
    found,
    first.map(c => c.index),
  );
  return sharpened(points, second);
}

interface Outline {
  readonly points: readonly Point[];
  readonly soft: number;
  /** mm: how well a parabola must fit an arm. */
  readonly fit: number;
}

/** mm: what points stand off the parabola through themselves and the nine that follow, typically. */
function noiseOf(points: readonly Point[]): number {
  const list: number[] = [];
  for (let i = 0; i < points.length; i += 15) list.push(armThrough(stretch(points, i, i + 9), false).rms);
  return list.sort((a, b) => a - b)[list.length >> 1]!;
}

const steps = (mm: number): number => Math.round(mm / outlineStep);

function stretch(points: readonly Point[], from: number, to: number): readonly Point[] {
  const n = points.length,
    way = to < from ? -1 : 1;
  return Array.from({ length: Math.abs(to - from) + 1 }, (_, k) => points[(((from + way * k) % n) + n) % n]!);
}

/** The turn at a point between straight arms before and after it, rad. */
function turnAt(points: readonly Point[], i: number, soft: number): number {
  const before = armThrough(stretch(points, i - steps(soft), i - steps(soft + near)), true),
    after = armThrough(stretch(points, i + steps(soft), i + steps(soft + near)), true);
  return turnBetween(before, after, 0, 0);
}

function turnBetween(before: Arm, after: Arm, s: number, t: number): number {
  const u = directionOfArm(before, s),
    v = directionOfArm(after, t);
  return Math.atan2(-u.x * v.y + u.y * v.x, -u.x * v.x - u.y * v.y);
}

/** Places where a ring of figures is largest within a reach, and large enough. */
function peaks(turns: readonly number[], reach: number): readonly number[] {
  const n = turns.length;
  return turns.flatMap((turn, i) => {
    if (turn < worthALook) return [];
    for (let k = 1; k <= reach; k++)
      if (turns[(i + k) % n]! > turn || turns[(i - k + n) % n]! >= turn) return [];
    return [i];
  });
}

function keep(outline: Outline, candidates: readonly number[]): readonly OutlineCorner[] {
  const n = outline.points.length;
  return candidates.flatMap((index, k) => {
    const before = candidates.length === 1 ? n : (index - candidates.at(k - 1)! + n) % n,
      after = candidates.length === 1 ? n : (candidates[(k + 1) % candidates.length]! - index + n) % n;
    const corner = cornerAt(outline, { index, before, after });
    return corner ? [corner] : [];
  });
}

/** A place on an outline, and how many points lie before and after it until the next corner. */
interface Spot {
  readonly index: number;
  readonly before: number;
  readonly after: number;
}

function cornerAt(outline: Outline, { index, before, after }: Spot): OutlineCorner | undefined {
  const { points, soft } = outline;
  const arms = (clear: number, lengths: readonly number[]) => {
    const ends = [clear, ...lengths.map(l => clear + l)];
    const back = arm(outline, index, -1, before - steps(soft), ends),
      forth = arm(outline, index, 1, after - steps(soft), ends);
    const meeting = back && forth && meetingOfArms(back, forth);
    return meeting && { at: meeting.at, turn: Math.abs(turnBetween(back, forth, meeting.s, meeting.t)) };
  };
  let corner = arms(soft, armLengths);
  // Near a sharp point the picture is soft from both sides: the point is found from farther off.
  const sharp = corner ? Math.PI - corner.turn : 0;
  if (sharp < sharpPoint) {
    const clear = Math.min(mostClear, soft / Math.max(Math.sin(sharp / 2), soft / mostClear));
    corner = arms(clear, sharpLengths) ?? corner;
  }
  if (!corner || corner.turn < leastTurn) return undefined;
  const reach = steps(2 * soft);
  let nearest = index,
    least = Number.POSITIVE_INFINITY;
  for (let k = -reach; k <= reach; k++) {
    const i = (index + k + points.length) % points.length;
    const d = distance(points[i]!, corner.at);
    if (d < least) [nearest, least] = [i, d];
  }
  // A sharp point is rounded off farther by the lens than a blunt one, and a narrow slit closes before its end.
  const narrow = Math.max(bluntest, Math.cos(corner.turn / 2));
  if (least > (sharp < sharpPoint ? Math.min(farthestSharp, soft) : farthest) / narrow) return undefined;
  return { index: nearest, at: corner.at, soft: sharp < sharpPoint ? least + 2 * soft : soft };
}

/** rad. Corners sharper than this are found from farther off. */
const sharpPoint = (45 * Math.PI) / 180;
/** mm: from no farther than this; and the arms' lengths beyond. */
const mostClear = 28;
const sharpLengths = [30, 20, 12, 7];
/** The sharpest point believed, about 5 degrees, ends 33 mm before its picture does. */
const bluntest = 0.04;

/** The longest stretch beside a place that a parabola fits; it begins `ends[0]` mm away and ends at one of the others. */
function arm(
  { points, fit }: Outline,
  index: number,
  way: 1 | -1,
  room: number,
  [clear, ...ends]: readonly number[],
): Arm | undefined {
  const from = steps(clear!),
    most = Math.min(room, points.length >> 1);
  for (const mm of ends) {
    const to = Math.min(steps(mm), most);
    if (to - from < leastPoints) return undefined;
    const fitted = armThrough(
      stretch(points, index + way * from, index + way * to),
      mm - clear! < straightBelow,
    );
    if (fitted.rms < fit || mm === ends.at(-1)) return fitted;
  }
  return undefined;
}

/** Points of an arm. */
const leastPoints = 4;
/** mm. Shorter arms tell no bend. */
const straightBelow = 5;
