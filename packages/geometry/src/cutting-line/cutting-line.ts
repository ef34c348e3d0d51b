import type { Finding } from '../errors.js';
import { type Path, pathEnd, pathOf, pathStart } from '../path/path.js';
import type { Dart, Pattern, Piece } from '../pattern/types.js';
import { coincidenceTolerance, seamTolerance } from '../tolerance.js';
import { distance } from '../vector.js';
import { type Arm, armAfter, armBefore } from './arm.js';
import { assembled, type Chain, closedUp, keptPart, type SnipMark } from './assemble.js';
import { cornerPlan } from './corner-rule.js';
import { canBeFolded, type FoldedMouth, foldedMouth } from './dart-fold.js';
import { foldJoint } from './fold-joint.js';
import { hemFindings } from './hem.js';
import type { Joint } from './joint.js';
import { mirroredJoint } from './mirrored-joint.js';
import { outerBoundary, type Shortcut } from './outer-boundary.js';
import { plainJoint, untrimmedJoint } from './plain-joint.js';
import { pressedTowards } from './pressing.js';
import { type Run, runOf, runsOf } from './run.js';
import {
  isBefore,
  type Strand,
  type StretchShape,
  straight,
  strandsBetween,
  strandsReversed,
} from './strand.js';

/** Where a piece is cut: the stitching line moved out by each edge's allowance, its corners and darts shaped to sew. */
export interface CuttingLine {
  /** Closed, clockwise, simple. */
  readonly path: Path;
  /** The same line part by part, in order from its start: what each part is and which edge or dart it belongs to. */
  readonly stretches: readonly Stretch[];
  /** From the cutting line to each inner corner of the stitching line: where the maker snips. */
  readonly snips: readonly Path[];
  /** Where cloth is folded: the stitching lines of turned-up hems, and the folds of darts' intakes. */
  readonly foldLines: readonly Path[];
  readonly findings: readonly Finding[];
}

/** A part of a cutting line that belongs to one edge or dart. */
export interface Stretch {
  readonly of: string;
  readonly shape: StretchShape;
  readonly path: Path;
}

/**
 * The cutting line of a piece by the rules of the trade: per-edge allowances, corners mitred, pressed open, turned up
 * or snipped, folds without allowance, each dart's mouth in the shape its folded intake needs.
 *
 * Away from corners it lies on the true parallels within `fitTolerance` (mm), and nowhere nearer to an edge than its
 * allowance, but for the mirrored ends and folds. Where an allowance is wider than a bend or slot lets it lie, the
 * line is trimmed to what can be cut, with a finding. With no allowance it is the stitching line itself, bit for bit.
 *
 * @param pattern whose seams say which neighbours run on across a seam, for corners that are pressed open by default;
 *   without it those corners are mitred
 */
export function cuttingLine(piece: Piece, pattern?: Pattern): CuttingLine {
  const findings: Finding[] = [];
  const ring = nodesOf(piece, findings);
  const runs = ring.filter(isRun);
  const joints = plannedJoints(ring, piece, pattern);
  const chains = chainsBetweenDarts(ring, joints);
  const closed = overDarts(ring, chains, piece, findings);
  const raw = closedUp(closed.strands);
  const outer = outerBoundary(raw);
  if (!outer) findings.push(notSimple(piece));
  const strands = closedUp(outer?.strands ?? raw);
  const shortcuts = outer?.shortcuts ?? [];
  findings.push(...narrowFindings(piece, raw, shortcuts, closed.snips), ...hemFindings(piece, runs));
  return {
    path: { segments: strands.map(s => s.segment) },
    stretches: stretchesOf(strands),
    snips: closed.snips.flatMap(mark => snipOf(mark, raw, shortcuts)),
    foldLines: [
      ...closed.folds,
      ...runs.filter(r => r.edge?.kind === 'hem' && r.allowance > 0).map(foldOfHem),
    ],
    findings,
  };
}

type Node = Run | FoldedDart;
interface FoldedDart {
  readonly dart: Dart;
  readonly pressed: 'start' | 'end' | 'open';
}
const isRun = (node: Node): node is Run => 'parallel' in node;

