import { edgePath, type Pattern, type Piece, pathLength, pieceNamed, type Seam } from '@paperhinge/geometry';
import { copiesInGarment } from '@paperhinge/geometry/pattern';
import type { Alteration } from '../alteration.js';
import { type Became, together } from '../became/became.js';
import { pieceGone } from '../became/by-names.js';
import { freePlace } from '../derive/free-place.js';
import { freeName } from '../dividing/joined-ring.js';
import { usualAllowance } from '../dividing/usual-allowance.js';
import { isBack } from '../fit/front-and-back.js';
import { inDegrees } from '../hinge/degrees.js';
import { gussetPiece } from '../sleeves/gusset.js';
import { type Kimono, laidHalves, type SleeveLines, sleeveHalves, sleeveLines } from '../sleeves/kimono.js';
import { type KimonoBody, type KimonoNames, kimonoBody, kimonoNames } from '../sleeves/kimono-body.js';
import { type SetIn, setIn } from '../sleeves/set-in.js';
import { refusal, saying } from '../sleeves/tellings.js';
import { underarmCurves } from '../sleeves/underarm-curve.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Cut a kimono sleeve, grown on to front and back, from a set-in one. */
export interface CutKimono {
  /** The armhole seam. */
  readonly seam: string;
  /** rad by which the sleeve's middle slopes further down than the shoulder, in front. */
  readonly slope: number;
  /** mm down the side seam at which the sleeve's underarm seam meets it. */
  readonly drop: number;
  /** mm that a slash for a gusset runs in from there; absent = none. */
  readonly gusset?: number;
  /** mm of radius of the curve from underarm to side, 0 for a corner; absent = 60, or as much as the side has room for. */
  readonly curve?: number;
}

/**
 * Cuts a kimono sleeve (grown on) from a set-in one. On paper: the sleeve is cut in two from the top of its cap down
 * the grain; its front half is laid on the front with the top of the cap at the shoulder's end, sloping by so much more
 * than the shoulder, its back half likewise on the back; the underarm seam is drawn anew, straight from the hem to a
 * place down the side, and curved into it there: the usual radius is about 60 mm (common practice, no source). The back's
 * slope is the one at which both underarm seams are equally long, and its curve the one that saves as much of the way
 * round. For a gusset the corner stays, and both are
 * slashed from the underarm in, and a piece of four sides is drafted that is sewn into the slashes. Rigid: both bodies,
 * and the hem; redrawn: the underarm; lost: armhole and cap, with the ease between them. Source: Armstrong,
 * Patternmaking for Fashion Design (1987), kimono and raglan; Aldrich, Metric Pattern Cutting (1976), kimono sleeves
 * [memory].
 *
 * @throws PatternError `seam-without-cap`, `armhole-of-several`, `shoulder-not-sewn`, `shoulders-unlike`,
 *   `sleeve-cut-unlike`, `sleeve-without-middle`, `kimono-off-side`, `kimono-underarms-unlike`, `kimono-crosses`,
 *   `kimono-curve-too-wide`, `kimono-curve-and-gusset`, `gusset-too-shallow`, `unknown-seam`; those of `perform`
 */
export const cutKimono = (pattern: Pattern, parameters: CutKimono): Alteration =>
  perform(cutKimonoVerb, pattern, parameters);

export const cutKimonoForm = formOf<CutKimono>()({
  verb: 'cut kimono',
  does: 'Cuts a kimono sleeve, grown on, from a set-in one: half of the sleeve is laid on the front and half on the back at the shoulder, with an underarm seam drawn anew and a gusset if asked.',
  fields: {
    seam: field.seam(),
    slope: field.angle(),
    drop: field.size(),
    gusset: field.optional(field.size()),
    curve: field.optional(field.length()),
  },
  leaves: () => ({ seams: 'unknown' }),
  sentence:
    'Cut a kimono sleeve at the {seam} seam, sloping {slope} below the shoulder, its underarm {drop} down the side[, curved by a radius of {curve}][, with a gusset {gusset} deep]',
  startsAt: { seam: ['seam'], edge: ['seam'] },
  example: {
    pattern: 'woven-shift',
    step: { seam: 'armhole', slope: 25, drop: '50 mm', gusset: '90 mm' },
  },
});
export const cutKimonoVerb = /* @__PURE__ */ verbFrom(cutKimonoForm, (pattern, wish) => {
  const set = setIn(pattern, wish.seam);
  const alike = copiesInGarment(set.sleeve);
  for (const { piece } of set.bodies)
    if (copiesInGarment(piece) !== alike)
      throw refusal(
        'sleeve-cut-unlike',
        { piece: { piece: piece.name }, sleeve: { piece: set.sleeve.name } },
        { piece: piece.name },
      );
  const halves = sleeveHalves(set);
  const front = isBack(pattern, set.bodies[0].piece) ? 1 : 0;
  const laid = laidHalves(set, halves, { slope: wish.slope, drop: wish.drop, front });
  const names = set.bodies.map(({ piece }) => kimonoNames(piece, halves[0].hem.edge)) as [
    KimonoNames,
    KimonoNames,
  ];
  const { curve, gusset } = wish;
  if (curve !== undefined && gusset !== undefined)
    throw refusal('kimono-curve-and-gusset', { seam: { seam: wish.seam } }, { seam: wish.seam });
  const lines = laid.map(one => sleeveLines(one, set.sleeve)) as [SleeveLines, SleeveLines];
  const curves = gusset !== undefined || curve === 0 ? undefined : underarmCurves(laid, lines, front, curve);
  const bodies = laid.map((one, i) =>
    kimonoBody(one, set.sleeve, names[i]!, gusset === undefined ? curves?.[i] : { depth: gusset }),
  ) as [KimonoBody, KimonoBody];
  return assembled(pattern, set, {
    laid,
    names,
    bodies,
    withGusset: wish.gusset !== undefined,
    front,
    curveMm: curves?.[front].radiusMm,
  });
});

