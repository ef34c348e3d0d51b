import { type Affine, apply, identity } from '../affine.js';
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
 * Hands an arc on as cubics of at most 7.5 degrees each, carried by `map`.
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
  map: Affine = identity,
): 'arc' | 'line' | 'nothing' {
  const { x0, y0, x, y } = arc;
  if (x0 === x && y0 === y) return 'nothing';
  if (arc.rx === 0 || arc.ry === 0) return 'line';
  const centre = centred(arc);
  const { swept } = centre;
  const steps = Math.max(1, Math.ceil(Math.abs(swept) / largestStep - angleTolerance)); // rounding in a sweep of n steps must not cost one more
  // Handle, cosine and sine of a step all follow from the tangent of its quarter.
  const quarter = Math.tan(swept / steps / 4);
  const k = (4 / 3) * quarter;
  const halfSin = (2 * quarter) / (1 + quarter * quarter);
  const turnCos = 1 - 2 * halfSin * halfSin,
    turnSin = (2 * halfSin * (1 - quarter * quarter)) / (1 + quarter * quarter);
  const { a, b, c, d, e, f } = fromUnitCircle(arc, centre, map);
  const end = apply(map, arc);
  // Each step turns the last by one small angle: 48 steps lose 1e-14 of the radius and take half the time.
  let { cos, sin } = centre;
  for (let i = 1; i <= steps; i++) {
    const nextCos = cos * turnCos - sin * turnSin,
      nextSin = sin * turnCos + cos * turnSin;
    const ax = cos - k * sin,
      ay = sin + k * cos,
      bx = nextCos + k * nextSin,
      by = nextSin - k * nextCos;
    const isLast = i === steps;
    cubicTo(
      a * ax + c * ay + e,
      b * ax + d * ay + f,
      a * bx + c * by + e,
      b * bx + d * by + f,
      isLast ? end.x : a * nextCos + c * nextSin + e,
      isLast ? end.y : b * nextCos + d * nextSin + f,
    );
    cos = nextCos;
    sin = nextSin;
  }
  return 'arc';
}

/** What carries the unit circle to the ellipse's image: once for all points of an arc. */
function fromUnitCircle({ x0, y0, x, y }: SvgArc, { rx, ry, c, s, cx, cy }: CentredArc, map: Affine): Affine {
  const u = { x: c * rx, y: s * rx },
    v = { x: -s * ry, y: c * ry };
  const middle = apply(map, {
    x: u.x * cx + v.x * cy + (x0 + x) / 2,
    y: u.y * cx + v.y * cy + (y0 + y) / 2,
  });
  return {
    a: map.a * u.x + map.c * u.y,
    b: map.b * u.x + map.d * u.y,
    c: map.a * v.x + map.c * v.y,
    d: map.b * v.x + map.d * v.y,
    e: middle.x,
    f: middle.y,
  };
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
  /** Of where the arc begins. */
  readonly cos: number;
  readonly sin: number;
  /** Signed, clockwise positive. */
  readonly swept: number;
}

function centred({ x0, y0, x, y, large, sweep, ...arc }: SvgArc): CentredArc {
  let rx = Math.abs(arc.rx),
    ry = Math.abs(arc.ry);
  const phi = (arc.turn * Math.PI) / 180;
  const c = phi === 0 ? 1 : Math.cos(phi),
    s = phi === 0 ? 0 : Math.sin(phi);
  // B.2.4 step 1: half the chord, in the ellipse's own axes; scaled to the unit circle here.
  const hx = (x0 - x) / 2,
    hy = (y0 - y) / 2;
  let ux = (c * hx + s * hy) / rx,
    uy = (-s * hx + c * hy) / ry;
  // √Λ of the specification; taken so that the tiniest radii do not overflow its square.
  const reach = lengthOf(ux, uy);
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
  const px = ux - cx,
    py = uy - cy,
    qx = -ux - cx,
    qy = -uy - cy;
  let swept = Math.atan2(px * qy - py * qx, px * qx + py * qy);
  if (sweep && swept < 0) swept += 2 * Math.PI;
  if (!sweep && swept > 0) swept -= 2 * Math.PI;

  // Both ends lie on the unit circle but for rounding.
  const unit = lengthOf(px, py);
  return { rx, ry, c, s, cx, cy, cos: px / unit, sin: py / unit, swept };
}

/** The square root of the squares where these keep their digits; `hypot`, which always does, takes five times as long. */
function lengthOf(x: number, y: number): number {
  const square = x * x + y * y;
  return square > 1e-200 && square < 1e200 ? Math.sqrt(square) : Math.hypot(x, y);
}
