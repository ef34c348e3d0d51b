import {
  type Dart,
  type Edge,
  edgeNames,
  edgePath,
  type OutlinePart,
  type Path,
  type Piece,
  type Pleat,
  type Point,
  pathLength,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { joined, pathEnd, pathStart, subpath } from '@paperhinge/geometry/paths';
import { pathsOfPart } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';
import type { Became, EdgeSpan, SpanBecame } from '../became/became.js';
import { thingsOn } from '../became/by-names.js';
import { carriedNotches } from '../became/parts.js';
import { endingAt } from '../hinge/ends.js';
import { partOffsets } from '../hinge/ring.js';
import { ringGroups } from '../hinge/ring-groups.js';
import { refusal } from '../hinge/tellings.js';
import type { Reshaped } from './chains.js';

/** A run of an outline that is put together anew: cloth of an old edge, or a line drawn afresh. */
export interface Run {
  readonly type: 'run';
  /** What the edge is called and how it is treated; its path does not count. */
  readonly edge: Edge;
  readonly path: Path;
  /** The stretch of an old edge that it is; absent: a new line. */
  readonly was?: EdgeSpan;
  /** It stands in the place of `was`, but is no longer the same cloth. */
  readonly redrawn?: true;
  /** It runs the other way now, as on a piece turned over. */
  readonly turned?: true;
}
/** What stands in an outline that is put together anew, clockwise. */
export type Item = Run | Dart | Pleat;

/** A piece's outline as items, each where it is. */
export function itemsOf(piece: Piece): readonly Item[] {
  const offsets = partOffsets(piece);
  return piece.outline.parts.map((part): Item => {
    if (part.type !== 'edge') return part;
    const from = offsets.get(part)!;
    const was = { piece: piece.name, edge: part.name, from, to: from + pathLength(part.path) };
    return { type: 'run', edge: part, path: part.path, was };
  });
}

/** The part of a run between two places, mm from its start. */
export function partOfRun(run: Run, from: number, to: number): Run {
  const { was } = run;
  const length = pathLength(run.path);
  if (from <= near && to >= length - near) return run;
  const path = subpath(run.path, Math.max(from, 0), to >= length - near ? Number.POSITIVE_INFINITY : to);
  const end = Math.min(to, length);
  return { ...run, path, ...(was ? { was: { ...was, from: was.from + from, to: was.from + end } } : {}) };
}

const near = tolerances.coincidenceTolerance;

/** A ring put together, and what became of the edges its runs came from. */
export interface Composed {
  readonly parts: readonly OutlinePart[];
  readonly spans: readonly SpanBecame[];
}

/**
 * Puts items together to one ring: runs of one edge that follow each other become one part, and neighbours share
 * their point exactly. Old stretches keep their places within rounding.
 *
 * @throws PatternError `outline-open` where neighbours do not meet
 */
export function composed(piece: Piece, items: readonly Item[]): Composed {
  const welded = items.map((item, i): Item => weldedTo(items[(i + 1) % items.length]!, item));
  const groups = ringGroups(
    welded,
    (a, b) => a.type === 'run' && b.type === 'run' && a.edge.name === b.edge.name,
  );
  const found = groups.map(group => ({
    part: partOf(group),
    group,
  }));
  // Places on an edge count from its true start, also where the list begins within it.
  const offsets = partOffsets({ ...piece, outline: { parts: found.map(f => f.part) } });
  const spans = found.flatMap(({ part, group }): readonly SpanBecame[] => {
    if (part.type !== 'edge') return [];
    let along = offsets.get(part)!;
    return group.flatMap((item): readonly SpanBecame[] => {
      if (item.type !== 'run') return [];
      const from = along;
      along += pathLength(item.path);
      const { was } = item;
      if (!was) return [];
      const length = was.to - was.from;
      const to = Math.abs(along - from - length) <= near ? from + length : along;
      const [low, high] = item.turned ? [to, from] : [from, to];
      const now = { piece: piece.name, edge: part.name, from: low, to: high };
      return [{ was, now, ...(item.redrawn ? { redrawn: true as const } : {}) }];
    });
  });
  return { parts: found.map(f => f.part), spans };
}

function partOf(group: readonly Item[]): OutlinePart {
  const first = group[0]!,
    last = group.at(-1)!;
  if (first.type !== 'run') return first;
  if (last.type !== 'run') throw new Error('Only runs of one edge are grouped.');
  if (group.length === 1 && first.path === first.edge.path) return first.edge;
  const { start } = first.edge.corners,
    { end } = last.edge.corners;
  const corners = { ...(start ? { start } : {}), ...(end ? { end } : {}) };
  const path = group.length === 1 ? first.path : joined(...group.map(item => (item as Run).path));
  return { ...first.edge, path, corners };
}

const startOf = (item: Item): Point => pathStart(item.type === 'run' ? item.path : pathsOfPart(item)[0]!);
const endOf = (item: Item): Point => pathEnd(item.type === 'run' ? item.path : pathsOfPart(item).at(-1)!);

/** An item that ends exactly where the next begins. */
function weldedTo(next: Item, item: Item): Item {
  const end = endOf(item),
    start = startOf(next);
  const gapMm = distance(end, start);
  if (gapMm === 0) return item;
  if (gapMm > tolerances.joiningGap) throw refusal('outline-open', { gapMm });
  if (item.type === 'run') return { ...item, path: endingAt(item.path, start) };
  if (item.type === 'pleat') return { ...item, mouth: endingAt(item.mouth, start) };
  return { ...item, legs: [item.legs[0], endingAt(item.legs[1], start)] };
}

/** Edges, darts, pleats, lines and marks of a piece that no new piece has any more. */
export function goneFrom(
  before: Piece,
  spans: readonly SpanBecame[],
  after: readonly Piece[],
): Pick<Became, 'edges' | 'things'> {
  const covered = new Set(spans.flatMap(({ was }) => (was.piece === before.name ? [was.edge] : [])));
  const edges = edgeNames(before)
    .filter(edge => !covered.has(edge))
    .map(edge => ({ was: { piece: before.name, edge, from: 0, to: pathLength(edgePath(before, edge)) } }));
  const kinds = ['dart', 'pleat', 'line', 'mark'] as const;
  const left = new Set(
    after.flatMap(piece => thingsOn(piece).flatMap(thing => kinds.map(kind => `${kind} ${thing[kind]}`))),
  );
  const things = thingsOn(before)
    .filter(thing => kinds.some(kind => thing[kind] !== undefined && !left.has(`${kind} ${thing[kind]}`)))
    .map(was => ({ was }));
  return { edges, things };
}

/** A piece with its outline put together anew; notches go where their cloth lies now. */
export function recomposed(piece: Piece, items: readonly Item[]): Reshaped {
  const { parts, spans } = composed(piece, items);
  const drawn: Piece = { ...piece, outline: { parts } };
  const gone = goneFrom(piece, spans, [drawn]);
  const became = { edges: [...spans, ...gone.edges], things: gone.things };
  return { piece: { ...drawn, notches: carriedNotches(piece, became) }, became, findings: [] };
}
