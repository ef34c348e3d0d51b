import { locating } from '../errors.js';
import { withEnds } from '../path/mended.js';
import { type Path, pathEnd, pathStart } from '../path/path.js';
import { requireAllowance, requireParts } from '../pattern/sound.js';
import type { Dart, Edge, OutlinePart, Pleat } from '../pattern/types.js';
import type { Finding } from '../telling.js';
import { edgeAllowance } from './edge-allowance.js';
import { flanksOf } from './flank.js';
import { crossingOf, guessedBy, runOn } from './run-on.js';
import { pathOfStrands, strandsBetween } from './strand.js';
import { type Node, withoutTails } from './tails.js';
import { finding, refusal } from './tellings.js';

/** The outline of a piece on its stitching line, found from its cutting line. */
export interface StitchingLine {
  readonly parts: readonly OutlinePart[];
  /** What was dropped on the way: corner tails and dart tips that lie outside the stitching line. */
  readonly findings: readonly Finding[];
}

/**
 * The stitching line of an outline drawn on its cutting line (clockwise, as an {@link OutlinePart} ring): each edge is
 * moved inwards by the allowance `included` says was drawn with it (mm), neighbours are cut at or run on straight to
 * their crossing, and dart legs are cut at the new line. Allowances and corner rules stay as the edges carry them.
 *
 * Error: the parallels' `fitTolerance`; straight edges exactly.
 * @throws PatternError `included-allowance-too-wide`: an edge has no room left for it
 */
export function stitchingLine(
  drawn: readonly OutlinePart[],
  included: (edge: Edge) => number,
): StitchingLine {
  requireParts(drawn);
  const allowance = (edge: Edge): number => edgeAllowance({ ...edge, allowance: included(edge) });
  for (const part of drawn)
    if (part.type === 'edge') locating({ edge: part.name }, () => requireAllowance(allowance(part)));
  const findings: Finding[] = [];
  const reach = extension * Math.max(1, ...drawn.map(p => (p.type === 'edge' ? allowance(p) : 0)));
  const nodes = drawn.flatMap((part): readonly Node[] =>
    part.type === 'dart'
      ? [asDrawn(part, part.legs[0], 0), asDrawn(part, part.legs[1], 1)]
      : part.type === 'pleat'
        ? [asDrawn(part, part.mouth)]
        : flanksOf(part, allowance(part)).map(flank => ({ flank, part })),
  );
  const ring = withoutTails(nodes, reach, findings);
  const kept = cutToMeet(ring, reach, findings);
  const pathOf = (part: OutlinePart, leg?: 0 | 1): Path => ({
    segments: ring.flatMap((node, i) => (node.part === part && node.leg === leg ? kept[i]!.segments : [])),
  });
  const parts = drawn.map(
    (part): OutlinePart =>
      part.type === 'edge'
        ? { ...part, path: pathOf(part) }
        : part.type === 'pleat'
          ? { ...part, mouth: pathOf(part) }
          : { ...part, legs: [pathOf(part, 0), pathOf(part, 1)] },
  );
  return { parts, findings };
}

/** Of the largest allowance: how far an edge is run on in search of its neighbour. A corner of 6° needs no more. */
const extension = 20;

/** What stays where it was drawn: a leg of a dart, which is run on beyond the mouth only, or the mouth of a pleat. */
const asDrawn = (part: Dart | Pleat, { segments: drawn }: Path, leg?: 0 | 1): Node => ({
  part,
  ...(leg === undefined ? {} : { leg }),
  flank: {
    of: part.name,
    allowance: 0,
    drawn,
    strands: drawn.map(segment => ({ segment, of: part.name, shape: 'parallel' })),
  },
});

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
