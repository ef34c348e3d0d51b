import { mirror } from '../affine.js';
import { pathEnd, pathOf, pathStart } from '../path/path.js';
import type { Dart } from '../pattern/types.js';
import { angleTolerance } from '../tolerance.js';
import { add, angleBetween, type Point, scale, subtract, unit } from '../vector.js';
import type { Arm } from './arm.js';
import { mitreLimit } from './corner-rule.js';
import { bridged, type FoldedMouth, imageUpTo } from './folded-mouth.js';
import { meetingWithLine } from './meeting-with-line.js';
import { dartAxis } from './pressing.js';
import { type Strand, strandsReversed, strandsTransformed } from './strand.js';

/**
 * Whether the folded shape exists: with the angle at a mouth end plus half the dart's at 180° or more, the mirrored
 * edge never reaches the fold of the intake. Each end is asked for whose side the intake is pressed to.
 */
export function canBeFolded(dart: Dart, pressed: 'start' | 'end' | 'open', before: Arm, after: Arm): boolean {
  const a = subtract(pathStart(dart.legs[0]), dart.apex),
    b = subtract(pathEnd(dart.legs[1]), dart.apex);
  const half = Math.abs(angleBetween(a, b)) / 2;
  const fits = (arm: Arm, leg: Point): boolean =>
    Math.abs(angleBetween(arm.away, scale(leg, -1))) + half < Math.PI - angleTolerance;
  return (pressed === 'end' || fits(before, a)) && (pressed === 'start' || fits(after, b));
}

/**
 * Trade-notes §2. Pressed towards A's side, the intake lies over the cloth beyond A: between A and the fold X–M the
 * cutting line is the mirror image, in the line X–A, of the whole cutting line beyond A; from there to B it is the
 * mirror image of that in X–M. Pressed to B the other way round; pressed open, each half from its own side. What is
 * left between the image and the cutting line beyond runs along the leg's line.
 *
 * The arms carry the whole cutting line on either side of the dart. Nothing where the two cannot be brought together.
 */
export function foldedMouth(
  dart: Dart,
  pressed: 'start' | 'end' | 'open',
  before: Arm,
  after: Arm,
): FoldedMouth | undefined {
  const left = sideOf(dart, before),
    right = sideOf(dart, after);
  if (!left || !right) return undefined;
  const direction = dartAxis(dart);
  const halfOn = ({ beyond, overLeg }: Side) => imageUpTo(beyond, overLeg, { on: dart.apex, direction });
  const first = halfOn(pressed === 'end' ? right : left),
    second = halfOn(pressed === 'start' ? left : right);
  if (!first || !second) return undefined;
  const overFold = mirror(dart.apex, direction);
  const folded = [
    ...(pressed === 'end' ? strandsTransformed(first.strands, overFold) : first.strands),
    ...strandsReversed(pressed === 'start' ? strandsTransformed(second.strands, overFold) : second.strands),
  ];
  const { chain, step } = bridged(left.point, folded, right.point, dart.name);
  const labelled = (strands: readonly Strand[]): readonly Strand[] =>
    strands.map(s => ({ ...s, of: dart.name, shape: 'dart' as const }));
  return {
    before: left.place,
    after: right.place,
    bridge: [...labelled(left.way), ...chain, ...strandsReversed(labelled(right.way))],
    folds: [pathOf([dart.apex, add(dart.apex, scale(direction, Math.max(first.along, second.along)))])],
    step,
  };
}

type Side = NonNullable<ReturnType<typeof sideOf>>;

/** One side of the mouth: where its cutting line meets the leg's line, in which what lies beyond is mirrored. */
function sideOf(dart: Dart, arm: Arm) {
  const leg = unit(subtract(arm.corner, dart.apex));
  const meeting = meetingWithLine(arm, leg, mitreLimit * arm.allowance);
  return meeting && { ...meeting, overLeg: mirror(dart.apex, leg) };
}
