import { type LengthUnit, millimetresPer } from '@paperhinge/geometry';
import { allowanceText, type DecimalSign, lengthText } from '@paperhinge/geometry/internal';

/** mm up to the next step that is shown; what is a step within rounding stays. */
export function roundedUp(mm: number, unit: LengthUnit, per: 8 | 16 = 8): number {
  const step = unit === 'in' ? millimetresPer.in / per : 0.1;
  return Math.ceil(mm / step - aRounding) * step;
}
/** Of a step: 1e-7 mm of the finest, far under what a cutter sees. */
const aRounding = 1e-6;

/** A difference that must not read as none: under half the finest step it is "less than" that step. */
export function slightText(
  mm: number,
  unit: LengthUnit,
  sign: DecimalSign,
  under: (length: string) => string,
): string {
  const finest = unit === 'in' ? millimetresPer.in / 16 : 0.1;
  if (mm !== 0 && Math.abs(mm) < finest / 2) return under(allowanceText(finest, unit, sign));
  return allowanceText(mm, unit, sign);
}

/** A length with its sign; none before nothing. */
export function changeText(mm: number, unit: LengthUnit, sign: DecimalSign): string {
  const size = lengthText(Math.abs(mm), unit, sign);
  return /^0 /.test(size) ? size : `${mm < 0 ? '−' : '+'}${size}`;
}
