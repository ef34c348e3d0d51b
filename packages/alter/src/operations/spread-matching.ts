import type { Pattern } from '@paperhinge/geometry';
import type { EdgePosition } from '@paperhinge/geometry/pattern';
import type { Alteration } from '../alteration.js';
import { type Beside, counterpartOf } from '../matching/counterparts.js';
import { doneBeside } from '../matching/done-to-each.js';
import type { SpreadEnd, WholeSpread } from './spread-wish.js';

/** Spreads a piece and, mirrored across the seams between, those beside it that have edges which answer to its. */
export const spreadMatching = (
  pattern: Pattern,
  wish: WholeSpread,
  spreadOut: (pattern: Pattern, parameters: WholeSpread) => Alteration,
): Alteration =>
  doneBeside(pattern, wish.piece, wish, beside => wishBeside(pattern, wish, beside), spreadOut);

function wishBeside(pattern: Pattern, wish: WholeSpread, beside: Beside): WholeSpread | undefined {
  const end = ({ edge, at }: SpreadEnd): SpreadEnd | undefined => {
    if (at === undefined || !isRange(at))
      return counterpartOf(pattern, wish.piece, { edge, ...(at ? { at } : {}) }, beside);
    const [a, b] = at.map(place => counterpartOf(pattern, wish.piece, { edge, at: place }, beside));
    return a?.at && b?.at && a.edge === b.edge ? { edge: a.edge, at: [a.at, b.at] } : undefined;
  };
  const from = end(wish.from),
    to = end(wish.to);
  return from && to && { ...wish, piece: beside.piece, from, to };
}

const isRange = (at: NonNullable<SpreadEnd['at']>): at is readonly [EdgePosition, EdgePosition] =>
  Array.isArray(at);
