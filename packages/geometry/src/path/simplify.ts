import { segmentLength } from '../curve/arc-length.js';
import { endOf, isLine, line, type Segment, startOf, tangentAt } from '../curve/segment.js';
import { requireTolerance } from '../curve/sound.js';
import { coincidenceTolerance, cornerTurn } from '../tolerance.js';
import { angleBetween, cross, distance, type Point, subtract, unit } from '../vector.js';
import { fewestCubics } from './fit.js';
import type { Path } from './path.js';
import { smoothSource } from './smooth-source.js';

/**
 * The same path with fewer segments, nowhere farther than `tolerance` mm from it. Corners stay: turns over
 * `cornerTurn`, and lesser kinks between segments so long that no smooth curve within the tolerance passes them.
 * Straight runs become one line. Where fitting would not save a segment the path's own are kept.
 */
export function simplifyPath(path: Path, tolerance: number): Path {
  requireTolerance(tolerance);
  const segments = path.segments.filter(s => segmentLength(s) > coincidenceTolerance);
  if (segments.length < 2) return path;
  const runs: Segment[][] = [[segments[0]!]];
  for (let i = 1; i < segments.length; i++)
    if (isCorner(segments[i - 1]!, segments[i]!, tolerance)) runs.push([segments[i]!]);
    else runs.at(-1)!.push(segments[i]!);
  return { segments: runs.flatMap(run => simplerRun(run, tolerance)) };
}

function isCorner(a: Segment, b: Segment, tolerance: number): boolean {
  const turn = Math.abs(angleBetween(tangentAt(a, 1), tangentAt(b, 0)));
  // A chord of length l that turns by φ at its end stands off its circle by l φ / 8.
  return turn > cornerTurn || (Math.min(segmentLength(a), segmentLength(b)) * turn) / 8 > 2 * tolerance;
}

function simplerRun(run: readonly Segment[], tolerance: number): readonly Segment[] {
  const from = startOf(run[0]!),
    to = endOf(run.at(-1)!);
  if (run.every(s => isLine(s)) && isStraight(from, to, run, tolerance)) return [line(from, to)];
  if (run.length === 1) return run;
  const fitted = fewestCubics(smoothSource({ segments: run }), tolerance).segments;
  return fitted.length < run.length ? fitted : run;
}

function isStraight(from: Point, to: Point, run: readonly Segment[], tolerance: number): boolean {
  const along = unit(subtract(to, from));
  return (
    distance(from, to) > 0 && run.every(s => Math.abs(cross(along, subtract(endOf(s), from))) <= tolerance)
  );
}
