import {
  type Affine,
  apply,
  at,
  compose,
  type Path,
  type Point,
  polyline,
  transformedPath,
  translation,
} from '@paperhinge/geometry';
import { blockGrid, placeForBlock } from '../drawing/block-place.js';
import { type Ink, movedDrawing, type TypeMeasure } from '../drawing/ink.js';
import { fitted, setCentred, setLine } from '../drawing/lettering.js';
import { inkChords } from '../drawing/piece-shape.js';
import { chords, meetsRectangle, type Polygon, type Room } from '../drawing/room.js';
import { circle, closedStroke, straight, stroke } from '../drawing/shapes.js';
import type { Page } from '../pages/plan.js';
import type { Slab } from './stack.js';

export interface MapPiece {
  readonly title: string;
  readonly cutting: Path;
  readonly matrix: Affine;
  readonly polygons: readonly Polygon[];
}

/** mm: narrower than this a page of the map has no legible label. */
const legiblePage = 9;
/** Share of the pieces, and how many in any case, that may have their names beside the map. */
const besideShare = 0.1;
const besideAnyway = 2;

/** mm from the map to the names beside it, and the room that those take at most. */
const [gap, columnWidth] = [5, 26];

/**
 * The large sheet in small: every page with its label, every piece with its name. Pieces that are too small or too
 * cut up by page lines to hold theirs have it beside the map, at the end of a line.
 * @param heights mm, in the order of preference: the map is as high as the first at which it is legible, else the last
 */
export function mapSlab(
  measure: TypeMeasure,
  pages: readonly Page[],
  overlap: number,
  pieces: readonly MapPiece[],
  width: number,
  heights: readonly number[],
): Slab {
  const most = heights.at(-1)!;
  const fits = (map: SmallMap) => map.unnamed.length === 0 || map.width + gap + columnWidth <= width;
  const isLegible = (map: SmallMap) =>
    map.pageWidth >= legiblePage && map.unnamed.length <= Math.max(pieces.length * besideShare, besideAnyway);
  let map: SmallMap;
  let tried = 0;
  do {
    const height = heights[tried++]!;
    map = mapOf(measure, pages, overlap, pieces, width, height);
    if (!fits(map)) map = mapOf(measure, pages, overlap, pieces, width - gap - columnWidth, height);
  } while (!isLegible(map) && tried < heights.length);
  const column = namesBeside(measure, map.unnamed, map.width + gap, map.height, most);
  const drawing = { inks: [...map.inks, ...column.inks] };
  return {
    height: Math.max(map.height, column.height),
    draw: (x, y) => movedDrawing(drawing, translation(at(x, y))).inks,
  };
}

interface SmallMap {
  readonly width: number;
  readonly height: number;
  /** Of its narrowest page. */
  readonly pageWidth: number;
  readonly inks: readonly Ink[];
  readonly unnamed: readonly Unnamed[];
}

function sheetBox(pages: readonly Page[]) {
  const tiles = pages.filter(p => p.kind === 'tile').map(p => p.window);
  const x = Math.min(...tiles.map(w => w[0])),
    y = Math.min(...tiles.map(w => w[1]));
  const right = Math.max(...tiles.map(w => w[0] + w[2])),
    below = Math.max(...tiles.map(w => w[1] + w[3]));
  return { x, y, width: right - x, height: below - y };
}

/** The map with its corner at the origin. */
function mapOf(
  measure: TypeMeasure,
  pages: readonly Page[],
  overlap: number,
  pieces: readonly MapPiece[],
  width: number,
  height: number,
): SmallMap {
  const sheet = sheetBox(pages);
  const k = Math.min(width / sheet.width, height / sheet.height, 0.25);
  const shrink: Affine = { a: k, b: 0, c: 0, d: k, e: -sheet.x * k, f: -sheet.y * k };
  const to = (p: Point) => apply(shrink, p);
  const outlines = pieces.flatMap(({ polygons }) => chords(polygons[0]!.map(to), true));
  const grid = pages
    .filter(p => p.kind === 'tile')
    .flatMap(p => [...pageInks(p, overlap, to), ...labelInks(measure, p, overlap, to, outlines)]);
  const lines = pieces.map(p =>
    closedStroke('map-piece', transformedPath(p.cutting, compose(p.matrix, shrink))),
  );
  const names = pieces.map(p => nameInk(measure, p, to, grid));
  return {
    width: sheet.width * k,
    height: sheet.height * k,
    pageWidth: k * Math.min(...pages.filter(p => p.kind === 'tile').map(p => p.window[2])),
    inks: [...grid, ...lines, ...names.filter(n => n !== undefined)],
    unnamed: pieces
      .filter((_, i) => !names[i])
      .map(({ title, polygons }): Unnamed => ({ title, at: pointIn(polygons[0]!.map(to), grid) })),
  };
}

