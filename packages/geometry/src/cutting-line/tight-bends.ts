import { lengthBetween } from '../curve/arc-length.js';
import { nearestOnSegment } from '../curve/nearest.js';
import { between, endOf, pointAt, reversed, startOf, tangentAt } from '../curve/segment.js';
import { smoothJoint } from '../tolerance.js';
import { add, dot, leftOf, scale, subtract } from '../vector.js';
import type { Joint } from './joint.js';
import { isRun, type Node } from './node.js';
import { ledOverCorner } from './plain-joint.js';
import { type Run, turnBetween } from './run.js';
import { type Strand, straight } from './strand.js';

/** A ring and its joints with some bends left bare, and those bends. */
export interface BareRing {
  readonly ring: readonly Node[];
  readonly joints: readonly (Joint | undefined)[];
  readonly bends: readonly Run[];
}

/**
 * Winding numbers tell what allowances cover as long as neighbours' are alike. Beside a narrower neighbour, the parallel
 * of a bend that runs back on itself, beyond the bend's centre, would take away from what the neighbour covers. Such
 * bends are passed on the stitching line itself, and what they cover is laid on afterwards ({@link coverOf}).
 */
export function withBareBends(ring: readonly Node[], joints: readonly (Joint | undefined)[]): BareRing {
  const next = (i: number): Node => ring[(i + 1) % ring.length]!;
  const bends = ring.filter((node, i): node is Run => isTightBetweenNarrower(node, ring.at(i - 1)!, next(i)));
  const isBend = (node: Node): node is Run => bends.includes(node as Run);
  const passed = ring.map(node => (isBend(node) ? bare(node) : node));
  return {
    ring: passed,
    joints: joints.map((joint, i) => {
      if (!joint || !(isBend(ring[i]!) || isBend(next(i)))) return joint;
      // Only two runs have a joint between them.
      return ledOverCorner(passed[i] as Run, passed[(i + 1) % ring.length] as Run, joint);
    }),
    bends,
  };
}

function isTightBetweenNarrower(node: Node, before: Node, after: Node): boolean {
  if (!isRun(node) || !isRun(before) || !isRun(after)) return false;
  const isNarrower = before.allowance < node.allowance || after.allowance < node.allowance;
  const isSunk = turnBetween(before, node) <= smoothJoint && turnBetween(node, after) <= smoothJoint;
  return isNarrower && isSunk && node.parallel.some(isBackwards);
}

/** Whether a strand of a parallel runs against what it lies beside. */
const isBackwards = ({ segment, beside }: Strand): boolean =>
  beside !== undefined &&
  dot(tangentAt(segment, 1 / 2), tangentAt(beside, nearestOnSegment(beside, pointAt(segment, 1 / 2)).t)) < 0;

const bare = (run: Run): Run => ({
  ...run,
  parallel: run.stitching.map(segment => ({ segment, of: run.of, shape: 'corner' })),
});

/** What a bend covers: for each stretch of its parallel a closed chain round all that lies square to the bend before it. */
export const coverOf = (run: Run): readonly (readonly Strand[])[] =>
  run.parallel.flatMap(strand => {
    const { segment, beside } = strand;
    if (!beside) return [];
    const [t0, t1] = [0, 1].map(t => footAt(run, strand, t)) as [number, number];
    const ground = between(beside, Math.min(t0, t1), Math.max(t0, t1));
    const back: Strand = { segment: t0 < t1 ? reversed(ground) : ground, of: run.of, shape: 'corner' };
    return [
      [
        strand,
        ...straight(endOf(segment), startOf(back.segment), run.of),
        back,
        ...straight(endOf(back.segment), startOf(segment), run.of),
      ],
    ];
  });

/** mm of a bend whose parallel runs back on itself. */
export const turnedBack = (run: Run): number =>
  run.parallel.filter(isBackwards).reduce((sum, strand) => {
    const [t0, t1] = [footAt(run, strand, 0), footAt(run, strand, 1)];
    return sum + lengthBetween(strand.beside!, Math.min(t0, t1), Math.max(t0, t1));
  }, 0);

/**
 * The parameter, on what a parallel lies beside, that a place of it lies square to. Where it crosses itself two are
 * equally near: its direction tells them apart.
 */
export function footAt({ allowance }: Run, { segment, beside }: Strand, t: number): number {
  const point = pointAt(segment, t),
    square = scale(leftOf(tangentAt(segment, t)), allowance);
  const [ahead, behind] = [subtract(point, square), add(point, square)].map(foot =>
    nearestOnSegment(beside!, foot),
  );
  return ahead!.distance <= behind!.distance ? ahead!.t : behind!.t;
}
