import { locating } from '../errors.js';
import { quoted, suggestion } from '../naming.js';
import { pathLength } from '../path/length.js';
import { joined, type Path, pathEnd, pathStart } from '../path/path.js';
import type { Dart, Edge, OutlinePart } from '../pattern/types.js';
import { coincidenceTolerance, dartLegTolerance, joiningGap } from '../tolerance.js';
import { chained, type Strand } from '../trace/chain.js';
import { withoutPoints } from '../trace/clean.js';
import { edgesOfClosedPath } from '../trace/closed-outline.js';
import { dartLegs } from '../trace/dart-legs.js';
import { distance } from '../vector.js';
import { nameOf, wordOf } from './attribute-values.js';
import type { Item, PieceDrawing } from './gather.js';
import { mostEdges, mostOutlineSegments } from './limits.js';
import { type EdgeReader, edgeReader } from './read-edge.js';
import type { PieceContext } from './read-piece.js';
import { pressings } from './vocabulary.js';

export interface OutlineReading {
  readonly parts: readonly OutlinePart[];
  /** Closed dart strokes within the piece (double-pointed darts), which do not open into the outline. */
  readonly innerDarts: readonly { readonly name: string; readonly path: Path }[];
  /** mm by edge name that the drawn line lies outside the stitching line. */
  readonly included: ReadonlyMap<string, number>;
  /** Where each edge and dart stands in the file, for errors. */
  readonly offsets: ReadonlyMap<string, number>;
}

interface DrawnStrand extends Strand {
  readonly item: Item;
  readonly edge?: EdgeReader;
}

/** The outline of a piece, from its edges and darts in any order and direction or from one closed path. */
export function readOutline(drawing: PieceDrawing, context: PieceContext): OutlineReading {
  const offsets = new Map<string, number>();
  const edges = drawing.items.filter(item => item.meaning === 'edge');
  const whole = drawing.items.filter(item => item.meaning === 'outline');
  if (whole.length > 0 && edges.length > 0)
    throw context.error('two-outlines', whole[0]!.element.offset, {
      message: 'The piece has both edges and a closed outline.',
      remedy: 'Keep the edges (data-edge) or the closed path (data-outline), not both.',
    });
  const strands: DrawnStrand[] = [];
  const add = (name: string, item: Item): void => {
    if (offsets.has(name))
      throw context.error('duplicate-edge', item.element.offset, {
        message: `Two edges or darts are called ${quoted(name)}.`,
        remedy: 'Give each a name of its own; an edge that a dart interrupts is one path of two strokes.',
        edge: name,
      });
    offsets.set(name, item.element.offset);
  };
  if (whole.length > 0) {
    const item = whole[0]!;
    for (const extra of whole.slice(1)) leftOut(extra, context);
    for (const strand of locating(context.where(item.element.offset), () => closedEdges(item, context))) {
      add(strand.name, item);
      strands.push({ ...strand, item, edge: edgeReader(item, strand.name, context) });
    }
  }
  for (const item of edges) {
    const name = nameOf(item.element, 'data-edge', context.report, context.owner);
    add(name, item);
    const edge = edgeReader(item, name, context);
    strands.push(...pathsOf(item).map(path => ({ name, path, item, edge })));
  }
  const innerDarts: { name: string; path: Path }[] = [];
  for (const item of drawing.items.filter(i => i.meaning === 'dart')) {
    const name = nameOf(item.element, 'data-dart', context.report, context.owner);
    add(name, item);
    for (const stroke of item.strokes) {
      const path = withoutPoints({ segments: stroke.segments });
      if (!path) continue;
      const mouth = stroke.closed ? openedAtMouth(path, strands) : path;
      if (mouth) strands.push({ name, path: mouth, item });
      else innerDarts.push({ name, path });
    }
  }
  if (strands.length > mostEdges)
    throw context.error('too-many-edges', context.offset, {
      message: `The piece has over ${mostEdges} edges.`,
      remedy: 'Join edges that are sewn as one.',
    });
  if (strands.reduce((n, { path }) => n + path.segments.length, 0) > mostOutlineSegments)
    throw context.error('too-many-segments', context.offset, {
      message: `The outline of the piece has over ${mostOutlineSegments} segments.`,
      remedy: 'Simplify its paths in the drawing program.',
    });
  if (!strands.some(strand => strand.edge))
    throw context.error('piece-without-outline', context.offset, {
      message: 'The piece has no edges.',
      remedy: 'Mark its edges with data-edge, or one closed path with data-outline.',
    });
  const ring = locating(context.where(context.offset), () =>
    relocated(offsets, context, () => chained(strands)),
  );
  return { parts: partsOf(ring, context), innerDarts, included: includedIn(strands), offsets };
}

const includedIn = (strands: readonly DrawnStrand[]): ReadonlyMap<string, number> =>
  new Map(strands.flatMap(({ name, edge }) => (edge ? [[name, edge.included] as const] : [])));

/** Errors of the chain name an edge; it is looked up where that edge stands in the file. */
function relocated<T>(offsets: ReadonlyMap<string, number>, context: PieceContext, work: () => T): T {
  try {
    return work();
  } catch (error) {
    const edge = (error as { where?: { edge?: string } }).where?.edge;
    const offset = edge === undefined ? undefined : offsets.get(edge);
    if (offset === undefined) throw error;
    return locating(context.where(offset), () => {
      throw error;
    });
  }
}

