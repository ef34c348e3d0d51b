import type { Page } from './plan.js';

/** A join between two pages that both exist, with a name of its own. */
export interface Join {
  /** Side by side: numbers; one above the other: letters. No two joins of a file share one. */
  readonly name: string;
  readonly direction: 'across' | 'down';
  /** Shares of the page's side at which its marks stand; they differ from join to join, so that wrong pages do not meet. */
  readonly places: readonly [number, number];
}

/** The joins of each page, by its label and the side they are on. */
export type Joins = ReadonlyMap<
  string,
  Readonly<Partial<Record<'left' | 'right' | 'above' | 'below', Join>>>
>;

/** Names every join, in reading order of the pages. */
export function joinsOf(pages: readonly Page[]): Joins {
  const joins = new Map<string, Partial<Record<'left' | 'right' | 'above' | 'below', Join>>>();
  const at = (label: string) => {
    const known = joins.get(label) ?? {};
    joins.set(label, known);
    return known;
  };
  let across = 0,
    down = 0;
  for (const { label, neighbours } of pages) {
    if (neighbours.right) {
      const join: Join = { name: String(across + 1), direction: 'across', places: placesOf(across) };
      across++;
      at(label).right = join;
      at(neighbours.right).left = join;
    }
    if (neighbours.below) {
      const join: Join = { name: letters(down), direction: 'down', places: placesOf(down) };
      down++;
      at(label).below = join;
      at(neighbours.below).above = join;
    }
  }
  return joins;
}

/** Seven steps before the places repeat; a page's own joins and those of its neighbours never share one. */
function placesOf(index: number): readonly [number, number] {
  const step = (index * 3) % 7;
  return [0.16 + step * 0.026, 0.66 + step * 0.026];
}

function letters(index: number): string {
  const last = String.fromCharCode(97 + (index % 26));
  return index < 26 ? last : letters(Math.floor(index / 26) - 1) + last;
}
