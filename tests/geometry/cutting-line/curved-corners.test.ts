import { cuttingLine, type Point, type Segment } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import type { Joint } from '../../../packages/geometry/src/cutting-line/joint.js';
import { plainJoint, untrimmedJoint } from '../../../packages/geometry/src/cutting-line/plain-joint.js';
import { type Run, runsAlong } from '../../../packages/geometry/src/cutting-line/run.js';
import { arc, at, edge, pieceOf, straightEdge } from './pieces.js';

// Corners at curves whose parallels are circles, worked out from circles and tangents alone.

/** The corners of a bridge, its start first. */
const corners = ({ bridge }: Pick<Joint, 'bridge'>): readonly (readonly number[])[] =>
  bridge.length === 0
    ? []
    : [bridge[0]!.segment[0], ...bridge.map(s => s.segment.at(-1)!)].map(({ x, y }) => [x, y]);
const near = ({ x, y }: Point) => [expect.closeTo(x, 4), expect.closeTo(y, 4)];
const mirrored = (segments: readonly Segment[]): readonly Segment[] =>
  [...segments].reverse().map(s => [...s].reverse().map(p => at(-p.x, p.y)) as unknown as Segment);
const image = (p: Point): Point => at(-p.x, p.y);
const run = (of: string, segments: readonly Segment[], allowance: number): Run => {
  const [only, ...others] = runsAlong(of, segments, allowance);
  expect(others).toEqual([]);
  return only!;
};

describe('an edge that bends up at its end more tightly than its allowance', () => {
  // Along y = 0 to the right, then up round (100, −5) by a quarter turn, to the corner at (105, −5).
  const end = at(105, -5);
  const bent: readonly Segment[] = [[at(0, 0), at(100, 0)], ...arc(at(100, -5), 5, 90, 0)];
  const leaving = (degrees: number, length = 80): readonly Segment[] => {
    const a = (degrees * Math.PI) / 180;
    return [[end, at(end.x + length * Math.cos(a), end.y + length * Math.sin(a))]];
  };
  // Its parallel, at y = −15, leaves the circle of 15 about the corner here.
  const left = at(105 - Math.sqrt(15 ** 2 - 10 ** 2), -15);
  const outward = Math.atan2(left.y - end.y, left.x - end.x);
  const about = (angle: number, radius: number): Point =>
    at(end.x + radius * Math.cos(angle), end.y + radius * Math.sin(angle));

  test.each([
    [-80, 10],
    [-40, 5],
    [0, 5],
    [15, 4],
    [30, 2],
  ])(
    'beside one that leaves at %d degrees with %d mm: straight towards the corner, then about it',
    (degrees, b) => {
      const square = (degrees * Math.PI) / 180 - Math.PI / 2;
      const turn = square - outward;
      const expected = [
        left,
        about(outward, b),
        // The tangents of the circle about the corner meet half way, be it on or back.
        about(outward + turn / 2, b / Math.cos(turn / 2)),
        about(square, b),
      ];
      const joint = plainJoint(run('bent', bent, 15), run('next', leaving(degrees), b));
      expect(corners(joint)).toEqual(expected.map(near));
      const { length } = joint.bridge;
      expect(joint.bridge.map(s => s.of)).toEqual(Array.from({ length }, () => 'next'));
      // Nothing hangs on where the neighbour goes from there, nor on the side it lies to.
      const curved = arc(
        at(end.x - 200 * Math.sin(square + Math.PI / 2), end.y + 200 * Math.cos(square + Math.PI / 2)),
        200,
        degrees - 90,
        degrees - 70,
      );
      expect(corners(plainJoint(run('bent', bent, 15), run('next', curved, b)))).toEqual(expected.map(near));
      for (const next of [leaving(degrees), curved]) {
        const turned = plainJoint(run('next', mirrored(next), b), run('bent', mirrored(bent), 15));
        expect(corners(turned)).toEqual([...expected].reverse().map(p => near(image(p))));
      }
    },
  );
  test.each([-95, -110, -130])(
    'at an inner corner, beside one that leaves at %d degrees, in a mirror alike',
    degrees => {
      const one = plainJoint(run('bent', bent, 15), run('next', leaving(degrees), 5));
      const other = plainJoint(run('next', mirrored(leaving(degrees)), 5), run('bent', mirrored(bent), 15));
      expect(corners(other)).toEqual([...corners(one)].reverse().map(([x, y]) => near(at(-x!, y!))));
      // Both are counted from the corner.
      expect([other.after, other.before]).toEqual([one.before, one.after].map(p => expect.closeTo(p, 6)));
    },
  );
  test('beside one without an allowance: straight to the corner', () => {
    const joint = plainJoint(run('bent', bent, 15), run('next', leaving(20), 0));
    expect(corners(joint)).toEqual([left, end].map(near));
  });
  test('a bend with room for its allowance has its corner like any other', () => {
    // Radius 20, allowance 15: the parallel is a bend of 5, and ends square to the corner.
    const wide: readonly Segment[] = [[at(0, 0), at(85, 0)], ...arc(at(85, -20), 20, 90, 0)];
    const level: readonly Segment[] = [[at(105, -20), at(200, -20)]];
    const joint = plainJoint(run('wide', wide, 15), run('next', level, 15));
    // Both run on: up at x = 90, and back at y = −35.
    expect(corners(joint)).toEqual([at(90, -20), at(90, -35), at(105, -35)].map(near));
    expect([joint.before, joint.after]).toEqual([0, 0]);
  });
});

