import type { Edge } from '@paperhinge/geometry';
import { stitchingLine } from '@paperhinge/geometry/cutting-line';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import { describe, expect, test } from 'vitest';
import { flanksOf } from '../../../packages/geometry/src/cutting-line/flank.js';
import { type Node, withoutTails } from '../../../packages/geometry/src/cutting-line/tails.js';
import { at, dart, edge, straightEdge } from './pieces.js';

const reach = 300;
const nodesOf = (part: Edge): readonly Node[] =>
  flanksOf(part, part.allowance).map(flank => ({ part, flank }));
const folded = dart('dart', at(0, 0), at(20, 120), at(40, 0));
/** The leg of a dart, as an outline that is drawn on its cutting line has it. */
const leg = (which: 0 | 1): Node => ({
  part: folded,
  leg: which,
  flank: {
    of: 'dart',
    allowance: 0,
    drawn: folded.legs[which].segments,
    strands: folded.legs[which].segments.map(segment => ({ segment, of: 'dart', shape: 'parallel' })),
  },
});
/** Up a side of 100 mm, a waist of so many millimetres up to its last or first stretch, bent off by 30 degrees, next to a dart. */
const waist = (main: number, tail: number, side: 'start' | 'end') => {
  const [x, y] = [tail * Math.cos(Math.PI / 6), tail * Math.sin(Math.PI / 6)];
  const before = edge('before', [
    [at(-x - main, y + 100), at(-x - main, y)],
    [at(-x - main, y), at(-x, y)],
    [at(-x, y), at(0, 0)],
  ]);
  const after = edge('after', [
    [at(40, 0), at(40 + x, y)],
    [at(40 + x, y), at(40 + x + main, y)],
    [at(40 + x + main, y), at(40 + x + main, y + 100)],
  ]);
  const plain =
    side === 'end'
      ? straightEdge('after', at(40, 0), at(200, 0))
      : straightEdge('before', at(-200, 0), at(0, 0));
  const ring =
    side === 'end'
      ? [...nodesOf(before), leg(0), leg(1), ...nodesOf(plain)]
      : [...nodesOf(plain), leg(0), leg(1), ...nodesOf(after)];
  const rest = [
    straightEdge('right', at(300, 0), at(300, 300)),
    straightEdge('left', at(-300, 300), at(-300, 0)),
  ];
  return { ring: [...ring, ...rest.flatMap(nodesOf)], part: side === 'end' ? before : after };
};

describe.each(['start', 'end'] as const)('the last stretch beside a dart, at the %s of its edge', side => {
  test.each([
    // Up to four times the wider allowance, which is 10 mm, and no longer than what is before it.
    [100, 39, true, true],
    [100, 41, false, false],
    [36, 35, true, true],
    [34, 35, true, false],
  ])('after %d mm, of %d mm: short, %s; dropped, %s', (main, tail, isShort, isDropped) => {
    const { ring, part } = waist(main, tail, side);
    const { kept, dropped, findings, ring: left } = withoutTails(ring, reach);
    const [own, none] = (isDropped ? [dropped, kept] : [kept, dropped]).map(all =>
      all.filter(s => s.end === side && s.count === 1),
    );
    expect(none).toEqual([]);
    expect(own).toMatchObject([{ part, neighbour: folded, isShort }]);
    expect(left).toHaveLength(isDropped ? ring.length - 1 : ring.length);
    expect(findings.map(f => [f.code, f.where, f.figures!.lengthMm])).toEqual(
      isDropped ? [['dart-tip-dropped', { edge: part.name }, expect.closeTo(tail, 9)]] : [],
    );
  });
  test('is dropped where it is said to go, and nothing at the other end or of another edge', () => {
    const { ring, part } = waist(100, 41, side);
    const other = side === 'end' ? 'start' : 'end';
    const stretch = withoutTails(ring, reach).kept.find(s => s.end === side)!;
    const goes = (also: Partial<typeof stretch>): boolean =>
      withoutTails(ring, reach, [{ ...stretch, ...also }]).dropped.some(s => s.end === side);
    expect(goes({})).toBe(true);
    expect(goes({ count: 2 })).toBe(true);
    expect(goes({ count: 0 })).toBe(false);
    expect(goes({ end: other })).toBe(false);
    expect(goes({ part: { ...part } })).toBe(false);
  });
});

