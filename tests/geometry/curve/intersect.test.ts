import { at, line, type Segment } from '@paperhinge/geometry';
import {
  between,
  type Cubic,
  intersectSegments,
  offsetSegment,
  pointAt,
  reversed,
  selfCrossing,
  transformed,
} from '@paperhinge/geometry/curves';
import { distance, rotation } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyCubic, garmentCubic } from '../../support/ugly-curves.js';

const arch: Cubic = [at(0, 0), at(0, 100), at(100, 100), at(100, 0)];
const cup: Cubic = [at(0, 150), at(0, 50), at(100, 50), at(100, 150)];
const down = (curve: Cubic, dy: number): Cubic => curve.map(p => at(p.x, p.y + dy)) as unknown as Cubic;
const count = (a: Segment, b: Segment): number => intersectSegments(a, b).length;
const turned = (s: Segment): Segment => transformed(s, rotation(0.7, at(3, 5)));

describe('touches and near misses', () => {
  test('two arches that touch meet once, where they touch', () => {
    const [touch, ...more] = intersectSegments(arch, cup);
    expect(more).toEqual([]);
    expect(distance(touch!.point, at(50, 75))).toBeLessThan(1e-8);
  });
  test.each([1e-3, 1e-4, 1e-6, 1e-7])('a gap of %s mm is a gap, and an overlap of it two crossings', gap => {
    expect(count(arch, down(cup, gap))).toBe(0);
    expect(count(arch, down(cup, -gap))).toBe(2);
    expect(count(arch, line(at(0, 75 + gap), at(100, 75 + gap)))).toBe(0);
    expect(count(arch, line(at(0, 75 - gap), at(100, 75 - gap)))).toBe(2);
  });
  test('a touch is one whichever way the page is turned', () => {
    for (let i = 0; i < 24; i++) {
      const map = rotation(i, at(37, -11));
      expect(count(transformed(arch, map), transformed(cup, map))).toBe(1);
      expect(count(transformed(arch, map), transformed(line(at(0, 75), at(100, 75)), map))).toBe(1);
    }
  });
  test('a line through the tip of a cusp meets it once, a curve too', () => {
    const cusp: Cubic = [at(0, 0), at(100, 100), at(0, 100), at(100, 0)];
    expect(count(cusp, line(at(0, 75), at(100, 75)))).toBe(1);
    expect(count(cusp, [at(0, 70), at(30, 75), at(70, 75), at(100, 80)])).toBe(1);
  });
  test('a contact of third order at a shared start is one meeting', () => {
    const up: Cubic = [at(0, 0), at(50, 0), at(100, 0), at(150, 100)];
    expect(intersectSegments(up, up.map(p => at(p.x, -p.y)) as unknown as Cubic)).toHaveLength(1);
  });
});

describe('ends', () => {
  test('halves of one curve meet at their joint alone', () => {
    const [meeting, ...more] = intersectSegments(between(arch, 0, 0.4), between(arch, 0.4, 1));
    expect(more).toEqual([]);
    expect([meeting!.ta, meeting!.tb]).toEqual([1, 0]);
  });
  test('an end on the other curve counts, from either side', () => {
    expect(count(arch, line(at(50, 75), at(50, 200)))).toBe(1);
    expect(count(arch, [at(50, 75), at(50, 80), at(60, 120), at(80, 200)])).toBe(1);
    expect(count(line(at(0, 0), at(10, 0)), line(at(5, 0), at(5, 10)))).toBe(1);
    expect(count(line(at(0, 0), at(10, 0)), line(at(10, 0), at(20, 0)))).toBe(1);
  });
  test('curves that leave one point in one direction meet there once', () => {
    const wide: Cubic = [at(0, 0), at(0, 50), at(50, 150), at(200, 100)];
    expect(intersectSegments(arch, wide).map(m => m.ta < 1e-6)).toEqual([true, false]);
  });
});

