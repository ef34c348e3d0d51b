import { arrange, type PageField, type Shape } from '@paperhinge/print/place';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placed } from '../../../packages/print/src/place/arrangement.js';
import { ownerOf, ownPart, pagesOf } from '../../../packages/print/src/place/field.js';
import { inReadingOrder, onOwnPages } from '../../../packages/print/src/place/in-order.js';
import { sliversOf } from '../../../packages/print/src/place/slivers.js';
import { partsIn } from '../../../packages/print/src/plane/parts.js';

const field: PageField = { width: 190, height: 277, overlap: 10 };
const box = (w: number, h: number): Shape => ({
  polygons: [
    [
      { x: 0, y: 0 },
      { x: w, y: 0 },
      { x: w, y: h },
      { x: 0, y: h },
    ],
  ],
});
const wedge = (w: number, h: number): Shape => ({
  polygons: [
    [
      { x: 0, y: 0 },
      { x: w, y: h },
      { x: 0, y: h },
    ],
  ],
});

const anyShape = fc
  .tuple(fc.integer({ min: 5, max: 600 }), fc.integer({ min: 5, max: 600 }), fc.boolean())
  .map(([w, h, slanted]) => (slanted ? wedge(w, h) : box(w, h)));

/** Whether two convex polygons overlap: no side of either parts them (separating axes). */
function overlap(a: readonly { x: number; y: number }[], b: readonly { x: number; y: number }[]): boolean {
  return [a, b].every(polygon =>
    polygon.every((p, i) => {
      const q = polygon[(i + 1) % polygon.length]!;
      const n = { x: q.y - p.y, y: p.x - q.x };
      const reach = (points: typeof a) => points.map(r => r.x * n.x + r.y * n.y);
      return Math.max(...reach(a)) > Math.min(...reach(b)) && Math.max(...reach(b)) > Math.min(...reach(a));
    }),
  );
}

test('shapes never overlap, and none leaves the sheet', () => {
  fc.assert(
    fc.property(fc.array(anyShape, { minLength: 1, maxLength: 6 }), shapes => {
      const { placings } = arrange(shapes, field);
      const laid = shapes.map((s, i) => placed(s.polygons[0]!, placings[i]!));
      for (const [i, a] of laid.entries()) {
        for (const p of a) {
          expect(p.x).toBeGreaterThanOrEqual(0);
          expect(p.y).toBeGreaterThanOrEqual(0);
        }
        for (const b of laid.slice(i + 1)) expect(overlap(a, b)).toBe(false);
      }
    }),
    { numRuns: 40 },
  );
});

test('the pages counted are those that some part of a shape lies on', () => {
  const { pages, count } = arrange([box(150, 200), box(400, 100)], field);
  expect(pages[0]).toHaveLength(1);
  expect(new Set(pages.flat().map(c => `${c.row},${c.column}`)).size).toBe(count);
});

test('the same shapes lie the same way', () => {
  const shapes = [box(300, 900), wedge(200, 400), box(90, 90)];
  expect(arrange(shapes, field)).toEqual(arrange(shapes, field));
});

describe('paper is saved', () => {
  test('two wedges share a page by a half turn', () => {
    const shapes = [wedge(160, 240), wedge(160, 240)];
    expect(arrange(shapes, field).count).toBe(1);
    expect(arrange(shapes, field, { turning: 'none' }).count).toBe(2);
  });

  test('what fits one page is not laid across a join', () => {
    const { crossings } = arrange([box(100, 120), box(100, 120), box(80, 120)], field);
    expect(crossings).toBe(0);
  });

  test('no part smaller than 8 mm of a piece lies alone on a page', () => {
    // 192 mm is 2 mm more than a window: laid at the edge it would leave a sliver of 2 mm on the next page.
    const { placings } = arrange([box(192, 100)], field);
    const x = placings[0]!.by.x;
    const right = x + 192 - 190;
    expect(right).toBeGreaterThanOrEqual(8);
  });
});

