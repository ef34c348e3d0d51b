import { cornerAt, type EdgeEnd } from '../joining/corner.js';
import { pathLength } from '../path/length.js';
import { edgeNames, edgeParts, edgePath, neighboursOf } from '../pattern/outline.js';
import type { Edge, EdgeRef, Pattern, Piece } from '../pattern/types.js';
import type { Finding, Thing } from '../telling.js';

import { blendReach, cornerTurn, kinkTurn, slightKink, squareTurn } from '../tolerance.js';
import { isBendOfGarment } from './bends-above.js';
import { edgeTruing } from './edge-truing.js';
import { weldedLines } from './joined-lines.js';
import { isLeftToTrue } from './left-to-true.js';
import { hooksOf, spursOf } from './spurs.js';
import { finding } from './tellings.js';

/** Kinks, spurs, steps, welds and fold corners that are not true, on every edge of a piece; slight kinks are told apart,
 * and what a facing has from the edge it lies under is told there. */
export const truingFindings = (pattern: Pattern, piece: Piece): readonly Finding[] => [
  ...edgeNames(piece).flatMap(edge => brokenEdge(pattern, piece, edge)),
  ...bentWelds(pattern, piece)
    .filter(weld => weld.angleDeg >= degrees(slightKink))
    .map(({ first, second, angleDeg }) =>
      finding('warning', 'edge-kinked', first, { edge: first, next: second, count: 1, angleDeg }),
    ),
  ...foldCorners(pattern, piece),
];

/** A kink too small to be told by itself, with the edges that would be redrawn. */
export interface SlightKink {
  readonly edges: readonly EdgeRef[];
  readonly angleDeg: number;
}

/** The kinks of a piece under `slightKink`, within its edges and where two run on as one. */
export const slightKinks = (pattern: Pattern, piece: Piece): readonly SlightKink[] => [
  ...edgeNames(piece).flatMap(name =>
    edgeTruing(piece, name, pattern)
      .kinks.filter(({ turn }) => Math.abs(turn) < slightKink && !isBendOfGarment(pattern, piece, turn))
      .map(({ turn }) => ({ edges: [{ piece: piece.name, edge: name }], angleDeg: degrees(Math.abs(turn)) })),
  ),
  ...bentWelds(pattern, piece)
    .filter(weld => weld.angleDeg < degrees(slightKink))
    .map(({ first, second, angleDeg }) => ({ edges: [first, second], angleDeg })),
];

const degrees = (rad: number): number => (rad * 180) / Math.PI;

function brokenEdge(pattern: Pattern, piece: Piece, name: string): readonly Finding[] {
  const { kinks, steps } = edgeTruing(piece, name, pattern);
  const edge = { piece: piece.name, edge: name };
  const from = startOf(piece, name);
  const sharp = kinks.filter(
    ({ turn }) => Math.abs(turn) >= slightKink && !isBendOfGarment(pattern, piece, turn),
  );
  const stepped = steps.map(({ alongMm, stepMm }) =>
    finding('warning', 'edge-stepped', edge, { edge, stepMm, alongMm, from }),
  );
  const spurs = spursOf(piece, name).map(({ spurMm, alongMm }) =>
    finding('warning', 'edge-turns-back', edge, { edge, spurMm, alongMm, from }),
  );
  const hooks = hooksOf(piece, name).map(({ atStart, hookMm }) =>
    finding('warning', 'edge-ends-hooked', edge, {
      edge,
      hookMm,
      beside: atStart ? from : endOf(piece, name),
    }),
  );
  if (sharp.length === 0) return [...spurs, ...hooks, ...stepped];
  const { turn, alongMm } = sharp.reduce((p, q) => (Math.abs(q.turn) > Math.abs(p.turn) ? q : p));
  const angleDeg = degrees(Math.abs(turn));
  return [
    ...spurs,
    ...hooks,
    finding('warning', 'edge-kinked', edge, { edge, count: sharp.length, angleDeg, alongMm, from }),
    ...stepped,
  ];
}

/** What an edge begins at, clockwise, and what it ends at. */
const startOf = (piece: Piece, edge: string): Thing => besideOf(piece, neighboursOf(piece, edge).start);
const endOf = (piece: Piece, edge: string): Thing => besideOf(piece, neighboursOf(piece, edge).end);

function besideOf(piece: Piece, name: string): Thing {
  const { type } = piece.outline.parts.find(part => part.name === name)!;
  return { [type]: name };
}

/** Pairs of edges that were welded at an angle; over `cornerTurn` it is a corner that the maker meant, or one left. */
const bentWelds = (pattern: Pattern, piece: Piece) =>
  weldedLines(pattern, piece)
    .map(({ first, second, cornerDeg }) => ({ first, second, angleDeg: Math.abs(cornerDeg) }))
    .filter(
      ({ first, second, angleDeg }) =>
        angleDeg > degrees(kinkTurn) &&
        !isBendOfGarment(pattern, piece, (angleDeg * Math.PI) / 180) &&
        (angleDeg <= degrees(cornerTurn) || isCornerLeft(pattern, piece, first.edge, second.edge)),
    );

/** Whether an alteration left the corner where one edge of a piece ends and the next begins. */
export const isCornerLeft = (pattern: Pattern, piece: Piece, ending: string, beginning: string): boolean =>
  isLeftToTrue(
    pattern,
    { piece: piece.name, edge: ending, at: pathLength(edgePath(piece, ending)) },
    { piece: piece.name, edge: beginning, at: 0 },
  );

/**
 * Lines that meet a fold must meet it squarely, or the garment shows a point or a dip. An angle over `cornerTurn`
 * away from square is meant (a V) and passes, unless an alteration left it.
 */
function foldCorners(pattern: Pattern, piece: Piece): readonly Finding[] {
  const ends: readonly EdgeEnd[] = ['start', 'end'];
  return edgeParts(piece)
    .filter(edge => edge.kind === 'fold')
    .flatMap(fold => ends.flatMap(end => foldCorner(pattern, piece, fold, end)));
}

function foldCorner(pattern: Pattern, piece: Piece, fold: Edge, end: EdgeEnd): readonly Finding[] {
  const { neighbour, interior } = cornerAt(piece, fold.name, end);
  const off = interior - Math.PI / 2;
  if (neighbour.type !== 'edge' || Math.abs(off) <= squareTurn || isBendOfGarment(pattern, piece, off))
    return [];
  const [ending, beginning] = end === 'start' ? [neighbour, fold] : [fold, neighbour];
  if (Math.abs(off) > cornerTurn && !isCornerLeft(pattern, piece, ending.name, beginning.name)) return [];
  const edge = { piece: piece.name, edge: neighbour.name };
  // The corner in the garment is twice as far from straight; see joined-lines.ts for the fair curve's height.
  const amountMm = (blendReach * Math.sin(Math.abs(off))) / 2;
  const figures = { angleDeg: degrees(interior), amountMm };
  return [finding('warning', 'fold-corner-not-square', edge, { edge, ...figures, dips: off > 0 })];
}
