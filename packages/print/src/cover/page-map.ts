import { at, type Path, type Point, polyline } from '@paperhinge/geometry';
import { transformedPath } from '@paperhinge/geometry/paths';
import { type Affine, apply, compose, translation } from '@paperhinge/geometry/plane';
import { type Ink, movedDrawing, type TypeMeasure } from '../drawing/ink.js';
import { setLine } from '../drawing/lettering.js';
import { inkChords } from '../drawing/piece-shape.js';
import { closedStroke, stroke } from '../drawing/shapes.js';
import type { Page } from '../pages/plan.js';
import { type Nearby, nearby } from '../plane/nearby.js';
import { boxOf, chords, type Polygon } from '../plane/polygon.js';
import { meetsRectangle } from '../plane/rectangle.js';
import { columnWidth, namesBeside, nameWithin, pointWithin, type Unnamed } from './map-names.js';
import { type MapScale, type MapSheet, mapScale } from './map-scale.js';
import type { Slab } from './stack.js';

export interface MapPiece {
  readonly title: string;
  readonly cutting: Path;
  readonly matrix: Affine;
  readonly polygons: readonly Polygon[];
  /** On which sheet it lies. */
  readonly sheet: number;
}

/** What the map shows. */
export interface MapSource {
  readonly pages: readonly Page[];
  /** mm that neighbouring pages share. */
  readonly overlap: number;
  readonly pieces: readonly MapPiece[];
  /** The name of a sheet where there are several. */
  readonly sheetName: (sheet: number) => string;
  /** What stands on a page that any blank sheet may take the place of. */
  readonly blank: string;
}

/** The map, and whether its labels and names are large enough to read. */
export interface MapSlab extends Slab {
  readonly legible: boolean;
}

/** mm: narrower than this a page of the map has no legible label. */
const legiblePage = 9;
/** Share of the pieces, and how many in any case, that may have their names beside the map. */
const besideShare = 0.1;
const besideAnyway = 2;

/** Lines from more names than this would hide the map; then the cutting list alone says on which pages such pieces are. */
const mostBeside = 16;

/** mm from the map to the names beside it. */
const gap = 5;

/**
 * The sheets in small: every page with its label, every piece with its name. Pieces that are too small or too
 * cut up by page lines to hold theirs have it beside the map, at the end of a line, unless they are many.
 * @param heights mm, in the order of preference: the map is as high as the first at which it is legible, else the last
 */
