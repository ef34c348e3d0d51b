import {
  type EdgeRef,
  edgeNamed,
  type Finding,
  formatLength,
  type Notch,
  type Pattern,
  PatternError,
  pieceNamed,
  tolerances,
} from '@paperhinge/geometry';
import type { Alteration, Derived, MakingNote } from '../alteration.js';
import { bandStretchFindings, stretchOfBand } from '../fit/band-stretch.js';
import { stretchOf } from '../fit/cloth.js';
import * as field from '../verb/fields.js';
import { perform, verbOf } from '../verb/verb.js';
import { type BandMark, bandMarks, withEdgeMarks } from './band-marks.js';
import { cutLength } from './cut-size.js';
import { drafted } from './drafted.js';
import { freePlace } from './free-place.js';
import { gapAcross } from './gap.js';
import { distinctEdges, garmentChains, requireJoined, runsAlong } from './garment-chain.js';
import { endEdges, longPiece, sewnEdge } from './long-piece.js';
import { narrowFindings, stitchedIn } from './stitched-in.js';
import { takePlace } from './take-place.js';

/** A band twice as long as its edge is a frill. */
const largestRatio = 2;

/** A stretched band along edges, over a gap if there is one. Lengths in mm. */
export interface DraftBand {
  readonly name: string;
  readonly along: readonly EdgeRef[];
  readonly gap?: EdgeRef;
  /** Over 0 to 2. */
  readonly ratio: number;
  /** mm, cut width. */
  readonly width: number;
  /** mm of joining allowance at each end; default 0. */
  readonly join?: number;
  /** Whether the part over a gap is stretched with the rest; default `whole`. */
  readonly stretchedPart?: 'whole' | 'sewn';
  readonly fabric?: string;
}

/**
 * Drafts a straight band for edges that follow each other in the garment. With E their stitching length over the
 * whole garment and G the straight distance across the gap, it is cut ratio × (E + G) + 2 join long, or, where only
 * the sewn part is stretched, ratio × E + G + 2 join. The part over the gap is not stretched in either case, so the
 * sewn part is by E / (length − 2 join − G) − 1. Marked in halves and quarters, at the gap's ends and where seams and
 * folds meet it; the edges are marked where the quarters fall.
 *
 * @throws PatternError `edges-do-not-join`, `gap-not-beside`, `band-too-short`, `band-size`, `drafted-along-itself`;
 *   `unknown-piece`, `unknown-edge`; those of `perform`
 */
export const draftBand = (pattern: Pattern, parameters: DraftBand): Alteration =>
  perform(draftBandVerb, pattern, parameters);

export const draftBandVerb = verbOf<DraftBand>()({
  verb: 'draft band',
  does: 'Drafts a straight band for edges that follow each other in the garment, shorter than they are by a ratio, so that it is stretched as it is sewn on.',
  fields: {
    name: field.newName(),
    along: field.edgesOfPieces(),
    gap: field.optional(field.edgeOfPiece()),
    ratio: field.share({ most: largestRatio, over: true }),
    width: field.size(),
    join: field.usually(field.length(), 0),
    stretchedPart: field.usually(field.choice('whole', 'sewn'), 'whole'),
    fabric: field.optional(field.cloth()),
  },
  leaves: drafted,
  sentence:
    'Draft a band "{name}" for {along} at {ratio} of their length, {width} wide[, over the gap {gap}][, with {join} to join it][, of the {fabric} cloth]',
  startsAt: { edge: ['along'], table: [] },
  example: {
    pattern: 'woven-shift',
    step: { name: 'neckband', along: ['front.neck', 'back.neck'], ratio: '80 %', width: 56, join: 7 },
  },
  alter: drawnBand,
});

type WholeBand = DraftBand & Required<Pick<DraftBand, 'join' | 'stretchedPart'>>;

