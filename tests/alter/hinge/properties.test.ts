import { closeDart, moveDart } from '@paperhinge/alter/darts';
import type { Spread } from '@paperhinge/alter/fullness';
import { spread } from '@paperhinge/alter/fullness';
import { unfold } from '@paperhinge/alter/seams';
import { edgePath, type Pattern, PatternError, type Piece } from '@paperhinge/geometry';
import { pathEnd, pathStart, pointAlong, transformedPath } from '@paperhinge/geometry/paths';
import { dartsOf, outlinePath } from '@paperhinge/geometry/pattern';
import { type Affine, apply, distance, rotation } from '@paperhinge/geometry/plane';
import { selfCrossings } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  angleOf,
  anyBodice,
  areaOf,
  begunAt,
  expectClosed,
  expectUntouched,
  lengthOf,
  mirrorImage,
  only,
  patternOf,
} from './pieces.js';

const share = fc.double({ min: 0.05, max: 0.95, noNaN: true });
const close = (piece: Piece, amount = 1) =>
  only(closeDart(patternOf(piece), { piece: 'block', dart: 'bust', into: 'hem', share: amount }).pattern);
const open = (piece: Piece, changes: Partial<Spread> = {}) =>
  only(
    spread(patternOf(piece), {
      piece: 'block',
      from: { edge: 'hem' },
      to: { edge: 'neck' },
      ...('angle' in changes ? {} : { by: 40 }),
      hinge: 'to',
      slashes: 1,
      ...changes,
    }).pattern,
  );

/** Some random pieces cannot take some operation; then it must be refused for a reason we know, and nothing else. */
const refusals = [
  'slash-leaves-piece',
  'slash-crosses-dart',
  'outline-tangled',
  'overlap-too-wide',
  'pivot-out-of-reach',
];
function orRefused<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof PatternError && refusals.includes(error.code) && error.where.piece === 'block')
      return undefined;
    throw error;
  }
}
const check = (property: (piece: Piece, x: number, y: number) => void, runs = 60) =>
  fc.assert(
    fc.property(anyBodice, share, share, (piece, x, y) => {
      property(piece, x, y);
    }),
    { numRuns: runs },
  );

const moved = (piece: Piece, map: Affine): Piece => ({
  ...piece,
  outline: {
    parts: piece.outline.parts.map(p =>
      p.type === 'edge'
        ? { ...p, path: transformedPath(p.path, map) }
        : p.type === 'pleat'
          ? p
          : {
              ...p,
              legs: [transformedPath(p.legs[0], map), transformedPath(p.legs[1], map)] as const,
              apex: apply(map, p.apex),
            },
    ),
  },
  lines: piece.lines.map(l => ({ ...l, path: transformedPath(l.path, map) })),
  marks: piece.marks.map(m => ({ ...m, at: apply(map, m.at) })),
});

