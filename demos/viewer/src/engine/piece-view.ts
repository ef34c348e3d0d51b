import {
  cuttingLine,
  type Edge,
  edgeNames,
  edgePath,
  type Path,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pathOf,
} from '@paperhinge/geometry';
import {
  boundsOfPath,
  endTangent,
  joined,
  pathEnd,
  pointAlong,
  startTangent,
  tangentAlong,
} from '@paperhinge/geometry/paths';
import { dartsOf, outlinePath, pleatsOf } from '@paperhinge/geometry/pattern';
import { add, angleBetween, leftOf, scale } from '@paperhinge/geometry/plane';
import { containsPoint, signedArea } from '@paperhinge/geometry/regions';
import { toPathData } from '@paperhinge/geometry/svg';
import type { Words } from '@paperhinge/sheet/words';
import type { Box, Part, PieceView } from './view.js';
import { engineWords } from './words.js';

/** mm: half the length of a notch as it is drawn. */
const notchReach = 4;
/** mm: three decimals are finer than any screen. */
const data = (path: Path): string => toPathData(path).replace(/(\.\d{2})\d+/g, '$1');

/** A piece's view as it was shown last, and all beside the piece that it was made from. */
interface Shown {
  /** The cutting line as it is drawn: it is worked out anew with whatever the piece is sewn to, and most often the same. */
  readonly cutting: string;
  readonly before: Piece | undefined;
  readonly said: string;
  readonly view: PieceView;
}
const shown = new WeakMap<Piece, Shown>();

/** What is shown of a piece; of one that no step has touched since, nor what is said of it, what was shown before. */
export function pieceView(
  piece: Piece,
  pattern: Pattern,
  before: Piece | undefined,
  words: Words,
): PieceView {
  const cut = cuttingLine(piece, pattern).path;
  const cutting = data(cut);
  const said = JSON.stringify([
    words.language,
    words.unit,
    pattern.seams.filter(({ a, b }) => [...a, ...b].some(run => run.piece === piece.name)),
  ]);
  const last = shown.get(piece);
  if (last?.cutting === cutting && last.before === before && last.said === said) return last.view;
  const view = viewOf(piece, pattern, { before, words, cut, cutting });
  shown.set(piece, { cutting, before, said, view });
  return view;
}

function viewOf(
  piece: Piece,
  pattern: Pattern,
  {
    before,
    words,
    cut,
    cutting,
  }: Pick<Shown, 'before' | 'cutting'> & {
    readonly words: Words;
    readonly cut: Path;
  },
): PieceView {
  const stitching = outlinePath(piece.outline);
  const was = before && outlinePath(before.outline);
  const { min, max } = boundsOfPath(cut);
  const box: Box = [min.x, min.y, max.x - min.x, max.y - min.y];
  return {
    name: piece.name,
    title: piece.title || piece.name,
    cut: cutWords(piece, words),
    box,
    room: was ? around(box, was) : box,
    cutting,
    stitching: data(stitching),
    parts: [
      ...edges(piece, pattern, before, words),
      ...darts(piece, words),
      ...pleats(piece, words),
      ...lines(piece, words),
      ...corners(piece, words),
      ...notches(piece, words),
      ...marks(piece),
    ],
    ...titlePlace(piece, stitching, box),
    before: was && data(was) !== data(stitching) ? data(was) : '',
    told: `${words.say.number(Math.abs(signedArea(stitching)) / 1e6, 3)} m²`,
  };
}

/** A box grown to hold a path. */
function around([x, y, width, height]: Box, path: Path): Box {
  const { min, max } = boundsOfPath(path);
  const left = Math.min(x, min.x),
    top = Math.min(y, min.y);
  return [left, top, Math.max(x + width, max.x) - left, Math.max(y + height, max.y) - top];
}

/** Candidates for the title's place, and how finely lines are looked at: mm. */
const grid = 14,
  sample = 12;

/** The place within the piece that lies farthest from its outline and from what is drawn on it, the middle preferred. */
function titlePlace(
  piece: Piece,
  stitching: Path,
  [x, y, width, height]: Box,
): Pick<PieceView, 'middle' | 'middleRoom'> {
  const points = [stitching, ...piece.lines.map(l => l.path)].flatMap(path => {
    const length = pathLength(path);
    const count = Math.ceil(length / sample);
    return Array.from({ length: count + 1 }, (_, i) =>
      pointAlong(path, Math.min(length, (i * length) / count)),
    );
  });
  let middle: readonly [number, number] = [x + width / 2, y + height / 2],
    middleRoom = 0,
    most = Number.NEGATIVE_INFINITY;
  for (let i = 1; i < grid; i++)
    for (let k = 1; k < grid; k++) {
      const at = { x: x + (width * i) / grid, y: y + (height * k) / grid };
      const off = Math.hypot(at.x - x - width / 2, at.y - y - height * 0.55) * 0.12;
      const room = roomAt(at, points, most + off);
      if (room - off > most && containsPoint(stitching, at))
        [middle, middleRoom, most] = [[at.x, at.y], room, room - off];
    }
  return { middle, middleRoom };
}

