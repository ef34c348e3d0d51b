import { type Finding, formatLength, type LengthUnit, tolerances } from '@paperhinge/geometry';

/**
 * How far in from both long edges a straight piece is stitched, in mm: by the allowance of the edge it is made for,
 * or where two of those would use up its cut width, by a quarter of that, like a binding.
 */
export const stitchedIn = (cutWidth: number, given: number): number =>
  cutWidth - 2 * given > tolerances.joiningGap ? given : cutWidth / 4;

/** Tells where {@link stitchedIn} left the allowance of the edge. */
export function narrowFindings(
  name: string,
  cutWidth: number,
  given: number,
  unit: LengthUnit,
): readonly Finding[] {
  const allowance = stitchedIn(cutWidth, given);
  if (allowance === given) return [];
  const say = (mm: number): string => formatLength(mm, unit);
  return [
    {
      severity: 'warning',
      code: 'narrower-than-allowances',
      where: { piece: name },
      message:
        `"${name}", cut ${say(cutWidth)} wide, would be used up by two allowances of ${say(given)}; ` +
        `it is stitched ${say(allowance)} in instead.`,
      figures: { widthMm: cutWidth, edgeAllowanceMm: given, allowanceMm: allowance },
      remedy: 'Make it wider, or set a smaller allowance on its edge before drafting it.',
    },
  ];
}
