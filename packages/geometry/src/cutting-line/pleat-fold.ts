import { mirror } from '../affine.js';
import { endOf, startOf } from '../curve/segment.js';
import { type Path, pathEnd, pathOf, pathStart } from '../path/path.js';
import type { Pleat } from '../pattern/types.js';
import { coincidenceTolerance, steepestPleat } from '../tolerance.js';
import { add, distance, dot, leftOf, lerp, type Point, scale, subtract, unit } from '../vector.js';
import type { Arm } from './arm.js';
import type { FoldedMouth } from './dart-fold.js';
import { meetingWithLine } from './fold-joint.js';
import { firstOnRay } from './line-crossings.js';
import {
  chainEnd,
  chainStart,
  type Strand,
  straight,
  strandsBetween,
  strandsReversed,
  strandsTransformed,
} from './strand.js';

/** Whether both neighbours of a pleat run on along its mouth, so that its cloth can lie on them. */
export function canBeLaid({ mouth }: Pleat, before: Arm, after: Arm): boolean {
  const along = subtract(pathEnd(mouth), pathStart(mouth));
  if (distance(along, { x: 0, y: 0 }) <= coincidenceTolerance) return false;
  const runsOn = (arm: Arm, sense: 1 | -1): boolean =>
    sense * dot(arm.away, unit(along)) > Math.cos(steepestPleat);
  return runsOn(before, -1) && runsOn(after, 1);
}

/**
 * The cutting line over the mouth A–B of a pleat, so shaped that the folded cloth ends where the cloth under it does. All
 * folds run square to the mouth's chord: a dart whose apex lies infinitely far.
 *
 * A knife pleat or tuck laid towards A folds at A and at the middle: as far as there the line is the mirror image, in the
 * fold at A, of the whole cutting line beyond A; from there to B it is the image of that in the middle fold. Towards B the
 * other way round. A box and an inverted pleat are two of half the size, back to back: the one as seen from outside, the
 * other from within. Nothing where the cutting line beyond does not reach as far as the fold.
 */
export function foldedPleat(pleat: Pleat, before: Arm, after: Arm): FoldedMouth | undefined {
  const a = pathStart(pleat.mouth),
    b = pathEnd(pleat.mouth);
  const outward = leftOf(unit(subtract(b, a)));
  const left = sideOf(before, a, outward),
    right = sideOf(after, b, outward);
  if (!left || !right) return undefined;
  const isPair = pleat.kind === 'box' || pleat.kind === 'inverted';
  const folds = isPair ? [1 / 4, 3 / 4] : [1 / 2];
  const leaves = folds.flatMap((share, i): readonly Leaf[] => {
    const isFromStart = isPair ? i === 0 : pleat.towards === 'start';
    const leaf = leafTo(
      isFromStart ? left.beyond : right.beyond,
      isFromStart ? a : b,
      lerp(a, b, share),
      outward,
    );
    return leaf ? [leaf] : [];
  });
  const [first, second] = leaves;
  if (!first || leaves.length < folds.length) return undefined;
  const strands = second
    ? [...first.under, ...strandsReversed(first.over), ...second.over, ...strandsReversed(second.under)]
    : pleat.towards === 'start'
      ? [...first.under, ...strandsReversed(first.over)]
      : [...first.over, ...strandsReversed(first.under)];
  const { chain, step } = bridged(left.point, strands, right.point, pleat.name);
  return {
    ...(left.place ? { before: left.place } : {}),
    ...(right.place ? { after: right.place } : {}),
    bridge: [...left.runOn, ...chain, ...strandsReversed(right.runOn)],
    folds: folds.map((share, i) => foldAt(lerp(a, b, share), leaves[i]!.fold, pleat.stitched)),
    step,
  };
}

/** One side of the mouth: where its cutting line meets the fold line at the mouth's end, and the line beyond. */
function sideOf(arm: Arm, corner: Point, outward: Point) {
  const meeting = meetingWithLine({ ...arm, corner }, outward, Number.POSITIVE_INFINITY);
  if (!meeting) return undefined;
  const { point, place } = meeting;
  const runOn = place ? [] : straight(arm.base, point, arm.of);
  const beyond = place
    ? strandsBetween(arm.parallel, place, chainEnd(arm.parallel))
    : [...strandsReversed(runOn), ...arm.parallel];
  return { point, place, runOn, beyond };
}

/** The two layers of a fold, each from where it leaves the line beyond to the fold between them. */
interface Leaf {
  readonly under: readonly Strand[];
  readonly over: readonly Strand[];
  readonly fold: Point;
}

function leafTo(beyond: readonly Strand[], corner: Point, fold: Point, outward: Point): Leaf | undefined {
  const image = strandsTransformed(beyond, mirror(corner, outward));
  // Not the line that comes back round the piece: no edge under the pleat falls more steeply.
  const deepest = distance(corner, fold) * Math.tan(steepestPleat);
  const cut = firstOnRay(image, fold, outward, -deepest);
  if (!cut) return undefined;
  const under = strandsBetween(image, chainStart, cut);
  return { under, over: strandsTransformed(under, mirror(fold, outward)), fold: cut.point };
}

/** The layers end to end; where they do not meet, straight along the fold, the longest such step told. */
function bridged(from: Point, strands: readonly Strand[], to: Point, of: string) {
  const chain: Strand[] = [];
  let at = from,
    step = 0;
  const goTo = (next: Point): void => {
    step = Math.max(step, distance(at, next));
    chain.push(...straight(at, next, of, 'dart'));
    at = next;
  };
  for (const { segment } of strands) {
    goTo(startOf(segment));
    chain.push({ segment, of, shape: 'dart' });
    at = endOf(segment);
  }
  goTo(to);
  return { chain, step };
}

/** A fold from where it is cut to as far down from the edge as it is stitched. */
const foldAt = (onEdge: Point, cut: Point, stitched: number): Path =>
  pathOf([cut, add(onEdge, scale(unit(subtract(onEdge, cut)), stitched))]);
