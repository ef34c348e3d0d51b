import { endOf, isLine, startOf } from '../curve/segment.js';
import type { Path } from '../path/path.js';
import { coincidenceTolerance } from '../tolerance.js';
import { distance, type Point } from '../vector.js';

/** Decimals of a millimetre that are written: what moved rigidly reads back as long as it was, to 1e-9 mm. */
const writtenDecimals = 10;
const perUnit = 10 ** writtenDecimals;
/** Beyond it, ten decimals and the digits before them no longer fit a number exactly. */
const largestExact = Number.MAX_SAFE_INTEGER / perUnit;

/** A number as SVG takes it: at most ten decimals, none of them idle, never an exponent. */
export function toSvgNumber(value: number): string {
  if (!(Math.abs(value) < largestExact)) return value.toFixed(writtenDecimals).replace(/\.?0+$/, '');
  const scaled = Math.round(Math.abs(value) * perUnit);
  if (scaled === 0) return '0';
  // `| 0` keeps the groups small integers for the engine, too: they turn to text fastest.
  const whole = (scaled / perUnit) | 0;
  const decimals = scaled - whole * perUnit;
  const sign = value < 0 ? '-' : '';
  if (decimals === 0) return sign + whole;
  const first = (decimals / 1e8) | 0;
  const rest = (decimals - first * 1e8) | 0;
  const second = (rest / 1e4) | 0;
  const third = rest - second * 1e4;
  if (rest === 0) return `${sign}${whole}.${two.trimmed[first]}`;
  return third === 0
    ? `${sign}${whole}.${two.whole[first]}${four.trimmed[second]}`
    : `${sign}${whole}.${two.whole[first]}${four.whole[second]}${four.trimmed[third]}`;
}

/** Every group of so many digits as text, whole and less its last zeros: looking them up doubles the speed of writing. */
function groupsOf(digits: number) {
  const whole: readonly string[] = Array.from({ length: 10 ** digits }, (_, n) =>
    String(n).padStart(digits, '0'),
  );
  return { whole, trimmed: whole.map(text => text.replace(/0+$/, '')) };
}
const two = groupsOf(2),
  four = groupsOf(4);

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
