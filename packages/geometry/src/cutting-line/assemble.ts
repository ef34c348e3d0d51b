import { endOf, isLine, type Segment, startOf } from '../curve/segment.js';
import { smoothJoint } from '../tolerance.js';
import { add, distance, lerp, type Point, subtract } from '../vector.js';
import type { Joint } from './joint.js';
import type { Run } from './run.js';
import { chainEnd, chainStart, isBefore, type Strand, strandsBetween } from './strand.js';

/** An inner corner on a chain: what is snipped to, from the place on the chain where the cutting line turns. */
export interface SnipMark {
  readonly index: number;
  readonly to: Point;
}

/** Runs and the joints between them as one chain. */
export interface Chain {
  readonly strands: readonly Strand[];
  readonly snips: readonly SnipMark[];
}

/** The part of a run's parallel that its two joints leave; undefined where they overlap. */
export function keptPart(
  run: Run,
  joint: Joint | undefined,
  next: Joint | undefined,
): readonly Strand[] | undefined {
  if (!joint?.after && !next?.before) return run.parallel;
  const from = joint?.after ?? chainStart;
  const to = next?.before ?? chainEnd(run.parallel);
  return isBefore(from, to) ? strandsBetween(run.parallel, from, to) : undefined;
}

/** Lays kept parts and bridges end to end: `joints[i]` follows `parts[i]`. */
export function assembled(
  parts: readonly (readonly Strand[])[],
  joints: readonly (Joint | undefined)[],
): Chain {
  const strands: Strand[] = [];
  const snips: SnipMark[] = [];
  for (const [i, part] of parts.entries()) {
    strands.push(...part);
    const joint = joints[i];
    if (!joint) continue;
    if (joint.snip) snips.push({ index: strands.length + joint.snip.after, to: joint.snip.to });
    strands.push(...joint.bridge);
  }
  return { strands, snips };
}

/** The same closed chain with each start exactly on the end before it; ends within `smoothJoint` meet half way. */
export function closedUp(strands: readonly Strand[]): readonly Strand[] {
  const n = strands.length;
  const joints = strands.map((strand, i) => {
    const end = endOf(strand.segment),
      start = startOf(strands[(i + 1) % n]!.segment);
    return distance(end, start) <= smoothJoint ? lerp(end, start, 1 / 2) : end;
  });
  return strands.map((strand, i) => {
    const from = joints.at(i - 1)!,
      to = joints[i]!;
    if (same(from, startOf(strand.segment)) && same(to, endOf(strand.segment))) return strand;
    return { ...strand, segment: stretched(strand.segment, from, to) };
  });
}

const same = (a: Point, b: Point): boolean => a.x === b.x && a.y === b.y;

/** A segment whose ends are moved a little, the handles with them. */
export function stretched(segment: Segment, from: Point, to: Point): Segment {
  if (isLine(segment)) return [from, to];
  const [p, q, r, s] = segment;
  return [from, add(q, subtract(from, p)), add(r, subtract(to, s)), to];
}
