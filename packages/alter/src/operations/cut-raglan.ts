import { type Dart, edgePath, type Pattern, type Piece, pathLength, pieceNamed } from '@paperhinge/geometry';
import { copiesInGarment, dartsOf } from '@paperhinge/geometry/pattern';
import type { Alteration, Said } from '../alteration.js';
import { inTurn } from '../became/in-turn.js';
import { freeName } from '../dividing/joined-ring.js';
import { alongGrainAt, bottomOf } from '../fit/adjust/landmarks.js';
import { isBack } from '../fit/front-and-back.js';
import { settled } from '../settled.js';
import { type CutBody, cutBody } from '../sleeves/raglan.js';
import { type RaglanNames, raglanNames, raglanOf } from '../sleeves/raglan-sleeve.js';
import { type SetIn, setIn } from '../sleeves/set-in.js';
import { refusal, saying } from '../sleeves/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { divide } from './divide.js';

/** Cut a raglan sleeve from a set-in one. */
export interface CutRaglan {
  /** The armhole seam. */
  readonly seam: string;
  /** mm along the neck from the shoulder at which the raglan line begins. */
  readonly front: number;
  readonly back: number;
  /** mm up the armhole from the underarm at which it ends; absent = a third of the armhole. */
  readonly up?: number;
  /** mm that it bows towards the shoulder, a third of the way down; default 0, straight. */
  readonly bow?: number;
  /** Whether a dart is left over the shoulder, or the sleeve has a seam there down to its hem; default a dart. */
  readonly shoulder?: 'dart' | 'seam';
}

/**
 * Cuts a raglan sleeve from a set-in one. On paper: a line is drawn on front and back from the neck down to the
 * armhole; both upper parts are cut off there and laid on the sleeve, each with the foot of its line at the place of
 * the cap that walks to it without ease, and turned about it until the shoulder tips meet. Between the two shoulders a
 * dart is left open, or the sleeve is cut in two along it and on down the grain. Rigid: bodies, upper parts, and the
 * sleeve below the lines; redrawn: nothing. Lost: the upper cap and armhole, with the ease between them. Both raglan
 * seams are of equal lengths, since each was one line. Source: Armstrong, Patternmaking for Fashion Design (1987),
 * kimono and raglan; Aldrich, Metric Pattern Cutting (1976), raglan sleeves [memory].
 *
 * @throws PatternError `seam-without-cap`, `armhole-of-several`, `shoulder-not-sewn`, `shoulders-unlike`,
 *   `sleeve-cut-unlike`, `raglan-off-edge`, `raglan-off-piece`, `raglan-through-dart`, `cap-too-flat`, `unknown-seam`;
 *   those of the slash and of `perform`
 */
export const cutRaglan = (pattern: Pattern, parameters: CutRaglan): Alteration =>
  perform(cutRaglanVerb, pattern, parameters);

export const cutRaglanForm = formOf<CutRaglan>()({
  verb: 'cut raglan',
  does: 'Cuts a raglan sleeve from a set-in one: the upper parts of front and back are cut off from neck to armhole and joined to the sleeve, with a dart or a seam over the shoulder.',
  fields: {
    seam: field.seam(),
    front: field.size(),
    back: field.size(),
    up: field.optional(field.size()),
    bow: field.usually(field.length(), 0),
    shoulder: field.usually(field.choice('dart', 'seam'), 'dart'),
  },
  leaves: () => ({ seams: 'unknown' }),
  sentence:
    'Cut a raglan sleeve at the {seam} seam, from {front} down the neck in front and {back} at the back[, to {up} up the armhole][, bowed by {bow}][, with a {shoulder} over the shoulder]',
  startsAt: { seam: ['seam'], edge: ['seam'] },
  example: {
    pattern: 'woven-shift',
    step: { seam: 'armhole', front: '45 mm', back: '30 mm', bow: '8 mm' },
  },
});
export const cutRaglanVerb = /* @__PURE__ */ verbFrom(cutRaglanForm, (pattern, wish) => {
  const sleeve = setIn(pattern, wish.seam);
  const alike = copiesInGarment(sleeve.sleeve);
  for (const { piece } of sleeve.bodies)
    if (copiesInGarment(piece) !== alike)
      throw refusal(
        'sleeve-cut-unlike',
        { piece: { piece: piece.name }, sleeve: { piece: sleeve.sleeve.name } },
        { piece: piece.name },
      );
  const uppers = sleeve.bodies.map(body => {
    const neck = isBack(pattern, body.piece) ? wish.back : wish.front;
    const line = { neck, up: wish.up ?? body.armholeMm * usualShare, bow: wish.bow ?? 0 };
    return cutBody(body, line, temporaryName(sleeve.sleeve, body.piece));
  }) as [CutBody, CutBody];
  const names = raglanNames(sleeve);
  const raglan = settled(pattern, raglanOf(pattern, sleeve, uppers, names));
  return wish.shoulder === 'seam' ? inHalves(raglan, sleeve, names) : raglan;
});

/** Share of the armhole from the underarm up that stays with the body. */
const usualShare = 1 / 3;

/** Upper parts have this name until they are joined. */
const temporaryName = (sleeve: Piece, body: Piece): string => `${sleeve.name} ${body.name}`;

/** The sleeve cut in two from the point of its dart down the grain; the half that is cut off is called after its body. */
function inHalves(raglan: Said, { sleeve, bodies }: SetIn, names: RaglanNames): Alteration {
  const piece = pieceNamed(raglan.pattern, sleeve.name);
  const dart = dartsOf(piece).find(({ name }) => name === names.dart) as Dart;
  const hem = bottomOf(piece);
  const along = alongGrainAt(piece, dart.apex, hem) ?? pathLength(edgePath(piece, hem)) / 2;
  const seam = freeName(overarm, new Set(raglan.pattern.seams.map(({ name }) => name)));
  const cut = (i: number) =>
    divide(raglan.pattern, {
      piece: sleeve.name,
      name: temporaryName(sleeve, bodies[i]!.piece),
      from: { dart: dart.name },
      to: { edge: hem, at: { mm: along } },
      seam,
    });
  const has = (done: Alteration, i: number): boolean =>
    pieceNamed(done.pattern, temporaryName(sleeve, bodies[i]!.piece)).outline.parts.some(
      ({ name }) => name === names.raglan[i],
    );
  const first = cut(0);
  const [done, half] = has(first, 0) ? ([first, 0] as const) : ([cut(1), 1] as const);
  const did = raglan.did as Exclude<typeof raglan.did, string>;
  return {
    pattern: done.pattern,
    became: inTurn(raglan.became, (done as Said).became),
    did: saying('cut-raglan', {
      ...(did.facts as Parameters<typeof saying<'cut-raglan'>>[1]),
      half: { piece: temporaryName(sleeve, bodies[half]!.piece) },
    }),
    findings: [...raglan.findings, ...done.findings],
    ...(raglan.notchedAnew ? { notchedAnew: raglan.notchedAnew } : {}),
  };
}
/** The seam that runs on from the shoulder down the arm. */
const overarm = 'overarm';