test('a short stretch that meets its neighbour nowhere is dropped, whatever side of its edge it is on', () => {
  // In one line with a neighbour whose allowance is twice as wide: the two never cross.
  const rest = [
    straightEdge('right', at(300, 0), at(300, 300)),
    straightEdge('left', at(-300, 300), at(-100, -50)),
  ];
  const first = edge('first', [
    [at(-100, -50), at(0, 0)],
    [at(0, 0), at(20, 0)],
  ]);
  const ring = [first, straightEdge('second', at(20, 0), at(300, 0), { allowance: 20 }), ...rest].flatMap(
    nodesOf,
  );
  expect(withoutTails(ring, reach).dropped).toMatchObject([
    { part: first, end: 'end', count: 1, isShort: true },
  ]);
  const wide = straightEdge('wide', at(-300, 0), at(-20, 0), { allowance: 20 });
  const second = edge('second', [
    [at(-20, 0), at(0, 0)],
    [at(0, 0), at(100, -50)],
  ]);
  const other = [
    straightEdge('right', at(100, -50), at(300, 300)),
    straightEdge('left', at(-300, 300), at(-300, 0)),
  ];
  expect(withoutTails([wide, second, ...other].flatMap(nodesOf), reach).dropped).toMatchObject([
    { part: second, end: 'start', count: 1, isShort: true },
  ]);
});

// A hem cut off at 45° between hem and side loses tan 22.5° of its allowance at the one, and gains at the other as much as
// it is wider than the side's 10, times √2, less that: of 42 mm it has a place until it is longer than it was.
test.each([
  [20, true],
  [23, true],
  [25, false],
  [30, false],
])('an end cut off slantwise, moved in by %d mm, has a place of its own: %s', (allowance, hasPlace) => {
  const hem = edge(
    'hem',
    [
      [at(200, 300), at(30, 300)],
      [at(30, 300), at(0, 270)],
    ],
    { allowance },
  );
  const rest = [
    straightEdge('left', at(0, 270), at(0, 0)),
    straightEdge('top', at(0, 0), at(200, 0)),
    straightEdge('right', at(200, 0), at(200, 300)),
  ];
  const { kept, dropped } = withoutTails([hem, ...rest].flatMap(nodesOf), reach);
  expect([kept, dropped].map(all => all.filter(s => s.end === 'end').length)).toEqual(
    hasPlace ? [1, 0] : [0, 1],
  );
});

test('a step between two lines that never meet, all of which has its place, is kept', () => {
  const first = edge('first', [
    [at(-100, 0), at(0, 0)],
    [at(0, 0), at(5, 5)],
  ]);
  const ring = [
    first,
    straightEdge('second', at(5, 5), at(300, 5)),
    straightEdge('right', at(300, 5), at(300, 300)),
    straightEdge('left', at(-100, 300), at(-100, 0)),
  ].flatMap(nodesOf);
  expect(withoutTails(ring, reach)).toMatchObject({ dropped: [], kept: [{ end: 'end' }, { end: 'start' }] });
});

test('an outline drawn as one edge comes back with all its sides', () => {
  const all = edge('all', [
    [at(0, 0), at(120, 0)],
    [at(120, 0), at(120, 80)],
    [at(120, 80), at(0, 80)],
    [at(0, 80), at(0, 0)],
  ]);
  const { parts, findings } = stitchingLine([all], () => 10);
  expect(signedArea(outlinePath({ parts }))).toBeCloseTo(100 * 60, 9);
  expect(findings).toEqual([]);
});
