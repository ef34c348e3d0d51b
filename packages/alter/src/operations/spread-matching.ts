import type { Pattern, Saying } from '@paperhinge/geometry';
import type { EdgePosition } from '@paperhinge/geometry/pattern';
import type { Alteration } from '../alteration.js';
import { nothingBecame, together } from '../became/became.js';
import { type Beside, besides, counterpartOf, placeBeside } from '../matching/counterparts.js';
import { finding } from '../matching/tellings.js';
import type { SpreadEnd, WholeSpread } from './spread-wish.js';
import { saying } from './tellings.js';

type SpreadOut = (pattern: Pattern, parameters: WholeSpread) => Alteration;

/** Spreads a piece and, mirrored across the seams between, those beside it that have edges which answer to its. */
export function spreadMatching(pattern: Pattern, wish: WholeSpread, spreadOut: SpreadOut): Alteration {
  const wishes = besides(pattern, wish.piece).flatMap(beside => wishBeside(pattern, wish, beside) ?? []);
  const each = wishes.filter((one, i) => wishes.findIndex(other => other.piece === one.piece) === i);
  const steps: Alteration[] = [];
  for (const one of [wish, ...each]) steps.push(spreadOut(steps.at(-1)?.pattern ?? pattern, one));
  const where = { piece: wish.piece };
  return {
    pattern: steps.at(-1)!.pattern,
    did: saying('spread-each', { steps: steps.map(({ did }) => did as Saying) }),
    findings: [
      ...steps.flatMap(({ findings }) => findings),
      ...(each.length === 0 ? [finding('note', 'nothing-to-match', where, { piece: where })] : []),
    ],
    became: together(...steps.map(({ became }) => became ?? nothingBecame)),
  };
}

function wishBeside(pattern: Pattern, wish: WholeSpread, beside: Beside): WholeSpread | undefined {
  const end = ({ edge, at }: SpreadEnd): SpreadEnd | undefined => {
    const own = { piece: wish.piece, edge };
    const theirs = counterpartOf(pattern, own, beside);
    if (theirs === undefined) return undefined;
    const moved = (place: EdgePosition) => placeBeside(pattern, { ...own, place }, beside, theirs);
    if (at === undefined) return { edge: theirs };
    return { edge: theirs, at: isRange(at) ? [moved(at[0]), moved(at[1])] : moved(at) };
  };
  const from = end(wish.from),
    to = end(wish.to);
  return from && to && { ...wish, piece: beside.piece, from, to };
}

const isRange = (at: NonNullable<SpreadEnd['at']>): at is readonly [EdgePosition, EdgePosition] =>
  Array.isArray(at);
