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
  type Path,
  PatternError,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  subpath,
  tolerances,
} from '@paperhinge/geometry';
import { onEdge } from './cut.js';
import { overlapTrim } from './overlap.js';
import type { CutPiece, Node, Spoke } from './sections.js';

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
  /** rad by which the outline turns more than before, clockwise positive: the kink at a hinge. */
  readonly turn: number;
}

/** A straight line or a dart that closes the gap between two stretches, in outline order. */
export type Connector =
  | { readonly type: 'bridge'; readonly edge: string; readonly from: Point; readonly to: Point }
  | {
      readonly type: 'mouth';
      readonly cut: number;
      readonly end: 'from' | 'to';
      readonly from: Point;
      readonly to: Point;
    };

export interface Joins {
  /** The stretches moved, and trimmed where sides overlap. */
  readonly moved: readonly Path[];
  /** mm trimmed from the start and the end of each stretch. */
  readonly trims: readonly { readonly start: number; readonly end: number }[];
  /** What stands between a stretch and the next, by the index of the first. */
  readonly connectors: ReadonlyMap<number, readonly Connector[]>;
  readonly openings: readonly Opening[];
}

export interface CutAt {
  readonly cut: number;
  readonly end: 'from' | 'to';
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
  mouths: readonly CutAt[],
): Joins {
  const { stretches, sectionOf } = cutPiece;
  const whole = stretches.map(({ path }, i) =>
    unmoved.has(sectionOf[i]!)
      ? path
      : { segments: path.segments.map(s => s.map(p => apply(motions[sectionOf[i]!]!, p))) },
  ) as readonly Path[];
  const trims = stretches.map(() => ({ start: 0, end: 0 }));
  const openings: Opening[] = [];
  const pending: { node: Node; spoke: Spoke; images: readonly [Point, Point]; edge: string }[] = [];
  const connectors = new Map<number, Connector[]>();
  for (const node of cutPiece.nodes) {
    const next = (node.gap + 1) % stretches.length;
    if (node.spokes.some(({ cut, end }) => !onEdge(cutPiece.cuts[cut]![end]))) continue;
    const points = imagesOf(cutPiece, node, motions, pathEnd(whole[node.gap]!), pathStart(whole[next]!));
    for (const [k, spoke] of node.spokes.entries()) {
      const [before, after] = sidesOf(cutPiece, spoke);
      const from = points[k]!,
        to = points[k + 1]!;
      const inward = inwardOf(spoke.away, motions[before]!, motions[after]!);
      const edge = (cutPiece.cuts[spoke.cut]![spoke.end] as { edge: string }).edge;
      const gap = { x: to.x - from.x, y: to.y - from.y };
      const size = norm(gap);
      const opening = {
        cut: spoke.cut,
        end: spoke.end,
        edge,
        turn: turnOf(motions[before]!, motions[after]!),
      };
      if (size <= near) {
        openings.push({ ...opening, fate: 'welded', openedMm: 0 });
        continue;
      }
      const isMouth = mouths.some(m => m.cut === spoke.cut && m.end === spoke.end);
      // Looking inwards, what lies further along the outline lies to the left: a gap that way is an opening.
      const overlaps = dot(gap, leftOf(inward)) < -near && !isMouth;
      if (overlaps && node.spokes.length === 1 && areEdges(cutPiece, node.gap, next)) {
        const trim = overlapTrim(whole[node.gap]!, whole[next]!, inward);
        if (trim) {
          trims[node.gap]!.end = trim.before;
          trims[next]!.start = trim.after;
        }
      }
      openings.push({
        ...opening,
        fate: isMouth ? 'dart' : overlaps ? 'overlapped' : 'bridged',
        openedMm: overlaps ? -size : size,
      });
      pending.push({ node, spoke, images: [from, to], edge });
    }
  }
  const moved = whole.map((path, i) => trimmed(cutPiece, i, path, trims[i]!));
  for (const { node, spoke, images, edge } of pending) {
    const list = connectors.get(node.gap) ?? [];
    connectors.set(node.gap, list);
    const single = node.spokes.length === 1;
    const from = single ? pathEnd(moved[node.gap]!) : images[0];
    const to = single ? pathStart(moved[(node.gap + 1) % moved.length]!) : images[1];
    const { cut, end } = spoke;
    if (mouths.some(m => m.cut === cut && m.end === end)) list.push({ type: 'mouth', cut, end, from, to });
    else if (distance(from, to) > near) list.push({ type: 'bridge', edge, from, to });
  }
  return { moved, trims, connectors, openings };
}

/** The sections before and after the spoke, in outline order. */
function sidesOf(cutPiece: CutPiece, { cut, end }: Spoke): readonly [number, number] {
  const { left, right } = cutPiece.beside[cut]!;
  return end === 'from' ? [right, left] : [left, right];
}

/** Where the node's point goes with each section round it, in outline order. */
function imagesOf(
  cutPiece: CutPiece,
  node: Node,
  motions: readonly Affine[],
  arriving: Point,
  leaving: Point,
): readonly Point[] {
  const between = node.spokes.slice(1).map(spoke => apply(motions[sidesOf(cutPiece, spoke)[0]]!, node.point));
  return [arriving, ...between, leaving];
}

function inwardOf(away: Point, before: Affine, after: Affine): Point {
  const sum = add(applyToVector(before, away), applyToVector(after, away));
  return norm(sum) > near ? sum : away;
}

const turnOf = (before: Affine, after: Affine): number =>
  angleBetween(applyToVector(before, { x: 1, y: 0 }), applyToVector(after, { x: 1, y: 0 }));

const areEdges = (cutPiece: CutPiece, a: number, b: number): boolean =>
  cutPiece.stretches[a]!.type === 'edge' && cutPiece.stretches[b]!.type === 'edge';

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
    throw new PatternError('overlap-too-wide', {
      message: `The overlap would swallow a strip of ${length.toFixed(1)} mm.`,
      remedy: 'Overlap by less, or make fewer slashes.',
      where: { piece: cutPiece.piece.name, ...(stretch.type === 'edge' ? { edge: stretch.edge.name } : {}) },
    });
  return subpath(path, trim.start, length - trim.end);
}
