import { apply, mirror } from '../affine.js';
import { endOf, startOf } from '../curve/segment.js';
import { type Path, pathEnd, pathOf, pathStart } from '../path/path.js';
import type { Dart } from '../pattern/types.js';
import { angleTolerance, coincidenceTolerance } from '../tolerance.js';
import { angleBetween, distance, type Point, scale, subtract, unit } from '../vector.js';
import type { Arm } from './arm.js';
import { meetingWithLine } from './fold-joint.js';
import { firstOnRay } from './line-crossings.js';
import { dartAxis } from './pressing.js';
import {
  chainEnd,
  chainStart,
  type Place,
  type Strand,
  straight,
  strandsBetween,
  strandsReversed,
  strandsTransformed,
} from './strand.js';

/** The cutting line over the mouth of a dart or pleat, so shaped that the folded intake ends where the cloth under it does. */
export interface FoldedMouth {
  /** Where the cutting line before and after is left, on the arms' chains; absent: at its very end. */
  readonly before?: Place;
  readonly after?: Place;
  readonly bridge: readonly Strand[];
  /** Where the cloth is folded, as far as the cutting line: the middle of a dart's intake, from its apex. */
  readonly folds: readonly Path[];
  /** mm along the leg's line between the folded shape and the cutting line it should meet. */
  readonly step: number;
}

/**
 * Whether the folded shape exists: with the angle at a mouth end plus half the dart's at 180° or more, the mirrored
 * edge never reaches the fold of the intake. Each end is asked for whose side the intake is pressed to.
 */
export function canBeFolded(dart: Dart, pressed: 'start' | 'end' | 'open', before: Arm, after: Arm): boolean {
  const a = subtract(pathStart(dart.legs[0]), dart.apex),
    b = subtract(pathEnd(dart.legs[1]), dart.apex);
  if (Math.min(Math.hypot(a.x, a.y), Math.hypot(b.x, b.y)) <= coincidenceTolerance) return false;
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
  const axis = dartAxis(dart);
  const left = flank(dart, before, axis),
    right = flank(dart, after, axis);
  if (!left || !right) return undefined;
  const own = pressed === 'end' ? undefined : left.half(),
    other = pressed === 'start' ? undefined : right.half();
  if ((pressed !== 'end' && !own) || (pressed !== 'start' && !other)) return undefined;
  const overFold = mirror(dart.apex, axis);
  // Both halves run from their leg's line to the fold.
  const first = own ?? strandsTransformed(other!, overFold),
    second = other ?? strandsTransformed(own!, overFold);
  const labelled = (strands: readonly Strand[]): readonly Strand[] =>
    strands.map(s => ({ segment: s.segment, of: dart.name, shape: 'dart' as const }));
  const firstEnds = endsOf(first, pressed === 'end' ? apply(overFold, right.point) : left.point);
  const secondEnds = endsOf(second, pressed === 'start' ? apply(overFold, left.point) : right.point);
  const bridge = [
    ...labelled(left.runOn),
    ...straight(left.point, firstEnds.start, dart.name, 'dart'),
    ...labelled(first),
    ...straight(firstEnds.end, secondEnds.end, dart.name, 'dart'),
    ...strandsReversed(labelled(second)),
    ...straight(secondEnds.start, right.point, dart.name, 'dart'),
    ...strandsReversed(labelled(right.runOn)),
  ];
  const tip =
    distance(dart.apex, firstEnds.end) > distance(dart.apex, secondEnds.end) ? firstEnds.end : secondEnds.end;
  return {
    ...(left.place ? { before: left.place } : {}),
    ...(right.place ? { after: right.place } : {}),
    bridge,
    folds: [pathOf([dart.apex, tip])],
    step: Math.max(
      distance(left.point, firstEnds.start),
      distance(secondEnds.start, right.point),
      distance(firstEnds.end, secondEnds.end),
    ),
  };
}

/** One side of the mouth: where its cutting line meets the leg's line, and its image up to the fold. */
function flank(dart: Dart, arm: Arm, axis: Point) {
  const leg = unit(subtract(arm.corner, dart.apex));
  const meeting = meetingWithLine(arm, leg);
  if (!meeting) return undefined;
  const { point, place } = meeting;
  const runOn = place ? [] : straight(arm.base, point, arm.of);
  const half = (): readonly Strand[] | undefined => {
    const beyond = place
      ? strandsBetween(arm.parallel, place, chainEnd(arm.parallel))
      : [...strandsReversed(runOn), ...arm.parallel];
    const image = strandsTransformed(beyond, mirror(dart.apex, leg));
    const fold = firstOnRay(image, dart.apex, axis);
    return fold && strandsBetween(image, chainStart, fold);
  };
  return { point, place, runOn, half };
}

function endsOf(
  strands: readonly Strand[],
  otherwise: Point,
): { readonly start: Point; readonly end: Point } {
  if (strands.length === 0) return { start: otherwise, end: otherwise };
  return { start: startOf(strands[0]!.segment), end: endOf(strands.at(-1)!.segment) };
}
