import { type Polygon, polygonHolds } from '../plane/polygon.js';
import { meetsRectangle, type Rectangle } from '../plane/rectangle.js';

/**
 * The grid of page windows over a sheet, in mm. Neighbouring windows share a band `overlap` wide; the band belongs to
 * the page before (left or above), so that a page is needed only for what lies beyond it.
 */
export interface PageField {
  readonly width: number;
  readonly height: number;
  readonly overlap: number;
}

export const stepX = (field: PageField): number => field.width - field.overlap;
export const stepY = (field: PageField): number => field.height - field.overlap;
/** How many windows in a row are needed to show a length: ceil((L − o) / (p − o)), at least one. */
export const windowsFor = (length: number, window: number, overlap: number): number =>
  Math.max(Math.ceil((length - overlap) / (window - overlap)), 1);
/** The column (or row) that a coordinate belongs to. */
export const ownerOf = (at: number, window: number, overlap: number): number =>
  Math.max(Math.ceil((at - overlap) / (window - overlap)) - 1, 0);

/** One cell of the raster that shapes are laid on. */
export interface Cell {
  readonly row: number;
  readonly column: number;
}

/** The part of the sheet that belongs to a page alone: [x0, y0, x1, y1]. */
export function ownPart(field: PageField, { row, column }: Cell): Rectangle {
  const { overlap: o } = field,
    sx = stepX(field),
    sy = stepY(field);
  const x = column * sx + (column > 0 ? o : 0),
    y = row * sy + (row > 0 ? o : 0);
  return [x, y, (column + 1) * sx + o, (row + 1) * sy + o];
}

/** The pages on which some part of the polygons lies, in reading order. Exact for polygons. */
export function pagesOf(field: PageField, polygons: readonly Polygon[]): readonly Cell[] {
  const all = polygons.flat();
  const columns = span(
    all.map(p => p.x),
    field.width,
    field.overlap,
  );
  const rows = span(
    all.map(p => p.y),
    field.height,
    field.overlap,
  );
  return rows
    .flatMap(row => columns.map(column => ({ row, column })))
    .filter(cell => polygons.some(p => meets(p, ownPart(field, cell))));
}

function span(values: readonly number[], window: number, overlap: number): readonly number[] {
  const first = ownerOf(Math.min(...values), window, overlap),
    last = ownerOf(Math.max(...values), window, overlap);
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}

function meets(polygon: Polygon, own: Rectangle): boolean {
  for (let i = 0, j = polygon.length - 1; i < polygon.length; j = i++) {
    if (meetsRectangle(polygon[j]!, polygon[i]!, own)) return true;
  }
  const [x0, y0, x1, y1] = own;
  return polygonHolds(polygon, { x: (x0 + x1) / 2, y: (y0 + y1) / 2 });
}
