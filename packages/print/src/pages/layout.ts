import type { Point } from '@paperhinge/geometry';
import { type Affine, apply, compose } from '@paperhinge/geometry/plane';
import { uprighting } from '../drawing/frame.js';
import type { PieceShape } from '../drawing/piece-shape.js';
import { arrange } from '../place/arrange.js';
import { type Arrangement, followedBy, isBetter, placed, type Shape } from '../place/arrangement.js';
import { type Cell, type PageField, stepY, windowsFor } from '../place/field.js';
import { inReadingOrder, onOwnPages } from '../place/in-order.js';
import { carriedShaft } from '../place/shafts.js';
import type { Turning } from '../place/turning.js';
import { boxOf, boxPolygon, type Polygon } from '../plane/polygon.js';
import { refusal } from '../tellings.js';
import {
  defaultOverlap,
  type FormatOptions,
  type Orientation,
  type PageFormat,
  pageFormat,
} from './format.js';
import { heldGrains } from './grain-shaft.js';
import { isLarge, type Paper } from './papers.js';

/** A piece on the large sheet. */
export interface SheetPiece {
  readonly piece: string;
  readonly copy: number;
  /** Carries the piece from its own millimetres to the large sheet's. */
  readonly matrix: Affine;
  /** Its outline on the sheet. */
  readonly polygons: readonly Polygon[];
  /** The tiles on which it lies. */
  readonly tiles: readonly Tile[];
}

/** A page's place among all pages of pieces, and on the large sheet. */
export interface Tile extends Cell {
  /** Pages are joined to those of their own sheet alone; from 0. */
  readonly sheet: number;
  /** The corner of its window, mm; before cover pages are put above. */
  readonly corner: Point;
  /** Row and column on its own sheet. */
  readonly own: Cell;
}

/** A block that lies on the sheet like a piece. */
export interface SheetBlock {
  readonly corner: Point;
  readonly tiles: readonly Tile[];
}

/** Where everything lies, before cover pages are put above it. */
export interface SheetLayout {
  readonly format: PageFormat;
  readonly arrangement: Arrangement;
  /** The blocks laid ahead of the pieces. */
  readonly blocks: readonly SheetBlock[];
  readonly pieces: readonly SheetPiece[];
}

/** How pieces are laid on the pages. */
export type ArrangementKind = 'fewest-pages' | 'reading-order' | 'own-pages';
/** The ways pieces may be laid on the pages. */
export const arrangementKinds: readonly ArrangementKind[] = ['fewest-pages', 'reading-order', 'own-pages'];

export interface LayoutOptions extends FormatOptions {
  readonly orientation?: Orientation | 'auto';
  /** How the pieces are laid: to need few pages (default), in the pattern's order, or each from a page of its own. */
  readonly arrangement?: ArrangementKind;
  /** By how much pieces may be turned where it saves paper: by quarters (default), less, or by any angle. */
  readonly turning?: Turning;
  /** Upright blocks that are laid on the sheet before the pieces: width and height in mm. */
  readonly blocks?: readonly (readonly [number, number])[];
}

/** Far more than anybody glues together: a file in the wrong unit is refused before paper or memory runs out. */
const mostPages = 1500;
/** mm: what two people still carry from the floor to the table; a piece that is larger has a sheet to itself. */
const largestGlued = { width: 1250, height: 1650 } as const;

/**
 * Lays the pieces out for a paper, upright or on its side, whichever needs fewer pages (then upright). Pages to be
 * glued make sheets that can be handled, each cloth's pieces a sheet of their own; on large paper and rolls all lie
 * together, as short as they can.
 * @throws PatternError `nothing-to-print`, `too-many-pages`; what `pageFormat` refuses
 */
