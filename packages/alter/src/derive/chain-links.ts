import {
  type Edge,
  type EdgeRef,
  type EdgeRun,
  type OutlinePart,
  type Pattern,
  type Piece,
  pieceNamed,
  roleOf,
} from '@paperhinge/geometry';
import { copiesInGarment, goRoundTogether, isLimb, partsOfEdge } from '@paperhinge/geometry/pattern';
import { isSewn } from '../edge-refs.js';

/** What lies between two edges that follow each other: a seam (by its name), a fold, the gap, or a shared corner. */
export interface Joint {
  readonly kind: 'seam' | 'fold' | 'corner';
  readonly name: string;
  readonly piece: string;
  readonly gap: boolean;
  /** Of a seam: whether it runs down the side or under the arm. */
  readonly atSide: boolean;
}

/** An edge, or a part of one, in one of the copies of its piece. */
export interface ChainNode {
  readonly piece: Piece;
  readonly part: Edge;
  readonly copy: number;
}
export type End = 'start' | 'end';
/** Which end of which node an end of a node meets, and across what. */
export interface Link {
  readonly to: number;
  readonly end: End;
  readonly joint: Joint;
}

export const linkKey = (n: number, end: End): string => `${n} ${end}`;
export const otherEnd = (end: End): End => (end === 'start' ? 'end' : 'start');

/** Which ends of edges meet in the garment, by {@link linkKey}. */
export function linksBetween(
  pattern: Pattern,
  nodes: readonly ChainNode[],
  gap: EdgeRef | undefined,
): ReadonlyMap<string, Link> {
  const links = new Map<string, Link>();
  for (const [n, node] of nodes.entries())
    for (const end of ['start', 'end'] as const) {
      if (links.has(linkKey(n, end))) continue;
      const candidates = reached({ pattern, nodes, gap }, node, end);
      const free = candidates.find(c => !(c.to === n && c.end === end) && !links.has(linkKey(c.to, c.end)));
      if (!free) continue;
      links.set(linkKey(n, end), free);
      links.set(linkKey(free.to, free.end), { to: n, end, joint: free.joint });
    }
  return new Map([...links, ...halvesMet({ pattern, nodes, gap }, links)]);
}

/**
 * Halves of one garment whose centre seams are not listed: where all stretches end at centre edges on both sides, each
 * meets its mirror image there. One stretch alone has its opening there.
 */
function halvesMet(
  { pattern, nodes, gap }: Garment,
  links: ReadonlyMap<string, Link>,
): ReadonlyMap<string, Link> {
  const loose = [...nodes.entries()].flatMap(([n, node]) =>
    (['start', 'end'] as const)
      .filter(end => !links.has(linkKey(n, end)))
      .map(end => ({ n, node, end, ...beyond(node.piece, node.part, end, gap) })),
  );
  const atCentre = loose.every(
    ({ part, node: { piece } }) =>
      part.type === 'edge' &&
      roleOf(part) === 'centre' &&
      !isLimb(piece) &&
      !isSewn(pattern, { piece: piece.name, edge: part.name }),
  );
  if (loose.length <= 2 || !atCentre) return new Map();
  const joints = loose.flatMap(
    ({ n, node, end, part, gap: viaGap }): readonly (readonly [string, Link])[] => {
      const to = nodes.findIndex(o => o.part === node.part && o.copy === (node.copy ^ 1));
      if (to < 0 || part.type !== 'edge') return [];
      const joint: Joint = {
        kind: 'seam',
        name: part.name,
        piece: node.piece.name,
        gap: viaGap,
        atSide: false,
      };
      return [[linkKey(n, end), { to, end, joint }]];
    },
  );
  return new Map(joints);
}

interface Garment {
  readonly pattern: Pattern;
  readonly nodes: readonly ChainNode[];
  readonly gap: EdgeRef | undefined;
}

/** The ends of other nodes that an end of a node may meet in the garment, the likeliest first. */
function reached(garment: Garment, node: ChainNode, end: End): readonly Link[] {
  const { nodes, gap } = garment;
  const here = beyond(node.piece, node.part, end, gap);
  const joint = { piece: node.piece.name, name: here.part.name, gap: here.gap, atSide: false };
  const found = nodes.findIndex(o => o.part === here.part && o.piece === node.piece && o.copy === node.copy);
  if (found >= 0) return [{ to: found, end: otherEnd(end), joint: { ...joint, kind: 'corner' } }];
  if (here.part.type !== 'edge') return [];
  if (here.part.kind === 'fold') {
    const mirrored = nodes.findIndex(o => o.part === node.part && o.copy === (node.copy ^ 1));
    return mirrored < 0 ? [] : [{ to: mirrored, end, joint: { ...joint, kind: 'fold' } }];
  }
  return acrossSeams(garment, node, here.part, end).map(link => ({
    ...link,
    joint: { ...link.joint, gap: link.joint.gap || here.gap },
  }));
}

/** The ends met across the seams of the edge that lies beyond an end of a node. */
function acrossSeams(
  { pattern, nodes, gap }: Garment,
  node: ChainNode,
  sewn: Edge,
  end: End,
): readonly Link[] {
  const edge = { piece: node.piece.name, edge: sewn.name };
  const atSide = ['side', 'underarm'].includes(roleOf(sewn) ?? '');
  return pattern.seams.flatMap(({ name, a, b }) =>
    (['a', 'b'] as const).flatMap(side => {
      const [own, partner] = side === 'b' ? [a, b] : [b, a];
      return partnerCorners({ own, partner }, edge, otherEnd(end)).flatMap(({ run, end: runEnd }) => {
        const piece = pieceNamed(pattern, run.piece);
        const parts = partsOfEdge(piece, run.edge);
        const there = beyond(piece, runEnd === 'start' ? parts[0]! : parts.at(-1)!, runEnd, gap);
        const joint: Joint = { kind: 'seam', name, piece: node.piece.name, gap: there.gap, atSide };
        return copiesOf(nodes, there.part, run, copyMet(node, { ...run, side }, sewn.name)).map(to => ({
          to,
          end: otherEnd(runEnd),
          joint,
        }));
      });
    }),
  );
}

/** The nodes of a part of a piece, the copy `like` first. */
const copiesOf = (
  nodes: readonly ChainNode[],
  part: OutlinePart,
  { piece }: EdgeRef,
  like: number,
): readonly number[] =>
  [...nodes.entries()]
    .filter(([, o]) => o.part === part && o.piece.name === piece)
    .sort(([, p], [, q]) => Number(q.copy === like) - Number(p.copy === like))
    .map(([n]) => n);

/**
 * Which copy of a piece an edge is sewn to: of itself the mirror image's, of another edge of its own piece the next
 * copy round (gores) or, in a limb, the same; of another piece the like one.
 */
function copyMet(
  { piece, copy }: ChainNode,
  to: EdgeRef & { readonly side: 'a' | 'b' },
  edge: string,
): number {
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
  const endOf = (run: EdgeRun, at: End): End => (run.reversed ? otherEnd(at) : at);
  const pairs = [
    { own: side[0]!, its: partner[0]!, at: 'start' as const },
    { own: side.at(-1)!, its: partner.at(-1)!, at: 'end' as const },
  ];
  return pairs
    .filter(({ own, at }) => own.piece === piece && own.edge === edge && endOf(own, at) === end)
    .map(({ its, at }) => ({ run: its, end: endOf(its, at) }));
}
