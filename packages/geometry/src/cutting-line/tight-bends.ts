import { curvatureAt } from '../curve/curvature.js';
import { nearestOnSegment } from '../curve/nearest.js';
import { between, endOf, pointAt, reversed, startOf, tangentAt } from '../curve/segment.js';
import { smoothJoint } from '../tolerance.js';
import { add, leftOf, scale, subtract } from '../vector.js';
import type { Joint } from './joint.js';
import { isRun, type Node } from './node.js';
import { ledOverCorner } from './plain-joint.js';
import { type Run, turnBetween } from './run.js';
import { type Strand, straight } from './strand.js';

/** A ring and its joints with some bends left bare, those bends, and closed chains round what they cover. */
export interface BareRing {
  readonly ring: readonly Node[];
  readonly joints: readonly (Joint | undefined)[];
  readonly bends: readonly Run[];
  readonly covers: readonly (readonly Strand[])[];
}

/**
 * Winding numbers tell what allowances cover as long as neighbours' are alike. Beside a narrower neighbour, the parallel
 * of a bend that runs back on itself, beyond the bend's centre, would take away from what the neighbour covers. Such
 * bends are passed on the stitching line itself; what they cover, and the tips of outer corners beside them, is laid on
 * afterwards.
 */
export function withBareBends(ring: readonly Node[], joints: readonly (Joint | undefined)[]): BareRing {
  const next = (i: number): Node => ring[(i + 1) % ring.length]!;
  const bends = ring.filter((node, i): node is Run =>
    isTightBetweenNarrower(node, {
      before: ring.at(i - 1)!,
      into: joints.at(i - 1),
      after: next(i),
      out: joints[i],
    }),
  );
  const isBend = (node: Node): node is Run => bends.includes(node as Run);
  const passed = ring.map(node => (isBend(node) ? bare(node) : node));
  const tips: (readonly Strand[])[] = [];
  return {
    ring: passed,
    joints: joints.map((joint, i) => {
      const node = ring[i]!,
        after = next(i);
      if (!joint || !(isBend(node) || isBend(after))) return joint;
      // Only two runs have a joint between them.
      if (isOuter(node as Run, after as Run)) tips.push(tipOf(node as Run, after as Run, joint));
      return ledOverCorner(passed[i] as Run, passed[(i + 1) % ring.length] as Run, joint);
    }),
    bends,
    covers: [...bends.flatMap(coverOf), ...tips],
  };
}

/** What stands on either side of a node, and the joints between. */
interface Beside {
  readonly before: Node;
  readonly into: Joint | undefined;
  readonly after: Node;
  readonly out: Joint | undefined;
}

function isTightBetweenNarrower(node: Node, { before, into, after, out }: Beside): boolean {
  if (!isRun(node) || !isRun(before) || !isRun(after)) return false;
  const outer = [isOuter(before, node) && into, isOuter(node, after) && out].filter(joint => joint !== false);
  // What covers nothing loses nothing at an outer corner; of an end that is shaped, winding numbers alone know the ground.
  const isNarrower = ({ allowance }: Run): boolean =>
    allowance < node.allowance && (allowance > 0 || outer.length === 0);
  return (
    (isNarrower(before) || isNarrower(after)) &&
    outer.every(isPlain) &&
    // Where both its ends were cut away as such, what is left alone does not lead from one neighbour to the other.
    (node.parallel.some(strand => isBackwards(node, strand)) || (node.isStartCut && node.isEndCut))
  );
}

/** Whether a corner opens, so that a tip stands there. */
export const isOuter = (before: Run, after: Run): boolean => turnBetween(before, after) > smoothJoint;
const isPlain = (joint: Joint | undefined): boolean => !joint?.before && !joint?.after;

/** Whether a strand of a run's parallel lies beyond the centre of the bend beside it, where it runs against it. */
export const isBackwards = (run: Run, strand: Strand): boolean =>
  1 + run.allowance * curvatureAt(strand.beside!, footAt(run, strand, 1 / 2)) < 0;

const bare = (run: Run): Run => ({
  ...run,
  parallel: run.stitching.map(segment => ({ segment, of: run.of, shape: 'corner', beside: segment })),
});

/** What a bend covers: for each stretch of its parallel a closed chain round all that lies square to the bend before it. */
const coverOf = (run: Run): readonly (readonly Strand[])[] =>
  run.whole.map(strand => {
    const ground = between(strand.beside!, footAt(run, strand, 0), footAt(run, strand, 1));
    const back: Strand = { segment: reversed(ground), of: run.of, shape: 'corner' };
    return [
      strand,
      ...straight(endOf(strand.segment), startOf(back.segment), run.of),
      back,
      ...straight(endOf(back.segment), startOf(strand.segment), run.of),
    ];
  });

/** What the tip of an outer corner covers: round by the corner itself. */
const tipOf = (before: Run, after: Run, { bridge }: Joint): readonly Strand[] => {
  const from = endOf(before.parallel.at(-1)!.segment),
    to = startOf(after.parallel[0]!.segment);
  return [...bridge, ...straight(to, before.end, after.of), ...straight(before.end, from, before.of)];
};

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
