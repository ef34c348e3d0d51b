import {
  type Edge,
  type EdgeRef,
  line,
  type Notch,
  type Path,
  type Piece,
  type PieceLine,
  pathLength,
  pathOf,
  roleOf,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  intersectPaths,
  joined,
  pathEnd,
  pathStart,
  pointAlong,
  reversedPath,
  transformedPath,
} from '@paperhinge/geometry/paths';
import { foldEdgeOf } from '@paperhinge/geometry/pattern';
import { type Affine, add, lerp, mirror, scale, subtract } from '@paperhinge/geometry/plane';
import { grainOrVertical } from '../moved-edges/grain.js';
import { lineThrough, reachOf, startingIn } from '../moved-edges/meet.js';
import type { EndStretch, FacingShape } from './facing-shape.js';
import { titled } from './long-piece.js';

export interface FacingWish {
  readonly name: string;
  readonly shape: FacingShape;
  readonly source: Piece;
  readonly along: readonly EdgeRef[];
  readonly fabric: string;
  /** mm of allowance at ends cut square; ends on other edges have those edges' allowances. */
  readonly join: number;
}

/** An end of a facing that lies on another edge of its source: there facings are joined to one another. */
export interface FacingEnd {
  /** The edge of the facing, and that of the source it lies on. */
  readonly edge: string;
  readonly source: EdgeRef;
  /** The end of the source's edge at which the faced line meets it. */
  readonly corner: 'start' | 'end';
}

/** A facing as it is drafted for one piece or several, not yet laid aside. */
export interface FacingOn {
  readonly piece: Piece;
  /** Its edges that lie on those it was made for, clockwise; `reversed`: that edge runs the other way. */
  readonly faced: readonly { readonly edge: string; readonly source: EdgeRef; readonly reversed: boolean }[];
  readonly ends: readonly FacingEnd[];
  /** Edges that were folds and are sewn to their own mirror image instead. */
  readonly closed: readonly string[];
}

/** A facing: outer edges and ends with the names, kinds and allowances of the source's, and the edge `inner`. */
export function facingOn({ name, shape, source, along, fabric, join }: FacingWish): FacingOn {
  const unused = unusedNames(shape.outer.map(e => e.name));
  const inner = raw(unused('inner'), shape.inner);
  const ends = (stretches: readonly EndStretch[], side: string): readonly Edge[] =>
    stretches.map(({ path, of }) => {
      if (!of) return { ...raw(unused(`end-${side}`), path), kind: 'seam', allowance: join };
      const { opening: _, ...plain } = of.edge;
      return { ...plain, name: unused(plain.name), path };
    });
  const after = ends(shape.afterOuter, 'after'),
    before = ends(shape.beforeOuter, 'before');
  // An end that lies on several edges is joined to nothing.
  const joins = [
    { edges: after, stretches: shape.afterOuter, corner: 'start' as const },
    { edges: before, stretches: shape.beforeOuter, corner: 'end' as const },
  ];
  const piece: Piece = {
    name,
    title: titled(name),
    role: 'facing',
    outline: { parts: [...shape.outer, ...after, inner, ...before] },
    notches: source.notches.filter((n: Notch) => along.some(ref => ref.edge === n.edge)),
    lines: [grainWithin(source, shape)],
    marks: [],
    cutting: cuttingLike(source, fabric),
    madeFor: along,
  };
  return {
    piece,
    faced: [...new Set(shape.outer.map(e => e.name))]
      .filter(edge => along.some(ref => ref.edge === edge))
      .map(edge => ({ edge, source: { piece: source.name, edge }, reversed: false })),
    ends: [
      ...shouldersBetween(shape.outer, along).map(({ edge, corner }) => ({
        edge,
        source: { piece: source.name, edge },
        corner,
      })),
      ...joins.flatMap(({ edges, stretches, corner }) => {
        const lying = stretches.flatMap(({ of }, i) => (of ? [{ name: edges[i]!.name, of: of.edge }] : []));
        const [{ name: edge, of } = { name: '', of: undefined }, ...more] = lying;
        if (more.length > 0 || !of || of.kind === 'fold') return [];
        return [{ edge, source: { piece: source.name, edge: of.name }, corner }];
      }),
    ],
    closed: [],
  };
}

/** Edges of an outer line that are not faced but joined, and which of their ends the seam with the next begins at. */
export function shouldersBetween(
  outer: readonly Edge[],
  along: readonly EdgeRef[],
): readonly { readonly edge: string; readonly corner: 'start' | 'end' }[] {
  return outer.flatMap((edge, i) => {
    if (along.some(ref => ref.edge === edge.name)) return [];
    // From the neck outwards on every piece, however it lies.
    const before = outer[i - 1];
    return [{ edge: edge.name, corner: before && roleOf(before) === 'neck' ? 'start' : 'end' }];
  });
}

