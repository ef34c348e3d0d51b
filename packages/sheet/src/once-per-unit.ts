import type { LengthUnit } from '@paperhinge/geometry';

/** Makes a thing for each unit when it is first asked for: schemas are costly to build and the same for every sheet. */
export function oncePerUnit<T>(make: (unit: LengthUnit) => T): (unit: LengthUnit) => T {
  const made = new Map<LengthUnit, T>();
  return unit => {
    const known = made.get(unit) ?? make(unit);
    made.set(unit, known);
    return known;
  };
}
