import {
  type EdgeRef,
  edgeNames,
  edgePath,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import { neighboursOf } from '@paperhinge/geometry/pattern';
import { holdsEdge, sameEdge } from '../edge-refs.js';
import { stretchOf } from './cloth.js';

/**
 * mm that straps add to a neck, stretched as far as their cloth goes: pieces without a neck of their own that are sewn
 * with two of their edges to what the neck ends at, front and back, so that the head goes through between them.
 */
export function strapsMm(pattern: Pattern, necks: readonly EdgeRef[], body: readonly Piece[]): number {
  const beside = necks.flatMap(({ piece, edge }) => {
    const { start, end } = neighboursOf(pieceNamed(pattern, piece), edge);
    return [start, end].map(name => ({ piece, edge: name }));
  });
  return body
    .filter(piece => !necks.some(neck => neck.piece === piece.name))
    .reduce((sum, piece) => sum + strapMm(pattern, piece, beside), 0);
}

function strapMm(pattern: Pattern, piece: Piece, beside: readonly EdgeRef[]): number {
  const ring = edgeNames(piece);
  const sewn = ring.filter(edge =>
    pattern.seams.some(({ a, b }) =>
      [
        [a, b],
        [b, a],
      ].some(
        ([own, other]) =>
          own!.some(run => sameEdge(run, { piece: piece.name, edge })) &&
          other!.some(run => holdsEdge(beside, run)),
      ),
    ),
  );
  if (sewn.length !== 2) return 0;
  const [first, second] = sewn.map(edge => ring.indexOf(edge)) as [number, number];
  const lengthOf = (names: readonly string[]): number =>
    names.reduce((sum, name) => sum + pathLength(edgePath(piece, name)), 0);
  const between = ring.slice(first + 1, second);
  const around = [...ring.slice(second + 1), ...ring.slice(0, first)];
  // Opened out or folded along its length, a strap is as long; its shorter edge holds.
  const mm = Math.min(lengthOf(between), lengthOf(around));
  const { count, layers = 1, fabric } = piece.cutting;
  return ((mm * count) / layers) * (1 + stretchOf(pattern, fabric) / 100);
}
