import { type Pattern, type Piece, pieceNamed } from '@paperhinge/geometry';
import { partnersOf } from './partners.js';

/** What a step came to, and the pieces that it was done to. */
export interface WithPartners<Done> {
  readonly names: readonly string[];
  readonly done: Done;
}

/**
 * A step done to pieces and to those that edges are sewn to which it made longer or shorter, and so on round the garment.
 * @param can whether it can be done to a piece
 */
export function andPartners<Done extends { readonly pattern: Pattern }>(
  pattern: Pattern,
  names: readonly string[],
  can: (piece: Piece) => boolean,
  change: (names: readonly string[]) => Done,
): WithPartners<Done> {
  const done = change(names);
  const more = partnersOf(pattern, done.pattern, names).filter(name => can(pieceNamed(pattern, name)));
  return more.length > 0 ? andPartners(pattern, [...names, ...more], can, change) : { names, done };
}
