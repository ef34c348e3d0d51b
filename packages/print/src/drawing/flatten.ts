import type { Path, Point } from '@paperhinge/geometry';
import { pointAt, startOf } from '@paperhinge/geometry/curves';
import { pathEnd } from '@paperhinge/geometry/paths';
import { chordSteps } from './chord-steps.js';

/** mm. Layout works on chords this near the curve: a tenth of the clearance kept round a label. */
const chordError = 0.08;

/** Points along a path, its start and end included; the chords between them stay within `chordError` of it. */
export function flattened(path: Path, error = chordError): readonly Point[] {
  const points: Point[] = [];
  for (const segment of path.segments) {
    points.push(startOf(segment));
    const steps = Math.min(chordSteps(segment, error), mostSteps);
    for (let i = 1; i < steps; i++) points.push(pointAt(segment, i / steps));
  }
  points.push(pathEnd(path));
  return points;
}

/** A curve so large that it would need more is drawn coarser: layout only asks where there is room. */
const mostSteps = 400;
