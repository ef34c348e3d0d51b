import {
  type Edge,
  edgeNames,
  type OutlinePart,
  type Path,
  type Piece,
  type Point,
  pathLength,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  intersectPaths,
  joined,
  nearestOnPath,
  pathEnd,
  pathStart,
  reversedPath,
  subpath,
} from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';
import { containsPoint, signedArea } from '@paperhinge/geometry/regions';
import type { ThingBecame } from '../became/became.js';
import { carriedNotches, edgesBecame, type PartChange } from '../became/parts.js';
import { type Chain, chainsOf, type Reshaped } from '../moved-edges/chains.js';
import { endingIn, startingIn } from '../moved-edges/meet.js';
import { refusal as movedEdgesRefusal } from '../moved-edges/tellings.js';
import { refusal } from './tellings.js';

/**
 * Cuts a piece along one of its lines, whose ends lie on the outline; the side with the neck is taken away and the
 * line becomes the neck, together with what the cut left of the old one.
 */
export function cutToDrawnLine(piece: Piece, neck: Edge, name: string): Reshaped {
  const drawn = piece.lines.find(l => l.name === name);
  const where = { piece: piece.name };
  if (!drawn)
    throw movedEdgesRefusal(
      'unknown-line',
      { piece: piece.name, name, names: piece.lines.map(l => l.name) },
      where,
    );
  const outline = outlinePath(piece.outline);
  const { path, from, to } = cutBetween(piece, name, drawn.path, outline);
  const whole = pathLength(outline);
  const spans = chainSpans(piece);
  const own = spans.find(s => s.chain.part === neck)!;
  // Clockwise from one end of the line to the other lies either the part that goes or the part that stays.
  const goes = goesFirst(own, from, to, path, outline);
  const [start, end, fresh] = goes ? [from, to, path] : [to, from, reversedPath(path)];
  const left = spans.flatMap(span => remainders(piece, span, start, end, whole));
  const after = [...left.filter(r => r.place >= end), ...left.filter(r => r.place < end)];
  const parts = withNeck(neck, fresh, after);
  const became = {
    edges: edgesBecame(piece, edgeNames(piece), part => changeOf(part, neck, left, pathLength(fresh))),
    things: [
      { was: { piece: piece.name, line: name }, now: { piece: piece.name, edge: neck.name } },
      ...thingsCutAway(piece, parts),
    ],
  };
  const lines = piece.lines.filter(l => l !== drawn);
  const notches = carriedNotches(piece, became);
  return { piece: { ...piece, outline: { parts }, notches, lines }, became, findings: [] };
}

/**
 * Whether the outline clockwise `from` one end of the line `to` its other is the part to take away: the one with the
 * neck, or where the line ends within the neck and parts it too, the one with the smaller area.
 */
function goesFirst(neck: Span, from: number, to: number, line: Path, outline: Path): boolean {
  const whole = pathLength(outline);
  const near = tolerances.joiningGap;
  const parted = [from, to].some(place => place > neck.start + near && place < neck.end - near);
  if (!parted) return between(from, (neck.start + neck.end) / 2, to, whole);
  const cut =
    from < to ? subpath(outline, from, to) : joined(subpath(outline, from, whole), subpath(outline, 0, to));
  const area = signedArea(
    joined(cut, endingIn(startingIn(reversedPath(line), pathEnd(cut)), pathStart(cut))),
  );
  return area < signedArea(outline) / 2;
}

/** The drawn line from outline to outline, and the places (mm along the outline) where it begins and ends. */
export function cutBetween(piece: Piece, name: string, drawn: Path, outline: Path) {
  const first = onOutline(piece, name, drawn, outline);
  const last = onOutline(piece, name, reversedPath(drawn), outline);
  const path = subpath(drawn, first.along, pathLength(drawn) - last.along);
  return {
    path: endingIn(startingIn(path, first.point), last.point),
    from: nearestOnPath(outline, first.point).along,
    to: nearestOnPath(outline, last.point).along,
  };
}

/** Where a line, followed from its start, comes to lie within the outline. */
function onOutline(
  piece: Piece,
  name: string,
  line: Path,
  outline: Path,
): { readonly along: number; readonly point: Point } {
  const start = pathStart(line);
  const near = nearestOnPath(outline, start);
  if (near.distance <= tolerances.joiningGap) return { along: 0, point: near.point };
  const crossing = containsPoint(outline, start) ? undefined : intersectPaths(line, outline)[0];
  if (crossing) return { along: crossing.alongA, point: crossing.point };
  throw refusal(
    'line-ends-off-outline',
    { line: { piece: piece.name, line: name }, awayMm: near.distance },
    { piece: piece.name },
  );
}

