import { endOf, startOf } from '../curve/segment.js';
import { outOfRange } from '../curve/sound.js';
import { locating, type PatternError } from '../errors.js';
import { oncePer } from '../once-per.js';
import { pathLength } from '../path/length.js';
import { type Path, pathEnd, pathStart } from '../path/path.js';
import { signedArea } from '../region/area.js';
import { coincidenceTolerance, dartLegTolerance, largestAllowance, largestCoordinate } from '../tolerance.js';
import { distance, type Point } from '../vector.js';
import {
  dartsOf,
  edgeNames,
  edgeParts,
  edgePath,
  interrupts,
  outlinePath,
  partsOfEdge,
  pathsOfPart,
  pleatsOf,
} from './outline.js';
import { requireWhole, requireWholePiece } from './require-whole.js';
import { refuseSelfCrossing } from './self-crossing.js';
import { refusal } from './tellings.js';
import type { Dart, Edge, EdgeRun, Pattern, Piece, Seam } from './types.js';

/**
 * Refuses a pattern that cannot be a pattern. What is only doubtful (seams that do not match, allowances not given)
 * is left to `checkPattern`.
 *
 * @throws PatternError naming piece and edge: `name-missing`, `duplicate-piece`, `duplicate-edge`, `duplicate-seam`,
 *   `duplicate-fabric`, `unknown-piece`, `unknown-edge`, `empty-seam`, `position-off-edge`, `word-not-understood`,
 *   `length-not-positive`, `stretch-out-of-range`, and those of {@link validatePiece}
 */
export function validatePattern(pattern: Pattern): void {
  validateTogether(pattern);
  for (const piece of pattern.pieces) validatePiece(piece);
}

/** Names and seams: all that {@link validatePattern} asks of pieces that are each known to be sound. */
export function validateTogether(pattern: Pattern): void {
  requireWhole(pattern);
  const named = (things: readonly { readonly name: string }[]): readonly string[] => things.map(t => t.name);
  refuseDuplicates('piece', named(pattern.pieces));
  refuseDuplicates('seam', named(pattern.seams));
  refuseDuplicates('fabric', named(pattern.fabrics));
  for (const seam of pattern.seams) validateSeam(seam, pattern);
  for (const { name, along } of pattern.fastenings ?? []) validateRun(along, name, pattern);
}

/**
 * @throws PatternError `open-outline` with the gap, `self-crossing` with the place, `outline-anticlockwise`,
 *   `outline-without-area`, `duplicate-edge`, `edge-in-parts`, `edge-without-length`, `dart-legs-differ`,
 *   `allowance-out-of-range`, `allowance-on-fold`, `notch-off-edge`, `opening-out-of-range`, `cut-count`,
 *   `coordinate-out-of-range`
 */
export const validatePiece: (piece: Piece) => void = /* @__PURE__ */ oncePer((piece: Piece): void => {
  requireWholePiece(piece);
  locating({ piece: piece.name }, () => {
    const { parts } = piece.outline;
    for (const part of parts) {
      locating({ edge: part.name }, () => pathsOfPart(part).forEach(refuseBadPath));
    }
    refuseGaps(piece);
    refuseNames(piece);
    for (const edge of edgeParts(piece)) locating({ edge: edge.name }, () => refuseBadEdge(edge));
    for (const dart of dartsOf(piece)) locating({ edge: dart.name }, () => refuseUnlikeLegs(dart));
    refuseBadArea(outlinePath(piece.outline));
    refuseSelfCrossing(piece);
    refuseBadNotches(piece);
  });
});

function refuseDuplicates(what: 'piece' | 'seam' | 'fabric', names: readonly string[]): void {
  const seen = new Set<string>();
  for (const name of names) {
    if (name.trim() === '') throw refusal('name-missing', { what });
    if (seen.has(name)) throw refusal(`duplicate-${what}`, { name }, what === 'piece' ? { piece: name } : {});
    seen.add(name);
  }
}

function refuseBadPath(path: Path): void {
  const inRange = ({ x, y }: Point): boolean =>
    Math.abs(x) <= largestCoordinate && Math.abs(y) <= largestCoordinate;
  if (!path.segments.every(s => s.every(inRange))) throw outOfRange();
  if (path.segments.length === 0 || pathLength(path) <= coincidenceTolerance)
    throw refusal('edge-without-length', {});
  path.segments.forEach((segment, i) => {
    const next = path.segments[i + 1];
    if (next) refuseGap(endOf(segment), startOf(next));
  });
}

