import { pathEnd, pathStart } from '../path/path.js';
import type { Pattern, Piece } from '../pattern/types.js';
import { isSamePoint } from '../same-point.js';
import type { Finding } from '../telling.js';
import { armAfter, armBefore } from './arm.js';
import { overlaps } from './assemble.js';
import { type CornerPlan, cornerPlan } from './corner-rule.js';
import { canBeFolded } from './dart-fold.js';
import { bridgedMouth, notShaped } from './findings.js';
import { foldJoint } from './fold-joint.js';
import type { Joint } from './joint.js';
import { mirroredJoint } from './mirrored-joint.js';
import { isRun, type Node } from './node.js';
import { plainJoint, untrimmedJoint } from './plain-joint.js';
import { canBeLaid } from './pleat-fold.js';
import { pressedTowards } from './pressing.js';
import { type Run, runOf, runsOf } from './run.js';

/** The outline as runs, folded darts and pleats; the mouth of one that cannot be folded becomes a run. */
export function nodesOf(piece: Piece, findings: Finding[]): readonly Node[] {
  const { parts } = piece.outline;
  const edgeRuns = parts.map(part => (part.type === 'edge' ? runsOf(part) : []));
  return parts.flatMap((part, i): readonly Node[] => {
    if (part.type === 'edge') return edgeRuns[i]!;
    const neighbours = [edgeRuns.at(i - 1)!.at(-1), edgeRuns[(i + 1) % parts.length]![0]];
    const widest = Math.max(...neighbours.map(run => run?.allowance ?? 0));
    const [before, after] = neighbours;
    if (part.type === 'pleat') {
      if (before && after && canBeLaid(part, armBefore(before), armAfter(after))) return [{ part }];
      return [runOf(part.name, part.mouth.segments, widest)];
    }
    const a = pathStart(part.legs[0]),
      b = pathEnd(part.legs[1]);
    if (isSamePoint(a, b)) return [];
    const pressed = pressedTowards(part, piece);
    if (before && after && canBeFolded(part, pressed, armBefore(before), armAfter(after)))
      return [{ part, pressed }];
    findings.push(bridgedMouth(piece, part));
    return [runOf(part.name, [[a, b]], widest)];
  });
}

/** The joint after each node, where both it and the next are runs. */
export function plannedJoints(
  ring: readonly Node[],
  piece: Piece,
  pattern: Pattern | undefined,
  findings: Finding[],
): readonly (Joint | undefined)[] {
  const next = (i: number): Node => ring[(i + 1) % ring.length]!;
  const planned = ring.map((before, i) => {
    const after = next(i);
    if (!isRun(before) || !isRun(after)) return undefined;
    const joint = jointBy(cornerPlan(before, after, piece, pattern), before, after);
    if (!joint) findings.push(notShaped(piece, before, after));
    return joint ?? plainJoint(before, after);
  });
  return withoutOverlaps(ring, planned);
}

/** Where the two joints of a run want more of its parallel than there is, they are led over their corners instead. */
export function withoutOverlaps(
  ring: readonly Node[],
  joints: readonly (Joint | undefined)[],
): readonly (Joint | undefined)[] {
  const n = ring.length;
  const result = [...joints];
  for (const [i, node] of ring.entries()) {
    const previous = (i + n - 1) % n;
    if (!isRun(node) || !overlaps(node.parallel, result[previous], result[i])) continue;
    // One joint alone never wants more than there is: both are there, each between two runs.
    for (const k of [previous, i]) result[k] = untrimmedJoint(ring[k] as Run, ring[(k + 1) % n] as Run);
  }
  return result;
}

/** Nothing where an end cannot be shaped as planned. */
function jointBy(plan: CornerPlan, before: Run, after: Run): Joint | undefined {
  switch (plan.form) {
    case 'plain':
      return plainJoint(before, after);
    case 'at-fold':
      return foldJoint(before, after, plan.fold);
    case 'mirrored':
      return mirroredJoint(before, after, plan.shaped);
  }
}
