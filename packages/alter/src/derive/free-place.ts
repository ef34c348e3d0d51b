import { at, type OutlinePart, type Path, type Pattern, type Piece, type Point } from '@paperhinge/geometry';
import { boundsOfPath, transformedPath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { apply, subtract, translation } from '@paperhinge/geometry/plane';

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

/** A piece moved, with all that lies on it, to a place of its own in the drawing. */
export function laidAside(pattern: Pattern, piece: Piece): Piece {
  const corner = boundsOfPath(outlinePath(piece.outline)).min;
  const map = translation(subtract(freePlace(pattern, piece.name), corner));
  const moved = (path: Path): Path => transformedPath(path, map);
  return {
    ...piece,
    outline: {
      parts: piece.outline.parts.map((part): OutlinePart => {
        if (part.type === 'edge') return { ...part, path: moved(part.path) };
        if (part.type === 'pleat') return { ...part, mouth: moved(part.mouth) };
        const [first, second] = part.legs;
        return { ...part, legs: [moved(first), moved(second)], apex: apply(map, part.apex) };
      }),
    },
    lines: piece.lines.map(line => ({ ...line, path: moved(line.path) })),
    marks: piece.marks.map(mark => ({ ...mark, at: apply(map, mark.at) })),
  };
}
