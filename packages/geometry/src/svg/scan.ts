import type { FaultReason } from './tellings.js';

/** How far a text of SVG's attribute grammars has been read, and what was read last. */
export interface Reading {
  readonly text: string;
  /** Characters before the place reached. */
  index: number;
  /** The number or flag read last. */
  value: number;
  /** Why the last read failed, for a telling. */
  reason: FaultReason;
  /** The last `readSeparatorBeforeNumber` stepped over a comma and found no number behind it. */
  isCommaDangling: boolean;
}

export const readingOf = (text: string): Reading => ({
  text,
  index: 0,
  value: 0,
  reason: 'number-expected',
  isCommaDangling: false,
});

export const isAtEnd = (read: Reading): boolean => read.index >= read.text.length;

export function readSpace(read: Reading): void {
  const { text } = read;
  let i = read.index;
  while (isSpace(text.charCodeAt(i))) i++;
  read.index = i;
}

/** White space and at most one comma. */
export function readSeparator(read: Reading): void {
  readSpace(read);
  if (read.text.charCodeAt(read.index) !== comma) return;
  read.index++;
  readSpace(read);
}

/** Steps to a further number of the same command, over a comma if need be; false where none follows. */
export function readSeparatorBeforeNumber(read: Reading): boolean {
  readSpace(read);
  const hasComma = read.text.charCodeAt(read.index) === comma;
  if (hasComma) {
    read.index++;
    readSpace(read);
    read.reason = 'number-after-comma';
  }
  const follows = startsNumber(read.text.charCodeAt(read.index));
  read.isCommaDangling = hasComma && !follows;
  return follows;
}

/** A single 0 or 1. */
export function readFlag(read: Reading): boolean {
  const code = read.text.charCodeAt(read.index);
  if (code !== zero && code !== zero + 1) return failed(read, 'arc-flag');
  read.value = code - zero;
  read.index++;
  return true;
}

/** Reads a number by longest match; false where there is none or it is beyond all drawing (1e120). */
export function readNumber(read: Reading): boolean {
  const { text, index: from } = read;
  let i = from,
    code = text.charCodeAt(i);
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
  if (digits === 0) return failed(read, from < text.length ? 'number-expected' : 'ends-early');
  const end = (code | 0x20) === letterE ? endOfExponent(text, i) : i;
  // Fifteen digits and a power of ten up to 22 are exact, so one division rounds once, as Number() does.
  const isExact = end === i && digits <= 15 && decimals <= 22;
  const size = mantissa / powersOfTen[isExact ? decimals : 0]!;
  read.value = isExact ? (isNegative ? -size : size) : Number(text.slice(from, end));
  read.index = end;
  return Math.abs(read.value) < tooLarge || failed(read, 'number-too-large');
}

/** Behind the exponent whose letter stands at `i`; `i` itself where no digits follow it. */
function endOfExponent(text: string, i: number): number {
  const sign = text.charCodeAt(i + 1);
  const from = sign === minus || sign === plus ? i + 2 : i + 1;
  let end = from;
  while (isDigit(text.charCodeAt(end))) end++;
  return end > from ? end : i;
}

function failed(read: Reading, reason: FaultReason): false {
  read.reason = reason;
  return false;
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
