import { locating } from '../errors.js';
import { pathLength } from '../path/length.js';
import { withoutPoints } from '../path/mended.js';
import { type Path, pathEnd, pathStart } from '../path/path.js';
import type { OutlinePart } from '../pattern/types.js';
import { joiningGap, smoothJoint } from '../tolerance.js';
import { chained, type Strand } from '../trace/chain.js';
import { closingSide, edgesOfClosedPath } from '../trace/closed-outline.js';
import { distance } from '../vector.js';
import { nameOf } from './attribute-values.js';
import type { Item, PieceDrawing } from './gather.js';
import { mostEdges, mostOutlineSegments } from './limits.js';
import { type DrawnStrand, partsOf } from './outline-parts.js';
import type { PieceContext } from './piece-context.js';
import { edgeReader } from './read-edge.js';

export interface OutlineReading {
  readonly parts: readonly OutlinePart[];
  /** Closed dart strokes within the piece (double-pointed darts), which do not open into the outline. */
  readonly innerDarts: readonly InnerDart[];
  /** mm by edge name that the drawn line lies outside the stitching line. */
  readonly included: ReadonlyMap<string, number>;
  /** Where each edge, dart and pleat stands in the file, for errors. */
  readonly offsets: ReadonlyMap<string, number>;
}

interface InnerDart {
  readonly name: string;
  readonly path: Path;
}

/** What grows while the strokes of an outline are sorted. */
interface Sorting {
  readonly context: PieceContext;
  readonly offsets: Map<string, number>;
  readonly strands: DrawnStrand[];
  readonly innerDarts: InnerDart[];
}

/** The outline of a piece, from its edges, darts and pleats in any order and direction or from one closed path. */
export function readOutline(drawing: PieceDrawing, context: PieceContext): OutlineReading {
  const sorting: Sorting = { context, offsets: new Map(), strands: [], innerDarts: [] };
  const of = (...meanings: readonly Item['meaning'][]): readonly Item[] =>
    drawing.items.filter(item => meanings.includes(item.meaning));
  addOutlines(of('outline'), of('edge'), sorting);
  for (const item of of('edge')) addEdge(item, sorting);
  for (const item of of('dart')) addDart(item, sorting);
  for (const item of of('pleat')) addPleat(item, sorting);
  const { strands, innerDarts, offsets } = sorting;
  refuseMasses(strands, context);
  const ring = locating(context.report.where(context.offset, context.owner), () =>
    relocated(offsets, context, () => chained(strands)),
  );
  const included = strands.flatMap(({ name, edge }) => (edge ? [[name, edge.included] as const] : []));
  return { parts: partsOf(ring, context), innerDarts, included: new Map(included), offsets };
}

function addName(name: string, item: Item, { offsets, context }: Sorting): void {
  if (offsets.has(name))
    throw context.report.refuse(
      'duplicate-edge',
      item.element.offset,
      { name },
      { ...context.owner, edge: name },
    );
  offsets.set(name, item.element.offset);
}

function addOutlines(whole: readonly Item[], edges: readonly Item[], sorting: Sorting): void {
  const { context, strands } = sorting;
  const [item, ...others] = whole;
  if (!item) return;
  const { offset } = item.element;
  if (edges.length > 0) throw context.report.refuse('two-outlines', offset, {}, context.owner);
  for (const { element } of others)
    context.report.add('warning', 'second-outline-left-out', element.offset, {}, context.owner);
  for (const strand of locating(context.report.where(offset, context.owner), () =>
    closedEdges(item, context),
  )) {
    addName(strand.name, item, sorting);
    strands.push({ ...strand, item, edge: edgeReader(item, strand.name, context) });
  }
}

function addEdge(item: Item, sorting: Sorting): void {
  const { context, strands } = sorting;
  const name = nameOf(item.element, 'edge', context.report, context.owner);
  addName(name, item, sorting);
  const paths = pathsOf(item);
  if (paths.length === 0) nothingDrawn(item, context, name);
  const edge = edgeReader(item, name, context);
  strands.push(...paths.map(path => ({ name, path, item, edge })));
}

