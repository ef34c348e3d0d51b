// Figures as makers read them, for pages, report and sentences alike.

import { type LengthUnit, millimetresPer } from './units.js';

/** How a number is parted from its decimals. */
export type DecimalSign = '.' | ',';

/** A number rounded to some decimals, without empty ones; U+2212 as its minus. */
export function numberText(value: number, decimals: number, sign: DecimalSign): string {
  const rounded = Number(value.toFixed(decimals));
  return `${rounded < 0 ? '−' : ''}${String(Math.abs(rounded)).replace('.', sign)}`;
}

/** A length to cut by: tenths of a millimetre, or inches in eighths, as a ruler shows them. */
export function lengthText(mm: number, unit: LengthUnit, sign: DecimalSign): string {
  if (unit === 'in') return `${mixed(mm, 8)} in`;
  return `${numberText(mm / millimetresPer[unit], unit === 'cm' ? 2 : 1, sign)} ${unit}`;
}

/** An allowance: inches in sixteenths, since they are as narrow as that. */
export const allowanceText = (mm: number, unit: LengthUnit, sign: DecimalSign): string =>
  unit === 'in' ? `${mixed(mm, 16)} in` : lengthText(mm, unit, sign);

/** A length of cloth, as it is sold: metres to the centimetre, or yards in eighths. */
export const clothText = (mm: number, unit: LengthUnit, sign: DecimalSign): string =>
  unit === 'in' ? `${mixed(mm / inchesPerYard, 8)} yd` : `${numberText(mm / 1000, 2, sign)} m`;

const inchesPerYard = 36;

/** A number of inches as a whole and a fraction in lowest terms: `2 1/4`. */
function mixed(mm: number, per: 8 | 16): string {
  const parts = Math.round((Math.abs(mm) / millimetresPer.in) * per);
  const whole = Math.floor(parts / per);
  let over = parts % per,
    under: number = per;
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  const fraction = over > 0 ? `${over}/${under}` : '';
  const figure = [whole > 0 || fraction === '' ? String(whole) : '', fraction].filter(Boolean).join(' ');
  return `${mm < 0 && parts > 0 ? '−' : ''}${figure}`;
}
