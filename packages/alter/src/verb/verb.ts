import type { Pattern, Piece } from '@paperhinge/geometry';
import type { Alteration, Redrawn, Said } from '../alteration.js';
import { saidByNames } from '../became/said-by-names.js';
import { settled } from '../settled.js';
import { checkFields } from './check-fields.js';
import type { Fields, FieldsOf, Filled } from './fields.js';

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
  readonly example: { readonly pattern: string; readonly step: Readonly<Record<string, unknown>> };
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

/**
 * Declares the form of a verb whose parameters are `P`, each with its field:
 * `export const shortenForm = formOf<Shorten>()({ verb: 'shorten', fields: { … }, … })`.
 */
export const formOf =
  <P>() =>
  <const F extends FieldsOf<P>, const N extends string>(form: VerbForm<P, F, N>): VerbForm<P, F, N> =>
    form;

/**
 * The verb of a form: `export const shortenVerb = verbFrom(shortenForm, (pattern, { by }) => …)`; marked as pure where
 * it is called, so that a bundler can leave it out where the form alone is asked for.
 */
export function verbFrom<
  P,
  F extends FieldsOf<P>,
  N extends string,
  Alter extends Verb<P, F, N>['alter'] = Verb<P, F, N>['alter'],
>(form: VerbForm<P, F, N>, alter: Alter): VerbForm<P, F, N> & { readonly alter: Alter } {
  return { ...form, alter };
}

/** Form and work in one, as a verb of one's own is declared: `verbOf<Retitle>()({ verb: 'retitle', …, alter })`. */
export const verbOf =
  <P>() =>
  <const F extends FieldsOf<P>, const N extends string>(declaration: Verb<P, F, N>): Verb<P, F, N> =>
    declaration;

/**
 * Does a verb to a pattern: what is left out takes its usual value, and what is no value of its field's kind is
 * refused before any work is done. Then whatever the step left without a place is taken out and told, see `settled`.
 * A step of a sheet and a call of the library both come this way.
 * @throws PatternError `field-missing`, `field-not-usable`, `field-out-of-range`, `fields-exclude`, `field-unknown`;
 *   what the operation refuses
 */
export function perform<P, F extends FieldsOf<P>>(verb: Verb<P, F>, pattern: Pattern, given: P): Alteration;
/** A verb from a list, with fields not yet known to be its own. */
export function perform(verb: AnyVerb, pattern: Pattern, given: object): Alteration;
export function perform(verb: object, pattern: Pattern, given: unknown): Alteration {
  const { alter, verb: name } = verb as AnyVerb;
  const parameters = checkFields(verb as AnyVerb, given);
  const done = settled(pattern, saidByNames(pattern, alter(pattern, parameters as never)));
  return { ...done, pattern: withRecipe(done, { verb: name, parameters }) };
}

/** The pieces that a step drafted, with how: one recipe for all of one step. What was drafted within it has its own. */
function withRecipe({ pattern, derived = [] }: Alteration, recipe: NonNullable<Piece['recipe']>): Pattern {
  const names = derived.map(({ name }) => name);
  if (names.length === 0) return pattern;
  const pieces = pattern.pieces.map(piece =>
    names.includes(piece.name) && piece.recipe === undefined ? { ...piece, recipe } : piece,
  );
  return { ...pattern, pieces };
}

/** {@link perform} for a verb that says what became of what, and drafts nothing. */
export const performSaid = <P, F extends FieldsOf<P>>(
  verb: VerbForm<P, F> & { readonly alter: (pattern: Pattern, parameters: Filled<P, F>) => Redrawn },
  pattern: Pattern,
  given: P,
): Said => settled(pattern, verb.alter(pattern, checkFields(verb, given) as Filled<P, F>));
