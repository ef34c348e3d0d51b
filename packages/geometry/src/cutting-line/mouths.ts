import { endOf, startOf } from '../curve/segment.js';
import type { Path } from '../path/path.js';
import type { Piece } from '../pattern/types.js';
import type { Finding } from '../telling.js';
import { armAfter, armBefore } from './arm.js';
import { assembled, type Chain, keptBetween, overlaps, type SnipMark } from './assemble.js';
import { foldedMouth } from './dart-fold.js';
import { mouthFindings } from './findings.js';
import type { FoldedMouth } from './folded-mouth.js';
import type { Joint } from './joint.js';
import { type FoldedPart, isRun, type Node } from './node.js';
import { foldedPleat } from './pleat-fold.js';
import type { Run } from './run.js';
import { type Strand, straight, strandsBetween, strandsReversed } from './strand.js';

/** The chains between folded darts and pleats, the first of them after the first of these; one if there is none. */
export function chainsBetweenMouths(
  ring: readonly Node[],
  joints: readonly (Joint | undefined)[],
): readonly Chain[] {
  const first = Math.max(
    0,
    ring.findIndex(node => !isRun(node)),
  );
  const chains: { readonly parts: (readonly Strand[])[]; readonly joints: (Joint | undefined)[] }[] = [];
  for (const k of ring.keys()) {
    const i = (first + k) % ring.length;
    const node = ring[i]!;
    if (k === 0 || !isRun(node)) chains.push({ parts: [], joints: [] });
    if (!isRun(node)) continue;
    chains.at(-1)!.parts.push(keptBetween(node.parallel, joints.at(i - 1), joints[i]));
    chains.at(-1)!.joints.push(joints[i]);
  }
  return chains.map(chain => assembled(chain.parts, chain.joints));
}

export interface Closed extends Chain {
  readonly folds: readonly Path[];
}

/** Closes the chains over the mouths of the darts and pleats between them: `chains[i]` follows the i-th of the ring. */
export function overMouths(
  ring: readonly Node[],
  chains: readonly Chain[],
  piece: Piece,
  findings: Finding[],
): Closed {
  const parts = ring.flatMap(node => (isRun(node) ? [] : [node]));
  if (parts.length === 0) return { ...chains[0]!, folds: [] };
  const next = (i: number): number => (i + 1) % parts.length;
  const mouths = parts.map((node, i) => mouthOf(node, ring, chains.at(i - 1)!, chains[i]!));
  // Two mouths that want more of the edge between them than there is: the first is cut straight across.
  for (const [i, { strands }] of chains.entries())
    if (overlaps(strands, mouths[i], mouths[next(i)])) mouths[next(i)] = undefined;
  for (const [i, { part }] of parts.entries()) findings.push(...mouthFindings(piece, part, mouths[i]));
  const strands: Strand[] = [];
  const snips: SnipMark[] = [];
  for (const [i, chain] of chains.entries()) {
    const from = mouths[i],
      to = mouths[next(i)];
    for (const { index, ...mark } of chain.snips) {
      const before = strandsBetween(chain.strands, from?.after ?? 0, index);
      snips.push({ ...mark, index: strands.length + before.length });
    }
    strands.push(...keptBetween(chain.strands, from, to));
    const after = chains[next(i)]!;
    strands.push(...(to?.bridge ?? straightMouth(parts[next(i)]!, chain.strands, after.strands)));
  }
  return { strands, snips, folds: mouths.flatMap(m => m?.folds ?? []) };
}

function mouthOf(
  node: FoldedPart,
  ring: readonly Node[],
  before: Chain,
  after: Chain,
): FoldedMouth | undefined {
  const i = ring.indexOf(node);
  const left = { ...armBefore(ring.at(i - 1) as Run), parallel: strandsReversed(before.strands) },
    right = { ...armAfter(ring[(i + 1) % ring.length] as Run), parallel: after.strands };
  return 'pressed' in node
    ? foldedMouth(node.part, node.pressed, left, right)
    : foldedPleat(node.part, left, right);
}

const straightMouth = (
  { part }: FoldedPart,
  before: readonly Strand[],
  after: readonly Strand[],
): readonly Strand[] =>
  straight(endOf(before.at(-1)!.segment), startOf(after[0]!.segment), part.name, 'dart');
