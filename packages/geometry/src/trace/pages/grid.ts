import { translation } from '../../affine.js';
import type { Box } from '../../curve/bounds.js';
import { boundsOfPath } from '../../path/bounds.js';
import { intersectPaths } from '../../path/intersect.js';
import { pathLength, pointAlong, subpath } from '../../path/length.js';
import { endTangent, pathEnd, pathStart, polyline, startTangent, transformedPath } from '../../path/path.js';
import { coincidenceTolerance } from '../../tolerance.js';
import { add, angleBetween, distance, type Point, subtract } from '../../vector.js';
import type { DrawnLine, ForeignDrawing } from '../drawing/drawing.js';
import { atEdge, type DrawnPage, type GridWishes, reachesOut, windowOf } from './page.js';

/** Pages laid beside one another. */
export interface Laid {
  readonly drawing: ForeignDrawing;
  /** mm: root mean square of how far lines that run on across a join miss one another, once the pages are moved to fit. */
  readonly residualMm: number;
  readonly worstMm: number;
  /** mm: the same before the pages were moved. */
  readonly missMm: number;
  /** Places where a line runs on across a join, and ends of lines at pages' edges, two of which make a place. */
  readonly joins: number;
  readonly ends: number;
}

/** mm: ends that run on across a join lie no farther apart than this before the pages are moved. */
const reach = 6;
const sameWay = (12 * Math.PI) / 180;
const rounds = 200;

/**
 * Pages in reading order laid in so many columns, each over the one before by the overlap; then all moved together, so
 * that lines which are cut off at one page's edge run on in the next as truly as they can.
 */
export function laidInGrid(pages: readonly DrawnPage[], { columns, overlap }: GridWishes): Laid {
  const windows = pages.map(windowOf);
  const wide = Math.max(...windows.map(w => w.max.x - w.min.x)) - overlap,
    high = Math.max(...windows.map(w => w.max.y - w.min.y)) - overlap;
  return laidAt(pages, inRows(pages.length, columns), { wide, high, overlap });
}

/** A place in rows and columns. */
export interface GridPlace {
  readonly column: number;
  readonly row: number;
}

/** So many places in reading order. */
export const inRows = (count: number, columns: number): readonly GridPlace[] =>
  Array.from({ length: count }, (_, i) => ({ column: i % columns, row: Math.floor(i / columns) }));

/** How far pages beside one another lie apart, and over one another, mm. */
export interface GridSteps {
  readonly wide: number;
  readonly high: number;
  readonly overlap: number;
}

/** Pages at their places in rows and columns, moved together until lines run on across the joins. */
export function laidAt(
  pages: readonly DrawnPage[],
  places: readonly GridPlace[],
  { wide, high, overlap }: GridSteps,
): Laid {
  const windows = pages.map(windowOf);
  const shifts = windows.map(
    ({ min }, i): Point => ({
      x: places[i]!.column * wide - min.x,
      y: places[i]!.row * high - min.y,
    }),
  );
  const own = pages.map((page, i): DrawnPage => {
    const { column, row } = places[i]!;
    const isThere = (c: number, r: number): boolean =>
      places.some(other => other.column === c && other.row === r);
    // What two pages both show is taken from each up to the middle of it.
    const { min, max } = windows[i]!,
      half = overlap / 2;
    const window = {
      min: {
        x: min.x + (isThere(column - 1, row) ? half : 0),
        y: min.y + (isThere(column, row - 1) ? half : 0),
      },
      max: {
        x: max.x - (isThere(column + 1, row) ? half : 0),
        y: max.y - (isThere(column, row + 1) ? half : 0),
      },
    };
    const isWhole = !page.drawing.lines.some(({ path }) => reachesOut(boundsOfPath(path), window));
    return isWhole && page.cuts !== true && half === 0
      ? page
      : { ...page, window, drawing: cutTo(page.drawing, window) };
  });
  const ends = own.map((page, i) => endsAtEdge(page, page.window ?? windows[i]!));
  const pairs = runningOn(ends, shifts);
  const moved = relaxed(shifts, pairs);
  const missesAt = (places: readonly Point[]): readonly number[] =>
    pairs.map(({ a, b }) => distance(add(a.at, places[a.page]!), add(b.at, places[b.page]!)));
  const misses = missesAt(moved);
  return {
    drawing: {
      lines: own.flatMap((page, i) =>
        page.drawing.lines.map(line => ({
          ...line,
          path: transformedPath(line.path, translation(moved[i]!)),
        })),
      ),
      words: pages.flatMap((page, i) =>
        page.drawing.words.map(word => ({ ...word, at: add(word.at, moved[i]!) })),
      ),
    },
    residualMm: rootMeanSquare(misses),
    missMm: rootMeanSquare(missesAt(shifts)),
    worstMm: Math.max(0, ...misses),
    joins: misses.length,
    ends: ends.flat().length,
  };
}

