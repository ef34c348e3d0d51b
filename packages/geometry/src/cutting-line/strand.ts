import type { Affine } from '../affine.js';
import { between, endOf, type Line, reversed, type Segment, startOf, transformed } from '../curve/segment.js';
import type { Path } from '../path/path.js';
import { coincidenceTolerance } from '../tolerance.js';
import { distance, type Point } from '../vector.js';

/**
 * What a part of the cutting line is: a `parallel` at an edge's allowance; what shapes a `corner` (a run-on end, a
 * cut tip, a step, a mirrored end); or the folded shape over the mouth of a `dart` or pleat.
 */
export type StretchShape = 'parallel' | 'corner' | 'dart';

/** One segment of a cutting line, with the name of the edge or dart it belongs to. */
export interface Strand {
  readonly segment: Segment;
  readonly of: string;
  readonly shape: StretchShape;
  /** Of a parallel: the segment of the stitching line that it lies beside. */
  readonly beside?: Segment;
}

/** A part of a cutting line, or of an outline's parallel, that belongs to one edge or dart. */
export interface Stretch {
  readonly of: string;
  readonly shape: StretchShape;
  readonly path: Path;
}

/** Neighbouring strands of one name and shape as one stretch. */
export function stretchesOf(strands: readonly Strand[]): readonly Stretch[] {
  const groups: Strand[][] = [];
  for (const strand of strands) {
    const group = groups.at(-1);
    if (group && group[0]!.of === strand.of && group[0]!.shape === strand.shape) group.push(strand);
    else groups.push([strand]);
  }
  return groups.map(group => ({
    of: group[0]!.of,
    shape: group[0]!.shape,
    path: { segments: group.map(s => s.segment) },
  }));
}

/** A place on a chain of segments. */
export interface Place {
  readonly index: number;
  readonly t: number;
}

/** Where a chain starts. */
export const chainStart: Place = { index: 0, t: 0 };

/** A place on a chain of `count` strands that runs the other way. */
export const turnedPlace = ({ index, t }: Place, count: number): Place => ({
  index: count - 1 - index,
  t: 1 - t,
});

/** Where a chain ends: where it starts, seen the other way. */
export const chainEnd = ({ length }: readonly Strand[]): Place => turnedPlace(chainStart, length);

/** A straight strand, or none where the ends are one point. */
export const straight = (
  from: Point,
  to: Point,
  of: string,
  shape: StretchShape = 'corner',
): readonly Strand[] =>
  distance(from, to) <= coincidenceTolerance ? [] : [{ segment: [from, to] as Line, of, shape }];

export const strandsReversed = (strands: readonly Strand[]): readonly Strand[] =>
  strands.map(s => ({ ...s, segment: reversed(s.segment) })).reverse();

export const strandsTransformed = (strands: readonly Strand[], map: Affine): readonly Strand[] =>
  strands.map(s => ({ ...s, segment: transformed(s.segment, map) }));

/** The part of a chain from one place to another that lies further on; ends nearer than a coincidence vanish. */
export function strandsBetween(strands: readonly Strand[], from: Place, to: Place): readonly Strand[] {
  const kept: Strand[] = [];
  for (let i = from.index; i <= to.index && i < strands.length; i++) {
    const strand = strands[i]!;
    const t0 = i === from.index ? from.t : 0,
      t1 = i === to.index ? to.t : 1;
    if (t0 <= 0 && t1 >= 1) kept.push(strand);
    else {
      const segment = between(strand.segment, t0, t1);
      if (distance(startOf(segment), endOf(segment)) > coincidenceTolerance || t1 - t0 > half)
        kept.push({ ...strand, segment });
    }
  }
  return kept;
}

/** Of a closed curve's parameter: a part this long is never a crumb, though its ends may lie together. */
const half = 0.5;

export const isBefore = (a: Place, b: Place): boolean =>
  a.index < b.index || (a.index === b.index && a.t <= b.t);

/** The same segment with its start moved onto `point`, from which it was no more than a rounding away. */
export function startingAt(segment: Segment, point: Point): Segment {
  const [, ...rest] = segment;
  return [point, ...rest] as unknown as Segment;
}
