import {
  type EdgeRun,
  edgeNamed,
  type Notch,
  type NotchStyle,
  type Pattern,
  pieceNamed,
  roleOf,
} from '@paperhinge/geometry';
import { withPiece } from '@paperhinge/geometry/pattern';
import type { Alteration } from '../alteration.js';
import { distinctEdges, holdsEdge } from '../edge-refs.js';
import { isBack } from '../fit/front-and-back.js';
import { seamNamed, sideLength } from '../moved-edges/seam-place.js';
import { isShoulder } from '../order-of-work/seam-jobs.js';
import { refusal, saying } from '../sleeves/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { placesOnSide } from './places-on-side.js';

/** Walk a sleeve's cap into its armhole and notch both. */
export interface WalkCap {
  readonly seam: string;
  /** The share of the cap's ease that lies in the front; default 40 %. */
  readonly front?: number;
}

/**
 * Walks a sleeve's cap into its armhole and notches both anew, so that the ease lies where it belongs. On paper: from
 * either underarm the cap is walked along the armhole's lowest third without ease, and notched, single in front and
 * double at the back; from there to the shoulder the front and the back each get their share of the ease, and the top of
 * the cap is notched where the shoulder comes. No line moves. Source: common practice, no source (trade-notes §5, §8);
 * back ½ to ⅝ in and front ⅜ to ½ in of the ease [read: check-values §3] is 40 to 45 % in front.
 *
 * @throws PatternError `unknown-seam`, `seam-without-cap`, `cap-shorter-than-armhole`; those of `perform`
 */
export const walkCap = (pattern: Pattern, parameters: WalkCap): Alteration =>
  perform(walkCapVerb, pattern, parameters);

export const walkCapForm = formOf<WalkCap>()({
  verb: 'walk cap',
  does: "Walks a sleeve's cap into its armhole and notches both anew: no ease in the lowest third, the rest shared between front and back, the top at the shoulder.",
  fields: { seam: field.seam(), front: field.usually(field.share(), 0.4) },
  sentence: 'Walk the cap into the armhole along the {seam} seam[, {front} of its ease in front]',
  startsAt: { seam: ['seam'], edge: ['seam'] },
  example: { pattern: 'woven-shift', step: { seam: 'armhole' } },
});
export const walkCapVerb = /* @__PURE__ */ verbFrom(walkCapForm, walked);

/** How far up from the underarm the cap is set in without ease. */
const plainShare = 1 / 3;

function walked(pattern: Pattern, { seam: name, front = 0.4 }: WalkCap): Alteration {
  const seam = seamNamed(pattern, name);
  const isCap = (run: EdgeRun) => roleOf(edgeNamed(pieceNamed(pattern, run.piece), run.edge)) === 'cap';
  const cap = [seam.a, seam.b].find(side => side.every(isCap));
  const armhole = cap === seam.a ? seam.b : seam.a;
  const where = { seam: name };
  if (!cap || armhole.some(isCap)) throw refusal('seam-without-cap', { seam: { seam: name } }, where);
  const [capMm, armholeMm] = [sideLength(pattern, cap), sideLength(pattern, armhole)];
  const easeMm = capMm - armholeMm;
  if (easeMm < 0)
    throw refusal(
      'cap-shorter-than-armhole',
      { piece: { piece: cap[0]!.piece }, seam: { seam: name }, capMm, armholeMm },
      where,
    );
  const first = armhole.slice(0, shoulderIn(pattern, armhole));
  const backFirst = first.some(run => isBack(pattern, pieceNamed(pattern, run.piece)));
  const firstMm = sideLength(pattern, first);
  const secondMm = armholeMm - firstMm;
  const easeFirst = easeMm * (backFirst ? 1 - front : front);
  const styles = backFirst ? (['double', 'single'] as const) : (['single', 'double'] as const);
  const marks: readonly {
    readonly onArmhole?: number;
    readonly onCap: number;
    readonly style: NotchStyle;
    readonly name?: string;
  }[] = [
    { onArmhole: firstMm * plainShare, onCap: firstMm * plainShare, style: styles[0] },
    // The shoulder seam itself is the armhole's mark.
    { onCap: firstMm + easeFirst, style: 'single', name: 'top' },
    { onArmhole: armholeMm - secondMm * plainShare, onCap: capMm - secondMm * plainShare, style: styles[1] },
  ];
  const placed = marks.flatMap(({ onArmhole, onCap, style, name: called }) => [
    ...placesOnSide(pattern, cap, [onCap / capMm], style).map(one =>
      called ? { ...one, name: called } : one,
    ),
    ...(onArmhole === undefined ? [] : placesOnSide(pattern, armhole, [onArmhole / armholeMm], style)),
  ]);
  const edges = distinctEdges([...cap, ...armhole]);
  const altered = [...new Set(edges.map(({ piece }) => piece))].reduce((now, owner) => {
    const piece = pieceNamed(now, owner);
    const kept = piece.notches.filter(({ edge }) => !holdsEdge(edges, { piece: owner, edge }));
    const own = placed.filter(one => one.piece === owner).map(({ piece: _, ...notch }): Notch => notch);
    return withPiece(now, { ...piece, notches: [...kept, ...own] });
  }, pattern);
  return {
    pattern: altered,
    did: saying('walked-cap', {
      seam: { seam: name },
      easeMm,
      frontMm: easeMm * front,
      backMm: easeMm * (1 - front),
    }),
    findings: [],
    became: { edges: [], things: [] },
    notchedAnew: edges,
  };
}

/** Before which run of an armhole the shoulder lies: where a shoulder seam joins two of its pieces, else front and back. */
function shoulderIn(pattern: Pattern, armhole: readonly EdgeRun[]): number {
  const joins = (one: EdgeRun, other: EdgeRun): boolean =>
    pattern.seams.some(
      seam =>
        isShoulder(pattern, seam) &&
        [one, other].every(run => [...seam.a, ...seam.b].some(own => own.piece === run.piece)),
    );
  const joined = armhole.findIndex((run, i) => i > 0 && joins(armhole[i - 1]!, run));
  if (joined > 0) return joined;
  const isOfBack = (run: EdgeRun): boolean => isBack(pattern, pieceNamed(pattern, run.piece));
  const turned = armhole.findIndex(run => isOfBack(run) !== isOfBack(armhole[0]!));
  return turned > 0 ? turned : armhole.length;
}
