import { PatternError } from '../errors.js';
import { withEnds } from '../path/mended.js';
import { type Path, pathEnd, pathStart } from '../path/path.js';
import type { Edge, OutlinePart } from '../pattern/types.js';
import type { Finding } from '../telling.js';
import { crossingOf, guessedBy, runOn } from './run-on.js';
import { pathOfStrands, strandsBetween } from './strand.js';
import { type EndStretch, type Node, type Trimmed, withoutTails } from './tails.js';
import { finding, refusal } from './tellings.js';

/** An outline drawn on its cutting line, and its parts moved in, not yet cut to meet. */
export interface Drawn {
  readonly parts: readonly OutlinePart[];
  readonly nodes: readonly Node[];
  /** mm that parts are run on in search of their neighbours. */
  readonly reach: number;
  readonly allowance: (edge: Edge) => number;
}

/** An outline moved in, or what refused it, by what was taken for its corners' tails. */
export interface MovedIn extends Omit<Trimmed, 'ring'> {
  readonly parts?: readonly OutlinePart[];
  readonly refused?: PatternError;
  /** End stretches that were dropped whatever they looked like. */
  readonly also: readonly EndStretch[];
}

export function movedIn({ parts, nodes, reach }: Drawn, also: readonly EndStretch[] = []): MovedIn {
  const { ring, kept, dropped, findings: told } = withoutTails(nodes, reach, also);
  const findings = [...told];
  try {
    const met = cutToMeet(ring, reach, findings);
    return { parts: parts.map(part => partOf(part, ring, met)), findings, kept, dropped, also };
  } catch (refused) {
    if (!(refused instanceof PatternError)) throw refused;
    return { refused, findings, kept, dropped, also };
  }
}

function partOf(part: OutlinePart, ring: readonly Node[], met: readonly Path[]): OutlinePart {
  const pathOf = (leg?: 0 | 1): Path => ({
    segments: ring.flatMap((node, i) => (node.part === part && node.leg === leg ? met[i]!.segments : [])),
  });
  if (part.type === 'edge') return { ...part, path: pathOf() };
  return part.type === 'pleat' ? { ...part, mouth: pathOf() } : { ...part, legs: [pathOf(0), pathOf(1)] };
}

/** Each node's line between its crossings with the node before and after. */
function cutToMeet(ring: readonly Node[], reach: number, findings: Finding[]): readonly Path[] {
  const crossings = ring.map((node, i) => meetingWith(ring[(i + 1) % ring.length]!, node, reach, findings));
  return ring.map(({ flank, part: { name: edge } }, i) => {
    const into = crossings.at(i - 1),
      out = crossings[i];
    const strands = runOn(flank, reach);
    const kept = strandsBetween(strands, into?.after ?? 1, out?.before ?? strands.length - 1);
    if (kept.length === 0) throw refusal('included-allowance-too-wide', { edge: { edge } }, { edge });
    const path = pathOfStrands(kept);
    return withEnds(path, into?.point ?? pathStart(path), out?.point ?? pathEnd(path));
  });
}

/** Where a node meets the next, told where that is a guess, or nowhere. */
function meetingWith(next: Node, node: Node, reach: number, findings: Finding[]) {
  const where = { edge: node.part.name },
    edges = [where, { edge: next.part.name }];
  const crossing = crossingOf(node.flank, next.flank, reach);
  if (!crossing) findings.push(finding('warning', 'corner-not-recovered', where, { edges }));
  const lengthMm = crossing && guessedBy(node.flank, next.flank, crossing);
  if (lengthMm !== undefined) findings.push(finding('warning', 'corner-guessed', where, { edges, lengthMm }));
  return crossing;
}
