import type { LineRole, Pattern, PieceLine } from '@paperhinge/geometry';
import { lineRoleOf } from '@paperhinge/geometry/pattern';
import { bodyGirth, type Wearer } from './wearer.js';

/**
 * What a level of a garment is on the body, whatever it is called; undefined where nobody knows. A guess from a name of
 * several words is none: mid thigh is no thigh, and a high hip is not the hip.
 */
export const levelRoleOf = ({ pieces }: Pattern, level: string): LineRole | undefined =>
  pieces
    .flatMap(piece => piece.lines.filter(line => line.kind === 'level' && line.name === level))
    .filter(line => isGiven(line) || !/[\s-]/.test(line.name.trim()))
    .map(lineRoleOf)
    .find(role => role !== undefined);

const isGiven = ({ role, roleGuessed }: PieceLine): boolean => role !== undefined && !roleGuessed;

/** The body's girth at a level of a pattern, in mm: the measurement that is called as it is, else that of what it is. */
export function bodyGirthAt(pattern: Pattern, wearer: Wearer, level: string): number | undefined {
  const role = levelRoleOf(pattern, level);
  return bodyGirth(wearer, level) ?? (role && bodyGirth(wearer, role));
}
