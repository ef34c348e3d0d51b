import { translation } from '../../affine.js';
import type { Box } from '../../curve/bounds.js';
import { boundsOfPath } from '../../path/bounds.js';
import { pathStart, transformedPath } from '../../path/path.js';
import { add, distance, type Point, subtract } from '../../vector.js';
import type { DrawnLine, ForeignDrawing } from '../drawing/drawing.js';
import { type DrawnPage, reachesOut, windowOf } from './page.js';

/** Pages seen to be windows onto one sheet: the sheet, and which pages showed it. */
export interface OneSheet {
  readonly drawing: ForeignDrawing;
  readonly pages: number;
  /** mm by which one line lies otherwise on two pages, at most. */
  readonly worstMm: number;
}

/** Fewer lines in common than this may be chance, unless one of them goes on beyond the paper. */
const fewest = 3;
/** mm: what two pages draw alike lies alike. */
const alike = 0.05;

/**
 * Many programs draw the whole sheet on every page and let it be cut off at the page's edge. Then the same lines stand
 * on many pages, only moved: how far is found by vote of the lines that are unlike all others, page by page from the
 * one with most of them, and the lines of all pages are laid over one another. `undefined` where pages have not enough
 * in common.
 */
export function oneSheet(pages: readonly DrawnPage[]): OneSheet | undefined {
  const marks = pages.map(page => page.drawing.lines.map(line => markOn(page, line)));
  const own = marks.map(uniqueMarks);
  const first = own.reduce((best, mine, i) => (mine.size > own[best]!.size ? i : best), 0);
  const shifts = new Map<number, Point>([[first, { x: 0, y: 0 }]]);
  const known = new Map(own[first]);
  for (let found = true; found; ) {
    found = false;
    for (const [i, mine] of own.entries()) {
      const by = shifts.has(i) ? undefined : commonShift(mine, known);
      if (!by) continue;
      found = true;
      shifts.set(i, by);
      for (const [key, { at, goesOn }] of mine)
        if (!known.has(key)) known.set(key, { at: add(at, by), goesOn });
    }
  }
  if (shifts.size < 2) return undefined;
  const windows = [...shifts].flatMap(([i, by]) => {
    const { window } = pages[i]!;
    return window ? [movedBox(window, by)] : [];
  });
  const laid = new Map<string, DrawnLine>();
  let worstMm = 0;
  for (const [i, by] of shifts)
    for (const line of pages[i]!.drawing.lines) {
      const moved = { ...line, path: transformedPath(line.path, translation(by)) };
      const { key, at } = markOf(moved);
      const there = laid.get(spot(key, at));
      if (there) worstMm = Math.max(worstMm, distance(pathStart(there.path), at));
      else if (!isFrame(moved, windows)) laid.set(spot(key, at), moved);
    }
  const words = [...shifts].flatMap(([i, by]) =>
    pages[i]!.drawing.words.map(word => ({ ...word, at: add(word.at, by) })),
  );
  return { drawing: { lines: [...laid.values()], words }, pages: shifts.size, worstMm };
}

interface Mark {
  readonly key: string;
  readonly at: Point;
}

/** A mark on a page: whether it goes on beyond what the page shows. */
interface PageMark {
  readonly at: Point;
  readonly goesOn: boolean;
}

const markOn = (page: DrawnPage, line: DrawnLine): Mark & PageMark => ({
  ...markOf(line),
  goesOn: reachesOut(boundsOfPath(line.path), windowOf(page)),
});

/** A line by its shape, wherever it lies. */
function markOf({ path, layer }: DrawnLine): Mark {
  const at = pathStart(path);
  const places = path.segments.slice(0, longestKey).flatMap(segment => segment.map(p => subtract(p, at)));
  const key = places.map(({ x, y }) => `${Math.round(x * 10)} ${Math.round(y * 10)}`).join(',');
  return { key: `${layer} ${path.segments.length} ${key}`, at };
}
const longestKey = 24;
const spot = (key: string, { x, y }: Point): string => `${Math.round(x * 2)} ${Math.round(y * 2)} ${key}`;

/** Lines whose shape stands once on their page. */
function uniqueMarks(marks: readonly (Mark & PageMark)[]): ReadonlyMap<string, PageMark> {
  const places = new Map<string, PageMark | undefined>();
  for (const mark of marks) places.set(mark.key, places.has(mark.key) ? undefined : mark);
  return new Map([...places].flatMap(([key, mark]) => (mark ? [[key, mark] as const] : [])));
}

/** The shift that most lines of a page agree on with those that are known. */
function commonShift(
  own: ReadonlyMap<string, PageMark>,
  known: ReadonlyMap<string, PageMark>,
): Point | undefined {
  const shifts = [...own].flatMap(([key, { at, goesOn }]) => {
    const there = known.get(key);
    return there ? [{ by: subtract(there.at, at), goesOn: goesOn || there.goesOn }] : [];
  });
  const agreeing = (by: Point) => shifts.filter(other => distance(other.by, by) <= alike);
  const best = shifts
    .map(({ by }) => ({ by, alike: agreeing(by) }))
    .sort((a, b) => b.alike.length - a.alike.length)[0];
  if (!best || best.alike.length <= shifts.length / 2) return undefined;
  // Only a sheet that is drawn on every page goes on where the paper ends.
  return best.alike.length >= fewest || best.alike.some(({ goesOn }) => goesOn) ? best.by : undefined;
}

/** mm: what is as long as a page's window is wide or high frames it. */
const frameReach = 0.6;

/** Whether a line frames a page, or leads along its edge for joining: straight, from side to side of a window. */
function isFrame({ path }: DrawnLine, windows: readonly Box[]): boolean {
  if (path.segments.length > 5 || path.segments.some(segment => segment.length !== 2)) return false;
  const { min, max } = boundsOfPath(path);
  const [wide, high] = [max.x - min.x, max.y - min.y];
  const near = (a: number, b: number): boolean => Math.abs(a - b) <= frameReach;
  return windows.some(window => {
    const [w, h] = [window.max.x - window.min.x, window.max.y - window.min.y];
    return (near(wide, w) && (near(high, h) || high <= strip)) || (near(high, h) && wide <= strip);
  });
}
/** mm: pages overlap by no more. */
const strip = 25;

const movedBox = ({ min, max }: Box, by: Point): Box => ({ min: add(min, by), max: add(max, by) });
