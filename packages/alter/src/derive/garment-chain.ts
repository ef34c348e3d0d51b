import {
  copiesInGarment,
  type Edge,
  type EdgeRef,
  type EdgeRun,
  goRoundTogether,
  type OutlinePart,
  type Pattern,
  type Piece,
  partsOfEdge,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';

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

/** What lies between two edges that follow each other: a seam (by its name), a fold, the gap, or a shared corner. */
export interface Joint {
  readonly kind: 'seam' | 'fold' | 'corner';
  readonly name: string;
  readonly piece: string;
  readonly gap: boolean;
}

/** Edges that follow each other in the garment. `joints[i]` lies after `lying[i]`; a ring has one after its last. */
export interface GarmentChain {
  readonly lying: readonly Lying[];
  readonly joints: readonly Joint[];
  readonly closed: boolean;
}

interface Node {
  readonly piece: Piece;
  readonly part: Edge;
  readonly copy: number;
}
type End = 'start' | 'end';
interface Link {
  readonly to: number;
  readonly end: End;
  readonly joint: Joint;
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
      parts.map((part): Node => ({ piece, part, copy })),
    ).flat();
  });
  const links = linksBetween(pattern, nodes, gap);
  const chains: GarmentChain[] = [];
  const seen = new Set<number>();
  // Open ends first, so that a chain that is no ring is walked from one of them.
  const starts = [...nodes.keys()].flatMap(n => (['start', 'end'] as const).map(end => ({ n, end })));
  const open = starts.filter(({ n, end }) => !links.has(key(n, end)));
  for (const { n, end } of [...open, ...starts]) {
    if (seen.has(n)) continue;
    const walked = walkFrom(nodes, links, n, end);
    for (const step of walked.steps) seen.add(step.n);
    chains.push(laidOut(nodes, walked));
  }
  return chains;
}

/** An edge named twice is one edge. */
export const distinctEdges = (along: readonly EdgeRef[]): readonly EdgeRef[] =>
  along.filter((ref, i) => along.findIndex(o => o.piece === ref.piece && o.edge === ref.edge) === i);

const key = (n: number, end: End): string => `${n} ${end}`;
const other = (end: End): End => (end === 'start' ? 'end' : 'start');

function linksBetween(pattern: Pattern, nodes: readonly Node[], gap: EdgeRef | undefined) {
  const links = new Map<string, Link>();
  for (const [n, node] of nodes.entries())
    for (const end of ['start', 'end'] as const) {
      if (links.has(key(n, end))) continue;
      const candidates = reached(pattern, nodes, node, end, gap);
      const free = candidates.find(c => !(c.to === n && c.end === end) && !links.has(key(c.to, c.end)));
      if (!free) continue;
      links.set(key(n, end), free);
      links.set(key(free.to, free.end), { to: n, end, joint: free.joint });
    }
  return links;
}

/** The ends of other nodes that an end of a node may meet in the garment, the likeliest first. */
function reached(
  pattern: Pattern,
  nodes: readonly Node[],
  node: Node,
  end: End,
  gap: EdgeRef | undefined,
): readonly Link[] {
  const here = beyond(node.piece, node.part, end, gap);
  const found = nodes.findIndex(o => o.part === here.part && o.piece === node.piece && o.copy === node.copy);
  const make = (to: number, toEnd: End, joint: Omit<Joint, 'piece' | 'gap'>, viaGap: boolean): Link => ({
    to,
    end: toEnd,
    joint: { ...joint, piece: node.piece.name, gap: viaGap },
  });
  if (found >= 0) return [make(found, other(end), { kind: 'corner', name: here.part.name }, here.gap)];
  if (here.part.type !== 'edge') return [];
  if (here.part.kind === 'fold') {
    const mirrored = nodes.findIndex(o => o.part === node.part && o.copy === (node.copy ^ 1));
    return mirrored < 0 ? [] : [make(mirrored, end, { kind: 'fold', name: here.part.name }, here.gap)];
  }
  return pattern.seams.flatMap(seam =>
    (['a', 'b'] as const)
      .flatMap(side => {
        const [own, partner] = side === 'b' ? [seam.a, seam.b] : [seam.b, seam.a];
        const edge = { piece: node.piece.name, edge: here.part.name };
        return partnerCorners({ own, partner }, edge, other(end)).map(met => ({
          ...met,
          side,
        }));
      })
      .flatMap(({ run, end: runEnd, side }) => {
        const piece = pieceNamed(pattern, run.piece);
        const parts = partsOfEdge(piece, run.edge);
        const corner = runEnd === 'start' ? parts[0]! : parts.at(-1)!;
        const there = beyond(piece, corner, runEnd, gap);
        const facing = other(runEnd);
        const copies = [...nodes.entries()].filter(
          ([, o]) => o.part === there.part && o.piece.name === run.piece,
        );
        const like = copyMet(node, { ...run, side }, here.part.name);
        const ordered = copies.sort(([, p], [, q]) => Number(q.copy === like) - Number(p.copy === like));
        return ordered.map(([to]) =>
          make(to, facing, { kind: 'seam', name: seam.name }, here.gap || there.gap),
        );
      }),
  );
}

