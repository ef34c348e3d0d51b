import { type EdgeRun, edgePath, type Path, type Pattern, pathLength, type Seam } from '@paperhinge/geometry';
import { add, scale } from '@paperhinge/geometry/plane';
import { besideEdge, type EdgeSpan, placeOnEdge, spanOf } from './beside-edge.js';
import type { DrawnFact } from './drawn-fact.js';

import type { Ink } from './ink.js';
import type { PieceSetting } from './piece-setting.js';
import { straight } from './shapes.js';

/** mm inside an edge that the ends of a part reach. */
const endDepth = 5;
/** mm inside the edge at which words stand. */
const wordInset = 6;
/** mm: sides that differ by less need no words. */
const worthSaying = 1;

/** Where an edge is sewn in part only, and what a longer side is gathered, eased or pleated to. */
export const seamFacts = (setting: PieceSetting): readonly DrawnFact[] =>
  setting.pattern.seams.flatMap(seam =>
    (
      [
        [seam.a, seam.b],
        [seam.b, seam.a],
      ] as const
    ).flatMap(([side, other]) => side.flatMap(run => runFact(run, { seam, side, other }, setting))),
  );

interface Sides {
  readonly seam: Seam;
  readonly side: Seam['a'];
  readonly other: Seam['a'];
}

function runFact(run: EdgeRun, sides: Sides, { piece, pattern, reader }: PieceSetting): readonly DrawnFact[] {
  const found = run.piece === piece.name ? spanOf(piece, run) : undefined;
  if (!found) return [];
  const { path, span } = found;
  const to = run.part || sides.seam.takenUp ? sewnTo(span, sides, pattern) : undefined;
  const words =
    to === undefined ? [] : [reader.words.piece.takenUp[sides.seam.takenUp ?? 'eased'](reader.length(to))];
  const inks = run.part ? [span.from, span.to].map(at => endInk(path, at)) : [];
  if (words.length === 0 && inks.length === 0) return [];
  return [{ inks, words, along: besideEdge(path, wordInset, span), off: 0.4 }];
}

const endInk = (path: Path, at: number): Ink => {
  const place = placeOnEdge(path, at);
  return straight('mark', place.at, add(place.at, scale(place.inwards, endDepth)));
};

/** mm that a part of the longer side becomes: its share of the other side; none where it is not the longer. */
function sewnTo({ from, to }: EdgeSpan, { side, other }: Sides, pattern: Pattern): number | undefined {
  const [own, partner] = [lengthOf(side, pattern), lengthOf(other, pattern)];
  if (own === undefined || partner === undefined || own - partner < worthSaying) return undefined;
  return ((to - from) * partner) / own;
}

/** mm of all runs; none where one names an edge that is not there. */
function lengthOf(runs: Seam['a'], pattern: Pattern): number | undefined {
  let sum = 0;
  for (const run of runs) {
    const piece = pattern.pieces.find(p => p.name === run.piece);
    if (!piece?.outline.parts.some(p => p.type === 'edge' && p.name === run.edge)) return undefined;
    sum += run.part ? run.part.to - run.part.from : pathLength(edgePath(piece, run.edge));
  }
  return sum;
}
