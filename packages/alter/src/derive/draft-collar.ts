import {
  at,
  type EdgeRef,
  edgePath,
  type Finding,
  type Notch,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import { boundsOfPath, transformedPath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { subtract, translation } from '@paperhinge/geometry/plane';
import type { Alteration, Derived } from '../alteration.js';
import { distinctEdges } from '../edge-refs.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { bandMarks } from './band-marks.js';
import { fallShape, flatShape, ratioOfRise } from './collar-shapes.js';
import { fairThrough } from './fair-through.js';
import { freePlace } from './free-place.js';
import { halfNeck, neckLine } from './half-neck.js';
import { laidAlong, requireOneStretch } from './laid-along.js';
import { lappedBand } from './lapped-band.js';
import { titled } from './long-piece.js';
import { seamAlong } from './sewn-on.js';
import { neckJoints, shoulderNotches } from './shoulder-notches.js';
import { type DraftedSeam, takePlace } from './take-place.js';
import { takenAllowance } from './taken-allowance.js';
import { saying } from './tellings.js';

/** A collar for a neck. Lengths in mm. */
export interface DraftCollar {
  readonly name: string;
  /** The neck's edges, all of them. */
  readonly along: readonly EdgeRef[];
  readonly kind: 'stand' | 'shirt' | 'flat';
  /** How deep it is at the centre back when finished. */
  readonly width: number;
  /** Of a shirt collar: how high its stand is. Default 30. */
  readonly stand?: number;
  /** How far a stand's neck edge rises at either front, so that it leans in; default 12. */
  readonly rise?: number;
  /** How far a stand goes beyond the neck's ends, for its button; default 0. */
  readonly extension?: number;
  /** Of a shirt collar: how long its points are, and how far they go beyond its ends. Default width + 15, and 20. */
  readonly point?: number;
  readonly spread?: number;
  /** Of a flat collar: how far front and back overlap at the shoulder's outer end, so that it rolls; default 20. */
  readonly overlap?: number;
  readonly fabric?: string;
}

/**
 * Drafts a collar for a neck. A stand on paper: a strip of the neck's length, its neck edge raised at either front, so
 * that its upper edge is the shorter and leans in to the neck. A shirt collar: such a stand, and a fall whose lower
 * edge is the stand's upper one curved the other way, with its points drawn on. A flat collar: front and back laid
 * shoulder to shoulder, overlapped at the outer end of the shoulder so that it rolls; the neck line traced, and its
 * parallel. All are cut in two layers, interfaced. The garment does not change. Common practice, no source; the usual
 * amounts are those of the trade notes (rise 12 to 20 mm, overlap 12 to 25 mm). Source: Armstrong, Patternmaking for
 * Fashion Design (1987), collars [memory].
 *
 * @throws PatternError `edges-do-not-join`, `edges-not-halved`; `drafted-along-itself`;
 *   `unknown-piece`, `unknown-edge`; those of `perform`
 */
export const draftCollar = (pattern: Pattern, parameters: DraftCollar): Alteration =>
  perform(draftCollarVerb, pattern, parameters);

export const draftCollarForm = formOf<DraftCollar>()({
  verb: 'draft collar',
  does: 'Drafts a collar for a neck: a stand that leans in, a shirt collar with its stand and fall, or a flat one from front and back laid shoulder to shoulder.',
  fields: {
    name: field.newName(),
    along: field.edgesOfPieces(),
    kind: field.choice('stand', 'shirt', 'flat'),
    width: field.size(),
    stand: field.usually(field.size(), 30),
    rise: field.usually(field.length(), 12),
    extension: field.usually(field.length(), 0),
    point: field.optional(field.size()),
    spread: field.usually(field.length(), 20),
    overlap: field.usually(field.length(), 20),
    fabric: field.optional(field.cloth()),
  },
  leaves: ({ name }) => ({ pieces: [name, `${name} stand`], seams: [name, `${name} stand`] }),
  sentence:
    'Draft a {kind} collar "{name}" for {along}, {width} deep at the centre back[, its stand {stand} high][, rising by {rise}][, {extension} beyond the neck][, with points {point} long][, spread by {spread}][, overlapped by {overlap} at the shoulder][, of the {fabric} cloth]',
  startsAt: { edge: ['along'], table: [] },
  example: {
    pattern: 'woven-shift',
    step: { name: 'collar', along: ['front.neck', 'back.neck'], kind: 'flat', width: 70 },
  },
});
export const draftCollarVerb = /* @__PURE__ */ verbFrom(draftCollarForm, drawnCollar);

type Whole = DraftCollar & Required<Pick<DraftCollar, 'stand' | 'rise' | 'extension' | 'spread' | 'overlap'>>;

/** A piece of a collar, and how it is sewn on. */
interface CollarPiece {
  readonly piece: Piece;
  readonly sewn: DraftedSeam;
}

function drawnCollar(given: Pattern, parameters: Whole): Alteration {
  const wish = { ...parameters, along: distinctEdges(parameters.along) };
  const made: readonly ((pattern: Pattern) => CollarPiece)[] =
    wish.kind === 'flat'
      ? [pattern => flatCollar(pattern, wish)]
      : wish.kind === 'stand'
        ? [pattern => standOf(pattern, wish, wish.name, wish.width)]
        : [pattern => standOf(pattern, wish, standName(wish), wish.stand), pattern => fallOf(pattern, wish)];
  let pattern = given;
  const findings: Finding[] = [];
  const derived: Derived[] = [];
  for (const make of made) {
    const { piece, sewn } = make(pattern);
    const placed = takePlace(pattern, piece, sewn);
    pattern = placed.pattern;
    findings.push(...placed.findings);
    derived.push(derivedCollar(piece, wish));
  }
  const pieces = derived.map(({ name, lengthMm, widthMm }) => ({ piece: name, count: 2, lengthMm, widthMm }));
  return {
    pattern,
    did: saying('drafted-pieces', { pieces: pieces.map(one => saying('drafted-piece', one)) }),
    findings,
    derived,
  };
}

const standName = ({ name }: DraftCollar): string => `${name} stand`;

function derivedCollar(piece: Piece, { along }: DraftCollar): Derived {
  const { min, max } = boundsOfPath(outlinePath(piece.outline));
  return {
    name: piece.name,
    kind: 'collar',
    lengthMm: max.x - min.x,
    widthMm: max.y - min.y,
    fabric: piece.cutting.fabric,
    along: piece.madeFor ?? along,
    edgeMm: 0,
    figures: {},
  };
}

const clothOf = (pattern: Pattern, { fabric, along }: DraftCollar): string =>
  fabric ?? pieceNamed(pattern, along[0]!.piece).cutting.fabric;

function standOf(pattern: Pattern, wish: Whole, name: string, width: number): CollarPiece {
  const laid = laidAlong(pattern, wish.along);
  requireOneStretch(laid, name);
  const whole = laid.edgeMm + 2 * wish.extension;
  const piece = lappedBand({
    name,
    role: 'collar',
    madeFor: wish.along,
    place: freePlace(pattern, name),
    fabric: clothOf(pattern, wish),
    overlap: wish.extension,
    sewn: laid.edgeMm,
    underlap: wish.extension,
    width,
    ratio: ratioOfRise(whole, width, wish.rise),
    folded: false,
    allowance: takenAllowance(pattern, wish.along),
    notches: bandMarks(laid, laid.edgeMm)
      .filter(({ label }) => label !== 'quarter')
      .map(({ at, label }) => ({ at, style: 'single' as const, name: label })),
    count: 1,
    interfaced: true,
  });
  const free = edgePath(piece, 'free');
  const middle: Notch = { edge: 'free', at: pathLength(free) / 2, style: 'single', name: 'centre back' };
  // What is sewn to its upper edge is matched at the middle.
  const marked = wish.kind === 'shirt' ? { ...piece, notches: [...piece.notches, middle] } : piece;
  return { piece: marked, sewn: seamAlong(name, laid, 0) };
}

/** The fall is sewn to the stand's upper edge between the neck's ends. */
function fallOf(pattern: Pattern, wish: Whole): CollarPiece {
  const { name, width, extension, rise } = wish;
  const stand = pieceNamed(pattern, standName(wish));
  const free = stand.outline.parts.find(part => part.name === 'free')!;
  const upper = free.type === 'edge' ? pathLength(free.path) : 0;
  const laid = laidAlong(pattern, wish.along);
  // The stand's upper edge is shorter than its neck edge by the same ratio throughout.
  const beyond = (extension * upper) / (laid.edgeMm + 2 * extension);
  const length = upper - 2 * beyond;
  const place = freePlace(pattern, name);
  const shape = fallShape(at(place.x + wish.spread, place.y), {
    length,
    depth: width,
    point: wish.point ?? width + 15,
    spread: wish.spread,
    ratio: 2 - ratioOfRise(length, width, rise),
    allowance: takenAllowance(pattern, wish.along),
  });
  const part = beyond > 0 ? { part: { from: beyond, to: upper - beyond } } : {};
  const fall = layered(name, shape, pattern, { ...wish, along: [{ piece: stand.name, edge: 'free' }] });
  return {
    piece: { ...fall, notches: [{ edge: 'lower', at: length / 2, style: 'single', name: 'centre back' }] },
    sewn: {
      own: [{ piece: name, edge: 'lower', reversed: false }],
      partner: [{ piece: stand.name, edge: 'free', reversed: true, ...part }],
      easeMm: 0,
    },
  };
}

function flatCollar(pattern: Pattern, wish: Whole): CollarPiece {
  const { name, along, width } = wish;
  const half = halfNeck(pattern, along, name);
  const neck = fairThrough(neckLine(pattern, half, wish.overlap), neckJoints(half));
  const place = subtract(freePlace(pattern, name), boundsOfPath(neck).min);
  const allowance = takenAllowance(pattern, along);
  const shape = flatShape(transformedPath(neck, translation(place)), {
    width,
    onFold: half.whole,
    allowance,
  });
  return {
    piece: { ...layered(name, shape, pattern, wish), notches: shoulderNotches(half, 'neck') },
    sewn: { own: [{ piece: name, edge: 'neck', reversed: false }], partner: half.runs, easeMm: 0 },
  };
}

/** Cut twice, one layer on the other: collar and under-collar, the upper one interfaced. */
function layered(
  name: string,
  shape: Pick<Piece, 'outline' | 'lines'>,
  pattern: Pattern,
  wish: Whole,
): Piece {
  const onFold = shape.outline.parts.some(part => part.type === 'edge' && part.kind === 'fold');
  const halves = !onFold && wish.kind === 'flat';
  const count = halves ? 4 : 2;
  return {
    name,
    title: titled(name),
    role: 'collar',
    ...shape,
    notches: [],
    marks: [],
    cutting: { count, mirrored: halves, layers: 2, fabric: clothOf(pattern, wish) },
    alsoCut: [{ count: count / 2, mirrored: halves, fabric: 'interfacing' }],
    madeFor: wish.along,
  };
}