/**
 * Which copy of a piece an edge is sewn to: of itself the mirror image's, of another edge of its own piece the next
 * copy round (gores) or, in a limb, the same; of another piece the like one.
 */
function copyMet({ piece, copy }: Node, to: EdgeRef & { readonly side: 'a' | 'b' }, edge: string): number {
  if (to.piece !== piece.name) return copy;
  if (to.edge === edge) return copy ^ 1;
  const copies = copiesInGarment(piece);
  return goRoundTogether(piece) ? (copy + (to.side === 'b' ? 1 : copies - 1)) % copies : copy;
}

/** What the outline does beyond an end of a part: sewn darts and the gap are passed over. */
function beyond(piece: Piece, part: OutlinePart, end: End, gap: EdgeRef | undefined) {
  const ring = piece.outline.parts;
  const step = end === 'start' ? ring.length - 1 : 1;
  let viaGap = false;
  for (let i = (ring.indexOf(part) + step) % ring.length; ; i = (i + step) % ring.length) {
    const next = ring[i]!;
    if (next === part) return { part: next, gap: viaGap };
    const isGap = next.type === 'edge' && gap?.piece === piece.name && gap.edge === next.name;
    if (next.type === 'edge' && !isGap) return { part: next, gap: viaGap };
    viaGap ||= isGap;
  }
}

/** The corner of the other side that is sewn to an end of an edge which begins or ends one side of a seam. */
export function partnerCorners(
  { own: side, partner }: { readonly own: readonly EdgeRun[]; readonly partner: readonly EdgeRun[] },
  { piece, edge }: EdgeRef,
  end: End,
): readonly { readonly run: EdgeRun; readonly end: End }[] {
  const endOf = (run: EdgeRun, at: End): End => (run.reversed ? other(at) : at);
  const pairs = [
    { own: side[0]!, its: partner[0]!, at: 'start' as const },
    { own: side.at(-1)!, its: partner.at(-1)!, at: 'end' as const },
  ];
  return pairs
    .filter(({ own, at }) => own.piece === piece && own.edge === edge && endOf(own, at) === end)
    .map(({ its, at }) => ({ run: its, end: endOf(its, at) }));
}

interface Walked {
  /** Each node and the end it is entered by. */
  readonly steps: readonly { readonly n: number; readonly entered: End }[];
  readonly joints: readonly Joint[];
  readonly closed: boolean;
}

function walkFrom(nodes: readonly Node[], links: ReadonlyMap<string, Link>, n: number, entered: End): Walked {
  const steps = [{ n, entered }];
  const joints: Joint[] = [];
  for (;;) {
    const last = steps.at(-1)!;
    const link = links.get(key(last.n, other(last.entered)));
    if (!link) return { steps, joints, closed: false };
    joints.push(link.joint);
    if (link.to === n) return { steps, joints, closed: true };
    if (steps.length > nodes.length) return { steps, joints, closed: false };
    steps.push({ n: link.to, entered: link.end });
  }
}

function laidOut(nodes: readonly Node[], { steps, joints, closed }: Walked): GarmentChain {
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
  // The ring is opened after the joint that serves best as the place where a band is joined.
  const cost = (joint: Joint, i: number): number => {
    const beside = [lying[i]!.piece, lying[(i + 1) % lying.length]!.piece];
    const atBack = beside.every(name => /back/i.test(name));
    const kind = joint.kind === 'fold' || (joint.kind === 'seam' && beside[0] === beside[1]) ? 0 : 1;
    const under = joint.kind === 'seam' && /side|under/i.test(joint.name) ? 0 : 1;
    return (joint.gap ? 1000 : 0) + (atBack && kind === 0 ? 0 : 100) + kind * 10 + under;
  };
  const costs = joints.map(cost);
  const at = costs.indexOf(Math.min(...costs)) + 1;
  return {
    lying: [...lying.slice(at), ...lying.slice(0, at)],
    joints: [...joints.slice(at), ...joints.slice(0, at)],
    closed,
  };
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
