import type { Pattern } from '@paperhinge/geometry';
import { requireDistance, requireWhole } from '@paperhinge/geometry/internal';
import { bodyGirthAt } from './level-role.js';
import type { Wearer } from './wearer.js';

/** A level's girth over the whole garment beside the wearer's, in mm; what is not known is absent. */
export interface Girth {
  readonly bodyMm?: number;
  readonly beforeMm?: number;
  readonly afterMm?: number;
  /** After the alteration − body; negative where the garment is smaller than the body. */
  readonly easeMm?: number;
}

/**
 * The girths of a garment at its levels before and after an alteration (`levelGirths`) beside the wearer's own; a
 * level that the alteration took away stands last. For what does not fit, see `easeFindings`.
 * @param pattern tells what each level is on the body, whatever it is called
 */
export function girthsBesideBody(
  pattern: Pattern,
  wearer: Wearer,
  before: Readonly<Record<string, number>>,
  after: Readonly<Record<string, number>>,
): Readonly<Record<string, Girth>> {
  requireWhole(pattern);
  for (const mm of [...Object.values(before), ...Object.values(after)]) requireDistance(mm, 'length');
  const then = new Map(Object.entries(before)),
    now = new Map(Object.entries(after));
  return Object.fromEntries(
    [...new Set([...now.keys(), ...then.keys()])].map(level => {
      const bodyMm = bodyGirthAt(pattern, wearer, level),
        beforeMm = then.get(level),
        afterMm = now.get(level);
      const easeMm = bodyMm !== undefined && afterMm !== undefined ? afterMm - bodyMm : undefined;
      const known = Object.entries({ bodyMm, beforeMm, afterMm, easeMm }).filter(
        ([, mm]) => mm !== undefined,
      );
      return [level, Object.fromEntries(known)];
    }),
  );
}
