import {
  type EdgeRef,
  edgePath,
  type Pattern,
  type Piece,
  type PieceLine,
  pathLength,
  pieceNamed,
  type Seam,
} from '@paperhinge/geometry';
import { boundsOfPath, joined } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { add, apply, rotation, scale, subtract } from '@paperhinge/geometry/plane';
import { centroid, signedArea } from '@paperhinge/geometry/regions';
import type { Alteration, Derived } from '../alteration.js';
import { distinctEdges } from '../edge-refs.js';
import { rollLineName } from '../lapels/roll-line.js';
import { rolledOut } from '../lapels/rolled-out.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { collarOnFront, type OnFront, turnedRound } from './collar-on-front.js';
import { grainLine } from './collar-shapes.js';
import { laidAside } from './free-place.js';
import { type HalfNeck, halfNeck } from './half-neck.js';
import { titled } from './long-piece.js';
import { type DraftedSeam, takePlace } from './take-place.js';
import { saying } from './tellings.js';

/** A notched collar for a front with a lapel. Lengths in mm. */
export interface DraftNotchedCollar {
  readonly name: string;
  /** The edges of the back neck, and the neck of the front as its lapel leaves it. */
  readonly along: readonly EdgeRef[];
  /** How deep it is at the centre back, stand and fall; default 75. */
  readonly width?: number;
  /** How high it stands there; default 28. */
  readonly stand?: number;
  /** How far its end at the centre back is swung out, so that it lies round the shoulders; default 25. */
  readonly lay?: number;
  /** Length of its front edge, and how far the notch opens, in rad; default 36, and 70°. */
  readonly front?: number;
  readonly notch?: number;
  /** How much larger the upper collar is at its outer and front edges; default 3. */
  readonly turn?: number;
  readonly fabric?: string;
}

/**
 * Drafts a notched collar with its under-collar. On paper it is drawn on to the front: its neck edge is the front's own,
 * from the notch over the gorge up to the neck's end at the shoulder, and on from there, parallel to the roll line, for
 * half the back neck, swung out at its far end; the centre back is square to that; the front edge leaves the notch at
 * its angle; the outer edge runs fair from there, square to the centre back. The under-collar is that, cut as a pair on
 * the bias with a seam at the centre back; the upper collar lies on the fold and is larger by the turn of the cloth at
 * its outer and front edges, nothing at the notch. Source: common practice, no source; turn 2 to 3 mm (trade-notes §7).
 *
 * @throws PatternError `no-roll-line`, `gorge-not-last`; `edges-do-not-join`, `edges-not-halved`;
 *   `drafted-along-itself`, `drafted-misshapen`; `unknown-piece`, `unknown-edge`; those of `perform`
 */
export const draftNotchedCollar = (pattern: Pattern, parameters: DraftNotchedCollar): Alteration =>
  perform(draftNotchedCollarVerb, pattern, parameters);

export const draftNotchedCollarForm = formOf<DraftNotchedCollar>()({
  verb: 'draft notched collar',
  does: 'Drafts the collar of a front with a lapel, from the notch over the gorge round the back neck, with its under-collar on the bias; the upper collar is larger by the turn of the cloth.',
  fields: {
    name: field.newName(),
    along: field.edgesOfPieces(),
    width: field.usually(field.size(), 75),
    stand: field.usually(field.size(), 28),
    lay: field.usually(field.length(), 25),
    front: field.usually(field.size(), 36),
    notch: field.usually(field.angle(), (70 * Math.PI) / 180),
    turn: field.usually(field.length(), 3),
    fabric: field.optional(field.cloth()),
  },
  leaves: ({ name }) => ({
    pieces: [name, underName(name)],
    seams: [name, underName(name), `${underName(name)} join`, edgeSeam(name)],
  }),
  sentence:
    'Draft a notched collar "{name}" for {along}[, {width} deep at the centre back][, standing {stand}][, laid back by {lay}][, its front edge {front} long][, its notch opening by {notch}][, the upper collar {turn} larger][, of the {fabric} cloth]',
  startsAt: { edge: ['along'], table: [] },
  example: {
    pattern: 'shirt',
    after: [
      { 'remove piece': { piece: 'collar' } },
      { 'remove piece': { piece: 'stand' } },
      {
        'cut lapel': { piece: 'front', neck: 'neck', edge: 'front-edge', break: '220 mm from neck' },
      },
    ],
    step: { name: 'revers collar', along: ['yoke.neck', 'front.neck'] },
  },
});
export const draftNotchedCollarVerb = /* @__PURE__ */ verbFrom(draftNotchedCollarForm, drawnCollar);

type Whole = DraftNotchedCollar & Required<Omit<DraftNotchedCollar, 'fabric'>>;

const underName = (name: string): string => `under ${name}`;
const edgeSeam = (name: string): string => `${name} edge`;

