import { endOf, isLine, startOf } from '../curve/segment.js';
import { requireSegment } from '../curve/sound.js';
import type { Path } from '../path/path.js';
import { coincidenceTolerance } from '../tolerance.js';
import { distance, type Point } from '../vector.js';
import { type AsciiWriter, asciiWriter } from './ascii-writer.js';

/** A number as SVG takes it: at most ten decimals, none of them idle, never an exponent. */
export function toSvgNumber(value: number): string {
  writer.begin();
  writer.number(value);
  return writer.text();
}

/**
 * A path as SVG path data in absolute coordinates, mm, to ten decimals. A chain that leaps (an edge interrupted by
 * a dart) is lifted there; a single chain that comes back to its start is closed with Z. A path of no segments is ''.
 * @throws PatternError `coordinate-out-of-range`, `not-a-segment`
 */
export function toPathData({ segments }: Path): string {
  writer.begin();
  let here: Point | undefined;
  let strokes = 0;
  for (const segment of segments) {
    requireSegment(segment);
    const start = startOf(segment);
    if (here === undefined || (here !== start && distance(here, start) > coincidenceTolerance)) {
      if (strokes > 0) writer.character(space);
      writer.character(letterM);
      writePoint(writer, start);
      strokes++;
    }
    writer.character(space);
    if (isLine(segment)) {
      writer.character(letterL);
      writePoint(writer, segment[1]);
    } else {
      writer.character(letterC);
      writePoint(writer, segment[1]);
      writer.character(space);
      writePoint(writer, segment[2]);
      writer.character(space);
      writePoint(writer, segment[3]);
    }
    here = endOf(segment);
  }
  const isClosed = strokes === 1 && here && distance(here, startOf(segments[0]!)) <= coincidenceTolerance;
  if (isClosed) {
    writer.character(space);
    writer.character(letterZ);
  }
  return writer.text();
}

/** One for all calls: each begins anew. */
const writer = asciiWriter();

function writePoint(to: AsciiWriter, p: Point): void {
  to.number(p.x);
  to.character(space);
  to.number(p.y);
}

const [space, letterM, letterL, letterC, letterZ] = [0x20, 0x4d, 0x4c, 0x43, 0x5a];
