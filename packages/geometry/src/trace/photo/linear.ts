import { leastPivot } from '../../tolerance.js';

/** The solution of n equations with n unknowns, by elimination with pivots; undefined if they do not settle it. */
export function solved(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] | undefined {
  const n = right.length;
  const rows = matrix.map((row, i) => [...row, right[i]!]);
  const largest = Math.max(...rows.flat().map(Math.abs));
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(rows[i]![k]!) > Math.abs(rows[pivot]![k]!)) pivot = i;
    [rows[k], rows[pivot]] = [rows[pivot]!, rows[k]!];
    const top = rows[k]!;
    if (!(Math.abs(top[k]!) > leastPivot * largest)) return undefined;
    for (let i = k + 1; i < n; i++) {
      const row = rows[i]!,
        share = row[k]! / top[k]!;
      if (share !== 0) for (let j = k; j <= n; j++) row[j]! -= share * top[j]!;
    }
  }
  const out = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    const row = rows[i]!;
    let value = row[n]!;
    for (let j = i + 1; j < n; j++) value -= row[j]! * out[j]!;
    out[i] = value / row[i]!;
  }
  return out;
}
