import { endOf, startOf } from '../curve/segment.js';
import type { Path } from '../path/path.js';
import type { Dart, Piece, Pleat } from '../pattern/types.js';
import type { Finding } from '../telling.js';
import { type Arm, armAfter, armBefore } from './arm.js';
import { assembled, type Chain, keptPart, type SnipMark } from './assemble.js';
import { type FoldedMouth, foldedMouth } from './dart-fold.js';
import { mouthFindings } from './findings.js';
import type { Joint } from './joint.js';
import { type FoldedPart, isRun, type Node } from './node.js';
import { foldedPleat } from './pleat-fold.js';

import type { Run } from './run.js';
import {
  chainStart,
  isBefore,
  type Strand,
  straight,
  strandsBetween,
  strandsReversed,
  turnedPlace,
} from './strand.js';

/** The chains between folded darts and pleats, each from the node after one to the node before the next; one if there is none. */
export function chainsBetweenMouths(
  ring: readonly Node[],
  joints: readonly (Joint | undefined)[],
): readonly Chain[] {
  const n = ring.length;
  const first = ring.findIndex(node => !isRun(node)) + 1;
  const chains: Chain[] = [];
  let parts: (readonly Strand[])[] = [],
    after: (Joint | undefined)[] = [];
  for (let step = 0; step < n; step++) {
    const i = (first + step) % n;
    const node = ring[i]!;
    if (isRun(node)) {
      parts.push(keptPart(node, joints.at(i - 1), joints[i]) ?? node.parallel);
      after.push(joints[i]);
    }
    if (!isRun(node) || step === n - 1) {
      chains.push(assembled(parts, after));
      parts = [];
      after = [];
    }
  }
  return chains;
}

export interface Closed extends Chain {
  readonly folds: readonly Path[];
}

/** Closes the chains over the mouths of the darts and pleats between them. `chains[i]` ends at the i-th of the ring. */
export function overMouths(
  ring: readonly Node[],
  chains: readonly Chain[],
  piece: Piece,
  findings: Finding[],
): Closed {
  const mouthsOfRing = ring.flatMap(node => (isRun(node) ? [] : [node]));
  if (mouthsOfRing.length === 0) return { ...chains[0]!, folds: [] };
  // The first chain starts after the first mouth.
  const ordered = [...mouthsOfRing.slice(1), mouthsOfRing[0]!];
  const mouths = ordered.map((node, i) => {
    return mouthOf(node, ring, chains[i]!, chains[(i + 1) % chains.length]!);
  });
  // Two mouths that want more of the edge between them than there is: the first is cut straight across.
  for (const [i, chain] of chains.entries())
    if (!keptBetween(chain, mouths.at(i - 1), mouths[i])) mouths[i] = undefined;
  for (const [i, { part }] of ordered.entries()) findings.push(...mouthFindings(piece, part, mouths[i]));
  const strands: Strand[] = [];
  const snips: SnipMark[] = [];
  for (const [i, chain] of chains.entries()) {
    const into = mouths.at(i - 1),
      out = mouths[i];
    const kept = keptBetween(chain, into, out) ?? chain.strands;
    for (const mark of chain.snips) {
      const place = kept.indexOf(chain.strands[mark.index]!);
      const removed = into?.after?.index ?? 0;
      snips.push({ ...mark, index: strands.length + (place >= 0 ? place : mark.index - removed) });
    }
    strands.push(...kept);
    if (out) strands.push(...out.bridge);
    else strands.push(...straightMouth(ordered[i]!.part, kept, chains[(i + 1) % chains.length]!));
  }
  return { strands, snips, folds: mouths.flatMap(m => m?.folds ?? []) };
}

/** What two mouths leave of the chain between them; undefined where they overlap. */
function keptBetween(
  chain: Chain,
  into: FoldedMouth | undefined,
  out: FoldedMouth | undefined,
): readonly Strand[] | undefined {
  const from = into?.after ?? chainStart;
  const to = turnedPlace(out?.before ?? chainStart, chain.strands.length);
  return isBefore(from, to) ? strandsBetween(chain.strands, from, to) : undefined;
}

function mouthOf(
  node: FoldedPart,
  ring: readonly Node[],
  before: Chain,
  after: Chain,
): FoldedMouth | undefined {
  const i = ring.indexOf(node);
  const left = armBefore(ring.at(i - 1) as Run),
    right = armAfter(ring[(i + 1) % ring.length] as Run);
  const whole = (arm: Arm, parallel: readonly Strand[]): Arm => ({ ...arm, parallel });
  const arms = [whole(left, strandsReversed(before.strands)), whole(right, after.strands)] as const;
  return node.part.type === 'pleat'
    ? foldedPleat(node.part, ...arms)
    : foldedMouth(node.part, node.pressed ?? 'start', ...arms);
}

function straightMouth({ name }: Dart | Pleat, before: readonly Strand[], after: Chain): readonly Strand[] {
  return straight(endOf(before.at(-1)!.segment), startOf(after.strands[0]!.segment), name, 'dart');
}
