import type { EdgeKind, EdgeRole, LineKind, NotchStyle } from '@paperhinge/geometry';
import { notchWords } from '@paperhinge/geometry/pattern';
import type { MeasuredEdge, MeasuredLine, MeasuredPiece, MeasuredPoint } from '@paperhinge/geometry/trace';
import type { Tree } from './document.js';
import { length, signedLength, size } from './fields/figures.js';
import { type Kind, tell } from './fields/kind.js';
import { choice, digitsToo, name } from './fields/names.js';
import { byForm, mapping, named, needed, oneOrMore, optional, pairOf, turnedInto } from './fields/shapes.js';

// A piece read off paper with ruler, square and tape: `points`, and what runs through them.

const lineKinds = [
  'level',
  'lengthen-shorten',
  'placement',
  'style',
  'fold',
] as const satisfies readonly LineKind[];
const edgeEnds = ['square', 'smooth'] as const;

/** Points of a draft are often numbered. */
const pointName = digitsToo(name);
const points = oneOrMore(pointName);

const isList = (tree: Tree): boolean => tree.kind === 'list';
const has = (tree: Tree, key: string): boolean => tree.kind === 'mapping' && tree.entries.has(key);

const coordinates = turnedInto(pairOf(signedLength), ([x, y]): MeasuredPoint => ({ x, y }));
const byDistances = mapping({
  from: needed(named(size)),
  towards: optional(choice(['up', 'down', 'left', 'right'])),
});
const mirrored = mapping({ mirror: needed(pointName), over: needed(pairOf(pointName)) });
const neither: Kind<MeasuredPoint> = {
  schema: {},
  read: (_, at) => tell(at, 'point-not-understood', {}),
};

/** Where a point lies. */
const pointKind: Kind<MeasuredPoint> = byForm(
  isList,
  coordinates,
  byForm(
    tree => has(tree, 'from'),
    byDistances,
    byForm(tree => has(tree, 'mirror'), mirrored, neither),
  ),
);

const edgeKind = byForm(
  isList,
  turnedInto(points, (through): EdgeRead => ({ through })),
  mapping({
    through: needed(points),
    starts: optional(choice(edgeEnds)),
    ends: optional(choice(edgeEnds)),
    length: optional(length({ over: true })),
  }) as Kind<EdgeRead>,
);
type EdgeRead = Omit<MeasuredEdge, 'name' | 'kind' | 'role'>;

const lineKind = byForm(
  isList,
  turnedInto(points, (through): LineRead => ({ through, kind: 'level' })),
  mapping({ through: needed(points), kind: needed(choice(lineKinds)) }) as Kind<LineRead>,
);
type LineRead = Pick<MeasuredLine, 'through' | 'kind'>;

/** The edges of a measured piece, by the points that they run through. */
export const measuredEdges: Kind<Readonly<Record<string, EdgeRead>>> = named(edgeKind);

/** What only a measured piece has. */
export const measuredMembers = {
  points: optional(named(pointKind)),
  darts: optional(named(points)),
  lines: optional(named(lineKind)),
  grain: optional(points),
  notches: optional(named(choice(notchWords))),
  marks: optional(named(pointName)),
};

/** What was read of a piece that is measured. */
interface MeasuredRead {
  readonly points?: Readonly<Record<string, MeasuredPoint>>;
  readonly darts?: Readonly<Record<string, readonly string[]>>;
  readonly lines?: Readonly<Record<string, LineRead>>;
  readonly grain?: readonly string[];
  readonly notches?: Readonly<Record<string, NotchStyle>>;
  readonly marks?: Readonly<Record<string, string>>;
  readonly kinds?: Readonly<Record<string, EdgeKind>>;
  readonly roles?: Readonly<Record<string, EdgeRole>>;
}

/** The points, edges and what lies within of a measured piece, as geometry has them. */
export function measuredOf(
  read: MeasuredRead,
  edges: Readonly<Record<string, EdgeRead>>,
): Pick<MeasuredPiece, 'points' | 'edges' | 'darts' | 'lines' | 'notches' | 'marks'> {
  const { points: places = {}, darts = {}, lines = {}, grain, notches = {}, marks = {} } = read;
  return {
    points: places,
    edges: Object.entries(edges).map(([edge, of]): MeasuredEdge => {
      const kind = read.kinds?.[edge],
        role = read.roles?.[edge];
      return { name: edge, ...of, ...(kind ? { kind } : {}), ...(role ? { role } : {}) };
    }),
    darts: Object.entries(darts).map(([dart, of]) => ({ name: dart, points: of })),
    lines: [
      ...(grain ? [{ name: 'grain', kind: 'grain' as const, through: grain }] : []),
      ...Object.entries(lines).map(([line, of]) => ({ name: line, ...of })),
    ],
    notches: Object.entries(notches).map(([at, style]) => ({ at, style })),
    marks: Object.entries(marks).map(([mark, at]) => ({ name: mark, at })),
  };
}
