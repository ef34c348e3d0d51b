import { at, boundsOfPath, outlinePath, type Pattern, type Point } from '@paperhinge/geometry';

/**
 * Where a drafted straight piece is laid in the drawing: where the piece of its name lay, else below all others, so
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
