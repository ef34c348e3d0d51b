import { cuttingLine, type Edge, type OutlinePart, type Piece, pathLength } from '@paperhinge/geometry';
import { stitchingLine } from '@paperhinge/geometry/cutting-line';
import { joined } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refusalOf } from '../../support/told.js';
import { distanceTo, edgesOf, largestGap, sampled } from './independent.js';
import { arc, at, cornersOf, dart, edge, pieceOf, polygon, rectangle, straightEdge } from './pieces.js';

const allowanceOf = (e: Edge): number => e.allowance;
const partsOf = (piece: Piece): readonly OutlinePart[] => piece.outline.parts;

/** The cutting line of a piece as somebody might draw it: each edge's stretches, tips and tails included, as its path. */
function drawn(piece: Piece): readonly OutlinePart[] {
  const { stretches } = cuttingLine(piece);
  const ring = [...stretches];
  while (ring[0]!.of === ring.at(-1)!.of) ring.unshift(ring.pop()!);
  const parts: Edge[] = [];
  for (const { of, path } of ring) {
    const last = parts.at(-1);
    if (last?.name === of) parts[parts.length - 1] = { ...last, path: joined(last.path, path) };
    else parts.push({ ...edgesOf(piece).find(e => e.name === of)!, path });
  }
  return parts;
}
const farthest = (from: readonly OutlinePart[], to: readonly OutlinePart[]): number => {
  const target = outlinePath({ parts: to });
  return Math.max(...sampled(outlinePath({ parts: from }), 5).map(s => distanceTo(target, s.point).distance));
};
const expectBack = (piece: Piece, within = 0.01): void => {
  const { parts } = stitchingLine(drawn(piece), allowanceOf);
  expect(largestGap(outlinePath({ parts }))).toBeLessThan(1e-6);
  expect(farthest(parts, partsOf(piece))).toBeLessThan(within);
  expect(farthest(partsOf(piece), parts)).toBeLessThan(within);
};

test('a rectangle of 120 × 80 with 10 included is one of 100 × 60', () => {
  const { parts, findings } = stitchingLine(partsOf(polygon(rectangle(120, 80))), () => 10);
  const corners = cornersOf(outlinePath({ parts }));
  expect(corners).toHaveLength(4);
  for (const p of [at(10, 10), at(110, 10), at(110, 70), at(10, 70)])
    expect(Math.min(...corners.map(q => Math.hypot(p.x - q.x, p.y - q.y)))).toBeLessThan(1e-9);
  expect(findings).toEqual([]);
});
test('edges keep their names, kinds and allowances', () => {
  const piece = polygon(rectangle(120, 80), i => ({ allowance: 5 + i, kind: i === 2 ? 'hem' : 'seam' }));
  const { parts } = stitchingLine(partsOf(piece), allowanceOf);
  const seen = (p: OutlinePart) => (p.type === 'edge' ? [p.name, p.kind, p.allowance] : []);
  expect(parts.map(seen)).toEqual(partsOf(piece).map(seen));
});
test('a fold stays where it is, and its neighbours are cut at it', () => {
  const piece = polygon(rectangle(120, 80), i => ({ kind: i === 3 ? 'fold' : 'seam' }));
  const { parts } = stitchingLine(partsOf(piece), () => 10);
  const path = outlinePath({ parts });
  expect(signedArea(path)).toBeCloseTo(110 * 60, 9);
  expect(Math.min(...path.segments.flat().map(p => p.x))).toBeCloseTo(0, 9);
});
test('nothing included leaves the outline as drawn', () => {
  const piece = polygon(rectangle(120, 80));
  expect(stitchingLine(partsOf(piece), () => 0).parts).toEqual(partsOf(piece));
});
test('an inner corner is run on straight to its crossing', () => {
  expectBack(polygon([at(0, 0), at(60, 0), at(60, 40), at(140, 40), at(140, 120), at(0, 120)]), 1e-9);
  expectBack(polygon([at(0, 0), at(70, 60), at(140, 0), at(140, 120), at(0, 120)]), 1e-9);
});
test('an edge with no room for its allowance is refused', () => {
  const refused = refusalOf(() => stitchingLine(partsOf(polygon(rectangle(120, 15))), () => 10));
  expect(refused).toMatchObject({
    code: 'included-allowance-too-wide',
    message: expect.stringMatching(/^Nothing is left of the /),
    remedy: expect.stringContaining('unit'),
  });
});

