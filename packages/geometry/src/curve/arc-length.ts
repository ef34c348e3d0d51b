import { lengthTolerance } from '../tolerance.js';
import { distance, dot, norm, subtract } from '../vector.js';
import { type Cubic, derivativeAt, isLine, type Segment, splitAt } from './segment.js';

// Five-point Gauss–Legendre nodes and weights on [−1, 1]. Source: NIST DLMF §3.5(v).
const nodes = [0, 0.5384693101056831, -0.5384693101056831, 0.906179845938664, -0.906179845938664];
const weights = [
  0.5688888888888889, 0.47862867049936647, 0.47862867049936647, 0.23692688505618908, 0.23692688505618908,
];

/** Length of a segment along the curve, in mm. Error: under `lengthTolerance`; estimated, not proven. */
export function segmentLength(segment: Segment): number {
  return isLine(segment) ? distance(segment[0], segment[1]) : refine(segment, quadrature(segment));
}

function refine(curve: Cubic, whole: number): number {
  const [first, second] = splitAt(curve, 0.5) as readonly [Cubic, Cubic];
  const a = quadrature(first),
    b = quadrature(second);
  const settled = isSteady(curve) && Math.abs(a + b - whole) <= lengthTolerance / 16;
  return settled || controlLength(curve) <= lengthTolerance ? a + b : refine(first, a) + refine(second, b);
}

const quadrature = (curve: Cubic): number =>
  nodes.reduce((sum, x, i) => sum + (weights[i]! / 2) * norm(derivativeAt(curve, (1 + x) / 2)), 0);

function isSteady([p, q, r, s]: Cubic): boolean {
  const u = subtract(q, p),
    v = subtract(r, q),
    w = subtract(s, r);
  const sizes = [norm(u), norm(v), norm(w)];
  return dot(u, v) >= 0 && dot(v, w) >= 0 && dot(u, w) >= 0 && Math.max(...sizes) <= 8 * Math.min(...sizes);
}

const controlLength = ([p, q, r, s]: Cubic): number => distance(p, q) + distance(q, r) + distance(r, s);

/** The parameter in [0, 1] at which the part before it is `length` mm long; clamped to the ends. */
export function parameterAtLength(segment: Segment, length: number): number {
  const whole = segmentLength(segment);
  if (length <= 0 || whole === 0) return 0;
  if (length >= whole) return 1;
  if (isLine(segment)) return length / whole;
  let low = 0,
    high = 1,
    t = length / whole;
  for (let i = 0; i < 60 && high - low > Number.EPSILON; i++) {
    const excess = segmentLength(splitAt(segment, t)[0]) - length;
    if (Math.abs(excess) < lengthTolerance / 100) return t;
    if (excess > 0) high = t;
    else low = t;
    const next = t - excess / norm(derivativeAt(segment, t));
    t = next > low && next < high ? next : (low + high) / 2;
  }
  return t;
}
