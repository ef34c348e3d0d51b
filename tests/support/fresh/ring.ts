import type { Piece } from '@paperhinge/geometry';
import { type KnownSeam, lengthOf, piece, type XY } from '../twenty-drafts.js';

// How the fresh garments are drawn: once round, each edge from where the last one ended.

interface Cut {
  readonly fold?: string;
  readonly cut?: number;
  /** A dart by its mouth's one end, its point and the other end; both ends are places of an edge. */
  readonly darts?: Readonly<Record<string, readonly XY[]>>;
}

/** A piece from a first place: each edge by the places it runs through to its end, the last one back to the first. */
export function ring(
  name: string,
  first: XY,
  edges: Readonly<Record<string, readonly XY[]>>,
  cut: Cut = {},
): Piece {
  let at = first;
  const names = Object.keys(edges);
  return piece(
    name,
    Object.fromEntries(
      Object.entries(edges).map(([edge, places], i) => {
        const through = [at, ...places, ...(i === names.length - 1 ? [first] : [])];
        at = through.at(-1)!;
        return [edge, through] as const;
      }),
    ),
    cut,
  );
}

/** A figure of a drawing, the edges that it makes longer or shorter, how long they are to be, and between what to look. */
export interface Sought {
  readonly edges: readonly string[];
  readonly mm: number;
  readonly between: readonly [number, number];
}

/** A drawing by one figure after the other, each making its edges as long together as asked for. */
export function suited(draw: (...figures: readonly number[]) => Piece, ...all: readonly Sought[]): Piece {
  const first = all.map(({ between: [low, high] }) => (low + high) / 2);
  const found = all.reduce<readonly number[]>(
    (figures, sought, i) =>
      figures.with(
        i,
        figureOf(figure => draw(...figures.with(i, figure)), sought),
      ),
    first,
  );
  return draw(...found);
}

function figureOf(draw: (figure: number) => Piece, { edges, mm, between: [low, high] }: Sought): number {
  const off = (figure: number): number => lengthOf(draw(figure), ...edges) - mm;
  const steps = Array.from({ length: 21 }, (_, i) => low + ((high - low) * i) / 20);
  const at = steps.findIndex((step, i) => i > 0 && off(step) * off(steps[i - 1]!) <= 0);
  if (at < 0) {
    const reach = steps.map(step => (off(step) + mm).toFixed(1)).join(' ');
    throw new Error(
      `${draw(low).name}: ${edges.join(' and ')} cannot be ${mm.toFixed(1)} long, but ${reach}`,
    );
  }
  let [from, to] = [steps[at - 1]!, steps[at]!];
  for (let i = 0; i < 40; i++) {
    const middle = (from + to) / 2;
    if (off(middle) * off(to) > 0) to = middle;
    else from = middle;
  }
  return from;
}

/** Seams as written: `1.side = 2.side`, `4.cap = 1.armhole + 2.armhole`. */
export const seams = (...lines: readonly string[]): readonly KnownSeam[] =>
  lines.map(text => {
    const [a, b] = text.split(' = ').map(side => side.split(' + '));
    return [a!, b!];
  });

/** A drafter's curve between two places by its two handles: the places after the first, the last among them. */
export const bend = (from: XY, one: XY, two: XY, to: XY, steps = 6): readonly XY[] =>
  Array.from({ length: steps }, (_, i): XY => {
    const t = (i + 1) / steps,
      u = 1 - t;
    const along = (k: 0 | 1): number =>
      u ** 3 * from[k] + 3 * u * u * t * one[k] + 3 * u * t * t * two[k] + t ** 3 * to[k];
    return i === steps - 1 ? to : [along(0), along(1)];
  });

/** A dart by its mouth and how long it is: its point lies square to the mouth's middle, to the right of travel. */
export const wedge = ([ax, ay]: XY, [bx, by]: XY, long: number): readonly XY[] => {
  const wide = Math.hypot(bx - ax, by - ay);
  const high = Math.sqrt(long * long - (wide * wide) / 4);
  return [
    [ax, ay],
    [(ax + bx) / 2 - ((by - ay) / wide) * high, (ay + by) / 2 + ((bx - ax) / wide) * high],
    [bx, by],
  ];
};
