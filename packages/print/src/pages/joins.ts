import type { Chord } from '../plane/polygon.js';
import type { Rectangle } from '../plane/rectangle.js';
import type { PageFormat } from './format.js';
import type { LinesOnPages } from './lines-on-pages.js';
import type { Page } from './plan.js';

/** A join between two pages that both exist, with a name of its own. */
export interface Join {
  /** Side by side: numbers; one above the other: letters. No two joins of a file share one. */
  readonly name: string;
  readonly direction: 'across' | 'down';
  /** Shares of the page's side at which its marks stand; they differ from join to join, so that wrong pages do not meet. */
  readonly places: readonly [number, number];
}

type Side = 'left' | 'right' | 'above' | 'below';
/** The joins of each page, by its label and the side they are on. */
export type Joins = ReadonlyMap<string, Readonly<Partial<Record<Side, Join>>>>;

/** mm that a match mark with its name reaches from the join on either side, and half its width along it. */
const reach = 7.5;
const halfWidth = 4;

/**
 * Names every join, in reading order of the pages, and puts its marks where no line of the pattern runs, if there is
 * such a place.
 */
export function joinsOf(pages: readonly Page[], format: PageFormat, lines?: LinesOnPages): Joins {
  const joins = new Map<string, Partial<Record<Side, Join>>>();
  const at = (label: string) => {
    const known = joins.get(label) ?? {};
    joins.set(label, known);
    return known;
  };
  let across = 0,
    down = 0;
  for (const page of pages) {
    const { right, below } = page.neighbours;
    if (right) {
      const used = at(page.label).left;
      const clear = (share: number) => lines?.isClear(page, markZone(page, format, 'across', share)) ?? true;
      const join: Join = {
        name: String(across + 1),
        direction: 'across',
        places: placesOf(across, clear, used),
      };
      across++;
      at(page.label).right = join;
      at(right).left = join;
    }
    if (below) {
      const used = at(page.label).above;
      const clear = (share: number) => lines?.isClear(page, markZone(page, format, 'down', share)) ?? true;
      const join: Join = { name: letters(down), direction: 'down', places: placesOf(down, clear, used) };
      down++;
      at(page.label).below = join;
      at(below).above = join;
    }
  }
  return joins;
}

/** Where a mark's two halves with their names stand on the sheet. */
function markZone(page: Page, format: PageFormat, direction: Join['direction'], share: number): Rectangle {
  const [x, y, w, h] = page.window;
  const { overlap } = format.field;
  if (direction === 'across') {
    const [joinX, middle] = [x + w - overlap, y + share * h];
    return [joinX - reach, middle - halfWidth, joinX + reach, middle + halfWidth];
  }
  const [joinY, middle] = [y + h - overlap, x + share * w];
  return [middle - halfWidth, joinY - reach, middle + halfWidth, joinY + reach];
}

/** Steps that a mark may stand off its first place, and what a step is of the page's side. */
const steps = 13;
const step = 0.026;
const starts = [0.13, 0.55] as const;

/**
 * Each mark starts at a step of its own join's (they repeat after thirteen joins) and moves on to the first that is
 * clear of lines and that the page's own join opposite has not taken.
 */
function placesOf(index: number, clear: (share: number) => boolean, opposite?: Join): Join['places'] {
  const first = (index * 5) % steps;
  const place = (which: 0 | 1): number => {
    const tried = Array.from({ length: steps }, (_, i) => starts[which] + ((first + i) % steps) * step);
    const own = tried.filter(share => Math.abs(share - (opposite?.places[which] ?? -1)) > step / 2);
    return own.find(clear) ?? own[0]!;
  };
  return [place(0), place(1)];
}

/**
 * The strips in which pages join, and the match marks, as lines over the sheet no further apart than 2.5 mm: words keep
 * off them.
 */
export function joinStrips(pages: readonly Page[], format: PageFormat, joins: Joins): readonly Chord[] {
  const { overlap } = format.field;
  return pages.flatMap(page => {
    const [x, y, w, h] = page.window;
    const { right, below } = joins.get(page.label) ?? {};
    const strips: Chord[] = [];
    if (right) strips.push(...hatched([x + w - overlap, y, x + w, y + h], 'upright'));
    if (below) strips.push(...hatched([x, y + h - overlap, x + w, y + h], 'level'));
    for (const join of [right, below])
      if (join)
        for (const share of join.places)
          strips.push(
            ...hatched(
              markZone(page, format, join.direction, share),
              join.direction === 'across' ? 'level' : 'upright',
            ),
          );
    return strips;
  });
}

const spacing = 2.5;

/** Lines along a rectangle from one side to the other. */
function hatched([x0, y0, x1, y1]: Rectangle, way: 'upright' | 'level'): readonly Chord[] {
  const width = way === 'upright' ? x1 - x0 : y1 - y0;
  const count = Math.ceil(width / spacing);
  return Array.from({ length: count + 1 }, (_, i): Chord => {
    const off = count === 0 ? 0 : (i / count) * width;
    return way === 'upright'
      ? [
          { x: x0 + off, y: y0 },
          { x: x0 + off, y: y1 },
        ]
      : [
          { x: x0, y: y0 + off },
          { x: x1, y: y0 + off },
        ];
  });
}

/** Without i, j, l and o, which are taken for figures. */
const alphabet = 'abcdefghkmnpqrstuvwxyz';

function letters(index: number): string {
  const last = alphabet[index % alphabet.length]!;
  return index < alphabet.length ? last : letters(Math.floor(index / alphabet.length) - 1) + last;
}
