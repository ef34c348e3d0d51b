import { at } from '@paperhinge/geometry';
import type { Ink, TypeMeasure, Weight } from '../drawing/ink.js';
import { setLine, wrapped } from '../drawing/lettering.js';

/** A part of a page set to a width: it knows its height and draws itself with its top at y. mm. */
export interface Slab {
  readonly height: number;
  /** Stays on the page of what follows it. */
  readonly keepWithNext?: boolean;
  draw(x: number, y: number): readonly Ink[];
}

/** The sizes of written pages, mm: em size and the distance of baselines. */
export const body = { size: 3.1, line: 4.25 } as const;

export const space = (height: number): Slab => ({ height, draw: () => [] });

export interface TextSetting {
  readonly width: number;
  readonly size?: number;
  readonly line?: number;
  readonly weight?: Weight;
  readonly indent?: number;
  readonly align?: 'left' | 'right';
  readonly most?: number;
}

/** Text wrapped to a width. */
export function textSlab(measure: TypeMeasure, text: string, setting: TextSetting): Slab {
  const {
    width,
    size = body.size,
    line = size * (body.line / body.size),
    weight = 'regular',
    indent = 0,
    align = 'left',
  } = setting;
  const lines = wrapped(measure, text, {
    size,
    weight,
    room: width - indent,
    ...(setting.most === undefined ? {} : { most: setting.most }),
  });
  return {
    height: lines.length * line,
    draw: (x, y) =>
      lines.map((words, i) => {
        const set = setLine(measure, words, { role: 'text', size, weight }, at(0, 0));
        const start = align === 'right' ? x + width - set.width : x + indent;
        return { ...set, at: at(start, y + i * line + size * 0.86) };
      }),
  };
}

/** Slabs side by side, at their own offsets from the left; as high as the highest. */
export const beside = (...parts: readonly (readonly [offset: number, slab: Slab])[]): Slab => ({
  height: Math.max(...parts.map(([, s]) => s.height), 0),
  draw: (x, y) => parts.flatMap(([offset, s]) => s.draw(x + offset, y)),
});

/** Slabs below one another as one. */
export const stacked = (...slabs: readonly Slab[]): Slab => ({
  height: slabs.reduce((sum, s) => sum + s.height, 0),
  draw: (x, y) => {
    let top = y;
    return slabs.flatMap(slab => {
      const inks = slab.draw(x, top);
      top += slab.height;
      return inks;
    });
  },
});

/** Slabs dealt onto pages of a height; one that is higher than a page runs over its foot rather than vanish. */
export function dealt(slabs: readonly Slab[], height: number): readonly (readonly Slab[])[] {
  const pages: Slab[][] = [[]];
  let left = height;
  for (let i = 0; i < slabs.length; i++) {
    const together = [slabs[i]!];
    while (together.at(-1)!.keepWithNext && i + 1 < slabs.length) together.push(slabs[++i]!);
    const needed = together.reduce((sum, s) => sum + s.height, 0);
    if (needed > left && pages.at(-1)!.length > 0) {
      pages.push([]);
      left = height;
    }
    pages.at(-1)!.push(...together);
    left -= needed;
  }
  return pages;
}
