import { segmentLength } from '../curve/arc-length.js';
import { pointAt, type Segment } from '../curve/segment.js';
import { PatternError } from '../errors.js';
import { nearestOnPath } from '../path/nearest.js';
import type { Path } from '../path/path.js';
import type { Edge, OutlinePart } from '../pattern/types.js';
import { visibleLength } from '../tolerance.js';
import { type CuttingLine, cuttingLine } from './cutting-line.js';

/** The cutting line of an outline by the allowances that were drawn with it; none where it can have none. */
export function redrawn(
  parts: readonly OutlinePart[],
  allowance: (edge: Edge) => number,
): CuttingLine | undefined {
  const outline = {
    parts: parts.map(part => (part.type === 'edge' ? { ...part, allowance: allowance(part) } : part)),
  };
  const cutting = { count: 1, mirrored: false, fabric: '' };
  try {
    return cuttingLine({ name: '', title: '', outline, notches: [], lines: [], marks: [], cutting });
  } catch (error) {
    if (error instanceof PatternError) return undefined;
    throw error;
  }
}

/** mm of stretches that can be seen to lie off a line. */
export const lengthOff = (stretches: readonly Segment[], line: Path): number =>
  stretches.reduce((sum, segment) => {
    const length = segmentLength(segment);
    const steps = Math.max(Math.ceil(length / sampleStep), 1);
    let off = 0;
    for (let i = 0; i < steps; i++)
      if (nearestOnPath(line, pointAt(segment, (i + 0.5) / steps)).distance > visibleLength) off++;
    return sum + (off / steps) * length;
  }, 0);

/** mm from one place that is looked at to the next. */
const sampleStep = 4;
