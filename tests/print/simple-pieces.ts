import { at, type Edge, line, type Pattern, type Piece, type Point, pathOf } from '@paperhinge/geometry';

/** A piece with straight edges through points, clockwise; all its edges alike. */
export function polygonPiece(
  name: string,
  points: readonly Point[],
  allowance = 0,
  changes: Partial<Piece> = {},
): Piece {
  const parts = points.map(
    (p, i): Edge => ({
      type: 'edge',
      name: `edge-${i + 1}`,
      path: pathOf(line(p, points[(i + 1) % points.length]!)),
      kind: allowance > 0 ? 'seam' : 'raw',
      allowance,
      corners: {},
    }),
  );
  return {
    name,
    title: name,
    outline: { parts },
    notches: [],
    lines: [],
    marks: [],
    cutting: { count: 1, mirrored: false, fabric: 'main' },
    ...changes,
  };
}

export const rectangle = (
  name: string,
  width: number,
  height: number,
  allowance = 0,
  changes: Partial<Piece> = {},
): Piece =>
  polygonPiece(name, [at(0, 0), at(width, 0), at(width, height), at(0, height)], allowance, changes);

export const patternOf = (...pieces: readonly Piece[]): Pattern => ({
  name: 'Test',
  unit: 'mm',
  pieces,
  seams: [],
  fabrics: [{ name: 'main', role: 'main' }],
});
