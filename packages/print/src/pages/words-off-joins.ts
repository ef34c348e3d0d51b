import type { Piece } from '@paperhinge/geometry';
import { apply } from '@paperhinge/geometry';
import { type PieceDrawing, worded } from '../drawing/draw-piece.js';
import type { TypeMeasure } from '../drawing/ink.js';
import { onSheet } from '../drawing/on-sheet.js';
import type { PieceShape } from '../drawing/piece-shape.js';
import { boxOf } from '../place/extent.js';
import { ownPart } from '../place/field.js';
import { partsIn, type Rectangle } from '../place/parts.js';
import type { PageFormat } from './format.js';
import type { SheetPiece } from './layout.js';
import type { Chord } from './lines-on-pages.js';
import { type Page, tilesAt } from './plan.js';

/** Each piece with its words, set for where it lies on the sheet: clear of joins, its name on every page that shows it. */
export function wordedForSheet(
  shapes: readonly PieceShape[],
  placed: readonly SheetPiece[],
  pages: readonly Page[],
  format: PageFormat,
  strips: readonly Chord[],
  before: (piece: string) => Piece | undefined,
  measure: TypeMeasure,
): readonly PieceDrawing[] {
  const tiles = pages.filter(p => p.kind === 'tile');
  return shapes.map((shape, i) => {
    const { matrix } = placed[i]!;
    const outline = shape.cutPolygon.map(p => apply(matrix, p));
    const box = boxOf([outline]);
    const near = ([a, b]: Chord) =>
      Math.min(a.x, b.x) <= box.x1 &&
      Math.max(a.x, b.x) >= box.x0 &&
      Math.min(a.y, b.y) <= box.y1 &&
      Math.max(a.y, b.y) >= box.y0;
    const shown = tiles.flatMap(page => {
      const own = ownOf(page, format, pages.length - tiles.length);
      const [part] = [...partsIn(outline, own)].sort((a, b) => areaOf(b) - areaOf(a));
      return part ? [{ own, part }] : [];
    });
    const then = before(shape.piece);
    return worded(shape, measure, then ? { before: then } : {}, onSheet(matrix, strips.filter(near), shown));
  });
}

/** The part of the sheet that belongs to a page alone, below the cover pages. */
function ownOf({ row, column }: Page, format: PageFormat, covers: number): Rectangle {
  const [x0, y0, x1, y1] = ownPart(format.field, { row: covers > 0 ? row - 1 : row, column });
  const top = tilesAt(format, covers).y;
  return [x0, y0 + top, x1, y1 + top];
}

const areaOf = (polygon: readonly { readonly x: number; readonly y: number }[]): number => {
  const { width, height } = boxOf([polygon]);
  return width * height;
};