/** A piece that has no room for its name, and a point of it. */
interface Unnamed {
  readonly title: string;
  readonly at: Point;
}

/** A point of the outline clear of labels and page lines, if there is one. */
function pointIn(outline: Polygon, others: readonly Ink[]): Point {
  const clear = blockGrid({ inside: outline, ink: others.flatMap(inkChords) }, at(0, -1), 0.2);
  const any = blockGrid({ inside: outline, ink: [] }, at(0, -1), 0);
  return (
    placeForBlock(clear, 0.8, 0.8) ??
    placeForBlock(clear, 0.3, 0.3) ??
    placeForBlock(any, 0.2, 0.2) ??
    outline[0]!
  );
}

/** Names in a column, each as near the height of its piece as the others allow, with a line to a dot in it. */
function namesBeside(
  measure: TypeMeasure,
  unnamed: readonly Unnamed[],
  x: number,
  height: number,
  most: number,
): { readonly inks: readonly Ink[]; readonly height: number } {
  const sorted = [...unnamed].sort((a, b) => a.at.y - b.at.y || b.at.x - a.at.x);
  const pitch = Math.min(3, Math.max(most / Math.max(sorted.length, 1), 1.7));
  const size = pitch * 0.76;
  const room = Math.max(height, sorted.length * pitch);
  let above = 0;
  const inks = sorted.flatMap(({ title, at: point }, i): readonly Ink[] => {
    const lowest = room - (sorted.length - i) * pitch;
    const top = Math.min(Math.max(point.y - pitch / 2, above), lowest);
    above = top + pitch;
    const words = fitted(measure, title, size, 'bold', columnWidth);
    return [
      closedStroke('map-piece', circle(point, 0.25)),
      straight('map-page', point, at(x - 0.8, top + pitch / 2)),
      setLine(measure, words, { role: 'text', size, weight: 'bold' }, at(x, top + pitch / 2 + size * 0.3)),
    ];
  });
  return { inks, height: sorted.length * pitch };
}

type To = (p: Point) => Point;

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
  const largest = Math.min(2.6, (last.x - first.x) * 0.2);
  const set = (size: number) => {
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
    return { size, small, first: places[0]!, clear: places.find(isClear) };
  };
  const tried = [1, 0.8, 0.65].map(share => set(largest * share));
  const { size, small, first: corner, clear } = tried.find(t => t.clear) ?? tried[0]!;
  const { x, y } = clear ?? corner;
  return [
    setLine(measure, page.label, { role: 'text', size, weight: 'bold' }, at(x, y + size * 0.85)),
    setLine(measure, `p ${page.number}`, { role: 'text', size: small }, at(x, y + size * 1.65)),
  ];
}

/** A piece's name where no page line or label crosses it; none if there is no such place. */
function nameInk(measure: TypeMeasure, piece: MapPiece, to: To, others: readonly Ink[]): Ink | undefined {
  const room: Room = { inside: piece.polygons[0]!.map(to), ink: others.flatMap(inkChords) };
  const grid = blockGrid(room, at(0, -1), 0.35);
  for (const size of [3.2, 2.7, 2.3, 1.9, 1.5])
    for (const reading of [at(0, -1), at(1, 0)]) {
      const words = fitted(measure, piece.title, size, 'bold', 36);
      const width = measure.width(words, size, 'bold'),
        height = size * 0.95;
      const middle =
        reading.x === 0 ? placeForBlock(grid, width, height) : placeForBlock(grid, height, width);
      if (middle) return setCentred(measure, words, { role: 'text', size, weight: 'bold' }, middle, reading);
    }
  return undefined;
}
