// Every adjustment with a named amount on three garments that it was not built on, held against what trade-notes §9 says
// of it: where the garment changes, by how much, and what stays as long as it was.
import { adjust } from '@paperhinge/alter/fit';
import {
  edgePath,
  levelGirths,
  type Pattern,
  type Point,
  pathLength,
  pieceNamed,
  validatePattern,
  walkSeam,
  walkSeams,
} from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { dartsOf, edgesOfRole } from '@paperhinge/geometry/pattern';
import { describe, expect, test } from 'vitest';
import { type Adjustment, adjustments } from '../../../../packages/alter/src/fit/adjust/names.js';
import { topOf, tops, trousers, trousersOf } from '../../../support/other-garments.js';

type Role = Parameters<typeof edgesOfRole>[1];

/** mm. */
const by = 12;

/** A garment and the names of its pieces, front, back and sleeve, or both legs. */
interface Case {
  readonly title: string;
  readonly pattern: Pattern;
  readonly pieces: readonly string[];
}
const garments: readonly Case[] = tops.map(garment => ({
  title: garment.title,
  pattern: topOf(garment),
  pieces: ['front', 'back', 'sleeve'].map(what => garment.names[what] ?? what),
}));
const legs: readonly Case[] = trousers.map(one => ({
  title: one.title,
  pattern: trousersOf(one),
  pieces: ['vorn', 'hinten'],
}));

const lengthOf = (pattern: Pattern, piece: string, role: Role): number =>
  edgesOfRole(pieceNamed(pattern, piece), role).reduce(
    (sum, edge) => sum + pathLength(edgePath(pieceNamed(pattern, piece), edge)),
    0,
  );
const girth = (pattern: Pattern, level: string): number =>
  levelGirths(pattern)[`${level} level`] ?? levelGirths(pattern)[level]!;

/** How much an edge of the front (0), the back (1) or the sleeve (2) changed. */
const change = (after: Pattern, { pattern, pieces }: Case, piece: 0 | 1 | 2, role: Role): number =>
  lengthOf(after, pieces[piece]!, role) - lengthOf(pattern, pieces[piece]!, role);

interface Expected {
  readonly of: readonly Case[];
  /** What changes, in mm; positive as the adjustment is asked. */
  readonly changes: (after: Pattern, one: Case) => number;
  readonly is: number;
  readonly within?: number;
  /** Edges that keep their lengths. */
  readonly keeps?: readonly (readonly [0 | 1 | 2, Role])[];
}

const levelChange =
  (level: string) =>
  (after: Pattern, { pattern }: Case): number =>
    girth(after, level) - girth(pattern, level);
const edgeChange =
  (piece: 0 | 1 | 2, role: Role) =>
  (after: Pattern, one: Case): number =>
    change(after, one, piece, role);

/** The edge at the centre, where it opens too. */
const centreChange =
  (piece: 0 | 1) =>
  (after: Pattern, one: Case): number =>
    change(after, one, piece, 'centre') + change(after, one, piece, 'opening');

/** How far a point of a piece went along its grain. */
function alongGrain(
  after: Pattern,
  { pattern, pieces }: Case,
  piece: 0 | 1,
  of: (p: Pattern) => Point,
): number {
  const grain = pieceNamed(pattern, pieces[piece]!).lines.find(line => line.kind === 'grain')!.path;
  const [a, b] = [pathStart(grain), pathEnd(grain)];
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  const [was, is] = [of(pattern), of(after)];
  return ((is.x - was.x) * (b.x - a.x) + (is.y - was.y) * (b.y - a.y)) / long;
}

const dartPoint =
  (piece: string) =>
  (pattern: Pattern): Point =>
    dartsOf(pieceNamed(pattern, piece))[0]!.apex;

/** The end of the armhole at the shoulder: the one that is farther from the hem. */
const shoulderEnd =
  (piece: string) =>
  (pattern: Pattern): Point => {
    const own = pieceNamed(pattern, piece);
    const armhole = edgePath(own, edgesOfRole(own, 'armhole')[0]!);
    const hem = pathStart(edgePath(own, edgesOfRole(own, 'hem')[0]!));
    const far = ({ x, y }: Point): number => Math.hypot(x - hem.x, y - hem.y);
    const [start, end] = [pathStart(armhole), pathEnd(armhole)];
    return far(start) > far(end) ? start : end;
  };

