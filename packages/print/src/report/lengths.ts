import { nearestEighth } from '@paperhinge/geometry';
import { tidy } from '../drawing/widths.js';

/** "472.5 mm". */
export const millimetres = (mm: number): string => `${tidy(mm, 1)} mm`;
/** "47.25 cm", to a tenth of a millimetre. */
export const centimetres = (mm: number): string => `${tidy(mm / 10, 2)} cm`;
/** "18.602 in", exact to a thousandth. */
export const inches = (mm: number): string => `${tidy(mm / 25.4, 3)} in`;
/** "18 5/8 in", the nearest eighth: what a ruler shows. */
export const eighths = (mm: number): string => nearestEighth(mm).text;
/** A change with its sign: "+12.4 mm", "0". */
export function change(mm: number): string {
  const size = tidy(Math.abs(mm), 1);
  return size === '0' ? '0' : `${mm < 0 ? '−' : '+'}${size} mm`;
}
