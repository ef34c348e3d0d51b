import { pathLength } from '../../path/length.js';
import { withEnds } from '../../path/mended.js';
import { type Path, pathEnd, pathStart, polyline } from '../../path/path.js';
import { add, dot, lerp, type Point, rightOf, scale, subtract, unit } from '../../vector.js';
import { edgePath } from '../outline.js';
import type { Dart, Edge, Mark, Notch, OutlinePart, Piece, PieceLine, Pleat } from '../types.js';
import { type Between, blendedPath } from './blend-path.js';
import { sortedNotches } from './size-differences.js';

/** How much of the second size there is between two corresponding places. */
export type ShareBetween = (a: Point, b: Point) => number;

/** A piece between two sizes of it, the second laid on the first; all that is no figure is the first's. */
export function blendedPiece(a: Piece, b: Piece, share: ShareBetween): Piece {
  const between: Between = (p, q) => lerp(p, q, share(p, q));
  const parts = a.outline.parts.map((part, i) => blendedPart(part, b.outline.parts[i]!, share));
  const lines = inOrder(a.lines, b.lines, lineName).map(
    ([line, other]): PieceLine => ({ ...line, path: blendedPath(line.path, other.path, between) }),
  );
  const marks = inOrder(a.marks, b.marks, markName).map(
    ([mark, other]): Mark => ({ ...mark, at: between(mark.at, other.at) }),
  );
  const piece: Piece = { ...a, outline: { parts }, lines, marks, notches: [] };
  return { ...piece, notches: blendedNotches(a, b, piece, share) };
}

const lineName = ({ kind, name }: PieceLine): string => `${kind} ${name}`;
const markName = ({ kind, name }: Mark): string => `${kind} ${name}`;

/** Things of one piece each with that of the same name of the other; of several of one name in their order. */
function inOrder<T>(
  a: readonly T[],
  b: readonly T[],
  name: (thing: T) => string,
): readonly (readonly [T, T])[] {
  const left = [...b];
  return a.map(thing => {
    const at = left.findIndex(other => name(other) === name(thing));
    return [thing, left.splice(at, 1)[0]!] as const;
  });
}

function blendedPart(a: OutlinePart, b: OutlinePart, share: ShareBetween): OutlinePart {
  if (a.type === 'edge') return blendedEdge(a, b as Edge, share);
  return a.type === 'dart' ? blendedDart(a, b as Dart, share) : blendedPleat(a, b as Pleat, share);
}

function blendedEdge(a: Edge, b: Edge, share: ShareBetween): Edge {
  const much = share(middleOf(a.path), middleOf(b.path));
  const figure = (key: 'opening' | 'topstitch' | 'interfacing') => {
    const [x, y] = [a[key], b[key]];
    return x === undefined ? {} : { [key]: y === undefined ? x : mix(x, y, much) };
  };
  return {
    ...a,
    path: blendedPath(a.path, b.path, (p, q) => lerp(p, q, share(p, q))),
    allowance: mix(a.allowance, b.allowance, much),
    ...figure('opening'),
    ...figure('topstitch'),
    ...figure('interfacing'),
  };
}

/** The apex comes to lie evenly between the two ends of the mouth, so that the legs are equally long. */
function blendedDart(a: Dart, b: Dart, share: ShareBetween): Dart {
  const between: Between = (p, q) => lerp(p, q, share(p, q));
  const from = between(pathStart(a.legs[0]), pathStart(b.legs[0])),
    to = between(pathEnd(a.legs[1]), pathEnd(b.legs[1]));
  const across = unit(subtract(to, from));
  const middle = lerp(from, to, 1 / 2);
  const axis = rightOf(across);
  const apex = add(middle, scale(axis, dot(subtract(between(a.apex, b.apex), middle), axis)));
  const leg = (i: 0 | 1): Path => {
    const [start, end] = i === 0 ? [from, apex] : [apex, to];
    const path = blendedPath(a.legs[i], b.legs[i], between);
    return path.segments.length === 1 && path.segments[0]!.length === 2
      ? polyline(start, end)
      : withEnds(path, start, end);
  };
  return { ...a, legs: [leg(0), leg(1)], apex };
}

const blendedPleat = (a: Pleat, b: Pleat, share: ShareBetween): Pleat => ({
  ...a,
  mouth: blendedPath(a.mouth, b.mouth, (p, q) => lerp(p, q, share(p, q))),
  stitched: mix(a.stitched, b.stitched, share(middleOf(a.mouth), middleOf(b.mouth))),
});

/** Each keeps its share of its edge, between the shares it has in the two sizes. */
function blendedNotches(a: Piece, b: Piece, blended: Piece, share: ShareBetween): readonly Notch[] {
  const others = sortedNotches(b);
  return sortedNotches(a).map((notch, i) => {
    const other = others[i]!;
    const path = edgePath(a, notch.edge),
      otherPath = edgePath(b, other.edge);
    const much = share(middleOf(path), middleOf(otherPath));
    const along = mix(notch.at / pathLength(path), other.at / pathLength(otherPath), much);
    return { ...notch, at: along * pathLength(edgePath(blended, notch.edge)) };
  });
}

const middleOf = (path: Path): Point => lerp(pathStart(path), pathEnd(path), 1 / 2);
export const mix = (x: number, y: number, share: number): number => x + (y - x) * share;
