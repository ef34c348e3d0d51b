import type { Finding, Pattern, Saying } from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { nothingBecame, together } from '../became/became.js';
import { type Beside, besides } from './counterparts.js';
import { finding, saying } from './tellings.js';

/** What to do to a piece beside where the step does this to its own; nothing where it has no edges that answer. */
export type WishBeside<Wish> = (beside: Beside) => Wish | undefined;

/**
 * A step done to a piece and, across the seams between, to each of those beside it that has edges which answer to its.
 * Where none has, that is told, and the piece alone is changed.
 * @param piece whose step it is
 */
export function doneBeside<Wish>(
  pattern: Pattern,
  piece: string,
  wish: Wish,
  wishBeside: WishBeside<Wish>,
  alter: (pattern: Pattern, wish: Wish) => Alteration,
): Alteration {
  const beside = new Map<string, Wish>();
  for (const other of besides(pattern, piece)) {
    const one = beside.has(other.piece) ? undefined : wishBeside(other);
    if (one !== undefined) beside.set(other.piece, one);
  }
  const done = doneToEach(pattern, [wish, ...beside.values()], alter);
  return beside.size > 0 ? done : { ...done, findings: [...done.findings, nothingToMatch(piece)] };
}

/** A step done to several pieces, to each by its own wish, as one. */
export function doneToEach<Wish>(
  pattern: Pattern,
  wishes: readonly Wish[],
  alter: (pattern: Pattern, wish: Wish) => Alteration,
): Alteration {
  const steps: Alteration[] = [];
  for (const one of wishes) steps.push(alter(steps.at(-1)?.pattern ?? pattern, one));
  return {
    pattern: steps.at(-1)!.pattern,
    did: saying('did-each', { steps: steps.map(({ did }) => did as Saying) }),
    findings: steps.flatMap(({ findings }) => findings),
    became: together(...steps.map(({ became }) => became ?? nothingBecame)),
  };
}

/** That nothing beside a piece answers to what was changed of it. */
export const nothingToMatch = (piece: string): Finding =>
  finding('note', 'nothing-to-match', { piece }, { piece: { piece } });
