import {
  type Edge,
  type EdgeRef,
  line,
  type Pattern,
  type Piece,
  pathOf,
  pieceNamed,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import type { Alteration, Derived } from '../alteration.js';
import { freePlace, laidAside } from '../derive/free-place.js';
import { runsAlong } from '../derive/garment-chain.js';
import { hemsAsSeams } from '../derive/hems-as-seams.js';
import { laidAlong, requireOneStretch } from '../derive/laid-along.js';
import { titled } from '../derive/long-piece.js';
import { takePlace } from '../derive/take-place.js';
import { takenAllowance } from '../derive/taken-allowance.js';
import { distinctEdges } from '../edge-refs.js';
import { sectorOutline } from '../fullness/ring-sector.js';
import { saying } from '../fullness/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Draft a flounce: rings whose inner lines together are as long as the edge they are sewn to. */
export interface DraftFlounce {
  readonly name: string;
  readonly along: readonly EdgeRef[];
  /** mm from its seam to its hem. */
  readonly width: number;
  /** How many rings are sewn together to one flounce; more of them are fuller. Default 1. */
  readonly rings?: number;
  /** mm; default 10. */
  readonly hem?: number;
  readonly fabric?: string;
  /** mm that a hem among the edges gets when it becomes a seam; absent: what most seams of its piece have. */
  readonly allowance?: number;
}

/**
 * Drafts a circular flounce for edges that follow one another in the garment: `rings` rings, each slit open, whose inner
 * lines together are as long as the edges. The radius is that length over 2π times the number of rings; hem and seam
 * differ by 2π times width and rings. Drawn as half a ring on the fold. Source: common practice (radius [derived]).
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`, `edges-do-not-join`, `drafted-along-itself`; those of `perform`
 */
export const draftFlounce = (pattern: Pattern, parameters: DraftFlounce): Alteration =>
  perform(draftFlounceVerb, pattern, parameters);

export const draftFlounceForm = formOf<DraftFlounce>()({
  verb: 'draft flounce',
  does: 'Drafts a circular flounce: rings, slit open, whose inner lines together are as long as the edges they are sewn to. More rings fall fuller.',
  fields: {
    name: field.newName(),
    along: field.edgesOfPieces(),
    width: field.size(),
    rings: field.usually(field.count(20), 1),
    hem: field.usually(field.length({ most: tolerances.largestAllowance }), 10),
    fabric: field.optional(field.cloth()),
    allowance: field.optional(field.length({ most: tolerances.largestAllowance })),
  },
  leaves: ({ name }) => ({ pieces: [name], seams: [name] }),
  sentence:
    'Draft a flounce "{name}" for {along}, {width} wide[, in {rings} rings][, with {hem} at its hem][, of the {fabric} cloth][, a hem among them now a seam of {allowance}]',
  startsAt: { edge: ['along'], table: [] },
  example: {
    pattern: 'woven-shift',
    step: { name: 'flounce', along: ['sleeve.hem'], width: '80 mm' },
  },
});
export const draftFlounceVerb = /* @__PURE__ */ verbFrom(draftFlounceForm, (given, parameters) => {
  const { name, width, rings } = parameters;
  const along = distinctEdges(parameters.along);
  const { pattern, findings } = hemsAsSeams(given, along, name, parameters.allowance);
  const laid = laidAlong(pattern, along);
  requireOneStretch(laid, name);
  const radius = laid.edgeMm / (2 * Math.PI * rings);
  const piece = laidAside(pattern, flouncePiece(pattern, { ...parameters, along }, radius, laid.count));
  const sweepMm = laid.edgeMm + 2 * Math.PI * width * rings;
  const derived: Derived = {
    name,
    kind: 'strip',
    lengthMm: laid.edgeMm,
    widthMm: width,
    fabric: piece.cutting.fabric,
    along,
    edgeMm: laid.edgeMm,
    ...(laid.count > 1 ? { count: laid.count } : {}),
    figures: { radiusMm: radius, sweepMm, rings },
  };
  const placed = takePlace(pattern, piece, {
    own: [{ piece: name, edge: 'sewn', reversed: false }],
    partner: runsAlong(laid.chains),
    easeMm: 0,
  });
  return {
    pattern: placed.pattern,
    did: saying('drafted-flounce', {
      piece: { piece: name },
      along: along.map(ref => ({ ...ref })),
      edgeMm: laid.edgeMm,
      radiusMm: radius,
      widthMm: width,
      rings,
      sweepMm,
    }),
    findings: [...findings, ...placed.findings],
    derived: [derived],
  };
});

type Whole = DraftFlounce & Required<Pick<DraftFlounce, 'rings' | 'hem'>>;

/** Half a ring on the fold; left and right each have their own where the garment has two such edges. */
function flouncePiece(pattern: Pattern, wish: Whole, radius: number, times: number): Piece {
  const { name, along, width, rings, hem, fabric } = wish;
  const middle = freePlace(pattern, name);
  const allowance = takenAllowance(pattern, along);
  const edge = (label: string, kind: Edge['kind'], mm: number): Edge => ({
    type: 'edge',
    name: label,
    path: pathOf(line(middle, middle)),
    kind,
    allowance: mm,
    corners: {},
  });
  const outline = sectorOutline({ inner: radius, outer: radius + width, sweep: Math.PI }, middle, {
    inner: edge('sewn', 'seam', allowance),
    side: edge('join', 'seam', allowance),
    outer: edge('hem', 'hem', hem),
    start: edge('centre', 'fold', 0),
  });
  const beside = Math.min(10, radius / 2);
  const from = { x: middle.x + beside, y: middle.y + radius + width * 0.2 };
  const grain = pathOf(line(from, { x: from.x, y: middle.y + radius + width * 0.8 }));
  return {
    name,
    title: titled(name),
    role: 'strip',
    outline: { parts: outline },
    notches: [],
    lines: [{ kind: 'grain', name: 'grain', path: grain }],
    marks: [],
    cutting: {
      count: rings * times,
      mirrored: false,
      fabric: fabric ?? pieceNamed(pattern, along[0]!.piece).cutting.fabric,
    },
    madeFor: along,
  };
}
