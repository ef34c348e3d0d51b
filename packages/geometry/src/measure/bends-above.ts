import { cornerAt } from '../joining/corner.js';
import { turnsBack } from '../joining/turns-back.js';
import { oncePerAll } from '../once-per.js';
import { edgeNames, foldEdgeOf, pieceNamed } from '../pattern/outline.js';
import type { EdgeRef, Pattern, Piece } from '../pattern/types.js';
import { slightKink } from '../tolerance.js';
import { edgeTruing } from './edge-truing.js';
import { type JoinedLine, joinedLinesAcrossFolds, joinedLinesOf, weldedLines } from './joined-lines.js';

/**
 * Whether a bend of a piece that lies under the garment (a facing, a lining) is the garment's own: one of the edges that
 * it is sewn to or was made for bends as much, by itself, at a fold, across a dart or across a seam. It is judged
 * there, and by what counts there; traced, and again parallel along the facing's inner line, it is no other fault.
 */
export const isBendOfGarment = (pattern: Pattern, piece: Piece, turn: number): boolean =>
  turnsBack(piece) &&
  bendsAbove(pattern, piece).some(bend => Math.abs(Math.abs(turn) - Math.abs(bend)) <= slightKink / 4);

const bendsAbove = /* @__PURE__ */ oncePerAll(
  (pattern: Pattern, piece: Piece) => [pattern, piece],
  (pattern: Pattern, piece: Piece) => bendsOver(pattern, piece),
);

/** rad, of the edges that a piece lies under. */
function bendsOver(pattern: Pattern, piece: Piece): readonly number[] {
  const over = edgesAbove(pattern, piece);
  const isOver = (ref: EdgeRef): boolean =>
    over.some(one => one.piece === ref.piece && one.edge === ref.edge);
  const within = (lines: readonly JoinedLine[]) =>
    lines.filter(({ first, second }) => isOver(first) && isOver(second)).map(line => radians(line.cornerDeg));
  const pieces = pattern.pieces.filter(one => over.some(ref => ref.piece === one.name));
  return [
    ...over.flatMap(({ piece: name, edge }) =>
      edgeTruing(pieceNamed(pattern, name), edge, pattern).kinks.map(kink => kink.turn),
    ),
    ...pieces.flatMap(one => [
      ...within(joinedLinesAcrossFolds(pattern, one)),
      ...within(weldedLines(pattern, one)),
      ...foldBends(one, isOver),
    ]),
    ...pattern.seams.flatMap(seam => within(joinedLinesOf(pattern, seam, 0))),
  ];
}

/** The edges of the garment that a piece is sewn to, or was made for. */
function edgesAbove(pattern: Pattern, { name, madeFor = [] }: Piece): readonly EdgeRef[] {
  const sewn = pattern.seams.flatMap(({ a, b }) =>
    [
      [a, b],
      [b, a],
    ].flatMap(([own, other]) => (own!.some(run => run.piece === name) ? other! : [])),
  );
  return [...sewn, ...madeFor].filter(({ piece, edge }) => {
    const above = pattern.pieces.find(one => one.name === piece);
    return above !== undefined && edgeNames(above).includes(edge) && !turnsBack(above);
  });
}

/** How far lines are from square where they meet a fold. */
function foldBends(piece: Piece, isOver: (ref: EdgeRef) => boolean): readonly number[] {
  const fold = foldEdgeOf(piece);
  if (!fold) return [];
  return (['start', 'end'] as const).flatMap(end => {
    const { neighbour, interior } = cornerAt(piece, fold.name, end);
    return neighbour.type === 'edge' && isOver({ piece: piece.name, edge: neighbour.name })
      ? [interior - Math.PI / 2]
      : [];
  });
}

const radians = (deg: number): number => (deg * Math.PI) / 180;
