import {
  angleBetween,
  at,
  centroid,
  dot,
  type Finding,
  outlinePath,
  PatternError,
  type Piece,
  type Point,
  pathEnd,
  pathStart,
  scale,
  subtract,
  tolerances,
  unit,
} from '@paperhinge/geometry';

/** Unit direction of a piece's grain line from its start to its end. */
export function grainDirection(piece: Piece): Point | undefined {
  const grain = piece.lines.find(l => l.kind === 'grain');
  return grain && unit(subtract(pathEnd(grain.path), pathStart(grain.path)));
}

/** The grain, or the page's vertical with a finding where no grain line is drawn. */
export function grainOrVertical(piece: Piece): {
  readonly grain: Point;
  readonly findings: readonly Finding[];
} {
  const grain = grainDirection(piece);
  if (grain) return { grain, findings: [] };
  const finding: Finding = {
    severity: 'note',
    code: 'no-grain-line',
    where: { piece: piece.name },
    message: `Piece "${piece.name}" has no grain line; the page's vertical was taken for it.`,
    remedy: 'Draw its grain line.',
  };
  return { grain: at(0, 1), findings: [finding] };
}

/**
 * Unit direction along the grain that leads from `from` towards `to`.
 * @throws PatternError `grain-across`: the grain runs square to that way, so nothing moves along it
 */
export function alongGrainTowards(piece: Piece, grain: Point, from: Point, to: Point): Point {
  const way = subtract(to, from);
  const angle = Math.abs(angleBetween(grain, way));
  if (Math.abs(angle - Math.PI / 2) < tolerances.joinedCorner)
    throw new PatternError('grain-across', {
      message: `The grain of "${piece.name}" runs across it: moving along the grain does not change its length.`,
      remedy: 'Check the direction of its grain line.',
      where: { piece: piece.name },
    });
  return dot(grain, way) > 0 ? grain : scale(grain, -1);
}

/** The middle of a piece's area. */
export const middleOf = (piece: Piece): Point => centroid(outlinePath(piece.outline));
