import { closeDart, moveDart } from '@paperhinge/alter/darts';
import type { Spread } from '@paperhinge/alter/fullness';
import { spread } from '@paperhinge/alter/fullness';
import { type Pattern, PatternError } from '@paperhinge/geometry';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { selfCrossings } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { told } from '../../support/told.js';
import { anyBodice, areaOf, expectClosed, lengthOf, only, patternOf } from './pieces.js';

describe('any operation at any place', () => {
  const anyEdge = fc.constantFrom('neck', 'shoulder', 'armhole', 'side-upper', 'side-lower', 'hem', 'centre');
  const anyPlace = fc.double({ min: 0, max: 1, noNaN: true });
  const step = fc.record({
    verb: fc.constantFrom('close', 'move', 'spread', 'spread'),
    from: anyEdge,
    to: anyEdge,
    a: anyPlace,
    b: anyPlace,
    by: fc.double({ min: -60, max: 60, noNaN: true }),
    hinge: fc.constantFrom('from', 'to', 'none') as fc.Arbitrary<NonNullable<Spread['hinge']>>,
    slashes: fc.integer({ min: 1, max: 3 }),
  });
  type Step = typeof step extends fc.Arbitrary<infer T> ? T : never;
  const piece = 'block';
  const run = (pattern: Pattern, { verb, from, to, a, b, by, hinge, slashes }: Step): Pattern => {
    if (verb === 'close')
      return closeDart(pattern, { piece, dart: 'bust', into: from, at: { share: a }, share: b }).pattern;
    if (verb === 'move')
      return moveDart(pattern, {
        piece,
        dart: 'bust',
        to: { edge: from, at: { share: a } },
        pointBack: 5 * b,
      }).pattern;
    const range = (place: number) =>
      slashes === 1 ? { share: place } : ([{ share: 0 }, { share: place }] as const);
    return spread(pattern, {
      piece,
      from: { edge: from, at: range(a) },
      to: { edge: to, at: range(b) },
      by,
      hinge,
      slashes,
    }).pattern;
  };
  test('gives a closed simple outline, or a refusal with a code, a piece and a remedy', () => {
    fc.assert(
      fc.property(anyBodice, fc.array(step, { minLength: 1, maxLength: 3 }), (bodice, steps) => {
        let pattern = patternOf(bodice);
        for (const one of steps) {
          try {
            pattern = run(pattern, one);
          } catch (error) {
            if (!(error instanceof PatternError)) throw error;
            expect([error.where.piece, told(error).remedy.length > 10, error.code.length > 3]).toEqual([
              'block',
              true,
              true,
            ]);
          }
          const after = only(pattern);
          expect(selfCrossings(outlinePath(after.outline))).toEqual([]);
          expect(areaOf(after)).toBeGreaterThan(0);
          expectClosed(after);
          for (const notch of after.notches)
            expect(notch.at).toBeLessThanOrEqual(lengthOf(after, notch.edge) + 1e-6);
        }
      }),
      { numRuns: 150 },
    );
  });
});
