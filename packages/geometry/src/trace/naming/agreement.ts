import type { EdgeRole } from '../../pattern/types.js';
import { agreementOfMarks, marksOf } from './seam-marks.js';
import { runsOf, type SewingLine } from './sewing-lines.js';

// What two lines that are sewn have in common besides their lengths.

const laplace = (d: number, spread: number): number => Math.exp(-Math.abs(d) / spread) / (2 * spread);
/** Degrees, that chances of angles are spread over. */
const allAngles = 240;

/**
 * How much likelier it is that two lines are sewn, by the corners at their ends, and how far they bow: a seam's
 * neighbours run on across it, so that the two angles at its end make a straight line (common practice, no
 * source).
 * @param turned the second line is gone along against the clock, as of a piece that is turned over
 */
export function agreement(a: SewingLine, b: SewingLine, turned: boolean): number {
  const [first, last] = turned ? [b.corners[1], b.corners[0]] : b.corners;
  return (
    atEnd(a.corners[0], first) *
    atEnd(a.corners[1], last) *
    inBow(a.course[1]!, b.course[1]!) *
    inCourse(a, b, turned)
  );
}

/**
 * Which way the second line goes: as notches tell; else past neighbours of the same kind, from the middle of the body as
 * the first does, or by what they have in common.
 */
export function isTurnedByShape(a: SewingLine, b: SewingLine): boolean {
  const [there, back] = [inMarks(a, b, false), inMarks(a, b, true)];
  if (Math.max(there, back) > clearly * Math.min(there, back)) return back > there;
  const alike = (one: EdgeRole | undefined, other: EdgeRole | undefined): number =>
    one !== undefined && one === other ? 1 : 0;
  const crossed = alike(a.before, b.after) + alike(a.after, b.before);
  const along = alike(a.before, b.before) + alike(a.after, b.after);
  if (crossed !== along) return crossed > along;
  const [from, to] = a.atMiddle,
    [first, last] = b.atMiddle;
  if (from !== to && first !== last) return from !== first;
  return agreement(a, b, true) > agreement(a, b, false);
}
/** Notches that fit one way so much better tell the way. */
const clearly = 4;
const inMarks = (a: SewingLine, b: SewingLine, turned: boolean): number =>
  agreementOfMarks(marksOf(runsOf(a, false), [a]), marksOf(runsOf(b, turned), [b]));

function atEnd(a: number | undefined, b: number | undefined): number {
  // Beside a dart the corner is another once the dart is closed.
  if (a === undefined || b === undefined) return 1;
  const off = (Math.abs(a + b - Math.PI) * 180) / Math.PI;
  const sewn = 0.75 * laplace(off, 7) + 0.25 / allAngles;
  // Many corners are square, whatever is sewn to them.
  const chance = 0.3 * laplace(off, 4) + 0.7 / allAngles;
  return sewn / chance;
}

/** Straight lines are mostly sewn to straight ones. */
const inBow = (a: number, b: number): number => Math.max(0.3, 1.3 * Math.exp(-Math.abs(a - b) / 0.08));

/** Of their lengths, what curves traced from one another differ by at most; curves that do so hardly ever do by chance. */
const asTraced = 0.003,
  traced = 6,
  notTraced = 0.8;
/** Of its length, the straight way along a line that is too straight to tell by. */
const straightest = 0.995;

/** Whether the curves run alike from end to end, as those of a yoke and what is below it do. */
function inCourse(a: SewingLine, b: SewingLine, turned: boolean): number {
  if (a.straightness > straightest || b.straightness > straightest) return 1;
  const there = turned ? [...b.course].reverse() : b.course;
  const off = Math.max(...a.course.map((share, i) => Math.abs(share - there[i]!)));
  return off <= asTraced ? traced : notTraced * Math.exp(-8 * off);
}
