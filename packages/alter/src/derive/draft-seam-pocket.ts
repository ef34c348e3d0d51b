import {
  at,
  type EdgeRun,
  line,
  type Notch,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pathOf,
  pieceNamed,
  type Seam,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { fairCurve } from '@paperhinge/geometry/paths';
import { copiesInGarment, withPiece } from '@paperhinge/geometry/pattern';
import type { Alteration, Derived } from '../alteration.js';
import { seamNamed, sideLength, stretchOf } from '../moved-edges/seam-place.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { withMouthClosed } from './closed-mouth.js';
import { grainLine, seamEdge } from './collar-shapes.js';
import { freePlace } from './free-place.js';
import { titled } from './long-piece.js';
import { sideParts } from './seam-parts.js';
import { takePlace } from './take-place.js';
import { refusal, saying } from './tellings.js';

/** A pocket whose mouth is left open in a seam, with its two bags. Lengths in mm. */
export interface DraftSeamPocket {
  readonly name: string;
  readonly seam: string;
  /** Where the mouth begins, from the seam's beginning. */
  readonly from: number;
  /** Length of the mouth; default 165. */
  readonly mouth?: number;
  /** How far the bag reaches in, and below the mouth; default 150, and 100. */
  readonly depth?: number;
  readonly below?: number;
  /** Default 15. */
  readonly allowance?: number;
  readonly fabric?: string;
}

/**
 * Drafts an in-seam pocket: the seam stays open between two places, and two bags, one for each side, are sewn to the
 * mouth and to one another. On paper the maker lays a hand on the side seam and draws round it; here a drop that runs
 * from the mouth's top round to below it. The usual mouth of 165 mm takes a hand of 190 mm girth with ease; common
 * practice, no source. The pieces keep their outlines; the seam is told anew as its parts above and below the mouth, and of
 * a pocket drafted again the old mouth is closed first.
 *
 * @throws PatternError `unknown-seam`; `mouth-beyond-seam`; those of `perform`
 */
export const draftSeamPocket = (pattern: Pattern, parameters: DraftSeamPocket): Alteration =>
  perform(draftSeamPocketVerb, pattern, parameters);

export const draftSeamPocketForm = formOf<DraftSeamPocket>()({
  verb: 'draft seam pocket',
  does: 'Leaves a seam open for the mouth of a pocket, and drafts its two bags.',
  fields: {
    name: field.newName(),
    seam: field.seam(),
    from: field.length(),
    mouth: field.usually(field.size(), 165),
    depth: field.usually(field.size(), 150),
    below: field.usually(field.size(), 100),
    allowance: field.usually(field.length({ most: tolerances.largestAllowance }), 15),
    fabric: field.optional(field.cloth()),
  },
  leaves: ({ name }) => ({
    pieces: [`${name} front`, `${name} back`],
    seams: [`${name} front`, `${name} back`, `${name} bag`],
  }),
  sentence:
    'Draft a pocket "{name}" in the {seam} seam, {from} from its beginning[, its mouth {mouth} long][, {depth} deep][, reaching {below} below][, of the {fabric} cloth]',
  startsAt: { seam: ['seam'], edge: ['seam'] },
  example: { pattern: 'woven-shift', step: { name: 'pocket', seam: 'side', from: 260 } },
});
export const draftSeamPocketVerb = /* @__PURE__ */ verbFrom(draftSeamPocketForm, drawnPocket);

type Whole = DraftSeamPocket & Required<Pick<DraftSeamPocket, 'mouth' | 'depth' | 'below' | 'allowance'>>;

function drawnPocket(before: Pattern, wish: Whole): Alteration {
  const names = [`${wish.name} front`, `${wish.name} back`] as const;
  const given = withMouthClosed(before, wish.seam, names);
  const seam = seamNamed(given, wish.seam);
  const place = { from: wish.from, to: wish.from + wish.mouth };
  const lengthMm = Math.min(sideLength(given, seam.a), sideLength(given, seam.b));
  if (place.to > lengthMm)
    throw refusal(
      'mouth-beyond-seam',
      { seam: { seam: seam.name }, toMm: place.to, lengthMm },
      { seam: seam.name },
    );
  const sides = [sideParts(given, seam.a, place), sideParts(given, seam.b, place)] as const;
  const open: Seam = {
    ...seam,
    a: [...sides[0].before, ...sides[0].after],
    b: [...sides[1].before, ...sides[1].after],
  };
  const parted: Pattern = { ...given, seams: given.seams.map(one => (one === seam ? open : one)) };
  let pattern = sides.reduce((now, { within }) => withMouthNotches(now, within, wish.name), parted);
  const derived: Derived[] = [];
  for (const [i, { within }] of sides.entries()) {
    const bag = bagOf(pattern, wish, names[i]!, pieceNamed(pattern, within[0]!.piece));
    const placed = takePlace(
      pattern,
      { ...bag, madeFor: within.map(({ piece, edge }) => ({ piece, edge })) },
      // The mouth is drawn from below upwards, so that its piece lies clockwise.
      { own: [{ piece: bag.name, edge: 'mouth', reversed: true }], partner: within, easeMm: 0 },
    );
    pattern = placed.pattern;
    derived.push(derivedBag(bag, wish));
  }
  const runs = (piece: string) => (['bag', 'below'] as const).map(edge => ({ piece, edge, reversed: false }));
  const closed: Seam = { name: `${wish.name} bag`, a: runs(names[0]), b: runs(names[1]), ease: { mm: 0 } };
  const others = pattern.seams.filter(one => one.name !== closed.name);
  return {
    pattern: { ...pattern, seams: [...others, closed] },
    did: saying('drafted-seam-pocket', {
      seam: { seam: seam.name },
      fromMm: place.from,
      mouthMm: wish.mouth,
      pieces: names.map(piece => ({ piece })),
    }),
    findings: [],
    derived,
  };
}

/** Both sides of the seam are notched where the mouth begins and ends. */
function withMouthNotches(pattern: Pattern, within: readonly EdgeRun[], name: string): Pattern {
  const ends = [
    { run: within[0]!, at: 'start' as const },
    { run: within.at(-1)!, at: 'end' as const },
  ];
  return ends.reduce((now, { run, at }) => {
    const piece = pieceNamed(now, run.piece);
    const [from, to] = stretchOf(now, run);
    const notch: Notch = {
      edge: run.edge,
      at: (at === 'start') === run.reversed ? to : from,
      style: 'single',
      name: `${name} mouth ${at}`,
    };
    const others = piece.notches.filter(one => one.name !== notch.name);
    return withPiece(now, { ...piece, notches: [...others, notch] });
  }, pattern);
}

const derivedBag = ({ name, cutting }: Piece, { mouth, depth, below }: Whole): Derived => ({
  name,
  kind: 'pocket',
  lengthMm: mouth + below,
  widthMm: depth,
  fabric: cutting.fabric,
  along: [],
  edgeMm: mouth,
  figures: { mouthMm: mouth },
});

function bagOf(pattern: Pattern, wish: Whole, name: string, source: Piece): Piece {
  const { mouth, depth, below, allowance } = wish;
  const place = freePlace(pattern, name);
  const spot = (x: number, y: number): Point => at(place.x + x, place.y + y);
  const bottom = spot(0, mouth + below);
  const bag = fairCurve(
    { point: spot(0, 0), direction: at(1, 0.2) },
    { point: bottom, direction: at(-1, 0) },
    tolerances.fitTolerance,
    [spot(depth, mouth * 0.8)],
  );
  const copies = copiesInGarment(source);
  return {
    name,
    title: titled(name),
    role: 'pocket',
    outline: {
      parts: [
        seamEdge('bag', bag, allowance),
        seamEdge('below', pathOf(line(bottom, spot(0, mouth))), allowance),
        seamEdge('mouth', pathOf(line(spot(0, mouth), spot(0, 0))), allowance),
      ],
    },
    notches: [{ edge: 'bag', at: pathLength(bag) / 2, style: 'single', name: 'bag' }],
    lines: [grainLine(spot(depth * 0.3, mouth), spot(depth * 0.3, mouth * 0.3))],
    marks: [],
    cutting: { count: copies, mirrored: copies % 2 === 0, fabric: wish.fabric ?? source.cutting.fabric },
  };
}