const pathsOf = (item: Item): readonly Path[] =>
  item.strokes.flatMap(({ segments }) => (segments.length === 0 ? [] : (withoutPoints({ segments }) ?? [])));

function closedEdges(item: Item, context: PieceContext): readonly Strand[] {
  const paths = item.strokes.filter(s => s.segments.length > 0);
  const sizes = paths.map(pathLength);
  const longest = paths[sizes.indexOf(Math.max(...sizes))];
  if (!longest)
    throw context.error('piece-without-outline', item.element.offset, {
      message: 'The outline of the piece draws nothing.',
      remedy: 'Mark a closed path.',
    });
  if (paths.length > 1)
    context.report.add('warning', 'inner-outline-left-out', item.element.offset, {
      message: `The outline has ${paths.length} strokes; all but the longest were left out.`,
      remedy: 'Draw slits and holes as lines (data-line="placement").',
      ...context.owner,
    });
  const edges = edgesOfClosedPath({ segments: longest.segments }, context.sheet?.edges);
  const names = edges.map(edge => edge.name);
  const unknown = Object.keys(context.sheet?.kinds ?? {}).find(name => !names.includes(name));
  if (unknown !== undefined)
    throw context.error('unknown-edge', item.element.offset, {
      message: `The sheet gives a kind to ${quoted(unknown)}, which is not an edge of this outline.`,
      remedy: suggestion(unknown, names, 'edges'),
      edge: unknown,
    });
  return edges;
}

/**
 * A dart drawn as a closed triangle, without the side across its mouth; `undefined` where that side does not reach
 * from edge to edge: then the dart lies within the piece.
 */
function openedAtMouth(path: Path, strands: readonly Strand[]): Path | undefined {
  const ends = strands.flatMap(s => [pathStart(s.path), pathEnd(s.path)]);
  const opened = { segments: path.segments.slice(0, -1) };
  if (opened.segments.length < 2) return undefined;
  const meets = [pathStart(opened), pathEnd(opened)].every(p =>
    ends.some(end => distance(p, end) <= joiningGap),
  );
  return meets ? opened : undefined;
}

/** Edges and darts of the ring; strokes of one edge that follow each other become one part. */
function partsOf(ring: readonly DrawnStrand[], context: PieceContext): readonly OutlinePart[] {
  const merged: DrawnStrand[] = [];
  for (const strand of ring) {
    const last = merged.at(-1);
    if (last?.edge && last.item === strand.item && last.name === strand.name)
      merged[merged.length - 1] = { ...last, path: joined(last.path, strand.path) };
    else merged.push(strand);
  }
  const last = merged.at(-1)!,
    first = merged[0]!;
  if (merged.length > 1 && last.edge && last.item === first.item && last.name === first.name) {
    merged[0] = { ...first, path: joined(last.path, first.path) };
    merged.pop();
  }
  return fromTrueStart(
    merged.map(strand => (strand.edge ? edgePart(strand, strand.edge) : dartPart(strand, context))),
  );
}

/** The list begins with the first edge's own start, also where a dart interrupts that edge. */
function fromTrueStart(parts: readonly OutlinePart[]): readonly OutlinePart[] {
  const name = parts[0]!.name;
  let start = 0;
  const isDart = (i: number): boolean => parts[i]!.type === 'dart';
  const previous = (i: number): number => (i + parts.length - 1) % parts.length;
  const before = (i: number): number => {
    let between = previous(i);
    while (isDart(between) && isDart(previous(between))) between = previous(between);
    return previous(between);
  };
  for (let i = before(0); parts.length > 3 && parts[i]!.name === name && i !== 0; i = before(i)) start = i;
  return [...parts.slice(start), ...parts.slice(0, start)];
}

const edgePart = ({ name, path }: DrawnStrand, { attributes }: EdgeReader): Edge => ({
  type: 'edge',
  name,
  path,
  ...attributes,
});

function dartPart({ name, path, item }: DrawnStrand, context: PieceContext): Dart {
  const owner = { ...context.owner, edge: name };
  const { legs, apex } = locating({ ...context.where(item.element.offset), edge: name }, () =>
    dartLegs(path),
  );
  const [a, b] = legs.map(pathLength) as [number, number];
  const differenceMm = Math.abs(a - b);
  if (differenceMm > dartLegTolerance)
    throw context.error('dart-legs-differ', item.element.offset, {
      message: `The legs of the dart ${quoted(name)} differ by ${differenceMm.toFixed(1)} mm (${a.toFixed(1)} and ${b.toFixed(1)} mm).`,
      remedy: `Draw them equally long, within ${dartLegTolerance} mm.`,
      edge: name,
    });
  if (differenceMm > joiningGap + coincidenceTolerance)
    context.report.add('note', 'dart-legs-differ', item.element.offset, {
      message: `The legs of the dart ${quoted(name)} differ by ${differenceMm.toFixed(2)} mm; they are read as drawn.`,
      figures: { differenceMm, firstMm: a, secondMm: b },
      remedy: 'Sewn, its ends will step by that much; draw the legs equally long.',
      ...owner,
    });
  const pressed = wordOf(item.element, 'data-pressed', pressings, context.report, owner);
  return { type: 'dart', name, legs, apex, ...(pressed ? { pressed } : {}) };
}

function leftOut(item: Item, context: PieceContext): void {
  context.report.add('warning', 'second-outline-left-out', item.element.offset, {
    message: 'The piece has a second closed outline, which was left out.',
    remedy: 'Give it a piece of its own.',
    ...context.owner,
  });
}
