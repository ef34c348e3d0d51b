import {
  type EdgeRun,
  type Fastening,
  type Notch,
  type Pattern,
  type Piece,
  type PieceLine,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import { withPiece } from '@paperhinge/geometry/pattern';
import type { Alteration, Derived } from '../alteration.js';
import { sameEdge } from '../edge-refs.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { flyFacing, flyShield, zipEnd } from './fly-pieces.js';
import { type FlyFront, flyFront, flyLine } from './fly-shape.js';
import { freePlace, laidAside } from './free-place.js';
import { takePlace } from './take-place.js';
import { saying } from './tellings.js';

/** The pieces of a fly that closes a centre front with a zip. Lengths in mm. */
export interface DraftFly {
  readonly name: string;
  readonly piece: string;
  /** The centre front edge, from the waist down: the crotch of trousers. */
  readonly edge: string;
  /** Of the opening: how long it is from the waist, and how far below it the fly is caught; default 15. */
  readonly length: number;
  readonly below?: number;
  /** Of the facing; default 40. */
  readonly width?: number;
  /** From the centre front to the topstitching; default 33. */
  readonly topstitch?: number;
  /** Which front lies uppermost, as the wearer has it on; default the right one. */
  readonly over?: 'right' | 'left';
  /** Whether the upper front gets a facing of its own; no where it is cut in one. Default yes. */
  readonly facing?: boolean;
  readonly fabric?: string;
}

/**
 * Drafts the facing and the shield of a fly. On paper: the facing traced from the front, down the centre to below the
 * opening and across the waist, its inner line beside the centre and rounded into it; one is cut, right side up, for the
 * front that lies uppermost, and the topstitching is marked on that front alone; the shield a strip for the other front,
 * folded lengthwise, that lies behind the zip. The fronts keep their outlines, and open by the length; a zip is noted
 * where none is. Women's trousers close right over left by custom, men's left over right. Common practice, no source.
 *
 * @throws PatternError `fly-not-at-waist`, `fly-on-fold`, `fly-beyond-edge`, `facing-end-too-wide`, `drafted-misshapen`;
 *   `unknown-piece`, `unknown-edge`; those of `perform`
 */
export const draftFly = (pattern: Pattern, parameters: DraftFly): Alteration =>
  perform(draftFlyVerb, pattern, parameters);

export const draftFlyForm = formOf<DraftFly>()({
  verb: 'draft fly',
  does: 'Drafts the pieces of a fly: the facing of the front that lies uppermost, with its topstitching marked there, and the shield behind the zip for the other front.',
  fields: {
    name: field.newName(),
    piece: field.piece(),
    edge: field.edge(),
    length: field.size(),
    below: field.usually(field.length(), 15),
    width: field.usually(field.size(), 40),
    topstitch: field.usually(field.size(), 33),
    over: field.usually(field.choice('right', 'left'), 'right'),
    facing: field.usually(field.yesOrNo(), true),
    fabric: field.optional(field.cloth()),
  },
  leaves: ({ name, piece }) => ({
    pieces: [facingName(name), shieldName(name)],
    changed: [piece],
    seams: [facingName(name), shieldName(name)],
  }),
  sentence:
    'Draft a fly "{name}" for the {edge} of the {piece}, opening by {length}[, reaching {below} below][, {width} wide][, topstitched at {topstitch}][, the {over} front uppermost][, with a facing of its own: {facing}][, of the {fabric} cloth]',
  startsAt: { corner: ['piece', 'edge'], edge: ['piece', 'edge'] },
  example: { pattern: 'trousers', step: { name: 'fly', piece: 'front', edge: 'crotch', length: 170 } },
});
export const draftFlyVerb = /* @__PURE__ */ verbFrom(draftFlyForm, drawnFly);

type Whole = DraftFly & Required<Omit<DraftFly, 'fabric'>>;

const facingName = (name: string): string => `${name} facing`;
const shieldName = (name: string): string => `${name} shield`;

function drawnFly(given: Pattern, wish: Whole): Alteration {
  const front = flyFront(pieceNamed(given, wish.piece), wish.edge, wish);
  const opened = withPiece(given, openedFront(front, wish));
  let pattern: Pattern = { ...opened, fastenings: withZip(given, front, wish) };
  const derived: Derived[] = [];
  const drawn = [
    ...(wish.facing ? [flyFacing(front, facingName(wish.name), wish)] : []),
    flyShield(freePlace(given, shieldName(wish.name)), front, shieldName(wish.name), wish),
  ];
  const findings = drawn.flatMap(({ piece, own }) => {
    const laid = laidAside(pattern, piece);
    const placed = takePlace(pattern, laid, undefined);
    pattern = sewnOn(placed.pattern, front, own, wish);
    derived.push(derivedFly(laid, wish));
    return placed.findings;
  });
  return {
    pattern,
    did: saying('drafted-fly', {
      edge: { piece: wish.piece, edge: wish.edge },
      lengthMm: wish.length,
      over: wish.over,
      pieces: derived.map(({ name: piece }) => ({ piece })),
    }),
    findings,
    derived,
  };
}

/** The front opens by the fly's length, and shows where the front that lies uppermost is topstitched. */
function openedFront(front: FlyFront, wish: Whole): Piece {
  const { piece, edge, down, downwards } = front;
  const parts = piece.outline.parts.map(part =>
    part.type === 'edge' && part.name === edge.name ? { ...part, opening: wish.length } : part,
  );
  const whole = pathLength(down);
  const notch: Notch = {
    edge: edge.name,
    at: downwards ? wish.length : whole - wish.length,
    style: 'single',
    name: zipEnd,
  };
  const notches = [...piece.notches.filter(one => one.edge !== edge.name || one.name !== zipEnd), notch];
  const opened = { ...piece, outline: { parts }, notches };
  if (!wish.facing) return opened;
  const stitched: PieceLine = {
    kind: 'style',
    name: topstitchName(wish),
    path: flyLine(front, { ...wish, below: 0, width: wish.topstitch }, front.across),
  };
  return { ...opened, lines: [...piece.lines.filter(other => other.name !== stitched.name), stitched] };
}

/** Left and right differ: only one of them is topstitched. */
export const topstitchName = ({ name, over }: Pick<Whole, 'name' | 'over'>): string =>
  `${name} topstitching, ${over} front`;

/** Sewn to the centre front from the waist to where the fly is caught. */
function sewnOn(pattern: Pattern, front: FlyFront, own: EdgeRun, wish: Whole): Pattern {
  const { piece, edge, down, downwards } = front;
  const length = wish.length + wish.below;
  const whole = pathLength(down);
  const part = downwards ? { from: 0, to: length } : { from: whole - length, to: whole };
  const b: readonly EdgeRun[] = [{ piece: piece.name, edge: edge.name, reversed: !downwards, part }];
  const seam = { name: own.piece, a: [own], b, ease: { mm: 0 } };
  return { ...pattern, seams: [...pattern.seams.filter(other => other.name !== seam.name), seam] };
}

/** The zip that closes the fly: the one that is there, as long as the opening now, or a new one. */
function withZip(
  { fastenings = [] }: Pattern,
  { downwards }: FlyFront,
  { name, piece, edge, length }: Whole,
): readonly Fastening[] {
  const isIts = (one: Fastening): boolean => one.kind === 'zip' && sameEdge(one.along, { piece, edge });
  if (fastenings.some(isIts)) return fastenings.map(one => (isIts(one) ? { ...one, length } : one));
  const along: EdgeRun = { piece, edge, reversed: !downwards };
  return [...fastenings, { name: `${name} zip`, kind: 'zip', along, length }];
}

const derivedFly = ({ name, cutting }: Piece, { length, below, width }: Whole): Derived => ({
  name,
  kind: 'placket',
  lengthMm: length + below,
  widthMm: width,
  fabric: cutting.fabric,
  along: [],
  edgeMm: length + below,
  figures: { openingMm: length },
});
