import {
  type Edge,
  type EdgeRun,
  edgePath,
  type OutlinePart,
  type Path,
  type Pattern,
  type Piece,
  pathLength,
} from '@paperhinge/geometry';
import { requireParts } from '@paperhinge/geometry/internal';
import { pathEnd, pathStart, reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { foldEdgeOf } from '@paperhinge/geometry/pattern';
import { type Affine, apply, mirror, subtract, unit } from '@paperhinge/geometry/plane';

/** A pattern whose pieces lie turned over or opened out, for one layer of cloth. */
export interface TurnedOver {
  readonly pattern: Pattern;
  /** What carries each piece from its own millimetres to those it is drawn in. */
  readonly onto: readonly Affine[];
}

const asDrawn: Affine = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };
/** About the vertical through the origin. */
const overUpright: Affine = { a: -1, b: 0, c: 0, d: 1, e: 0, f: 0 };

/** Every piece turned over: the left of a pair, where the right is drawn. */
export function mirrored(pattern: Pattern): TurnedOver {
  return {
    pattern: { ...pattern, pieces: pattern.pieces.map(piece => reflected(piece, overUpright)) },
    onto: pattern.pieces.map(() => overUpright),
  };
}

/** Every half piece opened out at its fold, whole as it is cut; its other half's edges have names of their own. */
export function openedOut(pattern: Pattern): TurnedOver {
  return {
    pattern: { ...pattern, pieces: pattern.pieces.map(openedPiece), seams: withOtherSeams(pattern) },
    onto: pattern.pieces.map(() => asDrawn),
  };
}

/** A half piece opened out at its fold, whole as it is cut; any other as it is. @throws PatternError `word-not-understood` */
export function openedPiece(piece: Piece): Piece {
  const fold = foldEdgeOf(piece);
  if (!fold) return piece;
  const { parts } = piece.outline;
  requireParts(parts);
  const at = parts.indexOf(fold);
  const half = [...parts.slice(at + 1), ...parts.slice(0, at)];
  const axis = mirror(pathStart(fold.path), unit(subtract(pathEnd(fold.path), pathStart(fold.path))));
  const other = reflected({ ...piece, outline: { parts: half } }, axis);
  return {
    ...piece,
    outline: { parts: [...half, ...other.outline.parts.map(named)] },
    notches: [...piece.notches, ...other.notches.map(n => ({ ...n, edge: otherName(n.edge) }))],
    lines: [...piece.lines, ...other.lines.filter(l => l.kind !== 'grain')],
    marks: [...piece.marks, ...other.marks],
  };
}

/** What a half piece's edge is sewn to, its other half's is sewn to likewise: to the partner's other half, if it has one. */
function withOtherSeams({ pieces, seams }: Pattern): Pattern['seams'] {
  const halves = new Set(pieces.filter(foldEdgeOf).map(piece => piece.name));
  const isOfHalf = (run: EdgeRun): boolean => halves.has(run.piece);
  const otherRun = (run: EdgeRun): EdgeRun =>
    isOfHalf(run) ? { ...run, edge: otherName(run.edge), reversed: !run.reversed } : run;
  const others = seams
    .filter(({ a, b }) => [...a, ...b].some(isOfHalf))
    .map(seam => ({ ...seam, name: otherName(seam.name), a: seam.a.map(otherRun), b: seam.b.map(otherRun) }));
  return [...seams, ...others];
}

const otherName = (name: string): string => `other ${name}`;
const named = (part: OutlinePart): OutlinePart => ({ ...part, name: otherName(part.name) });

/** A piece seen in a mirror: its outline still runs clockwise, so that every edge starts where it ended. */
function reflected(piece: Piece, map: Affine): Piece {
  const flip = (path: Path) => transformedPath(path, map);
  return {
    ...piece,
    outline: { parts: [...piece.outline.parts].reverse().map(part => reflectedPart(part, flip, map)) },
    notches: piece.notches.map(n => ({ ...n, at: pathLength(edgePath(piece, n.edge)) - n.at })),
    lines: piece.lines.map(l => ({ ...l, path: flip(l.path) })),
    marks: piece.marks.map(m => ({ ...m, at: apply(map, m.at) })),
  };
}

function reflectedPart(part: OutlinePart, flip: (path: Path) => Path, map: Affine): OutlinePart {
  const back = (path: Path) => reversedPath(flip(path));
  if (part.type === 'edge') return { ...part, path: back(part.path), corners: swappedCorners(part) };
  if (part.type === 'pleat') return { ...part, mouth: back(part.mouth), towards: otherEnd(part.towards) };
  const [first, second] = part.legs;
  return {
    ...part,
    legs: [back(second), back(first)],
    apex: apply(map, part.apex),
    ...(part.pressed === undefined || part.pressed === 'open' ? {} : { pressed: otherEnd(part.pressed) }),
  };
}

const otherEnd = (end: 'start' | 'end') => (end === 'start' ? 'end' : 'start');

const swappedCorners = ({ corners: { start, end } }: Edge): Edge['corners'] => ({
  ...(end ? { start: end } : {}),
  ...(start ? { end: start } : {}),
});
