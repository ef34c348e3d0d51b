// A skirt's waist that bends where its dart is sewn, and a facing traced from it with the dart closed: one bend, told where
// it can be mended. Closed form: level on both sides, the waist is bent by the whole angle of the dart.
import { draftFacing } from '@paperhinge/alter/made';
import { at, checkPattern, type Pattern, polyline } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { bodySeams, facedTop, facingSeam, neckSeam, onFold } from '../../support/faced-top.js';
import { dart, patternOf, pieceOf, seam, side } from '../../support/polygon-piece.js';

const mouth = 24;
const bendDeg = (2 * Math.atan(mouth / 2 / 100) * 180) / Math.PI;
const half = (200 - mouth) / 2;

const skirt = pieceOf(
  'skirt',
  [
    side('waist', [
      [0, 0],
      [half, 0],
    ]),
    dart('dart', [half, 0], [100, 100], [half + mouth, 0]),
    side('waist', [
      [half + mouth, 0],
      [200, 0],
    ]),
    side('side', [
      [200, 0],
      [200, 400],
    ]),
    side(
      'hem',
      [
        [200, 400],
        [0, 400],
      ],
      { kind: 'hem' },
    ),
    side(
      'centre',
      [
        [0, 400],
        [0, 0],
      ],
      { kind: 'fold' },
    ),
  ],
  { lines: [{ kind: 'grain', name: 'grain', path: polyline(at(40, 300), at(40, 100)) }] },
);

const broken = (pattern: Pattern) =>
  checkPattern(pattern)
    .filter(f =>
      ['edge-kinked', 'joined-line-broken', 'fold-corner-not-square', 'small-differences'].includes(f.code),
    )
    .map(f => [f.code, f.where.piece, Math.abs(f.figures!.cornerDeg ?? f.figures!.angleDeg ?? 0)]);
const dipOfWaist = ['joined-line-broken', 'skirt', expect.closeTo(bendDeg, 6)];

describe('a facing over a dart that bends its edge', () => {
  const along = [{ piece: 'skirt', edge: 'waist' }];

  test('is not told of the bend again, neither at its edge nor at its inner line', () => {
    const { pattern } = draftFacing(patternOf([skirt]), { name: 'facing', along, width: 50 });
    expect(broken(pattern)).toEqual([dipOfWaist]);
  });

  // Bent by as much about a corner, half a waist on either side, and drawn by hand.
  const facing = (turnDeg: number) => {
    const turn = (turnDeg * Math.PI) / 180;
    const end = [half + half * Math.cos(turn), half * Math.sin(turn)] as const;
    const inner = [end[0] - 50 * Math.sin(turn), end[1] + 50 * Math.cos(turn)] as const;
    return {
      ...pieceOf('facing', [
        side('waist', [[0, 0], [half, 0], end]),
        side('end', [end, inner]),
        side('inner', [inner, [half - 50 * Math.tan(turn / 2), 50], [0, 50]]),
        side(
          'centre',
          [
            [0, 50],
            [0, 0],
          ],
          { kind: 'fold' },
        ),
      ]),
      role: 'facing' as const,
    };
  };
  const sewn = seam('waist', ['facing.waist'], ['skirt.waist']);

  test('drawn by hand is not told of it either', () => {
    expect(broken(patternOf([skirt, facing(bendDeg)], [sewn]))).toEqual([dipOfWaist]);
  });

  test('is told of a bend that is its own', () => {
    const own = broken(patternOf([skirt, facing(bendDeg + 5)], [sewn]));
    expect(own).toContainEqual(dipOfWaist);
    expect(own).toContainEqual(['edge-kinked', 'facing', expect.closeTo(bendDeg + 5, 6)]);
  });

  test('is told of it where nothing of the garment bends so', () => {
    const level = onFold(
      'skirt',
      [
        ['waist', [0, 0], [2 * half, 0]],
        ['side', [2 * half, 0], [2 * half, 400]],
        ['hem', [2 * half, 400], [0, 400]],
        ['centre', [0, 400], [0, 0]],
      ],
      'skirt',
    );
    expect(broken(patternOf([level, facing(bendDeg)], [sewn]))).toContainEqual([
      'edge-kinked',
      'facing',
      expect.closeTo(bendDeg, 6),
    ]);
  });
});

test('where a neck bends at the shoulder and at its fold, its facings do: told once', () => {
  // By the drawing's own slopes: the shoulder falls 30 in 80, the front neck 100 in 80, the back neck 30 in 80.
  const slope = (rise: number, run: number) => (Math.atan2(rise, run) * 180) / Math.PI;
  const shoulder = slope(30, 80);
  const atShoulder = 180 - (180 - slope(100, 80) - shoulder) - (180 - slope(30, 80) - shoulder);
  const told = broken(facedTop([...bodySeams, facingSeam, neckSeam])).filter(
    ([code]) => code === 'joined-line-broken',
  );
  expect(told.filter(([, piece]) => String(piece).includes('facing'))).toEqual([]);
  expect(told.map(([, , deg]) => deg)).toContainEqual(expect.closeTo(Math.abs(atShoulder), 6));
});
