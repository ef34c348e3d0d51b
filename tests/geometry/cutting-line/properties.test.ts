import { cuttingLine, type Edge, type OutlinePart, type Piece, pathLength } from '@paperhinge/geometry';
import { reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { apply, compose, mirror, rotation, translation } from '@paperhinge/geometry/plane';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyPiece } from './any-piece.js';
import { distanceTo, edgesOf, largestGap, polylineCrossings, sampled } from './independent.js';
import { at } from './pieces.js';

const moved = (piece: Piece, map: Parameters<typeof transformedPath>[1], isMirrored = false): Piece => {
  const parts = piece.outline.parts.map((part): OutlinePart => {
    const { path, corners, ...rest } = part as Edge;
    const image = transformedPath(path, map);
    if (!isMirrored) return { ...rest, corners, path: image };
    const { start, end } = corners;
    return {
      ...rest,
      path: reversedPath(image),
      corners: { ...(end ? { start: end } : {}), ...(start ? { end: start } : {}) },
    };
  });
  return { ...piece, outline: { parts: isMirrored ? parts.reverse() : parts } };
};

describe('over random plausible pieces', () => {
  test('the cutting line is closed, simple, clockwise and no smaller than the piece', () => {
    fc.assert(
      fc.property(anyPiece(), piece => {
        const { path, stretches, findings } = cuttingLine(piece);
        expect(findings.filter(f => f.severity === 'fault')).toEqual([]);
        expect(largestGap(path)).toBeLessThan(1e-6);
        expect(polylineCrossings(path, 20)).toEqual([]);
        expect(signedArea(path)).toBeGreaterThanOrEqual(signedArea(outlinePath(piece.outline)) - 1e-6);
        expect(stretches.flatMap(s => s.path.segments)).toEqual(path.segments);
      }),
      { numRuns: 150 },
    );
  });

  test('it lies on the true parallels, and nowhere nearer to an edge than its allowance', () => {
    fc.assert(
      fc.property(anyPiece('mitre'), piece => {
        const edges = edgesOf(piece);
        for (const { path, shape, of } of cuttingLine(piece).stretches)
          for (const { point } of sampled(path, 7)) {
            const near = edges
              .map(e => ({ ...distanceTo(e.path, point), e }))
              .reduce((a, b) => (b.distance < a.distance ? b : a));
            if (near.atEnd) continue;
            expect(near.distance).toBeGreaterThan(near.e.allowance - 0.01);
            if (shape === 'parallel' && near.e.name === of)
              expect(Math.abs(near.distance - near.e.allowance)).toBeLessThan(0.01);
          }
      }),
      { numRuns: 60 },
    );
  });

  test('turning and moving the piece turns and moves its cutting line', () => {
    const angle = fc.double({ min: -3, max: 3, noNaN: true }),
      shift = fc.double({ min: -900, max: 900, noNaN: true });
    fc.assert(
      fc.property(anyPiece(), angle, shift, shift, (piece, a, dx, dy) => {
        const map = compose(rotation(a), translation(at(dx, dy)));
        const before = cuttingLine(piece).path,
          after = cuttingLine(moved(piece, map)).path;
        expect(after.segments).toHaveLength(before.segments.length);
        expect(pathLength(after)).toBeCloseTo(pathLength(before), 5);
        // The walk may begin elsewhere where loops were cleared: each point is looked for among all.
        const images = before.segments.map(s => apply(map, s[0]));
        for (const [p] of after.segments)
          expect(Math.min(...images.map(q => Math.hypot(p.x - q.x, p.y - q.y)))).toBeLessThan(1e-6);
      }),
      { numRuns: 60 },
    );
  });

  test('the mirrored piece has the mirrored cutting line', () => {
    fc.assert(
      fc.property(anyPiece(), piece => {
        const map = mirror(at(10, 20), at(1, 0.3));
        const before = cuttingLine(piece).path,
          after = cuttingLine(moved(piece, map, true)).path;
        const image = transformedPath(before, map);
        // Parallels may be fitted from their other end: within twice the fit.
        for (const { point } of sampled(after, 3))
          expect(distanceTo(image, point).distance).toBeLessThan(0.01);
        for (const { point } of sampled(image, 3))
          expect(distanceTo(after, point).distance).toBeLessThan(0.01);
      }),
      { numRuns: 25 },
    );
  });

  test('it does not matter which edge the list begins with', () => {
    fc.assert(
      fc.property(anyPiece(), fc.nat(7), (piece, by) => {
        const parts = piece.outline.parts,
          k = by % parts.length;
        const turned = { ...piece, outline: { parts: [...parts.slice(k), ...parts.slice(0, k)] } };
        const a = cuttingLine(piece).path,
          b = cuttingLine(turned).path;
        expect(pathLength(b)).toBeCloseTo(pathLength(a), 6);
        expect(signedArea(b)).toBeCloseTo(signedArea(a), 4);
      }),
      { numRuns: 60 },
    );
  });
});
