import type { Point } from '../vector.js';
import { turnPolynomial } from './curvature.js';
import type { Station } from './hermite-fit.js';
import { type PowerForm, powerForm, xAt, yAt } from './power-form.js';
import { type Cubic, tangentAt } from './segment.js';

/** The true parallel of a cubic: all that its fitting asks of it. */
export interface Parallel {
  readonly form: PowerForm;
  readonly d: number;
  readonly tolerance: number;
  /** Unit directions of travel at the ends of the cubic, where it may start or end at rest. */
  readonly leaving: Point;
  readonly arriving: Point;
  /** B′ × B″ by powers of t. */
  readonly turn: readonly [number, number, number];
}

export function parallelOf(curve: Cubic, d: number, tolerance: number): Parallel {
  const form = powerForm(curve);
  return {
    form,
    d,
    tolerance,
    leaving: tangentAt(curve, 0),
    arriving: tangentAt(curve, 1),
    turn: turnPolynomial(form),
  };
}

/** (1 + κ d) |B′|³: its sign is that of the parallel's travel along the curve's; finite where B′ = 0. */
export function stretchAt({ form: f, d, turn }: Parallel, t: number): number {
  const x = (3 * f.x3 * t + 2 * f.x2) * t + f.x1,
    y = (3 * f.y3 * t + 2 * f.y2) * t + f.y1;
  const square = x * x + y * y;
  return square * Math.sqrt(square) + d * ((turn[2] * t + turn[1]) * t + turn[0]);
}

/** Unit direction of travel of the curve. */
export function directionAt({ form: f, leaving, arriving }: Parallel, t: number): Point {
  if (t <= 0) return leaving;
  if (t >= 1) return arriving;
  const x = (3 * f.x3 * t + 2 * f.x2) * t + f.x1,
    y = (3 * f.y3 * t + 2 * f.y2) * t + f.y1;
  const size = Math.sqrt(x * x + y * y);
  return { x: x / size, y: y / size };
}

/** The point of the parallel beside parameter t, and its direction of travel; `sense` −1 where it runs back. */
export function stationAt(parallel: Parallel, t: number, sense: number): Station {
  const { x, y } = directionAt(parallel, t);
  const { form, d } = parallel;
  return {
    point: { x: xAt(form, t) + d * y, y: yAt(form, t) - d * x },
    direction: sense > 0 ? { x, y } : { x: -x, y: -y },
  };
}
