import { type Affine, apply, compose } from '@paperhinge/geometry';
import type { PieceDrawing } from '../drawing/draw-piece.js';
import { uprighting } from '../drawing/frame.js';
import type { Polygon } from '../drawing/room.js';
import { type Arrangement, arrange, type Shape } from '../place/arrange.js';
import { type FormatOptions, type Orientation, type PageFormat, pageFormat } from './format.js';
import type { Paper } from './papers.js';
import { tilesAt } from './plan.js';

/** A piece on the large sheet. */
export interface SheetPiece {
  readonly piece: string;
  readonly copy: number;
  /** Carries the piece from its own millimetres to the large sheet's. */
  readonly matrix: Affine;
  /** Its outline on the sheet. */
  readonly polygons: readonly Polygon[];
}

export interface SheetLayout {
  readonly format: PageFormat;
  readonly arrangement: Arrangement;
  /** By how much a piece's placing is still to be moved down, for cover pages. */
  place(covers: number): readonly SheetPiece[];
}

/**
 * Lays the pieces out for a paper, upright or on its side, whichever needs fewer pages (then fewer joins; then upright).
 * @throws PatternError what `pageFormat` refuses
 */
export function layoutFor(
  drawings: readonly PieceDrawing[],
  paper: Paper,
  orientation: Orientation | 'auto',
  options: FormatOptions,
): SheetLayout {
  const shapes = drawings.map(uprightShape);
  const tried = (orientation === 'auto' ? (['portrait', 'landscape'] as const) : [orientation]).map(o => {
    const format = pageFormat(paper, o, options);
    return { format, arrangement: arrange(shapes, format.field) };
  });
  const { format, arrangement } = tried.reduce((best, next) =>
    next.arrangement.count < best.arrangement.count ? next : best,
  );
  return {
    format,
    arrangement,
    place: covers => {
      const top = tilesAt(format, covers).y;
      return drawings.map((drawing, i): SheetPiece => {
        const { turned, by } = arrangement.placings[i]!;
        const sign = turned ? -1 : 1;
        const matrix = compose(uprighting(drawing.frame), {
          a: sign,
          b: 0,
          c: 0,
          d: sign,
          e: by.x,
          f: by.y + top,
        });
        return {
          piece: drawing.piece,
          copy: 1,
          matrix,
          polygons: drawing.silhouette.map(polygon => polygon.map(p => apply(matrix, p))),
        };
      });
    },
  };
}

function uprightShape(drawing: PieceDrawing): Shape {
  const turn = uprighting(drawing.frame);
  return { polygons: drawing.silhouette.map(polygon => polygon.map(p => apply(turn, p))) };
}
