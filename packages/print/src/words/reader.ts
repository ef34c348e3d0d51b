import type { LengthUnit } from '@paperhinge/geometry';
import { allowanceText, clothText, lengthText, numberText } from '@paperhinge/geometry/internal';
import { english } from './english.js';
import { german } from './german.js';
import type { PageWords } from './page-words.js';

/** The languages that pages are set in. */
export type PageLanguage = 'en' | 'de';
/** The languages that pages are set in. */
export const pageLanguages: readonly PageLanguage[] = ['en', 'de'];

/** Whom pages are set for: words in their language, figures in their unit. */
export interface Reader {
  readonly words: PageWords;
  readonly unit: LengthUnit;
  /** A length to cut by: `372.4 mm`, `14 5/8 in`. */
  readonly length: (mm: number) => string;
  /** A seam or hem allowance: inches to the sixteenth. */
  readonly allowance: (mm: number) => string;
  /** A length of cloth to buy: `1.35 m`, `1 1/2 yd`. */
  readonly cloth: (mm: number) => string;
  /** A length with its sign; none before nothing. */
  readonly change: (mm: number) => string;
  /** `100.4 %`, from a share. */
  readonly percent: (share: number) => string;
  readonly number: (value: number, decimals: number) => string;
}

/** A reader of one of the languages carried. */
export function readerOf(unit: LengthUnit, language: PageLanguage = 'en'): Reader {
  const words = language === 'de' ? german : english;
  const { decimalSign: sign } = words;
  const length = (mm: number) => lengthText(mm, unit, sign);
  return {
    words,
    unit,
    length,
    cloth: mm => clothText(mm, unit, sign),
    allowance: mm => allowanceText(mm, unit, sign),
    change: mm => {
      const size = length(Math.abs(mm));
      return size.startsWith('0 ') ? size : `${mm < 0 ? '−' : '+'}${size}`;
    },
    percent: share => `${numberText(share * 100, 2, sign)} %`,
    number: (value, decimals) => numberText(value, decimals, sign),
  };
}