function drawnBand(pattern: Pattern, parameters: WholeBand): Alteration {
  const { name, gap, ratio, width, join } = parameters;
  const along = distinctEdges(parameters.along);
  const chains = garmentChains(pattern, along, gap);
  const rings = requireJoined(chains, name);
  const edgeMm = chains.flatMap(c => c.lying).reduce((sum, l) => sum + l.lengthMm, 0);
  const gapMm = gap ? gapAcross(pattern, gap, along) : 0;
  const stretched = parameters.stretchedPart === 'whole' ? ratio * (edgeMm + gapMm) : ratio * edgeMm + gapMm;
  const lengthMm = stretched + 2 * join;
  const sewnMm = stretched - gapMm;
  if (!(sewnMm > 0)) throw tooShort(name, lengthMm, join, gapMm);
  const first = edgeNamed(pieceNamed(pattern, along[0]!.piece), along[0]!.edge);
  const allowance = stitchedIn(width, first.allowance);
  const finishedWidth = width - 2 * allowance;
  const fabric = parameters.fabric ?? pieceNamed(pattern, along[0]!.piece).cutting.fabric;
  const marks = bandMarks(chains, edgeMm, gapMm, stretched);
  const piece = longPiece({
    name,
    madeFor: along,
    place: freePlace(pattern, name),
    fabric,
    finishedLength: stretched,
    finishedWidth,
    join,
    allowance,
    grain: 'across',
    notches: marks.map(({ at, label }): Omit<Notch, 'edge'> => ({ at, style: 'single', name: label })),
  });
  const ring = rings === 1 && chains[0]!.closed;
  const sewn = {
    own: [{ piece: name, edge: sewnEdge, reversed: false }],
    partner: runsAlong(chains),
    easeMm: stretched - edgeMm,
  };
  const [startEnd, endEnd] = endEdges;
  const ends = {
    a: [{ piece: name, edge: startEnd, reversed: true }],
    b: [{ piece: name, edge: endEnd, reversed: false }],
  };
  const placed = takePlace(withEdgeMarks(pattern, chains, marks, name), piece, sewn, ring ? ends : undefined);
  const band = { name, edgeMm, lengthMm, joinMm: join, gapMm };
  const stretchPercent = stretchOfBand(band);
  const derived: Derived = {
    name,
    kind: 'band',
    lengthMm,
    widthMm: width,
    fabric,
    along,
    edgeMm,
    figures: {
      gapMm,
      ratioPercent: ratio * 100,
      joinMm: join,
      stretchPercent,
      finishedLengthMm: stretched,
      sewnMm,
      finishedWidthMm: finishedWidth / 2,
      halfMm: stretched / 2,
      quarterMm: stretched / 4,
    },
  };
  const cut = (mm: number): string => cutLength(mm, pattern.unit);
  const say = (mm: number): string => formatLength(mm, pattern.unit);
  const bridged = gapMm > 0 ? ` and a gap of ${say(gapMm)}` : '';
  return {
    pattern: placed.pattern,
    did:
      `drafted ${name} for ${say(edgeMm)} of edge${bridged} at ${Number((ratio * 100).toFixed(1))} %: ` +
      `cut ${cut(lengthMm)} × ${cut(width)}, its sewn part stretches by ${stretchPercent.toFixed(1)} %` +
      (placed.replaced ? '; it takes the place of the old piece of that name' : ''),
    findings: [
      ...bandStretchFindings(band, stretchOf(pattern, fabric)),
      ...allowanceFinding(pattern, along, first.allowance, name),
      ...narrowFindings(name, width, first.allowance, pattern.unit),
      ...ringsFinding(name, rings, edgeMm, ratio, join),
      ...placed.findings,
    ],
    derived: [derived],
    making: [bandNote(name, along, marks, stretchPercent, ring)],
  };
}

const tooShort = (name: string, lengthMm: number, join: number, gapMm: number): PatternError =>
  new PatternError('band-too-short', {
    message:
      `"${name}" would be ${(lengthMm - 2 * join).toFixed(1)} mm long between its joins, ` +
      `which the gap of ${gapMm.toFixed(1)} mm uses up.`,
    remedy: 'Make the ratio larger or the gap narrower.',
  });

function allowanceFinding(
  pattern: Pattern,
  along: readonly EdgeRef[],
  taken: number,
  name: string,
): readonly Finding[] {
  const others = along.filter(
    ref =>
      Math.abs(edgeNamed(pieceNamed(pattern, ref.piece), ref.edge).allowance - taken) >
      tolerances.coincidenceTolerance,
  );
  if (others.length === 0) return [];
  return [
    {
      severity: 'warning',
      code: 'allowances-differ',
      where: { piece: name },
      message: `"${name}" has the allowance of ${along[0]!.piece}.${along[0]!.edge}, ${taken.toFixed(1)} mm; ${others.map(r => `${r.piece}.${r.edge}`).join(', ')} has another.`,
      figures: { allowanceMm: taken },
      remedy: 'Set one allowance on all the edges it is sewn to before drafting it.',
    },
  ];
}

/** Edges that make a ring on either side of the garment: the length is for both, as the sheet's words have it. */
function ringsFinding(
  name: string,
  rings: number,
  edgeMm: number,
  ratio: number,
  join: number,
): readonly Finding[] {
  if (rings < 2) return [];
  const eachMm = (ratio * edgeMm) / rings + 2 * join;
  return [
    {
      severity: 'warning',
      code: 'several-rings',
      where: { piece: name },
      message: `The edges of "${name}" make ${rings} separate rings in the garment; its length is for all of them together.`,
      figures: { rings, eachMm },
      remedy: `Cut ${rings} pieces of ${eachMm.toFixed(1)} mm instead, joins included.`,
    },
  ];
}

function bandNote(
  name: string,
  along: readonly EdgeRef[],
  marks: readonly BandMark[],
  stretchPercent: number,
  ring: boolean,
): MakingNote {
  const edges = along.map(r => `${r.piece}.${r.edge}`).join(', ');
  const hasGap = marks.some(m => m.label.includes('gap'));
  const how =
    stretchPercent > 0
      ? `stretch it evenly by ${stretchPercent.toFixed(0)} % between them`
      : 'ease it evenly between them';
  return {
    job: `band ${name}`,
    text: `Sew ${name} to ${edges}: pin mark on mark${hasGap ? ", the gap's ends first" : ''}, ${how}${ring ? '' : ', ends left open'}.`,
    after: [],
  };
}
