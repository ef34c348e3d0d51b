import {
  type Dart,
  type Edge,
  type OutlinePart,
  type Path,
  type Piece,
  type Point,
  pathLength,
  pathOf,
} from '@paperhinge/geometry';
import { abs } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { joined, pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { pathsOfPart } from '@paperhinge/geometry/pattern';
import { type Affine, angleBetween, distance, subtract } from '@paperhinge/geometry/plane';
import type { CutPiece } from './cut-piece.js';
import { endingAt, startingAt } from './ends.js';
import type { Connector, Joins } from './joins.js';
import { type LegStretch, partOffsets } from './ring.js';
import { ringGroups } from './ring-groups.js';

import { refusal } from './tellings.js';

const near = tolerances.coincidenceTolerance;

/** Where a run of an old edge lies now: old mm `from`..`to` begin at new mm `newFrom`, in the same direction. */
export interface Place {
  readonly edge: string;
  readonly from: number;
  readonly to: number;
  readonly newFrom: number;
  readonly section: number;
  readonly motion: Affine;
}

/** A dart that closed, and the step in mm that unequal legs leave. */
export interface ClosedDart {
  readonly dart: string;
  readonly stepMm: number;
}

/** What is asked of the darts there are. */
export interface DartWishes {
  /** Those that close though their legs differ. */
  readonly closing: readonly string[];
  /** Darts whose legs are drawn anew, straight from where their mouths now end to this point. */
  readonly redrawn: ReadonlyMap<string, Point>;
}

/** A part of the outline to be, or a run of an edge that is one part with its neighbours. */
interface Item {
  /** As it was, but for what it is drawn of. */
  readonly part: OutlinePart;
  /** What it is drawn of now. */
  readonly paths: Path[];
  /** The stretch that an edge's run came from; absent for bridges. */
  readonly stretch?: number;
}

export interface Assembled {
  readonly piece: Piece;
  readonly places: readonly Place[];
  readonly closed: readonly ClosedDart[];
}

/**
 * Rejoins moved stretches, bridges and darts into one outline; runs of one edge that follow each other become one
 * part again. Notches, lines and marks are not carried here.
 * @throws PatternError `dart-torn`, `dart-overclosed`, `outline-open`
 */
export function assemble(
  cutPiece: CutPiece,
  joins: Joins,
  motions: readonly Affine[],
  unmoved: ReadonlySet<number>,
  wishes: DartWishes,
): Assembled {
  const closed: ClosedDart[] = [];
  const items: Item[] = [];
  for (const [i, stretch] of cutPiece.stretches.entries()) {
    if (stretch.type === 'edge') items.push({ part: stretch.edge, paths: [joins.moved[i]!], stretch: i });
    else if (stretch.type === 'mouth') items.push({ part: stretch.pleat, paths: [joins.moved[i]!] });
    else if (stretch.leg === 0) {
      const rejoined = rejoinedDart(cutPiece, stretch, joins.moved[i]!, joins.moved[i + 1]!, wishes);
      if ('legs' in rejoined) items.push({ part: rejoined, paths: [...rejoined.legs] });
      else {
        closed.push({ dart: stretch.dart.name, stepMm: rejoined.stepMm });
        const step = pathOf([pathStart(joins.moved[i]!), pathEnd(joins.moved[i + 1]!)]);
        if (rejoined.stepMm > near) items.push({ part: edgeBefore(cutPiece, i), paths: [step] });
      }
    }
    for (const connector of joins.connectors.get(i) ?? []) items.push(itemFor(cutPiece.piece, connector));
  }
  weld(cutPiece, items, i => i !== undefined && unmoved.has(cutPiece.sectionOf[i]!));
  const groups = ringGroups(items, continues);
  const parts = groups.map(partOf);
  const piece: Piece = { ...cutPiece.piece, outline: { parts } };
  return { piece, places: placesOf({ cutPiece, joins, motions }, piece, groups), closed };
}

function rejoinedDart(
  cutPiece: CutPiece,
  { dart }: LegStretch,
  first: Path,
  second: Path,
  { closing, redrawn }: DartWishes,
): Dart | { readonly stepMm: number } {
  const a = pathStart(first),
    b = pathEnd(second),
    point = redrawn.get(dart.name);
  if (point) return { ...dart, legs: [pathOf([a, point]), pathOf([point, b])], apex: point };
  const apex = pathEnd(first),
    apexAfter = pathStart(second);
  const where = { piece: cutPiece.piece.name };
  const named = { ...where, dart: dart.name };
  if (distance(apex, apexAfter) > near) throw refusal('dart-torn', { dart: named }, where);
  if (closing.includes(dart.name) || distance(a, b) <= near) return { stepMm: distance(a, b) };
  const before = dartAngle(dart),
    after = angleBetween(subtract(a, apex), subtract(b, apex));
  if (before * after < 0 && abs(after) > tolerances.angleTolerance)
    throw refusal('dart-overclosed', { dart: named }, where);
  if (first === dart.legs[0] && second === dart.legs[1]) return dart;
  return { ...dart, legs: [first, second], apex };
}

/** Signed angle in rad from chord apex-A to chord apex-B, clockwise positive as seen. */
export const dartAngle = ({ legs, apex }: Dart): number =>
  angleBetween(subtract(pathStart(legs[0]), apex), subtract(pathEnd(legs[1]), apex));

/** The edge that a step at a closed dart is added to: the one that ended at it, else the one after. */
function edgeBefore(cutPiece: CutPiece, index: number): Edge {
  const { stretches } = cutPiece;
  for (let back = 1; back <= stretches.length; back++) {
    const stretch = stretches[(index - back + stretches.length) % stretches.length]!;
    if (stretch.type === 'edge') return stretch.edge;
  }
  // An outline of darts alone cannot be read.
  throw new Error('no edge');
}

function itemFor(piece: Piece, { edge, from, to, mouth }: Connector): Item {
  const opened = mouth?.part(from, to);
  if (opened) return { part: opened, paths: [...pathsOfPart(opened)] };
  const bridged = piece.outline.parts.find(p => p.type === 'edge' && p.name === edge)!;
  return { part: bridged, paths: [pathOf([from, to])] };
}

/** Makes neighbours share their point exactly; a section that did not move keeps its own to the last bit. */
function weld(cutPiece: CutPiece, items: Item[], stays: (stretch: number | undefined) => boolean): void {
  for (const [i, item] of items.entries()) {
    const next = items[(i + 1) % items.length]!;
    const end = pathEnd(item.paths.at(-1)!),
      start = pathStart(next.paths[0]!);
    if (end.x === start.x && end.y === start.y) continue;
    // A drawing may leave up to a joining gap between neighbours that no cut touched.
    if (distance(end, start) > tolerances.joiningGap)
      throw refusal('outline-open', { gapMm: distance(end, start) }, { piece: cutPiece.piece.name });
    if (stays(item.stretch)) next.paths[0] = startingAt(next.paths[0]!, end);
    else item.paths.push(endingAt(item.paths.pop()!, start));
  }
}

const continues = (a: Item, b: Item): boolean =>
  a.part.type === 'edge' && b.part.type === 'edge' && a.part.name === b.part.name;

function partOf(group: readonly Item[]): OutlinePart {
  const { part, paths } = group[0]!;
  const first = paths[0]!;
  if (part.type === 'dart') {
    const second = paths[1]!;
    return first === part.legs[0] && second === part.legs[1] ? part : { ...part, legs: [first, second] };
  }
  if (part.type === 'pleat') return { ...part, mouth: first };
  // Only runs of one edge are grouped.
  const { start } = part.corners,
    { end } = (group.at(-1)!.part as Edge).corners;
  const corners = { ...(start ? { start } : {}), ...(end ? { end } : {}) };
  const path = group.length === 1 ? first : joined(...group.map(item => item.paths[0]!));
  return { ...part, path, corners };
}

/** A cut piece with its sections moved. */
interface Moved {
  readonly cutPiece: CutPiece;
  readonly joins: Joins;
  readonly motions: readonly Affine[];
}

/** Where each stretch of an edge lies in the rejoined piece, whose parts the groups became, one each. */
function placesOf(
  { cutPiece, joins, motions }: Moved,
  piece: Piece,
  groups: readonly (readonly Item[])[],
): readonly Place[] {
  const offsets = partOffsets(piece);
  return groups.flatMap((group, g) => {
    const part = piece.outline.parts[g]!;
    if (part.type !== 'edge') return [];
    let along = offsets.get(part)!;
    return group.flatMap((item): readonly Place[] => {
      const newFrom = along;
      along += pathLength(item.paths[0]!);
      const stretch = item.stretch === undefined ? undefined : cutPiece.stretches[item.stretch];
      if (stretch?.type !== 'edge') return [];
      const { start, end } = joins.trims[item.stretch!]!;
      const section = cutPiece.sectionOf[item.stretch!]!;
      const [from, to] = [stretch.from + start, stretch.to - end];
      return [{ edge: part.name, from, to, newFrom, section, motion: motions[section]! }];
    });
  });
}
