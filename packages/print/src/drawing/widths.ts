import type { LengthUnit } from '@paperhinge/geometry';

const eighths = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'] as const;

/** mm: an allowance this near an eighth of an inch was meant as one. */
const meantAsEighth = 0.06;

/** The width in eighths of an inch, if it was meant as such: "5/8 in"; else undefined. */
export function inEighths(mm: number): string | undefined {
  const count = Math.round((mm / 25.4) * 8);
  if (count === 0 || Math.abs((count * 25.4) / 8 - mm) > meantAsEighth) return undefined;
  return `${[count >= 8 ? String(Math.floor(count / 8)) : '', eighths[count % 8]].filter(Boolean).join(' ')} in`;
}

/** An allowance as a maker reads it: "5/8 in (15.9 mm)" where it is one, "7 mm" where it was meant so, else exactly. */
export function widthText(mm: number, unit: LengthUnit): string {
  const inches = inEighths(mm);
  const metric = `${tidy(mm, 1)} mm`;
  if (inches) return `${inches} (${metric})`;
  const wholeHalves = Math.abs(mm * 2 - Math.round(mm * 2)) < meantAsEighth;
  return unit === 'in' && !wholeHalves ? `${tidy(mm / 25.4, 3)} in (${metric})` : metric;
}

/** A number rounded to some decimals, without zeros at its end. */
export const tidy = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)));
