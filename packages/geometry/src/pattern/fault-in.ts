/** What a value must be: of a type, a list of a kind, or an object with these things in it; or what finds its fault. */
export type Kind =
  | 'string'
  | 'number'
  | 'boolean'
  | readonly [Kind]
  | { readonly [name: string]: Kind }
  | ((value: object) => string | undefined);

/**
 * Where in a value the first fault is: empty where it is the value itself, nothing where there is none. Every number
 * in it must be finite, also where no kind speaks of it.
 */
export function faultIn(value: unknown, kind?: Kind): string | undefined {
  const type = typeof value;
  if (type !== 'object' || value === null) {
    const isSound = type !== 'number' || Number.isFinite(value);
    return isSound && type === (kind ?? type) ? undefined : '';
  }
  if (typeof kind === 'function') return kind(value as object);
  const isList = Array.isArray(value);
  if (isList !== Array.isArray(kind ?? value) || typeof kind === 'string') return '';
  const within = value as Readonly<Record<string, unknown>>,
    kinds = kind as Readonly<Record<string, Kind>> | undefined;
  for (const key of isList ? value.keys() : Object.keys({ ...kinds, ...within })) {
    const fault = faultIn(within[key], kinds?.[isList ? 0 : key]);
    if (fault !== undefined) return `.${key}${fault}`;
  }
  return undefined;
}
