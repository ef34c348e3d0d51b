import {
  at,
  edgePath,
  type Finding,
  type Path,
  type Piece,
  type Point,
  pathLength,
} from '@paperhinge/geometry';
import { abs } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pointAlong } from '@paperhinge/geometry/paths';
import { edgeParts, edgesOfRole, outlinePath } from '@paperhinge/geometry/pattern';
import { angleBetween, dot, scale, subtract } from '@paperhinge/geometry/plane';
import { centroid } from '@paperhinge/geometry/regions';
import { grainDirection } from '../hinge/grain-direction.js';
import { finding, refusal } from './tellings.js';

/** The grain, or the page's vertical with a finding where no grain line is drawn. */
export function grainOrVertical(piece: Piece): {
  readonly grain: Point;
  readonly findings: readonly Finding[];
} {
  const grain = grainDirection(piece);
  if (grain) return { grain, findings: [] };
  const where = { piece: piece.name };
  return { grain: at(0, 1), findings: [finding('note', 'no-grain-line', where, { piece: where })] };
}

/**
 * Unit direction along the grain that leads from `from` towards `to`.
 * @throws PatternError `grain-across`: the grain runs square to that way, so nothing moves along it
 */
export function alongGrainTowards(piece: Piece, grain: Point, from: Point, to: Point): Point {
  const way = subtract(to, from);
  const angle = abs(angleBetween(grain, way));
  if (abs(angle - Math.PI / 2) < tolerances.joinedCorner)
    throw refusal('grain-across', { piece: { piece: piece.name } }, { piece: piece.name });
  return dot(grain, way) > 0 ? grain : scale(grain, -1);
}

/** Unit direction along the grain away from the hem, else towards neck, cap or waist, else up the page. */
export function upAlongGrain(piece: Piece): Point {
  const { grain } = grainOrVertical(piece);
  const middle = middleOf(piece);
  const hem = edgeParts(piece).find(({ kind }) => kind === 'hem');
  const top = edgesOfRole(piece, 'neck', 'cap', 'waist')[0];
  const halfWay = (path: Path): Point => pointAlong(path, pathLength(path) / 2);
  const towardsTop = top === undefined ? at(0, -1) : subtract(halfWay(edgePath(piece, top)), middle);
  const way = hem ? subtract(middle, halfWay(hem.path)) : towardsTop;
  return dot(grain, way) < 0 ? scale(grain, -1) : grain;
}

/** The middle of a piece's area. */
export const middleOf = (piece: Piece): Point => centroid(outlinePath(piece.outline));
