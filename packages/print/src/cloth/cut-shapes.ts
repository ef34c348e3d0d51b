import { cuttingLine, edgePath, type Pattern, type Piece } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { foldEdgeOf } from '@paperhinge/geometry/pattern';
import { apply } from '@paperhinge/geometry/plane';
import { flattened } from '../drawing/flatten.js';
import { frameOf, uprighting } from '../drawing/frame.js';
import { openedPiece } from '../drawing/turned-over.js';
import type { Shape } from '../place/arrangement.js';
import { shapeCells } from '../place/shape-cells.js';
import { boxOf, type Polygon } from '../plane/polygon.js';

/** How cloth is laid to be cut: folded along its length in two layers, or opened out in one. */
export type ClothWay = 'folded' | 'open';

/** A shape to be cut, its grain along the cloth's length. */
export interface CutShape extends Shape {
  readonly piece: string;
  /** Numbered from 1 among those of the piece; of two layers that are cut at once, the first of them. */
  readonly copy: number;
}

/** Everything that is cut of a cloth, as it lies when the cloth is laid so. @throws PatternError what a cutting line refuses */
export function cutShapes(pattern: Pattern, cloth: string, way: ClothWay): readonly CutShape[] {
  return pattern.pieces.flatMap(piece =>
    [piece.cutting, ...(piece.alsoCut ?? [])]
      .filter(c => c.fabric === cloth)
      .flatMap(cutting => shapesOf(piece, cutting, pattern, way)),
  );
}

function shapesOf(
  piece: Piece,
  { count, mirrored, rightSideUp }: Piece['cutting'],
  pattern: Pattern,
  way: ClothWay,
): readonly CutShape[] {
  const folded = way === 'folded' ? onFold(piece, pattern) : undefined;
  const upright = folded ?? uprightPolygon(openedPiece(piece), pattern);
  // Two layers lie face to face: what is cut of both are the two of a pair, or two alike of a piece that is its own mirror image.
  const isTwoAtOnce = way === 'folded' && !folded && !rightSideUp && (mirrored || isOwnMirror(upright));
  const laid = isTwoAtOnce ? Math.ceil(count / 2) : count;
  return Array.from({ length: laid }, (_, i) => ({
    piece: piece.name,
    copy: isTwoAtOnce ? 2 * i + 1 : i + 1,
    polygons: [way === 'open' && mirrored && i % 2 === 1 ? flipped(upright) : upright],
    ...(folded ? { atLeft: true as const } : {}),
  }));
}

/** The cutting line with the grain upright. */
function uprightPolygon(piece: Piece, pattern: Pattern): Polygon {
  const turn = uprighting(frameOf(piece));
  return flattened(cuttingLine(piece, pattern).path).map(p => apply(turn, p));
}

/** A half piece with its fold at the left, as it lies on the cloth's fold; none where the fold does not run with the grain. */
function onFold(piece: Piece, pattern: Pattern): Polygon | undefined {
  const fold = foldEdgeOf(piece);
  if (!fold) return undefined;
  const turn = uprighting(frameOf(piece));
  const path = edgePath(piece, fold.name);
  const [from, to] = [apply(turn, pathStart(path)), apply(turn, pathEnd(path))];
  if (Math.abs(to.x - from.x) > offGrain * Math.abs(to.y - from.y)) return undefined;
  const polygon = uprightPolygon(piece, pattern);
  const { x0, x1 } = boxOf([polygon]);
  return from.x - x0 <= x1 - from.x ? polygon : flipped(polygon);
}

/** A fold within a degree of the grain lies on it. */
const offGrain = Math.tan(Math.PI / 180);

/** Turned over, as its own mirror image. */
const flipped = (polygon: Polygon): Polygon => polygon.map(({ x, y }) => ({ x: -x, y })).reverse();

/** Whether a piece turned over takes up the same cells of cloth. */
function isOwnMirror(polygon: Polygon): boolean {
  const cellsOf = (p: Polygon) => {
    const { x0, y0 } = boxOf([p]);
    return JSON.stringify(shapeCells([p.map(({ x, y }) => ({ x: x - x0, y: y - y0 }))]).rows);
  };
  return cellsOf(polygon) === cellsOf(flipped(polygon));
}
