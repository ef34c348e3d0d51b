import type { Segment } from '@paperhinge/geometry';
import { isLine, secondDerivativeAt } from '@paperhinge/geometry/curves';
import { norm } from '@paperhinge/geometry/plane';

/**
 * Into how many equal steps of its parameter a segment is cut so that chords stay within `error` mm of it. A chord
 * over a step h strays by at most h² |B″| / 8, and |B″| of a cubic is largest at an end.
 */
export function chordSteps(segment: Segment, error: number): number {
  if (isLine(segment)) return 1;
  const bend = Math.max(norm(secondDerivativeAt(segment, 0)), norm(secondDerivativeAt(segment, 1)));
  return Math.max(Math.ceil(Math.sqrt(bend / (8 * error))), 1);
}
