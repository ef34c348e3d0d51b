import { cuttingLine, type Path, type Piece, type Segment } from '@paperhinge/geometry';
import { pointAt } from '@paperhinge/geometry/curves';
import { offsetOutline } from '@paperhinge/geometry/cutting-line';
import { nearestOnPath } from '@paperhinge/geometry/paths';
import { selfCrossings, signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arc, at, edge, pieceOf, straightEdge } from './pieces.js';

/** A vest front with a neck of one curve; what vector editors make of a corner lies in its handles. */
const vest = (neck: Segment, allowance = 10): Piece => {
  const [from, to] = [neck[0], neck.at(-1)!];
  return pieceOf([
    edge('neck', [neck], { allowance }),
    straightEdge('shoulder', to, at(190, 40), { allowance }),
    straightEdge('side', at(190, 40), at(210, 400), { allowance }),
    straightEdge('hem', at(210, 400), at(0, 400), { kind: 'hem', allowance: 20 }),
    straightEdge('centre-front', at(0, 400), from, { kind: 'fold' }),
  ]);
};

const thousandths = (min: number, max: number) =>
  fc.integer({ min: min * 1000, max: max * 1000 }).map(value => value / 1000);
/** Ends, two handles as drawn, and which of them lie on which end. */
const retracted = fc
  .tuple(
    fc.tuple(thousandths(55, 110), thousandths(40, 140)),
    fc.tuple(thousandths(0.1, 1), thousandths(0.3, 1)),
    fc.tuple(thousandths(0.6, 1), thousandths(0, 0.6)),
    fc.constantFrom('first', 'last', 'both', 'crossed', 'first on end', 'last on start', 'stub'),
    fc.integer({ min: 3, max: 9 }),
  )
  .map(([[width, depth], [ax, ay], [bx, by], how, digits]): Segment => {
    const p = at(0, depth),
      s = at(width, 0);
    const q = at(width * ax, depth * ay),
      r = at(width * bx, depth * by);
    const stub = at(width - 10 ** -digits, 10 ** -digits);
    const handles = {
      first: [p, r],
      last: [q, s],
      both: [p, s],
      crossed: [s, p],
      'first on end': [s, r],
      'last on start': [q, p],
      stub: [q, stub],
    } as const;
    return [p, ...handles[how], s];
  });

describe('handles that lie on their end points', () => {
  test.each([
    ['a spur of 0.3 micrometres', [at(0, 90), at(20, 88), at(80, 0), at(80, 0)] as Segment],
    ['a bend that is tight for 3 micrometres', [at(0, 90), at(55, 85), at(80, 0), at(80, 0)] as Segment],
  ])('%s is nothing', (_, neck) => {
    const { findings, path } = cuttingLine(vest(neck));
    expect(findings).toEqual([]);
    expect(selfCrossings(path)).toEqual([]);
  });

  test('give a plain cutting line on the true parallel', () => {
    fc.assert(
      fc.property(retracted, fc.constantFrom(6.35, 7, 10, 15, 15.875), (neck, allowance) => {
        const { path, stretches, findings } = cuttingLine(vest(neck, allowance));
        expect(findings.filter(f => f.severity === 'fault' || f.code === 'corner-not-shaped')).toEqual([]);
        expect(selfCrossings(path)).toEqual([]);
        for (const { of, shape, path: stretch } of stretches)
          if (of === 'neck' && shape === 'parallel')
            for (const segment of stretch.segments)
              for (const t of [0.1, 0.3, 0.5, 0.7, 0.9]) {
                const { distance } = nearestOnPath({ segments: [neck] }, pointAt(segment, t));
                expect(Math.abs(distance - allowance)).toBeLessThan(0.01);
              }
      }),
      { numRuns: 240 },
    );
  });
});

