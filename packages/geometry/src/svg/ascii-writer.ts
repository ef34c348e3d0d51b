// Of every browser and of Node.js, though not of the language.
declare const TextDecoder: new () => { decode(bytes: Uint8Array): string };

/** Decimals of a millimetre that are written: what moved rigidly reads back as long as it was, to 1e-9 mm. */
const writtenDecimals = 10;
const perUnit = 10 ** writtenDecimals;
export const lastDecimal = 1 / perUnit;
/** Beyond it, ten decimals and the digits before them no longer fit a number exactly. */
const largestExact = Number.MAX_SAFE_INTEGER / perUnit;

/** Writes a text of ASCII characters into bytes, which is several times faster than adding up strings. */
export interface AsciiWriter {
  /** One character by its code. */
  character(code: number): void;
  /** A number as SVG takes it: at most ten decimals, none of them idle, never an exponent. */
  number(value: number): void;
  /** Empties the writer. */
  begin(): void;
  /** What was written since it was emptied. */
  text(): string;
}

export function asciiWriter(): AsciiWriter {
  const line: Line = { bytes: new Uint8Array(4096), end: 0 };
  return {
    character(code) {
      reserve(line);
      line.bytes[line.end++] = code;
    },
    number(value) {
      reserve(line);
      if (Math.abs(value) < largestExact) putExact(line, value);
      else
        for (const c of longText(value)) {
          reserve(line);
          line.bytes[line.end++] = c.charCodeAt(0);
        }
    },
    begin() {
      line.end = 0;
    },
    text: () => decoder.decode(line.bytes.subarray(0, line.end)),
  };
}

/** Bytes, of which the first `end` are written. */
interface Line {
  bytes: Uint8Array;
  end: number;
}

/** Room for the longest number and what stands before it. */
function reserve(line: Line): void {
  if (line.end + longest <= line.bytes.length) return;
  const larger = new Uint8Array(2 * line.bytes.length);
  larger.set(line.bytes);
  line.bytes = larger;
}

/** A number whose ten decimals are exact. */
function putExact(line: Line, value: number): void {
  const { bytes } = line;
  const scaled = Math.round(Math.abs(value) * perUnit);
  if (value < 0 && scaled > 0) bytes[line.end++] = minus;
  // `| 0` keeps the parts small integers for the engine, too: they are counted out fastest.
  const whole = (scaled / perUnit) | 0;
  const decimals = scaled - whole * perUnit;
  if (whole < 10) bytes[line.end++] = zero + whole;
  else
    putDigits(line, whole, whole < 100 ? 2 : whole < 1000 ? 3 : whole < 10_000 ? 4 : whole < 100_000 ? 5 : 6);
  if (decimals === 0) return;
  bytes[line.end++] = dot;
  const first = (decimals / 1e8) | 0;
  const rest = (decimals - first * 1e8) | 0;
  putDigits(line, first, 2);
  if (rest > 0) {
    const second = (rest / 10_000) | 0;
    putFourDigits(line, second);
    if (rest > second * 10_000) putFourDigits(line, rest - second * 10_000);
  }
  while (bytes[line.end - 1] === zero) line.end--;
}

/** The last `count` digits of a whole number. */
function putDigits(line: Line, n: number, count: number): void {
  const { bytes, end } = line;
  let rest = n | 0;
  for (let i = end + count - 1; i >= end; i--) {
    const tenth = (rest / 10) | 0;
    bytes[i] = zero + rest - 10 * tenth;
    rest = tenth;
  }
  line.end = end + count;
}

function putFourDigits(line: Line, n: number): void {
  const { bytes, end } = line;
  const from = 4 * n;
  bytes[end] = groups[from]!;
  bytes[end + 1] = groups[from + 1]!;
  bytes[end + 2] = groups[from + 2]!;
  bytes[end + 3] = groups[from + 3]!;
  line.end = end + 4;
}

/** Whole numbers of more than 21 digits are beyond `toFixed`. */
const longText = (value: number): string =>
  Math.abs(value) < 1e21
    ? value.toFixed(writtenDecimals).replace(/\.?0+$/, '')
    : Number.isFinite(value)
      ? BigInt(value).toString()
      : String(value);

const [zero, minus, dot] = [0x30, 0x2d, 0x2e];
/** Bytes: a sign, six digits, the point, ten decimals, with some to spare. */
const longest = 32;
const decoder = new TextDecoder();
/** The digits of every whole number below ten thousand, four bytes each. */
const groups = Uint8Array.from(
  { length: 40_000 },
  (_, i) => 0x30 + (Math.floor(i / 4 / 10 ** (3 - (i % 4))) % 10),
);
