import { outOfRange } from '../curve/sound.js';
import { locating } from '../errors.js';
import { nearestName } from '../naming.js';
import { largestCoordinate } from '../tolerance.js';
import type { Point } from '../vector.js';
import { edgeRoles, lineRoles, markRoles, pieceRoles } from './roles/role-names.js';
import { refusal } from './tellings.js';
import type { Cutting, Edge, Fabric, Fastening, OutlinePart, Pattern, Piece, Pleat, Seam } from './types.js';
import {
  cornerRules,
  edgeKinds,
  ends,
  fabricRoles,
  fasteningKinds,
  finishes,
  lineKinds,
  notchStyles,
  pleatKinds,
  pressings,
  stretchWays,
  takenUpWays,
  units,
} from './words.js';

// Plain JavaScript may say anything: what is no word or no figure is refused at the door, before it is reckoned with.

/** How often a piece may be cut. */
export const mostCopies = 1000;
/** Per cent. Beyond what any cloth stretches. */
const mostStretch = 300;

/**
 * Refuses words and figures of a piece that mean nothing.
 * @throws PatternError `word-not-understood`, `length-not-positive`, `cut-count`, `coordinate-out-of-range`
 */
export function refuseBadFacts(piece: Piece): void {
  const { cutting, alsoCut = [], notches, lines, marks, outline } = piece;
  for (const part of outline.parts) locating({ edge: part.name }, () => refuseBadPart(part));
  for (const one of [cutting, ...alsoCut]) refuseBadCutting(one);
  wordOf('greatest stretch', piece.greatestStretch, stretchWays);
  wordOf('role', piece.role, pieceRoles);
  for (const { style } of notches) wordOf('notch style', style, notchStyles);
  for (const { kind, role, path } of lines) {
    wordOf('line kind', kind, lineKinds);
    wordOf('role', role, lineRoles);
    for (const segment of path.segments) segment.forEach(refuseFar);
  }
  for (const { at, role } of marks) {
    wordOf('role', role, markRoles);
    refuseFar(at);
  }
}

/** The same of what stands beside a pattern's pieces. */
export function refuseBadPatternFacts({ unit, tolerance, fabrics, seams, fastenings = [] }: Pattern): void {
  wordOf('unit', unit, units);
  lengthOf('tolerance', tolerance);
  for (const fabric of fabrics) refuseBadFabric(fabric);
  for (const seam of seams) locating({ seam: seam.name }, () => refuseBadSeam(seam));
  for (const fastening of fastenings) refuseBadFastening(fastening);
}

function refuseBadPart(part: OutlinePart): void {
  if (part.type === 'edge') refuseBadEdge(part);
  else if (part.type === 'dart') wordOf('pressed', part.pressed, pressings);
  else refuseBadPleat(part);
}

function refuseBadPleat({ kind, towards, stitched }: Pleat): void {
  wordOf('pleat kind', kind, pleatKinds);
  wordOf('towards', towards, ends);
  if (stitched !== 0) lengthOf('stitched', stitched);
}

function refuseBadEdge({ kind, role, corners, finish, topstitch, interfacing }: Edge): void {
  wordOf('kind', kind, edgeKinds);
  wordOf('role', role, edgeRoles);
  wordOf('corner', corners.start, cornerRules);
  wordOf('corner', corners.end, cornerRules);
  wordOf('finish', finish, finishes);
  lengthOf('topstitch', topstitch);
  lengthOf('interfacing', interfacing);
}

function refuseBadCutting({ count, layers = 1 }: Cutting): void {
  for (const number of [count, layers])
    if (!(Number.isInteger(number) && number >= 1 && number <= mostCopies))
      throw refusal('cut-count', { most: mostCopies });
}

function refuseBadFabric({ role, width, repeat, stretch, recovery }: Fabric): void {
  wordOf('role', role, fabricRoles);
  lengthOf('width', width);
  lengthOf('repeat', repeat);
  for (const percent of [stretch?.across, stretch?.along, recovery])
    if (percent !== undefined && !(percent >= 0 && percent <= mostStretch))
      throw refusal('stretch-out-of-range', { most: mostStretch });
}

function refuseBadSeam({ ease, takenUp, tolerance }: Seam): void {
  const size = 'percent' in ease ? ease.percent : ease.mm;
  if (!(Math.abs(size) <= largestCoordinate)) throw refusal('length-out-of-range', { attribute: 'ease' });
  wordOf('taken up', takenUp, takenUpWays);
  lengthOf('tolerance', tolerance);
}

function refuseBadFastening({ kind, count = 1, ...rest }: Fastening): void {
  wordOf('fastening kind', kind, fasteningKinds);
  if (!(Number.isInteger(count) && count >= 1 && count <= mostCopies))
    throw refusal('cut-count', { most: mostCopies });
  for (const key of ['length', 'spacing', 'size', 'relaxed', 'overlap', 'underlap'] as const)
    lengthOf(key, rest[key]);
}

function wordOf(attribute: string, word: string | undefined, words: readonly string[]): void {
  if (word === undefined || words.includes(word)) return;
  const near = typeof word === 'string' ? nearestName(word, words) : undefined;
  throw refusal('word-not-understood', { attribute, words, ...(near === undefined ? {} : { near }) });
}

function lengthOf(attribute: string, mm: number | undefined): void {
  if (mm === undefined || (mm > 0 && mm <= largestCoordinate)) return;
  throw refusal('length-not-positive', { attribute });
}

function refuseFar({ x, y }: Point): void {
  if (!(Math.abs(x) <= largestCoordinate && Math.abs(y) <= largestCoordinate)) throw outOfRange();
}