test.each([20, 30, 40])('at an inner corner of %d degrees the wider, an arc, runs on straight', degrees => {
  const angle = (degrees * Math.PI) / 180;
  // Along y = 0 to the right with 5 mm, then by an arc of 100 upwards with 15.
  const narrow = run('narrow', [[at(-100, 0), at(0, 0)]], 5);
  const away = at(Math.cos(angle), -Math.sin(angle));
  const bend = arc(at(-100 * away.y, 100 * away.x), 100, 270 - degrees, 300 - degrees);
  const base = at(15 * away.y, -15 * away.x);
  const by = (-5 - base.y) / -away.y;
  const crossing = at(base.x - by * away.x, -5);
  const joint = plainJoint(narrow, run('wide', bend, 15));
  expect(corners(joint)).toEqual([crossing, base].map(near));
  // Counted back from its end.
  expect(joint.before).toBeCloseTo(-crossing.x / 100, 6);
  expect(joint.bridge.map(s => s.of)).toEqual(['wide']);
  const turned = plainJoint(
    run('wide', mirrored(bend), 15),
    run('narrow', mirrored([[at(-100, 0), at(0, 0)]]), 5),
  );
  expect(corners(turned)).toEqual([base, crossing].map(p => near(image(p))));
  expect(turned.after).toBeCloseTo(-crossing.x / 100, 6);
});

test('past a bend whose parallel shrinks to a crumb about its centre, the next begins square to its own start', () => {
  // A bend of 10 with 10.002 mm: its parallel is an arc of 2 µm, travelled backwards.
  const stitching: readonly Segment[] = [
    [at(0, 0), at(100, 0)],
    ...arc(at(100, -10), 10, 90, 0),
    [at(110, -10), at(110, -100)],
  ];
  const { parallel } = run('bent', stitching, 10.002);
  const turns = [at(0, -10.002), at(100, -10.002), at(99.998, -10), at(99.998, -100)].map(near);
  expect(corners({ bridge: parallel })).toHaveLength(4);
  expect(parallel[0]!.segment).toEqual(
    [at(0, -10.002), at(100, -10.002)].map(p => ({ x: p.x, y: expect.closeTo(p.y, 9) })),
  );
  expect(parallel.at(-1)!.segment).toEqual(
    [at(99.998, -10), at(99.998, -100)].map(p => ({ x: expect.closeTo(p.x, 9), y: expect.closeTo(p.y, 9) })),
  );
  expect(corners({ bridge: parallel })).toEqual(turns);
});

