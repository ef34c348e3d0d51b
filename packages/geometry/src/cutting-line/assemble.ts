import { endOf, startOf } from '../curve/segment.js';
import { drawnTo } from '../region/arcs.js';
import { smoothJoint } from '../tolerance.js';
import { distance, lerp, type Point } from '../vector.js';
import type { Joint } from './joint.js';
import { type Strand, strandsBetween } from './strand.js';

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

/** What the joints before and after a chain leave of it. */
export const keptBetween = (
  strands: readonly Strand[],
  joint: Joint | undefined,
  next: Joint | undefined,
): readonly Strand[] => strandsBetween(strands, joint?.after ?? 0, strands.length - (next?.before ?? 0));

/** Whether the joints before and after a chain want more of it than there is. */
export const overlaps = (
  strands: readonly Strand[],
  joint: Joint | undefined,
  next: Joint | undefined,
): boolean => (joint?.after ?? 0) + (next?.before ?? 0) > strands.length;

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
  return strands.map((strand, i) => ({
    ...strand,
    segment: drawnTo(strand.segment, joints.at(i - 1)!, joints[i]!),
  }));
}
