import type { FaultReason } from './tellings.js';

/** Reads numbers, flags and separators of SVG's attribute grammars from a text, character by character. */
export interface Scanner {
  index(): number;
  atEnd(): boolean;
  space(): void;
  /** The character code here; steps over it. */
  letter(): number;
  /** White space and at most one comma. */
  separator(): void;
  /** Steps to a further number of the same command, over a comma if need be; false where none follows. */
  separatorBeforeNumber(): boolean;
  /** The last `separatorBeforeNumber` stepped over a comma and found no number behind it. */
  danglingComma(): boolean;
  /** Reads a number by longest match; false where there is none or it is beyond all drawing (1e120). */
  number(): boolean;
  /** A single 0 or 1. */
  flag(): boolean;
  value(): number;
  /** Why the last read failed, for a telling. */
  reason(): FaultReason;
}

export function scanner(text: string): Scanner {
  const end = text.length;
  let i = 0;
  let value = 0;
  let reason: FaultReason = 'number-expected';
  let dangling = false;

  const space = (): void => {
    while (i < end && isSpace(text.charCodeAt(i))) i++;
  };
  const fail = (why: FaultReason): false => {
    reason = why;
    return false;
  };

  return {
    index: () => i,
    atEnd: () => i >= end,
    space,
    letter: () => text.charCodeAt(i++),
    separator() {
      space();
      if (text.charCodeAt(i) === comma) {
        i++;
        space();
      }
    },
    separatorBeforeNumber() {
      space();
      dangling = text.charCodeAt(i) === comma;
      if (dangling) {
        i++;
        space();
        reason = 'number-after-comma';
      }
      if (i < end && startsNumber(text.charCodeAt(i))) {
        dangling = false;
        return true;
      }
      return false;
    },
    danglingComma: () => dangling,
    flag() {
      const code = text.charCodeAt(i);
      if (code !== zero && code !== zero + 1) return fail('arc-flag');
      value = code - zero;
      i++;
      return true;
    },
    number() {
      const from = i;
      let code = text.charCodeAt(i);
      const isNegative = code === minus;
      if (isNegative || code === plus) code = text.charCodeAt(++i);
      let mantissa = 0,
        digits = 0,
        decimals = 0;
      while (code >= zero && code <= nine) {
        mantissa = mantissa * 10 + (code - zero);
        digits++;
        code = text.charCodeAt(++i);
      }
      if (code === dot && (digits > 0 || isDigit(text.charCodeAt(i + 1)))) {
        code = text.charCodeAt(++i);
        while (code >= zero && code <= nine) {
          mantissa = mantissa * 10 + (code - zero);
          digits++;
          decimals++;
          code = text.charCodeAt(++i);
        }
      }
      if (digits === 0) {
        i = from;
        return fail(i < end ? 'number-expected' : 'ends-early');
      }
      const hasExponent = (code | 0x20) === letterE && skipExponent();
      // Fifteen digits and a power of ten up to 22 are exact, so one division rounds once, as Number() does.
      value =
        hasExponent || digits > 15 || decimals > 22
          ? Number(text.slice(from, i))
          : (isNegative ? -mantissa : mantissa) / powersOfTen[decimals]!;
      return Math.abs(value) < tooLarge || fail('number-too-large');
    },
    value: () => value,
    reason: () => reason,
  };

  function skipExponent(): boolean {
    let j = i + 1;
    const sign = text.charCodeAt(j);
    if (sign === minus || sign === plus) j++;
    if (!isDigit(text.charCodeAt(j))) return false;
    while (isDigit(text.charCodeAt(j))) j++;
    i = j;
    return true;
  }
}

/** 2.6e120: its square, and sums of such squares, are still finite. */
const tooLarge = 2 ** 400;
const [zero, nine, dot, comma, minus, plus, letterE] = [0x30, 0x39, 0x2e, 0x2c, 0x2d, 0x2b, 0x65];
const powersOfTen: readonly number[] = Array.from({ length: 23 }, (_, n) => Number(`1e${n}`));
const isDigit = (code: number): boolean => code >= zero && code <= nine;
const isSpace = (code: number): boolean =>
  code === 0x20 || code === 0x0a || code === 0x09 || code === 0x0d || code === 0x0c;
const startsNumber = (code: number): boolean =>
  isDigit(code) || code === dot || code === minus || code === plus;
