import { type Dart, edgePath, type Pattern, type Piece, type Point, pathLength } from '@paperhinge/geometry';
import { pathEnd, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import { dartsOf, edgesOfRole, neighboursOf, withPiece } from '@paperhinge/geometry/pattern';
import {
  type Affine,
  add,
  angleBetween,
  apply,
  dot,
  identity,
  lerp,
  norm,
  rotation,
  scale,
  subtract,
  translation,
  unit,
} from '@paperhinge/geometry/plane';

import type { Alteration } from '../../alteration.js';
import type { Cut } from '../../hinge/cut.js';
import type { CutPiece } from '../../hinge/cut-piece.js';
import { inDegrees } from '../../hinge/degrees.js';
import { dartMouth } from '../../hinge/mouth.js';
import { openingFindings } from '../../hinge/opening-findings.js';
import { cutApart, sectionAt } from '../../hinge/sections.js';
import { swing } from '../../hinge/swing.js';
import { grainOrVertical } from '../../moved-edges/grain.js';
import { acrossAt, alongGrainAt, bottomOf, bustPointOf, edgeFor } from './landmarks.js';
import { refusal, saying } from './tellings.js';

/** How far up the armhole from the underarm the paper hinges: a third of it (trade-notes §9). */
const hingeShare = 1 / 3;
/** mm below the bust point and what is added at which the centre is cut across. */
const belowBust = 40;
/** The dart that a bust without one gets. */
export const newBustDart = 'bust';

/**
 * More or less room for the bust. On paper: cut from the hem up to the bust point and on to the armhole, leaving a
 * hinge of paper there; from the side to the bust point; and across from the centre below it. The upper side swings
 * about the hinge until the bust point has moved `by` mm across the grain; the lower side stays parallel to the centre,
 * so that the hem has moved as far; the lower centre comes down with it. The dart in the side opens by the turn, or a
 * dart opens where there was none. Negative: the same with overlap. Rigid: every part; redrawn: nothing but what
 * bridges the cuts. Source: Palmer and Alto, Fit for Real People (1998), the full bust [memory].
 *
 * @param piece its side dart, if it has one, drawn to the bust point
 * @param by mm on the half as drawn
 * @throws PatternError `bust-point-unknown`, `adjust-needs-edge`, `adjust-too-much`; those of the hinge
 */
export function swungBust(pattern: Pattern, piece: Piece, by: number): Alteration {
  const bust = bustPointOf(piece);
  const dart = sideDart(piece);
  const { grain } = grainOrVertical(piece);
  const down = directed(grain, subtract(middleOfEdge(piece, bottomOf(piece)), bust));
  const out = directed(
    { x: -grain.y, y: grain.x },
    subtract(middleOfEdge(piece, edgeFor(piece, 'side')), bust),
  );
  const hinge = hingeOf(piece);
  const turn = turnFor(subtract(hinge.point, bust), out, by);
  const swung = rotation(turn, hinge.point);
  const moved = subtract(apply(swung, bust), bust);
  const { cuts, sections, lower } = cutsFor(piece, bust, {
    down,
    hinge,
    by,
    ...(dart ? { dart: dart.name } : {}),
  });
  const cutPiece = cutApart(piece, cuts);
  const at = sections(cutPiece);
  const motions = cutPiece.sections.map((_, i): Affine => {
    if (i === at.upperSide) return swung;
    if (i === at.lowerSide) return translation(moved);
    return i === at.lowerCentre ? translation(scale(down, dot(moved, down))) : identity;
  });
  const apex = add(bust, moved);
  const done = swing(cutPiece, motions, at.centre, {
    ...(lower ? { redrawn: new Map([[lower.name, pointBetween(cutPiece, lower, motions)]]) } : {}),
    ...(dart ? {} : { mouths: [dartMouth({ cut: cuts.length - 1, end: 'from', name: newBustDart, apex })] }),
  });
  const name = dart?.name ?? newBustDart;
  return {
    pattern: withPiece(pattern, done.piece),
    did: saying('swung-bust', {
      piece: { piece: piece.name },
      byMm: by,
      dropMm: dot(moved, down),
      turnDeg: inDegrees(Math.abs(turn)),
      dart: { piece: piece.name, dart: name },
    }),
    findings: openingFindings(piece.name, done),
    became: done.became,
  };
}

const directed = (way: Point, towards: Point): Point => (dot(way, towards) >= 0 ? way : scale(way, -1));
const middleOfEdge = (piece: Piece, edge: string): Point => {
  const path = edgePath(piece, edge);
  return pointAlong(path, pathLength(path) / 2);
};

/** The dart whose mouth lies in the side. */
export function sideDart(piece: Piece): Dart | undefined {
  const sides = edgesOfRole(piece, 'side');
  return dartsOf(piece).find(dart => {
    const ring = piece.outline.parts;
    const at = ring.indexOf(dart);
    return [ring[(at + 1) % ring.length]!, ring[(at + ring.length - 1) % ring.length]!].some(part =>
      sides.includes(part.name),
    );
  });
}

function hingeOf(piece: Piece): { readonly edge: string; readonly along: number; readonly point: Point } {
  const edge = edgeFor(piece, 'armhole');
  const path = edgePath(piece, edge);
  const { start } = neighboursOf(piece, edge);
  const sideAtStart = edgesOfRole(piece, 'side').includes(start);
  const length = pathLength(path);
  const along = sideAtStart ? length * hingeShare : length * (1 - hingeShare);
  return { edge, along, point: pointAlong(path, along) };
}

/** rad about the hinge that moves the bust point `by` mm across; `towards` leads from the bust point to the hinge. */
function turnFor(towards: Point, out: Point, by: number): number {
  const arm = scale(towards, -1);
  const reach = norm(arm);
  const wanted = dot(arm, out) + by;
  if (Math.abs(wanted) >= reach)
    throw refusal('adjust-too-much', { what: 'bust', byMm: by, mostMm: reach - Math.abs(dot(arm, out)) });
  const now = angleBetween(out, arm);
  return Math.sign(now) * Math.acos(wanted / reach) - now;
}

interface Sections {
  readonly centre: number;
  readonly upperSide: number;
  readonly lowerSide: number;
  readonly lowerCentre: number;
}

function cutsFor(
  piece: Piece,
  bust: Point,
  wish: {
    readonly down: Point;
    readonly hinge: { readonly edge: string; readonly along: number };
    readonly by: number;
    readonly dart?: string;
  },
): {
  readonly cuts: readonly Cut[];
  readonly sections: (cutPiece: CutPiece) => Sections;
  readonly lower: Dart | undefined;
} {
  const { down, hinge, by, dart } = wish;
  const hem = bottomOf(piece);
  const lower = dartsOf(piece).find(one => one.name !== dart && opensAt(piece, one, hem));
  const hemAlong = alongGrainAt(piece, bust, hem);
  // Where the grain runs into a dart at the hem or waist, the cut runs to its point and the dart opens.
  const throughDart = hemAlong === undefined && lower !== undefined;
  const below = throughDart
    ? scale(add(bust, lower.apex), 1 / 2)
    : add(bust, scale(down, Math.abs(by) + belowBust));
  const centre = acrossAt(piece, below, 'centre');
  if (hemAlong === undefined && !throughDart)
    throw refusal('adjust-needs-edge', { piece: { piece: piece.name }, role: 'hem' }, { piece: piece.name });
  const point = dart === undefined ? { pivot: bust } : { dart };
  const cuts: readonly Cut[] = [
    { from: { edge: hinge.edge, along: hinge.along }, to: point },
    { from: throughDart ? { dart: lower.name } : { edge: hem, along: hemAlong! }, to: { pivot: below } },
    { from: { pivot: below }, to: point },
    { from: { edge: centre.edge, along: centre.along }, to: { pivot: below } },
    ...(dart === undefined ? [{ from: sideEnd(piece, bust), to: point }] : []),
  ];
  return {
    cuts,
    lower: throughDart ? lower : undefined,
    sections: ({ beside }) => {
      const both = (cut: number): readonly number[] => [beside[cut]!.left, beside[cut]!.right];
      const top = both(0).find(section => both(3).includes(section))!;
      const other = (cut: number, than: number): number => both(cut).find(section => section !== than)!;
      const lowerCentre = other(3, top);
      return { centre: top, upperSide: other(0, top), lowerCentre, lowerSide: other(1, lowerCentre) };
    },
  };
}

/**
 * Where the point of a dart lies whose legs moved apart: half way between where each of them took it, and as far from
 * one end of the mouth as from the other, so that both legs are as long.
 */
function pointBetween(cutPiece: CutPiece, { name, legs, apex }: Dart, motions: readonly Affine[]): Point {
  const cut = cutPiece.cuts.findIndex(({ from }) => 'dart' in from && from.dart === name);
  const [before, after] = (['before', 'after'] as const).map(
    side => motions[sectionAt(cutPiece, cut, 'from', side)]!,
  ) as [Affine, Affine];
  const first = apply(before, pathStart(legs[0])),
    last = apply(after, pathEnd(legs[1]));
  const half = lerp(apply(before, apex), apply(after, apex), 1 / 2);
  const mouth = unit(subtract(last, first));
  return add(half, scale(mouth, dot(subtract(lerp(first, last, 1 / 2), half), mouth)));
}

/** Whether a dart's mouth lies in an edge. */
function opensAt(piece: Piece, dart: Dart, edge: string): boolean {
  const ring = piece.outline.parts;
  const at = ring.indexOf(dart);
  return [ring[(at + 1) % ring.length]!, ring[(at + ring.length - 1) % ring.length]!].some(
    part => part.name === edge,
  );
}

const sideEnd = (piece: Piece, bust: Point) => {
  const { edge, along } = acrossAt(piece, bust, 'side');
  return { edge, along };
};