/** Gives each name once: `NAME`, then `other NAME`, `other NAME 2` … */
export function unusedNames(given: readonly string[]): (wanted: string) => string {
  const taken = new Set(given);
  return wanted => {
    let free = wanted;
    for (let n = 2; taken.has(free); n++) free = n === 2 ? `other ${wanted}` : `other ${wanted} ${n - 1}`;
    taken.add(free);
    return free;
  };
}

/** A stay: whole, opened at the fold where its source has one, without allowance. */
export function stayPiece({ name, shape, source, along, fabric }: FacingWish): Piece {
  const onFold = (ends: readonly EndStretch[]): boolean => ends.some(e => e.of?.edge.kind === 'fold');
  const outer = joined(...shape.outer.map(e => e.path));
  const fold = foldEdgeOf(source);
  const after = onFold(shape.afterOuter),
    before = onFold(shape.beforeOuter);
  const map =
    fold && (after || before)
      ? mirror(pathStart(fold.path), subtract(pathEnd(fold.path), pathStart(fold.path)))
      : undefined;
  const opened = map ? openedAt(map, after, shape, outer) : closedStay(shape, outer);
  return {
    name,
    title: titled(name),
    role: 'stay',
    outline: { parts: opened },
    notches: [],
    lines: [grainWithin(source, shape)],
    marks: [],
    cutting: { ...cuttingLike(source, fabric), ...(map ? { mirrored: false } : {}) },
    madeFor: along,
  };
}

const raw = (name: string, path: Path): Edge => ({
  type: 'edge',
  name,
  path,
  kind: 'raw',
  allowance: 0,
  corners: {},
});

const pathOfEnds = (ends: readonly EndStretch[]): Path => joined(...ends.map(e => e.path));

const closedStay = (shape: FacingShape, outer: Path): readonly Edge[] => [
  raw('outer', outer),
  raw('end-after', pathOfEnds(shape.afterOuter)),
  raw('inner', shape.inner),
  raw('end-before', pathOfEnds(shape.beforeOuter)),
];

/** Both halves of a stay whose outer line ends (`after`) or begins on the fold. */
function openedAt(map: Affine, after: boolean, shape: FacingShape, outer: Path): readonly Edge[] {
  const image = (path: Path): Path => reversedPath(transformedPath(path, map));
  const through = (first: Path, second: Path): Path => joined(first, startingIn(second, pathEnd(first)));
  const end = pathOfEnds(after ? shape.beforeOuter : shape.afterOuter);
  // Where it is cut across at the fold, the cut is a part of the inner line.
  const cut = (after ? shape.afterOuter : shape.beforeOuter).filter(e => !e.of);
  const inner = after
    ? joined(...cut.map(e => e.path), shape.inner)
    : joined(shape.inner, ...cut.map(e => e.path));
  return after
    ? [
        raw('outer', through(outer, image(outer))),
        raw('end-after', image(end)),
        raw('inner', through(image(inner), inner)),
        raw('end-before', end),
      ]
    : [
        raw('outer', through(image(outer), outer)),
        raw('end-after', end),
        raw('inner', through(inner, image(inner))),
        raw('end-before', image(end)),
      ];
}

const cuttingLike = (source: Piece, fabric: string) => {
  const { count, layers = 1, mirrored } = source.cutting;
  return { count: count / layers, mirrored, fabric };
};

/** A grain line in the source's direction through the middle of the facing. */
function grainWithin(source: Piece, shape: FacingShape): PieceLine {
  const outer = joined(...shape.outer.map(e => e.path));
  const middle = lerp(
    pointAlong(outer, pathLength(outer) / 2),
    pointAlong(shape.inner, pathLength(shape.inner) / 2),
    1 / 2,
  );
  const { grain } = grainOrVertical(source);
  const outline = joined(outer, pathOfEnds(shape.afterOuter), shape.inner, pathOfEnds(shape.beforeOuter));
  const reach = reachOf(outline);
  const places = intersectPaths(lineThrough(middle, grain, reach), outline).map(m => m.alongA - reach);
  const back = Math.max(-reach, ...places.filter(p => p < -tolerances.joiningGap)),
    ahead = Math.min(reach, ...places.filter(p => p > tolerances.joiningGap));
  const from = add(middle, scale(grain, back * 0.8)),
    to = add(middle, scale(grain, ahead * 0.8));
  return { kind: 'grain', name: 'grain', path: pathOf(line(from, to)) };
}
