import type { Box } from '../../curve/bounds.js';
import { boundsOfPath } from '../../path/bounds.js';
import type { DrawnLine } from '../drawing/drawing.js';
import type { DrawnPage } from './page.js';

/** Of a page's sides: a frame is at least as wide and high. */
const leastShare = 0.6;
/** mm: lines of a frame meet at its corners, lie level, and are as long on one page as on the next. */
const slack = 0.6;

/**
 * Pages with the frames that are drawn on them as their windows, and without the frames: the largest rectangle on a
 * page, if all pages have one of one size.
 */
export function framed(pages: readonly DrawnPage[]): readonly DrawnPage[] {
  const frames = pages.map(frameOf);
  const [first] = frames;
  const isSame = (box: Box | undefined): boolean =>
    box !== undefined &&
    Math.abs(width(box) - width(first!)) <= slack &&
    Math.abs(height(box) - height(first!)) <= slack;
  if (!first || !frames.every(isSame)) return pages;
  return pages.map((page, i) => {
    const window = frames[i]!;
    const lines = page.drawing.lines.filter(line => !liesOn(line, window));
    return { ...page, window, cuts: true, drawing: { ...page.drawing, lines } };
  });
}

const width = ({ min, max }: Box): number => max.x - min.x;
const height = ({ min, max }: Box): number => max.y - min.y;

/** The largest rectangle on a page: drawn in one, or as four lines that meet. */
function frameOf({ drawing, width: wide, height: high }: DrawnPage): Box | undefined {
  const isLarge = (box: Box): boolean => width(box) >= leastShare * wide && height(box) >= leastShare * high;
  const inOne = drawing.lines.filter(isRectangle).map(({ path }) => boundsOfPath(path));
  const level = drawing.lines.filter(({ path }) => path.segments.every(segment => segment.length === 2));
  const boxes = level.map(({ path }) => boundsOfPath(path));
  const rows = boxes.filter(box => height(box) <= slack && width(box) >= leastShare * wide),
    columns = boxes.filter(box => width(box) <= slack && height(box) >= leastShare * high);
  const [top, bottom] = [lowest(rows, box => box.min.y), lowest(rows, box => -box.max.y)];
  const [left, right] = [lowest(columns, box => box.min.x), lowest(columns, box => -box.max.x)];
  const ofLines =
    top && bottom && left && right
      ? [{ min: { x: left.min.x, y: top.min.y }, max: { x: right.max.x, y: bottom.max.y } }]
      : [];
  return lowest([...inOne, ...ofLines].filter(isLarge), box => -width(box) * height(box));
}

const lowest = (boxes: readonly Box[], of: (box: Box) => number): Box | undefined =>
  [...boxes].sort((a, b) => of(a) - of(b))[0];

function isRectangle({ path, closed }: DrawnLine): boolean {
  if (!closed || path.segments.length < 4 || path.segments.length > 5) return false;
  return path.segments.every(segment => {
    const from = segment[0],
      to = segment.at(-1)!;
    return segment.length === 2 && Math.min(Math.abs(from.x - to.x), Math.abs(from.y - to.y)) <= slack;
  });
}

/** Whether a line runs along a frame and nowhere else. */
function liesOn({ path }: DrawnLine, { min, max }: Box): boolean {
  const near = (a: number, b: number): boolean => Math.abs(a - b) <= slack;
  return path.segments.every(segment => {
    const points = [segment[0], segment.at(-1)!];
    return (
      points.every(p => near(p.x, min.x)) ||
      points.every(p => near(p.x, max.x)) ||
      points.every(p => near(p.y, min.y)) ||
      points.every(p => near(p.y, max.y))
    );
  });
}