describe('corner tails', () => {
  const sleeve = (lean: number) => {
    const shift = 200 * Math.tan((lean * Math.PI) / 180);
    return pieceOf([
      straightEdge('top', at(0, 0), at(200, 0)),
      straightEdge('right', at(200, 0), at(200 + shift, 200), { allowance: 15 }),
      straightEdge('hem', at(200 + shift, 200), at(-shift, 200), { kind: 'hem', allowance: 25 }),
      straightEdge('left', at(-shift, 200), at(0, 0), { allowance: 15 }),
    ]);
  };
  test.each([-25, -15, -8, -3, 3, 8, 15, 25])(
    'of a turned-up hem on sides that lean by %d° are dropped',
    lean => {
      expectBack(sleeve(lean), 1e-6);
      const { findings } = stitchingLine(drawn(sleeve(lean)), allowanceOf);
      expect(findings.map(f => [f.severity, f.code])).toEqual([
        ['note', 'corner-tail-dropped'],
        ['note', 'corner-tail-dropped'],
      ]);
    },
  );
  test.each([-15, -3, 3, 15])(
    'drawn with the side instead of the hem, at %d°, they are dropped as well',
    lean => {
      const piece = sleeve(lean);
      const { stretches } = cuttingLine(piece);
      // The mirrored ends go to the sides: everything but the hem's own parallel between its two ends at the bottom.
      const bottom = 225 - 1e-6;
      const ring = stretches.flatMap(s =>
        s.path.segments.map(segment => {
          const isHem = segment.every(p => p.y > bottom);
          const of = s.of === 'hem' && !isHem ? (segment[0].x > 100 ? 'right' : 'left') : s.of;
          return { of, segment };
        }),
      );
      while (ring[0]!.of === ring.at(-1)!.of) ring.unshift(ring.pop()!);
      const parts: Edge[] = [];
      for (const { of, segment } of ring) {
        const last = parts.at(-1);
        if (last?.name === of)
          parts[parts.length - 1] = { ...last, path: { segments: [...last.path.segments, segment] } };
        else parts.push({ ...edgesOf(piece).find(e => e.name === of)!, path: { segments: [segment] } });
      }
      const back = stitchingLine(parts, allowanceOf).parts;
      expect(farthest(back, partsOf(piece))).toBeLessThan(1e-6);
    },
  );
});

