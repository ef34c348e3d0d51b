import {
  type Edge,
  type EdgeRef,
  line,
  type Path,
  type Pattern,
  type Piece,
  type PieceLine,
  pathLength,
  pathOf,
  pieceNamed,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart, subpath } from '@paperhinge/geometry/paths';
import { withPiece } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { nothingBecame } from '../became/became.js';
import { requireFreeEdgeName } from '../dividing/names-free.js';
import { hemEnd } from '../fullness/hem-end.js';
import { refusal, saying } from '../fullness/tellings.js';
import { partOfRun, type Run, recomposed } from '../moved-edges/composed.js';
import { joinedInOne, parallelPieces } from '../moved-edges/inward-parallel.js';
import { requireSimple } from '../moved-edges/tidy.js';
import { edgeInRing, withEdgeRedrawn } from '../redrawn-edges/corner-moved.js';
import { refusal as redrawnRefusal } from '../redrawn-edges/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Leave the lower end of an edge open. */
export interface LeaveSlit {
  readonly edge: EdgeRef;
  /** mm. */
  readonly length: number;
}
/** Add the cloth of a vent to the lower end of an edge. */
export interface AddVent {
  readonly edge: EdgeRef;
  /** mm up from the hem. */
  readonly length: number;
  /** mm that it lies under. */
  readonly width: number;
}

/**
 * Leaves a slit of so many mm open in the seam of an edge. No line moves. Source: common practice, no source.
 * @throws PatternError `unknown-piece`, `unknown-edge`, `slit-beyond-edge`; those of `perform`
 */
export const leaveSlit = (pattern: Pattern, parameters: LeaveSlit): Alteration =>
  perform(leaveSlitVerb, pattern, parameters);

export const leaveSlitForm = formOf<LeaveSlit>()({
  verb: 'leave slit',
  does: 'Leaves a part of a seam open as a slit. No line moves.',
  fields: { edge: field.edgeOfPiece(), length: field.size() },
  leaves: ({ edge }) => ({ changed: [edge.piece] }),
  sentence: 'Leave a slit of {length} open in the {edge}',
  startsAt: { edge: ['edge'] },
  example: { pattern: 'darted-dress', step: { edge: 'skirt back.side', length: '200 mm' } },
});
export const leaveSlitVerb = /* @__PURE__ */ verbFrom(leaveSlitForm, (pattern, { edge, length }) => {
  const piece = pieceNamed(pattern, edge.piece);
  return locating(edge, () => {
    const { run } = edgeInRing(piece, edge.edge);
    const edgeMm = pathLength(run.path);
    if (length >= edgeMm)
      throw refusal('slit-beyond-edge', { edge: { ...edge }, lengthMm: length, edgeMm }, edge);
    const parts = piece.outline.parts.map(part => (part === run.edge ? { ...part, opening: length } : part));
    return {
      pattern: withPiece(pattern, { ...piece, outline: { parts } }),
      became: nothingBecame,
      did: saying('set-slit', { edge: { ...edge }, lengthMm: length }),
      findings: [],
    };
  });
});

/**
 * Adds a vent to the hem end of an edge: above it the edge is sewn, below it a strip lies beyond, parallel, its upper end
 * aslant at 45 degrees, its hem run on straight. The old line becomes a fold line. Do it to both edges of the seam.
 * Source: common practice, no source.
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`, `vent-not-at-hem`, `vent-too-long`, `vent-too-wide`, `edge-in-two-parts`,
 *   `edge-name-taken`, `redrawn-crosses`; those of `perform`
 */
export const addVent = (pattern: Pattern, parameters: AddVent): Alteration =>
  perform(addVentVerb, pattern, parameters);

