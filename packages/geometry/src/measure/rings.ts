import { copiesInGarment, goRoundTogether, isLimb } from '../pattern/copies.js';
import { edgeNamed, edgeNames } from '../pattern/outline.js';
import type { EdgeRef, Pattern, Piece } from '../pattern/types.js';
import { type FacingEdges, facingEdges } from './facing-edges.js';

/** Cloth that lies across one piece (at a level, along a hem): its length, and the edges at each of its ends. */
export interface Across {
  readonly piece: Piece;
  readonly lengthMm: number;
  /** The edges that meet each end; a corner has two. */
  readonly ends: readonly (readonly string[])[];
}

/** What lines across pieces come to in the garment. */
export interface Round {
  /** All round the garment; of a pair of limbs, round one of them. */
  readonly mm: number;
  /** Whether they go round a limb: they close into rings of their own, one for each copy. */
  readonly limb: boolean;
  /** Whether folds and seams bring all their ends together. */
  readonly closed: boolean;
}

/**
 * The length all round of lines that run across pieces, every copy counted. Copies are joined where folds and seams
 * bring their ends together; where that gives two rings or more (sleeves, trouser legs below the crotch) it is the
 * shortest of them, else the sum of all (gores, hips). Sleeves and trouser legs whose seams are not listed count as
 * one of the pair.
 */
export function allRound(pattern: Pattern, across: readonly Across[]): Round {
  const nodes = across.flatMap((line, of) =>
    Array.from({ length: Math.max(1, Math.round(copiesInGarment(line.piece))) }, (_, copy) => ({ of, copy })),
  );
  const whole = across.reduce((sum, { piece, lengthMm }) => sum + copiesInGarment(piece) * lengthMm, 0);
  const links = linksBetween(across, nodes, facingEdges(pattern));
  const rings = ringsOf(nodes, links);
  const lengthOf = (ring: readonly number[]) =>
    ring.reduce((sum, n) => sum + across[nodes[n]!.of]!.lengthMm, 0);
  const closed =
    nodes.length > 0 &&
    nodes.every(({ of }, n) => across[of]!.ends.every((_, end) => links.has(key(n, end))));
  if (closed && rings.length > 1) return { mm: Math.min(...rings.map(lengthOf)), limb: true, closed };
  const limbs = across.length > 0 && across.every(({ piece }) => isLimb(piece));
  // The crotch joins one leg to the other: such a level goes round both, though it ends at a pocket's mouth.
  const isJoined = nodes.some(({ of }, n) =>
    [0, 1].some(end => {
      const to = links.get(key(n, end));
      return to !== undefined && to !== n && nodes[to]!.of === of;
    }),
  );
  if (!closed && !isJoined && limbs && across.every(({ piece }) => copiesInGarment(piece) === 2))
    return { mm: whole / 2, limb: true, closed };
  return { mm: whole, limb: false, closed };
}

interface Node {
  readonly of: number;
  readonly copy: number;
}
type Links = ReadonlyMap<string, number>;
const key = (node: number, end: number): string => `${node} ${end}`;

/** Which node each end of a node is joined to. */
function linksBetween(
  across: readonly Across[],
  nodes: readonly Node[],
  facing: readonly FacingEdges[],
): Links {
  const links = new Map<string, number>();
  for (const [n, node] of nodes.entries())
    for (const end of across[node.of]!.ends.keys()) {
      if (links.has(key(n, end))) continue;
      const met = meetings(across, node, end, facing)
        .flatMap(({ of, end, copy }) => {
          const its = [...nodes.keys()].filter(m => nodes[m]!.of === of && !links.has(key(m, end)));
          const like = its.find(m => nodes[m]!.copy === copy);
          return [like ?? its[0]].filter(m => m !== undefined).map(m => ({ m, end }));
        })
        .find(({ m, end: its }) => m !== n || its !== end);
      if (!met) continue;
      links.set(key(n, end), met.m);
      links.set(key(met.m, met.end), n);
    }
  return links;
}

interface Meeting {
  readonly of: number;
  readonly end: number;
  readonly copy: number;
}

/** The ends that an end of one copy may be joined to in the garment, and which copy of them is the likeliest. */
function meetings(
  across: readonly Across[],
  { of, copy }: Node,
  end: number,
  facing: readonly FacingEdges[],
): readonly Meeting[] {
  const { piece, ends } = across[of]!;
  const own = ends[end]!;
  const names = edgeNames(piece);
  if (own.some(edge => names.includes(edge) && edgeNamed(piece, edge).kind === 'fold'))
    return [{ of, end, copy: copy ^ 1 }];
  const isOwn = ({ piece: name, edge }: EdgeRef) => name === piece.name && own.includes(edge);
  const partners = facing.flatMap(({ a, b }) => [
    ...(isOwn(a) ? [{ ...b, next: 1 }] : []),
    ...(isOwn(b) ? [{ ...a, next: -1 }] : []),
  ]);
  const isSelf = (m: Meeting) => m.of === of && m.end === end;
  return (
    partners
      .flatMap(partner =>
        across.flatMap((line, i) =>
          line.ends.flatMap((edges, k) => {
            if (line.piece.name !== partner.piece || !edges.includes(partner.edge)) return [];
            const copyThere = copyMet(piece, copy, { of, end }, { of: i, end: k }, partner.next);
            return [{ of: i, end: k, copy: copyThere }];
          }),
        ),
      )
      // At the corner of crotch and inseam a leg closes on itself; the crotch joins it to the other leg only above.
      .sort((p, q) => Number(isSelf(p)) - Number(isSelf(q)))
  );
}

/** Of its own end the mirror image's, of its own other end the next copy round or the same, of others the like one. */
function copyMet(
  piece: Piece,
  copy: number,
  from: { readonly of: number; readonly end: number },
  to: { readonly of: number; readonly end: number },
  next: number,
): number {
  if (from.of !== to.of) return copy;
  if (from.end === to.end) return copy ^ 1;
  const copies = Math.round(copiesInGarment(piece));
  return goRoundTogether(piece) ? (copy + next + copies) % copies : copy;
}

/** The nodes that hang together through their links. */
function ringsOf(nodes: readonly Node[], links: Links): readonly (readonly number[])[] {
  const seen = new Set<number>();
  const rings: number[][] = [];
  for (const start of nodes.keys()) {
    if (seen.has(start)) continue;
    const ring: number[] = [];
    const waiting = [start];
    seen.add(start);
    for (let n = waiting.pop(); n !== undefined; n = waiting.pop()) {
      ring.push(n);
      for (const end of [0, 1]) {
        const next = links.get(key(n, end));
        if (next === undefined || seen.has(next)) continue;
        seen.add(next);
        waiting.push(next);
      }
    }
    rings.push(ring);
  }
  return rings;
}
