import {
  type EdgeRun,
  edgeNamed,
  edgeNames,
  edgePath,
  type Finding,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  type Seam,
} from '@paperhinge/geometry';
import { foldEdgeOf, neighboursOf } from '@paperhinge/geometry/pattern';
import type { Alteration, Derived } from '../alteration.js';
import { isBack } from '../fit/front-and-back.js';
import { moveEdgesInwards } from '../moved-edges/move-edges-inwards.js';
import { moveHem } from '../moved-edges/move-hem.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { laidAside } from './free-place.js';
import { takePlace } from './take-place.js';
import { saying } from './tellings.js';

/** A lining for pieces. Lengths in mm. */
export interface DraftLining {
  readonly pieces: readonly string[];
  /** How much shorter it is than the garment at its finished hem; default 20. */
  readonly shorter?: number;
  /** Depth of the ease pleat at the centre back, in the garment; default 0. */
  readonly pleat?: number;
  /** Default: the cloth called lining. */
  readonly fabric?: string;
}

/**
 * Drafts a lining: each piece traced with its darts and notches, its hem higher, its seams sewn to one another as those
 * of the garment are. At a back on the fold the fold is moved outwards by half the ease pleat, square to itself, neck
 * and hem running on straight to it; a notch tells where the pleat is laid. On paper the same; common practice, no
 * source. The garment does not change.
 *
 * @throws PatternError `unknown-piece`; `shorten-beyond-piece`; those of `perform`
 */
export const draftLining = (pattern: Pattern, parameters: DraftLining): Alteration =>
  perform(draftLiningVerb, pattern, parameters);

export const draftLiningForm = formOf<DraftLining>()({
  verb: 'draft lining',
  does: 'Drafts a lining for pieces: traced from them, shorter at the hem, with an ease pleat at the centre back, sewn together as they are.',
  fields: {
    pieces: field.pieces(),
    shorter: field.usually(field.length(), 20),
    pleat: field.usually(field.length(), 0),
    fabric: field.usually(field.cloth(), 'lining'),
  },
  leaves: ({ pieces }) => ({ pieces: pieces.map(liningName), seams: 'unknown' }),
  sentence:
    'Draft a lining for the {pieces}[, {shorter} shorter][, with an ease pleat of {pleat}][, of the {fabric} cloth]',
  startsAt: { piece: ['pieces'], table: [] },
  example: { pattern: 'darted-dress', step: { pieces: ['front', 'back'], pleat: 40 } },
});
export const draftLiningVerb = /* @__PURE__ */ verbFrom(draftLiningForm, drawnLining);

type Whole = Required<DraftLining>;

const liningName = (piece: string): string => `${piece} lining`;

function drawnLining(given: Pattern, wish: Whole): Alteration {
  const names = [...new Set(wish.pieces)];
  const findings: Finding[] = [];
  const derived: Derived[] = [];
  let pattern = given;
  for (const name of names) {
    const { piece, findings: onHem } = liningOf(pattern, pieceNamed(given, name), wish);
    const laid = laidAside(pattern, piece);
    const placed = takePlace(pattern, laid, undefined);
    pattern = placed.pattern;
    findings.push(...onHem, ...placed.findings);
    derived.push({
      name: laid.name,
      kind: 'lining',
      lengthMm: 0,
      widthMm: 0,
      fabric: wish.fabric,
      along: [],
      edgeMm: 0,
      figures: { shorterMm: wish.shorter, pleatMm: wish.pleat },
    });
  }
  const seams = given.seams
    .filter(({ a, b }) => [...a, ...b].every(run => names.includes(run.piece)))
    .map(ofLining);
  const others = pattern.seams.filter(seam => !seams.some(one => one.name === seam.name));
  return {
    pattern: { ...pattern, seams: [...others, ...seams] },
    did: saying('drafted-lining', {
      pieces: names.map(piece => ({ piece: liningName(piece) })),
      shorterMm: wish.shorter,
      pleatMm: wish.pleat,
      seams: seams.length,
    }),
    findings,
    derived,
  };
}

function ofLining(seam: Seam): Seam {
  const lined = (run: EdgeRun): EdgeRun => ({ ...run, piece: liningName(run.piece) });
  return { ...seam, name: `lining ${seam.name}`, a: seam.a.map(lined), b: seam.b.map(lined) };
}

function liningOf(
  pattern: Pattern,
  source: Piece,
  { shorter, pleat, fabric }: Whole,
): { readonly piece: Piece; readonly findings: readonly Finding[] } {
  const { alsoCut: _, madeFor: __, recipe: ___, ...kept } = source;
  const { count, mirrored, layers = 1 } = source.cutting;
  const traced: Piece = {
    ...kept,
    name: liningName(source.name),
    title: `${source.title} lining`,
    role: 'lining',
    cutting: { count: count / layers, mirrored, fabric },
  };
  const hasHem = edgeNames(traced).some(edge => edgeNamed(traced, edge).kind === 'hem');
  const short = hasHem && shorter > 0 ? moveHem(traced, shorter) : { piece: traced, findings: [] };
  const fold = foldEdgeOf(source);
  if (!fold || pleat === 0 || !isBack(pattern, source)) return short;
  const wide = moveEdgesInwards(
    short.piece,
    [{ piece: traced.name, edge: fold.name, reversed: false, side: 'a', fromShare: 0, toShare: 1 }],
    -pleat / 2,
    { kind: 'whole' },
  );
  return {
    piece: withPleatNotch(wide.piece, fold.name, pleat / 2),
    findings: [...short.findings, ...wide.findings],
  };
}

/** A notch where the pleat is laid, half its depth from the fold on the edge above it. */
function withPleatNotch(piece: Piece, fold: string, depth: number): Piece {
  const beside = neighboursOf(piece, fold);
  // Drawn to the right of its fold a half is walked from the hem up to the neck, to the left of it the other way.
  const above = edgeNamed(piece, beside.end).kind === 'hem' ? 'start' : 'end';
  const edge = beside[above];
  const at = above === 'end' ? depth : pathLength(edgePath(piece, edge)) - depth;
  return { ...piece, notches: [...piece.notches, { edge, at, style: 'single', name: 'ease pleat' }] };
}
