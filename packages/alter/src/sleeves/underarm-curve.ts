import { type Path, pathLength } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  fairCurve,
  joined,
  pointAlong,
  reversedPath,
  subpath,
  tangentAlong,
} from '@paperhinge/geometry/paths';
import { partsOfEdge } from '@paperhinge/geometry/pattern';
import { angleBetween } from '@paperhinge/geometry/plane';
import { findAmount } from '../goal/find-amount.js';
import type { Kimono, SleeveLines } from './kimono.js';
import { refusal } from './tellings.js';

/** The corner that a kimono's underarm seam makes with the side, on one body. */
interface UnderarmCorner {
  readonly laid: Kimono;
  /** From the sleeve's hem to the corner. */
  readonly underarm: Path;
  /** From the corner down the side, as far as its first dart. */
  readonly side: Path;
  /** rad between the two. */
  readonly turn: number;
}

/** A curve in the place of the corner: half of it ends the underarm seam, half begins the side. */
export interface UnderarmCurve {
  readonly underarm: Path;
  /** From its middle to where it has reached the side. */
  readonly side: Path;
  /** mm of the side, from the corner down, in whose place that stands. */
  readonly takenMm: number;
  /** mm. */
  readonly radiusMm: number;
}

/** mm. About what a kimono's underarm is curved by where no gusset is set in: common practice, no source. */
const usualRadius = 60;
/** Share of a side that a curve takes at most where its radius is not given. */
const mostOfSide = 0.8;

/**
 * The curves of both underarms, square off neither: each leaves the underarm seam and meets the side in their own
 * directions. The front's has the radius asked, the other that at which both save as much of the way round the corner,
 * so that underarm and side seams are as long on both bodies. Absent: the usual radius, or what the sides leave room for.
 * @param front which of the two is the front
 * @throws PatternError `kimono-curve-too-wide`
 */
export function underarmCurves(
  laid: readonly [Kimono, Kimono],
  lines: readonly [SleeveLines, SleeveLines],
  front: 0 | 1,
  radius: number | undefined,
): readonly [UnderarmCurve, UnderarmCurve] | undefined {
  const corners = laid.map((one, i) => cornerOf(one, lines[i]!)) as [UnderarmCorner, UnderarmCorner];
  // Laid so flat that sleeve and side run on, or turn the other way, there is no corner to round.
  if (corners.some(({ turn }) => turn <= tolerances.joinedCorner)) return undefined;
  const room = Math.min(...corners.map(corner => roomOf(corner) / Math.tan(corner.turn / 2)));
  const [own, other] = [corners[front], corners[1 - front]!];
  const tangentMm = (radius ?? Math.min(usualRadius, mostOfSide * room)) * Math.tan(own.turn / 2);
  const found =
    tangentMm < roomOf(own) &&
    findAmount(mm => savedBy(other, mm), {
      least: 0,
      most: roomOf(other),
      stride: 1,
      from: savedBy(own, tangentMm),
      to: savedBy(own, tangentMm),
      within: tolerances.coincidenceTolerance,
      near: tangentMm,
    });
  if (!found || found.reached === false) {
    const where = { piece: own.laid.body.piece.name };
    throw refusal('kimono-curve-too-wide', { piece: where, mostMm: mostOfSide * room }, where);
  }
  const curves = [curveOf(own, tangentMm), curveOf(other, found.amount)] as const;
  return front === 0 ? curves : [curves[1], curves[0]];
}

function cornerOf(laid: Kimono, { underarm }: SleeveLines): UnderarmCorner {
  const { body, sideEdge, dropMm } = laid;
  const atStart = body.up === body.run.reversed;
  const part = partsOfEdge(body.piece, sideEdge).at(atStart ? 0 : -1)!.path;
  const down = atStart ? part : reversedPath(part);
  const side = subpath(down, dropMm, pathLength(down));
  const turn = angleBetween(tangentAlong(underarm, pathLength(underarm)), tangentAlong(side, 0));
  // Down the side is to the right of the way in along the underarm where the outline comes from the sleeve.
  return { laid, underarm, side, turn: atStart ? -turn : turn };
}

const roomOf = ({ underarm, side }: UnderarmCorner): number =>
  Math.min(pathLength(underarm), pathLength(side)) - tolerances.joiningGap;

/** mm that the way round the corner is shorter along a curve that begins and ends so far from it. */
const savedBy = (corner: UnderarmCorner, tangentMm: number): number =>
  tangentMm <= 0 ? 0 : 2 * tangentMm - pathLength(wholeCurve(corner, tangentMm));

function wholeCurve({ underarm, side }: UnderarmCorner, tangentMm: number): Path {
  const from = pathLength(underarm) - tangentMm;
  return fairCurve(
    { point: pointAlong(underarm, from), direction: tangentAlong(underarm, from) },
    { point: pointAlong(side, tangentMm), direction: tangentAlong(side, tangentMm) },
  );
}

function curveOf(corner: UnderarmCorner, tangentMm: number): UnderarmCurve {
  const curve = wholeCurve(corner, tangentMm);
  const half = pathLength(curve) / 2;
  const straight = subpath(corner.underarm, 0, pathLength(corner.underarm) - tangentMm);
  return {
    underarm: joined(straight, subpath(curve, 0, half)),
    side: subpath(curve, half, 2 * half),
    takenMm: tangentMm,
    radiusMm: tangentMm / Math.tan(corner.turn / 2),
  };
}
