import { intersectSegments } from '../curve/intersect.js';
import { forEachNearPair } from '../path/near-segments.js';
import type { Point } from '../vector.js';
import { type Position, pathOfStrands, type Strand } from './strand.js';

/** Two places of two chains that are one point; `overlap` marks an end of a stretch they share. */
export interface Meeting {
  readonly a: Position;
  readonly b: Position;
  readonly point: Point;
  readonly overlap?: true;
}

/** Every place where two chains meet; one at a joint of a chain more than once. */
export function meetingsOf(first: readonly Strand[], second: readonly Strand[]): readonly Meeting[] {
  const found: Meeting[] = [];
  forEachNearPair(pathOfStrands(first), pathOfStrands(second), (i, k) => {
    for (const { ta, tb, ...rest } of intersectSegments(first[i]!.segment, second[k]!.segment))
      found.push({ ...rest, a: i + ta, b: k + tb });
    return false;
  });
  return found;
}