export function mapSlab(
  measure: TypeMeasure,
  source: MapSource,
  width: number,
  heights: readonly number[],
): MapSlab {
  const besides = ({ unnamed }: SmallMap) => (unnamed.length > mostBeside ? [] : unnamed);
  const fits = (map: SmallMap) => besides(map).length === 0 || map.width + gap + columnWidth <= width;
  const isLegible = (map: SmallMap) =>
    map.pageWidth >= legiblePage &&
    map.unnamed.length <= Math.max(source.pieces.length * besideShare, besideAnyway);
  const nameWidth = (sheet: number) =>
    measure.width(source.sheetName(sheet), captionStyle.size, captionStyle.weight);
  const mapIn = (w: number, h: number) => mapOf(measure, source, mapScale(source.pages, w, h, nameWidth));
  let map: SmallMap;
  let tried = 0;
  do {
    const height = heights[tried++]!;
    map = mapIn(width, height);
    if (!fits(map)) map = mapIn(width - gap - columnWidth, height);
  } while (!isLegible(map) && tried < heights.length);
  const column = namesBeside(measure, besides(map), {
    x: map.width + gap,
    height: map.height,
  });
  const drawing = { inks: [...map.inks, ...column.inks] };
  return {
    legible: isLegible(map),
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

/** The map with its corner at the origin. */
function mapOf(
  measure: TypeMeasure,
  source: MapSource,
  { sheets, scale, width, height }: MapScale,
): SmallMap {
  const parts = sheets.map(sheet => sheetPart(measure, source, sheet));
  const tiles = source.pages.filter(p => p.kind === 'tile');
  return {
    width,
    height,
    pageWidth: scale * Math.min(...tiles.map(p => p.window[2])),
    inks: parts.flatMap(p => p.inks),
    unnamed: parts.flatMap(p => p.unnamed),
  };
}

/** mm: side of the squares by which lines near a place are found on the map. */
const bucket = 8;

function sheetPart(
  measure: TypeMeasure,
  source: MapSource,
  { pages, onto, caption }: MapSheet,
): Pick<SmallMap, 'inks' | 'unnamed'> {
  const number = pages[0]!.sheet ?? 0;
  const pieces = source.pieces.filter(p => p.sheet === number);
  const to = (p: Point) => apply(onto, p);
  const outlines = pieces.map(({ polygons }) => polygons[0]!.map(to));
  const crossing = nearby(
    outlines.flatMap(outline => chords(outline, true)),
    bucket,
  );
  const grid = pages.flatMap(page => {
    const corners = cornersOf(page, source.overlap).map(to);
    return [
      stroke('map-page', polyline(...corners, corners[0]!)),
      ...labelInks(measure, page, corners, crossing, source.blank),
    ];
  });
  const gridLines = nearby(grid.flatMap(inkChords), bucket);
  const linesNear = (outline: Polygon) => {
    const { x0, y0, x1, y1 } = boxOf([outline]);
    return gridLines.within([x0, y0, x1, y1]);
  };
  const names = pieces.map((p, i) => nameWithin(measure, p.title, outlines[i]!, linesNear(outlines[i]!)));
  const lines = pieces.map(p =>
    closedStroke('map-piece', transformedPath(p.cutting, compose(p.matrix, onto))),
  );
  const [x, y] = pages[0]!.window;
  const corner = to({ x: Math.min(x, ...pages.map(p => p.window[0])), y });
  const heading =
    caption > 0
      ? [setLine(measure, source.sheetName(number), captionStyle, at(corner.x, corner.y - captionOff))]
      : [];
  return {
    inks: [...heading, ...grid, ...lines, ...names.filter(n => n !== undefined)],
    unnamed: pieces.flatMap(({ title }, i) =>
      names[i] ? [] : [{ title, at: pointWithin(outlines[i]!, linesNear(outlines[i]!)) }],
    ),
  };
}

const captionStyle = { role: 'text', size: 2.5, weight: 'bold' } as const;
/** mm from a sheet's name down to its top. */
const captionOff = 0.9;

/** The page without the strips that its neighbours cover, so that the grid is drawn by single lines. */
function cornersOf({ window: [x, y, w, h], neighbours }: Page, overlap: number): readonly Point[] {
  const right = x + w - (neighbours.right ? overlap : 0),
    below = y + h - (neighbours.below ? overlap : 0);
  return [at(x, y), at(right, y), at(right, below), at(x, below)];
}

/** mm: em size of labels and numbers on the map, 7 pt: what is set smaller is not read. */
const labelSize = 2.5;

/**
 * A page's label with its number below, in a corner of the page or its middle that no outline runs through; the label
 * alone where the page is too small for both, and in the first corner where outlines leave none.
 */
function labelInks(
  measure: TypeMeasure,
  page: Page,
  corners: readonly Point[],
  outlines: Nearby,
  blank: string,
): readonly Ink[] {
  const [first, , last] = corners as [Point, Point, Point];
  const near = outlines.within([first.x, first.y, last.x, last.y]);
  const below = page.blank ? blank : `p ${page.number}`;
  const label = { text: page.label, weight: 'bold' } as const;
  const number = { text: below, weight: 'regular' } as const;
  const tried = [[label, number], [label]].map(lines => {
    const wide = Math.max(...lines.map(l => measure.width(l.text, labelSize, l.weight)));
    const high = lines.length * linePitch;
    const lefts = spots(first.x + aside, last.x - wide - aside);
    const tops = spots(first.y + aside, last.y - high - aside);
    const fits = wide + aside <= last.x - first.x && high + aside <= last.y - first.y;
    const places = fits ? tops.flatMap(y => lefts.map(x => at(x, y))) : [];
    const isClear = ({ x, y }: Point) =>
      !near.some(([a, b]) => meetsRectangle(a, b, [x - 0.5, y - 0.3, x + wide + 0.5, y + high + 0.2]));
    return { lines, first: places[0], clear: places.find(isClear) };
  });
  const set = tried.find(t => t.clear) ?? tried.find(t => t.first) ?? tried[1]!;
  const { x, y } = set.clear ?? set.first ?? first;
  return set.lines.map(({ text, weight }, i) =>
    setLine(
      measure,
      text,
      { role: 'text', size: labelSize, weight },
      at(x, y + i * linePitch + labelSize * 0.8),
    ),
  );
}

/** Places from one end to the other, the ends first. */
const spots = (from: number, to: number): readonly number[] =>
  [0, 1, 0.5, 0.25, 0.75, 0.125, 0.375, 0.625, 0.875].map(share => from + share * (to - from));

/** mm from one line of a label to the next, and from a page's lines to its label. */
const linePitch = 2.4;
const aside = 0.8;