function addDart(item: Item, sorting: Sorting): void {
  const { context, strands, innerDarts } = sorting;
  const name = nameOf(item.element, 'dart', context.report, context.owner);
  addName(name, item, sorting);
  if (pathsOf(item).length === 0) nothingDrawn(item, context, name);
  for (const stroke of item.strokes) {
    const path = withoutPoints({ segments: stroke.segments });
    if (!path) continue;
    // A shape that comes back to where it began is closed, whether its last point says so or not.
    const isClosed = stroke.closed || distance(pathStart(path), pathEnd(path)) <= joiningGap;
    const mouth = isClosed ? openedAtMouth(path, strands) : path;
    if (mouth) strands.push({ name, path: mouth, item });
    else innerDarts.push({ name, path });
  }
}

function addPleat(item: Item, sorting: Sorting): void {
  const { context, strands } = sorting;
  const name = nameOf(item.element, 'pleat', context.report, context.owner);
  addName(name, item, sorting);
  const paths = pathsOf(item);
  if (paths.length === 0) nothingDrawn(item, context, name);
  strands.push(...paths.map(path => ({ name, path, item })));
}

/** Says that what was drawn to mean something draws nothing. */
export const nothingDrawn = (item: Item, { report, owner }: PieceContext, name?: string): void =>
  report.add(
    'warning',
    'nothing-drawn',
    item.element.offset,
    { what: item.meaning, ...(name === undefined ? {} : { name }) },
    owner,
  );

function refuseMasses(strands: readonly DrawnStrand[], { report, owner, offset }: PieceContext): void {
  if (strands.length > mostEdges) throw report.refuse('too-many-edges', offset, { most: mostEdges }, owner);
  if (strands.reduce((n, { path }) => n + path.segments.length, 0) > mostOutlineSegments)
    throw report.refuse('too-many-segments', offset, { of: 'piece', most: mostOutlineSegments }, owner);
  if (!strands.some(strand => strand.edge)) throw report.refuse('piece-without-outline', offset, {}, owner);
}

/** Errors of the chain name an edge; it is looked up where that edge stands in the file. */
function relocated<T>(offsets: ReadonlyMap<string, number>, context: PieceContext, work: () => T): T {
  try {
    return work();
  } catch (error) {
    const edge = (error as { where?: { edge?: string } }).where?.edge;
    const offset = edge === undefined ? undefined : offsets.get(edge);
    if (offset === undefined) throw error;
    return locating(context.report.where(offset, context.owner), () => {
      throw error;
    });
  }
}

const pathsOf = (item: Item): readonly Path[] =>
  item.strokes.flatMap(({ segments }) => (segments.length === 0 ? [] : (withoutPoints({ segments }) ?? [])));

function closedEdges(item: Item, { report, sheet, owner }: PieceContext): readonly Strand[] {
  const { offset } = item.element;
  const paths = item.strokes.filter(s => s.segments.length > 0);
  const sizes = paths.map(pathLength);
  const longest = paths[sizes.indexOf(Math.max(...sizes))];
  if (!longest) throw report.refuse('piece-without-outline', offset, {}, owner);
  if (paths.length > 1)
    report.add('warning', 'inner-outline-left-out', offset, { count: paths.length - 1 }, owner);
  const path = { segments: longest.segments };
  const edges = edgesOfClosedPath(path, sheet?.edges);
  const lengthMm = closingSide(path);
  if (lengthMm !== undefined && lengthMm > smoothJoint)
    report.add('note', 'short-side-dropped', offset, { lengthMm }, owner);
  const names = edges.map(edge => edge.name);
  for (const told of [sheet?.kinds, sheet?.roles]) {
    const name = Object.keys(told ?? {}).find(n => !names.includes(n));
    if (name !== undefined)
      throw report.refuse(
        'unknown-edge',
        offset,
        { piece: owner.piece, name, names },
        { ...owner, edge: name },
      );
  }
  return edges;
}

/**
 * A dart drawn as a closed triangle, without the side across its mouth; `undefined` where that side does not reach
 * from edge to edge: then the dart lies within the piece.
 */
function openedAtMouth(path: Path, strands: readonly Strand[]): Path | undefined {
  const strokeEnds = strands.flatMap(s => [pathStart(s.path), pathEnd(s.path)]);
  const opened = { segments: path.segments.slice(0, -1) };
  if (opened.segments.length < 2) return undefined;
  const meets = [pathStart(opened), pathEnd(opened)].every(p =>
    strokeEnds.some(end => distance(p, end) <= joiningGap),
  );
  return meets ? opened : undefined;
}
