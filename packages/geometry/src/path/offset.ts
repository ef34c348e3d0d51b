import { offsetSegment } from '../curve/offset.js';
import type { Segment } from '../curve/segment.js';
import { fitTolerance } from '../tolerance.js';
import type { Path } from './path.js';

/** The parallel of one segment of a path: which segment, and its parts in order of travel. */
export interface SegmentOffset {
  readonly source: number;
  readonly segments: readonly Segment[];
}

/** {@link offsetSegment} of each segment of a path, neither joined nor trimmed where segments meet. */
export const offsetPath = (path: Path, d: number, tolerance = fitTolerance): readonly SegmentOffset[] =>
  path.segments.map((segment, source) => ({ source, segments: offsetSegment(segment, d, tolerance) }));
