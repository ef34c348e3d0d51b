import { type Pattern, type Piece, type Point, pieceNamed, type Saying } from '@paperhinge/geometry';
import { resolvePosition, withPiece } from '@paperhinge/geometry/pattern';
import {
  type Affine,
  add,
  distance,
  leftOf,
  rotation,
  scale,
  subtract,
  translation,
  unit,
} from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { pivotOf } from '../darts/pivot.js';
import { refusal, saying } from '../fullness/tellings.js';
import { type Cut, pointOfEnd } from '../hinge/cut.js';
import { inDegrees } from '../hinge/degrees.js';
import { holdingSection } from '../hinge/holding.js';
import { motionsAcross } from '../hinge/motions-across.js';
import { openingFindings } from '../hinge/opening-findings.js';
import { cutApart } from '../hinge/sections.js';
import { type Swung, swing } from '../hinge/swing.js';
import { type Beside, counterpartOf } from '../matching/counterparts.js';
import { doneBeside } from '../matching/done-to-each.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { mouthsFor, type SlashCut, slashesTakenUp } from './slash-taken-up.js';
import { radiusOf, turnOf } from './slash-turn.js';
import type { OneSlash, Slash, SlashEnd } from './slash-wish.js';

/**
 * Slashes a piece at several places and opens each by its own amount. A slash of length R that hinges at its other end
 * turns by θ = 2 asin(by / 2R). With `other end` it turns about the point at which the two openings, which are as their
 * distances from it, would come to nothing; equal ones move in parallel. With `pivot` it runs from edge to mark to edge
 * and turns about the mark: the far side, at r from it, overlaps by 2 r sin(θ/2). Each strip between two slashes stays
 * rigid and keeps its grain; the strip with the fold, else the centre, else the grain stays, the others follow one
 * another outwards. What opens is bridged straight, or taken up as `spread` does
 * it, each slash in its own way: `ease` and `gathers` become ease of the edge's seams, pleats and tucks stand in the edge,
 * laid away from what stays, and so does a `dart` with legs of one length. With `matching` each piece that is sewn beside this one, and has
 * edges that answer to all of these (and marks of the same names), is slashed likewise, mirrored across the seam between
 * them. Source: Armstrong, Patternmaking for Fashion Design (1987), added
 * fullness [memory].
 *
 * @throws PatternError `fold-needs-opening`, `pleat-name-taken`, `field-missing` where a fold or dart has no name;
 *   `unknown-piece`, `unknown-edge`, `unknown-mark`, `slash-pivot-and-end`, `spread-too-wide`,
 *   `slash-leaves-piece`, `slash-crosses-dart`, `slashes-cross`, `slashes-too-near`, `slash-too-short`,
 *   `overlap-too-wide`, `outline-tangled`; those of `perform` and `resolvePosition`
 */
export const slash = (pattern: Pattern, parameters: Slash): Alteration =>
  perform(slashVerb, pattern, parameters);

/** Each is a cut through the whole piece. */
const mostSlashes = 60;

const end = () => field.group<SlashEnd>({ edge: field.edge(), at: field.optional(field.place('edge')) });

export const slashForm = formOf<Slash>()({
  verb: 'slash',
  does: 'Slashes the pattern at several places at once and opens or overlaps each by its own amount, hinged at its far end, at a mark within the piece, or opened at both ends.',
  fields: {
    piece: field.piece(),
    slashes: field.groups<OneSlash>(
      {
        from: end(),
        to: end(),
        by: field.signedLength(),
        otherEnd: field.optional(field.signedLength()),
        pivot: field.optional(field.mark()),
        into: field.optional(
          field.choice('ease', 'gathers', 'dart', 'knife pleats', 'box pleats', 'inverted pleats', 'tucks'),
        ),
        name: field.optional(field.newName()),
        stitched: field.optional(field.length()),
        depth: field.optional(field.size()),
      },
      mostSlashes,
    ),
    matching: field.optional(field.yesOrNo()),
  },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence:
    'Slash the {piece} and open each slash by its own amount: {slashes}[, the pieces beside it too: {matching}]',
  startsAt: { piece: ['piece'] },
  example: {
    pattern: 'woven-shift',
    step: {
      piece: 'sleeve',
      slashes: [
        { from: { edge: 'hem', at: '1/4' }, to: { edge: 'cap', at: '3/4' }, by: 25 },
        { from: { edge: 'hem', at: '1/2' }, to: { edge: 'cap', at: '1/2' }, by: 50, 'other end': 20 },
        { from: { edge: 'hem', at: '3/4' }, to: { edge: 'cap', at: '1/4' }, by: 70 },
      ],
    },
  },
});
export const slashVerb = /* @__PURE__ */ verbFrom(slashForm, (pattern, { matching, ...wish }) =>
  matching
    ? doneBeside(pattern, wish.piece, wish, beside => wishBeside(pattern, wish, beside), slashed)
    : slashed(pattern, wish),
);