interface Span {
  readonly chain: Chain;
  /** mm along the outline. */
  readonly start: number;
  readonly end: number;
}

function chainSpans(piece: Piece): readonly Span[] {
  let along = 0;
  return chainsOf(piece).map(chain => {
    const start = along;
    along += pathLength(chain.path);
    return { chain, start, end: along };
  });
}

const between = (from: number, place: number, to: number, whole: number): boolean =>
  (place - from + whole) % whole < (to - from + whole) % whole;

/** What stays of one part, where on the outline it lies, and how much its start lost. */
interface Remainder {
  readonly part: OutlinePart;
  readonly source: OutlinePart;
  readonly place: number;
  readonly cut: number;
}

/** What stays of a chain when the outline from `start` clockwise to `end` goes. */
function remainders(
  piece: Piece,
  { chain, start: from, end: to }: Span,
  start: number,
  end: number,
  whole: number,
): readonly Remainder[] {
  const stays = (place: number): boolean => !between(start, place % whole, end, whole);
  const near = tolerances.joiningGap;
  const within = (place: number): boolean => place > from + near && place < to - near;
  const stops = [from, ...[start, end].filter(within).sort((a, b) => a - b), to];
  const kept = stops
    .slice(1)
    .flatMap((stop, i) => (stays((stops[i]! + stop) / 2) ? [[stops[i]!, stop] as const] : []));
  const { part, leg } = chain;
  if (part.type !== 'edge') {
    if (stops.length > 2)
      throw refusal(
        'line-crosses-dart',
        { dart: { piece: piece.name, [part.type]: part.name } },
        { piece: piece.name },
      );
    return kept.length === 0 || leg === 1 ? [] : [{ part, source: part, place: from, cut: 0 }];
  }
  return kept.map(([a, b]) => {
    const path = subpath(part.path, a - from, b - from);
    const wholeLeft = a === from && b === to;
    return { part: wholeLeft ? part : { ...part, path }, source: part, place: a, cut: a - from };
  });
}

/** The ring from the new line on: what stays of the old neck beside it is one edge with it. */
function withNeck(neck: Edge, fresh: Path, after: readonly Remainder[]): readonly OutlinePart[] {
  let path = fresh;
  const rest = after.map(r => r.part);
  const isNeck = (part: OutlinePart | undefined): part is Edge =>
    part?.type === 'edge' && part.name === neck.name;
  const next = rest[0];
  if (isNeck(next)) {
    path = joined(path, startingIn(next.path, pathEnd(path)));
    rest.shift();
  }
  const last = rest.at(-1);
  if (isNeck(last)) {
    path = joined(endingIn(last.path, pathStart(path)), path);
    rest.pop();
  }
  const ring: OutlinePart[] = [{ ...neck, path }, ...rest];
  return ring.map((part, i) => (i === 0 || part.type !== 'edge' ? part : snapped(part, i, ring, path)));
}

/** The edges that the cut shortened end exactly on the new line. */
function snapped(part: Edge, i: number, ring: readonly OutlinePart[], neck: Path): Edge {
  let { path } = part;
  if (i === 1 && distance(pathStart(path), pathEnd(neck)) > 0) path = startingIn(path, pathEnd(neck));
  if (i === ring.length - 1 && distance(pathEnd(path), pathStart(neck)) > 0)
    path = endingIn(path, pathStart(neck));
  return path === part.path ? part : { ...part, path };
}

/** Darts and pleats of the part that went. */
const thingsCutAway = (piece: Piece, parts: readonly OutlinePart[]): readonly ThingBecame[] =>
  piece.outline.parts
    .filter(part => part.type !== 'edge' && !parts.includes(part))
    .map(({ type, name }) => ({
      was: type === 'dart' ? { piece: piece.name, dart: name } : { piece: piece.name, pleat: name },
    }));

function changeOf(
  part: Edge,
  neck: Edge,
  left: readonly Remainder[],
  neckAfter: number,
): PartChange | undefined {
  if (part === neck) return { before: pathLength(part.path), after: neckAfter, kept: 'redrawn' };
  const own = left.filter(r => r.source === part);
  if (own.length === 1 && own[0]!.part === part) return undefined;
  let after = 0;
  const kept = own.map(({ part: rest, cut }) => {
    const length = pathLength((rest as Edge).path);
    after += length;
    return { from: cut, to: cut + length, by: after - length - cut };
  });
  return { before: pathLength(part.path), after, kept };
}
