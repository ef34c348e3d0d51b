import type { Cutting, EdgeKind, EdgeRole, Finish, PieceRole } from '@paperhinge/geometry';
import { edgeKinds, edgeRoles, finishes, type NewNames, pieceRoles } from '@paperhinge/geometry/pattern';
import type { MeasuredPiece } from '@paperhinge/geometry/trace';
import type { Tree } from './document.js';
import { allowance, count, length, size } from './fields/figures.js';
import type { Kind } from './fields/kind.js';
import { choice, name, yesOrNo } from './fields/names.js';
import { byForm, mapping, named, oneOrMore, optional, turnedInto } from './fields/shapes.js';
import { mostCopies } from './limits.js';
import { measuredEdges, measuredMembers, measuredOf } from './measured-fields.js';

/** What a sheet says of a piece beside what its drawing says. Lengths in mm; edges by their names. */
export interface PieceFacts {
  readonly role?: PieceRole;
  readonly title?: string;
  readonly cutting: Partial<Cutting>;
  readonly alsoCut?: readonly Cutting[];
  readonly greatestStretch?: 'across' | 'along';
  readonly edges: Readonly<Record<string, EdgeFacts>>;
}
/** What a sheet says of an edge. */
export interface EdgeFacts {
  readonly role?: EdgeRole;
  readonly kind?: EdgeKind;
  readonly finish?: Finish;
  readonly topstitch?: number;
  readonly interfacing?: number;
}

const isMapping = (tree: Tree): boolean => tree.kind === 'mapping';

/** How many of which cloth: `{ lining: 2, interfacing: 1 }`, or `{ lining: { count: 2, layers: 2 } }`. */
const alsoCut = named(
  byForm(
    isMapping,
    mapping({
      count: optional(count(mostCopies)),
      mirrored: optional(yesOrNo),
      layers: optional(count(mostCopies)),
      'right side up': optional(yesOrNo),
      note: optional(name),
    }),
    turnedInto(count(mostCopies), n => ({ count: n })),
  ),
);

/**
 * What may be said of a piece. With `outline` it is drawn as one closed path, and its `edges` are named here; with
 * `points` it was measured on paper, and its `edges` run through them; with neither it is a piece of the drawing, what is
 * said is laid over it, and `name` and `edges` call it and its edges otherwise.
 */
export const pieceKind = mapping({
  name: optional(name),
  outline: optional(name),
  edges: optional(byForm(isMapping, measuredEdges, oneOrMore(name))),
  ...measuredMembers,
  'line drawn': optional(choice(['stitching', 'cutting'])),
  'included allowance': optional(allowance),
  allowance: optional(allowance),
  role: optional(choice(pieceRoles)),
  title: optional(name),
  fabric: optional(name),
  cut: optional(count(mostCopies)),
  mirrored: optional(yesOrNo),
  layers: optional(count(mostCopies)),
  'right side up': optional(yesOrNo),
  'also cut': optional(alsoCut),
  stretch: optional(choice(['across', 'along'])),
  kinds: optional(named(choice(edgeKinds))),
  roles: optional(named(choice(edgeRoles))),
  finish: optional(named(choice(finishes))),
  topstitch: optional(named(length())),
  interfacing: optional(named(size)),
});
type PieceRead = typeof pieceKind extends Kind<infer T> ? T : never;

/** How a drawing of closed paths is read as this piece; undefined where it is drawn as a piece. */
export function outlineOf(read: PieceRead) {
  const { outline, edges, allowance: width, role, title, fabric, cut, mirrored, kinds: of, roles } = read;
  if (outline === undefined || read.points) return undefined;
  return present({
    outline,
    edges: edges !== undefined && isNames(edges) ? edges : undefined,
    kinds: of,
    roles,
    role,
    allowance: width,
    title,
    fabric,
    cut,
    mirrored,
    lineDrawn: read['line drawn'],
    includedAllowance: read['included allowance'],
  }) as { outline: string };
}

/** A piece that was measured on paper; undefined where its points are not given. */
export function measuredPieceOf(name: string, read: PieceRead): MeasuredPiece | undefined {
  const { edges, points } = read;
  if (points === undefined) return undefined;
  const own = edges === undefined || isNames(edges) ? {} : edges;
  const onCutting = read['line drawn'] === 'cutting';
  return {
    name,
    ...measuredOf(read, own),
    cutting: cuttingTold(read),
    ...present({
      title: read.title,
      role: read.role,
      allowance: read.allowance,
      includedAllowance: onCutting ? (read['included allowance'] ?? read.allowance) : undefined,
    }),
  };
}
const isNames = (edges: NonNullable<PieceRead['edges']>): edges is readonly string[] => Array.isArray(edges);

/** What a piece of the drawing and its edges are called from now on; undefined where they keep their names. */
export function newNamesOf({ name: own, edges, outline, points }: PieceRead): NewNames | undefined {
  if (outline !== undefined || points !== undefined) return undefined;
  const told = edges !== undefined && isNames(edges) ? edges : undefined;
  return own === undefined && told === undefined ? undefined : present({ name: own, edges: told });
}

/** What is laid over the piece once it is read. */
export function factsOf(read: PieceRead): PieceFacts {
  const names = [read.kinds, read.roles, read.finish, read.topstitch, read.interfacing].flatMap(of =>
    Object.keys(of ?? {}),
  );
  const edges = [...new Set(names)].map(edge => [
    edge,
    present({
      kind: read.kinds?.[edge],
      role: read.roles?.[edge],
      finish: read.finish?.[edge],
      topstitch: read.topstitch?.[edge],
      interfacing: read.interfacing?.[edge],
    }),
  ]);
  const also = Object.entries(read['also cut'] ?? {}).map(([fabric, cut]) => cuttingOf(fabric, cut));
  return {
    ...present({ role: read.role, title: read.title, greatestStretch: read.stretch }),
    ...(read['also cut'] === undefined ? {} : { alsoCut: also }),
    cutting: cuttingTold(read),
    edges: Object.fromEntries(edges),
  };
}

const cuttingTold = (read: PieceRead): Partial<Cutting> =>
  present({
    fabric: read.fabric,
    count: read.cut,
    mirrored: read.mirrored,
    layers: read.layers,
    rightSideUp: read['right side up'],
  });

type AlsoCut = typeof alsoCut extends Kind<Readonly<Record<string, infer T>>> ? T : never;
function cuttingOf(fabric: string, cut: AlsoCut): Cutting {
  const { count: n = 1, mirrored = n % 2 === 0, layers, note, 'right side up': rightSideUp } = asRead(cut);
  return { fabric, count: n, mirrored, ...present({ layers, note, rightSideUp }) };
}
interface CutRead {
  readonly count?: number;
  readonly mirrored?: boolean;
  readonly layers?: number;
  readonly note?: string;
  readonly 'right side up'?: boolean;
}
const asRead = (cut: AlsoCut): CutRead => cut;

type Present<T> = { [K in keyof T]?: Exclude<T[K], undefined> };
const present = <T extends object>(fields: T): Present<T> =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Present<T>;
