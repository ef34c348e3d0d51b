import type { Affine } from '../affine.js';

/** What a linear map makes of the unit circle: an ellipse by its half axes, and where its long one lies. */
interface PrincipalAxes {
  readonly large: number;
  readonly small: number;
  /** rad, from the x axis. */
  readonly turn: number;
}

/**
 * The image of the unit circle under x′ = a x + c y, y′ = b x + d y. Singular values in closed form, by the two
 * rotating parts of the map: J. Blinn, Consider the lowly 2 x 2 matrix, 1996 [memory].
 */
function principalAxes(a: number, b: number, c: number, d: number): PrincipalAxes {
  const turning = Math.sqrt((a + d) ** 2 + (b - c) ** 2) / 2,
    mirroring = Math.sqrt((a - d) ** 2 + (b + c) ** 2) / 2;
  const turn = (Math.atan2(b - c, a + d) + Math.atan2(b + c, a - d)) / 2;
  return { large: turning + mirroring, small: Math.abs(turning - mirroring), turn };
}

/** An ellipse as SVG describes one: radii, and the turn of the first in degrees. */
export interface Ellipse {
  readonly rx: number;
  readonly ry: number;
  readonly turn: number;
}

export function mappedEllipse({ a, b, c, d }: Affine, { rx, ry, turn }: Ellipse): Ellipse {
  const inDegrees = 180 / Math.PI;
  // A circle's turn shows nowhere: without it the image of all circles is turned alike, to the last digit.
  const phi = rx === ry ? 0 : turn / inDegrees;
  const cos = Math.cos(phi),
    sin = Math.sin(phi);
  const axes = principalAxes(
    (a * cos + c * sin) * rx,
    (b * cos + d * sin) * rx,
    (c * cos - a * sin) * ry,
    (d * cos - b * sin) * ry,
  );
  return { rx: axes.large, ry: axes.small, turn: axes.turn * inDegrees };
}
