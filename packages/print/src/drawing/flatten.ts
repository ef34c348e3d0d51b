import {
  isLine,
  norm,
  type Path,
  type Point,
  pathEnd,
  pointAt,
  type Segment,
  secondDerivativeAt,
  startOf,
} from '@paperhinge/geometry';

/** mm. Layout works on chords this near the curve: a tenth of the clearance kept round a label. */
export const chordError = 0.08;

/** Points along a path, its start and end included; the chords between them stay within `chordError` of it. */
export function flattened(path: Path, error = chordError): readonly Point[] {
  const points: Point[] = [];
  for (const segment of path.segments) {
    points.push(startOf(segment));
    const steps = stepsFor(segment, error);
    for (let i = 1; i < steps; i++) points.push(pointAt(segment, i / steps));
  }
  points.push(pathEnd(path));
  return points;
}

/** A chord over a parameter step h strays by at most h² |B″| / 8; |B″| of a cubic is largest at an end. */
function stepsFor(segment: Segment, error: number): number {
  if (isLine(segment)) return 1;
  const bend = Math.max(norm(secondDerivativeAt(segment, 0)), norm(secondDerivativeAt(segment, 1)));
  return Math.min(Math.max(Math.ceil(Math.sqrt(bend / (8 * error))), 1), 400);
}