/** The outline as runs and folded darts; the mouth of a dart that cannot be folded becomes a straight run. */
function nodesOf(piece: Piece, findings: Finding[]): readonly Node[] {
  const { parts } = piece.outline;
  const edgeRuns = parts.map(part => (part.type === 'edge' ? runsOf(part) : []));
  return parts.flatMap((part, i): readonly Node[] => {
    if (part.type === 'edge') return edgeRuns[i]!;
    const a = pathStart(part.legs[0]),
      b = pathEnd(part.legs[1]);
    if (distance(a, b) <= coincidenceTolerance) return [];
    const before = edgeRuns[(i + parts.length - 1) % parts.length]!.at(-1),
      after = edgeRuns[(i + 1) % parts.length]![0];
    const pressed = pressedTowards(part, piece);
    if (before && after && canBeFolded(part, pressed, armBefore(before), armAfter(after)))
      return [{ dart: part, pressed }];
    findings.push(bridgedMouth(piece, part));
    const allowance = Math.max(before?.allowance ?? 0, after?.allowance ?? 0);
    return [runOf(part.name, [[a, b]], allowance)];
  });
}

/** The joint after each node, where both it and the next are runs. */
function plannedJoints(
  ring: readonly Node[],
  piece: Piece,
  pattern: Pattern | undefined,
): readonly (Joint | undefined)[] {
  const next = (i: number): Node => ring[(i + 1) % ring.length]!;
  const plans = ring.map((node, i) => {
    const after = next(i);
    return isRun(node) && isRun(after) ? cornerPlan(node, after, piece, pattern) : undefined;
  });
  const planned = ring.map((node, i) => {
    const plan = plans[i];
    if (!plan) return undefined;
    const before = node as Run,
      after = next(i) as Run;
    const shaped =
      plan.form === 'at-fold'
        ? foldJoint(before, after, plan.fold)
        : plan.form === 'mirrored'
          ? mirroredJoint(before, after, plan.shaped)
          : undefined;
    return shaped ?? plainJoint(before, after);
  });
  return withoutOverlaps(ring, planned, i => plans[i]?.form === 'at-fold');
}

/** Where the two joints of a run want more of its parallel than there is, they are led over their corners instead. */
function withoutOverlaps(
  ring: readonly Node[],
  joints: readonly (Joint | undefined)[],
  isFirm: (index: number) => boolean,
): readonly (Joint | undefined)[] {
  const n = ring.length;
  const result = [...joints];
  for (const keepFirm of [true, false])
    for (const [i, node] of ring.entries()) {
      const previous = (i + n - 1) % n;
      if (!isRun(node) || keptPart(node, result[previous], result[i])) continue;
      for (const k of [previous, i])
        if (!(keepFirm && isFirm(k)) && result[k])
          result[k] = untrimmedJoint(ring[k] as Run, ring[(k + 1) % n] as Run);
    }
  return result;
}

