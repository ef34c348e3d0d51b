import {
  line,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pathOf,
  pieceNamed,
} from '@paperhinge/geometry';
import {
  fairCurve,
  pathEnd,
  pathStart,
  pointAlong,
  reversedPath,
  tangentAlong,
} from '@paperhinge/geometry/paths';
import { withPiece } from '@paperhinge/geometry/pattern';
import { add, dot, leftOf, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { nothingBecame, together } from '../became/became.js';
import type { Reshaped } from '../moved-edges/chains.js';
import { type Item, partOfRun, type Run, recomposed } from '../moved-edges/composed.js';
import { requireSimple } from '../moved-edges/tidy.js';
import { neckOf } from '../neckline/neck-edge.js';
import { centreFoot, sideOfCentre } from '../redrawn-edges/centre-side.js';
import { edgeInRing } from '../redrawn-edges/corner-moved.js';
import { refusal, saying } from '../redrawn-edges/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Let a neck stand up, cut in one with the body. */
export interface RaiseNeckline {
  readonly pieces: readonly string[];
  /** mm up from the present neck. */
  readonly by: number;
}

/**
 * Raises a neckline into a funnel that stands up, cut in one with the piece: the centre runs on straight by `by` mm,
 * the neck's end goes up by as much along the centre's way, the shoulder's last 25 mm bend fair up to it, and the neck
 * is drawn fair between the two, level at both ends. Do it to front and back alike. Source: Armstrong, Patternmaking
 * for Fashion Design (1987), built-up necklines [memory].
 *
 * @throws PatternError `unknown-piece`, `no-neck`, `neck-interrupted`, `neck-not-between`, `redrawn-crosses`; those of
 *   `perform`
 */
export const raiseNeckline = (pattern: Pattern, parameters: RaiseNeckline): Alteration =>
  perform(raiseNecklineVerb, pattern, parameters);

export const raiseNecklineForm = formOf<RaiseNeckline>()({
  verb: 'raise neckline',
  does: 'Lets a neck stand up as a funnel, cut in one with the piece; the shoulder bends fair up to its end.',
  fields: { pieces: field.pieces(), by: field.size() },
  leaves: ({ pieces }) => ({ changed: pieces }),
  sentence: 'Raise the neckline of the {pieces} by {by}',
  startsAt: { piece: ['pieces'], edge: ['pieces'] },
  example: { pattern: 'darted-dress', step: { pieces: ['front', 'back'], by: '45 mm' } },
});
export const raiseNecklineVerb = /* @__PURE__ */ verbFrom(raiseNecklineForm, (pattern, { pieces, by }) => {
  const names = [...new Set(pieces)];
  const lengths: number[] = [];
  let altered = pattern;
  let became = nothingBecame;
  for (const name of names) {
    const done = locating({ piece: name }, () => raised(pieceNamed(altered, name), by));
    lengths.push(done.neckMm);
    altered = withPiece(altered, done.reshaped.piece);
    became = together(became, done.reshaped.became);
  }
  return {
    pattern: altered,
    became,
    did: saying('raised-neckline', { pieces: names.map(piece => ({ piece })), byMm: by, necksMm: lengths }),
    findings: [],
  };
});

/** mm of the shoulder that bend up to the funnel, where it is long enough. */
const bend = 25;
/** Share of a short shoulder that bends instead. */
const bendShare = 0.3;

function raised(piece: Piece, by: number): { readonly reshaped: Reshaped; readonly neckMm: number } {
  const ring = edgeInRing(piece, neckOf(piece).name);
  const step = sideOfCentre(ring);
  const { items, index, run } = ring;
  const place = (by1: 1 | -1) => (index + by1 + items.length) % items.length;
  const [centreIndex, shoulderIndex] = step === -1 ? [place(-1), place(1)] : [place(1), place(-1)];
  const centre = items[centreIndex] as Run,
    shoulder = items[shoulderIndex] as Run;
  // All as seen from the centre outwards; turned back into the outline's way at the end.
  const outwards = (path: Run['path']) => (step === -1 ? path : reversedPath(path));
  const neckOut = outwards(run.path);
  const atCentre = pathStart(neckOut),
    atShoulder = pathEnd(neckOut);
  const up = unit(subtract(atCentre, centreFoot(centre, step)));
  const top = add(atCentre, scale(up, by)),
    peak = add(atShoulder, scale(up, by));
  const out = awayFrom(up, subtract(atShoulder, atCentre));
  const shoulderOut = outwards(shoulder.path);
  const length = pathLength(shoulderOut);
  const bent = Math.min(bend, length * bendShare);
  const curve = fairCurve(
    { point: peak, direction: scale(up, -1) },
    { point: pointAlong(shoulderOut, bent), direction: tangentAlong(shoulderOut, bent) },
  );
  const neck = fairCurve({ point: top, direction: out }, { point: peak, direction: out });
  const grown: Run = { type: 'run', edge: centre.edge, path: outwards(pathOf(line(atCentre, top))) };
  const rest = step === -1 ? partOfRun(shoulder, bent, length) : partOfRun(shoulder, 0, length - bent);
  const bending: Run = { type: 'run', edge: shoulder.edge, path: outwards(curve) };
  const fresh: Run = { ...run, path: outwards(neck), redrawn: true };
  const drawn = items.flatMap((item, i): readonly Item[] => {
    if (i === index) return [fresh];
    // In the outline's order the centre's growth and the shoulder's bend lie beside the neck.
    if (i === centreIndex) return step === -1 ? [item, grown] : [grown, item];
    if (i === shoulderIndex) return step === -1 ? [bending, rest] : [rest, bending];
    return [item];
  });
  const reshaped = recomposed(piece, drawn);
  const edge = { piece: piece.name, edge: run.edge.name };
  requireSimple(reshaped.piece, () => refusal('redrawn-crosses', { edge }, edge));
  return { reshaped, neckMm: pathLength(neck) };
}

/** Square to a direction, on the side of another. */
const awayFrom = (up: Point, towards: Point): Point =>
  dot(leftOf(up), towards) > 0 ? leftOf(up) : scale(leftOf(up), -1);
