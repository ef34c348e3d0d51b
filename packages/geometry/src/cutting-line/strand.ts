import type { Affine } from '../affine.js';
import { segmentLength } from '../curve/arc-length.js';
import {
  between,
  type Line,
  pointAt,
  reversed,
  type Segment,
  tangentAt,
  transformed,
} from '../curve/segment.js';
import type { Path } from '../path/path.js';
import { isSamePoint } from '../same-point.js';
import { coincidenceTolerance } from '../tolerance.js';
import type { Point } from '../vector.js';

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
  /** Of a parallel, and of a bend left bare: the segment of the stitching line that it lies beside, or on. */
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

/** The strands' segments, end to end. */
export const pathOfStrands = (strands: readonly Strand[]): Path => ({
  segments: strands.map(s => s.segment),
});

/** A place on a chain: the index of the strand plus the parameter on it; seen the other way, the chain's length less that. */
export type Position = number;

/** The point of a chain at a place on it. */
export const pointOnChain = (strands: readonly Strand[], place: Position): Point =>
  onChain(strands, place, pointAt);

/** The unit direction of a chain at a place on it. */
export const tangentOnChain = (strands: readonly Strand[], place: Position): Point =>
  onChain(strands, place, tangentAt);

function onChain(
  strands: readonly Strand[],
  place: Position,
  of: (segment: Segment, t: number) => Point,
): Point {
  const i = Math.min(Math.floor(place), strands.length - 1);
  return of(strands[i]!.segment, place - i);
}

/** A straight strand, or none where the ends are one point. */
export const straight = (
  from: Point,
  to: Point,
  of: string,
  shape: StretchShape = 'corner',
): readonly Strand[] => (isSamePoint(from, to) ? [] : [{ segment: [from, to] as Line, of, shape }]);

export const strandsReversed = (strands: readonly Strand[]): readonly Strand[] =>
  strands.map(s => ({ ...s, segment: reversed(s.segment) })).reverse();

export const strandsTransformed = (strands: readonly Strand[], map: Affine): readonly Strand[] =>
  strands.map(s => ({ ...s, segment: transformed(s.segment, map) }));

/** The part of a chain from one place to another, on it; what is shorter than a coincidence vanishes. */
export function strandsBetween(strands: readonly Strand[], from: Position, to: Position): readonly Strand[] {
  const kept: Strand[] = [];
  for (let i = Math.floor(from); i < to; i++) {
    const strand = strands[i]!;
    const t0 = Math.max(0, from - i),
      t1 = Math.min(1, to - i);
    if (t1 - t0 === 1) kept.push(strand);
    else {
      const segment = between(strand.segment, t0, t1);
      if (segmentLength(segment) > coincidenceTolerance) kept.push({ ...strand, segment });
    }
  }
  return kept;
}

/** The same segment with its start moved onto `point`, from which it was no more than a rounding away. */
export function startingAt(segment: Segment, point: Point): Segment {
  const [, ...rest] = segment;
  return [point, ...rest] as unknown as Segment;
}
