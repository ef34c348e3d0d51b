import { type LengthUnit, millimetresPer } from '@paperhinge/geometry';
import { typedLength } from './step-text.js';

/** The nearest marks of a ruler on either side of a figure, as a sheet writes a range: `[472 mm, 473 mm]`. */
export function rangeRound({ isMm, isMm2 }: { isMm?: number; isMm2?: number }, unit: LengthUnit): string {
  if (isMm2 !== undefined) return `[${Math.floor(isMm2 / 100)} cm2, ${Math.ceil(isMm2 / 100)} cm2]`;
  const mark = unit === 'in' ? millimetresPer.in / 8 : 1;
  const [low, high] = [Math.floor(isMm! / mark) * mark, Math.ceil(isMm! / mark) * mark];
  return `[${typedLength(low, unit)}, ${typedLength(high, unit)}]`;
}