export function layoutFor(
  drawings: readonly PieceShape[],
  paper: Paper,
  options: LayoutOptions,
): SheetLayout {
  if (drawings.length === 0) throw refusal('nothing-to-print', {});
  const { orientation = 'auto', blocks = [], overlap = defaultOverlap } = options;
  const pieces = drawings.map(drawing => uprightShape(drawing, overlap));
  const shapes = [
    ...blocks.map(([width, height]): Shape => ({ polygons: [boxPolygon(0, 0, width, height)] })),
    ...pieces,
  ];
  const asked = orientation === 'auto' ? (['portrait', 'landscape'] as const) : [orientation];
  const tried = (paper.roll ? (['portrait'] as const) : asked).map(o => {
    const format = pageFormat(paper, o, options);
    checkCount(pieces, format);
    if (isLarge(paper)) {
      const arrangement = arranged(shapes, format.field, options, true);
      return paper.roll ? cutOff(format, shapes, arrangement) : { format, arrangement };
    }
    return { format, arrangement: clothByCloth(drawings, shapes, format.field, options) };
  });
  const { format, arrangement } = tried.reduce((best, next) =>
    isBetter(
      { ...next.arrangement, crossings: 0, length: 0 },
      { ...best.arrangement, crossings: 0, length: 0 },
    )
      ? next
      : best,
  );
  const tilesOf = tilesIn(arrangement, format.field);
  return {
    format,
    arrangement,
    blocks: blocks.map((_, i) => ({ corner: onLargeSheet(i), tiles: tilesOf(i) })),
    pieces: drawings.map((drawing, n) => {
      const i = blocks.length + n;
      return { ...pieceAt(drawing, arrangement.placings[i]!.turn, onLargeSheet(i)), tiles: tilesOf(i) };
    }),
  };

  function onLargeSheet(i: number): Point {
    const { sheet, by } = arrangement.placings[i]!;
    return { x: by.x, y: by.y + topsOf(arrangement, format.field)[sheet]!.y };
  }
}

function arranged(
  shapes: readonly Shape[],
  field: PageField,
  { arrangement, turning, blocks = [] }: LayoutOptions,
  large: boolean,
): Arrangement {
  const largest = large
    ? field.height > largestGlued.height
      ? {}
      : { largest: field }
    : { largest: largestGlued };
  if (arrangement === 'own-pages') return onOwnPages(shapes, field);
  if (arrangement === 'reading-order') return inReadingOrder(shapes, field, large ? {} : largest);
  return arrange(shapes, field, {
    ahead: blocks.length,
    shortest: large,
    ...largest,
    ...(turning ? { turning } : {}),
  });
}

/** Each cloth's pieces laid by themselves, in the order in which cloths come; the result is in the order of the pieces. */
function clothByCloth(
  drawings: readonly PieceShape[],
  shapes: readonly Shape[],
  field: PageField,
  options: LayoutOptions,
): Arrangement {
  if (options.arrangement === 'own-pages') return arranged(shapes, field, options, false);
  const cloths = [...new Set(drawings.map(d => d.cloth))];
  const groups = cloths.map(cloth => [...drawings.keys()].filter(i => drawings[i]!.cloth === cloth));
  const all = groups
    .map(group =>
      arranged(
        group.map(i => shapes[i]!),
        field,
        options,
        false,
      ),
    )
    .reduce(followedBy);
  const places = groups.flat();
  const inPieceOrder = <T>(list: readonly T[]): readonly T[] =>
    drawings.map((_, i) => list[places.indexOf(i)]!);
  return {
    ...all,
    placings: inPieceOrder(all.placings),
    pages: inPieceOrder(all.pages),
    slivers: inPieceOrder(all.slivers),
  };
}

/** Where each sheet starts on the large sheet, one below the other, and its first row among all rows of pages. */
function topsOf(
  { placings, pages }: Arrangement,
  field: PageField,
): readonly { readonly y: number; readonly row: number }[] {
  const rows: number[] = [];
  for (const [i, { sheet }] of placings.entries())
    rows[sheet] = Math.max(rows[sheet] ?? 0, ...pages[i]!.map(c => c.row + 1));
  let y = 0,
    row = 0;
  return rows.map(count => {
    const top = { y, row };
    y += count * stepY(field) + field.overlap;
    row += count;
    return top;
  });
}

function tilesIn(arrangement: Arrangement, field: PageField): (i: number) => readonly Tile[] {
  const tops = topsOf(arrangement, field);
  return i => {
    const { sheet } = arrangement.placings[i]!;
    const { y, row } = tops[sheet]!;
    return arrangement.pages[i]!.map(own => ({
      sheet,
      own,
      row: row + own.row,
      column: own.column,
      corner: { x: own.column * (field.width - field.overlap), y: y + own.row * stepY(field) },
    }));
  };
}

function pieceAt(drawing: PieceShape, { x: c, y: s }: Point, by: Point): Omit<SheetPiece, 'tiles'> {
  const matrix = compose(uprighting(drawing.frame), { a: c, b: s, c: -s, d: c, e: by.x, f: by.y });
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
  throw refusal('too-many-pages', { pages, most: mostPages });
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

function uprightShape(drawing: PieceShape, overlap: number): Shape {
  const turn = uprighting(drawing.frame);
  const upright = (p: Point) => apply(turn, p);
  return {
    polygons: drawing.silhouette.map(polygon => polygon.map(upright)),
    shafts: heldGrains(drawing, overlap).map(shaft => carriedShaft(shaft, upright)),
  };
}
