import { type Pattern, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { withPiece } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { nothingBecame } from '../became/became.js';
import { inTurn } from '../became/in-turn.js';
import { drawnToPivot } from '../darts/drawn-to-pivot.js';
import { withLegsTrued } from '../darts/legs-trued.js';
import { pivotOf } from '../darts/pivot.js';
import { withRestSetBack } from '../darts/rest-set-back.js';
import { backOf, type DartPart, sharedOut, sharedParts, toldPart } from '../darts/shared-out.js';
import { saying } from '../darts/tellings.js';
import { dartAngle } from '../hinge/assemble.js';
import { dartNamed } from '../hinge/dart-named.js';
import { inDegrees } from '../hinge/degrees.js';
import type { Reshaped } from '../moved-edges/chains.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

export type { DartPart } from '../darts/shared-out.js';

/** Close a dart into several edges at once, and into other darts, each taking its share. */
export interface ShareDart {
  readonly piece: string;
  readonly dart: string;
  readonly among: readonly DartPart[];
  /** Name of a point mark that all turns about; absent = the point of the dart that is closed. */
  readonly pivot?: string;
}

/**
 * Shares a dart out: slashes from each edge, and from each other dart, to the pivot; every strip between two slashes
 * turns about it by the shares of the slashes between itself and the one that stays. An edge opens by 2 R sin(θ/2), R
 * being its slash's length and θ its share of the dart's angle; another dart opens by θ. The sum of all angles about
 * the pivot is kept. What the shares leave stays in the dart. Darts that took a share get straight legs from their
 * mouths to their points, as far back from the pivot as they were, trued where they came out unequal. All strips stay
 * rigid; the edges that opened are bridged straight. Source: Armstrong, Patternmaking for Fashion Design (1987), dart
 * manipulation [memory].
 *
 * @throws PatternError `unknown-piece`, `unknown-dart`, `unknown-edge`, `unknown-mark`, `share-place-unclear`,
 *   `shares-over-whole`, `shares-leave-nothing`, `dart-into-itself`, `pivot-out-of-reach`, `point-back-too-long`,
 *   `slash-leaves-piece`, `slash-crosses-dart`, `slashes-cross`, `outline-tangled`; those of `perform` and
 *   `resolvePosition`
 */
export const shareDart = (pattern: Pattern, parameters: ShareDart): Alteration =>
  perform(shareDartVerb, pattern, parameters);

/** More slashes than fit round a dart's point on paper. */
const mostParts = 12;

export const shareDartForm = formOf<ShareDart>()({
  verb: 'share dart',
  does: 'Closes a dart into several edges at once, and into other darts, each taking its share; what no share takes stays in the dart.',
  fields: {
    piece: field.piece(),
    dart: field.dart(),
    among: field.groups<DartPart>(
      {
        edge: field.optional(field.edge()),
        at: field.optional(field.place('edge')),
        dart: field.optional(field.dart()),
        share: field.optional(field.share({ over: true })),
      },
      mostParts,
    ),
    pivot: field.optional(field.mark()),
  },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence: 'Share the {dart} dart of the {piece} out among {among}[, turning about the {pivot}]',
  startsAt: { dart: ['piece', 'dart'] },
  example: {
    pattern: 'darted-dress',
    step: {
      piece: 'front',
      dart: 'bust',
      among: [
        { dart: 'under-bust', share: '50 %' },
        { edge: 'shoulder', at: '1/2', share: '30 %' },
        { edge: 'neck', at: '1/2' },
      ],
      pivot: 'bust point',
    },
  },
});
export const shareDartVerb = /* @__PURE__ */ verbFrom(shareDartForm, (pattern, parameters) => {
  const piece = pieceNamed(pattern, parameters.piece);
  const where = { piece: piece.name };
  return locating(where, () => {
    const dart = dartNamed(piece, parameters.dart);
    const pivot = pivotOf(piece, parameters) ?? dart.apex;
    const parts = sharedParts(piece, dart.name, parameters.among, pivot);
    const others = parts.flatMap(({ from }) => ('dart' in from ? [from.dart] : []));
    const backMm = new Map(others.map(name => [name, backOf(piece, name, pivot)]));
    const drawn = drawnToPivot(piece, dart.name, others, pivot);
    const whole = Math.abs(dartAngle(dartNamed(drawn, dart.name)));
    const rest = whole * (1 - parts.reduce((sum, { share }) => sum + share, 0));
    const isWhole = rest <= tolerances.angleTolerance;
    const even = isWhole ? withLegsTrued(drawn, dartNamed(drawn, dart.name)) : asItIs(drawn);
    const done = sharedOut(even.piece, { dart: dart.name, parts, pivot, isWhole, backMm });
    const left = isWhole ? asItIs(done.piece) : withRestSetBack(done.piece, dart, pivot);
    const sides = { before: piece, after: left.piece, swung: done.swung };
    return {
      pattern: withPiece(pattern, left.piece),
      became: inTurn(inTurn(even.became, done.became), left.became),
      did: saying('shared-dart', {
        dart: { ...where, dart: dart.name },
        wholeDeg: inDegrees(whole),
        restDeg: isWhole ? 0 : inDegrees(rest),
        parts: parts.map((part, i) => toldPart(part, i, sides)),
      }),
      findings: [...even.findings, ...done.findings, ...left.findings],
    };
  });
});

const asItIs = (piece: Reshaped['piece']): Reshaped => ({ piece, became: nothingBecame, findings: [] });
