import { type LengthUnit, millimetresPer } from '@paperhinge/geometry';

type DecimalSign = '.' | ',';

/** A number rounded to some decimals, without empty ones; U+2212 as its minus. */
export function numberText(value: number, decimals: number, sign: DecimalSign): string {
  const rounded = Number(value.toFixed(decimals));
  return `${rounded < 0 ? '−' : ''}${String(Math.abs(rounded)).replace('.', sign)}`;
}

/** Tenths of a millimetre; inches in eighths, as a ruler shows them. */
export function lengthText(mm: number, unit: LengthUnit, sign: DecimalSign): string {
  if (unit === 'in') return `${mixed(mm, 8)} in`;
  return `${numberText(mm / millimetresPer[unit], unit === 'cm' ? 2 : 1, sign)} ${unit}`;
}

/** The same with inches in sixteenths, since allowances are as narrow as 1/16 in. */
export const allowanceText = (mm: number, unit: LengthUnit, sign: DecimalSign): string =>
  unit === 'in' ? `${mixed(mm, 16)} in` : lengthText(mm, unit, sign);

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

/** Whole inches and a fraction in lowest terms: `2 1/4`. */
function mixed(mm: number, per: 8 | 16): string {
  const parts = Math.round((Math.abs(mm) / millimetresPer.in) * per);
  const whole = Math.floor(parts / per);
  let over = parts % per,
    under: number = per;
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  const fraction = over > 0 ? `${over}/${under}` : '';
  const figure = [whole > 0 || fraction === '' ? String(whole) : '', fraction]
    .filter(s => s !== '')
    .join(' ');
  return `${mm < 0 && parts > 0 ? '−' : ''}${figure}`;
}
