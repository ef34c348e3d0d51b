import { angleTolerance } from '../tolerance.js';

/** An elliptical arc to x, y as SVG writes it; `turn` is the ellipse's own turn in degrees. */
export interface ArcTo {
  readonly rx: number;
  readonly ry: number;
  readonly turn: number;
  readonly large: boolean;
  readonly sweep: boolean;
  readonly x: number;
  readonly y: number;
}

/** The same from x0, y0. */
export interface SvgArc extends ArcTo {
  readonly x0: number;
  readonly y0: number;
}

/** rad (7.5 degrees): at this step an arc's cubics keep within 1e-10 of its radius. */
const largestStep = Math.PI / 24;

/**
 * Hands an arc on as cubics of at most 7.5 degrees each.
 *
 * Centre and radii by the SVG 2 implementation notes, B.2.4 and B.2.5: negative radii count as positive, radii too
 * small are scaled up until the ends are reached. Each cubic has handles of (4/3) tan(δ/4); its radial error is at
 * most (2/27) sin⁶(δ/4)/cos²(δ/4) of the radius, 9.2e-11 at δ = 7.5° (1e-7 mm at a metre), never inside.
 *
 * @returns `line` where a radius is zero (the caller draws a straight line), `nothing` where the ends coincide
 */
export function forEachArcCubic(
  arc: SvgArc,
  cubicTo: (x1: number, y1: number, x2: number, y2: number, x: number, y: number) => void,
): 'arc' | 'line' | 'nothing' {
  const { x0, y0, x, y } = arc;
  if (x0 === x && y0 === y) return 'nothing';
  if (arc.rx === 0 || arc.ry === 0) return 'line';
  const { rx, ry, c, s, cx, cy, from, swept } = centred(arc);
  const steps = Math.max(1, Math.ceil(Math.abs(swept) / largestStep - angleTolerance)); // rounding in a sweep of n steps must not cost one more
  const step = swept / steps;
  const k = (4 / 3) * Math.tan(step / 4);
  const middleX = (x0 + x) / 2,
    middleY = (y0 + y) / 2;
  const toX = (px: number, py: number): number => c * rx * (px + cx) - s * ry * (py + cy) + middleX;
  const toY = (px: number, py: number): number => s * rx * (px + cx) + c * ry * (py + cy) + middleY;
  let cos = Math.cos(from),
    sin = Math.sin(from);
  // Each step turns the last by one small angle: 48 steps lose 1e-14 of the radius and take half the time.
  const turnCos = Math.cos(step),
    turnSin = Math.sin(step);
  for (let i = 1; i <= steps; i++) {
    const nextCos = cos * turnCos - sin * turnSin,
      nextSin = sin * turnCos + cos * turnSin;
    const ax = cos - k * sin,
      ay = sin + k * cos,
      bx = nextCos + k * nextSin,
      by = nextSin - k * nextCos;
    const isLast = i === steps;
    cubicTo(
      toX(ax, ay),
      toY(ax, ay),
      toX(bx, by),
      toY(bx, by),
      isLast ? x : toX(nextCos, nextSin),
      isLast ? y : toY(nextCos, nextSin),
    );
    cos = nextCos;
    sin = nextSin;
  }
  return 'arc';
}

/** An arc by its centre: on the unit circle in the ellipse's own axes, the chord's middle at 0; angles in rad. */
interface CentredArc {
  readonly rx: number;
  readonly ry: number;
  /** Cosine and sine of the ellipse's own turn. */
  readonly c: number;
  readonly s: number;
  readonly cx: number;
  readonly cy: number;
  readonly from: number;
  /** Signed, clockwise positive. */
  readonly swept: number;
}

function centred({ x0, y0, x, y, large, sweep, ...arc }: SvgArc): CentredArc {
  let rx = Math.abs(arc.rx),
    ry = Math.abs(arc.ry);
  const phi = (arc.turn * Math.PI) / 180;
  const c = Math.cos(phi),
    s = Math.sin(phi);
  // B.2.4 step 1: half the chord, in the ellipse's own axes; scaled to the unit circle here.
  const hx = (x0 - x) / 2,
    hy = (y0 - y) / 2;
  let ux = (c * hx + s * hy) / rx,
    uy = (-s * hx + c * hy) / ry;
  // √Λ of the specification; taken by hypot, so that the tiniest radii do not overflow its square.
  const reach = Math.hypot(ux, uy);
  if (reach > 1) {
    rx *= reach;
    ry *= reach;
    ux /= reach;
    uy /= reach;
  }
  // Step 2: the centre lies off the chord's middle by √(1/Λ − 1) of the half chord, turned a quarter.
  const size = Math.min(1, reach * reach);
  const off = Math.sqrt(Math.max(0, (1 - size) / size)) * (large === sweep ? -1 : 1);
  const cx = off * uy,
    cy = -off * ux;
  const from = Math.atan2(uy - cy, ux - cx);
  let swept = Math.atan2(-uy - cy, -ux - cx) - from;
  if (sweep && swept < 0) swept += 2 * Math.PI;
  if (!sweep && swept > 0) swept -= 2 * Math.PI;

  return { rx, ry, c, s, cx, cy, from, swept };
}
