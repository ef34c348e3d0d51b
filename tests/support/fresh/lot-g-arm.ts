import type { Piece } from '@paperhinge/geometry';
import type { Arm } from './block.js';
import { bend, ring, suited } from './ring.js';

/** A sleeve whose cap and hem leave its underarm seams square, so that both run on when it is closed; its front on the left. */
export const squareArm = (name: string, { cap, upper, hem, long, high = [40, 220], cut = 2 }: Arm): Piece => {
  const tilt = (upper - hem) / 2 / long;
  const [left, right] = [(upper - hem) / 2, (upper + hem) / 2];
  const reach = hem * 0.3;
  return suited(
    h =>
      ring(
        name,
        [0, 0],
        {
          cap: [
            ...bend(
              [0, 0],
              [upper * 0.17, -upper * 0.08 * tilt],
              [upper * 0.22, -h!],
              [upper * 0.48, -h!],
              7,
            ),
            ...bend(
              [upper * 0.48, -h!],
              [upper * 0.75, -h!],
              [upper * 0.81, -upper * 0.09 * tilt],
              [upper, 0],
              7,
            ),
          ],
          back: [[right, long]],
          hem: bend(
            [right, long],
            [right - reach, long - reach * tilt],
            [left + reach, long - reach * tilt],
            [left, long],
          ),
          front: [],
        },
        { cut },
      ),
    { edges: ['cap'], mm: cap, between: high },
  );
};
