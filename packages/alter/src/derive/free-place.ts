import {
  at,
  boundsOfPath,
  outlinePath,
  type Pattern,
  type Piece,
  type Point,
  subtract,
  transformedPath,
  translation,
} from '@paperhinge/geometry';

/**
 * Where a drafted piece is laid in the drawing: where the piece of its name lay, else below all others, so
 * that nothing lies under it when the drawing is opened.
 */
export function freePlace(pattern: Pattern, name: string): Point {
  const old = pattern.pieces.find(p => p.name === name);
  if (old) return boundsOfPath(outlinePath(old.outline)).min;
  const boxes = pattern.pieces.map(p => boundsOfPath(outlinePath(p.outline)));
  return at(Math.min(...boxes.map(b => b.min.x)), Math.max(...boxes.map(b => b.max.y)) + apart);
}

/** mm. Room for both pieces' allowances, hems included. */
const apart = 100;

/** A piece drafted on top of its source, without darts or marks, moved to a place of its own. */
export function laidAside(pattern: Pattern, piece: Piece): Piece {
  const corner = boundsOfPath(outlinePath(piece.outline)).min;
  const map = translation(subtract(freePlace(pattern, piece.name), corner));
  return {
    ...piece,
    outline: {
      parts: piece.outline.parts.map(part =>
        part.type === 'edge' ? { ...part, path: transformedPath(part.path, map) } : part,
      ),
    },
    lines: piece.lines.map(line => ({ ...line, path: transformedPath(line.path, map) })),
  };
}
