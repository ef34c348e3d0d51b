import { endOf, isLine, type Segment, startOf } from '../curve/segment.js';
import type { Path } from '../path/path.js';
import { coincidenceTolerance } from '../tolerance.js';
import { distance, type Point } from '../vector.js';

/** Decimals of a millimetre that are written: rounding then stays a hundred times below the 1e-6 mm promised. */
const writtenDecimals = 8;
const scale = 10 ** writtenDecimals;

/** A number as SVG takes it, at most eight decimals, none of them idle. */
export function toSvgNumber(value: number): string {
  const rounded = Math.round(value * scale) / scale;
  return rounded === 0
    ? '0'
    : Math.abs(rounded) < smallestPlain
      ? rounded.toFixed(writtenDecimals)
      : String(rounded);
}
/** Below this JavaScript writes an exponent: right in SVG, but hard on the eye. */
const smallestPlain = 10 ** -6;

/**
 * A path as SVG path data in absolute coordinates, mm. A chain that leaps (an edge interrupted by a dart) is
 * lifted there; a single chain that comes back to its start is closed with Z.
 */
export function toPathData(path: Path): string {
  const words: string[] = [];
  let here: Point | undefined;
  let strokes = 0;
  for (const segment of path.segments) {
    if (here === undefined || distance(here, startOf(segment)) > coincidenceTolerance) {
      words.push(`M${pair(startOf(segment))}`);
      strokes++;
    }
    words.push(command(segment));
    here = endOf(segment);
  }
  const first = path.segments[0];
  if (strokes === 1 && here && distance(here, startOf(first!)) <= coincidenceTolerance) words.push('Z');
  return words.join(' ');
}

const pair = (p: Point): string => `${toSvgNumber(p.x)} ${toSvgNumber(p.y)}`;
const command = (segment: Segment): string =>
  isLine(segment) ? `L${pair(segment[1])}` : `C${pair(segment[1])} ${pair(segment[2])} ${pair(segment[3])}`;
