import { type Finding, type Pattern, PatternError, type Saying } from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import type { AnyVerb } from '../verb/form.js';
import { perform } from '../verb/verb.js';
import { type Found, findAmount } from './find-amount.js';
import { type GoalAt, goalsIn, withValueAt } from './goal.js';
import { measured, measureSaying, nearEnough } from './measure.js';
import { finding, refusal } from './tellings.js';

/** With three amounts free there is no telling which of them a maker would rather keep small. */
const mostGoals = 2;

/**
 * Does a verb to a pattern as `perform` does, where any amount (a length, an angle or a share) may be given by what it
 * is to bring about: `{ soThat: { of: 'sweep', edge }, is: 1800 }`. The amount is the smallest within the field's
 * bounds that does it on the true geometry, each try being the whole step; it is told with what it came to. Of two
 * goals the second is reached within every try of the first.
 *
 * @throws PatternError `goal-not-reached`: no amount does it; the nearest is told. `too-many-goals`; what cannot be
 *   measured; those of `perform`
 */
export function alterSoThat(verb: AnyVerb, pattern: Pattern, given: object): Alteration {
  const goals = goalsIn(verb.fields, given as Readonly<Record<string, unknown>>);
  const [first, second] = goals;
  if (!first) return perform(verb, pattern, given);
  if (goals.length > mostGoals)
    throw refusal('too-many-goals', { fields: goals.map(({ path }) => fieldOf(path)), most: mostGoals });
  const tries = triesOf(verb, pattern);
  const done = second ? bothReached(tries, given, first, second) : reached(tries, given, first);
  const notes = done.amounts.map(({ at, found }) => told(at, found));
  return { ...done.alteration, findings: [...done.alteration.findings, ...notes] };
}

interface Reached {
  readonly alteration: Alteration;
  readonly amounts: readonly { readonly at: GoalAt; readonly found: Found }[];
}

/** Steps tried; what first refused to be measured, else to be done, is kept for where none comes to anything. */
interface Tries {
  readonly alter: (given: unknown) => Alteration | undefined;
  readonly measure: (given: unknown, at: GoalAt) => number | undefined;
  readonly refused: () => unknown;
}

function triesOf(verb: AnyVerb, pattern: Pattern): Tries {
  const refused: { measuring?: unknown; altering?: unknown } = {};
  const attempt = <T>(work: () => T, kind: 'measuring' | 'altering'): T | undefined => {
    try {
      return work();
    } catch (error) {
      if (!(error instanceof PatternError)) throw error;
      refused[kind] ??= error;
      return undefined;
    }
  };
  const alter = (given: unknown) => attempt(() => perform(verb, pattern, given as object), 'altering');
  return {
    alter,
    measure: (given, { goal }) => {
      const altered = alter(given);
      return altered && attempt(() => measured(altered.pattern, goal.soThat), 'measuring');
    },
    refused: () => refused.measuring ?? refused.altering,
  };
}

function reached(tries: Tries, given: unknown, at: GoalAt): Reached {
  const found = findAmount(amount => tries.measure(withValueAt(given, at.path, amount), at), searchOf(at));
  const alteration = tries.alter(withValueAt(given, at.path, required(tries, at, found).amount));
  if (!alteration) throw tries.refused();
  return { alteration, amounts: [{ at, found: found! }] };
}

/** The second goal is reached anew for every amount tried for the first, beginning at what did it last. */
function bothReached(tries: Tries, given: unknown, first: GoalAt, second: GoalAt): Reached {
  let near: number | undefined;
  const withSecond = (amount: number): Found | undefined => {
    const one = withValueAt(given, first.path, amount);
    const search = searchOf(second);
    const found = findAmount(b => tries.measure(withValueAt(one, second.path, b), second), {
      ...search,
      ...(near === undefined ? {} : { near }),
    });
    if (found?.reached) near = found.amount;
    return found;
  };
  const outcome = (amount: number): number | undefined => {
    const inner = withSecond(amount);
    if (!inner?.reached) return undefined;
    const one = withValueAt(given, first.path, amount);
    return tries.measure(withValueAt(one, second.path, inner.amount), first);
  };
  const found = findAmount(outcome, searchOf(first));
  if (!found) {
    // The second cannot be reached whatever the first is: told of the second, with the first at its least.
    required(tries, second, withSecond(Math.max(searchOf(first).least, 0)));
    throw tries.refused();
  }
  const { amount } = required(tries, first, found);
  const inner = required(tries, second, withSecond(amount));
  const both = withValueAt(withValueAt(given, first.path, amount), second.path, inner.amount);
  const alteration = tries.alter(both);
  if (!alteration) throw tries.refused();
  const amounts = [
    { at: first, found },
    { at: second, found: inner },
  ];
  return { alteration, amounts };
}

/** @throws PatternError `goal-not-reached`, or what refused every try */
function required(tries: Tries, at: GoalAt, found: Found | undefined): Found {
  if (!found) throw tries.refused();
  if (!found.reached) throw refusal('goal-not-reached', factsOf(at, found));
  return found;
}

const told = (at: GoalAt, found: Found): Finding => finding('note', 'amount-found', {}, factsOf(at, found));

const factsOf = ({ goal, path, field }: GoalAt, { amount, is }: Found) => ({
  field: fieldOf(path),
  measure: measureSaying(goal.soThat) satisfies Saying,
  ...(field.kind === 'share'
    ? { amountPercent: amount * 100 }
    : field.kind === 'angle'
      ? { amountDeg: (amount * 180) / Math.PI }
      : { amountMm: amount }),
  ...(goal.soThat.of === 'area' ? { isMm2: is } : { isMm: is }),
});

const fieldOf = (path: GoalAt['path']): string => path.filter(key => typeof key === 'string').join('.');

/** How far the first try goes: mm, degrees in rad, a share. */
const strides = { share: 0.02, angle: Math.PI / 360, length: 1 } as const;

function searchOf({ goal, field }: GoalAt) {
  const { kind, least = 0, most = Number.POSITIVE_INFINITY, over = false } = field;
  const stride = strides[kind === 'share' || kind === 'angle' ? kind : 'length'];
  const [from, to] = typeof goal.is === 'number' ? [goal.is, goal.is] : goal.is;
  return {
    // More than the least: the thousandth part of a stride more.
    least: over ? least + stride / 1000 : least,
    most,
    stride,
    from: Math.min(from, to),
    to: Math.max(from, to),
    within: nearEnough(goal.soThat),
  };
}
