import type { Pattern } from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import type { Fields, FieldsOf, Filled } from './field.js';

/** A thing on the table that a sentence can begin at. */
export type Start =
  | 'edge'
  | 'corner'
  | 'dart'
  | 'pleat'
  | 'notch'
  | 'line'
  | 'mark'
  | 'seam'
  | 'piece'
  | 'table';

/** Names that a step makes and unmakes, as far as they can be told without running it. */
export interface Leaves {
  /** Pieces that are there afterwards, with names of edges that only a run can tell. */
  readonly pieces?: readonly string[];
  /** There may be more pieces that only a run can tell, as where a step is done to those beside, too. */
  readonly morePieces?: boolean;
  /** Pieces there before that may have other names on them afterwards. */
  readonly changed?: readonly string[];
  readonly removed?: readonly string[];
  /** Seams that are there afterwards; `unknown` where only a run can tell. */
  readonly seams?: readonly string[] | 'unknown';
}

/**
 * All there is to know of a trade verb but how it is done: schema, pick-lists, sentences, handles, reference and
 * errors are derived from it. It stands beside its operation, yet apart from it, so that what only reads sheets or
 * offers verbs carries no geometry; `verbs.ts` lists them.
 */
export interface VerbForm<P = never, F extends FieldsOf<P> = FieldsOf<P>, N extends string = string> {
  /** As a sheet writes it: `close dart`. */
  readonly verb: N;
  /** What the maker does on paper, in one or two sentences of plain words. */
  readonly does: string;
  readonly fields: F;
  /** Of each list exactly one is given. */
  readonly oneOf?: readonly (readonly (keyof P & string)[])[];
  /** The field that is missing beside those that are there. */
  readonly lacks?: (parameters: P) => (keyof P & string) | undefined;
  readonly leaves?: (parameters: P) => Leaves;
  /**
   * What it says in plain words, its fields in braces: `Close the {dart} of the {piece} into the {into}[ at {at}]`.
   * What stands in brackets is said only where its field is given. A field of a group is `{to.edge}`.
   */
  readonly sentence: string;
  /** Where it can begin, and which fields the thing touched fills, in the order piece, then the thing. */
  readonly startsAt: { readonly [S in Start]?: readonly string[] };
  /** One step as a sheet writes it, on one of the demo patterns. */
  readonly example: {
    readonly pattern: string;
    /** Steps that must have been done before it, each under its verb. */
    readonly after?: readonly Readonly<Record<string, Readonly<Record<string, unknown>>>>[];
    readonly step: Readonly<Record<string, unknown>>;
  };
}

/** A verb: its form and what it does. */
export interface Verb<P = never, F extends FieldsOf<P> = FieldsOf<P>, N extends string = string>
  extends VerbForm<P, F, N> {
  readonly alter: (pattern: Pattern, parameters: Filled<P, F>) => Alteration;
}

/** The form of a verb of any parameters, as lists of them hold it. */
export interface AnyVerbForm extends Omit<VerbForm<never>, 'fields' | 'oneOf' | 'lacks' | 'leaves'> {
  readonly fields: Fields;
  readonly oneOf?: readonly (readonly string[])[];
  readonly lacks?: (parameters: never) => string | undefined;
  readonly leaves?: (parameters: never) => Leaves;
}

/** A verb of any parameters, as lists of them hold it. */
export interface AnyVerb extends AnyVerbForm {
  readonly alter: (pattern: Pattern, parameters: never) => Alteration;
}
