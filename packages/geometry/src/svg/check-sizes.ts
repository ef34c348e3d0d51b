import { PatternError } from '../errors.js';
import { sizeDifferences } from '../pattern/sizes/size-differences.js';
import type { Pattern } from '../pattern/types.js';
import type { Finding, Where } from '../telling.js';
import { mostSizesCompared } from './limits.js';
import { finding } from './tellings.js';

/**
 * What keeps the other sizes of a drawing from being the same pattern as the one that was read: names, order, kinds.
 * Nothing is wrong with that one by itself, so these are warnings.
 *
 * @param read reads another size
 */
export function unlikeSizes(
  { pattern, sizes }: { readonly pattern: Pattern; readonly sizes: readonly string[] },
  read: (size: string) => Pattern,
  where: Where,
): readonly Finding[] {
  const others = sizes.filter(size => size !== pattern.size).slice(0, mostSizesCompared);
  return others.flatMap((size): readonly Finding[] => {
    try {
      const found = sizeDifferences(pattern, read(size));
      return found.map(one => ({ ...one, severity: 'warning', where: { ...where, ...one.where } }));
    } catch (error) {
      if (!(error instanceof PatternError)) throw error;
      return [finding('warning', 'size-not-read', where, { size })];
    }
  });
}
