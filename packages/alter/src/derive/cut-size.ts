import { formatLength, type LengthUnit, nearestEighth } from '@paperhinge/geometry';

/** A length to cut by, in the pattern's unit; in inches to the nearest eighth, with what that leaves out beside it. */
export function cutLength(mm: number, unit: LengthUnit): string {
  if (unit !== 'in') return formatLength(mm, unit);
  return `${nearestEighth(mm).text} (nearest 1/8 in; exactly ${formatLength(mm, 'mm')})`;
}
