import type { Dart, OutlinePart, Path, Piece } from '@paperhinge/geometry';
import { pathEnd, reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { type Affine, apply, determinant } from '@paperhinge/geometry/plane';

/** A path moved; turned over it runs the other way, so that the outline goes on clockwise. */
export function movedPath(path: Path, map: Affine): Path {
  const moved = transformedPath(path, map);
  return determinant(map) < 0 ? reversedPath(moved) : moved;
}

/** A part of an outline moved by a rigid motion, or turned over. */
export function movedPart(part: OutlinePart, map: Affine): OutlinePart {
  const over = determinant(map) < 0;
  if (part.type === 'pleat') {
    const mouth = movedPath(part.mouth, map);
    return over
      ? { ...part, mouth, towards: part.towards === 'start' ? 'end' : 'start' }
      : { ...part, mouth };
  }
  if (part.type === 'dart') {
    const [a, b] = part.legs.map(leg => movedPath(leg, map)) as [Path, Path];
    const legs = over ? ([b, a] as const) : ([a, b] as const);
    const dart: Dart = { ...part, legs, apex: pathEnd(legs[0]) };
    return over && part.pressed ? { ...dart, pressed: opposite[part.pressed] } : dart;
  }
  const path = movedPath(part.path, map);
  if (!over) return { ...part, path };
  const { start, end } = part.corners;
  const corners = { ...(end ? { start: end } : {}), ...(start ? { end: start } : {}) };
  return { ...part, path, corners };
}

const opposite = { start: 'end', end: 'start', open: 'open' } as const;

/** A piece with all that lies on it moved by a rigid motion; its notches keep their places on its edges. */
export const movedPiece = (piece: Piece, motion: Affine): Piece => ({
  ...piece,
  outline: { parts: piece.outline.parts.map(part => movedPart(part, motion)) },
  lines: piece.lines.map(line => ({ ...line, path: transformedPath(line.path, motion) })),
  marks: piece.marks.map(mark => ({ ...mark, at: apply(motion, mark.at) })),
});
