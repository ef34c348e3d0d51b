import type { Piece } from '@paperhinge/geometry';
import type { XY } from '../twenty-drafts.js';
import { bend, ring, suited } from './ring.js';

// What most garments begin with: a neck, an armhole, a cap, drawn by handles as with a curved ruler; mm, centre at x = 0.

/** The quarter of a neck from the centre out to the shoulder, square to both. */
export const neckline = (deep: number, wide: number, top = 0): readonly XY[] =>
  bend([0, deep], [wide * 0.56, deep], [wide - (deep - top) * 0.12, top + (deep - top) * 0.5], [wide, top]);

/** From the shoulder's end down over its narrowest place to the armpit. */
export function armhole([sx, sy]: XY, across: number, [px, py]: XY): readonly XY[] {
  const middle: XY = [across, sy + (py - sy) * 0.58];
  const upper = middle[1] - sy,
    lower = py - middle[1];
  return [
    ...bend([sx, sy], [sx - upper * 0.12, sy + upper * 0.34], [across, middle[1] - upper * 0.36], middle, 4),
    ...bend(middle, [across, middle[1] + lower * 0.62], [px - (px - across) * 0.62, py], [px, py], 5),
  ];
}

/** What a sleeve is like; its cap is as long as asked for. */
export interface Arm {
  readonly cap: number;
  readonly upper: number;
  readonly hem: number;
  readonly long: number;
  /** How high the cap may be. */
  readonly high?: readonly [number, number];
  readonly cut?: number;
}

/** A sleeve with its front on the left, fuller behind; its underarm seams are straight and as long as each other. */
export const arm = (name: string, { cap, upper, hem, long, high = [40, 220], cut = 2 }: Arm): Piece =>
  suited(
    h => {
      const top: XY = [upper * 0.49, -h!];
      return ring(
        name,
        [0, 0],
        {
          cap: [
            ...bend([0, 0], [upper * 0.19, -h! * 0.02], [upper * 0.21, -h!], top, 7),
            ...bend(top, [upper * 0.74, -h!], [upper * 0.78, -h! * 0.05], [upper, 0], 7),
          ],
          back: [[(upper + hem) / 2, long]],
          hem: [[(upper - hem) / 2, long]],
          front: [],
        },
        { cut },
      );
    },
    { edges: ['cap'], mm: cap, between: high },
  );
