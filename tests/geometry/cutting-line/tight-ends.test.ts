import { cuttingLine, type Edge, type Piece, type Segment } from '@paperhinge/geometry';
import { offsetOutline } from '@paperhinge/geometry/cutting-line';
import { reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { mirror } from '@paperhinge/geometry/plane';
import { selfCrossings, signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyPiece } from './any-piece.js';
import { distanceTo, edgesOf, sampled } from './independent.js';
import { at, edge, pieceOf, straightEdge } from './pieces.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/**
 * An edge that bends in right after its corner, more tightly than its allowance, beside one of any other allowance:
 * an arc and a line, or one cubic; half of them mirrored, so that the bend is at the edge's end.
 */
const tightEnd = fc
  .record({
    turn: within(-0.25, 1.35),
    radius: within(3, 23),
    sweep: within(0.3, 1.5),
    length: within(60, 160),
    inOne: fc.boolean(),
    mirrored: fc.boolean(),
    wide: fc.constantFrom(10, 15, 25, 40),
    beside: fc.constantFrom(0, 1, 3, 6, 10, 15, 25),
  })
  .map(({ turn, radius, sweep, length, inOne, mirrored, wide, beside }): Piece => {
    const along = (angle: number) => at(Math.cos(angle), Math.sin(angle));
    const from = (p: { x: number; y: number }, d: { x: number; y: number }, by: number) =>
      at(p.x + d.x * by, p.y + d.y * by);
    const corner = at(150, 0),
      u = along(turn),
      v = along(turn - sweep);
    const end = from(from(corner, at(u.y, -u.x), radius), at(v.y, -v.x), -radius);
    const handle = (4 / 3) * Math.tan(sweep / 4) * radius;
    const far = from(end, v, length);
    const bend: readonly Segment[] = inOne
      ? [[corner, from(corner, u, radius * 0.6), end, far]]
      : [
          [corner, from(corner, u, handle), from(end, v, -handle), end],
          [end, far],
        ];
    const parts = [
      straightEdge('beside', at(0, 0), corner, { allowance: beside }),
      edge('bend', bend, { allowance: wide }),
      straightEdge('side', far, at(far.x - 20, 400)),
      straightEdge('foot', at(far.x - 20, 400), at(0, 400)),
      straightEdge('left', at(0, 400), at(0, 0)),
    ].map((e): Edge => ({ ...e, corners: { start: 'mitre', end: 'mitre' } }));
    const image = (e: Edge): Edge => ({
      ...e,
      path: transformedPath(reversedPath(e.path), mirror(at(0, 0), at(0, 1))),
    });
    return pieceOf(mirrored ? parts.map(image).reverse() : parts);
  })
  .filter(piece => {
    const outline = outlinePath(piece.outline);
    return signedArea(outline) > 0 && selfCrossings(outline).length === 0;
  });

describe('an edge that bends in at its end more tightly than its allowance', () => {
  test('is nowhere cut nearer than that, whatever its neighbour has', () => {
    fc.assert(
      fc.property(tightEnd, piece => {
        const edges = edgesOf(piece);
        const { path } = cuttingLine(piece);
        expect(selfCrossings(path)).toEqual([]);
        for (const { point } of sampled(path, 8)) {
          const near = edges
            .map(e => ({ ...distanceTo(e.path, point), e }))
            .reduce((a, b) => (b.distance < a.distance ? b : a));
          if (!near.atEnd) expect(near.distance).toBeGreaterThan(near.e.allowance - 0.01);
        }
      }),
      { numRuns: 150 },
    );
  });

  // Found by seed 6: the parallel's cusp lay within the circle about the corner, and the outline vanished.
  test('leaves a parallel of the whole outline', () => {
    const octagon = [
      at(60, 0),
      at(42.426, 42.426),
      at(0, 60),
      at(-42.426, 42.426),
      at(-60, 0),
      at(-42.426, -42.426),
      at(0, -60),
      at(42.426, -42.426),
    ];
    const edges = octagon.map((p, i) => straightEdge(`e${i}`, p, octagon[(i + 1) % 8]!));
    const bent = edge('e0', [[octagon[0]!, at(48.928, 11.982), at(48.284, 28.284), octagon[1]!]]);
    const { loops } = offsetOutline([bent, ...edges.slice(1)], 40);
    expect(loops).toHaveLength(1);
    for (const { point } of sampled(loops[0]!.path, 20))
      for (const { path } of [bent, ...edges.slice(1)])
        expect(distanceTo(path, point).distance).toBeGreaterThan(39.99);
  });
});

test('random plausible pieces grow by as much as their bounds do', () => {
  fc.assert(
    fc.property(anyPiece(), fc.constantFrom(3, 15.875, 40), (piece, by) => {
      const right = (points: readonly { point: { x: number } }[]) => Math.max(...points.map(s => s.point.x));
      const { loops } = offsetOutline(edgesOf(piece), by);
      const before = right(sampled(outlinePath(piece.outline), 60)),
        after = right(sampled(loops[0]!.path, 60));
      expect(after).toBeGreaterThan(before + by - 0.1);
    }),
    { numRuns: 40 },
  );
});
