import { settledRay, smallTurn } from '../../tolerance.js';
import type { Point } from '../../vector.js';

/**
 * A camera over the floor. A floor point (x, y, 0), y down as seen, lies at R x + t before the lens; its picture is the
 * centre plus `focal` times what the lens makes of the ray: radius r (in focal lengths) becomes
 * r (1 + k₁ r² + k₂ r⁴ + k₃ r⁶). Source: Brown, Close-range camera calibration, 1971, the radial part.
 */
export interface Camera {
  /** Dots. */
  readonly focal: number;
  /** Dots. */
  readonly centre: Point;
  readonly bend: readonly [number, number, number];
  /** R as axis times angle, rad. */
  readonly turn: readonly [number, number, number];
  /** t, mm. */
  readonly shift: readonly [number, number, number];
}

/** A camera ready to carry points both ways. */
export interface View {
  /** Where a floor point, mm, is seen, in dots. */
  toPicture(x: number, y: number): Point;
  /** The floor point, mm, that is seen at a place of the picture. NaN above the horizon. */
  toFloor(u: number, v: number): Point;
}

export type Matrix3 = readonly [number, number, number, number, number, number, number, number, number];

/** Steps that settle a radius to the last digit in any lens short of a fish eye. */
const steps = 12;

/** The camera as two maps. */
export function viewOf(camera: Camera): View {
  const { focal, centre, bend, shift } = camera;
  const [a, b, c, d, e, f, g, h, i] = matrixOf(camera.turn);
  const [tx, ty, tz] = shift;
  return {
    toPicture(x, y) {
      const w = g * x + h * y + tz;
      const p = (a * x + b * y + tx) / w,
        q = (d * x + e * y + ty) / w;
      const k = focal * bentBy(bend, p * p + q * q);
      return { x: centre.x + k * p, y: centre.y + k * q };
    },
    toFloor(u, v) {
      const { x: p, y: q } = straightened(camera, u, v);
      // R and t make a map of planes; its inverse by cofactors, up to scale.
      const rx = (e * tz - ty * h) * p + (h * tx - b * tz) * q + (b * ty - e * tx),
        ry = (ty * g - d * tz) * p + (a * tz - tx * g) * q + (d * tx - a * ty),
        rw = (d * h - e * g) * p + (b * g - a * h) * q + (a * e - b * d);
      // Before the camera only: c, f, i carry what looks away from the floor.
      return c * p + f * q + i > 0 ? { x: rx / rw, y: ry / rw } : { x: Number.NaN, y: Number.NaN };
    },
  };
}

const bentBy = ([k1, k2, k3]: Camera['bend'], r2: number): number => 1 + r2 * (k1 + r2 * (k2 + r2 * k3));

/** The ray of a place of the picture as a lens without bend would show it, in focal lengths. */
export function straightened({ focal, centre, bend }: Camera, u: number, v: number): Point {
  const x = (u - centre.x) / focal,
    y = (v - centre.y) / focal;
  const bent = Math.hypot(x, y);
  if (bent === 0) return { x, y };
  const [k1, k2, k3] = bend;
  let r = bent;
  for (let step = 0; step < steps; step++) {
    const r2 = r * r;
    const slope = 1 + r2 * (3 * k1 + r2 * (5 * k2 + r2 * 7 * k3));
    const change = (r * bentBy(bend, r2) - bent) / Math.max(slope, leastSlope);
    r -= change;
    if (Math.abs(change) < settledRay) break;
  }
  const k = r / bent;
  return { x: x * k, y: y * k };
}

/** Where a straightened ray is seen, dots: the way back. */
export function bentBack({ focal, centre, bend }: Camera, ray: Point): Point {
  const k = focal * bentBy(bend, ray.x * ray.x + ray.y * ray.y);
  return { x: centre.x + k * ray.x, y: centre.y + k * ray.y };
}

/** Where a lens folds its picture over, steps stay finite. */
const leastSlope = 0.2;

/** The matrix of a turn by its axis times its angle. Source: Rodrigues' formula. */
export function matrixOf([x, y, z]: readonly [number, number, number]): Matrix3 {
  const angle = Math.hypot(x, y, z);
  const s = angle < smallTurn ? 1 : Math.sin(angle) / angle,
    k = angle < smallTurn ? 1 / 2 : (1 - Math.cos(angle)) / (angle * angle),
    c = Math.cos(angle);
  return [
    c + k * x * x,
    k * x * y - s * z,
    k * x * z + s * y,
    k * x * y + s * z,
    c + k * y * y,
    k * y * z - s * x,
    k * x * z - s * y,
    k * y * z + s * x,
    c + k * z * z,
  ];
}

/** Axis times angle of a matrix that turns. */
export function turnOf(m: Matrix3): readonly [number, number, number] {
  // By the quaternion, which is well behaved up to half a turn.
  const [a, b, c, d, e, f, g, h, i] = m;
  const candidates = [
    [1 + a + e + i, h - f, c - g, d - b],
    [h - f, 1 + a - e - i, b + d, c + g],
    [c - g, b + d, 1 - a + e - i, f + h],
    [d - b, c + g, f + h, 1 - a - e + i],
  ] as const;
  const best = candidates.reduce((x, y, n) => (y[n]! > x.q[x.n]! ? { q: y, n } : x), {
    q: candidates[0],
    n: 0,
  } as {
    q: readonly [number, number, number, number];
    n: number;
  }).q;
  const length = Math.hypot(...best) * (best[0] < 0 ? -1 : 1);
  const [w, x, y, z] = best.map(v => v / length) as [number, number, number, number];
  const sine = Math.hypot(x, y, z);
  const k = sine < smallTurn ? 2 : (2 * Math.atan2(sine, w)) / sine;
  return [k * x, k * y, k * z];
}

/** First one turn, then another. */
export function product(m: Matrix3, n: Matrix3): Matrix3 {
  const at = (r: number, c: number) =>
    m[3 * r]! * n[c]! + m[3 * r + 1]! * n[3 + c]! + m[3 * r + 2]! * n[6 + c]!;
  return [at(0, 0), at(0, 1), at(0, 2), at(1, 0), at(1, 1), at(1, 2), at(2, 0), at(2, 1), at(2, 2)];
}
