import {
  type Edge,
  edgePath,
  type OutlinePart,
  type Path,
  type Piece,
  pathLength,
} from '@paperhinge/geometry';
import { pathEnd, pathStart, reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import {
  type Affine,
  angleBetween,
  compose,
  rotation,
  subtract,
  translation,
} from '@paperhinge/geometry/plane';
import type { FacingEnd, FacingOn } from './facing-piece.js';

/** A facing moved (turned over first where both ends would lie on the same side) so that its end lies on another's. */
export function laidTo(base: FacingOn, own: FacingEnd, other: FacingOn, its: FacingEnd): FacingOn {
  const facing = own.corner === its.corner ? turnedOver(other) : other;
  const target = inwards(base.piece, own.edge, own.corner),
    path = inwards(facing.piece, its.edge, opposite[own.corner]);
  const p = pathStart(path),
    to = pathStart(target);
  const turn = angleBetween(subtract(pathEnd(path), p), subtract(pathEnd(target), to));
  return moved(facing, compose(rotation(turn, p), translation(subtract(to, p))));
}

const opposite = { start: 'end', end: 'start' } as const;

/** An end of a facing from the faced line inwards. */
const inwards = (piece: Piece, edge: string, corner: FacingEnd['corner']): Path =>
  corner === 'start' ? edgePath(piece, edge) : reversedPath(edgePath(piece, edge));

const moved = (facing: FacingOn, map: Affine): FacingOn => ({
  ...facing,
  piece: withPaths(facing.piece, path => transformedPath(path, map)),
});

const withPaths = (piece: Piece, change: (path: Path) => Path): Piece => ({
  ...piece,
  outline: {
    parts: piece.outline.parts.map((part): OutlinePart => {
      if (part.type !== 'edge') throw new Error('A facing has neither darts nor pleats.');
      return { ...part, path: change(part.path) };
    }),
  },
  lines: piece.lines.map(line => ({ ...line, path: change(line.path) })),
});

/** The same facing from its other side: the garment's other half. */
function turnedOver(facing: FacingOn): FacingOn {
  const { piece } = facing;
  const flipped = withPaths(piece, path => reversedPath(transformedPath(path, overleaf)));
  const parts = [...flipped.outline.parts].reverse().map((part): OutlinePart => {
    const { start, end } = (part as Edge).corners;
    return {
      ...(part as Edge),
      corners: { ...(end ? { start: end } : {}), ...(start ? { end: start } : {}) },
    };
  });
  const lengthOf = (edge: string): number => pathLength(edgePath(piece, edge));
  return {
    ...facing,
    piece: {
      ...flipped,
      outline: { parts },
      notches: piece.notches.map(notch => ({ ...notch, at: lengthOf(notch.edge) - notch.at })),
    },
    faced: [...facing.faced].reverse().map(one => ({ ...one, reversed: !one.reversed })),
    ends: facing.ends.map(end => ({ ...end, corner: opposite[end.corner] })),
  };
}

const overleaf: Affine = { a: -1, b: 0, c: 0, d: 1, e: 0, f: 0 };
