import type { Piece } from '@paperhinge/geometry';
import { apply } from '@paperhinge/geometry/plane';
import { type PieceDrawing, worded } from '../drawing/draw-piece.js';
import { onSheet } from '../drawing/on-sheet.js';
import type { PieceShape } from '../drawing/piece-shape.js';
import { nearby } from '../plane/nearby.js';
import { partsIn } from '../plane/parts.js';
import { boxOf, type Chord } from '../plane/polygon.js';
import { meetsRectangle, type Rectangle } from '../plane/rectangle.js';
import type { SheetPiece } from './layout.js';
import { labelsOf, type Page } from './plan.js';

/** mm. */
const bucket = 200;

/** Each piece with its words, set for where it lies on the sheet: clear of joins, its name on every page that shows it. */
export function wordedForSheet(
  shapes: readonly PieceShape[],
  placed: readonly SheetPiece[],
  pages: readonly Page[],
  strips: readonly Chord[],
  before: (piece: string) => Piece | undefined,
): readonly PieceDrawing[] {
  const tileOf = new Map(pages.filter(p => p.kind === 'tile').map(p => [p.label, p]));
  const joins = nearby(strips, bucket);
  return shapes.map((shape, i) => {
    const { matrix } = placed[i]!;
    const outline = shape.cutPolygon.map(p => apply(matrix, p));
    const box = boxOf([outline]);
    const round: Rectangle = [box.x0, box.y0, box.x1, box.y1];
    const near = joins.within(round).filter(([a, b]) => meetsRectangle(a, b, round));
    const shown = labelsOf(placed[i]!).flatMap(label => {
      const { own } = tileOf.get(label)!;
      const [part] = [...partsIn(outline, own)].sort((a, b) => areaOf(b) - areaOf(a));
      return part ? [{ own, part }] : [];
    });
    const then = before(shape.piece);
    return worded(shape, then ? { before: then } : {}, onSheet(matrix, near, shown));
  });
}

const areaOf = (polygon: readonly { readonly x: number; readonly y: number }[]): number => {
  const { width, height } = boxOf([polygon]);
  return width * height;
};