describe('overlaps', () => {
  test('a curve runs along itself from end to end, in either sense', () => {
    expect(intersectSegments(arch, arch)).toEqual([
      { ta: 0, tb: 0, point: at(0, 0), overlap: true },
      { ta: 1, tb: 1, point: at(100, 0), overlap: true },
    ]);
    expect(intersectSegments(arch, reversed(arch)).map(m => [m.ta, m.tb, m.overlap])).toEqual([
      [0, 1, true],
      [1, 0, true],
    ]);
  });
  test('parts of one curve share the stretch between their ends', () => {
    const shared = intersectSegments(turned(between(arch, 0, 0.6)), turned(between(arch, 0.3, 1)));
    expect(shared.map(m => m.overlap)).toEqual([true, true]);
    expect(shared[0]!.ta).toBeCloseTo(0.5, 9);
    expect(shared[1]!.tb).toBeCloseTo(3 / 7, 9);
  });
  test('lines share their common stretch, and a straight cubic shares it with a line', () => {
    expect(
      intersectSegments(line(at(0, 0), at(10, 0)), line(at(5, 0), at(20, 0))).map(m => m.point.x),
    ).toEqual([5, 10]);
    const cubic: Cubic = [at(5, 0), at(7, 0), at(8, 0), at(30, 0)];
    expect(intersectSegments(line(at(0, 0), at(10, 0)), cubic).map(m => [m.point.x, m.overlap])).toEqual([
      [5, true],
      [10, true],
    ]);
  });
  test('two curves that turn back on one slanted line share all that both reach', () => {
    const from = at(52.874, -37.333),
      way = at(209.61, 41.86);
    const on = (...shares: readonly number[]): Cubic =>
      shares.map(k => at(from.x + way.x * k, from.y + way.y * k)) as unknown as Cubic;
    // The least and the greatest share of the way that a curve reaches, by sampling: right to 1e-6 of it.
    const reach = (curve: Cubic): readonly [number, number] => {
      const [p, q, r, s] = curve.map(c => (c.x - from.x) / way.x) as [number, number, number, number];
      let low = p,
        high = p;
      for (let i = 1; i <= 2000; i++) {
        const t = i / 2000,
          u = 1 - t;
        const here = u * u * u * p + 3 * u * u * t * q + 3 * u * t * t * r + t * t * t * s;
        low = Math.min(low, here);
        high = Math.max(high, here);
      }
      return [low, high];
    };
    const share = fc.double({ min: -1, max: 2, noNaN: true });
    fc.assert(
      fc.property(share, share, share, share, share, share, (a, b, c, d, e, f) => {
        const first = on(0, a, b, 1),
          second = on(c, d, e, f);
        const [[low, high], [least, most]] = [reach(first), reach(second)];
        const [start, end] = [Math.max(low, least), Math.min(high, most)];
        fc.pre(Math.abs(end - start) > 1e-4);
        const met = intersectSegments(first, second);
        expect(met.map(m => m.overlap)).toEqual(end > start ? [true, true] : []);
        const places = met.map(m => (m.point.x - from.x) / way.x).sort((p, q) => p - q);
        expect(places).toEqual(end > start ? [expect.closeTo(start, 5), expect.closeTo(end, 5)] : []);
        for (const { ta, tb } of met)
          expect(distance(pointAt(first, ta), pointAt(second, tb))).toBeLessThan(1e-6);
        expect(met.map(m => m.ta)).toEqual(met.map(m => m.ta).sort((p, q) => p - q));
      }),
      { numRuns: 60 },
    );
  });
  test('a parallel a thousandth of a millimetre away does not overlap', () => {
    expect(count(arch, offsetSegment(arch, 1e-3, 1e-5)[0]!)).toBe(0);
  });
});

// Every curve meets a line where its height over the line changes sign: counted by sampling.
// Derived: b − a is (0, g (u³ + 3u²t − 3ut² − t³)), which changes sign at t = 1/2 and nowhere else.
test.each([2e-6, 1e-5, 1e-4, 1e-3, 0.1])(
  'two curves that cross as flatly as %d mm in 300 meet once, in the middle',
  gap => {
    const wave: Cubic = [at(0, 0), at(100, 120), at(200, -60), at(300, 50)];
    const other = wave.map((p, i) => at(p.x, p.y + (i < 2 ? gap : -gap))) as unknown as Cubic;
    const found = intersectSegments(wave, other);
    expect(found).toHaveLength(1);
    expect(found[0]!.ta).toBeCloseTo(0.5, 6);
    expect(intersectSegments(other, wave)).toHaveLength(1);
    expect(count(wave, down(wave, gap))).toBe(0);
  },
);

// Derived: b − a is (0, g (u³ + 3u²t − 3ut² − t³)), which changes sign at t = 1/2 and nowhere else.
test.each([2e-6, 1e-5, 1e-4, 1e-3, 0.1])(
  'two curves that cross as flatly as %d mm in 300 meet once, in the middle',
  gap => {
    const wave: Cubic = [at(0, 0), at(100, 120), at(200, -60), at(300, 50)];
    const other = wave.map((p, i) => at(p.x, p.y + (i < 2 ? gap : -gap))) as unknown as Cubic;
    const found = intersectSegments(wave, other);
    expect(found).toHaveLength(1);
    expect(found[0]!.ta).toBeCloseTo(0.5, 6);
    expect(intersectSegments(other, wave)).toHaveLength(1);
    expect(count(wave, down(wave, gap))).toBe(0);
  },
);

