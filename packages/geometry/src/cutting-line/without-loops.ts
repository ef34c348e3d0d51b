import { segmentLength } from '../curve/arc-length.js';
import type { Segment } from '../curve/segment.js';
import { subpath } from '../path/length.js';
import type { Path } from '../path/path.js';
import { selfCrossings } from '../region/self-crossings.js';
import { coincidenceTolerance } from '../tolerance.js';

/**
 * An open path with its loops left out, cut at each place that it passes twice: the parallel of a line that bends
 * more tightly than its distance, trimmed to what lies clear of the line. The same path where it has no loop.
 */
export function pathWithoutLoops(path: Path): Path {
  const kept: Segment[] = [];
  let from = 0;
  for (const { alongA, alongB } of selfCrossings(path)) {
    if (alongA < from - coincidenceTolerance) continue;
    kept.push(...subpath(path, from, alongA).segments);
    from = alongB;
  }
  if (from === 0) return path;
  kept.push(...subpath(path, from, Number.POSITIVE_INFINITY).segments);
  return { segments: kept.filter(segment => segmentLength(segment) > coincidenceTolerance) };
}
