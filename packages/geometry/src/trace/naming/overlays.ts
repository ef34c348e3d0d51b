import { apply, carrying, compose, mirror } from '../../affine.js';
import { pathLength, pointAlong } from '../../path/length.js';
import { nearestOnPath } from '../../path/nearest.js';
import { type Path, pathEnd, pathStart, reversedPath, transformedPath } from '../../path/path.js';
import { edgeNames, edgePath, outlinePath } from '../../pattern/outline.js';
import type { Piece } from '../../pattern/types.js';
import { signedArea } from '../../region/area.js';
import { containsPoint } from '../../region/contains.js';
import { at, distance, type Point, subtract } from '../../vector.js';

/** A piece that lies on another with edges in common, as a lining, a facing or the bag of a pocket does. */
export interface Overlay {
  readonly over: Piece;
  readonly under: Piece;
  /** Edges of `under` by the edges of `over` that lie on them. */
  readonly shared: ReadonlyMap<string, string>;
  /** Every edge of both is shared. */
  readonly isWhole: boolean;
}

/** mm: lines traced from one another differ by less, in length and from place to place. */
const asTraced = 0.7;
/** mm: shorter edges are alike by chance. */
const shortest = 30;
/** Of its length, the straight way from end to end of a curve: straighter edges are alike by chance. */
const straightest = 0.99;
/** Larger pieces that share edges may be a front and a back as well. */
const clearlySmaller = 0.75;
/** mm: lengths of two edges that are sewn to one another differ by less, eased or not. */
const perhapsSewn = 4;

/**
 * What lies on what. A piece that is as large as the one below it is a lining of it only if what that is sewn to is lined
 * as well: a front and a back that are cut alike lie on one another, too.
 */
export function overlaysOf(pieces: readonly Piece[]): readonly Overlay[] {
  const shapes = pieces.map(shapeOf);
  const laid = shapes.flatMap((under, i) =>
    shapes.flatMap((over, k) => (i === k ? [] : (laidOn(over, under) ?? []))),
  );
  const related = (a: Piece, b: Piece): boolean =>
    a === b || laid.some(({ over, under }) => (over === a && under === b) || (over === b && under === a));
  const order = new Map(pieces.map((piece, i) => [piece, i]));
  const isLaid = (overlay: Overlay): boolean =>
    !overlay.isWhole || order.get(overlay.over)! > order.get(overlay.under)!;
  const partnerIsLined = ({ over, under }: Overlay): boolean =>
    shapes.some(
      other =>
        !related(other.piece, under) &&
        !related(other.piece, over) &&
        mayBeSewnTwice(other, shapeOf(under)) &&
        laid.some(one => one.under === other.piece && isLaid(one)),
    );
  const found = laid.filter(
    overlay => isLaid(overlay) && (isClearlySmaller(overlay) || partnerIsLined(overlay)),
  );
  // Each lies on one: on the largest share of its edges, and on what lies on nothing itself.
  const best = new Map<Piece, Overlay>();
  for (const overlay of found) {
    const known = best.get(overlay.over);
    if (!known || overlay.shared.size > known.shared.size) best.set(overlay.over, overlay);
  }
  return [...best.values()].filter(({ under }) => !best.has(under));
}

interface Shape {
  readonly piece: Piece;
  readonly edges: readonly { readonly name: string; readonly path: Path; readonly mm: number }[];
}
const shapeOf = (piece: Piece): Shape => ({
  piece,
  edges: edgeNames(piece).map(name => {
    const path = edgePath(piece, name);
    return { name, path, mm: pathLength(path) };
  }),
});

const isClearlySmaller = ({ over, under, shared }: Overlay): boolean => {
  const { edges } = shapeOf(over);
  const length = (of: typeof edges): number => of.reduce((sum, { mm }) => sum + mm, 0);
  const isMostlyShared =
    shared.size === 1 && length(edges.filter(({ name }) => shared.has(name))) > mostShared * length(edges);
  return areaOf(over) < (isMostlyShared ? 1 : clearlySmaller) * areaOf(under);
};
/** Of its outline: what shares so much of it in one curve is the bag of a pocket. */
const mostShared = 0.5;
/** mm² */
export const areaOf = (piece: Piece): number => Math.abs(signedArea(outlinePath(piece.outline)));

const mayBeSewnTwice = (a: Shape, b: Shape): boolean =>
  a.edges.filter(({ mm }) => mm > shortest && b.edges.some(other => Math.abs(other.mm - mm) < perhapsSewn))
    .length > 1;

/** One piece laid on another by the edge that brings most others with it; undefined where they share no curve or corner. */
function laidOn(over: Shape, under: Shape): Overlay | undefined {
  let most: ReadonlyMap<string, string> = new Map();
  let laid: ((p: Point) => Point) | undefined;
  for (const own of over.edges)
    for (const other of under.edges) {
      if (own.mm < shortest || Math.abs(own.mm - other.mm) > asTraced) continue;
      for (const turned of [false, true]) {
        const map = carriedOn(own.path, other.path, turned);
        const shared = new Map(
          over.edges.flatMap(({ name, path }) => {
            const there = turned ? reversedPath(transformedPath(path, map)) : transformedPath(path, map);
            const on = under.edges.find(edge => liesOn(there, edge.path));
            return on ? [[name, on.name] as const] : [];
          }),
        );
        if (shared.size > most.size && tells(over, shared)) {
          most = shared;
          laid = p => apply(map, p);
        }
      }
    }
  if (!laid || most.size === 0) return undefined;
  const isWhole = most.size === over.edges.length && most.size === under.edges.length;
  return isWhole || isWithin(over, under, laid)
    ? { over: over.piece, under: under.piece, shared: most, isWhole }
    : undefined;
}

/** The map that lays a line on another, end on end; turned over, beginning on end. */
function carriedOn(line: Path, on: Path, turned: boolean) {
  const [from, to] = [pathStart(line), pathEnd(line)];
  if (!turned) return carrying(from, subtract(to, from), pathStart(on), subtract(pathEnd(on), pathStart(on)));
  const over = mirror(at(0, 0), at(0, 1));
  const [a, b] = [apply(over, from), apply(over, to)];
  return compose(over, carrying(b, subtract(a, b), pathStart(on), subtract(pathEnd(on), pathStart(on))));
}

function liesOn(a: Path, b: Path): boolean {
  const [long, other] = [pathLength(a), pathLength(b)];
  return (
    Math.abs(long - other) <= asTraced &&
    [0, 0.25, 0.5, 0.75, 1].every(
      share => distance(pointAlong(a, share * long), pointAlong(b, share * other)) <= asTraced,
    )
  );
}

/** A curve in common, or three lines; two straight ones meet at a right angle on many a piece. */
function tells({ edges }: Shape, shared: ReadonlyMap<string, string>): boolean {
  const own = edges.filter(({ name }) => shared.has(name));
  return (
    own.length > 2 ||
    own.some(({ path, mm }) => mm > shortest && distance(pathStart(path), pathEnd(path)) < straightest * mm)
  );
}

/** Of the places along its outline, so many lie within the other piece. */
const mostlyWithin = 0.7;
function isWithin(over: Shape, under: Shape, laid: (p: Point) => Point): boolean {
  const ring = outlinePath(under.piece.outline);
  const places = over.edges.flatMap(({ path, mm }) =>
    [0.1, 0.5, 0.9].map(share => laid(pointAlong(path, share * mm))),
  );
  const inside = places.filter(p => containsPoint(ring, p) || nearestOnPath(ring, p).distance <= asTraced);
  return inside.length >= mostlyWithin * places.length;
}