describe('slivers', () => {
  const square = [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 100, y: 100 },
    { x: 0, y: 100 },
  ];

  test('a part that reaches 7 mm over a join is one, 9 mm is none', () => {
    const at = (x: number) => square.map(p => ({ x: p.x + x, y: p.y }));
    expect(sliversOf(field, at(190 - 93))).toEqual([{ row: 0, column: 1 }]);
    expect(sliversOf(field, at(190 - 91))).toEqual([]);
    expect(sliversOf(field, at(190 - 7))).toEqual([{ row: 0, column: 0 }]);
  });

  test('each part of a shape is judged by itself: two legs, one of them too short', () => {
    const legs = [
      [0, 0],
      [250, 0],
      [250, 30],
      [100, 30],
      [100, 60],
      [195, 60],
      [195, 90],
      [0, 90],
    ].map(([x, y]) => ({ x: x!, y: y! }));
    expect(partsIn(legs, ownPart(field, { row: 0, column: 1 }))).toHaveLength(2);
    expect(sliversOf(field, legs)).toEqual([{ row: 0, column: 1 }]);
  });

  test('a narrow tail that a join crosses is none', () => {
    const tail = [
      { x: 0, y: 0 },
      { x: 400, y: 0 },
      { x: 400, y: 2 },
      { x: 0, y: 2 },
    ];
    expect(sliversOf(field, tail)).toEqual([]);
  });

  test('there are none among boxes of any size, however they are laid', () => {
    const anyBox = fc
      .tuple(fc.integer({ min: 5, max: 600 }), fc.integer({ min: 5, max: 600 }))
      .map(([w, h]) => box(w, h));
    fc.assert(
      fc.property(fc.array(anyBox, { minLength: 1, maxLength: 5 }), shapes => {
        for (const lay of [arrange, inReadingOrder, onOwnPages])
          expect(lay(shapes, field).slivers.flat()).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });
});

test('a shape may lie by a quarter turn or leaning where that saves pages', () => {
  const wide = [box(270, 180)];
  expect(arrange(wide, field, { turning: 'half' }).count).toBe(2);
  expect(arrange(wide, field, { turning: 'quarter' }).count).toBe(1);
  const strip = [box(310, 12)];
  expect(arrange(strip, field, { turning: 'quarter' }).count).toBe(2);
  expect(arrange(strip, field, { turning: 'any' }).count).toBe(1);
});

test('paper off a roll is never longer where shapes may lie upside down', () => {
  const roll: PageField = { width: 894, height: 15_000, overlap: 10 };
  fc.assert(
    fc.property(fc.array(anyShape, { minLength: 3, maxLength: 4 }), shapes => {
      const length = (turning: 'none' | 'half') => arrange(shapes, roll, { turning, shortest: true }).length;
      expect(length('half')).toBeLessThanOrEqual(length('none'));
    }),
    { numRuns: 3 },
  );
}, 60_000);

describe('in the order of the pattern', () => {
  const shapes = [box(300, 400), box(100, 100), wedge(150, 250), box(500, 60)];
  test('each on pages of its own: no page shows two pieces', () => {
    const { placings, count, pages } = onOwnPages(shapes, field);
    expect(placings.map(p => p.sheet)).toEqual([0, 1, 2, 3]);
    expect(count).toBe(pages.flat().length);
  });

  test('from left to right and top to bottom, without overlap', () => {
    const { placings } = inReadingOrder(shapes, field);
    const laid = shapes.map((s, i) => placed(s.polygons[0]!, placings[i]!));
    for (const [i, a] of laid.entries()) for (const b of laid.slice(i + 1)) expect(overlap(a, b)).toBe(false);
    for (let i = 1; i < placings.length; i++) {
      const [p, q] = [placings[i - 1]!.by, placings[i]!.by];
      expect(q.y > p.y || (q.y === p.y && q.x > p.x)).toBe(true);
    }
  });
});

test('a band shared by two pages belongs to the first, so that each place belongs to one page', () => {
  expect([0, 100, 189.9, 190.1, 369.9, 370.1].map(x => ownerOf(x, 190, 10))).toEqual([0, 0, 0, 1, 1, 2]);
  expect(ownPart(field, { row: 1, column: 1 })).toEqual([190, 277, 370, 544]);
  expect(
    pagesOf(field, [
      [
        { x: 185, y: 10 },
        { x: 189, y: 10 },
        { x: 189, y: 20 },
      ],
    ]),
  ).toEqual([{ row: 0, column: 0 }]);
});

test('a sheet larger than all shapes beside and below one another is looked at no further than that', () => {
  const shapes = [box(300, 200), wedge(250, 400), box(80, 500), wedge(120, 90)];
  for (const shortest of [true, false]) {
    // 100 m each way: as cells they would be more than a machine holds.
    const [large, vast] = [3000, 100_000].map(side =>
      arrange(shapes, { width: side, height: side, overlap: 10 }, { shortest }),
    );
    expect(vast!.placings).toEqual(large!.placings);
  }
});
