import type { LengthUnit } from '@paperhinge/geometry';
import type { Handle, NamedPoint } from '../engine/view.js';

/** Whole figures that a handle settles on, finest first: mm (in inches eighths, quarters …), shares, rad. */
const degree = Math.PI / 180;
const wholes = {
  mm: [1, 5, 10],
  cm: [1, 5, 10],
  in: [25.4 / 8, 25.4 / 4, 25.4 / 2, 25.4],
  share: [0.01, 0.05],
  angle: [0.5 * degree, degree, 5 * degree],
} as const;
/** px: finer steps than this cannot be chosen by hand. */
const finest = 2.5;
/** px within which a handle goes to a named point. */
const pull = 8;

export interface Snapped {
  readonly figure: number;
  /** The named point it was brought to. */
  readonly point?: NamedPoint;
}

/** The steps by which a handle's figure goes at a scale of px a mm. */
export function stepOf({ kind, along }: Handle, scale: number, unit: LengthUnit): number {
  const reach = Math.hypot(...along) * scale;
  const steps: readonly number[] = kind === 'length' ? wholes[unit] : wholes[kind];
  return steps.find(step => step * reach >= finest) ?? steps.at(-1)!;
}

/** Where a handle lies at a figure, in its piece's mm; straight on, which is all that is known of it. */
export const placeAt = ({ at, along, value }: Handle, figure: number): readonly [number, number] => [
  at[0] + along[0] * (figure - value),
  at[1] + along[1] * (figure - value),
];

/** The figure at which a handle comes nearest to a place. */
export const figureAt = ({ at, along, value }: Handle, [x, y]: readonly [number, number]): number =>
  value + ((x - at[0]) * along[0] + (y - at[1]) * along[1]) / (along[0] ** 2 + along[1] ** 2);

export const within = ({ least, most }: Handle, figure: number): number =>
  Math.min(Math.max(figure, least), most);

/** A figure brought to a named point that the handle passes, else to a whole step. */
export function snapped(
  handle: Handle,
  wanted: number,
  { scale, unit, points }: { scale: number; unit: LengthUnit; points: readonly NamedPoint[] },
): Snapped {
  const here = placeAt(handle, wanted);
  const reach = (p: readonly [number, number], q: readonly [number, number]) =>
    Math.hypot(p[0] - q[0], p[1] - q[1]) * scale;
  const own = points.filter(p => p.piece === handle.piece && reach(p.at, handle.at) > pull);
  for (const point of own) {
    const figure = figureAt(handle, point.at);
    if (figure !== within(handle, figure) || reach(placeAt(handle, figure), point.at) > pull / 2) continue;
    if (reach(point.at, here) <= pull) return { figure, point };
  }
  const step = stepOf(handle, scale, unit);
  return { figure: within(handle, Number((Math.round(wanted / step) * step).toFixed(6))) };
}
