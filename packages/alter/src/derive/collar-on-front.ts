import {
  type Edge,
  type EdgeRef,
  edgePath,
  line,
  type Path,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pathOf,
  pieceNamed,
} from '@paperhinge/geometry';
import { isLine } from '@paperhinge/geometry/curves';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  curveOfLength,
  fairCurve,
  joined,
  pathEnd,
  pathStart,
  reversedPath,
  startTangent,
} from '@paperhinge/geometry/paths';
import { neighboursOf } from '@paperhinge/geometry/pattern';
import {
  add,
  apply,
  distance,
  dot,
  leftOf,
  lerp,
  rotation,
  scale,
  subtract,
  unit,
} from '@paperhinge/geometry/plane';
import { type LaidBack, laidBack } from '../lapels/laid-back.js';
import { rollLineName } from '../lapels/roll-line.js';
import { refusal } from '../lapels/tellings.js';
import { seamEdge } from './collar-shapes.js';
import type { HalfNeck } from './half-neck.js';
import { takenAllowance } from './taken-allowance.js';

/** What a notched collar is drawn by. Lengths in mm, the notch in rad. */
export interface CollarMeasures {
  /** The edges of the neck it is for. */
  readonly along: readonly EdgeRef[];
  readonly width: number;
  readonly stand: number;
  readonly lay: number;
  readonly front: number;
  readonly notch: number;
}

/** The collar as it lies on the front. */
export interface OnFront {
  readonly parts: readonly Edge[];
  readonly roll: Path;
  readonly laid: LaidBack;
  /** mm from the centre back to the shoulder, along its neck edge. */
  readonly backMm: number;
}

/**
 * Draws a collar on to the front it is for, from its gorge round to half the back neck.
 * @throws PatternError `gorge-not-last`, `no-roll-line`; `unknown-piece`, `unknown-edge`
 */
export function collarOnFront(pattern: Pattern, half: HalfNeck, wish: CollarMeasures): OnFront {
  const last = half.lying.at(-1)!;
  const front = pieceNamed(pattern, last.piece);
  const backMm = half.lengthMm - last.lengthMm;
  if (backMm <= tolerances.joiningGap)
    throw refusal('gorge-not-last', { along: wish.along.map(ref => ({ ...ref })) });
  const own = edgePath(front, last.edge);
  // From the neck's end at the shoulder down to the notch.
  const gorge = last.reversed ? reversedPath(own) : own;
  const neckPoint = pathStart(gorge),
    notch = pathEnd(gorge);
  const roll = rollOf(front, neckPoint);
  const up = unit(subtract(pathEnd(roll), pathStart(roll)));
  const side = dot(leftOf(up), subtract(notch, neckPoint));
  const out = scale(leftOf(up), side > 0 ? 1 : -1);
  const laid = laidBack(neckPoint, { up, out }, { lengthMm: backMm, lay: wish.lay, width: wish.width });
  const tip = add(notch, scale(frontWay(front, last, up, wish.notch), wish.front));
  const allowance = takenAllowance(pattern, wish.along);
  const outer = fairCurve(
    { point: tip, direction: subtract(laid.outer, tip) },
    { point: laid.outer, direction: laid.way },
  );
  return {
    parts: [
      seamEdge('neck', neckEdge(laid, gorge), allowance),
      seamEdge('front', pathOf(line(notch, tip)), allowance),
      seamEdge('outer', outer, allowance),
      seamEdge('centre-back', reversedPath(laid.centreBack), allowance),
    ],
    roll: fairCurve(
      { point: pathEnd(roll), direction: up },
      { point: lerp(laid.nape, laid.outer, Math.min(1, wish.stand / wish.width)), direction: laid.way },
    ),
    laid,
    backMm,
  };
}

/**
 * From the nape round to the notch, as long as what it is sewn to: fair past the neck's end where the front's neck goes
 * on straight there, along the gorge as the front has it.
 */
function neckEdge(laid: LaidBack, gorge: Path): Path {
  const [first, ...rest] = gorge.segments;
  if (!isLine(first!)) return joined(reversedPath(laid.neck), gorge);
  const [neckPoint, turn] = first;
  const length = pathLength(laid.neck) + pathLength(pathOf(first));
  const down = subtract(turn, neckPoint);
  const past = curveOfLength(laid.nape, scale(laid.way, -1), turn, down, length);
  return { segments: [...past.segments, ...rest] };
}

/** The roll line of a front, upwards. @throws PatternError `no-roll-line` */
function rollOf(front: Piece, neckPoint: Point): Path {
  const found = front.lines.find(({ kind, name }) => kind === 'fold' && name === rollLineName);
  const where = { piece: front.name };
  if (!found) throw refusal('no-roll-line', { piece: where, line: rollLineName }, where);
  const { path } = found;
  return distance(pathEnd(path), neckPoint) < distance(pathStart(path), neckPoint)
    ? path
    : reversedPath(path);
}

/** The collar's front edge leaves the notch at an angle to the lapel's upper edge, upwards. */
function frontWay(front: Piece, last: HalfNeck['lying'][number], up: Point, angle: number): Point {
  const beside = neighboursOf(front, last.edge);
  const lapelTop = last.reversed ? reversedPath(edgePath(front, beside.start)) : edgePath(front, beside.end);
  const way = startTangent(lapelTop);
  const turned = [angle, -angle].map(turn => apply(rotation(turn), way));
  return turned.reduce((best, one) => (dot(one, up) > dot(best, up) ? one : best));
}

/** The same collar for the other side: clockwise again. */
export const turnedRound = (drawn: OnFront): OnFront => ({
  ...drawn,
  parts: drawn.parts.toReversed().map(part => ({ ...part, path: reversedPath(part.path) })),
});
