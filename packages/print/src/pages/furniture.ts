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
import type { JoiningWords } from '../words/page-words.js';
import type { PageFormat } from './format.js';
import type { Join, Joins } from './joins.js';
import type { LinesOnPages } from './lines-on-pages.js';
import type { Page } from './plan.js';

const right = at(1, 0),
  down = at(0, 1),
  up = at(0, -1);
/** mm: half a match mark. */
const half = 3.2;
/** mm: em size of the foot line, 7 pt. */
export const footSize = 2.5;
/** mm from the window down to the foot line's baseline: its tails end 3.1 mm below, where small printers still reach. */
const footDrop = 2.6;
/** mm at the right end of the foot line that it leaves, where pages meet edge to edge, to the name of the page below. */
const besideFoot = 16;
/** mm outside the window at which words stand; printers that reach 6 mm from the edge still print them. */
const outside = 2.6;

/** What pages are put together by: how they are joined, in whose words, and what lies under the words. */
export interface Furnishing {
  readonly format: PageFormat;
  readonly joins: Joins;
  readonly words: JoiningWords;
  readonly measure: TypeMeasure;
  readonly lines?: LinesOnPages;
}

/**
 * What is drawn on one page for putting the pages together, in window coordinates: its edge, its own label in the
 * corner that the next pages cover, the strips that take glue, each neighbour's name, half a mark at each end of every
 * join, and the foot line.
 */
export function pageFurniture(page: Page, footer: string, furnishing: Furnishing): Drawing {
  const { format, measure } = furnishing;
  const { width: w, height: h } = format.field;
  return {
    inks: [
      stroke('page-edge', polyline(at(0, 0), at(w, 0), at(w, h), at(0, h), at(0, 0))),
      labelInk(page, furnishing),
      footInk(footer, format, measure),
      ...strips(page, furnishing),
      ...edgesToCut(page, furnishing),
    ],
  };
}

/** The first of some words that no line runs through, else the first. */
function firstClear(tried: readonly Lettering[], page: Page, { lines }: Furnishing): Lettering {
  return tried.find(word => lines?.isClear(page, roundWord(word, page)) ?? true) ?? tried[0]!;
}

/** The strips cross in the bottom right corner, which is covered once the page is joined: the label's place. */
function labelInk(page: Page, furnishing: Furnishing): Ink {
  const { width: w, height: h, overlap: o } = furnishing.format.field;
  const size = Math.min(Math.max(o, 6) * 0.62, 6);
  const corner = Math.max(o, 8) / 2;
  const label = (x: number, y: number) =>
    setCentred(furnishing.measure, page.label, { role: 'page-text', size }, at(x, y), right);
  const along = [0, 14, 26, 40, 56];
  const tried = [
    ...along.map(d => label(w - corner - d, h - corner)),
    ...along.map(d => label(w - corner, h - corner - d)),
  ];
  return firstClear(tried, page, furnishing);
}

/** The strips that the next pages are glued on, right and below. */
function strips(page: Page, furnishing: Furnishing): readonly Ink[] {
  const { format, joins, measure, words } = furnishing;
  const { width: w, height: h, overlap: o } = format.field;
  const own = joins.get(page.label) ?? {};
  const strip = (neighbour: string, arrow: string, middle: (share: number) => Point, direction: Point) => {
    const said = o > 0 ? words.glueHere(neighbour) : [`${neighbour} ${arrow}`];
    const tried = said.flatMap(text =>
      shares.map(share => setCentred(measure, text, stripStyle, middle(share), direction)),
    );
    return firstClear(tried, page, furnishing);
  };
  const { right: next, below } = page.neighbours;
  const inks: Ink[] = [];
  if (next && own.right) {
    if (o > 0) inks.push(straight('join-line', at(w - o, 0), at(w - o, h)));
    inks.push(strip(next, '→', share => at(o > 0 ? w - o / 2 : w + outside, h * share), up));
    inks.push(...marks(own.right, { from: at(w - o, 0), along: down, length: h, side: -1 }, measure));
  }
  if (below && own.below) {
    if (o > 0) inks.push(straight('join-line', at(0, h - o), at(w, h - o)));
    const middle = (share: number) =>
      o > 0 ? at(w * share, h - o / 2) : at(w - besideFoot / 2, h + footDrop - stripStyle.size / 3);
    inks.push(strip(below, '↓', middle, right));
    inks.push(...marks(own.below, { from: at(0, h - o), along: right, length: w, side: -1 }, measure));
  }
  return inks;
}

/** What is said at the edges that are laid over the pages before, left and above. */
function edgesToCut(page: Page, furnishing: Furnishing): readonly Ink[] {
  const { format, joins, measure, words } = furnishing;
  const { width: w, height: h, overlap: o } = format.field;
  const own = joins.get(page.label) ?? {};
  const { left, above } = page.neighbours;
  const word = (text: string, middle: Point, direction: Point) =>
    setCentred(measure, text, stripStyle, middle, direction);
  const inks: Ink[] = [];
  if (left && own.left) {
    inks.push(word(o > 0 ? words.layOver(left) : `← ${left}`, at(-outside, h / 2), up));
    inks.push(...marks(own.left, { from: at(0, 0), along: down, length: h, side: 1 }, measure));
  }
  if (above && own.above) {
    inks.push(word(o > 0 ? words.layOver(above) : `↑ ${above}`, at(w / 2, -outside), right));
    inks.push(...marks(own.above, { from: at(0, 0), along: right, length: w, side: 1 }, measure));
  }
  return inks;
}

const stripStyle = { role: 'page-text', size: 2.5 } as const;

/** The line under a page's window. */
export const footInk = (footer: string, { field }: PageFormat, measure: TypeMeasure): Ink =>
  setLine(measure, footer, { role: 'page-text', size: footSize }, at(0, field.height + footDrop), right);

/** mm that the foot line may run. */
export const footRoom = ({ field }: PageFormat): number => field.width - (field.overlap > 0 ? 0 : besideFoot);

/** Where along a strip its words are tried. */
const shares = [0.5, 0.36, 0.64, 0.24, 0.76, 0.42, 0.58, 0.86];
/** The box round a word of the page, on the sheet. */
function roundWord(word: Lettering, { window: [x, y] }: Page): Rectangle {
  const box = letteringBox(word);
  const [xs, ys] = [box.map(p => p.x), box.map(p => p.y)];
  return [x + Math.min(...xs), y + Math.min(...ys), x + Math.max(...xs), y + Math.max(...ys)];
}

/**
 * Half of each of a join's two marks: a triangle whose base lies on the join, pointing into its own page, with the
 * join's name behind it. Joined, two triangles make a diamond between two like names.
 */
function marks(join: Join, { from, along, length, side }: JoinSide, measure: TypeMeasure): readonly Ink[] {
  const into = join.direction === 'across' ? at(side, 0) : at(0, side);
  return join.places.flatMap((share): readonly Ink[] => {
    const middle = at(from.x + along.x * share * length, from.y + along.y * share * length);
    const step = (a: number, i: number) =>
      at(middle.x + along.x * a + into.x * i, middle.y + along.y * a + into.y * i);
    const mark: Fill = fill('match-mark', step(-half, 0), step(0, half), step(half, 0));
    return [mark, setCentred(measure, join.name, { role: 'page-text', size: 3.2 }, step(0, half + 2), right)];
  });
}

/** A side of the page along which it is joined. */
interface JoinSide {
  readonly from: Point;
  readonly along: Point;
  /** mm. */
  readonly length: number;
  /** −1 where the page lies before the join (left of it, above it), 1 where it lies after. */
  readonly side: 1 | -1;
}
