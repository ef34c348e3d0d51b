import type { LengthUnit, Saying, Thing } from '@paperhinge/geometry';
import { allowanceText, clothText, lengthText, numberText } from '@paperhinge/geometry/internal';
import { plainName } from './names.js';
import { changeText, roundedUp, slightText } from './numbers.js';

/** How a language builds what every sentence needs. */
export interface Grammar {
  /** Its tag, such as `en`. */
  readonly language: string;
  readonly decimalSign: '.' | ',';
  /** "the side of the front", from names as the maker gave them. */
  readonly thing: (thing: Thing) => string;
  /** "front side": the same in a list or a heading, without articles. */
  readonly shortly: (thing: Thing) => string;
  /** "a, b and c". */
  readonly list: (items: readonly string[]) => string;
  /** "less than 1/16 in": a length that is there, but under what a maker can measure. */
  readonly under: (length: string) => string;
  /** A name in the language's quotation marks. */
  readonly quoted: (name: string) => string;
}

/** What a catalogue's entries speak with: figures in the reader's unit, things by the maker's own names. */
export interface Say {
  readonly unit: LengthUnit;
  /** A length to cut or measure by: `372.4 mm`, `37.24 cm`, `14 5/8 in` (the nearest eighth). */
  readonly length: (mm: number) => string;
  /** A length of cloth to buy: `1.35 m`, `1 1/2 yd`. */
  readonly cloth: (mm: number) => string;
  /** A length that is enough, to be given or added: rounded up, so that what is cut by it suffices. */
  readonly atLeast: (mm: number) => string;
  /** A length that is not to be passed: an allowance rounded down. */
  readonly atMost: (mm: number) => string;
  /** A seam or hem allowance: inches to the nearest sixteenth. */
  readonly allowance: (mm: number) => string;
  /** A small difference: inches to the nearest sixteenth, or "less than 1/16 in"; never plain 0 where there is one. */
  readonly slight: (mm: number) => string;
  /** A length with its sign. */
  readonly change: (mm: number) => string;
  /** `13.2°`, from degrees. */
  readonly angle: (deg: number) => string;
  /** `80 %`, from per cent. */
  readonly percent: (percent: number) => string;
  readonly number: (value: number, decimals?: number) => string;
  readonly thing: (thing: Thing) => string;
  readonly shortly: (thing: Thing) => string;
  readonly things: (things: readonly Thing[]) => string;
  readonly list: (items: readonly string[]) => string;
  /** A name in plain words: `side-upper` as "side upper". */
  readonly name: (name: string) => string;
  /** A name or key exactly as it must be written, in quotation marks; cut at 40 characters. */
  readonly written: (name: string) => string;
  /** Another saying, in words: a reason within a sentence. */
  readonly saying: (saying: Saying) => string;
}

/** @param sentence how other sayings are worded, for sayings within sayings */
export function sayer(unit: LengthUnit, grammar: Grammar, sentence: (saying: Saying) => string): Say {
  const { decimalSign, thing, shortly, list, under, quoted } = grammar;
  const number = (value: number, decimals = 1) => numberText(value, decimals, decimalSign);
  return {
    unit,
    length: mm => lengthText(mm, unit, decimalSign),
    cloth: mm => clothText(mm, unit, decimalSign),
    atLeast: mm => lengthText(roundedUp(mm, unit), unit, decimalSign),
    atMost: mm => allowanceText(-roundedUp(-mm, unit, 16), unit, decimalSign),
    allowance: mm => allowanceText(mm, unit, decimalSign),
    slight: mm => slightText(mm, unit, decimalSign, under),
    change: mm => changeText(mm, unit, decimalSign),
    angle: deg => `${number(deg)}°`,
    percent: percent => `${number(percent)} %`,
    number,
    thing,
    shortly,
    things: things => list(things.map(thing)),
    list,
    name: plainName,
    written: quoted,
    saying: sentence,
  };
}