describe('an allowance wider than a bend', () => {
  /** A rounded notch: two long straights that turn by `degrees` about an arc of the given radius. */
  const notched = (radius: number, degrees: number, allowance: number): Piece => {
    const half = degrees / 2,
      centre = at(150, 60 - radius);
    const bend = arc(centre, radius, 90 + half, 90 - half);
    const [first, last] = [bend[0]![0], bend.at(-1)![3]];
    const lean = (half * Math.PI) / 180;
    const top = (x: number, sense: number, from: { x: number; y: number }) =>
      at(from.x + sense * x * Math.cos(lean), from.y - x * Math.sin(lean));
    const [left, right] = [top(90, -1, first), top(90, 1, last)];
    return pieceOf([
      edge('top', [[left, first], ...bend, [last, right]], { allowance }),
      straightEdge('right', right, at(right.x, 300), { allowance }),
      straightEdge('foot', at(right.x, 300), at(left.x, 300), { allowance }),
      straightEdge('left', at(left.x, 300), left, { allowance }),
    ]);
  };
  const tooWide = (piece: Piece) => cuttingLine(piece).findings.find(f => f.code === 'allowance-too-wide');

  test.each([
    [5, 90, 15],
    [2, 60, 10],
    [12, 40, 15],
    [8, 120, 20],
  ])(
    'of radius %d that turns %d degrees, by %d, is told with the length of edge that it touches',
    (radius, degrees, allowance) => {
      // Closed form: the arc, and on either side as far as the foot of where the two parallels cross.
      const turn = (degrees * Math.PI) / 180;
      const lost = radius * turn + 2 * (allowance - radius) * Math.tan(turn / 2);
      expect(tooWide(notched(radius, degrees, allowance))?.figures?.lostMm).toBeCloseTo(lost, 2);
    },
  );

  test('is not told where no maker could see it', () => {
    expect(tooWide(notched(14.99, 20, 15))).toBeUndefined();
    expect(tooWide(notched(15, 90, 15))).toBeUndefined();
    expect(tooWide(notched(16, 90, 15))).toBeUndefined();
  });
});

describe('a wild outline, handles on its corners and all', () => {
  const corner = fc.tuple(
    fc.tuple(thousandths(60, 200), thousandths(0, 0.7)),
    fc.constantFrom('line', 'curve', 'first', 'last', 'both', 'on end', 'on start'),
    fc.tuple(thousandths(0.1, 0.6), thousandths(-0.4, 0.4), thousandths(0.4, 0.9), thousandths(-0.4, 0.4)),
  );
  const outline = fc
    .array(corner, { minLength: 3, maxLength: 8 })
    .map((corners): Path => {
      const points = corners.map(([[radius, shift]], i) => {
        const angle = ((i + shift) / corners.length) * 2 * Math.PI;
        return at(radius * Math.cos(angle), radius * Math.sin(angle));
      });
      return {
        segments: corners.map(([, how, [a, b, c, d]], i): Segment => {
          const p = points[i]!,
            s = points[(i + 1) % points.length]!;
          const off = (along: number, by: number) =>
            at(p.x + (s.x - p.x) * along - (s.y - p.y) * by, p.y + (s.y - p.y) * along + (s.x - p.x) * by);
          const [q, r] = [off(a, b), off(c, d)];
          if (how === 'line') return [p, s];
          const handles = {
            curve: [q, r],
            first: [p, r],
            last: [q, s],
            both: [p, s],
            'on end': [s, r],
            'on start': [q, p],
          } as const;
          return [p, ...handles[how], s];
        }),
      };
    })
    .filter(path => Math.abs(signedArea(path)) > 2000 && selfCrossings(path).length === 0);

  test('moved outwards is never lost, and moved either way is simple and nowhere nearer', () => {
    fc.assert(
      fc.property(outline, fc.constantFrom(6.35, 15.875, 25, -6.35, -15.875, -25), (path, by) => {
        const { loops, findings } = offsetOutline(path, by);
        expect(findings.filter(f => f.severity === 'fault')).toEqual([]);
        if (by > 0) expect(loops.length).toBeGreaterThan(0);
        for (const loop of loops) {
          expect(selfCrossings(loop.path)).toEqual([]);
          for (const segment of loop.path.segments)
            for (const t of [0.2, 0.5, 0.8])
              expect(nearestOnPath(path, pointAt(segment, t)).distance).toBeGreaterThan(Math.abs(by) - 0.01);
        }
      }),
      { numRuns: 150 },
    );
  });
});