describe('closing any bodice’s dart', () => {
  test('opens the hem by 2 R sin(θ/2), adds that wedge and keeps all other edges', () => {
    check(piece => {
      const after = close(piece);
      const { apex } = dartsOf(piece)[0]!;
      const turn = (angleOf(piece, 'bust') * Math.PI) / 180;
      const hem = edgePath(after, 'hem');
      // The fold stays, and the slash runs down the grain, which is the page's vertical here.
      const place = hem.segments.findLast(s => Math.abs(s[0].x - apex.x) < 1e-6)![0];
      const radius = distance(place, apex);
      expect(
        Math.abs(lengthOf(after, 'hem') - lengthOf(piece, 'hem') - 2 * radius * Math.sin(turn / 2)),
      ).toBeLessThan(1e-7);
      expect(Math.abs(areaOf(after) - areaOf(piece) - 0.5 * radius ** 2 * Math.sin(turn))).toBeLessThan(1e-4);
      expectUntouched(piece, after, 'hem');
      expectClosed(after);
    });
  });
  test('by two halves puts the side where closing it at once does', () => {
    check(piece => {
      const twice = close(close(piece, 0.5), 1);
      const once = close(piece);
      for (const name of ['side-lower', 'centre', 'armhole']) {
        expect(distance(pathEnd(edgePath(twice, name)), pathEnd(edgePath(once, name)))).toBeLessThan(1e-7);
        expect(distance(pathStart(edgePath(twice, name)), pathStart(edgePath(once, name)))).toBeLessThan(
          1e-7,
        );
      }
    });
  });
  test('does not care how the piece lies on the page or where its list begins', () => {
    check((piece, x, y) => {
      const map = rotation(6 * x, { x: 300 * y, y: 100 });
      const straight = close(piece, y);
      const turned = close(begunAt(moved(piece, map), Math.floor(8 * x)), y);
      expect(lengthOf(turned, 'hem')).toBeCloseTo(lengthOf(straight, 'hem'), 7);
      const corner = apply(map, pathEnd(edgePath(straight, 'side-lower')));
      expect(distance(corner, pathEnd(edgePath(turned, 'side-lower')))).toBeLessThan(1e-7);
    });
  });
  test('does the same to the mirror image', () => {
    check((piece, x) => {
      const straight = close(piece, x);
      const turned = close(mirrorImage(piece), x);
      expect(areaOf(turned)).toBeCloseTo(areaOf(straight), 4);
      expect(lengthOf(turned, 'hem')).toBeCloseTo(lengthOf(straight, 'hem'), 7);
    });
  });
  test('carries each notch with the cloth it stands on', () => {
    check(piece => {
      const after = close(piece);
      for (const [i, notch] of piece.notches.entries()) {
        const now = after.notches[i]!;
        const was = pointAlong(edgePath(piece, notch.edge), notch.at);
        const is = pointAlong(edgePath(after, now.edge), now.at);
        // Measured against both ends of the side seam, which moved with the hem's notch and the side's.
        const [edge, end] =
          notch.edge === 'armhole' ? (['shoulder', pathStart] as const) : (['side-lower', pathEnd] as const);
        expect(distance(is, end(edgePath(after, edge)))).toBeCloseTo(
          distance(was, end(edgePath(piece, edge))),
          7,
        );
      }
    });
  });
});

describe('moving any bodice’s dart', () => {
  test('keeps every edge’s length and the angle at the pivot, wherever it goes', () => {
    check((piece, x) => {
      for (const edge of ['hem', 'armhole', 'shoulder', 'neck', 'side-lower', 'side-upper'])
        orRefused(() => {
          const after = only(
            moveDart(patternOf(piece), {
              piece: 'block',
              dart: 'bust',
              to: { edge, at: { share: x } },
              pivot: 'bust point',
              pointBack: 0,
            }).pattern,
          );
          const mark = piece.marks[0]!.at;
          const { legs, apex } = dartsOf(piece)[0]!;
          const a = pathStart(legs[0]);
          const b = pathEnd(legs[1]);
          const angle = Math.abs(
            Math.atan2(a.y - mark.y, a.x - mark.x) - Math.atan2(b.y - mark.y, b.x - mark.x),
          );
          expect((angleOf(after, 'bust') * Math.PI) / 180).toBeCloseTo(angle, 10);
          expect(distance(dartsOf(after)[0]!.apex, mark)).toBeLessThan(1e-9);
          expect(apex).not.toEqual(mark);
          // A pivot a little off the axis leaves a step, which lengthens the edge before the old place.
          expectUntouched(piece, after, 'side-upper');
          expectClosed(after);
        });
    });
  });
});

