import { addNotches } from '@paperhinge/alter/seams';
import { edgePath, type Pattern, pathLength, pieceNamed, walkSeam } from '@paperhinge/geometry';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';

const bare = (): Pattern => {
  const shift = shiftPattern();
  return { ...shift, pieces: shift.pieces.map(p => ({ ...p, notches: [] })) };
};
const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));

test('both sides of a seam are divided evenly, darts not counted', () => {
  const before = bare();
  const done = addNotches(before, { seam: 'side', count: 2 });
  const upper = lengthOf(before, 'front', 'side-upper'),
    lower = lengthOf(before, 'front', 'side-lower');
  const whole = upper + lower;
  const alongFront = pieceNamed(done.pattern, 'front').notches.map(n =>
    n.edge === 'side-upper' ? n.at : upper + n.at,
  );
  expect(alongFront).toHaveLength(2);
  for (const [i, along] of alongFront.entries()) expect(along).toBeCloseTo(((i + 1) * whole) / 3, 9);
  const back = lengthOf(before, 'back', 'side');
  expect(
    pieceNamed(done.pattern, 'back')
      .notches.map(n => n.at)
      .sort((a, b) => a - b),
  ).toEqual([expect.closeTo(back / 3, 9), expect.closeTo((2 * back) / 3, 9)]);
  expect(toldDid(done)).toMatch(/^The side seam was marked on both sides with 2 single notches, /);
});

test('whatever the seam and the place, the notches meet', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('shoulder', 'side', 'underarm', 'armhole'),
      fc.double({ min: 0.02, max: 0.98, noNaN: true }),
      fc.constantFrom('single', 'double', 'triple'),
      (seam, share, style) => {
        const { pattern } = addNotches(bare(), { seam, at: { share }, style });
        const walked = walkSeam(pattern, pattern.seams.find(s => s.name === seam)!);
        const about = walked.findings.map(f => f.code).filter(code => code.includes('notch'));
        expect(about).toEqual([]);
      },
    ),
  );
});

test('notches that are there already are not doubled, and that is said', () => {
  const once = addNotches(bare(), { seam: 'side', count: 3 });
  const twice = addNotches(once.pattern, { seam: 'side', count: 3 });
  expect(twice.pattern.pieces).toEqual(once.pattern.pieces);
  expect(twice.findings.map(f => f.code)).toEqual(['notches-already-there']);
});

test.each([
  ['unknown-seam', { seam: 'sdie', count: 1 }, 'side'],
  ['position-off-seam', { seam: 'side', at: { mm: 5000 } }, 'within the seam'],
  ['field-missing', { seam: 'side' }, 'count'],
  ['fields-exclude', { seam: 'side', count: 2, at: { share: 0.5 } }, 'Keep one'],
] as const)('%s is refused with a remedy', (code, parameters, remedy) => {
  expect(refusalOf(() => addNotches(bare(), parameters))).toMatchObject({
    code,
    remedy: expect.stringContaining(remedy),
  });
});
