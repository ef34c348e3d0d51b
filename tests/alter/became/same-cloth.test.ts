import { type Alteration, follow } from '@paperhinge/alter';
import { recutNeckline, setAllowance, takeIn, trueEdges } from '@paperhinge/alter/edges';
import { shorten } from '@paperhinge/alter/length';
import { unfold } from '@paperhinge/alter/seams';
import {
  edgeNames,
  edgePath,
  type Pattern,
  PatternError,
  type Piece,
  type Point,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import { pointAlong } from '@paperhinge/geometry/paths';
import { distance } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const shift = fc
  .record({
    frontNeckDepth: mm(90, 150),
    shoulder: mm(100, 130),
    quarterHem: mm(290, 340),
    length: mm(800, 950),
  })
  .map(shiftPattern);
const spot = (piece: Piece, edge: string, at: number): Point => pointAlong(edgePath(piece, edge), at);
const shares = [0, 0.07, 0.31, 0.5, 0.83, 1];

function orRefused(work: () => Alteration): Alteration | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof PatternError) return undefined;
    throw error;
  }
}

/** Every place of the front's old edges that is left, as it was and as it is: the new places may be two. */
function places(before: Pattern, { pattern, became }: Alteration) {
  const front = pieceNamed(before, 'front'),
    now = pieceNamed(pattern, 'front');
  return edgeNames(front).flatMap(edge => {
    const length = pathLength(edgePath(front, edge));
    return shares.map(share => ({
      edge,
      was: spot(front, edge, share * length),
      now: follow(became!, { piece: 'front', edge, at: share * length }).map(p => spot(now, p.edge, p.at)),
    }));
  });
}
const found = (list: ReturnType<typeof places>) => list.filter(p => p.now.length > 0).length;

describe('where the paper itself stays, what is left of an edge stays in its place', () => {
  test('a neckline recut', () => {
    const step = fc.record({
      shape: fc.constantFrom('V', 'round', 'square', 'inset V'),
      depth: mm(20, 200),
      halfWidth: mm(60, 150),
    });
    fc.assert(
      fc.property(shift, step, (pattern, wanted) => {
        const done = orRefused(() => recutNeckline(pattern, { piece: 'front', ...wanted }));
        if (!done) return;
        const list = places(pattern, done);
        for (const { was, now } of list) for (const p of now) expect(distance(p, was)).toBeLessThan(1e-8);
        // Armhole, sides and hem are whole.
        expect(found(list)).toBeGreaterThanOrEqual(4 * shares.length);
      }),
      { numRuns: 40 },
    );
  });
  test('a hem moved, but for the hem itself', () => {
    fc.assert(
      fc.property(shift, mm(-80, 200), (pattern, by) => {
        const done = orRefused(() => shorten(pattern, { pieces: ['front'], at: 'hem', by: Math.max(by, 0) }));
        if (!done) return;
        const list = places(pattern, done).filter(p => p.edge !== 'hem');
        for (const { was, now } of list) for (const p of now) expect(distance(p, was)).toBeLessThan(1e-8);
        for (const edge of ['neck', 'shoulder', 'armhole', 'side-upper'])
          expect(list.filter(p => p.edge === edge && p.now.length === 1)).toHaveLength(shares.length);
      }),
      { numRuns: 30 },
    );
  });
  test('an allowance set', () => {
    const pattern = shiftPattern();
    const list = places(pattern, setAllowance(pattern, { edges: 'all seams', to: 10 }));
    expect(list.every(({ was, now }) => now.length === 1 && distance(now[0]!, was) === 0)).toBe(true);
  });
});

test('unfolded, every place but those of the fold lies where it did and where its mirror image is', () => {
  fc.assert(
    fc.property(shift, pattern => {
      const list = places(pattern, unfold(pattern, { piece: 'front' }));
      const fold = list.filter(p => p.edge === 'centre-front');
      expect(found(fold)).toBe(0);
      const x = fold[0]!.was.x;
      for (const { was, now } of list.filter(p => p.edge !== 'centre-front')) {
        const wanted = [was, { x: 2 * x - was.x, y: was.y }];
        const atFold = Math.abs(was.x - x) < 1e-6;
        expect(now).toHaveLength(atFold ? 1 : 2);
        for (const [i, p] of now.entries()) expect(distance(p, wanted[i]!)).toBeLessThan(1e-6);
      }
    }),
    { numRuns: 15 },
  );
});

test('edges moved or redrawn keep their places within the distance they moved', () => {
  fc.assert(
    fc.property(shift, mm(0, 60), (pattern, by) => {
      const taken = orRefused(() => takeIn(pattern, { seam: 'side', by }));
      if (taken)
        // A quarter of the amount each; where the side bends, its places slide along it as well. It is fitted to 0.005 mm.
        for (const { was, now } of places(pattern, taken))
          for (const p of now) expect(distance(p, was)).toBeLessThan(by + 0.005);
      const trued = orRefused(() => trueEdges(pattern, { edges: [{ piece: 'front', edge: 'armhole' }] }));
      if (trued)
        for (const { was, now } of places(pattern, trued))
          for (const p of now) expect(distance(p, was)).toBeLessThan(4);
    }),
    { numRuns: 30 },
  );
});
