import { translation } from '../../affine.js';
import type { Box } from '../../curve/bounds.js';
import { boundsOfPath } from '../../path/bounds.js';
import { pathStart, transformedPath } from '../../path/path.js';
import { add, distance, type Point, subtract } from '../../vector.js';
import type { DrawnLine, ForeignDrawing } from '../drawing/drawing.js';
import type { DrawnPage } from './page.js';

/** Pages seen to be windows onto one sheet: the sheet, and which pages showed it. */
export interface OneSheet {
  readonly drawing: ForeignDrawing;
  readonly pages: number;
  /** mm by which one line lies otherwise on two pages, at most. */
  readonly worstMm: number;
}

/** Fewer lines in common than this may be chance. */
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
  const marks = pages.map(page => page.drawing.lines.map(markOf));
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
      for (const [key, at] of mine) if (!known.has(key)) known.set(key, add(at, by));
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
function uniqueMarks(marks: readonly Mark[]): ReadonlyMap<string, Point> {
  const places = new Map<string, Point | undefined>();
  for (const { key, at } of marks) places.set(key, places.has(key) ? undefined : at);
  return new Map([...places].flatMap(([key, at]) => (at ? [[key, at] as const] : [])));
}

/** The shift that most lines of a page agree on with those that are known. */
function commonShift(own: ReadonlyMap<string, Point>, known: ReadonlyMap<string, Point>): Point | undefined {
  const shifts = [...own].flatMap(([key, at]) => {
    const there = known.get(key);
    return there ? [subtract(there, at)] : [];
  });
  const agreeing = (by: Point): number => shifts.filter(other => distance(other, by) <= alike).length;
  const best = shifts.map(by => ({ by, count: agreeing(by) })).sort((a, b) => b.count - a.count)[0];
  return best && best.count >= fewest && best.count > shifts.length / 2 ? best.by : undefined;
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