interface Parts {
  readonly laid: readonly [Kimono, Kimono];
  readonly names: readonly [KimonoNames, KimonoNames];
  readonly bodies: readonly [KimonoBody, KimonoBody];
  readonly withGusset: boolean;
  readonly front: 0 | 1;
  readonly curveMm: number | undefined;
}

function assembled(pattern: Pattern, set: SetIn, parts: Parts): Alteration {
  const { laid, names, bodies, withGusset, front, curveMm } = parts;
  const isGone = (seam: Seam): boolean =>
    seam === set.seam ||
    [...seam.a, ...seam.b].some(run => run.piece === set.sleeve.name && run.edge !== laid[0].half.hem.edge);
  const gone = pattern.seams.filter(isGone);
  const pieces = pattern.pieces.flatMap((piece): readonly Piece[] => {
    if (piece === set.sleeve) return [];
    const i = set.bodies.findIndex(body => body.piece === piece);
    return [bodies[i]?.piece ?? piece];
  });
  const drawn: Pattern = { ...pattern, pieces, seams: pattern.seams.filter(seam => !gone.includes(seam)) };
  const sewn = [...newSeams(drawn, set, names)];
  const done = withGusset ? gussetIn(drawn, set, parts) : { pattern: drawn, seams: [] };
  return {
    pattern: { ...done.pattern, seams: [...drawn.seams, ...sewn, ...done.seams] },
    became: becameOf(set, bodies, gone),
    did: saying('cut-kimono', {
      sleeve: { piece: set.sleeve.name },
      bodies: [front, 1 - front].map(i => ({ piece: set.bodies[i]!.piece.name })),
      slopesDeg: [front, 1 - front].map(i => inDegrees(laid[i]!.slope)),
      underarmMm: pathLength(edgePath(bodies[0].piece, names[0].underarm)),
      ...(curveMm === undefined ? {} : { curveMm }),
      ...(withGusset ? { gusset: { piece: done.pattern.pieces.at(-1)!.name } } : {}),
    }),
    findings: [],
  };
}

function becameOf(set: SetIn, bodies: readonly [KimonoBody, KimonoBody], gone: readonly Seam[]): Became {
  const sleeve = pieceGone(set.sleeve);
  const moved = together(bodies[0].became, bodies[1].became);
  const carried = (edge: string): boolean =>
    moved.edges.some(({ was }) => was.piece === set.sleeve.name && was.edge === edge);
  return together(
    moved,
    { edges: sleeve.edges.filter(({ was }) => !carried(was.edge)), things: sleeve.things },
    { edges: [], things: gone.map(({ name }) => ({ was: { seam: name } })) },
  );
}

/** Over the arm from the shoulder to the hem, and under it from the hem to the side. */
function newSeams(
  pattern: Pattern,
  { bodies }: SetIn,
  names: readonly [KimonoNames, KimonoNames],
): readonly Seam[] {
  const taken = new Set(pattern.seams.map(seam => seam.name));
  const sewn = (of: 'overarm' | 'underarm'): Seam => {
    // As the shoulder leads out to the arm: along the outline where the armhole follows it, else against it.
    const runs = bodies.map(({ piece, run, up }, i) => ({
      piece: piece.name,
      edge: names[i]![of],
      reversed: up !== run.reversed,
    }));
    const name = freeName(of, taken);
    taken.add(name);
    return { name, a: [runs[0]!], b: [runs[1]!], ease: { mm: 0 } };
  };
  return [sewn('overarm'), sewn('underarm')];
}

/** The gusset as a piece, sewn to the slashes of both bodies by its four sides. */
function gussetIn(pattern: Pattern, { sleeve, bodies }: SetIn, { names }: Parts) {
  const now = bodies.map(({ piece }) => pieceNamed(pattern, piece.name));
  const length = (i: number, side: 0 | 1): number => pathLength(edgePath(now[i]!, names[i]!.gusset[side]));
  const name = freeName('gusset', new Set(pattern.pieces.map(piece => piece.name)));
  const bodyNames = [bodies[0].piece.name, bodies[1].piece.name] as const;
  const piece = gussetPiece(
    name,
    { sleeve: [length(0, 0), length(1, 0)], side: [length(0, 1), length(1, 1)] },
    bodyNames,
    {
      place: freePlace(pattern, name),
      allowance: usualAllowance(now[0]!),
      cutting: { ...sleeve.cutting },
    },
  );
  const taken = new Set(pattern.seams.map(seam => seam.name));
  const seams = bodyNames.flatMap((body, i) =>
    (['sleeve', 'side'] as const).map((side, k): Seam => {
      const own = freeName(`gusset ${side} ${body}`, taken);
      taken.add(own);
      // Of the first body the gusset's sides are met against the clock from the sleeve's corner, of the second with it.
      const inwards = bodies[i]!.up !== bodies[i]!.run.reversed;
      const run = { piece: body, edge: names[i]!.gusset[k]!, reversed: inwards };
      const edge = `${side} ${body}`;
      return { name: own, a: [run], b: [{ piece: name, edge, reversed: i === 0 }], ease: { mm: 0 } };
    }),
  );
  return { pattern: { ...pattern, pieces: [...pattern.pieces, piece] }, seams };
}