/** The chains between folded darts, each from the node after one to the node before the next; one if there is none. */
function chainsBetweenDarts(ring: readonly Node[], joints: readonly (Joint | undefined)[]): readonly Chain[] {
  const n = ring.length;
  const first = ring.findIndex(node => !isRun(node)) + 1;
  const chains: Chain[] = [];
  let parts: (readonly Strand[])[] = [],
    after: (Joint | undefined)[] = [];
  for (let step = 0; step < n; step++) {
    const i = (first + step) % n;
    const node = ring[i]!;
    if (isRun(node)) {
      parts.push(keptPart(node, joints[(i + n - 1) % n], joints[i]) ?? node.parallel);
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

interface Closed extends Chain {
  readonly folds: readonly Path[];
}

/** Closes the chains over the mouths of the darts between them. `chains[i]` ends at the i-th dart of the ring. */
function overDarts(
  ring: readonly Node[],
  chains: readonly Chain[],
  piece: Piece,
  findings: Finding[],
): Closed {
  const darts = ring.flatMap(node => (isRun(node) ? [] : [node]));
  if (darts.length === 0) return { ...chains[0]!, folds: [] };
  // The first chain starts after the first dart.
  const ordered = [...darts.slice(1), darts[0]!];
  const mouths = ordered.map((node, i) => {
    const mouth = mouthOf(node, ring, chains[i]!, chains[(i + 1) % chains.length]!);
    findings.push(...mouthFindings(piece, node.dart, mouth));
    return mouth;
  });
  const strands: Strand[] = [];
  const snips: SnipMark[] = [];
  for (const [i, chain] of chains.entries()) {
    const into = mouths[(i + mouths.length - 1) % mouths.length],
      out = mouths[i];
    const from = into?.after ?? { index: 0, t: 0 };
    const turned = out?.before;
    const to = turned
      ? { index: chain.strands.length - 1 - turned.index, t: 1 - turned.t }
      : { index: chain.strands.length - 1, t: 1 };
    const kept = isBefore(from, to) ? strandsBetween(chain.strands, from, to) : chain.strands;
    for (const mark of chain.snips) {
      const place = kept.indexOf(chain.strands[mark.index]!);
      snips.push({ ...mark, index: strands.length + (place >= 0 ? place : mark.index - from.index) });
    }
    strands.push(...kept);
    if (out) strands.push(...out.bridge);
    else strands.push(...straightMouth(ordered[i]!.dart, chain, chains[(i + 1) % chains.length]!));
  }
  return { strands, snips, folds: mouths.flatMap(m => (m ? [m.fold] : [])) };
}

function mouthOf(
  node: FoldedDart,
  ring: readonly Node[],
  before: Chain,
  after: Chain,
): FoldedMouth | undefined {
  const i = ring.indexOf(node),
    n = ring.length;
  const left = armBefore(ring[(i + n - 1) % n] as Run),
    right = armAfter(ring[(i + 1) % n] as Run);
  const whole = (arm: Arm, parallel: readonly Strand[]): Arm => ({ ...arm, parallel });
  return foldedMouth(
    node.dart,
    node.pressed,
    whole(left, strandsReversed(before.strands)),
    whole(right, after.strands),
  );
}

function straightMouth(dart: Dart, before: Chain, after: Chain): readonly Strand[] {
  const last = before.strands.at(-1)!.segment,
    first = after.strands[0]!.segment;
  return straight(last[last.length - 1]!, first[0], dart.name, 'dart');
}

function mouthFindings(piece: Piece, dart: Dart, mouth: FoldedMouth | undefined): readonly Finding[] {
  if (!mouth) return [bridgedMouth(piece, dart)];
  if (mouth.step <= seamTolerance) return [];
  return [
    {
      severity: 'note',
      code: 'dart-fold-step',
      where: { piece: piece.name, edge: dart.name },
      message: `With the dart "${dart.name}" folded, the cutting lines at its mouth do not meet: a step of ${mouth.step.toFixed(1)} mm along its leg.`,
      figures: { stepMm: mouth.step },
      remedy: 'True the edge with the dart folded shut, or trim the step once it is sewn.',
    },
  ];
}

const bridgedMouth = (piece: Piece, dart: Dart): Finding => ({
  severity: 'warning',
  code: 'dart-mouth-bridged',
  where: { piece: piece.name, edge: dart.name },
  message: `The intake of dart "${dart.name}" cannot be folded onto the edge beside it; its mouth is cut straight across.`,
  remedy:
    'Cut wide there, fold the dart as it will be pressed, and cut along the edge; or press it the other way.',
});

const notSimple = (piece: Piece): Finding => ({
  severity: 'fault',
  code: 'cutting-line-not-simple',
  where: { piece: piece.name },
  message: 'The cutting line crosses itself, and its loops could not be removed.',
  remedy:
    'Check that the stitching line does not cross itself, and that the allowances suit the size of the piece.',
});

/** Parts of parallels that were dropped with a loop, other than the ends at an inner corner. */
function narrowFindings(
  piece: Piece,
  raw: readonly Strand[],
  shortcuts: readonly Shortcut[],
  snips: readonly SnipMark[],
): readonly Finding[] {
  const names = new Set<string>();
  for (const cut of shortcuts) {
    const to = cut.to > cut.from ? cut.to : cut.to + raw.length;
    const corners = snips.filter(mark => isWithin(mark.index, cut, raw.length));
    if (corners.length === 1) continue;
    for (let i = Math.floor(cut.from); i < to; i++) {
      const strand = raw[i % raw.length]!;
      if (strand.shape === 'parallel') names.add(strand.of);
    }
  }
  return [...names].map(edge => ({
    severity: 'warning' as const,
    code: 'allowance-too-wide',
    where: { piece: piece.name, edge },
    message: `The allowance of "${edge}" is wider than a bend or slot there has room for; it is cut where the two sides meet.`,
    remedy: 'Set a narrower allowance on this edge, or face it.',
  }));
}

function isWithin(index: number, cut: Shortcut, n: number): boolean {
  const to = cut.to > cut.from ? cut.to : cut.to + n;
  return (index >= cut.from && index <= to) || (index + n >= cut.from && index + n <= to);
}

function snipOf(mark: SnipMark, raw: readonly Strand[], shortcuts: readonly Shortcut[]): readonly Path[] {
  const cut = shortcuts.find(c => isWithin(mark.index, c, raw.length));
  const from = cut ? cut.at : raw[mark.index % raw.length]!.segment[0];
  return distance(from, mark.to) <= coincidenceTolerance ? [] : [pathOf([from, mark.to])];
}

function stretchesOf(strands: readonly Strand[]): readonly Stretch[] {
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

const foldOfHem = (run: Run): Path => ({ segments: run.stitching });
