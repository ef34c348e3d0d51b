import type { Finding } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { finding } from './tellings.js';

/**
 * How far in from both long edges a straight piece is stitched, in mm: by the allowance of the edge it is made for,
 * or where two of those would use up its cut width, by a quarter of that, like a binding.
 */
export const stitchedIn = (cutWidth: number, given: number): number =>
  cutWidth - 2 * given > tolerances.joiningGap ? given : cutWidth / 4;

/** Tells where {@link stitchedIn} left the allowance of the edge. */
export function narrowFindings(piece: string, widthMm: number, given: number): readonly Finding[] {
  const allowanceMm = stitchedIn(widthMm, given);
  if (allowanceMm === given) return [];
  const facts = { piece, widthMm, edgeAllowanceMm: given, allowanceMm };
  return [finding('warning', 'narrower-than-allowances', { piece }, facts)];
}