test('no crossing with a line is missed', () => {
  fc.assert(
    fc.property(anyCubic, fc.double({ min: -200, max: 200, noNaN: true }), (curve, y) => {
      let changes = 0;
      for (let i = 0; i < 256; i++) {
        const a = pointAt(curve, i / 256).y - y,
          b = pointAt(curve, (i + 1) / 256).y - y;
        if ((a < -1e-6 && b > 1e-6) || (a > 1e-6 && b < -1e-6)) changes++;
      }
      const found = intersectSegments(line(at(-1e5, y), at(1e5, y)), curve);
      expect(found.length).toBeGreaterThanOrEqual(changes);
      for (const m of found) expect(Math.abs(pointAt(curve, m.tb).y - y)).toBeLessThan(2e-6);
    }),
  );
});
test('the order of the two curves does not matter, and both agree on the place', () => {
  fc.assert(
    // One of the two is tame: of two curves that all but overlap, what is one place is a matter of rounding.
    fc.property(anyCubic, garmentCubic, (a, b) => {
      const ab = intersectSegments(a, b),
        ba = intersectSegments(b, a);
      expect(ba.length).toBe(ab.length);
      for (const m of ab) expect(distance(pointAt(a, m.ta), pointAt(b, m.tb))).toBeLessThan(1.1e-6);
    }),
    { numRuns: 300 },
  );
});

describe('self-crossing', () => {
  test('a loop crosses itself where both parameters give one point', () => {
    const loop: Cubic = [at(0, 0), at(200, 150), at(-100, 150), at(100, 0)];
    const found = selfCrossing(loop)!;
    expect(distance(pointAt(loop, found.t0), pointAt(loop, found.t1))).toBeLessThan(1e-12);
    expect(found.point.x).toBeCloseTo(50, 12);
  });
  test('a cusp, an arch, a closed curve and a turn-back do not', () => {
    expect(selfCrossing([at(0, 0), at(100, 100), at(0, 100), at(100, 0)])).toBeUndefined();
    expect(selfCrossing(arch)).toBeUndefined();
    expect(selfCrossing([at(0, 0), at(100, 0), at(0, 100), at(0, 0)])).toBeUndefined();
    expect(selfCrossing([at(0, 0), at(300, 0), at(-100, 0), at(200, 0)])).toBeUndefined();
  });
  // A curve that all but doubles back on its line crosses itself at next to no angle: hence not 1e-9.
  test('what is found is a crossing', () => {
    fc.assert(
      fc.property(anyCubic, curve => {
        const found = selfCrossing(curve);
        if (!found) return;
        const size = Math.max(1, ...curve.flatMap(p => [Math.abs(p.x), Math.abs(p.y)]));
        expect(distance(pointAt(curve, found.t0), pointAt(curve, found.t1))).toBeLessThan(1e-7 * size);
      }),
      { numRuns: 500 },
    );
  });
});

describe('curves that are one curve', () => {
  const ends = (a: Segment, b: Segment) => intersectSegments(a, b).map(m => [m.ta, m.tb, m.overlap]);
  test('any curve meets itself all along, either way', () => {
    fc.assert(
      fc.property(anyCubic, curve => {
        fc.pre(!curve.every(p => distance(p, curve[0]) <= 1e-5));
        expect(ends(curve, curve)).toEqual([
          [0, 0, true],
          [1, 1, true],
        ]);
        const back = intersectSegments(curve, reversed(curve));
        expect(back.every(m => m.overlap)).toBe(true);
        expect(back.map(m => m.ta)).toEqual([0, 1]);
      }),
    );
  });
  test('a closed curve runs along a part of itself', () => {
    const drop: Cubic = [at(0, 0), at(100, 100), at(-100, 100), at(0, 0)];
    for (const [from, to] of [
      [0, 0.5],
      [0.2, 0.8],
      [0.3, 1],
    ] as const) {
      const shared = intersectSegments(drop, between(drop, from, to)).filter(m => m.overlap);
      expect(shared.map(m => m.ta)).toEqual([expect.closeTo(from, 9), expect.closeTo(to, 9)]);
    }
  });
  test('one that goes out and back on a line is shared as far as it reaches', () => {
    const spur: Cubic = [at(0, 0), at(80, 30), at(80, 30), at(0, 0)];
    expect(ends(spur, line(at(0, 0), at(100, 37.5)))).toEqual([
      [0, 0, true],
      [0.5, expect.closeTo(0.6, 9), true],
    ]);
  });
});
