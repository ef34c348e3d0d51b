import { type Pattern, pieceNamed } from '@paperhinge/geometry';
import { withPiece } from '@paperhinge/geometry/pattern';
import type { Alteration } from '../alteration.js';
import { requireSimple, tidied } from '../moved-edges/tidy.js';
import { cutToDrawnLine } from '../neckline/drawn.js';
import { neckFrames } from '../neckline/frame.js';
import { neckOf } from '../neckline/neck-edge.js';
import { reassembled } from '../neckline/reassemble.js';
import { type NeckShape, recutHalf } from '../neckline/shapes.js';
import { refusal as necklineRefusal } from '../neckline/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { shoulderFindings } from './shoulder-findings.js';
import { refusal, saying } from './tellings.js';

/** Draw a new neckline of a shape, by depth and half width in mm. */
export interface RecutNeckline {
  readonly piece: string;
  readonly shape: NeckShape;
  /** mm; not needed for `drawn`. */
  readonly depth?: number;
  /** mm; absent = at the present neck end (not of an inset V). */
  readonly halfWidth?: number;
  /** mm of shoulder that are left, measured along it, instead of the half width; not of an inset V or a drawn one. */
  readonly shoulder?: number;
  /** Name of the piece's line for `drawn`. */
  readonly line?: string;
}

/**
 * Cuts a new neckline. Depth is measured down the centre line from where the present neck meets it, half width square
 * to it; the centre line is the fold edge, else an edge or line named `centre ...`, else the grain through the neck's
 * middle. An inset V becomes the edge `inset` beside what is left of `neck`; every other shape replaces the neck under
 * its name and cuts the shoulder. New edges take kind and allowance of the neck. Source: common practice, no source.
 *
 * @throws PatternError `no-neck`, `no-centre-line`, `neck-not-at-centre`, `dart-in-neck`; `neckline-too-deep`,
 *   `neckline-too-shallow`, `half-width-off-neck`, `half-width-beyond-shoulder`, `neckline-leaves-piece`;
 *   `name-taken`; for a drawn line `unknown-line`, `line-ends-off-outline`; those of `perform`
 */
export const recutNeckline = (pattern: Pattern, parameters: RecutNeckline): Alteration =>
  perform(recutNecklineVerb, pattern, parameters);

export const recutNecklineForm = formOf<RecutNeckline>()({
  verb: 'recut neckline',
  does: 'Cuts a new neckline: a V set into the present neck, a V, round, square, boat, scoop or sweetheart one by depth and half width, or one along a line drawn on the piece.',
  fields: {
    piece: field.piece(),
    shape: field.choice('inset V', 'V', 'round', 'square', 'boat', 'scoop', 'sweetheart', 'drawn'),
    depth: field.optional(field.length()),
    halfWidth: field.optional(field.size()),
    shoulder: field.optional(field.size()),
    line: field.optional(field.drawnLine()),
  },
  lacks: ({ shape, depth, halfWidth, line }) => {
    if (shape === 'drawn') return line === undefined ? 'line' : undefined;
    if (depth === undefined) return 'depth';
    return shape === 'inset V' && halfWidth === undefined ? 'halfWidth' : undefined;
  },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence:
    'Cut a new neckline in the {piece}: {shape}[, {depth} deep][, {half width} to each side][, leaving {shoulder} of shoulder][, along the {line} line]',
  startsAt: { piece: ['piece'], edge: ['piece'], line: ['piece', 'line'] },
  example: {
    pattern: 'woven-shift',
    step: { piece: 'front', shape: 'inset V', depth: 85, 'half width': 45 },
  },
});
export const recutNecklineVerb = /* @__PURE__ */ verbFrom(recutNecklineForm, recut);

function recut(pattern: Pattern, parameters: RecutNeckline): Alteration {
  const piece = pieceNamed(pattern, parameters.piece);
  const neck = neckOf(piece);
  requireSense(parameters);
  const drawn = parameters.shape === 'drawn';
  const cut = drawn
    ? cutToDrawnLine(piece, neck, parameters.line!)
    : reassembled(
        piece,
        neck,
        neckFrames(piece, neck, parameters.depth!).map(frame => recutHalf(piece, frame, parameters)),
      );
  const done = tidied(piece, cut);
  const where = { piece: piece.name };
  requireSimple(done.piece, () => necklineRefusal('neckline-leaves-piece', { piece: where }, where));
  const altered = withPiece(pattern, done.piece);
  const { shape, depth, halfWidth, shoulder, line } = parameters;
  return {
    pattern: altered,
    did: saying('recut-neckline', {
      piece: { piece: piece.name },
      shape,
      ...(drawn
        ? { line: { line: line! } }
        : {
            depthMm: depth!,
            ...(halfWidth === undefined ? {} : { halfWidthMm: halfWidth }),
            ...(shoulder === undefined ? {} : { shoulderMm: shoulder }),
          }),
    }),
    became: done.became,
    findings: [...done.findings, ...shoulderFindings(pattern, altered, piece.name)],
    ...(parameters.shape === 'inset V' ? { making: [insetNote(piece.name)] } : {}),
  };
}

function requireSense({ piece, shape, depth, halfWidth, shoulder }: RecutNeckline): void {
  if (shape === 'inset V' && depth === 0) throw refusal('inset-without-depth', {}, { piece });
  if (shoulder === undefined) return;
  if (shape === 'inset V' || shape === 'drawn') throw refusal('shoulder-not-cut', { shape }, { piece });
  if (halfWidth !== undefined) throw refusal('half-width-or-shoulder', {}, { piece });
}

const insetNote = (piece: string) => ({
  job: `inset ${piece}.inset`,
  text: saying('finish-inset', { piece: { piece } }),
  after: [],
});
