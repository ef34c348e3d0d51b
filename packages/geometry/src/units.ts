import { anyRefusal, type RefusalOf } from './sayings.js';
import { largestCoordinate } from './tolerance.js';

/** What is told of lengths as they are written; `attribute` where one held it. */
export interface LengthTellings {
  'length-not-understood': { readonly attribute?: string };
  'length-out-of-range': { readonly attribute?: string };
}

const refusal: RefusalOf<LengthTellings> = anyRefusal;

/** The units a pattern or a sheet may be in. */
export type LengthUnit = 'mm' | 'cm' | 'in';
/** Millimetres in one of each unit; all exact. */
export const millimetresPer: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 10, in: 25.4 };

/**
 * A length as makers write it, in mm: `12`, `12 mm`, `1.2 cm`, `3/8 in`, `2 7/8"`, `2⅞ in`, `2 Zoll`; a sign is kept.
 *
 * @param unit what a bare number is counted in
 * @throws PatternError `length-not-understood`; `length-out-of-range` beyond 100 m. The text is never quoted.
 */
export function parseLength(text: string | number, unit: LengthUnit): number {
  const mm =
    typeof text === 'number'
      ? inMillimetres(text, unit)
      : typeof text === 'string'
        ? lengthOfText(text, unit)
        : undefined;
  if (mm === undefined || Number.isNaN(mm)) throw refusal('length-not-understood', {});
  if (Math.abs(mm) > largestCoordinate) throw refusal('length-out-of-range', {});
  return mm;
}

function lengthOfText(text: string, unit: LengthUnit): number | undefined {
  // Longer than any length is written; bounds the work on hostile text.
  if (text.length > longestLengthText) return undefined;
  const match = /^([+\-−]?)(.*?)\s*(mm|cm|inches|inch|in|zoll|"|″|”|'')?\.?$/iu.exec(text.trim());
  if (!match) return undefined;
  const [, sign, digits, written] = match;
  const size = numberOfText(digits!.trim());
  if (size === undefined) return undefined;
  const word = written?.toLowerCase();
  const counted: LengthUnit = word === undefined ? unit : word === 'mm' || word === 'cm' ? word : 'in';
  return inMillimetres(sign === '-' || sign === '−' ? -size : size, counted);
}

/** An inch is 127/5 mm: eighths of it come out as the decimals they are, which 25.4 in binary does not give. */
const inMillimetres = (size: number, unit: LengthUnit): number =>
  unit === 'in' ? (size * 127) / 5 : size * millimetresPer[unit];

const longestLengthText = 64;

/** A number without sign: `12`, `1.25`, `.5`, `3/8`, `2 7/8`, `2-7/8`, `2⅞`, `⅞`. */
export function numberOfText(text: string): number | undefined {
  if (/^(\d+\.?\d*|\.\d+)$/.test(text)) return Number(text);
  const written = text.replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/gu, sign => ` ${vulgarFractions[sign]}`).trim();
  const match = /^(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*[/⁄]\s*(\d+)$/u.exec(written);
  if (!match || Number(match[3]) === 0) return undefined;
  return Number(match[1] ?? 0) + Number(match[2]) / Number(match[3]);
}

const vulgarFractions: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Decimals shown: a tenth of a millimetre, and in inches the nearest that is no coarser than a pen line. */
const shownDecimals: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 2, in: 2 };

/**
 * A length in mm for people, in their unit: `372.4 mm`, `37.24 cm`, `14.66 in`; no empty decimals.
 * @throws PatternError `length-not-understood` of what is no number, or no unit
 */
export function formatLength(mm: number, unit: LengthUnit): string {
  if (!Number.isFinite(mm) || !Object.hasOwn(millimetresPer, unit))
    throw refusal('length-not-understood', {});
  const rounded = Number((mm / millimetresPer[unit]).toFixed(shownDecimals[unit]));
  return `${Object.is(rounded, -0) ? 0 : rounded} ${unit}`;
}

/**
 * The nearest eighth of an inch, as cutting instructions give it (`12 3/8 in`), and what that is exactly in mm.
 * @throws PatternError `length-not-understood` of what is no number
 */
export function nearestEighth(mm: number): { readonly text: string; readonly mm: number } {
  if (!Number.isFinite(mm)) throw refusal('length-not-understood', {});
  const eighths = Math.round((mm / millimetresPer.in) * 8) || 0;
  const whole = Math.floor(Math.abs(eighths) / 8);
  const part = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'][Math.abs(eighths) % 8]!;
  const figure = [whole > 0 || part === '' ? String(whole) : '', part].filter(s => s !== '').join(' ');
  return { text: `${eighths < 0 ? '−' : ''}${figure} in`, mm: (eighths * millimetresPer.in) / 8 };
}