function drawnCollar(given: Pattern, parameters: Whole): Alteration {
  const wish = { ...parameters, along: distinctEdges(parameters.along) };
  const { name, turn } = wish;
  const half = halfNeck(given, wish.along, name);
  const drawn = collarOnFront(given, half, wish);
  const forwards = signedArea(outlinePath({ parts: drawn.parts })) > 0;
  const net = forwards ? drawn : turnedRound(drawn);
  const layers = [underCollar(given, net, wish), upperCollar(given, net, wish)] as const;
  let pattern = given;
  const derived: Derived[] = [];
  const findings = layers.flatMap((layer, i) => {
    const piece = laidAside(pattern, i === 0 ? layer : rolledOut(layer, ['front', 'outer'], ['neck'], turn));
    const placed = takePlace(
      pattern,
      piece,
      sewnToNeck(piece, half, forwards),
      i === 0 ? atBack(piece) : undefined,
    );
    pattern = placed.pattern;
    derived.push(derivedCollar(piece, half));
    return placed.findings;
  });
  const pieces = derived.map(({ name: piece, lengthMm, widthMm }, i) => ({
    piece,
    count: layers[i]!.cutting.count,
    lengthMm,
    widthMm,
  }));
  return {
    pattern: withEdgeSeam(pattern, name, forwards),
    did: saying('drafted-pieces', { pieces: pieces.map(one => saying('drafted-piece', one)) }),
    findings,
    derived,
  };
}

/** Cut as a pair on the bias, interfaced, with a seam at the centre back. */
const underCollar = (pattern: Pattern, net: OnFront, wish: Whole): Piece => ({
  ...collarPiece(underName(wish.name), pattern, net, wish),
  lines: linesOf(net, Math.PI / 4),
  cutting: { count: 2, mirrored: true, fabric: clothOf(pattern, wish) },
  alsoCut: [{ count: 2, mirrored: true, fabric: 'interfacing' }],
});

/** On the fold at the centre back. */
function upperCollar(pattern: Pattern, net: OnFront, wish: Whole): Piece {
  const piece = collarPiece(wish.name, pattern, net, wish);
  const parts = net.parts.map(part =>
    part.name === 'centre-back' ? { ...part, kind: 'fold' as const, allowance: 0 } : part,
  );
  return { ...piece, outline: { parts } };
}

function collarPiece(name: string, pattern: Pattern, net: OnFront, wish: Whole): Piece {
  const neckMm = pathLength(net.parts.find(part => part.name === 'neck')!.path);
  const fromBack = net.parts[0]!.name === 'neck';
  return {
    name,
    title: titled(name),
    role: 'collar',
    outline: { parts: net.parts },
    notches: [
      { edge: 'neck', at: fromBack ? net.backMm : neckMm - net.backMm, style: 'single', name: 'shoulder' },
    ],
    lines: linesOf(net, 0),
    marks: [],
    cutting: { count: 1, mirrored: false, fabric: clothOf(pattern, wish) },
    madeFor: wish.along,
  };
}

/** Roll line, and grain beside the centre back or at an angle to it. */
function linesOf({ laid, roll, parts }: OnFront, angle: number): readonly PieceLine[] {
  const middle = centroid(joined(...parts.map(part => part.path)));
  const reach = scale(apply(rotation(angle), subtract(laid.outer, laid.nape)), 0.3);
  return [
    grainLine(subtract(middle, reach), add(middle, reach)),
    { kind: 'fold', name: rollLineName, path: roll },
  ];
}

const clothOf = (pattern: Pattern, { fabric, along }: DraftNotchedCollar): string =>
  fabric ?? pieceNamed(pattern, along[0]!.piece).cutting.fabric;

const sewnToNeck = ({ name }: Piece, half: HalfNeck, forwards: boolean): DraftedSeam => ({
  own: [{ piece: name, edge: 'neck', reversed: !forwards }],
  partner: half.runs,
  easeMm: 0,
});

const atBack = ({ name }: Piece) => {
  const run = [{ piece: name, edge: 'centre-back', reversed: false }];
  return { a: run, b: run };
};

/** Upper and under-collar are sewn to one another round their fronts and outer edges. */
function withEdgeSeam(pattern: Pattern, name: string, forwards: boolean): Pattern {
  const side = (piece: string) => ['front', 'outer'].map(edge => ({ piece, edge, reversed: !forwards }));
  const lengthOf = (piece: string): number =>
    side(piece).reduce((sum, { edge }) => sum + pathLength(edgePath(pieceNamed(pattern, piece), edge)), 0);
  const seam: Seam = {
    name: edgeSeam(name),
    a: side(name),
    b: side(underName(name)),
    ease: { mm: lengthOf(name) - lengthOf(underName(name)) },
  };
  return { ...pattern, seams: [...pattern.seams.filter(one => one.name !== seam.name), seam] };
}

function derivedCollar(piece: Piece, { lengthMm }: HalfNeck): Derived {
  const { min, max } = boundsOfPath(outlinePath(piece.outline));
  return {
    name: piece.name,
    kind: 'collar',
    lengthMm: max.x - min.x,
    widthMm: max.y - min.y,
    fabric: piece.cutting.fabric,
    along: piece.madeFor ?? [],
    edgeMm: lengthMm,
    figures: {},
  };
}
