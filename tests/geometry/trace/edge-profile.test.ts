import fc from 'fast-check';
import { expect, test } from 'vitest';
import { edgeByArea, inLight, profileAt } from '../../../packages/geometry/src/trace/photo/edge-profile.js';
import type { Grey } from '../../../packages/geometry/src/trace/photo/picture.js';
import {
  crossing,
  edgePoints,
  lineThrough,
  offLine,
} from '../../../packages/geometry/src/trace/photo/side-line.js';

/** Light left of a line, dark right of it, blurred by a lens as a logistic curve of about `soft` dots. */
function edge(place: number, slope: number, soft: number, tone = 1): Grey {
  const width = 60,
    height = 60;
  const values = new Uint8Array(width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const off = (x + 0.5 - place - slope * (y + 0.5 - 30)) / Math.hypot(1, slope);
      const light = 0.08 + 0.8 / (1 + Math.exp((1.7 * off) / soft));
      values[y * width + x] = Math.round(255 * light ** (1 / tone));
    }
  return { width, height, values };
}

test('an edge is found to a few hundredths of a dot, however soft and wherever between the dots', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 29, max: 31, noNaN: true }),
      fc.double({ min: 0.5, max: 1.4, noNaN: true }),
      (place, soft) => {
        const profile = profileAt(edge(place, 0, soft), { x: 30, y: 30 }, { x: 1, y: 0 }, 7)!;
        expect(Math.abs(edgeByArea(profile) - (place - 30))).toBeLessThan(0.035);
      },
    ),
  );
});

test('where figures are not in step with light an edge seems to lie nearer to the dark, until they are', () => {
  const profile = profileAt(edge(30, 0, 1.2, 2.2), { x: 30, y: 30 }, { x: 1, y: 0 }, 7)!;
  expect(edgeByArea(profile)).toBeGreaterThan(0.3);
  expect(Math.abs(edgeByArea(inLight(profile, 2.2)))).toBeLessThan(0.06);
});

test('no edge is found where there is none', () => {
  const flat = { width: 60, height: 60, values: new Uint8Array(3600).fill(120) };
  expect(profileAt(flat, { x: 30, y: 30 }, { x: 1, y: 0 }, 5)).toBeUndefined();
  expect(edgePoints(flat, { x: 30, y: 5 }, { x: 30, y: 55 }, 5, 1)).toEqual([]);
});

test('a slanting side is found along its whole length, and crosses another where it should', () => {
  // Travel upwards has the light on its left.
  const found = lineThrough(edgePoints(edge(30, 0.2, 0.8), { x: 35, y: 55 }, { x: 25, y: 5 }, 6, 1))!;
  for (const y of [10, 30, 50])
    expect(Math.abs(offLine(found, { x: 30 + 0.2 * (y - 30), y }))).toBeLessThan(0.03);
  const level = { on: { x: 0, y: 20 }, direction: { x: 1, y: 0 } };
  expect(crossing(found, level)!.x).toBeCloseTo(28, 1);
  expect(crossing(level, { ...level, on: { x: 0, y: 9 } })).toBeUndefined();
});
