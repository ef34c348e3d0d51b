import type { EdgeRef, Pattern, Piece } from '@paperhinge/geometry';
import { abs } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { holdsEdge } from '../edge-refs.js';
import { lengthOfEdge } from './edge-length.js';

/**
 * The pieces that edges are sewn to which a step made longer or shorter: those that the same must be done to. Pieces
 * made for an edge are drafted again instead.
 *
 * @param known pieces that are seen to already
 */
export function partnersOf(before: Pattern, after: Pattern, known: readonly string[]): readonly string[] {
  const changed = before.seams
    .flatMap(({ a, b }) => [...a, ...b])
    .filter(ref => known.includes(ref.piece) && isOtherLength(before, after, ref));
  const partners = before.seams.flatMap(({ a, b }) => [
    ...(a.some(ref => holdsEdge(changed, ref)) ? b : []),
    ...(b.some(ref => holdsEdge(changed, ref)) ? a : []),
  ]);
  const names = new Set(partners.map(ref => ref.piece).filter(piece => !known.includes(piece)));
  return before.pieces.filter(piece => names.has(piece.name) && !isMade(piece)).map(piece => piece.name);
}

const isMade = ({ madeFor }: Piece): boolean => madeFor !== undefined && madeFor.length > 0;

function isOtherLength(before: Pattern, after: Pattern, ref: EdgeRef): boolean {
  const [then, now] = [lengthOfEdge(before, ref), lengthOfEdge(after, ref)];
  return then !== undefined && now !== undefined && abs(now - then) > tolerances.leastSeen;
}
