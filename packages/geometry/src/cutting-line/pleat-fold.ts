import { mirror } from '../affine.js';
import { type Path, pathEnd, pathOf, pathStart } from '../path/path.js';
import type { Pleat } from '../pattern/types.js';
import { isSamePoint } from '../same-point.js';
import { steepestPleat } from '../tolerance.js';
import { add, distance, dot, leftOf, lerp, type Point, scale, subtract, unit } from '../vector.js';
import type { Arm } from './arm.js';
import { bridged, type FoldedMouth, imageUpTo } from './folded-mouth.js';
import { meetingWithLine } from './meeting-with-line.js';
import { type Strand, strandsReversed, strandsTransformed } from './strand.js';

/** Whether both neighbours of a pleat run on along its mouth, so that its cloth can lie on them. */
export function canBeLaid({ mouth }: Pleat, before: Arm, after: Arm): boolean {
  if (isSamePoint(pathStart(mouth), pathEnd(mouth))) return false;
  const along = subtract(pathEnd(mouth), pathStart(mouth));
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
  const left = meetingWithLine(before, outward, Number.POSITIVE_INFINITY),
    right = meetingWithLine(after, outward, Number.POSITIVE_INFINITY);
  if (!left || !right) return undefined;
  const isPair = pleat.kind === 'box' || pleat.kind === 'inverted';
  const shares = isPair ? [1 / 4, 3 / 4] : [1 / 2];
  const leaves = shares.flatMap(share => {
    const isFromStart = isPair ? share < 1 / 2 : pleat.towards === 'start';
    const fold = lerp(a, b, share);
    const leaf = leafTo(isFromStart ? left.beyond : right.beyond, isFromStart ? a : b, fold, outward);
    if (!leaf) return [];
    const strands = [...leaf.under, ...strandsReversed(leaf.over)];
    return [
      {
        strands: isFromStart ? strands : strandsReversed(strands),
        fold: foldAt(fold, leaf.fold, pleat.stitched),
      },
    ];
  });
  if (leaves.length < shares.length) return undefined;
  const { chain, step } = bridged(
    left.point,
    leaves.flatMap(leaf => leaf.strands),
    right.point,
    pleat.name,
  );
  return {
    before: left.place,
    after: right.place,
    bridge: [...left.way, ...chain, ...strandsReversed(right.way)],
    folds: leaves.map(leaf => leaf.fold),
    step,
  };
}

/** The two layers of a fold, each from where it leaves the line beyond to the fold between them. */
interface Leaf {
  readonly under: readonly Strand[];
  readonly over: readonly Strand[];
  readonly fold: Point;
}

function leafTo(beyond: readonly Strand[], corner: Point, fold: Point, outward: Point): Leaf | undefined {
  // Not the line that comes back round the piece: no edge under the pleat falls more steeply.
  const least = -distance(corner, fold) * Math.tan(steepestPleat);
  const under = imageUpTo(beyond, mirror(corner, outward), { on: fold, direction: outward, least });
  return (
    under && {
      under: under.strands,
      over: strandsTransformed(under.strands, mirror(fold, outward)),
      fold: under.point,
    }
  );
}

/** A fold from where it is cut to as far down from the edge as it is stitched. */
const foldAt = (onEdge: Point, cut: Point, stitched: number): Path =>
  pathOf([cut, add(onEdge, scale(unit(subtract(onEdge, cut)), stitched))]);
