import type { Pattern, Piece, PlaceOnEdge } from '../pattern/types.js';
import { lengthOf } from './attribute-values.js';
import type { PieceDrawing } from './gather.js';
import { toSvgNumber } from './path-text.js';
import type { PieceContext } from './piece-context.js';

const name = 'data-left-to-true';

/** The places of `data-left-to-true` on the edges of a piece. @throws PatternError those of `lengthOf` */
export const readLeftToTrue = ({ items }: PieceDrawing, context: PieceContext): readonly PlaceOnEdge[] =>
  items.flatMap(({ meaning, element }) => {
    const written = element.attributes.get(name);
    const edge = element.attributes.get('data-edge')?.value.trim();
    if (meaning !== 'edge' || !written || !edge) return [];
    const owner = { ...context.owner, edge };
    return written.value
      .split(',')
      .map(value => ({ ...owner, at: lengthOf({ ...written, value }, name, { ...context, owner }) }));
  });

/** What `data-left-to-true` says of an edge; nothing where no alteration left a corner on it. */
export function leftToTrueText(
  { leftToTrue = [] }: Pick<Pattern, 'leftToTrue'>,
  piece: Piece,
  edge: string,
): string | undefined {
  const own = leftToTrue.filter(left => left.piece === piece.name && left.edge === edge);
  return own.length === 0 ? undefined : own.map(({ at }) => `${toSvgNumber(at)} mm`).join(', ');
}
