import { recutEdge } from '@paperhinge/alter/edges';
import { cutOffBand } from '@paperhinge/alter/length';
import {
  at,
  edgePath,
  line,
  type Mark,
  type Piece,
  pathLength,
  pathOf,
  validatePattern,
} from '@paperhinge/geometry';
import { endTangent, nearestOnPath, pathEnd, pathStart, startTangent } from '@paperhinge/geometry/paths';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refusalOf, toldDid } from '../../support/told.js';
import {
  anyBodice,
  areaOf,
  edge,
  expectUntouched,
  lengthOf,
  only,
  patternOf,
  pieceOf,
  refusal,
} from '../hinge/pieces.js';

type Given = Parameters<typeof recutEdge>[1];
const recut = (piece: Piece, changes: Partial<Given>, ...others: Piece[]) =>
  recutEdge(patternOf(piece, ...others), { piece: 'block', edge: 'top', ...changes });
const marked = (piece: Piece, ...points: readonly (readonly [string, number, number])[]): Piece => ({
  ...piece,
  marks: points.map(([name, x, y]): Mark => ({ kind: 'point', name, at: at(x, y) })),
});

/** A rectangle, 200 wide and 400 high, its top straight. */
const box = (top = edge('top', 'seam', line(at(0, 0), at(200, 0)))): Piece =>
  pieceOf([
    top,
    edge('side', 'seam', line(at(200, 0), at(200, 400))),
    edge('hem', 'hem', line(at(200, 400), at(0, 400))),
    edge('centre', 'fold', line(at(0, 400), at(0, 0))),
  ]);

describe('an edge recut through several marks', () => {
  const piece = marked(box(), ['b', 130, 25], ['a', 60, 12]);
  test('passes all of them, in whatever order they are named, its ends as they were', () => {
    const after = only(recut(piece, { through: ['b', 'a'] }).pattern);
    const path = edgePath(after, 'top');
    for (const mark of piece.marks) expect(nearestOnPath(path, mark.at).distance).toBeLessThan(0.006);
    expect([pathStart(path), pathEnd(path)]).toEqual([at(0, 0), at(200, 0)]);
    for (const tangent of [startTangent(path), endTangent(path)])
      expect(Math.abs(tangent.y)).toBeLessThan(1e-6);
    expect(toldDid(recut(piece, { through: ['a', 'b'] }))).toMatch(
      /^The top of the block was recut through the a mark and the b mark: it is [\d.]+ mm long now; it was 200 mm\.$/,
    );
  });
  test('is refused where one of them is not there', () => {
    expect(() => recut(piece, { through: ['a', 'c'] })).toThrow(refusal('unknown-mark', /a.*b|b.*a/));
  });
});

describe('an edge recut to a length', () => {
  test('has it, between the ends and in the directions that it had', () => {
    const after = only(recut(box(), { length: 215 }).pattern);
    const path = edgePath(after, 'top');
    expect(pathLength(path)).toBeCloseTo(215, 2);
    expect([pathStart(path), pathEnd(path)]).toEqual([at(0, 0), at(200, 0)]);
    expect(Math.abs(startTangent(path).y)).toBeLessThan(1e-6);
    expectUntouched(box(), after, 'top');
  });
  // A quarter circle of 100 about (100, 0): 157.08 long; a fair line of that length is it again.
  test('that it has already stays where it is', () => {
    const k = 100 * 0.5522847498;
    const quarter = edge('top', 'seam', [at(0, 0), at(0, 0 + k), at(100 - k, 100), at(100, 100)]);
    const piece = pieceOf([
      quarter,
      edge('side', 'seam', line(at(100, 100), at(100, 400))),
      edge('hem', 'hem', line(at(100, 400), at(0, 400))),
      edge('centre', 'fold', line(at(0, 400), at(0, 0))),
    ]);
    const length = lengthOf(piece, 'top');
    const after = edgePath(only(recut(piece, { length }).pattern), 'top');
    for (let share = 0; share <= 1; share += 0.1) {
      const turn = (share * Math.PI) / 2;
      const on = at(100 - 100 * Math.cos(turn), 100 * Math.sin(turn));
      expect(nearestOnPath(after, on).distance).toBeLessThan(0.5);
    }
  });
  test('on any bodice’s armhole comes to it within a thousandth', () => {
    fc.assert(
      fc.property(anyBodice, fc.double({ min: 2, max: 15, noNaN: true }), (piece, more) => {
        const wanted = lengthOf(piece, 'armhole') + more;
        const { pattern } = recut(piece, { edge: 'armhole', length: wanted });
        validatePattern(pattern);
        expect(Math.abs(lengthOf(only(pattern), 'armhole') - wanted)).toBeLessThan(2e-3);
        expectUntouched(piece, only(pattern), 'armhole');
      }),
      { numRuns: 25 },
    );
  });
  test('shorter than the straight line is refused; its remedy is another verb', () => {
    expect(() => recut(box(), { length: 190 })).toThrow(refusal('edge-length-unreached', /match edge/));
  });
});

