import type { Pattern, Piece } from '@paperhinge/geometry';
import { requirePattern } from '@paperhinge/geometry/internal';
import type { Alteration, Redrawn, Said } from '../alteration.js';
import { withOpenings } from '../became/end-to-end.js';
import { withLeftToTrue } from '../became/left-to-true.js';
import { saidByNames } from '../became/said-by-names.js';
import { settled } from '../settled.js';
import { type CheckedForm, checkFields } from './check-fields.js';
import type { FieldsOf, Filled } from './field.js';
import type { AnyVerb, Verb, VerbForm } from './form.js';

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
 * refused before any work is done. Then whatever the step left without a place is taken out and told, see `settled`,
 * and what was open from end to end is so again, see `withOpenings`.
 * A step of a sheet and a call of the library both come this way.
 * @throws PatternError `pattern-not-usable`; `field-missing`, `field-not-usable`, `field-out-of-range`, `fields-exclude`, `field-unknown`;
 *   what the operation refuses
 */
export function perform<P, F extends FieldsOf<P>>(verb: Verb<P, F>, pattern: Pattern, given: P): Alteration;
/** A verb from a list, with fields not yet known to be its own. */
export function perform(verb: AnyVerb, pattern: Pattern, given: object): Alteration;
export function perform(verb: object, pattern: Pattern, given: unknown): Alteration {
  requirePattern(pattern);
  const { alter, verb: name } = verb as AnyVerb;
  const parameters = checkFields(verb as AnyVerb, given);
  const kept = settled(pattern, saidByNames(pattern, alter(pattern, parameters as never)));
  const done = withLeftToTrue(pattern, withOpenings(pattern, kept));
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

/**
 * {@link perform} for a verb that says what became of what, and drafts nothing. Of its form only what is checked is
 * asked for, so that a bundle of one operation need not carry what it is called and how it is spoken of, nor what
 * openings do: those follow where the same verb is done by `perform`, as a step of a sheet is.
 */
export const performSaid = <P, F extends FieldsOf<P>>(
  verb: Pick<VerbForm<P, F>, keyof CheckedForm> & {
    readonly alter: (pattern: Pattern, parameters: Filled<P, F>) => Redrawn;
  },
  pattern: Pattern,
  given: P,
): Said => withLeftToTrue(pattern, performUnmarked(verb, pattern, given));

/**
 * {@link performSaid} that carries the corners left to be trued and adds none: for the one function whose bundle has no
 * room for it. As a step of a sheet the same verb adds them.
 */
export const performUnmarked = <P, F extends FieldsOf<P>>(
  verb: Pick<VerbForm<P, F>, keyof CheckedForm> & {
    readonly alter: (pattern: Pattern, parameters: Filled<P, F>) => Redrawn;
  },
  pattern: Pattern,
  given: P,
): Said => {
  requirePattern(pattern);
  return settled(pattern, verb.alter(pattern, checkFields(verb, given) as Filled<P, F>));
};