const upper: readonly (readonly [0 | 1 | 2, Role])[] = [
  [0, 'neck'],
  [0, 'armhole'],
  [1, 'shoulder'],
];

const expected: Readonly<Partial<Record<Adjustment, Expected>>> = {
  'full bust': { of: garments, changes: levelChange('waist'), is: by, within: 0.5, keeps: upper },
  'small bust': { of: garments, changes: levelChange('waist'), is: -by, within: 0.5, keeps: upper },
  'high bust': {
    of: garments,
    changes: (after, one) => alongGrain(after, one, 0, dartPoint(one.pieces[0]!)),
    is: by,
    keeps: [[0, 'hem']],
  },
  'low bust': {
    of: garments,
    changes: (after, one) => alongGrain(after, one, 0, dartPoint(one.pieces[0]!)),
    is: -by,
    keeps: [[0, 'hem']],
  },
  'full abdomen': { of: garments, changes: levelChange('hip'), is: by, within: 1, keeps: [[0, 'neck']] },
  'sway back': { of: garments, changes: centreChange(1), is: -by, within: 0.5, keeps: [[1, 'side']] },
  'full seat': { of: garments, changes: centreChange(1), is: by, within: 0.5, keeps: [[1, 'side']] },
  'flat seat': { of: garments, changes: centreChange(1), is: -by, within: 0.5, keeps: [[1, 'side']] },
  'broad back': { of: garments, changes: levelChange('bust'), is: by, within: 0.5, keeps: [[1, 'neck']] },
  'narrow back': {
    of: garments,
    changes: levelChange('bust'),
    is: -by,
    within: 0.5,
    keeps: [[1, 'shoulder']],
  },
  'round back': { of: garments, changes: centreChange(1), is: by, within: 0.5, keeps: [[1, 'shoulder']] },
  'hollow chest': { of: garments, changes: centreChange(0), is: -by, within: 0.5, keeps: [[0, 'hem']] },
  'square shoulder': {
    of: garments,
    changes: (after, one) => alongGrain(after, one, 1, shoulderEnd(one.pieces[1]!)),
    is: by,
    keeps: [
      [0, 'armhole'],
      [1, 'armhole'],
    ],
  },
  'sloping shoulder': {
    of: garments,
    changes: (after, one) => alongGrain(after, one, 1, shoulderEnd(one.pieces[1]!)),
    is: -by,
    keeps: [
      [0, 'armhole'],
      [1, 'armhole'],
    ],
  },
  'forward shoulder': { of: garments, changes: edgeChange(0, 'armhole'), is: -by, within: 1 },
  'broad shoulder': {
    of: garments,
    changes: edgeChange(1, 'shoulder'),
    is: by,
    within: 0.5,
    keeps: [[1, 'armhole']],
  },
  'narrow shoulder': {
    of: garments,
    changes: edgeChange(1, 'shoulder'),
    is: -by,
    within: 0.5,
    keeps: [[1, 'neck']],
  },
  'full upper arm': {
    of: garments,
    changes: (after, one) => across(after, one.pieces[2]!) - across(one.pattern, one.pieces[2]!),
    is: by,
    within: 0.1,
    keeps: [
      [2, 'cap'],
      [2, 'underarm'],
      [2, 'hem'],
    ],
  },
  'thin upper arm': {
    of: garments,
    changes: (after, one) => across(after, one.pieces[2]!) - across(one.pattern, one.pieces[2]!),
    is: -by,
    within: 0.1,
    keeps: [[2, 'underarm']],
  },
  'long torso': { of: garments, changes: centreChange(1), is: by, within: 0.01 },
  'short torso': { of: garments, changes: centreChange(1), is: -by, within: 0.01 },
  'full hips': { of: [...garments, ...legs], changes: levelChange('hip'), is: by, within: 1 },
  'narrow hips': { of: [...garments, ...legs], changes: levelChange('hip'), is: -by, within: 1 },
  'full waist': { of: garments, changes: levelChange('waist'), is: by, within: 1 },
  'narrow waist': { of: garments, changes: levelChange('waist'), is: -by, within: 1 },
  'full neck': {
    of: garments,
    changes: (after, one) => change(after, one, 1, 'shoulder'),
    is: -by,
    within: 1.5,
    keeps: [[1, 'armhole']],
  },
  'high left hip': { of: [...garments, ...legs], changes: oneSide, is: by, within: 0.05 },
  'high right hip': { of: [...garments, ...legs], changes: oneSide, is: by, within: 0.05 },
  'full thigh': {
    of: legs,
    changes: (after, one) => change(after, one, 0, 'hem'),
    is: 0,
    keeps: [
      [0, 'crotch'],
      [0, 'inseam'],
      [0, 'outseam'],
      [1, 'inseam'],
    ],
  },
  'thin thigh': { of: legs, changes: (after, one) => change(after, one, 0, 'inseam'), is: 0, within: 0.1 },
  'long crotch': { of: legs, changes: edgeChange(0, 'outseam'), is: by, within: 0.3, keeps: [[0, 'inseam']] },
  'short crotch': {
    of: legs,
    changes: edgeChange(0, 'outseam'),
    is: -by,
    within: 0.3,
    keeps: [[0, 'inseam']],
  },
  'long crotch point': {
    of: legs,
    changes: outAtCrotch,
    is: by / 2,
    within: 0.5,
    keeps: [[1, 'outseam']],
  },
  'short crotch point': {
    of: legs,
    changes: outAtCrotch,
    is: -by / 2,
    within: 0.5,
    keeps: [[1, 'outseam']],
  },
};

