import type {
  Facts,
  Finding,
  LengthUnit,
  PatternError,
  Saying,
  ToldFinding,
  Where,
} from '@paperhinge/geometry';
import { factsOf } from '@paperhinge/geometry/sayings';
import type { Catalogue, Told } from './catalogue.js';
import { type Say, sayer } from './say.js';

/** A catalogue in a reader's unit. */
export interface Words {
  readonly language: string;
  readonly unit: LengthUnit;
  readonly say: Say;
  /** A sentence: what was done, a job, a reason. */
  readonly sentence: (saying: Saying | string) => string;
  /** A finding as it is shown and recorded. */
  readonly finding: (finding: Finding) => ToldFinding;
  /** What an error says. */
  readonly error: (error: PatternError) => Told;
}

/**
 * Words of a catalogue, with lengths in `unit`.
 * @param more entries for codes that the project itself does not have, of operations written elsewhere
 */
export function wordsOf(catalogue: Catalogue, unit: LengthUnit, more: Partial<Entries> = {}): Words {
  // By code: the compiler has held the facts of each code to its entry where both were written.
  const tellings = { ...catalogue.tellings, ...more.tellings } as object as Entries['tellings'];
  const sentences = { ...catalogue.sentences, ...more.sentences } as object as Entries['sentences'];
  const sentence = (saying: Saying | string): string => {
    if (typeof saying === 'string') return saying;
    const { code, facts } = saying;
    return Object.hasOwn(sentences, code) ? sentences[code]!(facts, say) : unknown(code, facts);
  };
  const say = sayer(unit, catalogue.grammar, sentence);
  const told = (code: string, facts: Facts, where: Where): Told =>
    Object.hasOwn(tellings, code)
      ? tellings[code]!(facts, say, where)
      : { message: unknown(code, facts), remedy: '' };
  return {
    language: catalogue.grammar.language,
    unit,
    say,
    sentence,
    finding: found => {
      const { about, ...rest } = found;
      return { ...rest, ...told(found.code, factsOf(found), found.where) };
    },
    error: ({ code, facts, where }) => told(code, facts, where),
  };
}

/** Entries by code, as they are looked up. */
export interface Entries {
  readonly tellings: Readonly<Record<string, (facts: Facts, say: Say, where: Where) => Told>>;
  readonly sentences: Readonly<Record<string, (facts: Facts, say: Say) => string>>;
}

/** A code that no catalogue knows: an operation written elsewhere came without words. Said plainly rather than lost. */
const unknown = (code: string, facts: Facts): string =>
  [
    code.replaceAll('-', ' '),
    ...Object.entries(facts).map(([name, fact]) => `${name} ${JSON.stringify(fact)}`),
  ].join(', ');
