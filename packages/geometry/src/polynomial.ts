import { abs } from './arithmetic.js';
/**
 * The real roots in [0, 1] of a polynomial, ascending. `c[i]` is the coefficient of t^i.
 *
 * Between neighbouring roots of its derivative a polynomial is monotonic, so each bracket that changes sign holds
 * one root, found by Newton steps kept inside the bracket. Nothing is missed and nothing diverges.
 * Source: C. Yuksel, High-Performance Polynomial Root Finding for Graphics, 2022.
 *
 * @param near an extreme, or an end of the interval, whose value is this near to zero counts as a root (a touch);
 *   two roots with no more than this between them are given as one
 */
export function rootsInUnit(c: readonly number[], near = 0): number[] {
  let degree = c.length - 1;
  while (degree > 0 && c[degree] === 0) degree--;
  if (degree === 0) return [];
  if (degree === 1) return linearRoots(c[0]!, c[1]!, near);
  const stops = [0, ...(degree === 2 ? vertex(c[1]!, c[2]!) : rootsInUnit(derivative(c, degree))), 1];
  const values = stops.map(t => valueAt(c, degree, t));
  const roots: number[] = [];
  const last = stops.length - 1;
  const isTouch = (i: number): boolean => i > 0 && i < last && abs(values[i]!) <= near;
  for (let i = 0; i < last; i++) {
    const low = values[i]!,
      high = values[i + 1]!;
    if (isTouch(i)) roots.push(stops[i]!);
    else if (low === 0) roots.push(stops[i]!);
    if (!isTouch(i) && !isTouch(i + 1) && low < 0 !== high < 0 && low !== 0 && high !== 0)
      roots.push(bracketedRoot(c, degree, stops[i]!, stops[i + 1]!, low < 0));
  }
  if (values[last] === 0) roots.push(1);
  // The ends of the interval, where no proper root stands for the touch.
  if (values[0] !== 0 && abs(values[0]!) <= near && !hasRootBelow(roots, stops[1]!)) roots.unshift(0);
  if (values[last] !== 0 && abs(values[last]!) <= near && !hasRootAbove(roots, stops[last - 1]!))
    roots.push(1);
  return roots;
}

const hasRootBelow = (roots: readonly number[], t: number): boolean => roots.length > 0 && roots[0]! <= t;
const hasRootAbove = (roots: readonly number[], t: number): boolean => roots.length > 0 && roots.at(-1)! >= t;

function linearRoots(c0: number, c1: number, near: number): number[] {
  const t = -c0 / c1;
  if (t >= 0 && t <= 1) return [t];
  if (t < 0 && abs(c0) <= near) return [0];
  return t > 1 && abs(c0 + c1) <= near ? [1] : [];
}

function vertex(c1: number, c2: number): number[] {
  const t = -c1 / (2 * c2);
  return t > 0 && t < 1 ? [t] : [];
}

function derivative(c: readonly number[], degree: number): number[] {
  const d = new Array<number>(degree);
  for (let i = 1; i <= degree; i++) d[i - 1] = i * c[i]!;
  return d;
}

/** The value at t of a polynomial of a degree, by its coefficients from the lowest. */
export function valueAt(c: readonly number[], degree: number, t: number): number {
  let value = c[degree]!;
  for (let i = degree - 1; i >= 0; i--) value = value * t + c[i]!;
  return value;
}

/** The one root between two parameters at which the signs differ; Newton, halving where Newton leaves the bracket. */
export function bracketedRoot(
  c: readonly number[],
  degree: number,
  from: number,
  to: number,
  rising: boolean,
): number {
  let low = from,
    high = to,
    t = (from + to) / 2;
  for (let i = 0; i < 80; i++) {
    let value = c[degree]!,
      slope = 0;
    for (let k = degree - 1; k >= 0; k--) {
      slope = slope * t + value;
      value = value * t + c[k]!;
    }
    if (value === 0) return t;
    if (value < 0 === rising) low = t;
    else high = t;
    const newton = t - value / slope;
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (abs(next - t) <= Number.EPSILON * abs(next) || next === t) return next;
    t = next;
  }
  return t;
}