describe('darts', () => {
  const a = at(80, 0),
    apex = at(100, 120),
    b = at(120, 0);
  /** Where a leg's line reaches ten above the waist. */
  const beyond = (p: { x: number; y: number }) => at(p.x + ((p.x - apex.x) * 10) / 120, -10);
  const outer = [
    straightEdge('right', at(210, -10), at(210, 210)),
    straightEdge('foot', at(210, 210), at(-10, 210)),
    straightEdge('left', at(-10, 210), at(-10, -10)),
  ];
  test('legs drawn out to the cutting line are cut at the stitching line', () => {
    const { parts, findings } = stitchingLine(
      [
        straightEdge('waist', at(-10, -10), beyond(a)),
        dart('dart', beyond(a), apex, beyond(b)),
        straightEdge('waist', beyond(b), at(210, -10)),
        ...outer,
      ],
      () => 10,
    );
    const cut = parts.find(p => p.type === 'dart');
    expect(cut?.type === 'dart' && cut.legs[0].segments[0]![0]).toEqual({
      x: expect.closeTo(80, 9),
      y: expect.closeTo(0, 9),
    });
    expect(cut?.type === 'dart' && cut.legs[1].segments[0]![1]).toEqual({
      x: expect.closeTo(120, 9),
      y: expect.closeTo(0, 9),
    });
    expect(cut?.type === 'dart' && cut.apex).toEqual(apex);
    expect(findings).toEqual([]);
  });
  test('the tip of a folded mouth is dropped with a note', () => {
    // The waist is drawn up to the peak on the dart's fold, from where the legs come back to the cutting line.
    const lean = 2 * Math.atan2(20, 120);
    const peak = at(100, -10 - (100 - beyond(a).x) * Math.tan(lean));
    const { parts, findings } = stitchingLine(
      [
        edge('waist', [
          [at(-10, -10), beyond(a)],
          [beyond(a), peak],
        ]),
        {
          ...dart('dart', peak, apex, peak),
          legs: [
            {
              segments: [
                [peak, beyond(a)],
                [beyond(a), apex],
              ],
            },
            {
              segments: [
                [apex, beyond(b)],
                [beyond(b), peak],
              ],
            },
          ],
        },
        edge('waist', [
          [peak, beyond(b)],
          [beyond(b), at(210, -10)],
        ]),
        ...outer,
      ],
      () => 10,
    );
    expect(findings.map(f => f.code)).toEqual(['dart-tip-dropped', 'dart-tip-dropped']);
    const cut = parts.find(p => p.type === 'dart');
    const mouth =
      cut?.type === 'dart' ? [cut.legs[0].segments[0]![0], cut.legs[1].segments.at(-1)!.at(-1)] : [];
    expect(mouth).toEqual([
      { x: expect.closeTo(80, 9), y: expect.closeTo(0, 9) },
      { x: expect.closeTo(120, 9), y: expect.closeTo(0, 9) },
    ]);
  });
});

test('curved edges come back within twice the fit', () => {
  expectBack(
    pieceOf([
      edge(
        'neck',
        [[at(0, 0), at(0, 70), at(40, 90), at(75, 90)]].map(s => [...s] as never),
        { allowance: 10 },
      ),
      straightEdge('shoulder', at(75, 90), arc(at(260, 200), 110, 232, 170)[0]![0], { allowance: 15 }),
      edge('armhole', arc(at(260, 200), 110, 232, 170), { allowance: 10 }),
      straightEdge('foot', arc(at(260, 200), 110, 232, 170).at(-1)![3], at(150, 300), { allowance: 20 }),
      straightEdge('hem', at(150, 300), at(-120, 300), { allowance: 15 }),
      straightEdge('side', at(-120, 300), at(-120, 0), { allowance: 15 }),
      straightEdge('yoke', at(-120, 0), at(0, 0), { allowance: 10 }),
    ]),
  );
});

test('a round corner tighter than the allowance comes back as a point', () => {
  // A rectangle with a corner of radius 6 drawn on the cutting line, 10 included: no bend is left.
  const { parts, findings } = stitchingLine(
    [
      edge('top and right', [
        [at(0, 0), at(114, 0)],
        ...arc(at(114, 6), 6, -90, 0),
        [at(120, 6), at(120, 80)],
      ]),
      straightEdge('foot', at(120, 80), at(0, 80)),
      straightEdge('left', at(0, 80), at(0, 0)),
    ],
    () => 10,
  );
  expect(findings).toEqual([]);
  expect(signedArea(outlinePath({ parts }))).toBeCloseTo(100 * 60, 6);
  expect(largestGap(outlinePath({ parts }))).toBeLessThan(1e-6);
});