function refuseGaps(piece: Piece): void {
  const { parts } = piece.outline;
  parts.forEach((part, i) => {
    const next = parts[(i + 1) % parts.length]!;
    if (part.type === 'dart') refuseGap(pathEnd(part.legs[0]), pathStart(part.legs[1]), part.name);
    refuseGap(pathEnd(pathsOfPart(part).at(-1)!), pathStart(pathsOfPart(next)[0]!), part.name, next.name);
  });
}

function refuseGap(end: Point, start: Point, edge?: string, next?: string): void {
  const gap = distance(end, start);
  if (gap <= coincidenceTolerance) return;
  const between = edge === undefined || next === undefined ? {} : { between: [edge, next] };
  throw refusal('open-outline', { gapMm: gap, ...between }, edge === undefined ? {} : { edge });
}

/** An edge stands once, or in parts with darts (or one edge, as an inset in a neck) between each and the next. */
function refuseNames(piece: Piece): void {
  const { parts } = piece.outline;
  const names = [...edgeNames(piece), ...[...dartsOf(piece), ...pleatsOf(piece)].map(d => d.name)];
  if (names.some(name => name.trim() === '')) throw refusal('name-missing', { what: 'edge' });
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice !== undefined) throw refusal('duplicate-edge', { name: twice }, { edge: twice });
  for (const name of edgeNames(piece)) {
    const own = partsOfEdge(piece, name);
    for (let i = 1; i < own.length; i++) {
      const from = parts.indexOf(own[i - 1]!) + 1;
      const count = (parts.indexOf(own[i]!) - from + parts.length) % parts.length;
      const between = Array.from({ length: count }, (_, k) => parts[(from + k) % parts.length]!);
      if (!interrupts(between)) throw refusal('edge-in-parts', { name }, { edge: name });
    }
  }
}

function refuseBadEdge(edge: Edge): void {
  const { allowance, kind, opening } = edge;
  if (!(allowance >= 0 && allowance <= largestAllowance))
    throw refusal('allowance-out-of-range', { mostMm: largestAllowance });
  if (allowance > 0 && (kind === 'fold' || kind === 'raw')) throw refusal('allowance-on-fold', {});
  if (opening !== undefined && !(opening > 0 && opening <= largestCoordinate))
    throw refusal('opening-out-of-range', {});
}

function refuseUnlikeLegs({ name, legs }: Dart): void {
  const [a, b] = legs.map(pathLength) as [number, number];
  if (Math.abs(a - b) <= dartLegTolerance) return;
  throw refusal('dart-legs-differ', {
    dart: { dart: name },
    firstMm: a,
    secondMm: b,
    limitMm: dartLegTolerance,
  });
}

function refuseBadArea(outline: Path): void {
  const area = signedArea(outline);
  if (Math.abs(area) <= coincidenceTolerance) throw refusal('outline-without-area', {});
  if (area < 0) throw refusal('outline-anticlockwise', {});
}

function refuseBadNotches(piece: Piece): void {
  const names = edgeNames(piece);
  for (const notch of piece.notches) {
    if (!names.includes(notch.edge)) throw unknownEdge(piece.name, notch.edge, names, { notch: true });
    const length = pathLength(edgePath(piece, notch.edge));
    if (!(notch.at >= -coincidenceTolerance && notch.at <= length + coincidenceTolerance))
      throw refusal('notch-off-edge', { alongMm: notch.at, edgeMm: length }, { edge: notch.edge });
  }
}

function validateSeam(seam: Seam, pattern: Pattern): void {
  for (const side of [seam.a, seam.b]) {
    if (side.length === 0) throw refusal('empty-seam', { name: seam.name });
    for (const run of side) validateRun(run, seam.name, pattern);
  }
}

function validateRun({ piece: name, edge, part }: EdgeRun, seam: string, { pieces }: Pattern): void {
  const piece = pieces.find(p => p.name === name);
  if (!piece) throw refusal('unknown-piece', { name, names: pieces.map(p => p.name), seam }, { piece: name });
  if (!edgeNames(piece).includes(edge)) throw unknownEdge(name, edge, edgeNames(piece), { seam });
  if (!part) return;
  const edgeMm = pathLength(edgePath(piece, edge));
  const { from, to } = part;
  if (!(from >= -coincidenceTolerance && from < to && to <= edgeMm + coincidenceTolerance)) {
    const where = { piece: name, edge };
    throw refusal('position-off-edge', { edge: where, alongMm: to, edgeMm }, where);
  }
}

const unknownEdge = (
  piece: string,
  edge: string,
  names: readonly string[],
  by: { readonly seam?: string; readonly notch?: boolean },
): PatternError => refusal('unknown-edge', { piece, name: edge, names, ...by }, { piece, edge });
