import { type EdgeRef, type EdgeRun, type Pattern, pathLength, pieceNamed } from '@paperhinge/geometry';
import { copiesInGarment, partsOfEdge } from '@paperhinge/geometry/pattern';
import { distinctEdges } from '../edge-refs.js';
import { isBack } from '../fit/front-and-back.js';
import {
  type ChainNode,
  type End,
  type Joint,
  type Link,
  linkKey,
  linksBetween,
  otherEnd,
} from './chain-links.js';

/** One edge (or part of one) as it lies in the garment; a piece that stands twice has copies 0 and 1. */
export interface Lying {
  readonly piece: string;
  readonly edge: string;
  /** Which part of its edge, counted clockwise; 0 where nothing interrupts it. */
  readonly part: number;
  readonly copy: number;
  /** Travelled against the outline's clockwise order. */
  readonly reversed: boolean;
  readonly lengthMm: number;
}

/** Edges that follow each other in the garment. `joints[i]` lies after `lying[i]`; a ring has one after its last. */
export interface GarmentChain {
  readonly lying: readonly Lying[];
  readonly joints: readonly Joint[];
  readonly closed: boolean;
}

/**
 * Lays edges out as they follow each other in the whole garment, through seams, folds, sewn darts and over the gap:
 * one chain for each stretch that hangs together. A ring is opened at the centre back, else at a fold, else at a seam.
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`
 */
export function garmentChains(
  pattern: Pattern,
  along: readonly EdgeRef[],
  gap?: EdgeRef,
): readonly GarmentChain[] {
  const nodes = distinctEdges(along).flatMap(({ piece: name, edge }) => {
    const piece = pieceNamed(pattern, name);
    const parts = partsOfEdge(piece, edge);
    return Array.from({ length: copiesInGarment(piece) }, (_, copy) =>
      parts.map((part): ChainNode => ({ piece, part, copy })),
    ).flat();
  });
  const links = linksBetween(pattern, nodes, gap);
  const chains: GarmentChain[] = [];
  const seen = new Set<number>();
  // Open ends first, so that a chain that is no ring is walked from one of them.
  const starts = [...nodes.keys()].flatMap(n => (['start', 'end'] as const).map(end => ({ n, end })));
  const open = starts.filter(({ n, end }) => !links.has(linkKey(n, end)));
  for (const { n, end } of [...open, ...starts]) {
    if (seen.has(n)) continue;
    const walked = walkFrom(nodes, links, n, end);
    for (const step of walked.steps) seen.add(step.n);
    chains.push(laidOut(pattern, nodes, walked));
  }
  return chains;
}

interface Walked {
  /** Each node and the end it is entered by. */
  readonly steps: readonly { readonly n: number; readonly entered: End }[];
  readonly joints: readonly Joint[];
  readonly closed: boolean;
}

function walkFrom(
  nodes: readonly ChainNode[],
  links: ReadonlyMap<string, Link>,
  n: number,
  entered: End,
): Walked {
  const steps = [{ n, entered }];
  const joints: Joint[] = [];
  for (;;) {
    const last = steps.at(-1)!;
    const link = links.get(linkKey(last.n, otherEnd(last.entered)));
    if (!link) return { steps, joints, closed: false };
    joints.push(link.joint);
    if (link.to === n) return { steps, joints, closed: true };
    if (steps.length > nodes.length) return { steps, joints, closed: false };
    steps.push({ n: link.to, entered: link.end });
  }
}

function laidOut(
  pattern: Pattern,
  nodes: readonly ChainNode[],
  { steps, joints, closed }: Walked,
): GarmentChain {
  const lying = steps.map(({ n, entered }): Lying => {
    const { piece, part, copy } = nodes[n]!;
    return {
      piece: piece.name,
      edge: part.name,
      part: partsOfEdge(piece, part.name).indexOf(part),
      copy,
      reversed: entered === 'end',
      lengthMm: pathLength(part.path),
    };
  });
  if (!closed) return { lying, joints, closed };
  const at = openingOf(pattern, lying, joints) + 1;
  return {
    lying: [...lying.slice(at), ...lying.slice(0, at)],
    joints: [...joints.slice(at), ...joints.slice(0, at)],
    closed,
  };
}

/** The joint of a ring that serves best as the place where a band is joined: at the back, on a fold or centre seam. */
function openingOf(pattern: Pattern, lying: readonly Lying[], joints: readonly Joint[]): number {
  const atBack = (name: string): boolean => isBack(pattern, pieceNamed(pattern, name));
  const costs = joints.map((joint, i) => {
    const beside = [lying[i]!.piece, lying[(i + 1) % lying.length]!.piece];
    const atCentre = joint.kind === 'fold' || (joint.kind === 'seam' && beside[0] === beside[1]);
    const there = atCentre ? (beside.every(atBack) ? 0 : 100) : 110;
    return (joint.gap ? 1000 : 0) + there + (joint.atSide ? 0 : 1);
  });
  return costs.indexOf(Math.min(...costs));
}

/**
 * The runs of a seam's side that follows these chains; parts of one edge that follow each other are one run.
 */
export function runsAlong(chains: readonly GarmentChain[]): readonly EdgeRun[] {
  const runs: (EdgeRun & { readonly copy: number })[] = [];
  for (const { piece, edge, copy, reversed } of chains.flatMap(c => c.lying)) {
    const last = runs.at(-1);
    const goesOn =
      last?.piece === piece && last.edge === edge && last.copy === copy && last.reversed === reversed;
    if (!goesOn) runs.push({ piece, edge, reversed, copy });
  }
  return runs.map(({ copy: _, ...run }) => run);
}