test('any mitred polygon comes back from its own cutting line', () => {
  const sides = fc.array(
    fc.record({
      radius: fc.double({ min: 90, max: 200, noNaN: true }),
      shift: fc.double({ min: 0, max: 0.5, noNaN: true }),
    }),
    { minLength: 4, maxLength: 8 },
  );
  fc.assert(
    fc.property(sides, fc.constantFrom(6.35, 10, 15.875), (corners, allowance) => {
      const n = corners.length;
      const piece = polygon(
        corners.map(({ radius, shift }, i) => {
          const angle = ((i + shift) / n) * 2 * Math.PI;
          return at(radius * Math.cos(angle), radius * Math.sin(angle));
        }),
        () => ({ allowance, start: 'mitre', end: 'mitre' }),
      );
      expectBack(piece);
    }),
    { numRuns: 150 },
  );
});

describe('unlike allowances on neighbouring edges', () => {
  const sides = fc.array(
    fc.record({
      radius: fc.double({ min: 90, max: 200, noNaN: true }),
      shift: fc.double({ min: 0, max: 0.5, noNaN: true }),
      allowance: fc.constantFrom(6.35, 10, 15, 25),
    }),
    { minLength: 4, maxLength: 7 },
  );
  const lengths = (parts: readonly OutlinePart[]) =>
    parts.map(part => (part.type === 'edge' ? pathLength(part.path) : 0));

  test('every edge of a polygon comes back as long as it was', () => {
    fc.assert(
      fc.property(sides, corners => {
        const n = corners.length;
        const piece = polygon(
          corners.map(({ radius, shift }, i) => {
            const angle = ((i + shift) / n) * 2 * Math.PI;
            return at(radius * Math.cos(angle), radius * Math.sin(angle));
          }),
          i => ({ allowance: corners[i]!.allowance }),
        );
        const { parts } = stitchingLine(drawn(piece), allowanceOf);
        for (const [i, length] of lengths(parts).entries())
          expect(Math.abs(length - lengths(partsOf(piece))[i]!)).toBeLessThan(0.05);
      }),
      { numRuns: 200 },
    );
  });

  /** A trouser front: a crotch curve that runs smoothly into the fly, each with an allowance of its own. */
  const trouser = (crotch: number, fly: number, length: number, lean: number): Piece => {
    const join = at(lean, length),
      point = at(-45, length + 70);
    return pieceOf([
      straightEdge('waist', at(0, 0), at(220, -8)),
      straightEdge('side', at(220, -8), at(250, 500)),
      straightEdge('hem', at(250, 500), at(40, 500)),
      straightEdge('inseam', at(40, 500), point),
      edge('crotch', [[point, at(-15, length + 66), at(lean * (1 + 40 / length), length + 40), join]], {
        allowance: crotch,
      }),
      straightEdge('fly', join, at(0, 0), { allowance: fly }),
    ]);
  };

  test('a crotch and fly come back right, or the corner between them is told for a guess', () => {
    let right = 0,
      guessed = 0;
    const amount = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const halves = (min: number, max: number) => fc.integer({ min, max }).map(count => count / 2);
    fc.assert(
      fc.property(halves(10, 40), halves(10, 60), amount(140, 220), amount(-10, 10), (a, b, length, lean) => {
        const piece = trouser(a, b, length, lean);
        const { parts, findings } = stitchingLine(drawn(piece), allowanceOf);
        const off = lengths(parts).map((found, i) => Math.abs(found - lengths(partsOf(piece))[i]!));
        if (Math.max(...off) < 1) right++;
        else {
          guessed++;
          expect(findings.map(f => [f.severity, f.code])).toContainEqual(['warning', 'corner-guessed']);
        }
      }),
      { numRuns: 200 },
    );
    expect(right).toBeGreaterThan(100);
    expect(guessed).toBeGreaterThan(10);
  });
  test('the same crotch and fly without the step between them come back right', () => {
    const piece = trouser(15, 15, 200, 0);
    const { parts, findings } = stitchingLine(drawn(piece), allowanceOf);
    expect(lengths(parts)[5]).toBeCloseTo(200, 2);
    expect(findings).toEqual([]);
  });
});
