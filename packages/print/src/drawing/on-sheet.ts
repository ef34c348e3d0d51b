import type { Point } from '@paperhinge/geometry';
import { type Affine, apply, applyToVector, inverse, scale } from '@paperhinge/geometry/plane';
import type { Polygon } from '../plane/polygon.js';
import { type BlockGrid, placeForBlock } from './block-place.js';
import { type Frame, readable } from './frame.js';
import type { Ink, Lettering } from './ink.js';
import { fitted, lineHeight, plainLine, setCentred } from './lettering.js';
import type { PieceSetting } from './piece-setting.js';

/** Where a piece lies among the pages, in the piece's own coordinates. */
export interface OnSheet {
  /** The page's right and down. */
  readonly frame: Frame;
  /** Lines that fill the strips in which pages join, and the match marks there: words keep off them. */
  readonly joins: readonly (readonly [Point, Point])[];
  readonly pages: readonly PagePart[];
}

/** A page that shows some of the piece. */
export interface PagePart {
  /** Middle of what it shows. */
  readonly middle: Point;
  readonly holds: (p: Point) => boolean;
}

/** What a page shows of the sheet, and where on the sheet the piece has its part there. */
export interface ShownPart {
  readonly own: readonly [x0: number, y0: number, x1: number, y1: number];
  readonly part: Polygon;
}

/**
 * @param matrix carries the piece onto the sheet without stretching it
 * @param joins as lines on the sheet
 */
export function onSheet(
  matrix: Affine,
  joins: readonly (readonly [Point, Point])[],
  pages: readonly ShownPart[],
): OnSheet {
  const back = inverse(matrix);
  return {
    frame: { right: applyToVector(back, { x: 1, y: 0 }), down: applyToVector(back, { x: 0, y: 1 }) },
    joins: joins.map(([a, b]) => [apply(back, a), apply(back, b)]),
    pages: pages.map(({ own: [x0, y0, x1, y1], part }) => ({
      middle: apply(back, middleOf(part)),
      holds: p => {
        const { x, y } = apply(matrix, p);
        return x >= x0 && x <= x1 && y >= y0 && y <= y1;
      },
    })),
  };
}

function middleOf(polygon: Polygon): Point {
  const sum = polygon.reduce((s, p) => ({ x: s.x + p.x, y: s.y + p.y }), { x: 0, y: 0 });
  return { x: sum.x / polygon.length, y: sum.y / polygon.length };
}

/** mm: em sizes tried for a piece's name on each page, and how wide it may run. */
const sizes = [3.4, 2.8, 2.5];
const room = 60;

/** The piece's name on every page that shows it, but the one with its title: each page stands alone. */
export function pageNames(
  { piece, measure }: Pick<PieceSetting, 'piece' | 'measure'>,
  sheet: OnSheet,
  grid: BlockGrid,
  title: readonly Ink[],
): readonly Lettering[] {
  if (sheet.pages.length < 2) return [];
  const name = plainLine(piece.title) || plainLine(piece.name);
  const heading = title.find((t): t is Lettering => t.kind === 'text');
  return sheet.pages.flatMap(page => {
    if (heading && page.holds(heading.at)) return [];
    for (const size of sizes) {
      const text = fitted(measure, name, size, 'bold', room);
      const [long, high] = [measure.width(text, size, 'bold'), lineHeight(size)];
      for (const along of [true, false]) {
        const [width, height] = along ? [long, high] : [high, long];
        const ends = (p: Point) => {
          const to = scale(along ? grid.along : grid.across, long / 2);
          return page.holds({ x: p.x + to.x, y: p.y + to.y }) && page.holds({ x: p.x - to.x, y: p.y - to.y });
        };
        const middle = placeForBlock(grid, width, height, { near: page.middle, accept: ends });
        if (!middle) continue;
        const direction = readable(sheet.frame, along ? grid.along : grid.across);
        return [setCentred(measure, text, { role: 'detail', size, weight: 'bold' }, middle, direction)];
      }
    }
    return [];
  });
}
