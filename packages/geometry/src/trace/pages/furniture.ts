import { pathStart } from '../../path/path.js';
import type { DrawnLine } from '../drawing/drawing.js';
import type { DrawnPage } from './page.js';

/** Of the pages: what stands at one spot of the paper on so many is the page's own. */
const leastShare = 0.5;
const fewest = 2;
/** mm: nearer than this is one spot. */
const spot = 0.25;

/** Pages without what belongs to the paper and not to the pattern: what stands at one spot of it on half of them. */
export function withoutFurniture(pages: readonly DrawnPage[]): readonly DrawnPage[] {
  const counts = new Map<string, number>();
  for (const { drawing } of pages)
    for (const key of new Set(drawing.lines.map(keyOf))) counts.set(key, (counts.get(key) ?? 0) + 1);
  const isOwn = (line: DrawnLine): boolean =>
    counts.get(keyOf(line))! >= Math.max(fewest, leastShare * pages.length);
  return pages.map(page => ({
    ...page,
    drawing: { ...page.drawing, lines: page.drawing.lines.filter(line => !isOwn(line)) },
  }));
}

/** A line by its shape and where it lies on the paper, whichever way it was drawn. */
function keyOf({ path, closed }: DrawnLine): string {
  const round = (value: number): number => Math.round(value / spot);
  const from = pathStart(path),
    to = path.segments.at(-1)!.at(-1)!;
  const ends = [`${round(from.x)} ${round(from.y)}`, `${round(to.x)} ${round(to.y)}`].sort();
  return `${closed} ${path.segments.length} ${ends.join(' ')}`;
}
