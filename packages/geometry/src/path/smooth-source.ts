import { parameterAtLength, segmentLength } from '../curve/arc-length.js';
import type { Station } from '../curve/hermite-fit.js';
import { between, pointAt, type Segment, tangentAt } from '../curve/segment.js';
import { endTangent, type Path, pathEnd } from './path.js';

/** A chain seen as a function of a share from 0 to 1 of its length, for fitting. */
export interface SmoothSource {
  readonly length: number;
  stationAt(along: number): Station;
  /** The chain's own segments between two lengths. */
  stretch(from: number, to: number): readonly Segment[];
}

/** Lengths are looked up by halving, so that a chain of many segments is not walked for each station. */
export function smoothSource(path: Path): SmoothSource {
  const starts = [0];
  for (const segment of path.segments) starts.push(starts.at(-1)! + segmentLength(segment));
  const length = starts.at(-1)!;
  const indexAt = (along: number): number => {
    let low = 0,
      high = path.segments.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (starts[middle]! <= along) low = middle;
      else high = middle - 1;
    }
    return low;
  };
  const stretch = (from: number, to: number): readonly Segment[] => {
    const first = indexAt(from),
      last = indexAt(to);
    return path.segments.slice(first, last + 1).flatMap((segment, i) => {
      const t0 = i === 0 ? parameterAtLength(segment, from - starts[first]!) : 0;
      const t1 = first + i === last ? parameterAtLength(segment, to - starts[last]!) : 1;
      return t1 > t0 ? [between(segment, t0, t1)] : [];
    });
  };
  const stationAt = (along: number): Station => {
    if (along >= length) return { point: pathEnd(path), direction: endTangent(path) };
    const index = indexAt(along);
    const segment = path.segments[index]!;
    const t = parameterAtLength(segment, along - starts[index]!);
    return { point: pointAt(segment, t), direction: tangentAt(segment, t) };
  };
  return { length, stationAt, stretch };
}
