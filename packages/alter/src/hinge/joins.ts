import { type Path, type Point, pathLength } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart, subpath, transformedPath } from '@paperhinge/geometry/paths';
import {
  type Affine,
  add,
  angleBetween,
  apply,
  applyToVector,
  distance,
  dot,
  leftOf,
  norm,
  subtract,
} from '@paperhinge/geometry/plane';
import { onEdge } from './cut.js';
import type { CutPiece, Node, Spoke } from './cut-piece.js';
import type { Mouth } from './mouth.js';
import { overlapTrim, type Trim } from './overlap.js';

import { refusal } from './tellings.js';

const near = tolerances.coincidenceTolerance;

/** What became of one end of a cut on the outline. */
export interface Opening {
  readonly cut: number;
  readonly end: 'from' | 'to';
  /** The edge the cut was made in. */
  readonly edge: string;
  readonly fate: 'welded' | 'bridged' | 'overlapped' | 'dart';
  /** mm between the two sides of the cut at this end; of an overlap, negative. */
  readonly openedMm: number;
  /** mm of straight line that joins the two sides: the opening's, or the step where overlapping sides do not cross. */
  readonly bridgeMm: number;
  /** rad by which the outline turns more than before, clockwise positive: the kink at a hinge. */
  readonly turn: number;
}

/** What stands between two stretches, in outline order: a straight line along the edge that opened, or a mouth. */
export interface Connector {
  readonly edge: string;
  readonly from: Point;
  readonly to: Point;
  readonly mouth: Mouth | undefined;
}

export interface Joins {
  /** The stretches moved, and trimmed where sides overlap. */
  readonly moved: readonly Path[];
  /** mm trimmed from the start and the end of each stretch. */
  readonly trims: readonly { readonly start: number; readonly end: number }[];
  /** What stands between a stretch and the next, by the index of the first. */
  readonly connectors: ReadonlyMap<number, readonly Connector[]>;
  readonly openings: readonly Opening[];
}

/**
 * Moves every stretch with its section and settles each place where the outline was cut: welded where the sides
 * still meet, trimmed where they overlap, left to become a dart where that was asked for, bridged otherwise.
 * @throws PatternError `overlap-too-wide` where a strip would vanish
 */
export function joinsOf(
  cutPiece: CutPiece,
  motions: readonly Affine[],
  unmoved: ReadonlySet<number>,
  mouths: readonly Mouth[],
): Joins {
  const whole = cutPiece.stretches.map(({ path }, i) => {
    const section = cutPiece.sectionOf[i]!;
    return unmoved.has(section) ? path : transformedPath(path, motions[section]!);
  });
  const gaps = cutPiece.nodes.flatMap(node => gapsAt(cutPiece, node, whole, motions, mouths));
  const trims = whole.map(() => ({ start: 0, end: 0 }));
  for (const gap of gaps) {
    const trim = gap.fate === 'overlapped' && gap.single ? trimOf(cutPiece, gap, whole) : undefined;
    if (!trim) continue;
    trims[gap.index]!.end = trim.before;
    trims[gap.next]!.start = trim.after;
  }
  const moved = whole.map((path, i) => trimmed(cutPiece, i, path, trims[i]!));
  const connectors = new Map<number, Connector[]>();
  const openings = gaps.map(gap => {
    const { cut, end, edge, fate, turn } = gap;
    const from = gap.single ? pathEnd(moved[gap.index]!) : gap.from;
    const to = gap.single ? pathStart(moved[gap.next]!) : gap.to;
    const opening = { cut, end, edge, fate, turn, openedMm: gap.openedMm };
    const list = connectors.get(gap.index) ?? [];
    connectors.set(gap.index, list);
    const size = distance(from, to);
    const isBridged = !(fate === 'dart' || fate === 'welded' || size <= near);
    if (fate === 'dart' || isBridged) list.push({ edge, from, to, mouth: gap.mouth });
    return { ...opening, bridgeMm: isBridged ? size : 0 };
  });
  return { moved, trims, connectors, openings };
}

