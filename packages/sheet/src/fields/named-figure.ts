import { nearestName } from '@paperhinge/geometry/sayings';
import type { Tree } from '../document.js';
import { sumRefusal } from '../values/let.js';
import { inKind, isSum, type ValueKind, type Values, valueOfSum } from '../values/value.js';
import { isMeasurement } from '../wearer-names.js';
import { type At, tell } from './kind.js';
import { written } from './written.js';

const nothingKept: Values = new Map();

/**
 * A figure that is written as a name or a sum, in mm, as a share or in degrees; `none` where it is written as a
 * figure, undefined where what is wrong was told.
 */
export function namedFigure(
  tree: Tree,
  at: At,
  wanted: Exclude<ValueKind, 'number'>,
): number | 'none' | undefined {
  const text = written(tree);
  const { values = nothingKept, unit, where, faults } = at.reading;
  if (typeof text !== 'string') return 'none';
  if (!isSum(text, values, unit)) {
    const names = [...values.keys()];
    // A name written a little wrong, or the wearer's that is not given: no figure.
    const isName = nearestName(text, names) !== undefined || isMeasurement(text);
    return isName ? tell(at, 'value-unknown', { name: text, names }) : 'none';
  }
  const value = valueOfSum(text, name => values.get(name), unit);
  if ('fault' in value) {
    faults.push(sumRefusal(at.of, value, [...values.keys()], { ...where, ...at.place }));
    return undefined;
  }
  const amount = inKind(value, wanted, unit);
  return amount ?? tell(at, 'value-of-other-kind', { is: value.kind, wanted });
}
