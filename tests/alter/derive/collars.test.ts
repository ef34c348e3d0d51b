import { draftCollar } from '@paperhinge/alter/made';
import {
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import { nearestOnPath, pathEnd, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import { distance } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cellistShift, shiftPattern } from '../../support/shift.js';
import { refusalOf } from '../../support/told.js';

const along = [
  { piece: 'front', edge: 'neck' },
  { piece: 'back', edge: 'neck' },
];
const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));
const walked = (pattern: Pattern, name: string) =>
  walkSeam(pattern, pattern.seams.find(s => s.name === name)!);
const necks = (pattern: Pattern): number =>
  lengthOf(pattern, 'front', 'neck') + lengthOf(pattern, 'back', 'neck');

describe('a flat collar', () => {
  // Property: however deep the neck and however far it overlaps, its neck edge is the neck, and the walk proves it.
  test('has the neck itself as its edge, on the fold at the centre back', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 70, max: 140 }),
        fc.integer({ min: 0, max: 25 }),
        fc.integer({ min: 40, max: 80 }),
        (frontNeckDepth, overlap, width) => {
          const before = shiftPattern({ ...cellistShift, frontNeckDepth });
          const { pattern } = draftCollar(before, { name: 'collar', along, kind: 'flat', width, overlap });
          validatePattern(pattern);
          expect(lengthOf(pattern, 'collar', 'neck')).toBeCloseTo(necks(before), 6);
          expect(walked(pattern, 'collar').matches).toBe(true);
          expect(lengthOf(pattern, 'collar', 'centre-back')).toBeCloseTo(width, 6);
        },
      ),
      { numRuns: 30 },
    );
  });

  test('is its width deep everywhere but at the shoulder, where it bends', () => {
    const { pattern } = draftCollar(shiftPattern(), {
      name: 'collar',
      along,
      kind: 'flat',
      width: 60,
      overlap: 0,
    });
    const piece = pieceNamed(pattern, 'collar');
    const outer = edgePath(piece, 'outer'),
      neck = edgePath(piece, 'neck');
    for (const share of [0.05, 0.5, 0.95]) {
      const place = pointAlong(outer, share * pathLength(outer));
      expect(nearestOnPath(neck, place).distance).toBeCloseTo(60, 1);
    }
  });

  // Overlapped, front and back close in on one another: the ends of the neck lie nearer.
  test('rolls the more, the more it overlaps: its outer edge is shorter', () => {
    const outer = (overlap: number) => {
      const { pattern } = draftCollar(shiftPattern(), {
        name: 'collar',
        along,
        kind: 'flat',
        width: 60,
        overlap,
      });
      return lengthOf(pattern, 'collar', 'outer');
    };
    expect(outer(25)).toBeLessThan(outer(0));
  });
});

describe('a stand', () => {
  // Closed form: the chord of the neck edge lies below its ends by the rise, R (1 − cos(h / R)).
  test('rises at both fronts by what was asked, and is shorter above', () => {
    const { pattern } = draftCollar(shiftPattern(), {
      name: 'stand',
      along,
      kind: 'stand',
      width: 35,
      rise: 15,
    });
    const piece = pieceNamed(pattern, 'stand');
    const sewn = edgePath(piece, 'sewn');
    const [a, b, middle] = [pathStart(sewn), pathEnd(sewn), pointAlong(sewn, pathLength(sewn) / 2)];
    expect(Math.abs((a.y + b.y) / 2 - middle.y)).toBeCloseTo(15, 3);
    expect(lengthOf(pattern, 'stand', 'free')).toBeLessThan(lengthOf(pattern, 'stand', 'sewn'));
    expect(walked(pattern, 'stand').matches).toBe(true);
  });

  test('without a rise is a strip', () => {
    const { pattern } = draftCollar(shiftPattern(), {
      name: 'stand',
      along,
      kind: 'stand',
      width: 35,
      rise: 0,
    });
    expect(lengthOf(pattern, 'stand', 'free')).toBeCloseTo(lengthOf(pattern, 'stand', 'sewn'), 9);
  });
});

describe('a shirt collar', () => {
  test('is a stand beyond the neck and a fall between its ends, and both seams walk', () => {
    const { pattern, derived } = draftCollar(shiftPattern(), {
      name: 'collar',
      along,
      kind: 'shirt',
      width: 45,
      extension: 15,
      point: 70,
    });
    expect(derived!.map(d => d.name)).toEqual(['collar stand', 'collar']);
    for (const seam of ['collar stand', 'collar']) expect(walked(pattern, seam).matches).toBe(true);
    const fall = pieceNamed(pattern, 'collar');
    expect(fall.cutting).toMatchObject({ count: 2, layers: 2 });
    // Its points lie spread and point mm from the fall's ends, square to one another within the bend.
    const front = edgePath(fall, 'front');
    expect(distance(pathStart(front), pathEnd(front))).toBeCloseTo(Math.hypot(70, 20), 0);
    expect(() => validatePattern(pattern)).not.toThrow();
  });
});

test('a neck without two like halves is refused for a flat collar', () => {
  const before = shiftPattern();
  const error = refusalOf(() =>
    draftCollar(before, {
      name: 'collar',
      along: [{ piece: 'sleeve', edge: 'cap' }],
      kind: 'flat',
      width: 60,
    }),
  );
  expect(['edges-not-halved', 'edges-do-not-join']).toContain(error.code);
  expect(error.remedy).not.toBe('');
});
