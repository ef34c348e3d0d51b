import type { OfField } from '../../tellings.js';
import type { Say } from '../say.js';

/** What a fault speaks of, at the beginning of its sentence: `"by"`, `"pieces", item 2,`, `"unfold"`, `The sheet`. */
export function spokenOf({ field, item, verb }: OfField, say: Say): string {
  if (field !== undefined)
    return item === undefined ? say.written(field) : `${say.written(field)}, item ${item},`;
  return verb === undefined ? 'The sheet' : say.written(verb);
}

/** A bound far beyond a table is told in metres. */
export const far = (mm: number, say: Say): string =>
  Math.abs(mm) >= 1000 && say.unit !== 'in' ? `${say.number(mm / 1000, 3)} m` : say.length(mm);
