import { type EdgeRef, type Pattern, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { withPiece } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { nothingBecame, together } from '../became/became.js';
import { holdsEdge } from '../edge-refs.js';
import { type GoesOn, grownOn } from '../redrawn-edges/grown-on.js';
import { seamsGoingOn } from '../redrawn-edges/seams-going-on.js';
import { refusal, saying } from '../redrawn-edges/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Add a facing or a hem band beyond a straight edge, cut in one with the piece. */
export interface AddGrownOnFacing {
  readonly edges: readonly EdgeRef[];
  /** mm beyond the edge. */
  readonly width: number;
  /** mm of allowance on the free edge of the facing; default 10, 0 leaves it raw. */
  readonly turn?: number;
}

/**
 * Adds a facing that is cut in one with its piece beyond a straight edge, such as a hem that is turned up deep or the
 * neck of a cowl: the paper is folded in the edge and what lies within the facing's width of it is traced, so that
 * folded up it lies edge on edge, flared where the piece tapers and tapered where it flares. The piece itself stays as
 * it is; the edge is a fold line now, and a fold beside it runs on. Where both sides of a seam go on in facings, it is
 * sewn through them. Source: common practice, no source.
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`, `grown-on-edge-curved`, `grown-on-off-square`,
 *   `grown-on-edge-sewn`, `grown-facing-too-wide`, `corner-beside-dart`, `edge-in-two-parts`, `edge-name-taken`,
 *   `redrawn-crosses`; those of `perform`
 */
export const addGrownOnFacing = (pattern: Pattern, parameters: AddGrownOnFacing): Alteration =>
  perform(addGrownOnFacingVerb, pattern, parameters);

/** mm. */
const usualTurn = 10;

export const addGrownOnFacingForm = formOf<AddGrownOnFacing>()({
  verb: 'add grown-on facing',
  does: 'Adds a facing or a hem band beyond a straight edge, cut in one with the piece and shaped to lie on it edge on edge when it is folded up.',
  fields: {
    edges: field.edgesOfPieces(),
    width: field.size(),
    turn: field.usually(field.length({ most: tolerances.largestAllowance }), usualTurn),
  },
  leaves: ({ edges }) => ({ changed: edges.map(({ piece }) => piece) }),
  sentence: 'Add a grown-on facing {width} wide to {edges}[, with {turn} to turn in]',
  startsAt: { edge: ['edges'] },
  example: {
    pattern: 'trousers',
    step: { edges: ['front.hem', 'back.hem'], width: '50 mm' },
  },
});
export const addGrownOnFacingVerb = /* @__PURE__ */ verbFrom(
  addGrownOnFacingForm,
  (pattern, { edges, width, turn }) => {
    let altered = pattern;
    let became = nothingBecame;
    const grown = new Map<string, readonly GoesOn[]>();
    for (const edge of edges) {
      const sewn = pattern.seams.find(({ a, b }) => holdsEdge([...a, ...b], edge));
      if (sewn) throw refusal('grown-on-edge-sewn', { edge: { ...edge }, seam: { seam: sewn.name } }, edge);
      const done = locating(edge, () => grownOn(pieceNamed(altered, edge.piece), edge.edge, width, turn));
      altered = withPiece(altered, done.piece);
      became = together(became, done.became);
      grown.set(edge.piece, [...(grown.get(edge.piece) ?? []), ...done.goesOn]);
    }
    const { seams, findings } = seamsGoingOn(altered.seams, grown);
    return {
      pattern: { ...altered, seams },
      became,
      did: saying('grown-on', { edges: edges.map(edge => ({ ...edge })), widthMm: width }),
      findings,
    };
  },
);