/** How much longer the seam is in which one side of front and back are sewn together; the other side keeps its length. */
function oneSide(after: Pattern, { pattern }: Case): number {
  const isSide = (run: { readonly piece: string; readonly edge: string }): boolean =>
    edgesOfRole(pieceNamed(after, run.piece), 'side', 'outseam').includes(run.edge);
  const sides = after.seams
    .filter(({ a, b }) => [...a, ...b].every(isSide))
    .map(seam => walkSeam(after, seam));
  const before = walkSeams(pattern).find(walk => ['side', 'outer'].includes(walk.seam))!;
  const longer = sides.map(({ aMm, bMm }) => [aMm - before.aMm, bMm - before.bMm] as const);
  const still = longer.find(both => both.every(mm => Math.abs(mm) < 0.05));
  const raised = longer.find(both => both !== still);
  if (longer.length !== 2 || !still || !raised) throw new Error(JSON.stringify(longer));
  return Math.abs(raised[0] - raised[1]) < 0.05 ? raised[0] : Number.NaN;
}

/** How far the back's inseam moved at the crotch, square to itself: half of what each leg gains there. */
function outAtCrotch(after: Pattern, { pattern, pieces }: Case): number {
  const ends = (of: Pattern): readonly [Point, Point] => {
    const inseam = edgePath(pieceNamed(of, pieces[1]!), 'innen');
    const crotch = edgePath(pieceNamed(of, pieces[1]!), 'Schritt');
    const at = [pathStart(inseam), pathEnd(inseam)] as const;
    const touches = ({ x, y }: Point): boolean =>
      [pathStart(crotch), pathEnd(crotch)].some(p => Math.hypot(p.x - x, p.y - y) < 1e-6);
    return touches(at[0]) ? at : [at[1], at[0]];
  };
  const [was, knee] = ends(pattern);
  const [is] = ends(after);
  const [dx, dy] = [was.x - knee.x, was.y - knee.y];
  const off = Math.abs((is.x - was.x) * dy - (is.y - was.y) * dx) / Math.hypot(dx, dy);
  return off * Math.sign(change(after, { title: '', pattern, pieces }, 1, 'crotch'));
}

/** Between the ends of the cap. */
function across(pattern: Pattern, sleeve: string): number {
  const own = pieceNamed(pattern, sleeve);
  const cap = edgePath(own, edgesOfRole(own, 'cap')[0]!);
  const [a, b] = [pathStart(cap), pathEnd(cap)];
  return Math.hypot(a.x - b.x, a.y - b.y);
}

const cases = Object.entries(expected).flatMap(([what, told]) =>
  told.of.map(one => [what as Adjustment, one.title, told, one] as const),
);

describe('on garments it was not built on', () => {
  test.each(cases)('%s: %s', (what, _, { changes, is, within = 0.05, keeps = [] }, one) => {
    const { pattern } = adjust(one.pattern, { for: what, by });
    validatePattern(pattern);
    expect(Math.abs(changes(pattern, one) - is), `changed by ${changes(pattern, one)}`).toBeLessThan(within);
    for (const [piece, role] of keeps)
      expect(Math.abs(change(pattern, one, piece, role)), `${role} of ${one.pieces[piece]}`).toBeLessThan(
        0.05,
      );
  });

  test('none is left out', () => {
    expect(adjustments.filter(what => !(what in expected))).toEqual([]);
  });
});
