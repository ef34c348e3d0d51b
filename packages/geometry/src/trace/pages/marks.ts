import type { Box } from '../../curve/bounds.js';
import type { Point } from '../../vector.js';
import type { GridPlace } from './grid.js';
import type { DrawnPage } from './page.js';

/** mm: what is written for joining stands this near to the edge that it speaks of, within or without. */
const nearEdge = 16;
/** What stands at joins: a letter or two, a number, or both, as A, B3, 12, 4b. */
const markWords = /^([A-Z]{1,2}\d{0,2}|\d{1,2}[A-Za-z]?)$/;

type Side = 'left' | 'right' | 'top' | 'bottom';
const across: Readonly<Record<Side, Side>> = { left: 'right', right: 'left', top: 'bottom', bottom: 'top' };
const steps: Readonly<Record<Side, readonly [number, number]>> = {
  left: [-1, 0],
  right: [1, 0],
  top: [0, -1],
  bottom: [0, 1],
};

/**
 * Places of pages by the letters at their edges: the same letter stands on two pages, at the right of one and at the
 * left of the other, or below and above. `undefined` where that does not place every page, or places two in one spot.
 */
export function placesByMarks(pages: readonly DrawnPage[]): readonly GridPlace[] | undefined {
  const marks = pages.flatMap((page, i) => marksOf(page).map(mark => ({ ...mark, page: i })));
  const places = new Map<number, GridPlace>([[0, { column: 0, row: 0 }]]);
  const open = [0];
  for (let i = open.pop(); i !== undefined; i = open.pop()) {
    const { column, row } = places.get(i)!;
    for (const { text, side } of marks.filter(mark => mark.page === i)) {
      const others = marks.filter(m => m.text === text && m.page !== i && m.side === across[side]);
      if (others.length !== 1) continue;
      const [dx, dy] = steps[side];
      const place = { column: column + dx, row: row + dy };
      const known = places.get(others[0]!.page);
      if (known && (known.column !== place.column || known.row !== place.row)) return undefined;
      if (known) continue;
      places.set(others[0]!.page, place);
      open.push(others[0]!.page);
    }
  }
  const all = pages.flatMap((_, i) => places.get(i) ?? []);
  const spots = new Set(all.map(({ column, row }) => `${column} ${row}`));
  if (all.length < pages.length || spots.size < pages.length) return undefined;
  const least = {
    column: Math.min(...all.map(p => p.column)),
    row: Math.min(...all.map(p => p.row)),
  };
  return all.map(({ column, row }) => ({ column: column - least.column, row: row - least.row }));
}

function marksOf({ drawing, window, width, height }: DrawnPage) {
  const box = window ?? { min: { x: 0, y: 0 }, max: { x: width, y: height } };
  return drawing.words.flatMap(({ text, at }) => {
    const side = markWords.test(text.trim()) ? sideOf(at, box) : undefined;
    return side ? [{ text: text.trim(), side }] : [];
  });
}

/** The edge that a place stands at; none in a corner, which speaks of none alone, or far from all. */
function sideOf({ x, y }: Point, { min, max }: Box): Side | undefined {
  const gaps: readonly (readonly [Side, number])[] = [
    ['left', Math.abs(x - min.x)],
    ['right', Math.abs(x - max.x)],
    ['top', Math.abs(y - min.y)],
    ['bottom', Math.abs(y - max.y)],
  ];
  const near = gaps.filter(([, gap]) => gap <= nearEdge);
  return near.length === 1 ? near[0]![0] : undefined;
}
