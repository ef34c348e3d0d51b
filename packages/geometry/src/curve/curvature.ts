import { rootsInUnit } from '../polynomial.js';
import { norm } from '../vector.js';
import { type PowerForm, powerForm } from './power-form.js';
import { type Cubic, derivativeAt, isLine, type Segment, secondDerivativeAt } from './segment.js';
import { requirePlace } from './sound.js';

/**
 * Curvature in 1/mm at parameter t, positive where the curve turns clockwise as seen (to the right of travel). Where
 * the curve stops (a cusp, coincident control points) it is not finite or not a number.
 */
export function curvatureAt(segment: Segment, t: number): number {
  requirePlace(segment, t);
  if (isLine(segment)) return 0;
  const d = derivativeAt(segment, t),
    dd = secondDerivativeAt(segment, t);
  return (d.x * dd.y - d.y * dd.x) / norm(d) ** 3;
}

/** B′ × B″ as c0 + c1 t + c2 t²: its sign is that of the curvature. */
export function turnPolynomial(f: PowerForm): readonly [number, number, number] {
  return [2 * (f.x1 * f.y2 - f.y1 * f.x2), 6 * (f.x1 * f.y3 - f.y1 * f.x3), 6 * (f.x2 * f.y3 - f.y2 * f.x3)];
}

/** B′ · B′ by powers of t. */
export function speedSquared(f: PowerForm): readonly [number, number, number, number, number] {
  return [
    f.x1 * f.x1 + f.y1 * f.y1,
    4 * (f.x1 * f.x2 + f.y1 * f.y2),
    4 * (f.x2 * f.x2 + f.y2 * f.y2) + 6 * (f.x1 * f.x3 + f.y1 * f.y3),
    12 * (f.x2 * f.x3 + f.y2 * f.y3),
    9 * (f.x3 * f.x3 + f.y3 * f.y3),
  ];
}

/** Bounds over a whole cubic: its least speed squared, and the least and most of B′ × B″. */
export interface PaceBounds {
  readonly speedSquared: number;
  readonly leastTurn: number;
  readonly mostTurn: number;
}

/** Least and greatest Bernstein coefficients: what they bound lies between, though it need not come near. */
export function paceBounds([p, q, r, s]: Cubic): PaceBounds {
  const ux = q.x - p.x,
    uy = q.y - p.y,
    vx = r.x - q.x,
    vy = r.y - q.y,
    wx = s.x - r.x,
    wy = s.y - r.y;
  const across = (ux * wx + uy * wy + 2 * (vx * vx + vy * vy)) / 3;
  const square = Math.min(ux * ux + uy * uy, ux * vx + uy * vy, across, vx * wx + vy * wy, wx * wx + wy * wy);
  const first = ux * vy - uy * vx,
    middle = (ux * wy - uy * wx) / 2,
    last = vx * wy - vy * wx;
  return {
    speedSquared: 9 * square,
    leastTurn: 18 * Math.min(first, middle, last),
    mostTurn: 18 * Math.max(first, middle, last),
  };
}

/**
 * Parameters in (0, 1) at which the curvature is extreme: where (w κ)′ = 0 turned into a quintic,
 * w′ s − (3/2) w s′ with w = B′ × B″ and s = B′ · B′.
 */
export function curvatureExtremes(segment: Segment): readonly number[] {
  if (isLine(segment)) return [];
  const f = powerForm(segment);
  const w = turnPolynomial(f),
    s = speedSquared(f);
  const dw = [w[1], 2 * w[2]],
    ds = [s[1], 2 * s[2], 3 * s[3], 4 * s[4]];
  const c = [0, 0, 0, 0, 0, 0];
  for (let i = 0; i < 2; i++) for (let k = 0; k < 5; k++) c[i + k]! += dw[i]! * s[k]!;
  for (let i = 0; i < 3; i++) for (let k = 0; k < 4; k++) c[i + k]! -= 1.5 * w[i]! * ds[k]!;
  return rootsInUnit(c).filter(t => t > 0 && t < 1);
}
