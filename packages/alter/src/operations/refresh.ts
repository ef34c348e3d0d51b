import { type EdgeRef, type Finding, type Pattern, type Piece, pieceNamed } from '@paperhinge/geometry';
import type { Alteration, Derived } from '../alteration.js';
import { inTurn } from '../became/in-turn.js';
import { draftBandVerb } from '../derive/draft-band.js';
import { draftCasingVerb } from '../derive/draft-casing.js';
import { draftCollarVerb } from '../derive/draft-collar.js';
import { draftCombinedFacingVerb } from '../derive/draft-combined-facing.js';
import { draftFacingVerb } from '../derive/draft-facing.js';
import { draftFlyVerb } from '../derive/draft-fly.js';
import { draftFrontFacingVerb } from '../derive/draft-front-facing.js';
import { draftHoodVerb } from '../derive/draft-hood.js';
import { draftInterfacingVerb } from '../derive/draft-interfacing.js';
import { draftLiningVerb } from '../derive/draft-lining.js';
import { draftNotchedCollarVerb } from '../derive/draft-notched-collar.js';
import { draftPatchPocketVerb } from '../derive/draft-patch-pocket.js';
import { draftPlacketVerb } from '../derive/draft-placket.js';
import { draftSeamPocketVerb } from '../derive/draft-seam-pocket.js';
import { draftSlantPocketForm } from '../derive/draft-slant-pocket.js';
import { draftStayVerb } from '../derive/draft-stay.js';
import { draftBindingVerb, draftStripVerb } from '../derive/draft-strip.js';
import { draftCuffVerb, draftWaistbandVerb } from '../derive/draft-waistband.js';
import { slantPocketAgain } from '../derive/slant-pocket-again.js';
import type { SlantPocketMade } from '../derive/slant-pocket-pieces.js';
import { distinctEdges } from '../edge-refs.js';
import { withoutGodet } from '../fullness/without-godet.js';
import * as field from '../verb/fields.js';
import type { AnyVerb } from '../verb/form.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { draftFlounceVerb } from './draft-flounce.js';
import { type DraftGodet, draftGodet, draftGodetForm } from './draft-godet.js';
import { finding, refusal, saying } from './tellings.js';

/** Draft pieces again that were made for edges. */
export interface Refresh {
  /** Absent: all that were drafted before, in their order. */
  readonly pieces?: readonly string[];
}

/**
 * Drafts pieces again that were made for edges, by the same measures, for those edges as they are now and under the
 * names that they have now: on paper, the maker measures the edge again and cuts the band, facing or collar anew. Only
 * what was drafted in this run is known by its measures; another piece is drafted anew by its own step. Source: common
 * practice, no source.
 *
 * @throws PatternError `unknown-piece`; `not-drafted-here`; what the draft itself refuses; those of `perform`
 */
export const refresh = (pattern: Pattern, parameters: Refresh = {}): Alteration =>
  perform(refreshVerb, pattern, parameters);

export const refreshForm = formOf<Refresh>()({
  verb: 'refresh',
  does: 'Drafts bands, facings, collars and whatever else was made for edges again, for those edges as they are now.',
  fields: { pieces: field.optional(field.pieces()) },
  leaves: () => ({ seams: 'unknown' }),
  sentence: 'Draft again what was made for edges[: {pieces}]',
  startsAt: { piece: ['pieces'], table: [] },
  example: { pattern: 'woven-shift', step: {} },
});
export const refreshVerb = /* @__PURE__ */ verbFrom(refreshForm, refreshed);

/** The verbs that draft a piece for edges; a function, as this file and theirs may be read in any order. */
const drafts = (): readonly AnyVerb[] => [
  draftBandVerb,
  draftWaistbandVerb,
  draftCuffVerb,
  draftCasingVerb,
  draftPlacketVerb,
  draftPatchPocketVerb,
  draftSeamPocketVerb,
  draftFlyVerb,
  draftCollarVerb,
  draftNotchedCollarVerb,
  draftHoodVerb,
  draftLiningVerb,
  draftStripVerb,
  draftBindingVerb,
  draftFacingVerb,
  draftCombinedFacingVerb,
  draftFrontFacingVerb,
  draftStayVerb,
  draftInterfacingVerb,
  draftFlounceVerb,
];

type Recipe = NonNullable<Piece['recipe']>;

function refreshed(pattern: Pattern, { pieces }: Refresh): Alteration {
  const named =
    pieces?.map(name => pieceNamed(pattern, name)) ?? pattern.pieces.filter(piece => piece.recipe);
  const unknown = named.find(({ recipe }) => recipe === undefined);
  if (unknown) throw refusal('not-drafted-here', { piece: { piece: unknown.name } }, { piece: unknown.name });
  const recipes = [...new Set(named.map(({ recipe }) => recipe!))];
  const findings: Finding[] = [];
  const derived: Derived[] = [];
  const names: { readonly piece: string }[] = [];
  let now: Pick<Alteration, 'pattern' | 'became'> = { pattern };
  for (const recipe of recipes) {
    const done = draftedAgain(now.pattern, recipe);
    // What was drafted by measures alone is as it was.
    if (!done) continue;
    findings.push(...done.findings.filter(({ code }) => code !== 'piece-replaced'));
    derived.push(...(done.derived ?? []));
    names.push(
      ...now.pattern.pieces.filter(piece => piece.recipe === recipe).map(piece => ({ piece: piece.name })),
    );
    const became = now.became && done.became ? inTurn(now.became, done.became) : done.became;
    now = { pattern: done.pattern, ...(became ? { became } : {}) };
  }
  return {
    ...now,
    did: saying('refreshed', { pieces: names }),
    findings: names.length === 0 ? [finding('note', 'nothing-to-refresh', {}, {})] : findings,
    derived,
  };
}

function draftedAgain(pattern: Pattern, recipe: Recipe): Alteration | undefined {
  const verb = drafts().find(one => one.verb === recipe.verb);
  if (verb) return perform(verb, pattern, { ...recipe.parameters, ...alongNow(pattern, recipe, verb) });
  const again = againWith(recipe);
  return again && perform({ ...refreshForm, fields: {}, alter: again } as AnyVerb, pattern, {});
}

/** How what changed the garment itself when it was drafted is drawn to it again. */
function againWith({ verb, parameters }: Recipe): ((pattern: Pattern) => Alteration) | undefined {
  const given: unknown = parameters;
  if (verb === draftGodetForm.verb)
    return pattern => draftGodet(withoutGodet(pattern, given as DraftGodet), given as DraftGodet);
  // A slant pocket was cut out of the garment itself: its mouth stands, and its pieces are drawn to it again.
  if (verb === draftSlantPocketForm.verb)
    return pattern => slantPocketAgain(pattern, given as SlantPocketMade);
  return undefined;
}

/** The edges that the pieces of a recipe are made for under their present names; a step may have divided them. */
function alongNow(
  pattern: Pattern,
  recipe: Recipe,
  verb: AnyVerb,
): { readonly along?: EdgeRef | readonly EdgeRef[] } {
  if (!('along' in verb.fields)) return {};
  const own = pattern.pieces.filter(piece => piece.recipe === recipe);
  const made = own.map(({ name }) => name);
  const edges = distinctEdges(own.flatMap(({ madeFor = [] }) => madeFor)).filter(
    ({ piece }) => !made.includes(piece),
  );
  if (edges.length === 0) return {};
  return { along: Array.isArray(recipe.parameters.along) ? edges : edges[0]! };
}
