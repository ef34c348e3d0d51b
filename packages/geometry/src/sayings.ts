import { PatternError } from './errors.js';
import type { Facts, Finding, Saying, Severity, Where } from './telling.js';

/** A finding in words, as it is shown and recorded. */
export interface ToldFinding extends Omit<Finding, 'about'> {
  readonly message: string;
  readonly remedy: string;
}

/** The sayings of a package: which facts belong to which code. */
export type SayingTable<S> = { readonly [C in keyof S]: object };
/** The facts of a code that says all by itself. */
export type NoFacts = Readonly<Record<string, never>>;

/**
 * The makers of sayings for a table of codes and their facts, so that the compiler holds what is said and its words
 * to one another; a package names those it uses, and carries no other:
 *
 * ```ts
 * interface HingeTellings { 'spread-too-wide': { readonly slashMm: number; readonly byMm: number } }
 * export const refusal: RefusalOf<HingeTellings> = anyRefusal;
 * throw refusal('spread-too-wide', { slashMm: 40, byMm: 90 });
 * ```
 */
export type RefusalOf<S extends SayingTable<S>> = <C extends keyof S & string>(
  code: C,
  facts: S[C],
  where?: Where,
) => PatternError;
/** As {@link RefusalOf}. */
export type FindingOf<S extends SayingTable<S>> = <C extends keyof S & string>(
  severity: Severity,
  code: C,
  where: Where,
  facts: S[C],
) => Finding;
/** As {@link RefusalOf}. */
export type SayingOf<S extends SayingTable<S>> = <C extends keyof S & string>(code: C, facts: S[C]) => Saying;

/** An error to throw. */
export const anyRefusal = (code: string, facts: object, where: Where = {}): PatternError =>
  new PatternError(code, { facts: facts as Facts, where });

/** A finding: numbers become its figures, all else what it speaks of. */
export const anyFinding = (severity: Severity, code: string, where: Where, facts: object): Finding => ({
  severity,
  code,
  where,
  ...partedFacts(facts as Facts),
});

/** A sentence to be worded later. */
export const anySaying = (code: string, facts: object): Saying => ({ code, facts: facts as Facts });

function partedFacts(facts: Facts): Pick<Finding, 'figures' | 'about'> {
  const part = (name: string, areFigures: boolean) => {
    const own = Object.entries(facts).filter(
      ([, fact]) => fact !== undefined && (typeof fact === 'number') === areFigures,
    );
    return own.length > 0 ? { [name]: Object.fromEntries(own) } : {};
  };
  return { ...part('figures', true), ...part('about', false) };
}

/** All facts of a finding together again, for its words. */
export const factsOf = ({ figures, about }: Finding): Facts => ({ ...figures, ...about });