/** A page's lines as far as they lie in its window. */
function cutTo(drawing: ForeignDrawing, { min, max }: Box): ForeignDrawing {
  const ring = polyline(min, { x: max.x, y: min.y }, max, { x: min.x, y: max.y }, min);
  const isIn = ({ x, y }: Point): boolean => x >= min.x && x <= max.x && y >= min.y && y <= max.y;
  const lines = drawing.lines.flatMap((line): DrawnLine[] => {
    const length = pathLength(line.path);
    const cuts = intersectPaths(line.path, ring).map(meeting => meeting.alongA);
    const stops = [0, ...cuts.sort((a, b) => a - b), length];
    const parts = stops.slice(1).flatMap((to, i) => {
      const from = stops[i]!;
      return to - from > coincidenceTolerance && isIn(pointAlong(line.path, (from + to) / 2))
        ? [[from, to] as const]
        : [];
    });
    return parts.length === 1 && cuts.length === 0
      ? [line]
      : parts.map(([from, to]) => ({ ...line, closed: false, path: subpath(line.path, from, to) }));
  });
  return { lines, words: drawing.words };
}

/** Whether any line of a page ends where the page is cut off. */
export const goesOnBeyond = (page: DrawnPage): boolean => endsAtEdge(page, windowOf(page)).length > 0;

interface End {
  readonly page: number;
  readonly at: Point;
  /** Outwards, off the page. */
  readonly way: Point;
}

function endsAtEdge({ drawing }: DrawnPage, { min, max }: Box): readonly Omit<End, 'page'>[] {
  const isOff = ({ x, y }: Point): boolean =>
    Math.min(Math.abs(x - min.x), Math.abs(x - max.x), Math.abs(y - min.y), Math.abs(y - max.y)) <= atEdge;
  return drawing.lines.flatMap(({ path, closed }) => {
    if (closed) return [];
    const back = startTangent(path);
    return [
      { at: pathStart(path), way: { x: -back.x, y: -back.y } },
      { at: pathEnd(path), way: endTangent(path) },
    ].filter(end => isOff(end.at));
  });
}

interface Pair {
  readonly a: End;
  readonly b: End;
}

/** Each end with the nearest on another page that goes the other way, if that one finds it nearest, too. */
function runningOn(
  ends: readonly (readonly Omit<End, 'page'>[])[],
  shifts: readonly Point[],
): readonly Pair[] {
  const all = ends.flatMap((own, page) => own.map((end): End => ({ ...end, page })));
  const nearest = (end: End): End | undefined => {
    let best: End | undefined,
      far = reach;
    for (const other of all) {
      if (other.page === end.page) continue;
      const gap = distance(add(end.at, shifts[end.page]!), add(other.at, shifts[other.page]!));
      const turn = Math.abs(angleBetween(end.way, { x: -other.way.x, y: -other.way.y }));
      if (gap < far && turn < sameWay) [best, far] = [other, gap];
    }
    return best;
  };
  return all.flatMap((a, i) => {
    const b = nearest(a);
    return b && all.indexOf(b) > i && nearest(b) === a ? [{ a, b }] : [];
  });
}

/** Each page moved by the mean of what its joins miss, again and again; the first stays. */
function relaxed(shifts: readonly Point[], pairs: readonly Pair[]): readonly Point[] {
  const now = [...shifts];
  for (let round = 0; round < rounds; round++)
    for (let page = 1; page < now.length; page++) {
      const own = pairs.filter(({ a, b }) => a.page === page || b.page === page);
      if (own.length === 0) continue;
      const misses = own.map(({ a, b }) => {
        const [mine, theirs] = a.page === page ? [a, b] : [b, a];
        return subtract(add(theirs.at, now[theirs.page]!), add(mine.at, now[page]!));
      });
      const by = { x: mean(misses.map(m => m.x)), y: mean(misses.map(m => m.y)) };
      now[page] = add(now[page]!, by);
    }
  return now;
}

const rootMeanSquare = (values: readonly number[]): number =>
  values.length === 0 ? 0 : Math.sqrt(mean(values.map(value => value * value)));
const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