/** One slash at one place of the outline after the move: the two images of that place and what becomes of them. */
interface Gap {
  readonly cut: number;
  readonly end: 'from' | 'to';
  readonly edge: string;
  readonly fate: Opening['fate'];
  readonly mouth: Mouth | undefined;
  readonly openedMm: number;
  readonly turn: number;
  /** Stretches before and after. */
  readonly index: number;
  readonly next: number;
  readonly from: Point;
  readonly to: Point;
  /** Half way between the directions of its two sides, into the piece. */
  readonly inward: Point;
  /** No other slash begins here. */
  readonly single: boolean;
}

function gapsAt(
  cutPiece: CutPiece,
  node: Node,
  whole: readonly Path[],
  motions: readonly Affine[],
  mouths: readonly Mouth[],
): readonly Gap[] {
  // At a dart's point nothing opens: the two legs are rejoined with the dart.
  if (node.spokes.some(({ cut, end }) => !onEdge(cutPiece.cuts[cut]![end]))) return [];
  const index = node.gap;
  const next = (index + 1) % whole.length;
  const between = node.spokes.slice(1).map(spoke => apply(motions[sidesOf(cutPiece, spoke)[0]]!, node.point));
  const images = [pathEnd(whole[index]!), ...between, pathStart(whole[next]!)];
  return node.spokes.map(({ cut, end, away }, k) => {
    const [before, after] = sidesOf(cutPiece, { cut, end, away }).map(section => motions[section]!);
    const from = images[k]!;
    const to = images[k + 1]!;
    const inward = inwardOf(away, before!, after!);
    const size = distance(from, to);
    // Looking inwards, what lies further along the outline lies to the left: a gap that way is an opening.
    const overlaps = dot(subtract(to, from), leftOf(inward)) < -near;
    const wanted = mouths.find(m => m.cut === cut && m.end === end);
    const fate = size <= near ? 'welded' : wanted ? 'dart' : overlaps ? 'overlapped' : 'bridged';
    const openedMm = fate === 'welded' ? 0 : fate === 'overlapped' ? -size : size;
    const { edge } = cutPiece.cuts[cut]![end] as { readonly edge: string };
    const turn = turnOf(before!, after!);
    const single = node.spokes.length === 1;
    const mouth = fate === 'dart' ? wanted : undefined;
    return { cut, end, edge, fate, mouth, openedMm, turn, index, next, from, to, inward, single };
  });
}

/** Only edges are trimmed: a dart's leg keeps its length. */
const trimOf = (
  cutPiece: CutPiece,
  { index, next, inward }: Gap,
  whole: readonly Path[],
): Trim | undefined =>
  cutPiece.stretches[index]!.type === 'edge' && cutPiece.stretches[next]!.type === 'edge'
    ? overlapTrim(whole[index]!, whole[next]!, inward)
    : undefined;

/** The sections before and after the spoke, in outline order. */
function sidesOf(cutPiece: CutPiece, { cut, end }: Spoke): readonly [number, number] {
  const { left, right } = cutPiece.beside[cut]!;
  return end === 'from' ? [right, left] : [left, right];
}

function inwardOf(away: Point, before: Affine, after: Affine): Point {
  const sum = add(applyToVector(before, away), applyToVector(after, away));
  return norm(sum) > near ? sum : away;
}

const turnOf = (before: Affine, after: Affine): number =>
  angleBetween(applyToVector(before, { x: 1, y: 0 }), applyToVector(after, { x: 1, y: 0 }));

function trimmed(
  cutPiece: CutPiece,
  index: number,
  path: Path,
  trim: { readonly start: number; readonly end: number },
): Path {
  if (trim.start === 0 && trim.end === 0) return path;
  const length = pathLength(path);
  const stretch = cutPiece.stretches[index]!;
  if (trim.start + trim.end >= length - near)
    throw refusal(
      'overlap-too-wide',
      { stripMm: length },
      { piece: cutPiece.piece.name, ...(stretch.type === 'edge' ? { edge: stretch.edge.name } : {}) },
    );
  return subpath(path, trim.start, length - trim.end);
}
