import { arrange, type PageField, type Shape } from '@paperhinge/print/place';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placedShafts } from '../../../packages/print/src/place/arrangement.js';
import { inReadingOrder } from '../../../packages/print/src/place/in-order.js';
import { runsAlongJoin } from '../../../packages/print/src/place/shafts.js';

const field: PageField = { width: 190, height: 277, overlap: 10 };
const pages = { columns: 3, rows: 3 };
const at = (x: number, y: number) => ({ x, y });
const box = (width: number, height: number): Shape => ({
  polygons: [[at(0, 0), at(width, 0), at(width, height), at(0, height)]],
});
/** A strap with a line along its middle that may be moved by so many mm to either side. */
const strap = (width: number, height: number, play = Math.max(width / 2 - 4, 0)): Shape => ({
  ...box(width, height),
  shafts: [{ chord: [at(width / 2, height * 0.2), at(width / 2, height * 0.8)], play: [-play, play] }],
});

describe('a shaft runs along a join', () => {
  const upright = (x: number, play: readonly [number, number] = [0, 0]) =>
    runsAlongJoin(field, pages, { chord: [at(x, 20), at(x, 90)], play });

  test('within 5 mm of the strip of 10 that two pages share, and nowhere else', () => {
    expect([174.9, 175.1, 180, 190, 194.9, 195.1].map(x => upright(x))).toEqual([
      false,
      true,
      true,
      true,
      true,
      false,
    ]);
    // The second join lies a page less the strip further on; there is none at the sheet's sides.
    expect([354.9, 355.1, 374.9, 375.1].map(x => upright(x))).toEqual([false, true, true, false]);
    expect([2, 538].map(x => upright(x))).toEqual([false, false]);
  });

  test('unless its play takes it off to one side', () => {
    // Up the page, left is to the left: downwards it is to the right.
    expect(upright(178, [-2, 3.2])).toBe(true);
    expect(upright(178, [-3.2, 2]) && upright(178, [-2, 3.2])).toBe(false);
    expect(upright(185, [-9, 9])).toBe(true);
    expect(upright(185, [-10, 10])).toBe(false);
  });

  test('not where it crosses', () => {
    expect(runsAlongJoin(field, pages, { chord: [at(150, 50), at(250, 60)], play: [0, 0] })).toBe(false);
    expect(runsAlongJoin(field, pages, { chord: [at(150, 270), at(250, 271)], play: [0, 0] })).toBe(true);
  });

  test('not where one page is all there is', () => {
    const one = { columns: 1, rows: 3 };
    expect(runsAlongJoin(field, one, { chord: [at(185, 20), at(185, 90)], play: [0, 0] })).toBe(false);
  });
});

test('straps are laid so that their lines can keep off every join', () => {
  // Small pages: a join wherever one looks.
  const small: PageField = { width: 70, height: 90, overlap: 10 };
  const anyBox = fc
    .tuple(fc.integer({ min: 40, max: 150 }), fc.integer({ min: 40, max: 150 }))
    .map(([w, h]) => box(w, h));
  const anyStrap = fc
    .tuple(fc.integer({ min: 8, max: 26 }), fc.integer({ min: 60, max: 250 }))
    .map(([w, h]) => strap(w, h));
  fc.assert(
    fc.property(
      fc.array(anyBox, { maxLength: 3 }),
      fc.array(anyStrap, { minLength: 2, maxLength: 24 }),
      (boxes, straps) => {
        const shapes = [...boxes, ...straps];
        for (const laid of [arrange(shapes, small), inReadingOrder(shapes, small)]) {
          const onStrips = laid.placings.flatMap((placing, i) =>
            placedShafts(shapes[i]!.shafts ?? [], placing).filter(({ chord: [a, b], play }) => {
              const [ends, step, along] =
                Math.abs(a.x - b.x) < 1e-6 ? [a.x, 60, 'column' as const] : [a.y, 80, 'row' as const];
              const pages = laid.pages.flatMap((list, k) =>
                laid.placings[k]!.sheet === placing.sheet ? list.map(p => p[along]) : [],
              );
              return Array.from({ length: Math.max(...pages) }, (_, k) => (k + 1) * step).some(
                join => ends + play[0] > join - 5 && ends + play[1] < join + 15,
              );
            }),
          );
          expect(onStrips).toEqual([]);
          expect(laid.held).toBe(0);
        }
      },
    ),
    { numRuns: 10 },
  );
});
