import { type Point, pathLength } from '@paperhinge/geometry';
import { expect, test } from 'vitest';
import { cornersOfOutline } from '../../../packages/geometry/src/trace/photo/corners.js';
import { edgesOfOutline } from '../../../packages/geometry/src/trace/photo/outline-edges.js';
import { evenly } from '../../../packages/geometry/src/trace/photo/ring.js';
import { chance } from '../../support/photo-scene.js';

const soft = 1.6;

/** A ring as a lens shows it: corners rounded over about a millimetre, and noise of 0.05 mm. */
function seen(ring: readonly Point[], seed = 1): readonly Point[] {
  const next = chance(seed);
  const fine = evenly(ring, 0.1);
  const n = fine.length;
  const blurred = fine.map((_, i) => {
    let x = 0,
      y = 0;
    for (let k = -8; k <= 8; k++) {
      x += fine[(i + k + n) % n]!.x / 17;
      y += fine[(i + k + n) % n]!.y / 17;
    }
    return { x, y };
  });
  return evenly(blurred, 0.5).map(p => ({ x: p.x + 0.1 * (next() - 0.5), y: p.y + 0.1 * (next() - 0.5) }));
}

const rectangle = [
  { x: 0, y: 0 },
  { x: 200, y: 0 },
  { x: 200, y: 120 },
  { x: 0, y: 120 },
];

test('a rectangle has four corners where its sides meet, and four straight edges', () => {
  const points = seen(rectangle);
  const corners = cornersOfOutline(points, soft);
  expect(corners).toHaveLength(4);
  for (const corner of rectangle)
    expect(Math.min(...corners.map(({ at }) => Math.hypot(at.x - corner.x, at.y - corner.y)))).toBeLessThan(
      0.06,
    );
  const edges = edgesOfOutline(points, corners);
  expect(edges.map(e => e.segments.length)).toEqual([1, 1, 1, 1]);
  expect(edges.reduce((sum, e) => sum + pathLength(e), 0)).toBeCloseTo(640, 0);
});

test('a circle has no corner, and comes out within 0.05 mm in a few curves', () => {
  for (const radius of [18, 60, 250]) {
    const circle = Array.from({ length: 720 }, (_, i) => ({
      x: radius * Math.cos((i * Math.PI) / 360),
      y: radius * Math.sin((i * Math.PI) / 360),
    }));
    const points = seen(circle);
    const corners = cornersOfOutline(points, soft);
    expect(corners).toHaveLength(0);
    const [edge] = edgesOfOutline(points, corners);
    expect(edge!.segments.length).toBeLessThan(12);
    expect(Math.abs(pathLength(edge!) - 2 * Math.PI * radius)).toBeLessThan(
      0.0004 * 2 * Math.PI * radius + 0.1,
    );
    for (const [p] of edge!.segments) expect(Math.abs(Math.hypot(p.x, p.y) - radius)).toBeLessThan(0.06);
  }
});

test('the point of a dart is found where its legs meet, though a lens never shows it', () => {
  const withDart = [
    { x: 0, y: 0 },
    { x: 88, y: 0 },
    { x: 100, y: 110 },
    { x: 112, y: 0 },
    { x: 200, y: 0 },
    { x: 200, y: 160 },
    { x: 0, y: 160 },
  ];
  // What a lens shows ends where the slit is narrower than it can tell apart: here 2 mm.
  const shown = [...withDart.slice(0, 2), { x: 99, y: 100.8 }, { x: 101, y: 100.8 }, ...withDart.slice(3)];
  const corners = cornersOfOutline(seen(shown), soft);
  expect(corners).toHaveLength(7);
  expect(Math.min(...corners.map(({ at }) => Math.hypot(at.x - 100, at.y - 110)))).toBeLessThan(0.7);
});

test('a blunt corner of 25 degrees is a corner, a bend over a radius of 12 mm is none', () => {
  const angle = (25 * Math.PI) / 180;
  const blunt = [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 100 + 100 * Math.cos(angle), y: 100 * Math.sin(angle) },
    { x: 100, y: 200 },
    { x: 0, y: 200 },
  ];
  expect(cornersOfOutline(seen(blunt), soft)).toHaveLength(5);
  const arc = Array.from({ length: 91 }, (_, i) => ({
    x: 88 + 12 * Math.sin((i * Math.PI) / 180),
    y: 12 - 12 * Math.cos((i * Math.PI) / 180),
  }));
  expect(
    cornersOfOutline(seen([{ x: 0, y: 0 }, ...arc, { x: 100, y: 150 }, { x: 0, y: 150 }]), soft),
  ).toHaveLength(3);
});

test.each([3, 4, 5, 6, 8, 10])(
  'a strip %i mm wide is no longer than it is drawn: its ends are no points',
  wide => {
    const strip = [
      { x: 0, y: 0 },
      { x: 150, y: 0 },
      { x: 150, y: wide },
      { x: 0, y: wide },
    ];
    const points = seen(strip);
    const edges = edgesOfOutline(points, cornersOfOutline(points, soft));
    const across = edges.flatMap(edge =>
      edge.segments.flatMap(([from, ...rest]) => [from.x, rest.at(-1)!.x]),
    );
    expect(Math.max(...across)).toBeLessThan(150 + 1.5);
    expect(Math.min(...across)).toBeGreaterThan(-1.5);
  },
);