describe('an edge recut like another', () => {
  const arched = (depth: number): Piece => ({
    ...box({
      ...edge('top', 'seam', line(at(0, 0), at(200, 0))),
      path: pathOf([at(0, 0), at(20, depth), at(120, depth), at(200, 0)]),
    }),
    name: 'other',
  });
  const like = { like: { piece: 'other', edge: 'top' } };
  test('is the same line where the ends lie as far apart', () => {
    const after = only(recut(box(), like, arched(40)).pattern);
    expect(edgePath(after, 'top').segments).toEqual(edgePath(arched(40), 'top').segments);
    expect(areaOf(after)).toBeCloseTo(areaOf(arched(40)), 6);
  });
  test('turned over, as for the other side of a seam, where it lies nearer so', () => {
    // Mirrored end for end: fullest towards its end.
    const mirrored = box({
      ...edge('top', 'seam', line(at(0, 0), at(200, 0))),
      path: pathOf([at(0, 0), at(80, 30), at(180, 30), at(200, 0)]),
    });
    const path = edgePath(only(recut(mirrored, like, arched(40)).pattern), 'top');
    const expected = pathOf([at(0, 0), at(80, 40), at(180, 40), at(200, 0)]);
    expect(path.segments[0]!.flatMap(p => [p.x, p.y])).toEqual(
      expected.segments[0]!.flatMap(p => [expect.closeTo(p.x, 6), expect.closeTo(p.y, 6)]),
    );
  });
  test('and drawn larger where they lie further apart', () => {
    const large = { ...arched(40), outline: box().outline, name: 'other' };
    const small: Piece = pieceOf(
      [
        {
          ...edge('top', 'seam', line(at(0, 0), at(100, 0))),
          path: pathOf([at(0, 0), at(10, 20), at(60, 20), at(100, 0)]),
        },
        edge('side', 'seam', line(at(100, 0), at(100, 300))),
        edge('hem', 'hem', line(at(100, 300), at(0, 300))),
        edge('centre', 'fold', line(at(0, 300), at(0, 0))),
      ],
      { name: 'other' },
    );
    const after = only(recut({ ...large, name: 'block' }, like, small).pattern);
    expect(lengthOf(after, 'top')).toBeCloseTo(2 * lengthOf(small, 'top'), 6);
  });
  test('is refused where that edge is not there', () => {
    const gone = () => recut(box(), { like: { piece: 'other', edge: 'neck' } }, arched(40));
    expect(refusalOf(gone)).toMatchObject({ code: 'unknown-edge', where: { piece: 'other' } });
  });
});

describe('a spur that rounding left in an edge', () => {
  const spurred = (x: number, y: number): Piece =>
    box(
      edge(
        'top',
        'seam',
        line(at(0, 0), at(90, 0)),
        line(at(90, 0), at(90 + x, y)),
        line(at(90 + x, y), at(90, 0)),
        line(at(90, 0), at(200, 0)),
      ),
    );
  test.each([1e-5, 1e-3, 0.02])('of %s mm moves with it as if it were not there', size => {
    for (let turn = 0; turn < 8; turn++) {
      const piece = spurred(size * Math.cos(turn), size * Math.sin(turn));
      // Outwards it once would have crossed itself.
      for (const out of [{ out: 10 }, { in: 10 }])
        expect(areaOf(only(recut(piece, out).pattern))).toBeCloseTo(200 * (out.out ? 410 : 390), 1);
      const { pieces } = cutOffBand(patternOf(piece), {
        edge: { piece: 'block', edge: 'top' },
        width: 30,
        name: 'band',
      }).pattern;
      expect(pieces.map(areaOf).map(Math.round)).toEqual([200 * 370, 200 * 30]);
    }
  });
});
