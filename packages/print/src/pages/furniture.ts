import { at, type Point, polyline } from '@paperhinge/geometry';
import {
  type Drawing,
  type Fill,
  type Ink,
  type Lettering,
  letteringBox,
  type TypeMeasure,
} from '../drawing/ink.js';
import { setCentred, setLine } from '../drawing/lettering.js';
import { fill, straight, stroke } from '../drawing/shapes.js';
import type { Rectangle } from '../plane/rectangle.js';
import type { PageFormat } from './format.js';
import type { Join, Joins } from './joins.js';
import type { LinesOnPages } from './lines-on-pages.js';
import type { Page } from './plan.js';

const right = at(1, 0),
  down = at(0, 1),
  up = at(0, -1);
/** mm: half a match mark. */
const half = 3.2;
/** mm: em size of the foot line. */
export const footSize = 2.1;
/** mm outside the window at which words stand; printers that reach 6 mm from the edge still print them. */
const outside = 2.6;

/**
 * What is drawn on one page for putting the pages together, in window coordinates: its edge, its own label in the corner that the next pages cover,
 * the strips that take glue, each neighbour's name, half a mark at each end of every join, and the foot line.
 */
export function pageFurniture(
  page: Page,
  format: PageFormat,
  joins: Joins,
  footer: string,
  measure: TypeMeasure,
  lines?: LinesOnPages,
): Drawing {
  const { width: w, height: h, overlap: o } = format.field;
  const { left, right: next, above, below } = page.neighbours;
  const own = joins.get(page.label) ?? {};
  const word = (text: string, middle: Point, direction: Point, size = 2.4) =>
    setCentred(measure, text, { role: 'page-text', size }, middle, direction);
  const edge = stroke('page-edge', polyline(at(0, 0), at(w, 0), at(w, h), at(0, h), at(0, 0)));
  const inks: Ink[] = [edge];
  const clear = (word: Lettering) => lines?.isClear(page, roundWord(word, page)) ?? true;
  const firstClear = (tried: readonly Lettering[]) => tried.find(clear) ?? tried[0]!;
  // The strips cross in the bottom right corner, which is covered once the page is joined: the label's place.
  const labelSize = Math.min(Math.max(o, 6) * 0.62, 6);
  const corner = Math.max(o, 8) / 2;
  const label = (x: number, y: number) =>
    setCentred(measure, page.label, { role: 'page-text', size: labelSize }, at(x, y), right);
  const along = [0, 14, 26, 40, 56];
  inks.push(
    firstClear([
      ...along.map(d => label(w - corner - d, h - corner)),
      ...along.map(d => label(w - corner, h - corner - d)),
    ]),
  );
  inks.push(footInk(footer, format, measure));
  if (next && own.right) {
    if (o > 0) inks.push(straight('join-line', at(w - o, 0), at(w - o, h)));
    const middle = (share: number) => at(o > 0 ? w - o / 2 : w + outside, h * share);
    const said = o > 0 ? stripWords(next) : [`${next} →`];
    inks.push(firstClear(said.flatMap(text => shares.map(share => word(text, middle(share), up)))));
    inks.push(...marks(own.right, at(w - o, 0), down, h, -1, measure));
  }
  if (below && own.below) {
    if (o > 0) inks.push(straight('join-line', at(0, h - o), at(w, h - o)));
    const middle = (share: number) => at(w * share, o > 0 ? h - o / 2 : h + outside);
    const said = o > 0 ? stripWords(below) : [`${below} ↓`];
    inks.push(firstClear(said.flatMap(text => shares.map(share => word(text, middle(share), right)))));
    inks.push(...marks(own.below, at(0, h - o), right, w, -1, measure));
  }
  if (left && own.left) {
    inks.push(word(o > 0 ? `cut on this edge, lay over ${left}` : `← ${left}`, at(-outside, h / 2), up, 2.1));
    inks.push(...marks(own.left, at(0, 0), down, h, 1, measure));
  }
  if (above && own.above) {
    inks.push(
      word(o > 0 ? `cut on this edge, lay over ${above}` : `↑ ${above}`, at(w / 2, -outside), right, 2.1),
    );
    inks.push(...marks(own.above, at(0, 0), right, w, 1, measure));
  }
  return { inks };
}

/** The line under a page's window. */
export const footInk = (footer: string, { field }: PageFormat, measure: TypeMeasure): Ink =>
  setLine(measure, footer, { role: 'page-text', size: footSize }, at(0, field.height + outside + 0.6), right);

/** Where along a strip its words are tried. */
const shares = [0.5, 0.36, 0.64, 0.24, 0.76, 0.42, 0.58, 0.86];
const stripWords = (page: string): readonly string[] => [
  `glue ${page} here, its edge on the line`,
  `glue ${page} here`,
  page,
];

/** The box round a word of the page, on the sheet. */
function roundWord(word: Lettering, { window: [x, y] }: Page): Rectangle {
  const box = letteringBox(word);
  const [xs, ys] = [box.map(p => p.x), box.map(p => p.y)];
  return [x + Math.min(...xs), y + Math.min(...ys), x + Math.max(...xs), y + Math.max(...ys)];
}

/**
 * Half of each of a join's two marks: a triangle whose base lies on the join, pointing into its own page, with the
 * join's name behind it. Joined, two triangles make a diamond between two like names.
 * @param side −1 where the page lies before the join (left of it, above it), 1 where it lies after
 */
function marks(
  join: Join,
  from: Point,
  along: Point,
  length: number,
  side: 1 | -1,
  measure: TypeMeasure,
): readonly Ink[] {
  const into = join.direction === 'across' ? at(side, 0) : at(0, side);
  return join.places.flatMap((share): readonly Ink[] => {
    const middle = at(from.x + along.x * share * length, from.y + along.y * share * length);
    const step = (a: number, i: number) =>
      at(middle.x + along.x * a + into.x * i, middle.y + along.y * a + into.y * i);
    const mark: Fill = fill('match-mark', step(-half, 0), step(0, half), step(half, 0));
    return [mark, setCentred(measure, join.name, { role: 'page-text', size: 3.2 }, step(0, half + 2), right)];
  });
}
