/** The range of t in which the hull of the explicit cubic e lies between low and high. */
export function clip(
  e0: number,
  e1: number,
  e2: number,
  e3: number,
  low: number,
  high: number,
): [number, number] | undefined {
  if (e0 >= low && e0 <= high && e3 >= low && e3 <= high) return [0, 1];
  let first = 2,
    last = -1;
  const meet = (t: number): void => {
    if (t < first) first = t;
    if (t > last) last = t;
  };
  if (e0 >= low && e0 <= high) meet(0);
  if (e3 >= low && e3 <= high) meet(1);
  const cut = (ta: number, ea: number, tb: number, eb: number): void => {
    if (ea < low !== eb < low) meet(ta + ((tb - ta) * (low - ea)) / (eb - ea));
    if (ea > high !== eb > high) meet(ta + ((tb - ta) * (high - ea)) / (eb - ea));
  };
  // All six sides and diagonals of the control polygon: the hull's sides are among them.
  cut(0, e0, 1 / 3, e1);
  cut(0, e0, 2 / 3, e2);
  cut(0, e0, 1, e3);
  cut(1 / 3, e1, 2 / 3, e2);
  cut(1 / 3, e1, 1, e3);
  cut(2 / 3, e2, 1, e3);
  return last < 0 ? undefined : [Math.max(0, first), Math.min(1, last)];
}
