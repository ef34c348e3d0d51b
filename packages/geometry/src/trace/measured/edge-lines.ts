import { requireDistance } from '../../curve/sound.js';
import { fuller, lineDrawnTo } from '../../path/curve-of-length.js';
import { fairLine } from '../../path/fair-line.js';
import { pathLength } from '../../path/length.js';
import { endTangent, joined, type Path, startTangent } from '../../path/path.js';
import type { Finding } from '../../telling.js';

import { readByHand } from '../../tolerance.js';
import { dot, type Point, rightOf, scale, subtract } from '../../vector.js';
import { finding, refusal } from './tellings.js';
import type { EdgeEnd, MeasuredDart, MeasuredEdge, MeasuredPiece } from './types.js';

/** A stretch of an edge without a break: from one dart's mouth or corner to the next. */
export interface Stretch {
  readonly edge: MeasuredEdge;
  /** The points it runs through, by name. */
  readonly through: readonly string[];
}

/** What stands in an outline, in its order. */
export type RingPart = Stretch | { readonly dart: MeasuredDart; readonly mouth: readonly [string, string] };

/**
 * The edges once round, cut where a dart's mouth lies between two of their points; a dart may also lie between the end
 * of one edge and the beginning of the next.
 * @throws PatternError `edge-of-one-point`, `edges-do-not-meet`, `dart-off-its-edge`
 */
export function ringOf({ name: piece, edges, darts = [] }: MeasuredPiece): readonly RingPart[] {
  const open = darts.filter(({ points }) => points.length === 3);
  const mouthOf = (a: string, b: string): RingPart | undefined => {
    const dart = open.find(({ points }) => ends(points, a, b) || ends(points, b, a));
    return dart && { dart, mouth: [a, b] };
  };
  const ring = edges.flatMap((edge, i): readonly RingPart[] => {
    if (edge.through.length < 2) throw refusal('edge-of-one-point', { edge: { piece, edge: edge.name } });
    const next = edges[(i + 1) % edges.length]!;
    const [last, first] = [edge.through.at(-1)!, next.through[0] ?? ''];
    const own = cutAtMouths(edge, mouthOf);
    if (last === first) return own;
    const between = mouthOf(last, first);
    if (between) return [...own, between];
    const both = [edge, next].map(e => ({ piece, edge: e.name }));
    throw refusal('edges-do-not-meet', { edges: both, points: [last, first] });
  });
  const missed = open.find(dart => !ring.some(part => 'dart' in part && part.dart === dart));
  if (missed)
    throw refusal('dart-off-its-edge', {
      dart: { piece, dart: missed.name },
      points: [missed.points[0]!, missed.points[2]!],
    });
  return ring;
}

const ends = (points: readonly string[], first: string, last: string): boolean =>
  points[0] === first && points.at(-1) === last;

function cutAtMouths(
  edge: MeasuredEdge,
  mouthOf: (a: string, b: string) => RingPart | undefined,
): readonly RingPart[] {
  const ring: RingPart[] = [];
  let through: string[] = [];
  for (const name of edge.through) {
    const mouth = through.length > 0 ? mouthOf(through.at(-1)!, name) : undefined;
    if (mouth) {
      if (through.length > 1) ring.push({ edge, through });
      ring.push(mouth);
      through = [];
    }
    through.push(name);
  }
  if (through.length > 1) ring.push({ edge, through });
  return ring;
}

/**
 * The line of each stretch of a ring. Where an end says how it meets its neighbour, the neighbour is drawn first.
 * @throws PatternError `nothing-to-meet` beside a dart; `edges-wait-for-one-another`
 */
export function linesOf(
  piece: string,
  ring: readonly RingPart[],
  placeOf: (name: string) => Point,
): ReadonlyMap<Stretch, Path> {
  const lines = new Map<Stretch, Path>();
  const lineAt = (index: number, waiting: readonly Stretch[]): Path => {
    const part = ring[(index + ring.length) % ring.length]!;
    const stretch = 'dart' in part ? undefined : part;
    const asking = waiting.at(-1);
    if (!stretch) throw refusal('nothing-to-meet', { edge: { piece, edge: asking!.edge.name } });
    const known = lines.get(stretch);
    if (known) return known;
    if (waiting.includes(stretch))
      throw refusal('edges-wait-for-one-another', {
        edges: waiting.map(s => ({ piece, edge: s.edge.name })),
      });
    const places = stretch.through.map(placeOf);
    const { starts, ends: ending } = wishesOf(stretch);
    const next = [...waiting, stretch];
    const first =
      starts && directionAt(starts, endTangent(lineAt(index - 1, next)), subtract(places[1]!, places[0]!));
    const last =
      ending &&
      directionAt(ending, startTangent(lineAt(index + 1, next)), subtract(places.at(-1)!, places.at(-2)!));
    const line = drawn(stretch, fairLine(places, first, last));
    lines.set(stretch, line);
    return line;
  };
  ring.forEach((part, i) => {
    if (!('dart' in part)) lineAt(i, []);
  });
  return lines;
}

/** How an edge begins and ends holds for its first stretch and its last. */
const wishesOf = ({ edge, through }: Stretch): Pick<MeasuredEdge, 'starts' | 'ends'> => ({
  ...(edge.starts && through[0] === edge.through[0] ? { starts: edge.starts } : {}),
  ...(edge.ends && through.at(-1) === edge.through.at(-1) ? { ends: edge.ends } : {}),
});

/** On from the neighbour, or at a right angle to it on the side to which the edge goes. */
function directionAt(end: EdgeEnd, neighbour: Point, way: Point): Point {
  if (end === 'smooth') return neighbour;
  const across = rightOf(neighbour);
  return dot(across, way) >= 0 ? across : scale(across, -1);
}

/**
 * An undivided curve is drawn to its measured length as far as it stays fair; beyond that, and where it is straight, it
 * has the length that its points give it, and {@link lengthFindings} tells.
 */
function drawn({ edge, through }: Stretch, line: Path): Path {
  const { length } = edge;
  if (length === undefined || through.length !== edge.through.length || isStraight(line)) return line;
  requireDistance(length, 'length');
  const [least, most] = [flattest, fullest].map(k => pathLength(fuller(line, k)));
  return length >= least! && length <= most! ? lineDrawnTo(line, length) : line;
}
/** Times the fair handles: flatter, a curve goes straight and turns at its points; fuller, it bulges between them. */
const flattest = 0.6,
  fullest = 1.5;
const isStraight = ({ segments }: Path): boolean => segments.length === 1 && segments[0]!.length === 2;

/** What an edge comes to where that is not what the tape said. */
export function lengthFindings(piece: string, lines: ReadonlyMap<Stretch, Path>): readonly Finding[] {
  const edges = new Set([...lines.keys()].map(s => s.edge));
  return [...edges].flatMap(edge => {
    const own = [...lines].flatMap(([stretch, line]) => (stretch.edge === edge ? [line] : []));
    const drawnMm = pathLength(joined(...own));
    if (edge.length === undefined || Math.abs(drawnMm - edge.length) <= readByHand / 2) return [];
    const facts = { edge: { piece, edge: edge.name }, drawnMm, givenMm: edge.length };
    return [finding('warning', 'edge-measured-otherwise', { edge: edge.name }, facts)];
  });
}
