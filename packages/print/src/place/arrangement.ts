import type { Point } from '@paperhinge/geometry';
import { boxOf, type Polygon } from '../plane/polygon.js';
import { type Cell, type PageField, pagesOf } from './field.js';
import { carriedShaft, runsAlongJoin, type Shaft } from './shafts.js';
import { sliversOf } from './slivers.js';
import { type Turn, turnedPoint } from './turning.js';

/** Something to lay down, upright, by the polygons that enclose it; the first is the piece itself. */
export interface Shape {
  readonly polygons: readonly Polygon[];
  /** Against the sheet's left side, not turned, where length is saved: a half piece on the cloth's fold. */
  readonly atLeft?: true;
  /** Lines that must not run along a join, where there is little room to move them. */
  readonly shafts?: readonly Shaft[];
}

/** Where a shape lies: on which sheet, its points turned, then moved by `by` from that sheet's corner. */
export interface Placing {
  /** Sheets are put together from pages each by itself; from 0. */
  readonly sheet: number;
  readonly turn: Turn;
  readonly by: Point;
}

/** Where every shape was laid, and how large the field is. */
export interface Arrangement {
  /** In the order of the shapes. */
  readonly placings: readonly Placing[];
  /** The pages of each shape, on its sheet. */
  readonly pages: readonly (readonly Cell[])[];
  /** The pages on which a shape leaves less than 8 mm of itself beyond a join; none unless there is no way round it. */
  readonly slivers: readonly (readonly Cell[])[];
  /** Shafts held on a join; none unless there is no way round it. */
  readonly held: number;
  /** Pages in all, each counted once. */
  readonly count: number;
  /** Sheets in all. */
  readonly sheets: number;
  /** Joins that shapes run across: pages a shape lies on, less one, summed. */
  readonly crossings: number;
  /** mm from each sheet's top to the lowest point on it, summed. */
  readonly length: number;
}

/**
 * The arrangement's true page counts, from the polygons themselves.
 * @param before one on the same field, in which shapes that kept their placing are judged already
 */
export function judged(
  shapes: readonly Shape[],
  placings: readonly Placing[],
  field: PageField,
  before?: Arrangement,
): Arrangement {
  const each = shapes.map(({ polygons }, i) => {
    if (before && before.placings[i] === placings[i])
      return { pages: before.pages[i]!, slivers: before.slivers[i]! };
    const laid = polygons.map(p => placed(p, placings[i]!));
    return { pages: pagesOf(field, laid), slivers: sliversOf(field, laid[0]!) };
  });
  const pages = each.map(e => e.pages);
  const lowest = new Map<number, number>();
  for (const [i, { polygons }] of shapes.entries()) {
    const { sheet } = placings[i]!;
    const { y1 } = boxOf(polygons.map(p => placed(p, placings[i]!)));
    lowest.set(sheet, Math.max(lowest.get(sheet) ?? 0, y1));
  }
  return {
    placings,
    pages,
    slivers: each.map(e => e.slivers),
    held: heldOnJoins(shapes, placings, pages, field),
    count: new Set(pages.flatMap((p, i) => p.map(c => `${placings[i]!.sheet} ${c.row} ${c.column}`))).size,
    sheets: lowest.size,
    crossings: pages.reduce((sum, p) => sum + p.length - 1, 0),
    length: [...lowest.values()].reduce((sum, y) => sum + y, 0),
  };
}

function heldOnJoins(
  shapes: readonly Shape[],
  placings: readonly Placing[],
  pages: readonly (readonly Cell[])[],
  field: PageField,
): number {
  const joined = new Map<number, { columns: number; rows: number }>();
  for (const [i, { sheet }] of placings.entries()) {
    const { columns, rows } = joined.get(sheet) ?? { columns: 1, rows: 1 };
    joined.set(sheet, {
      columns: Math.max(columns, ...pages[i]!.map(c => c.column + 1)),
      rows: Math.max(rows, ...pages[i]!.map(c => c.row + 1)),
    });
  }
  const held = placings.map(
    (placing, i) =>
      placedShafts(shapes[i]!.shafts ?? [], placing).filter(shaft =>
        runsAlongJoin(field, joined.get(placing.sheet)!, shaft),
      ).length,
  );
  return held.reduce((sum, count) => sum + count, 0);
}

/** No sliver and no shaft on a join first, then fewer pages, fewer sheets, fewer joins; among like ones the shorter. */
export const isBetter = (a: Arrangement, b: Arrangement): boolean => {
  const spoilt = (x: Arrangement) => x.slivers.reduce((sum, s) => sum + s.length, x.held);
  const rank = [
    spoilt(a) - spoilt(b),
    a.count - b.count,
    a.sheets - b.sheets,
    a.crossings - b.crossings,
    a.length - b.length,
  ].find(d => d !== 0);
  return rank !== undefined && rank < 0;
};

export const placed = (polygon: Polygon, placing: Placing): Polygon =>
  polygon.map(p => placedPoint(p, placing));

export const placedShafts = (shafts: readonly Shaft[], placing: Placing): readonly Shaft[] =>
  shafts.map(shaft => carriedShaft(shaft, p => placedPoint(p, placing)));

function placedPoint(p: Point, { turn, by }: Placing): Point {
  const q = turnedPoint(p, turn);
  return { x: by.x + q.x, y: by.y + q.y };
}

/** Arrangements one after the other: the sheets of the second follow those of the first. */
export function followedBy(first: Arrangement, second: Arrangement): Arrangement {
  const shifted = second.placings.map(p => ({ ...p, sheet: p.sheet + first.sheets }));
  return {
    placings: [...first.placings, ...shifted],
    pages: [...first.pages, ...second.pages],
    slivers: [...first.slivers, ...second.slivers],
    held: first.held + second.held,
    count: first.count + second.count,
    sheets: first.sheets + second.sheets,
    crossings: first.crossings + second.crossings,
    length: first.length + second.length,
  };
}
