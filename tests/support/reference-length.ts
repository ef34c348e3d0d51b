import type { Cubic } from '@paperhinge/geometry/curves';

/**
 * Length of a cubic between two parameters, by a quadrature that shares nothing with the library: composite Simpson's
 * rule with Richardson extrapolation (Romberg) on panels halved until the speed neither halves nor doubles within
 * one and two levels agree to 1e-15 of the curve. Slow and plain.
 */
export function referenceLength(curve: Cubic, from = 0, to = 1): number {
  const [p, q, r, s] = curve;
  const speed = (t: number): number => {
    const u = 1 - t,
      a = 3 * u * u,
      b = 6 * u * t,
      c = 3 * t * t;
    return Math.hypot(
      a * (q.x - p.x) + b * (r.x - q.x) + c * (s.x - r.x),
      a * (q.y - p.y) + b * (r.y - q.y) + c * (s.y - r.y),
    );
  };
  const scale =
    Math.hypot(q.x - p.x, q.y - p.y) + Math.hypot(r.x - q.x, r.y - q.y) + Math.hypot(s.x - r.x, s.y - r.y);
  let sum = 0,
    lost = 0;
  const add = (x: number): void => {
    const y = x - lost,
      t = sum + y;
    lost = t - sum - y;
    sum = t;
  };
  const walk = (a: number, b: number): void => {
    const speeds = [0, 1, 2, 3, 4, 5, 6, 7, 8].map(i => speed(a + ((b - a) * i) / 8));
    const least = Math.min(...speeds),
      most = Math.max(...speeds);
    const [coarse, fine] = romberg(speed, a, b);
    const settled = most <= 2 * least && Math.abs(coarse - fine) <= 1e-15 * scale;
    if (settled || most * (b - a) <= 1e-13 * (scale + 1e-300) || b - a < 1e-15) add(fine);
    else {
      walk(a, (a + b) / 2);
      walk((a + b) / 2, b);
    }
  };
  walk(from, to);
  return sum;
}

/** The last two diagonal entries of a Romberg table of six rows. */
function romberg(f: (t: number) => number, a: number, b: number): readonly [number, number] {
  let row = [((b - a) / 2) * (f(a) + f(b))],
    before = row[0]!;
  for (let level = 1; level <= 5; level++) {
    const n = 2 ** level,
      h = (b - a) / n;
    let middle = 0;
    for (let i = 1; i < n; i += 2) middle += f(a + i * h);
    const next = [row[0]! / 2 + h * middle];
    for (let k = 1; k <= level; k++) next.push(next[k - 1]! + (next[k - 1]! - row[k - 1]!) / (4 ** k - 1));
    before = row.at(-1)!;
    row = next;
  }
  return [before, row.at(-1)!];
}