describe('spreading any bodice', () => {
  const anyHinge = fc.constantFrom('from', 'to', 'none') as fc.Arbitrary<NonNullable<Spread['hinge']>>;
  test('opens the edge by exactly the amount, however many slashes share it', () => {
    fc.assert(
      fc.property(anyBodice, anyHinge, fc.integer({ min: 1, max: 6 }), share, (piece, hinge, slashes, x) => {
        orRefused(() => {
          const by = 200 * x;
          const after = open(piece, { hinge, slashes, by });
          if (hinge !== 'from')
            expect(Math.abs(lengthOf(after, 'hem') - lengthOf(piece, 'hem') - by)).toBeLessThan(1e-7);
          if (hinge !== 'to')
            expect(Math.abs(lengthOf(after, 'neck') - lengthOf(piece, 'neck') - by)).toBeLessThan(1e-7);
          expectUntouched(
            piece,
            after,
            ...(hinge === 'to' ? ['hem'] : hinge === 'from' ? ['neck'] : ['hem', 'neck']),
          );
          expect(areaOf(after)).toBeGreaterThan(areaOf(piece));
          expect(edgePath(after, 'centre')).toEqual(edgePath(piece, 'centre'));
          expectClosed(after);
        });
      }),
      { numRuns: 80 },
    );
  });
  test('and overlapping it again at the same place restores every edge', () => {
    check((piece, x, y) => {
      orRefused(() => {
        const ends = {
          from: { edge: 'hem', at: { mm: x * lengthOf(piece, 'hem') } },
          to: { edge: 'neck', at: { mm: y * lengthOf(piece, 'neck') } },
        };
        const there = open(piece, { ...ends, angle: 0.08 });
        const back = open(there, { ...ends, angle: -0.08 });
        expect(Math.abs(areaOf(back) - areaOf(piece))).toBeLessThan(1e-3);
        for (const name of ['hem', 'neck', 'side-lower', 'centre'])
          expect(Math.abs(lengthOf(back, name) - lengthOf(piece, name))).toBeLessThan(1e-6);
      });
    });
  });
  test('a negative amount never leaves more cloth, nor an outline that crosses itself', () => {
    fc.assert(
      fc.property(anyBodice, anyHinge, fc.integer({ min: 1, max: 4 }), share, (piece, hinge, slashes, x) => {
        orRefused(() => {
          const after = open(piece, { hinge, slashes, by: -80 * x });
          expect(areaOf(after)).toBeLessThan(areaOf(piece));
          expect(selfCrossings(outlinePath(after.outline))).toEqual([]);
          expectClosed(after);
        });
      }),
      { numRuns: 80 },
    );
  });
});

describe('unfolding any bodice', () => {
  const whole = (pattern: Pattern) => unfold(pattern, { piece: 'block' }).pattern;
  test('doubles its area and every edge, and is its own mirror image', () => {
    check(piece => {
      const after = only(whole(patternOf(piece)));
      expect(Math.abs(areaOf(after) / areaOf(piece) - 2)).toBeLessThan(1e-12);
      expect(lengthOf(after, 'hem')).toBeCloseTo(2 * lengthOf(piece, 'hem'), 8);
      expect(lengthOf(after, 'other armhole')).toBeCloseTo(lengthOf(piece, 'armhole'), 8);
      const image = mirrorImage(after);
      expect(
        distance(pathStart(edgePath(image, 'armhole')), pathStart(edgePath(after, 'other armhole'))),
      ).toBeLessThan(1e-9);
      expectClosed(after);
    });
  });
  test('commutes with closing the darts: half first, or whole and both sides after', () => {
    check(piece => {
      const first = only(whole(patternOf(close(piece))));
      const both = ['bust', 'other bust'].reduce(
        (pattern, dart) => closeDart(pattern, { piece: 'block', dart, into: 'hem', share: 1 }).pattern,
        whole(patternOf(piece)),
      );
      expect(Math.abs(areaOf(only(both)) - areaOf(first))).toBeLessThan(1e-3);
      expect(lengthOf(only(both), 'hem')).toBeCloseTo(lengthOf(first, 'hem'), 6);
    });
  });
});
