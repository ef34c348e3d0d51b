import type { AlterSentences, AlterTellings } from '@paperhinge/alter';
import type { Where } from '@paperhinge/geometry';
import type { GeometryTellings, SayingTable } from '@paperhinge/geometry/sayings';
import type { PrintTellings } from '@paperhinge/print';
import type { CommandSentences } from '../command-sayings.js';
import type { SheetTellings } from '../tellings.js';
import type { Grammar, Say } from './say.js';

export type { Say } from './say.js';

/** What is told of a place, and what to do about it. */
export interface Told {
  readonly message: string;
  readonly remedy: string;
}

/** Words for every code of a table of tellings (findings and refusals). */
export type Tellings<S extends SayingTable<S>> = {
  readonly [C in keyof S]: (facts: S[C], say: Say, where: Where) => Told;
};

/** Words for every code of a table of sentences: what was done, jobs, reasons, cautions. */
export type Sentences<S extends SayingTable<S>> = {
  readonly [C in keyof S]: (facts: S[C], say: Say) => string;
};

/** Everything the project says to a maker, in one language. The compiler holds it complete. */
export interface Catalogue {
  readonly grammar: Grammar;
  readonly tellings: Tellings<GeometryTellings> &
    Tellings<AlterTellings> &
    Tellings<PrintTellings> &
    Tellings<SheetTellings>;
  readonly sentences: Sentences<AlterSentences> & Sentences<CommandSentences>;
}