export const addVentForm = formOf<AddVent>()({
  verb: 'add vent',
  does: 'Adds a strip beyond the lower end of an edge for a vent, its upper end aslant, and a fold line where the edge was.',
  fields: { edge: field.edgeOfPiece(), length: field.size(), width: field.size() },
  leaves: ({ edge }) => ({ changed: [edge.piece] }),
  sentence: 'Add a vent to the {edge}, {length} up from the hem and {width} wide',
  startsAt: { edge: ['edge'] },
  example: {
    pattern: 'darted-dress',
    step: { edge: 'skirt back.side', length: '180 mm', width: '40 mm' },
  },
});
export const addVentVerb = /* @__PURE__ */ verbFrom(addVentForm, (pattern, { edge, length, width }) => {
  const piece = pieceNamed(pattern, edge.piece);
  return locating(edge, () => {
    const end = hemEnd(piece, edge.edge);
    if (!end) throw refusal('vent-not-at-hem', { edge: { ...edge } }, edge);
    const ring = edgeInRing(piece, edge.edge);
    const edgeMm = pathLength(ring.run.path);
    if (length + width >= edgeMm - tolerances.joiningGap)
      throw refusal('vent-too-long', { edge: { ...edge }, lengthMm: length + width, edgeMm }, edge);
    if (width >= length - tolerances.joiningGap)
      throw refusal('vent-too-wide', { lengthMm: length, widthMm: width }, edge);
    const strip = ventBeside(ring.run, end.at, length, width);
    for (const name of ['vent', 'vent-top']) requireFreeEdgeName(piece, name);
    const hemIndex = (ring.index + (end.at === 'end' ? 1 : -1) + ring.items.length) % ring.items.length;
    const hem = ring.items[hemIndex] as Run;
    const fresh = ventItems(ring.run, hem, strip, end.at);
    const done = recomposed(piece, withEdgeRedrawn(ring, fresh, []));
    const fold: PieceLine = { kind: 'fold', name: `${edge.edge} vent`, path: strip.fold };
    const vented: Piece = { ...done.piece, lines: [...done.piece.lines, fold] };
    requireSimple(vented, () => redrawnRefusal('redrawn-crosses', { edge: { ...edge } }, edge));
    return {
      pattern: withPiece(pattern, vented),
      became: done.became,
      did: saying('added-vent', { edge: { ...edge }, lengthMm: length, widthMm: width }),
      findings: done.findings,
    };
  });
});

interface Strip {
  /** The edge above the vent, mm of its path. */
  readonly sewn: readonly [number, number];
  /** Where the edge was, beside the strip. */
  readonly fold: Path;
  /** The strip's free edge, in the outline's direction. */
  readonly free: Path;
}

function ventBeside({ path }: Run, at: 'start' | 'end', length: number, width: number): Strip {
  const whole = pathLength(path);
  const sewn: readonly [number, number] = at === 'end' ? [0, whole - length] : [length, whole];
  // The slant rises above the strip: the free edge is as much shorter.
  const beside =
    at === 'end' ? subpath(path, whole - length + width, whole) : subpath(path, 0, length - width);
  const free = joinedInOne(parallelPieces(beside, -width), -width);
  const fold = at === 'end' ? subpath(path, whole - length, whole) : subpath(path, 0, length);
  return { sewn, fold, free };
}

/** Sewn edge, slant, free edge and the hem's run-on, in the outline's order. */
function ventItems(run: Run, hem: Run, { sewn, free }: Strip, at: 'start' | 'end'): readonly Run[] {
  const upper = partOfRun(run, ...sewn);
  const own = (name: string, path: Path): Run => ({ type: 'run', edge: ventEdge(run.edge, name), path });
  const corner = at === 'end' ? pathEnd(run.path) : pathStart(run.path);
  if (at === 'end')
    return [
      upper,
      own('vent-top', pathOf(line(pathEnd(upper.path), pathStart(free)))),
      own('vent', free),
      { type: 'run', edge: hem.edge, path: pathOf(line(pathEnd(free), corner)) },
    ];
  return [
    { type: 'run', edge: hem.edge, path: pathOf(line(corner, pathStart(free))) },
    own('vent', free),
    own('vent-top', pathOf(line(pathEnd(free), pathStart(upper.path)))),
    upper,
  ];
}

function ventEdge({ allowance }: Edge, name: string): Edge {
  return { type: 'edge', name, path: pathOf(), kind: 'seam', allowance, corners: {} };
}
