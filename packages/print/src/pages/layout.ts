import { type Affine, apply, compose, PatternError, type Point } from '@paperhinge/geometry';
import type { PiecePlace } from '../drawing/draw-piece.js';
import { uprighting } from '../drawing/frame.js';
import type { Polygon } from '../drawing/room.js';
import { type Arrangement, arrange, placed, type Shape } from '../place/arrange.js';
import { boxOf } from '../place/extent.js';
import { type Field, windowsFor } from '../place/field.js';
import { inReadingOrder, onOwnPages } from '../place/in-order.js';
import type { Turning } from '../place/turning.js';
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
  /** Where the blocks laid ahead of the pieces have their top left corners. */
  readonly blocks: readonly Point[];
  /** The pieces where they lie below so many cover pages. */
  place(covers: number): readonly SheetPiece[];
}

/** How pieces are laid on the pages. */
export type ArrangementKind = 'fewest-pages' | 'reading-order' | 'own-pages';
/** The ways pieces may be laid on the pages. */
export const arrangementKinds: readonly ArrangementKind[] = ['fewest-pages', 'reading-order', 'own-pages'];

export interface LayoutOptions extends FormatOptions {
  readonly orientation?: Orientation | 'auto';
  /** How the pieces are laid: to need few pages (default), in the pattern's order, or each from a page of its own. */
  readonly arrangement?: ArrangementKind;
  /** By how much pieces may be turned where it saves pages: half round (default), also by quarters, or by any angle. */
  readonly turning?: Turning;
  /** Upright blocks that are laid on the sheet before the pieces: width and height in mm. */
  readonly blocks?: readonly (readonly [number, number])[];
}

/** Far more than anybody glues together: a file in the wrong unit is refused before paper or memory runs out. */
const mostPages = 1500;

/**
 * Lays the pieces out for a paper, upright or on its side, whichever needs fewer pages (then upright).
 * @throws PatternError `nothing-to-print`, `too-many-pages`; what `pageFormat` refuses
 */
export function layoutFor(
  drawings: readonly PiecePlace[],
  paper: Paper,
  options: LayoutOptions,
): SheetLayout {
  if (drawings.length === 0)
    throw new PatternError('nothing-to-print', {
      message: 'The pattern has no pieces.',
      remedy: 'Add a piece to the pattern, or leave out the step that removed the last one.',
    });
  const { orientation = 'auto', blocks = [] } = options;
  const pieces = drawings.map(uprightShape);
  const shapes = [...blocks.map(blockShape), ...pieces];
  const asked = orientation === 'auto' ? (['portrait', 'landscape'] as const) : [orientation];
  const tried = (paper.roll ? (['portrait'] as const) : asked).map(o => {
    const format = pageFormat(paper, o, options);
    checkCount(pieces, format);
    const arrangement = arranged(shapes, format.field, options);
    return paper.roll ? cutOff(format, shapes, arrangement) : { format, arrangement };
  });
  const slivers = (a: Arrangement) => a.slivers.reduce((sum, list) => sum + list.length, 0);
  const { format, arrangement } = tried.reduce((best, next) => {
    const fewer = slivers(next.arrangement) - slivers(best.arrangement);
    return fewer < 0 || (fewer === 0 && next.arrangement.count < best.arrangement.count) ? next : best;
  });
  return {
    format,
    arrangement,
    blocks: blocks.map((_, i) => arrangement.placings[i]!.by),
    place: covers => {
      const top = tilesAt(format, covers).y;
      return drawings.map((drawing, i) => onSheet(drawing, arrangement.placings[blocks.length + i]!, top));
    },
  };
}

function arranged(
  shapes: readonly Shape[],
  field: Field,
  { arrangement, turning, blocks = [] }: LayoutOptions,
): Arrangement {
  if (arrangement === 'own-pages') return onOwnPages(shapes, field);
  if (arrangement === 'reading-order') return inReadingOrder(shapes, field);
  return arrange(shapes, field, { ahead: blocks.length, ...(turning ? { turning } : {}) });
}

function onSheet(
  drawing: PiecePlace,
  { turn, by }: Arrangement['placings'][number],
  top: number,
): SheetPiece {
  const { x: c, y: s } = turn;
  const matrix = compose(uprighting(drawing.frame), { a: c, b: s, c: -s, d: c, e: by.x, f: by.y + top });
  const polygons = drawing.silhouette.map(polygon => polygon.map(p => apply(matrix, p)));
  return { piece: drawing.piece, copy: 1, matrix, polygons };
}

function checkCount(shapes: readonly Shape[], { field }: PageFormat): void {
  const pages = shapes.reduce((sum, shape) => {
    const { width, height } = boxOf(shape.polygons);
    return (
      sum + windowsFor(width, field.width, field.overlap) * windowsFor(height, field.height, field.overlap)
    );
  }, 0);
  if (pages <= mostPages) return;
  throw new PatternError('too-many-pages', {
    message: `The pattern would fill about ${pages} pages.`,
    remedy: `Check the unit that the drawing was saved in, or print on a larger paper; at most ${mostPages} pages are made.`,
  });
}

/** A roll is cut off below the lowest shape. */
function cutOff(format: PageFormat, shapes: readonly Shape[], arrangement: Arrangement) {
  const lowest = Math.max(
    ...shapes.map((shape, i) => boxOf(shape.polygons.map(p => placed(p, arrangement.placings[i]!))).y1),
  );
  const height = Math.min(Math.ceil(lowest + 1), format.field.height);
  const { margins, stretch } = format;
  const size = [format.size[0], height * stretch.down + margins.top + margins.bottom] as const;
  return { format: { ...format, size, field: { ...format.field, height } }, arrangement };
}

const blockShape = ([width, height]: readonly [number, number]): Shape => ({
  polygons: [
    [
      { x: 0, y: 0 },
      { x: width, y: 0 },
      { x: width, y: height },
      { x: 0, y: height },
    ],
  ],
});

function uprightShape(drawing: PiecePlace): Shape {
  const turn = uprighting(drawing.frame);
  return { polygons: drawing.silhouette.map(polygon => polygon.map(p => apply(turn, p))) };
}
