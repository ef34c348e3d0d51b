import type { Pattern, PlaceOnEdge } from '../pattern/types.js';
import { visibleLength } from '../tolerance.js';

/** Whether an alteration left a corner at one of these places: where two edges meet, on either. */
export const isLeftToTrue = (
  { leftToTrue = [] }: Pick<Pattern, 'leftToTrue'>,
  ...places: readonly PlaceOnEdge[]
): boolean =>
  leftToTrue.some(left =>
    places.some(
      ({ piece, edge, at }) =>
        left.piece === piece && left.edge === edge && Math.abs(left.at - at) <= visibleLength,
    ),
  );
