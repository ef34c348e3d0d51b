import type { Field, Fields } from '../verb/field.js';
import type { Measure } from './measure.js';

/** What an amount is to bring about instead of a figure: a measure, in mm or mm², that is one figure or lies between two. */
export interface Goal {
  readonly soThat: Measure;
  readonly is: number | readonly [number, number];
}

/** A goal among the fields of a step, and where it stands: the names of its field, in a pair with its number. */
export interface GoalAt {
  readonly goal: Goal;
  readonly path: readonly (string | number)[];
  readonly field: Field;
}

type Given = Readonly<Record<string, unknown>>;

/** Whether a value of a field is a goal instead of a figure. */
export const isGoal = (value: unknown): value is Goal =>
  typeof value === 'object' && value !== null && 'soThat' in value && 'is' in value;

/** Every goal in the fields of a step, in the order of the fields. */
export const goalsIn = (fields: Fields, given: Given): readonly GoalAt[] =>
  Object.entries(fields).flatMap(([name, field]): readonly GoalAt[] => {
    const value = given[name];
    if (isGoal(value)) return [{ goal: value, path: [name], field }];
    if (field.kind === 'lengths' && Array.isArray(value))
      return value.flatMap((one, i) => (isGoal(one) ? [{ goal: one, path: [name, i], field }] : []));
    if (field.kind === 'groups' && Array.isArray(value))
      return value.flatMap((one, i) =>
        goalsIn(field.fields!, one as Given).map(at => ({ ...at, path: [name, i, ...at.path] })),
      );
    if (field.kind !== 'group' || typeof value !== 'object' || value === null) return [];
    return goalsIn(field.fields!, value as Given).map(at => ({ ...at, path: [name, ...at.path] }));
  });

/** The fields with the value at a path replaced. */
export function withValueAt(given: unknown, [key, ...rest]: GoalAt['path'], value: unknown): unknown {
  if (key === undefined) return value;
  if (Array.isArray(given)) return given.map((one, i) => (i === key ? withValueAt(one, rest, value) : one));
  const fields = given as Given;
  return { ...fields, [key]: withValueAt(fields[key], rest, value) };
}
