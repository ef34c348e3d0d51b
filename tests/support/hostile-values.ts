/** Numbers that an empty field, a division by nothing or a wrong file leaves behind. */
export const hostile: readonly number[] = [
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  1e300,
  -1e300,
];

/** The same value with one number in it replaced, for each number in it. */
export function replacedNumbers<T>(value: T, by: number): readonly T[] {
  if (typeof value === 'number') return [by as T];
  if (Array.isArray(value))
    return value.flatMap((part, i) => replacedNumbers(part, by).map(bad => value.with(i, bad) as T));
  if (typeof value === 'object' && value !== null)
    return Object.entries(value).flatMap(([key, part]) =>
      replacedNumbers(part, by).map(bad => ({ ...value, [key]: bad })),
    );
  return [];
}

/** Whether every number in a value, however deep, is finite. */
export function deepFinite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (value instanceof Error) return false;
  return typeof value !== 'object' || value === null || Object.values(value).every(deepFinite);
}