function slashed(pattern: Pattern, parameters: Slash): Alteration {
  const piece = pieceNamed(pattern, parameters.piece);
  return locating({ piece: piece.name }, () => {
    const made = parameters.slashes.map(one => slashIn(piece, one));
    const cutPiece = cutApart(
      piece,
      made.flatMap(({ cuts }) => cuts),
    );
    const across = made.flatMap(({ cuts, motion }) => cuts.map(() => motion));
    const holding = holdingSection(cutPiece);
    const mouths = mouthsFor(piece, cutPiece, holding, firstCuts(made));
    const swung = swing(cutPiece, motionsAcross(cutPiece, holding, across), holding, { mouths });
    const drawn = withPiece(pattern, swung.piece);
    return {
      pattern: slashesTakenUp(pattern, drawn, swung.became, parameters),
      became: swung.became,
      did: saying('slashed', { piece: { piece: piece.name }, slashes: toldOf(made, swung) }),
      findings: openingFindings(piece.name, swung),
    };
  });
}

/** The slashes as they lie on a piece beside; nothing where an edge or a mark of one has no counterpart there. */
function wishBeside(pattern: Pattern, wish: Slash, beside: Beside): Slash | undefined {
  const { marks } = pieceNamed(pattern, beside.piece);
  const slashes = wish.slashes.flatMap((one): readonly OneSlash[] => {
    const from = counterpartOf(pattern, wish.piece, one.from, beside),
      to = counterpartOf(pattern, wish.piece, one.to, beside);
    const hasPivot = one.pivot === undefined || marks.some(({ name }) => name === one.pivot);
    return from && to && hasPivot ? [{ ...one, from, to }] : [];
  });
  return slashes.length === wish.slashes.length ? { piece: beside.piece, slashes } : undefined;
}

interface Made {
  readonly wish: OneSlash;
  /** One, or two that meet at a pivot. */
  readonly cuts: readonly Cut[];
  /** Of what lies to its left, where what lies to its right stays. */
  readonly motion: Affine;
  readonly turn: number;
}

/** Each slash with the place of its first cut among all. */
function firstCuts(made: readonly Made[]): readonly SlashCut[] {
  let next = 0;
  return made.map(({ wish, cuts }) => {
    const cut = next;
    next += cuts.length;
    return { wish, cut };
  });
}

function slashIn(piece: Piece, wish: OneSlash): Made {
  const { by, otherEnd, pivot: named } = wish;
  const [from, to] = [wish.from, wish.to].map(({ edge, at = { share: 0.5 } }) => ({
    edge,
    along: resolvePosition(piece, edge, at),
  })) as [Cut['from'], Cut['to']];
  const [a, b] = [pointOfEnd(piece, from), pointOfEnd(piece, to)];
  if (named !== undefined) {
    if (otherEnd !== undefined) throw refusal('slash-pivot-and-end', { mark: { mark: named } });
    const pivot = pivotOf(piece, { pivot: named })!;
    const turn = turnOf(distance(a, pivot), [by, 0], wish.from.edge);
    const cuts: readonly Cut[] = [
      { from, to: { pivot } },
      { from: { pivot }, to },
    ];
    return { wish, cuts, motion: rotation(turn, pivot), turn };
  }
  return { wish, cuts: [{ from, to }], ...openedAt(a, b, wish) };
}

/** To the left, looking from `from` to `to`, lies what follows along the edge at `from`: moving it that way opens. */
function openedAt(from: Point, to: Point, { by, otherEnd = 0, from: { edge } }: OneSlash) {
  const way = unit(subtract(to, from));
  if (by === otherEnd) return { motion: translation(scale(leftOf(way), by)), turn: 0 };
  const length = distance(from, to);
  const turn = turnOf(length, [by, otherEnd], edge);
  const about = add(from, scale(way, radiusOf(length, [by, otherEnd])));
  return { motion: rotation(turn, about), turn };
}

/** Each slash with where it was made and what it came to at both ends. */
function toldOf(made: readonly Made[], swung: Swung): readonly Saying[] {
  const firsts = firstCuts(made);
  return made.map(({ wish, cuts, turn }, i) => {
    const first = firsts[i]!.cut;
    const last = first + cuts.length - 1;
    const opened = (index: number, at: 'from' | 'to') =>
      swung.openings.find(o => o.cut === index && o.end === at)?.openedMm ?? 0;
    const along = (at: Cut['from'] | undefined) => (at && 'along' in at ? at.along : 0);
    return saying('slashed-at', {
      from: { edge: wish.from.edge },
      fromMm: along(cuts[0]?.from),
      to: { edge: wish.to.edge },
      toMm: along(cuts.at(-1)?.to),
      openedMm: opened(first, 'from'),
      otherMm: opened(last, 'to'),
      turnDeg: inDegrees(Math.abs(turn)),
      ...(wish.into === undefined ? {} : { into: wish.into }),
      ...(wish.pivot === undefined ? {} : { about: { mark: wish.pivot } }),
    });
  });
}
