import { type Dart, type Pattern, type Piece, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { type EdgePosition, resolvePosition, withPiece } from '@paperhinge/geometry/pattern';
import { add, apply, identity, lerp, rotation, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import type { Became } from '../became/became.js';
import { inTurn } from '../became/in-turn.js';
import { requireFreeDartName } from '../darts/mouth.js';
import { pivotOf } from '../darts/pivot.js';
import { withRestSetBack } from '../darts/rest-set-back.js';
import { refusal as dartRefusal, saying as dartSaying } from '../darts/tellings.js';
import { dartAngle } from '../hinge/assemble.js';
import { pointOfEnd } from '../hinge/cut.js';
import { cutToDart } from '../hinge/cut-to-dart.js';
import { dartNamed } from '../hinge/dart-named.js';
import { inDegrees } from '../hinge/degrees.js';
import { holdingSection } from '../hinge/holding.js';
import { dartMouth } from '../hinge/mouth.js';
import { openingFindings } from '../hinge/opening-findings.js';
import { withLegsTo } from '../hinge/redrawn-legs.js';
import { swing } from '../hinge/swing.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { finding, refusal, saying } from './tellings.js';

/** Close a dart and open it at another place, by the same angle about the pivot. */
export interface MoveDart {
  readonly piece: string;
  readonly dart: string;
  readonly to: { readonly edge: string /** Absent = the middle. */; readonly at?: EdgePosition };
  /** Name of a point mark; absent = the dart's apex. */
  readonly pivot?: string;
  /** mm the new stitched point is set back from the pivot along the new dart's axis; default 0. */
  readonly pointBack?: number;
  /** 0 to 1 of its angle; default 1. Less than all splits the dart in two. */
  readonly share?: number;
  /** What the dart is called at its new place; needed where a share of it stays. */
  readonly name?: string;
}

/**
 * Moves a dart to another place, turning about a pivot (a point mark, else the dart's apex). The legs are first redrawn
 * straight from the mouth to the pivot; the dart is closed about it and opened by the same angle where a slash from the
 * new place meets the pivot, so the sum of angles about the pivot is kept. The new legs run straight from the new mouth
 * to the stitched point, set back from the pivot along the new axis. The edge that opens stays one edge in two parts,
 * and the dart keeps its name.
 *
 * A share of less than all splits it: the old dart keeps the rest of its angle about the pivot, its point set back from
 * it as far as it was; the new one is called `name`. Source: Armstrong, Patternmaking for Fashion Design (1987), dart
 * manipulation [memory].
 *
 * @throws PatternError `unknown-piece`, `unknown-dart`, `unknown-edge`, `unknown-mark`, `pivot-out-of-reach`,
 *   `point-back-too-long`, `dart-name-taken`, and those of the slash (`slash-leaves-piece`, `slash-crosses-dart`,
 *   `outline-tangled`); those of `perform`
 */
export const moveDart = (pattern: Pattern, parameters: MoveDart): Alteration =>
  perform(moveDartVerb, pattern, parameters);

const fields = {
  piece: field.piece(),
  dart: field.dart(),
  to: field.group<MoveDart['to']>({ edge: field.edge(), at: field.optional(field.place('edge')) }),
  pivot: field.optional(field.mark()),
  pointBack: field.usually(field.length(), 0),
  share: field.usually(field.share({ over: true }), 1),
  name: field.optional(field.newName()),
};

export const moveDartForm = formOf<MoveDart>()({
  verb: 'move dart',
  does: 'Closes a dart and opens it at another place by the same angle, turning the pattern about the point of the dart or about a mark. A share of it moved splits it in two.',
  fields,
  lacks: ({ share = 1, name }) => (share < 1 && name === undefined ? 'name' : undefined),
  // A dart that is moved whole, under its own name, leaves all names as they were.
  leaves: ({ piece, name, share = 1 }) => ({ changed: name === undefined && share === 1 ? [] : [piece] }),
  sentence:
    'Move the {dart} dart of the {piece} to the {to.edge}[ at {to.at}][, turning about the {pivot}][, its point {point back} back][, {share} of it][, called {name}]',
  startsAt: { dart: ['piece', 'dart'] },
  example: {
    pattern: 'woven-shift',
    step: { piece: 'front', dart: 'bust', to: { edge: 'shoulder', at: '1/2' }, 'point back': 20 },
  },
});
export const moveDartVerb = /* @__PURE__ */ verbFrom(moveDartForm, moved);

type WholeMove = MoveDart & { readonly pointBack: number; readonly share: number };

function moved(pattern: Pattern, parameters: WholeMove): Alteration {
  const piece = pieceNamed(pattern, parameters.piece);
  const { to, pointBack, share, name = parameters.dart } = parameters;
  if (name !== parameters.dart || share < 1) requireFreeDartName(piece, name);
  // Two darts stitched to one point would part the paper there.
  if (share < 1 && pointBack <= tolerances.joiningGap)
    throw dartRefusal(
      'dart-points-meet',
      { dart: { piece: piece.name, dart: parameters.dart } },
      { piece: piece.name },
    );
  return locating({ piece: piece.name, edge: to.edge }, () => {
    const pivot = pivotOf(piece, parameters) ?? dartNamed(piece, parameters.dart).apex;
    const redrawn = withLegsTo(piece, dartNamed(piece, parameters.dart), pivot);
    const dart = dartNamed(redrawn, parameters.dart);
    const end = { edge: to.edge, along: resolvePosition(redrawn, to.edge, to.at ?? { share: 0.5 }) };
    const cutPiece = cutToDart(redrawn, end, dart.name);
    const holding = holdingSection(cutPiece);
    const { left } = cutPiece.beside[0]!;
    const angle = share * dartAngle(dart);
    const turned = rotation(left === holding ? -angle : angle, pivot);
    const motions = cutPiece.sections.map((_, i) => (i === holding ? identity : turned));
    const place = pointOfEnd(redrawn, end);
    const axis = subtract(lerp(place, apply(turned, place), 0.5), pivot);
    if (!(pointBack >= 0 && pointBack < Math.hypot(axis.x, axis.y)))
      throw refusal('point-back-too-long', {
        dart: { piece: piece.name, dart: dart.name },
        deepMm: Math.hypot(axis.x, axis.y),
        backMm: pointBack,
      });
    const apex = add(pivot, scale(unit(axis), pointBack));
    const swung = swing(cutPiece, motions, holding, {
      closing: share === 1 ? [dart.name] : [],
      mouths: [dartMouth({ cut: 0, end: 'from', name, apex })],
    });
    const opened = { angle, alongMm: end.along, openedMm: swung.openings[0]?.openedMm ?? 0 };
    const did = whatItDid(parameters, dart, opened);
    const findings = openingFindings(piece.name, swung);
    if (share < 1) {
      const rest = withRestSetBack(swung.piece, dartNamed(piece, parameters.dart), pivot);
      const became = inTurn(swung.became, rest.became);
      return {
        pattern: withPiece(pattern, rest.piece),
        became,
        did,
        findings: [...findings, ...rest.findings],
      };
    }
    return {
      pattern: withPiece(pattern, swung.piece),
      became: renamed(swung.became, piece, dart.name, name),
      did,
      findings: [...findings, ...pressingLost(piece, dart)],
    };
  });
}

function whatItDid(
  { piece, to, pivot, pointBack, share, name }: WholeMove,
  dart: Dart,
  { angle, ...opened }: { readonly angle: number; readonly alongMm: number; readonly openedMm: number },
): Alteration['did'] {
  const facts = {
    dart: { piece, dart: dart.name },
    to: { edge: to.edge },
    angleDeg: inDegrees(Math.abs(angle)),
    ...opened,
  };
  if (share === 1)
    return saying('moved-dart', {
      ...facts,
      ...(pivot === undefined ? {} : { about: { mark: pivot } }),
      backMm: pointBack,
    });
  return dartSaying('split-dart', {
    ...facts,
    fresh: { dart: name! },
    sharePercent: share * 100,
    keptDeg: inDegrees(Math.abs(dartAngle(dart) - angle)),
  });
}

/** The dart goes on at its new place under its new name; the swing has it as closed. */
const renamed = (became: Became, { name: piece }: Piece, was: string, now: string): Became => ({
  ...became,
  things: became.things.map(thing =>
    thing.was.dart === was ? { was: thing.was, now: { piece, dart: now } } : thing,
  ),
});

const pressingLost = (piece: Piece, { name, pressed }: Dart): Alteration['findings'] =>
  pressed === undefined
    ? []
    : [
        finding(
          'note',
          'pressing-by-default',
          { piece: piece.name },
          { dart: { piece: piece.name, dart: name } },
        ),
      ];