/** How far a place lies from the nearest of some points, as a title needs it; nothing once it is no more than `least`. */
function roomAt(at: Point, points: readonly Point[], least: number): number {
  const enough = least > 0 ? least * least : -1;
  let nearest = Number.POSITIVE_INFINITY;
  for (const p of points) {
    // A title is broader than high: nearness above and below counts more than at the sides.
    const across = (p.x - at.x) * 0.6,
      down = (p.y - at.y) * 1.4;
    nearest = Math.min(nearest, across * across + down * down);
    if (nearest <= enough) return Number.NEGATIVE_INFINITY;
  }
  return Math.sqrt(nearest);
}

function cutWords({ cutting, outline }: Piece, words: Words): string {
  const fold = outline.parts.some(p => p.type === 'edge' && p.kind === 'fold');
  const { count, mirrored } = cutting;
  return engineWords(words.language).cut(count, fold ? 'fold' : mirrored ? 'mirrored' : 'alike');
}

const edges = (piece: Piece, pattern: Pattern, before: Piece | undefined, words: Words): readonly Part[] =>
  edgeNames(piece).map(name => {
    const parts = piece.outline.parts.filter((p): p is Edge => p.type === 'edge' && p.name === name);
    const length = parts.reduce((sum, p) => sum + pathLength(p.path), 0);
    const had = before && edgeNames(before).includes(name) ? pathLength(edgePath(before, name)) : undefined;
    const { kind, allowance } = parts[0]!;
    const say = words.say;
    const own = engineWords(words.language);
    const told = [
      say.length(length),
      ...(had !== undefined && Math.abs(had - length) > 0.05 ? [`${own.was} ${say.length(had)}`] : []),
      ...(allowance > 0
        ? [`${kind === 'hem' ? own.turnedUp : own.allowance} ${say.allowance(allowance)}`]
        : []),
      ...(kind === 'fold' ? [own.onFold] : []),
    ].join(' · ');
    const seams = pattern.seams
      .filter(({ a, b }) => [...a, ...b].some(r => r.piece === piece.name && r.edge === name))
      .map(s => s.name);
    return { kind: 'edge', name, path: parts.map(p => data(p.path)).join(' '), told, seams, sort: kind };
  });

const darts = (piece: Piece, words: Words): readonly Part[] =>
  dartsOf(piece).map(dart => {
    const [a, b] = dart.legs.map(pathLength);
    const told = words.say.list([words.say.length(a!), words.say.length(b!)]);
    return { kind: 'dart', name: dart.name, path: data(joined(...dart.legs)), told, sort: 'dart' };
  });

const pleats = (piece: Piece, words: Words): readonly Part[] =>
  pleatsOf(piece).map(({ name, mouth, kind }) => ({
    kind: 'pleat',
    name,
    path: data(mouth),
    told: words.say.length(pathLength(mouth)),
    sort: kind,
  }));

const lines = (piece: Piece, words: Words): readonly Part[] =>
  piece.lines.map(({ name, kind, path }) => ({
    kind: 'line',
    name,
    path: data(path),
    told: words.say.length(pathLength(path)),
    sort: kind,
  }));

/** Where two parts of the outline meet. */
const corners = (piece: Piece, words: Words): readonly Part[] =>
  piece.outline.parts.flatMap((part, i, ring) => {
    const next = ring[(i + 1) % ring.length]!;
    if (part.type !== 'edge' || next.type !== 'edge' || part.name === next.name) return [];
    const { x, y } = pathEnd(part.path);
    const turn = angleBetween(endTangent(part.path), startTangent(next.path));
    const degrees = words.say.number(180 - (turn * 180) / Math.PI, 1);
    return [
      {
        kind: 'corner' as const,
        name: `${part.name}, ${next.name}`,
        edges: [part.name, next.name],
        path: `M${x.toFixed(2)},${y.toFixed(2)}h0.01`,
        at: [x, y] as const,
        told: `${degrees}°`,
        sort: 'corner',
      },
    ];
  });

const notches = (piece: Piece, words: Words): readonly Part[] =>
  piece.notches.map((notch, i) => {
    const path = edgePath(piece, notch.edge);
    const p = pointAlong(path, notch.at);
    const across = scale(leftOf(tangentAlong(path, notch.at)), notchReach);
    const mark = pathOf([add(p, scale(across, -1)), add(p, across)]);
    return {
      kind: 'notch',
      name: notch.name ?? `${notch.edge} ${i + 1}`,
      path: data(mark),
      at: [p.x, p.y],
      told: words.say.length(notch.at),
      sort: notch.style,
    };
  });

const marks = (piece: Piece): readonly Part[] =>
  piece.marks.map(({ name, kind, at: { x, y } }) => ({
    kind: 'mark',
    name,
    at: [x, y],
    path: `M${x - 3},${y} L${x + 3},${y} M${x},${y - 3} L${x},${y + 3}`,
    told: '',
    sort: kind,
  }));
