import type { Facts, Tellable, Where } from './telling.js';

/**
 * Input that cannot be used: a code with the figures and references behind it, stable and meant for programs. The
 * words for people are found for it at the outer edge (`@paperhinge/sheet`), in the reader's language and unit; its
 * own `message` is the code with its facts. Inner geometry throws without `where`; the caller that knows the place
 * adds it with {@link locating}. Made by a `refusal`, see `RefusalOf`.
 */
export class PatternError extends Error implements Tellable {
  readonly code: string;
  readonly where: Where;
  readonly facts: Facts;

  constructor(code: string, { facts, where = {} }: { readonly facts: Facts; readonly where?: Where }) {
    super(plainly(code, facts));
    this.name = 'PatternError';
    this.code = code;
    this.where = where;
    this.facts = facts;
  }
}

/** A code with its facts on one line, for a programmer's eye: `spread-too-wide {"byMm":90}`. */
function plainly(code: string, facts: Facts): string {
  const told = JSON.stringify(facts);
  return told === '{}' ? code : `${code} ${told}`;
}

/**
 * Runs `work`; a `PatternError` that passes gets the parts of `where` it does not have yet.
 * @throws whatever `work` throws
 */
export function locating<T>(where: Where, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    const { code, facts } = error;
    const located = new PatternError(code, { facts, where: { ...where, ...error.where } });
    // Where it was thrown stays known.
    if (error.stack !== undefined) located.stack = error.stack;
    throw located;
  }
}

export type { Finding, Severity } from './telling.js';
