import {
  type Affine,
  at,
  compose,
  type Path,
  type Point,
  polyline,
  transformedPath,
} from '@paperhinge/geometry';
import { blockGrid, placeForBlock } from '../drawing/block-place.js';
import type { Ink, TypeMeasure } from '../drawing/ink.js';
import { fitted, setCentred, setLine } from '../drawing/lettering.js';
import { inkChords } from '../drawing/piece-shape.js';
import { chords, meetsRectangle, type Polygon, type Room } from '../drawing/room.js';
import { closedStroke, stroke } from '../drawing/shapes.js';
import type { Page } from '../pages/plan.js';
import type { Slab } from './stack.js';

export interface MapPiece {
  readonly title: string;
  readonly cutting: Path;
  readonly matrix: Affine;
  readonly polygons: readonly Polygon[];
}

/** The large sheet in small: every page with its label, every piece with its name. At most `width` × `height` mm. */
export function mapSlab(
  measure: TypeMeasure,
  pages: readonly Page[],
  overlap: number,
  pieces: readonly MapPiece[],
  width: number,
  height: number,
): Slab {
  const tiles = pages.filter(p => p.kind === 'tile');
  const x0 = Math.min(...tiles.map(p => p.window[0])),
    y0 = Math.min(...tiles.map(p => p.window[1]));
  const x1 = Math.max(...tiles.map(p => p.window[0] + p.window[2])),
    y1 = Math.max(...tiles.map(p => p.window[1] + p.window[3]));
  const k = Math.min(width / (x1 - x0), height / (y1 - y0), 0.25);
  return {
    height: (y1 - y0) * k,
    draw: (x, y) => {
      const shrink: Affine = { a: k, b: 0, c: 0, d: k, e: x - x0 * k, f: y - y0 * k };
      const to = (p: { x: number; y: number }) => at(p.x * k + shrink.e, p.y * k + shrink.f);
      const outlines = pieces.flatMap(({ polygons }) => chords(polygons[0]!.map(to), true));
      const grid = tiles.flatMap(p => [
        ...pageInks(p, overlap, to),
        ...labelInks(measure, p, overlap, to, outlines),
      ]);
      return [...grid, ...pieces.flatMap(p => pieceInks(measure, p, shrink, to, grid))];
    },
  };
}

type To = (p: { x: number; y: number }) => Point;

/** The page without the strips that its neighbours cover, so that the grid is drawn by single lines. */
function cornersOf({ window: [x, y, w, h], neighbours }: Page, overlap: number): readonly Point[] {
  const right = x + w - (neighbours.right ? overlap : 0),
    below = y + h - (neighbours.below ? overlap : 0);
  return [at(x, y), at(right, y), at(right, below), at(x, below)];
}

function pageInks(page: Page, overlap: number, to: To): readonly Ink[] {
  const corners = cornersOf(page, overlap).map(to);
  return [stroke('map-page', polyline(...corners, corners[0]!))];
}

/** A page's label and number, in a corner of it or its middle that no outline runs through. */
function labelInks(
  measure: TypeMeasure,
  page: Page,
  overlap: number,
  to: To,
  outlines: Room['ink'],
): readonly Ink[] {
  const [first, , last] = cornersOf(page, overlap).map(to) as [Point, Point, Point];
  const size = Math.min(2.6, (last.x - first.x) * 0.2);
  const small = size * 0.75;
  const wide = Math.max(
    measure.width(page.label, size, 'bold'),
    measure.width(`p ${page.number}`, small, 'regular'),
  );
  const [high, edge] = [size * 1.95, size * 0.35];
  const lefts = [first.x + edge, last.x - wide - edge, (first.x + last.x - wide) / 2];
  const tops = [first.y + edge * 0.6, last.y - high - edge * 0.4, (first.y + last.y - high) / 2];
  const places = tops.flatMap(y => lefts.map(x => at(x, y)));
  const isClear = ({ x, y }: Point) =>
    !outlines.some(([a, b]) => meetsRectangle(a.x, a.y, b.x, b.y, x - 0.2, y, x + wide + 0.2, y + high));
  const { x, y } = places.find(isClear) ?? places[0]!;
  return [
    setLine(measure, page.label, { role: 'text', size, weight: 'bold' }, at(x, y + size * 0.85)),
    setLine(measure, `p ${page.number}`, { role: 'text', size: small }, at(x, y + size * 1.65)),
  ];
}

/** A piece's outline, its name where no page line or label crosses it. */
function pieceInks(
  measure: TypeMeasure,
  piece: MapPiece,
  shrink: Affine,
  to: To,
  others: readonly Ink[],
): readonly Ink[] {
  const outline = closedStroke('map-piece', transformedPath(piece.cutting, compose(piece.matrix, shrink)));
  const room: Room = { inside: piece.polygons[0]!.map(to), ink: others.flatMap(inkChords) };
  const grid = blockGrid(room, at(0, -1), 0.35);
  for (const size of [3.2, 2.7, 2.3, 1.9, 1.5, 1.2])
    for (const reading of [at(0, -1), at(1, 0)]) {
      const words = fitted(measure, piece.title, size, 'bold', 36);
      const width = measure.width(words, size, 'bold'),
        height = size * 0.95;
      const middle =
        reading.x === 0 ? placeForBlock(grid, width, height) : placeForBlock(grid, height, width);
      if (middle)
        return [outline, setCentred(measure, words, { role: 'text', size, weight: 'bold' }, middle, reading)];
    }
  return [outline];
}
