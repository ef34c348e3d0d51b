import { frameHold } from '../../tolerance.js';
import { type Point, scale, subtract, unit } from '../../vector.js';
import { leastSquares, type Misfit } from './least-squares.js';
import {
  type Arrangement,
  arranged,
  bleedAt,
  cameraAt,
  listed,
  ofCamera,
  seenFrom,
  sheetAt,
  stepsOf,
} from './unknowns.js';

/** A corner of a target as a picture shows it. */
export interface CornerSeen {
  readonly picture: number;
  readonly sheet: number;
  readonly place: number;
  /** On the sheet, mm from its middle. */
  readonly on: Point;
  /** Out of the target at this corner: what its edges' spread by one dot moves the corner by, mm on the sheet. */
  readonly outward: Point;
  /** In the picture, dots. */
  readonly seen: Point;
}

/** Dots. What a corner is found to in a good picture: the scale that misfits are weighed by. */
const cornerError = 0.1;
/** What is known of cameras before a picture is looked at, as standard errors. */
const beforehand = {
  /** Of the focal length's logarithm. */
  focal: 0.5,
  /** Of the picture's width. */
  centre: 0.015,
  bend: [0.2, 0.08, 0.03],
  /** Dots. */
  bleed: 0.5,
} as const;

/** What is looked at: the size of each picture in dots, and the corners seen in them. */
export interface Sighting {
  readonly sizes: readonly { readonly width: number; readonly height: number }[];
  readonly corners: readonly CornerSeen[];
}

/**
 * Cameras, lenses and every sheet's own place, found together from all corners (bundle adjustment; Triggs and others,
 * Bundle adjustment, a modern synthesis, 2000). The first sheet stays.
 *
 * @param doubt dots: corners farther off than this count less and less
 */
export function adjusted(
  start: Arrangement,
  sighting: Sighting,
  doubt: number,
  rounds = 40,
): Arrangement & { readonly cost: number } {
  const [cameras, sheets] = [start.cameras.length, start.places.length];
  const { unknowns, cost } = leastSquares(listed(start), misfitsOf(start, sighting), {
    steps: stepsOf(cameras, sheets),
    rounds,
    doubt: doubt / cornerError,
  });
  return { ...arranged(unknowns, cameras, sheets), cost };
}

/** What is to be made small: each corner's two misfits, and what is known beforehand. */
function misfitsOf(
  { cameras, places: [first, ...others] }: Arrangement,
  { sizes, corners }: Sighting,
): readonly Misfit[] {
  const bleed = bleedAt(cameras.length, 1 + others.length),
    frame = sheetAt(0, cameras.length);
  return [
    ...corners.map(corner => cornerMisfit(corner, cameras.length, bleed)),
    ...sizes.flatMap((size, i) => cameraBeforehand(size, cameraAt(i))),
    pull(bleed, 0, beforehand.bleed),
    // The first sheet is the floor's frame.
    ...[first!.x, first!.y, first!.angle].map((value, k) => pull(frame + k, value, frameHold)),
  ];
}

function cornerMisfit(
  { picture, sheet, on, outward, seen }: CornerSeen,
  cameras: number,
  bleed: number,
): Misfit {
  const camera = cameraAt(picture),
    place = sheetAt(sheet, cameras);
  const own = Array.from({ length: ofCamera }, (_, i) => camera + i);
  const spread = { x: 0, y: 0 };
  return {
    on: [...own, place, place + 1, place + 2, bleed],
    size: 2,
    at(unknowns, out) {
      spread.x = on.x + outward.x * unknowns[bleed]!;
      spread.y = on.y + outward.y * unknowns[bleed]!;
      seenFrom(unknowns, camera, place, spread, out);
      out[0] = (out[0]! - seen.x) / cornerError;
      out[1] = (out[1]! - seen.y) / cornerError;
    },
  };
}

const pull = (index: number, towards: number, error: number): Misfit => ({
  on: [index],
  size: 1,
  at(unknowns, out) {
    out[0] = (unknowns[index]! - towards) / error;
  },
});

function cameraBeforehand({ width, height }: Sighting['sizes'][number], at: number): readonly Misfit[] {
  const side = Math.max(width, height);
  return [
    pull(at, Math.log(usualFocal * side), beforehand.focal),
    pull(at + 1, width / 2, beforehand.centre * side),
    pull(at + 2, height / 2, beforehand.centre * side),
    ...beforehand.bend.map((error, i) => pull(at + 3 + i, 0, error)),
  ];
}

/** Of the picture's longer side: the middle of what telephones have. */
export const usualFocal = 0.85;

/** Out of a target at one of its corners, `dot` mm across its spread of one dot. */
export const outwardAt = (corner: Point, middle: Point, dot: number): Point =>
  scale(unit(subtract(corner, middle)), dot * Math.SQRT2);
