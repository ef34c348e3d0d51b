import {
  edgePath,
  type Path,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import { boundsOfPath, pathEnd, pathStart, transformedPath } from '@paperhinge/geometry/paths';
import { edgesOfRole, withPiece } from '@paperhinge/geometry/pattern';
import { type Affine, dot, scale, subtract, unit } from '@paperhinge/geometry/plane';
import type { Alteration } from '../alteration.js';
import { swungCap } from '../fit/adjust/limb.js';
import { recomposed } from '../moved-edges/composed.js';
import { grainOrVertical } from '../moved-edges/grain.js';
import { requireSimple, tidied } from '../moved-edges/tidy.js';
import { edgeInRing, withEdgeRedrawn } from '../redrawn-edges/corner-moved.js';
import { refusal as edgeRefusal } from '../redrawn-edges/tellings.js';
import { refusal, saying } from '../sleeves/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Raise or lower a sleeve's cap. */
export interface ChangeCap {
  readonly piece: string;
  /** mm higher; negative: lower. */
  readonly by: number;
  /** What stays: the length of the cap's seam, or the sleeve's width. */
  readonly keep: 'seam' | 'width';
}

/**
 * Raises or lowers a sleeve's cap. At constant seam length: the sleeve is slashed down its middle and across from
 * underarm to underarm, and its four parts swing on hinges at cap, hem and underarms; a higher cap makes it narrower.
 * Rigid: the four parts. At constant width: the cap is drawn anew between the same underarms, stretched along the grain
 * as a maker draws it higher over the same line; its seam is longer or shorter, which lets ease in or takes it out. With
 * `by` as a goal, `{ so that: ease of armhole, is: 25 mm }`, it is as high as the ease asks. Source: common practice,
 * no source (trade-notes §8).
 *
 * @throws PatternError `no-cap`, `cap-too-low`; `adjust-too-much`; `redrawn-crosses`; `unknown-piece`; those of the
 *   hinge and of `perform`
 */
export const changeCap = (pattern: Pattern, parameters: ChangeCap): Alteration =>
  perform(changeCapVerb, pattern, parameters);

export const changeCapForm = formOf<ChangeCap>()({
  verb: 'change cap',
  does: "Raises or lowers a sleeve's cap, keeping the length of its seam and changing the width, or keeping the width and changing the ease.",
  fields: { piece: field.piece(), by: field.signedLength(), keep: field.choice('seam', 'width') },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence: 'Raise the cap of the {piece} by {by}, keeping its {keep}',
  startsAt: { piece: ['piece'], edge: ['piece'] },
  example: { pattern: 'woven-shift', step: { piece: 'sleeve', by: '-20 mm', keep: 'seam' } },
});
export const changeCapVerb = /* @__PURE__ */ verbFrom(changeCapForm, (pattern, { piece: name, by, keep }) => {
  const piece = pieceNamed(pattern, name);
  const cap = capOf(piece);
  const done = keep === 'seam' ? swungCap(pattern, piece, by) : stretched(pattern, piece, cap, by);
  const after = pieceNamed(done.pattern, name);
  const width = (of: Piece): number => across(of, capOf(of));
  const length = (of: Piece): number => pathLength(edgePath(of, capOf(of)));
  return {
    ...done,
    did: saying('changed-cap', {
      piece: { piece: name },
      byMm: by,
      seamMm: length(after) - length(piece),
      widthMm: width(after) - width(piece),
    }),
  };
});

function capOf(piece: Piece): string {
  const [cap] = edgesOfRole(piece, 'cap');
  if (cap !== undefined) return cap;
  throw refusal('no-cap', { piece: { piece: piece.name } }, { piece: piece.name });
}

/** mm between the underarms, across the grain. */
function across(piece: Piece, cap: string): number {
  const { grain } = grainOrVertical(piece);
  const path = edgePath(piece, cap);
  return Math.abs(dot(subtract(pathEnd(path), pathStart(path)), { x: -grain.y, y: grain.x }));
}

/** mm: how long a cap's seam is when it is raised by so much at constant width. @throws PatternError as `change cap` does */
export const raisedCapLength = (piece: Piece, by: number): number =>
  pathLength(stretchedPath(piece, capOf(piece), by));

/** The cap drawn anew between its underarms, with the piece as it is then. */
function stretched(pattern: Pattern, piece: Piece, cap: string, by: number): Omit<Alteration, 'did'> {
  const where = { piece: piece.name, edge: cap };
  const ring = edgeInRing(piece, cap);
  const fresh = { ...ring.run, path: stretchedPath(piece, cap, by) };
  const reshaped = tidied(piece, recomposed(piece, withEdgeRedrawn(ring, [fresh], [])));
  requireSimple(reshaped.piece, () => edgeRefusal('redrawn-crosses', { edge: where }, where));
  return {
    pattern: withPiece(pattern, reshaped.piece),
    findings: reshaped.findings,
    became: reshaped.became,
  };
}

/** The cap stretched along the grain from the line between the underarms, so that its top is `by` mm higher. */
function stretchedPath(piece: Piece, cap: string, by: number): Path {
  const { path } = edgeInRing(piece, cap).run;
  const start = pathStart(path);
  const base = unit(subtract(pathEnd(path), start));
  // Square to the line between the underarms, on the cap's side of it.
  const square: Point = { x: base.y, y: -base.x };
  const { grain } = grainOrVertical(piece);
  const up = dot(grain, square) >= 0 ? grain : scale(grain, -1);
  const upright: Affine = { a: base.x, b: square.x, c: base.y, d: square.y, e: 0, f: 0 };
  const { min, max } = boundsOfPath(transformedPath(path, upright));
  const level = dot(start, square);
  const height = Math.max(max.y - level, level - min.y);
  if (by <= -height)
    throw refusal(
      'cap-too-low',
      { piece: { piece: piece.name }, heightMm: height, byMm: by },
      { piece: piece.name, edge: cap },
    );
  const share = by / height / dot(up, square);
  // P + up · share · (square · (P − start)): the underarms stay where they are.
  return transformedPath(path, {
    a: 1 + up.x * share * square.x,
    b: up.y * share * square.x,
    c: up.x * share * square.y,
    d: 1 + up.y * share * square.y,
    e: -up.x * share * level,
    f: -up.y * share * level,
  });
}
