import { endOf, isLine, startOf } from '../curve/segment.js';
import type { Path } from '../path/path.js';
import { coincidenceTolerance } from '../tolerance.js';
import { distance, type Point } from '../vector.js';

/** Decimals of a millimetre that are written: rounding then stays a hundred times below the 1e-6 mm promised. */
const writtenDecimals = 8;
const perUnit = 10 ** writtenDecimals;
/** Beyond it, eight decimals and the digits before them no longer fit a number exactly. */
const largestExact = Number.MAX_SAFE_INTEGER / perUnit;
/** Digits that one step of the writing takes; both halves are small integers, which turn to text fastest. */
const halfDecimals = writtenDecimals / 2;
const perHalf = 10 ** halfDecimals;

/** A number as SVG takes it: at most eight decimals, none of them idle, never an exponent. */
export function toSvgNumber(value: number): string {
  if (!(Math.abs(value) < largestExact)) return value.toFixed(writtenDecimals).replace(/\.?0+$/, '');
  const scaled = Math.round(Math.abs(value) * perUnit);
  if (scaled === 0) return '0';
  // `| 0` keeps the halves small integers for the engine, too.
  const whole = (scaled / perUnit) | 0;
  const decimals = scaled - whole * perUnit;
  const sign = value < 0 ? '-' : '';
  if (decimals === 0) return sign + whole;
  const first = (decimals / perHalf) | 0;
  const second = (decimals - first * perHalf) | 0;
  return second === 0
    ? `${sign}${whole}.${trimmed[first]}`
    : `${sign}${whole}.${fourDigits[first]}${trimmed[second]}`;
}

/** Every half of the decimals as text, whole and less its last zeros: looking them up doubles the speed of writing. */
const fourDigits: readonly string[] = Array.from({ length: perHalf }, (_, n) =>
  String(n).padStart(halfDecimals, '0'),
);
const trimmed: readonly string[] = fourDigits.map(digits => digits.replace(/0+$/, ''));

/**
 * A path as SVG path data in absolute coordinates, mm. A chain that leaps (an edge interrupted by a dart) is
 * lifted there; a single chain that comes back to its start is closed with Z.
 */
export function toPathData(path: Path): string {
  let data = '';
  let here: Point | undefined;
  let strokes = 0;
  for (const segment of path.segments) {
    const start = startOf(segment);
    if (here === undefined || (here !== start && distance(here, start) > coincidenceTolerance)) {
      data += `${strokes > 0 ? ' ' : ''}M${pair(start)}`;
      strokes++;
    }
    data += isLine(segment)
      ? ` L${pair(segment[1])}`
      : ` C${pair(segment[1])} ${pair(segment[2])} ${pair(segment[3])}`;
    here = endOf(segment);
  }
  const isClosed =
    strokes === 1 && here && distance(here, startOf(path.segments[0]!)) <= coincidenceTolerance;
  return isClosed ? `${data} Z` : data;
}

const pair = (p: Point): string => `${toSvgNumber(p.x)} ${toSvgNumber(p.y)}`;
