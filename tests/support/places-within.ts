/** A place within a value, as the names that lead to it. */
export type PlaceWithin = readonly string[];

/** Every place within a value, the value itself first. */
export const placesWithin = (value: unknown): readonly PlaceWithin[] =>
  typeof value !== 'object' || value === null
    ? [[]]
    : [[], ...Object.entries(value).flatMap(([name, inner]) => placesWithin(inner).map(p => [name, ...p]))];

export const valueAt = (value: unknown, place: PlaceWithin): unknown =>
  place.reduce((inner, name) => (inner as Record<string, unknown>)[name], value);

/** The same with another value at a place. */
export function withValueAt(value: unknown, [name, ...inner]: PlaceWithin, now: unknown): unknown {
  if (name === undefined) return now;
  const changed = withValueAt((value as Record<string, unknown>)[name], inner, now);
  return Array.isArray(value) ? value.with(Number(name), changed) : { ...(value as object), [name]: changed };
}
