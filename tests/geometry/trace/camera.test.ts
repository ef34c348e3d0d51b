import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type Camera,
  matrixOf,
  product,
  turnOf,
  viewOf,
} from '../../../packages/geometry/src/trace/photo/camera.js';
import { carried, homographyFrom } from '../../../packages/geometry/src/trace/photo/homography.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Cameras that look down at the floor, tilted up to 40 degrees, lenses as telephones have them. */
const anyCamera: fc.Arbitrary<Camera> = fc
  .record({
    focal: between(2500, 6000),
    k1: between(-0.1, 0.1),
    k2: between(-0.02, 0.02),
    roll: between(-3, 3),
    tilt: between(-0.7, 0.7),
    nod: between(-0.5, 0.5),
  })
  .map(({ focal, k1, k2, roll, tilt, nod }) => ({
    focal,
    centre: { x: 2000, y: 1500 },
    bend: [k1, k2, 0] as const,
    turn: turnOf(product(matrixOf([tilt, nod, 0]), matrixOf([0, 0, roll]))),
    shift: [10, -20, 1300] as const,
  }));

test('what a camera sees of the floor it finds on the floor again', () => {
  fc.assert(
    fc.property(anyCamera, between(-400, 400), between(-400, 400), (camera, x, y) => {
      const view = viewOf(camera);
      const seen = view.toPicture(x, y);
      const found = view.toFloor(seen.x, seen.y);
      expect(Math.hypot(found.x - x, found.y - y)).toBeLessThan(1e-6);
    }),
  );
});

test('a turn is the same from its matrix, up to half a turn', () => {
  fc.assert(
    fc.property(between(-1, 1), between(-1, 1), between(-1, 1), between(0.001, 3.14), (x, y, z, angle) => {
      const n = Math.hypot(x, y, z);
      fc.pre(n > 0.01);
      const turn = [x, y, z].map(v => (v / n) * angle) as unknown as readonly [number, number, number];
      const again = turnOf(matrixOf(turn));
      expect(Math.hypot(...turn.map((v, i) => v - again[i]!))).toBeLessThan(1e-6);
    }),
  );
});

// Closed form: looking straight down from h, a floor point lies focal × x / h from the centre, the lens adding k1 r².
test('straight from above the picture is the floor made smaller', () => {
  const camera: Camera = {
    focal: 1000,
    centre: { x: 500, y: 400 },
    bend: [0.1, 0, 0],
    turn: [0, 0, 0],
    shift: [0, 0, 2000],
  };
  const seen = viewOf(camera).toPicture(600, 0);
  expect(seen.x).toBeCloseTo(500 + 300 * (1 + 0.1 * 0.3 ** 2), 9);
  expect(seen.y).toBeCloseTo(400, 9);
});

test('nothing is seen above the horizon', () => {
  const camera: Camera = {
    focal: 1000,
    centre: { x: 500, y: 400 },
    bend: [0, 0, 0],
    turn: [1.2, 0, 0],
    shift: [0, 0, 1000],
  };
  const view = viewOf(camera);
  // Tilted by 69 degrees, a ray 45 degrees beyond the axis looks into the sky, on one side of the picture only.
  const skies = [-1000, 1800].map(v => Number.isNaN(view.toFloor(500, v).x));
  expect(skies.filter(Boolean)).toHaveLength(1);
});

test('a map of planes is found again from what it does to points', () => {
  const square = [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 100, y: 100 },
    { x: 0, y: 100 },
    { x: 37, y: 58 },
  ];
  fc.assert(
    fc.property(
      fc.array(between(-0.2, 0.2), { minLength: 4, maxLength: 4 }),
      fc.array(between(-0.001, 0.001), { minLength: 2, maxLength: 2 }),
      ([a, b, c, d], [g, h]) => {
        const map = [1 + a!, b!, 300, c!, 1 + d!, -200, g!, h!, 1];
        const found = homographyFrom(
          square,
          square.map(p => carried(map, p)),
        )!;
        const p = { x: 150, y: 20 };
        const [u, v] = [carried(map, p), carried(found, p)];
        expect(Math.hypot(u.x - v.x, u.y - v.y)).toBeLessThan(1e-6);
      },
    ),
  );
  expect(
    homographyFrom(
      [0, 1, 2, 3].map(x => ({ x, y: 0 })),
      square.slice(0, 4),
    ),
  ).toBeUndefined();
});
