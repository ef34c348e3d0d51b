import { at } from '@paperhinge/geometry';
import { type Cubic, nearestOnSegment, offsetSegment, pointAt, tangentAt } from '@paperhinge/geometry/curves';
import { rightOf } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isParallel } from '../../../packages/geometry/src/curve/offset-certificate.js';
import { powerForm } from '../../../packages/geometry/src/curve/power-form.js';
import { garmentCubic } from '../../support/ugly-curves.js';

const certified = (fit: Cubic, curve: Cubic, distance: number, tolerance: number, sense = 1): boolean =>
  isParallel(powerForm(fit), { curve: powerForm(curve), from: 0, to: 1 }, { distance, sense }, tolerance);

const level: Cubic = [at(0, 0), at(100 / 3, 0), at(200 / 3, 0), at(100, 0)];
const raised = (y0: number, y1 = y0, y2 = y0, y3 = y0): Cubic => [
  at(0, y0),
  at(100 / 3, y1),
  at(200 / 3, y2),
  at(100, y3),
];

describe('beside a straight line', () => {
  test('the parallel itself holds at any tolerance, from either side', () => {
    expect(certified(raised(10), level, 10, 1e-9)).toBe(true);
    expect(certified(raised(-10), level, -10, 1e-9)).toBe(true);
    expect(certified(raised(10), level, -10, 1e-9)).toBe(true);
    expect(certified(level, level, 0, 1e-9)).toBe(true);
  });
  test('as far off as the tolerance is, and no further', () => {
    for (const off of [0.0099, -0.0099]) expect(certified(raised(10 + off), level, 10, 0.01)).toBe(true);
    for (const off of [0.0101, -0.0101]) expect(certified(raised(10 + off), level, 10, 0.01)).toBe(false);
    expect(certified(raised(0.0099), level, 0, 0.01)).toBe(true);
    expect(certified(raised(0.0101), level, 0, 0.01)).toBe(false);
    // The tolerance itself is within it.
    expect(certified(raised(9.99), level, 10, 0.01)).toBe(true);
    expect(certified(raised(10.01), level, 10, 0.01)).toBe(true);
    // Nearer than the tolerance to the curve itself nothing is too near.
    expect(certified(raised(0.001), level, 0.009, 0.01)).toBe(true);
    expect(certified(raised(0.02), level, 0.009, 0.01)).toBe(false);
  });
  test('a bulge between true ends is seen, outwards and inwards', () => {
    // A bulge of handles by h stands off by 3/4 h.
    for (const sign of [1, -1]) {
      const bulge = (h: number) => raised(10, 10 + sign * h, 10 + sign * h, 10);
      expect(certified(bulge(0.013), level, 10, 0.01)).toBe(true);
      expect(certified(bulge(0.0135), level, 10, 0.01)).toBe(false);
      expect(certified(bulge(3), level, 10, 0.01)).toBe(false);
    }
  });
  test('an S between true ends is seen', () => {
    expect(certified(raised(10, 10.2, 9.8, 10), level, 10, 0.01)).toBe(false);
    expect(certified(raised(10, 10.02, 9.98, 10), level, 10, 0.01)).toBe(true);
    // Held against the line itself, an S can only be too far: it strays by √3/6 of what its handles do.
    expect(certified(raised(0, 0.034, -0.034, 0), level, 0, 0.01)).toBe(true);
    expect(certified(raised(0, 0.036, -0.036, 0), level, 0, 0.01)).toBe(false);
  });
  test('a curve that runs to and fro on the parallel is refused: it is no parallel, though no point of it is off', () => {
    expect(certified([at(0, 10), at(160, 10), at(-60, 10), at(100, 10)], level, 10, 0.01)).toBe(false);
    expect(certified([at(0, 10), at(130, 10), at(-30, 10), at(100, 10)], level, 10, 0.01)).toBe(false);
    // Even by a fifth of a millimetre in the middle, where every point matched stays within the tolerance.
    expect(certified([at(0, 10), at(102, 10), at(-2, 10), at(100, 10)], level, 10, 0.01)).toBe(false);
    expect(certified([at(0, 10), at(100, 10), at(0, 10), at(100, 10)], level, 10, 0.01)).toBe(true);
  });
  test('a curve that speeds up and slows down on the parallel is one', () => {
    expect(certified([at(0, 10), at(90, 10), at(95, 10), at(100, 10)], level, 10, 0.01)).toBe(true);
    expect(certified([at(0, 10), at(2, 10), at(5, 10), at(100, 10)], level, 10, 0.01)).toBe(true);
  });
  test('so is one along a metre, within the halvings that a proof may take', () => {
    const metre: Cubic = [at(0, 0), at(1000 / 3, 0), at(2000 / 3, 0), at(1000, 0)];
    for (const [x1, x2] of [
      [550, 700],
      [100, 200],
      [30, 970],
    ] as const)
      expect(certified([at(0, 10), at(x1, 10), at(x2, 10), at(1000, 10)], metre, 10, 0.01)).toBe(true);
  });
  test('one that ends early or late is refused', () => {
    for (const end of [99, 101])
      expect(certified([at(0, 10), at(33, 10), at(66, 10), at(end, 10)], level, 10, 0.01)).toBe(false);
    for (const start of [-1, 1])
      expect(certified([at(start, 10), at(33, 10), at(66, 10), at(100, 10)], level, 10, 0.01)).toBe(false);
  });
  test('uneven travel hides no nearness: near the line the slip along it counts', () => {
    // At 1 mm from the line, and up to some millimetres ahead of where it is matched, the way is never 1 mm long.
    const uneven = (dip: number): Cubic => [at(0, 1), at(55, 1 - dip), at(70, 1 - dip), at(100, 1)];
    expect(certified(uneven(0.02), level, 1, 0.01)).toBe(false);
    expect(certified(uneven(0.2), level, 1, 0.01)).toBe(false);
    expect(certified(uneven(0.012), level, 1, 0.01)).toBe(true);
  });
  // Control points (0, d), (x1, d + y1), (x2, d + y2), (100, d): what makes up for a dip is that F runs ahead or behind.
  test.each([
    [3, 22, 28, -0.201, -0.052],
    [1, 10, 81, 0.039, -0.244],
    [0.5, 56, 70, -0.038, -0.208],
    [1, 60, 82, -0.245, 0.039],
    [0.2, 15, 48, 0.03, -0.241],
  ])('nor is a dip at %d mm made good by what lies ahead or behind', (d, x1, x2, y1, y2) => {
    expect(certified([at(0, d), at(x1, d + y1), at(x2, d + y2), at(100, d)], level, d, 0.1)).toBe(false);
  });
  test.each([
    [0.5, 5, 48, -0.021, 0.01],
    [0.5, 3, 80, -0.016, 0.007],
    [0.2, 88, 14, 0.008, -0.022],
  ])('and near the line, at %d mm, uneven travel is no fault of its own', (d, x1, x2, y1, y2) => {
    expect(certified([at(0, d), at(x1, d + y1), at(x2, d + y2), at(100, d)], level, d, 0.01)).toBe(true);
  });
  test('whatever is certified keeps the tolerance, and what keeps well within it is certified', () => {
    const handle = fc.tuple(
      fc.integer({ min: 0, max: 100 }),
      fc.double({ min: -0.3, max: 0.3, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.constantFrom(0, 0.2, 1, 3, 20), handle, handle, (d, [x1, y1], [x2, y2]) => {
        const fit: Cubic = [at(0, d), at(x1, d + y1), at(x2, d + y2), at(100, d)];
        // 3 u (1 − u) (y1 (1 − u) + y2 u), at most where its derivative is 0, and at steps fine enough to miss 1e-6 of it.
        const stray = (u: number) => Math.abs(3 * u * (1 - u) * (y1 * (1 - u) + y2 * u));
        const most = Math.max(...Array.from({ length: 1001 }, (_, i) => stray(i / 1000)));
        const runsOn = x1 <= x2;
        if (certified(fit, level, d, 0.1)) expect(most).toBeLessThan(0.1 * (1 + 1e-5));
        else expect(runsOn && most < 0.098 ? { x1, x2, most } : undefined).toBeUndefined();
      }),
      { numRuns: 1500 },
    );
  });
});

/** A circular arc of `angle` rad about the origin, as one cubic: true within 2e-4 of its radius at a right angle. */
const arc = (radius: number, angle: number, from = 0): Cubic => {
  const h = (4 / 3) * Math.tan(angle / 4);
  const on = (a: number) => at(Math.cos(a), Math.sin(a));
  const [p, s] = [on(from), on(from + angle)];
  const scaled = (x: number, y: number) => at(radius * x, radius * y);
  return [
    scaled(p.x, p.y),
    scaled(p.x - h * p.y, p.y + h * p.x),
    scaled(s.x + h * s.y, s.y - h * s.x),
    scaled(s.x, s.y),
  ];
};

/** An arc beyond the centre whose handles are longer by a factor and `out` mm farther from it. */
function far(radius: number, angle: number, first: readonly number[], second: readonly number[]): Cubic {
  const h = (4 / 3) * Math.tan(angle / 4) * radius;
  const handle = (a: number, [k, out]: readonly number[], sense: number) => {
    const { cos, sin } = { cos: Math.cos(a), sin: Math.sin(a) };
    const along = sense * h * k!;
    return at((radius + out!) * cos - along * sin, (radius + out!) * sin + along * cos);
  };
  const [p, , , s] = arc(radius, angle, Math.PI);
  return [p, handle(Math.PI, first, 1), handle(Math.PI + angle, second, -1), s];
}

describe('beside a bend', () => {
  test.each([1, -1])('arcs about one centre are parallel (turned %d)', turn => {
    const [inner, outer] = [arc(20, turn * 0.5), arc(30, turn * 0.5)];
    expect(certified(outer, inner, 10, 1e-3)).toBe(true);
    expect(certified(inner, outer, 10, 1e-3)).toBe(true);
    expect(certified(outer, inner, 10.002, 1e-3)).toBe(false);
    expect(certified(inner, outer, 9.998, 1e-3)).toBe(false);
  });
  test('beyond the centre the parallel runs against its curve', () => {
    // A radius of 10 moved by 25 towards its centre: radius 15 on the far side.
    const bend = arc(10, 0.5),
      beyond = arc(15, 0.5, Math.PI);
    expect(certified(beyond, bend, 25, 1e-3, -1)).toBe(true);
    expect(certified(beyond, bend, 25, 1e-3, 1)).toBe(false);
    expect(certified(beyond, bend, 25.002, 1e-3, -1)).toBe(false);
    expect(certified(beyond, bend, 24.998, 1e-3, -1)).toBe(false);
    expect(certified(arc(15.002, 0.5, Math.PI), bend, 25, 1e-3, -1)).toBe(false);
    expect(certified(arc(14.998, 0.5, Math.PI), bend, 25, 1e-3, -1)).toBe(false);
    // Where its handles are drawn in or out it runs ahead or behind: nearer than it is.
    expect(certified(far(100, 0.4, [0.48, -0.031], [1.47, -0.009]), arc(100, 0.4), 200, 0.02, -1)).toBe(
      false,
    );
    expect(certified(far(100, 0.4, [1.49, -0.038], [0.45, 0.006]), arc(100, 0.4), 200, 0.02, -1)).toBe(false);
    expect(certified(far(300, 0.4, [1.43, 0.007], [0.51, 0.025]), arc(100, 0.4), 400, 0.1, -1)).toBe(false);
    // Handles 0.13 mm out: 3/4 of that in the middle.
    expect(certified(far(300, 0.4, [1, 0.13], [1, 0.13]), arc(100, 0.4), 400, 0.1, -1)).toBe(true);
    // The other way round it lies as far, and runs with the curve.
    const back = [...beyond].reverse() as unknown as Cubic;
    expect(certified(back, bend, 25, 1e-3, -1)).toBe(false);
  });
});

describe('where no bound is sharp', () => {
  // Retracted handles: the curve stands still at its end, and its second derivative is all that bends.
  test.each([
    ['at its start', [at(0, 0), at(0, 0), at(60, 0), at(100, 0)]],
    ['at its end', [at(0, 0), at(40, 0), at(100, 0), at(100, 0)]],
    ['at both', [at(0, 0), at(0, 0), at(100, 0), at(100, 0)]],
  ] as [string, Cubic][])('the parallel of a line that rests %s holds', (_, resting) => {
    const lifted = (by: number) => resting.map(({ x }) => at(x, by)) as unknown as Cubic;
    expect(certified(lifted(10), resting, 10, 0.005)).toBe(true);
    expect(certified(lifted(10.0051), resting, 10, 0.005)).toBe(false);
    expect(certified(raised(10), resting, 10, 0.005)).toBe(true);
    expect(certified(lifted(10), level, 10, 0.005)).toBe(true);
  });
  test('of a stretch shorter than the tolerance the two ends decide', () => {
    const speck = (y0: number, y1: number): Cubic => [at(0, y0), at(0, y0), at(0.0004, y1), at(0.0004, y1)];
    const stretch = speck(0, 0);
    expect(certified(speck(10.0095, 10.0095), stretch, 10, 0.01)).toBe(true);
    expect(certified(speck(9.9905, 9.9905), stretch, 10, 0.01)).toBe(true);
    expect(certified(speck(10.0105, 10.0095), stretch, 10, 0.01)).toBe(false);
    expect(certified(speck(10.0095, 10.0105), stretch, 10, 0.01)).toBe(false);
    expect(certified(speck(9.9895, 9.9905), stretch, 10, 0.01)).toBe(false);
    expect(certified(speck(9.9905, 9.9895), stretch, 10, 0.01)).toBe(false);
  });
  test('in a stretch hardly longer than the tolerance a bulge is seen', () => {
    const bulge = (y: number): Cubic => [at(0, 10), at(0, y), at(0.4, y), at(0.4, 10)];
    const short: Cubic = [at(0, 0), at(0.4 / 3, 0), at(0.8 / 3, 0), at(0.4, 0)];
    // 3/4 of the way out: 1.35 mm and 0.9 mm.
    expect(certified(bulge(11.8), short, 10, 1.2)).toBe(false);
    expect(certified(bulge(11.2), short, 10, 1.2)).toBe(true);
  });
  test('a fit that keeps the tolerance by next to nothing takes too many halvings, and is refused', () => {
    const within = (by: number): Cubic => [0, 55, 70, 100].map(x => at(x, 9.99 + by)) as unknown as Cubic;
    expect(certified(within(1e-6), level, 10, 0.01)).toBe(true);
    expect(certified(within(1e-7), level, 10, 0.01)).toBe(false);
  });
});

/** What dense sampling says: the farthest that a fit strays, and whether its feet follow each other in order. */
function strayed(fit: Cubic, curve: Cubic, distance: number) {
  let stray = 0,
    last = 0,
    isOrdered = true;
  for (let i = 0; i <= 300; i++) {
    const foot = nearestOnSegment(curve, pointAt(fit, i / 300));
    stray = Math.max(stray, Math.abs(foot.distance - Math.abs(distance)));
    if (foot.t < last - 1e-6) isOrdered = false;
    last = Math.max(last, foot.t);
  }
  return { stray, isOrdered };
}

const shift = fc.double({ min: -1, max: 1, noNaN: true });
/** A piece of a true parallel, its handles drawn in or out and pushed aside, its curve's own piece beside it. */
const nearlyParallel = fc
  .tuple(garmentCubic, fc.constantFrom(0, 0.5, 2, 7, 15, -2, -7, -15), fc.tuple(shift, shift, shift, shift))
  .map(([curve, distance, [stretch, squeeze, lift, drop]]) => {
    const tolerance = 0.02;
    const tangents = [tangentAt(curve, 0), tangentAt(curve, 1)] as const;
    const ends = tangents.map((t, i) => {
      const p = i === 0 ? curve[0] : curve[3],
        { x, y } = rightOf(t);
      return at(p.x - x * distance, p.y - y * distance);
    });
    const [exact] = offsetSegment(curve, distance, 0.5) as readonly Cubic[];
    const one = offsetSegment(curve, distance, 0.5).length === 1 && exact!.length === 4 ? exact! : undefined;
    if (!one) return undefined;
    const [p, q, r, s] = one;
    const moved = (
      from: { x: number; y: number },
      handle: { x: number; y: number },
      k: number,
      aside: number,
    ) => {
      const [x, y] = [handle.x - from.x, handle.y - from.y];
      return at(
        from.x + x * (1 + 0.3 * k) - (y / Math.hypot(x, y)) * aside,
        from.y + y * (1 + 0.3 * k) + (x / Math.hypot(x, y)) * aside,
      );
    };
    const small = stretch ** 5,
      slight = squeeze ** 5;
    // Somewhere on the page, and turned.
    const place = (c: Cubic): Cubic =>
      c.map(({ x, y }) => at(40 + 0.6 * x - 0.8 * y, -70 + 0.8 * x + 0.6 * y)) as unknown as Cubic;
    const fit: Cubic = [
      ends[0]!,
      moved(p, q, small, lift ** 3 * 0.2),
      moved(s, r, slight, drop ** 3 * 0.2),
      ends[1]!,
    ];
    return { fit: place(fit), curve: place(curve), distance, tolerance };
  })
  .filter(made => made !== undefined);

test('nothing is certified that strays, and what strays by well under the tolerance is', () => {
  let certifiedCount = 0,
    refused = 0;
  fc.assert(
    fc.property(nearlyParallel, ({ fit, curve, distance, tolerance }) => {
      const { stray, isOrdered } = strayed(fit, curve, distance);
      const isCertified = certified(fit, curve, distance, tolerance);
      if (isCertified) {
        certifiedCount++;
        expect(stray).toBeLessThan(tolerance * (1 + 1e-6));
        expect(isOrdered).toBe(true);
      } else {
        refused++;
        expect(isOrdered && stray < 0.9 * tolerance).toBe(false);
      }
    }),
    { numRuns: 600 },
  );
  expect(certifiedCount).toBeGreaterThan(60);
  expect(refused).toBeGreaterThan(60);
});

describe('near a cusp of the parallel', () => {
  // Where the parallel all but stops, what is shorter than the tolerance is near whatever it does: no crumbs.
  test.each([
    [[at(0, 0), at(30, 60), at(60, 60), at(90, 0)] as Cubic, -25, 6],
    [[at(0, 0), at(0, 40), at(50, 40), at(50, 0)] as Cubic, -28, 2],
    [[at(10, 5), at(40, 50), at(50, 50), at(90, -10)] as Cubic, -20, 3],
  ])('few curves do, each on the parallel', (curve, distance, most) => {
    const parts = offsetSegment(curve, distance, 0.005);
    expect(parts.length).toBeLessThanOrEqual(most);
    for (const part of parts)
      for (const t of [0, 0.25, 0.5, 0.75, 1]) {
        const p = pointAt(part, t);
        const off = Array.from({ length: 2001 }, (_, i) => {
          const { x, y } = rightOf(tangentAt(curve, i / 2000)),
            on = pointAt(curve, i / 2000);
          return Math.hypot(on.x - distance * x - p.x, on.y - distance * y - p.y);
        });
        expect(Math.min(...off)).toBeLessThan(0.06);
      }
  });
});
