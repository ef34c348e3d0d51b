import { locating } from '../errors.js';
import type { Path } from '../path/path.js';
import { requireAllowance, requireParts } from '../pattern/sound.js';
import type { Dart, Edge, OutlinePart, Pleat } from '../pattern/types.js';
import type { Finding } from '../telling.js';
import { edgeAllowance } from './edge-allowance.js';
import { flanksOf } from './flank.js';
import { likeliest } from './likeliest.js';
import type { Node } from './tails.js';

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
 * What the shaping of corners left at the ends of edges is dropped; where its looks do not tell it from a bend of the
 * edge's own, that is taken whose cutting line is the one that was drawn, and where neither's is, it is told.
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
  const reach = extension * Math.max(1, ...drawn.map(p => (p.type === 'edge' ? allowance(p) : 0)));
  const nodes = drawn.flatMap((part): readonly Node[] =>
    part.type === 'dart'
      ? [asDrawn(part, part.legs[0], 0), asDrawn(part, part.legs[1], 1)]
      : part.type === 'pleat'
        ? [asDrawn(part, part.mouth)]
        : flanksOf(part, allowance(part)).map(flank => ({ flank, part })),
  );
  const { parts, findings, refused } = likeliest({ parts: drawn, nodes, reach, allowance });
  if (!parts) throw refused!;
  return { parts, findings };
}

/** Of the largest allowance: how far an edge is run on in search of its neighbour. A corner of 6° needs no more. */
const extension = 20;

/** What stays where it was drawn: a leg of a dart, which is run on beyond the mouth only, or the mouth of a pleat. */
const asDrawn = (part: Dart | Pleat, { segments: drawn }: Path, leg?: 0 | 1): Node => ({
  part,
  leg,
  flank: {
    of: part.name,
    allowance: 0,
    drawn,
    strands: drawn.map(segment => ({ segment, of: part.name, shape: 'parallel' })),
  },
});
