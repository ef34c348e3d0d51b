import { type EdgeRef, type Fastening, type Pattern, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import type { Alteration, Derived } from '../alteration.js';
import { distinctEdges } from '../edge-refs.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { bandMarks } from './band-marks.js';
import { drafted } from './drafted.js';
import { freePlace } from './free-place.js';
import { hemsAsSeams } from './hems-as-seams.js';
import { laidAlong, requireOneStretch } from './laid-along.js';
import { lappedBand } from './lapped-band.js';
import { ringSeam, seamAlong } from './sewn-on.js';
import { takePlace } from './take-place.js';
import { takenAllowance } from './taken-allowance.js';
import { refusal, saying } from './tellings.js';

/** A casing with its elastic. Lengths in mm. */
export interface DraftCasing {
  readonly name: string;
  readonly along: readonly EdgeRef[];
  /** Width of the elastic. */
  readonly elastic: number;
  /** Relaxed length of the elastic, joined. */
  readonly length: number;
  /** How much wider than the elastic the casing is, so that it can be drawn through; default 3. */
  readonly room?: number;
  readonly fabric?: string;
  /** mm that a hem among the edges gets when it becomes a seam; absent: what most seams of its piece have. */
  readonly allowance?: number;
}

/**
 * Drafts a casing: a band as long as its edges, folded lengthwise over an elastic that draws the edge in, and the
 * elastic itself as a fastening of its relaxed length. On paper a strip of twice the elastic's width and room; common
 * practice, no source. Nothing of the garment moves; a hem that it is sewn to becomes a seam.
 *
 * @throws PatternError `elastic-too-long`; `edges-do-not-join`, `drafted-along-itself`; `unknown-piece`,
 *   `unknown-edge`; those of `perform`
 */
export const draftCasing = (pattern: Pattern, parameters: DraftCasing): Alteration =>
  perform(draftCasingVerb, pattern, parameters);

/** mm. Room in which an elastic goes through and does not twist; common practice, no source. */
const usualRoom = 3;

export const draftCasingForm = formOf<DraftCasing>()({
  verb: 'draft casing',
  does: 'Drafts a casing, a band folded over an elastic as long as its edges, and the elastic that draws it in.',
  fields: {
    name: field.newName(),
    along: field.edgesOfPieces(),
    elastic: field.size(),
    length: field.size(),
    room: field.usually(field.length(), usualRoom),
    fabric: field.optional(field.cloth()),
    allowance: field.optional(field.length({ most: tolerances.largestAllowance })),
  },
  leaves: drafted,
  sentence:
    'Draft a casing "{name}" for {along}, for an elastic {elastic} wide and {length} long[, with {room} of room][, of the {fabric} cloth][, a hem among them now a seam of {allowance}]',
  startsAt: { edge: ['along'], table: [] },
  example: {
    pattern: 'woven-shift',
    step: { name: 'sleeve casing', along: ['sleeve.hem'], elastic: 12, length: 190 },
  },
});
export const draftCasingVerb = /* @__PURE__ */ verbFrom(draftCasingForm, drawnCasing);

type Whole = DraftCasing & Required<Pick<DraftCasing, 'room'>>;

function drawnCasing(given: Pattern, parameters: Whole): Alteration {
  const { name, elastic, length, room } = parameters;
  const along = distinctEdges(parameters.along);
  const { pattern, findings: turned } = hemsAsSeams(given, along, name, parameters.allowance);
  const laid = laidAlong(pattern, along);
  requireOneStretch(laid, name);
  const { edgeMm, count } = laid;
  if (length >= edgeMm) throw refusal('elastic-too-long', { piece: name, elasticMm: length, edgeMm });
  const allowance = takenAllowance(pattern, along);
  const fabric = parameters.fabric ?? pieceNamed(pattern, along[0]!.piece).cutting.fabric;
  const piece = lappedBand({
    name,
    role: 'band',
    madeFor: along,
    place: freePlace(pattern, name),
    fabric,
    overlap: 0,
    sewn: edgeMm,
    underlap: 0,
    width: elastic + room,
    ratio: 1,
    folded: true,
    allowance,
    notches: bandMarks(laid, edgeMm).map(({ at, label }) => ({ at, style: 'single' as const, name: label })),
    count,
    interfaced: false,
  });
  const placed = takePlace(pattern, piece, seamAlong(name, laid, 0), ringSeam(name, laid));
  const derived = derivedOf(parameters, { along, edgeMm, count, allowance, fabric });
  return {
    pattern: withElastic(placed.pattern, parameters),
    did: saying('drafted-casing', {
      piece: name,
      count,
      edgeMm,
      lengthMm: derived.lengthMm,
      widthMm: derived.widthMm,
      elasticMm: length,
      drawnPercent: (1 - length / edgeMm) * 100,
      replaced: placed.replaced,
    }),
    findings: [...turned, ...placed.findings],
    derived: [derived],
  };
}

function derivedOf(
  { name, elastic, length, room }: Whole,
  {
    count,
    allowance,
    ...strip
  }: Pick<Derived, 'along' | 'edgeMm' | 'fabric'> & { readonly count: number; readonly allowance: number },
): Derived {
  return {
    name,
    kind: 'strip',
    lengthMm: strip.edgeMm + 2 * allowance,
    widthMm: 2 * (elastic + room) + 2 * allowance,
    ...strip,
    ...(count > 1 ? { count } : {}),
    figures: {
      joinMm: allowance,
      allowanceMm: allowance,
      elasticMm: length,
      finishedWidthMm: elastic + room,
    },
  };
}

function withElastic(pattern: Pattern, { name, elastic, length }: Whole): Pattern {
  const fastening: Fastening = {
    name: `${name} elastic`,
    kind: 'elastic',
    along: { piece: name, edge: 'sewn', reversed: false },
    size: elastic,
    relaxed: length,
  };
  const others = (pattern.fastenings ?? []).filter(one => one.name !== fastening.name);
  return { ...pattern, fastenings: [...others, fastening] };
}