describe('two humps that meet in an inner corner', () => {
  // Arcs of 80 about (−60, 0) and (60, 0); they meet at x = 0.
  const low = -Math.sqrt(80 ** 2 - 60 ** 2);
  const degrees = (Math.acos(60 / 80) * 180) / Math.PI;
  const leftHump = arc(at(-60, 0), 80, 180, 360 - degrees),
    rightHump = arc(at(60, 0), 80, 180 + degrees, 360);
  /** Where circles of 80 + a and 80 + b about the two centres meet. */
  const crossing = (a: number, b: number): Point => {
    const x = ((80 + a) ** 2 - (80 + b) ** 2) / 240;
    return at(x, -Math.sqrt((80 + a) ** 2 - (60 + x) ** 2));
  };
  test.each([
    [10, 10],
    [7, 15],
    [15, 7],
    [20, 12],
  ])('with %d and %d mm are cut where their parallels cross, and snipped there', (a, b) => {
    const piece = pieceOf([
      edge('left', leftHump, { allowance: a }),
      edge('right', rightHump, { allowance: b }),
      straightEdge('side', at(140, 0), at(140, 100)),
      straightEdge('foot', at(140, 100), at(-140, 100)),
      straightEdge('back', at(-140, 100), at(-140, 0)),
    ]);
    const { path, snips, findings } = cuttingLine(piece);
    const { x, y } = crossing(a, b);
    expect(Math.min(...path.segments.map(s => Math.hypot(s[0].x - x, s[0].y - y)))).toBeLessThan(0.006);
    expect(snips).toHaveLength(1);
    expect(snips[0]!.segments[0]![0].x).toBeCloseTo(x, 1);
    expect(snips[0]!.segments[0]![1]).toEqual({ x: expect.closeTo(0, 9), y: expect.closeTo(low, 9) });
    expect(findings).toEqual([]);
  });
  test('nothing cut off, they are led over the corner, which is still snipped to', () => {
    const [before, after] = [run('left', leftHump, 10), run('right', rightHump, 10)];
    const trimmed = plainJoint(before, after),
      whole = untrimmedJoint(before, after);
    expect(trimmed.before && trimmed.after && trimmed.bridge).toEqual([]);
    expect([whole.before, whole.after]).toEqual([0, 0]);
    const out = (sense: number) => at((sense * 10 * -60) / 80, low + (10 * low) / 80);
    expect(corners(whole)).toEqual([at(-out(1).x, out(1).y), at(0, low), out(1)].map(near));
    expect(whole.bridge.map(s => s.of)).toEqual(['left', 'right']);
    expect(whole.snip).toEqual({ to: { x: expect.closeTo(0, 9), y: expect.closeTo(low, 9) }, after: 1 });
    // Where the wider of two runs on to the narrower, only the narrower is cut: neither is then.
    const flat = (a: number, b: number) =>
      untrimmedJoint(run('a', [[at(-200, 0), at(0, 0)]], a), run('b', [[at(0, 0), at(170, -98)]], b));
    for (const [a, b] of [
      [7, 20],
      [20, 7],
    ] as const) {
      const joint = flat(a, b);
      expect([joint.before, joint.after]).toEqual([0, 0]);
      const up = Math.hypot(170, 98);
      expect(corners(joint)).toEqual([at(0, -a), at(0, 0), at((-98 / up) * b, (-170 / up) * b)].map(near));
    }
    // An outer corner has nothing cut off.
    const [top, side] = [
      run('top', [[at(0, 0), at(100, 0)]], 10),
      run('side', [[at(100, 0), at(100, 80)]], 10),
    ];
    expect(untrimmedJoint(top, side)).toEqual(plainJoint(top, side));
  });
});
