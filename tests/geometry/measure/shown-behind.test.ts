// A hip level that ends at a slanting pocket's mouth. The side piece is laid aside, turned, or drawn the other way round:
// only its seams say where it lies.
import { draftSlantPocket } from '@paperhinge/alter/made';
import { levelGirths, type Pattern, type Piece } from '@paperhinge/geometry';
import { transformedPath } from '@paperhinge/geometry/paths';
import { type Affine, compose, rotation, translation } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { level, patternOf, pieceOf, run, seam, side } from '../../support/polygon-piece.js';
import {
  back,
  band,
  front,
  hipAt,
  mouthAt,
  sideAt,
  sideCorners,
  sidePiece,
  sideSeam,
  waistSeam,
} from '../../support/slant-skirt.js';

function carried(piece: Piece, map: Affine): Piece {
  return {
    ...piece,
    outline: {
      parts: piece.outline.parts.map(part =>
        part.type === 'edge' ? { ...part, path: transformedPath(part.path, map) } : part,
      ),
    },
    lines: piece.lines.map(line => ({ ...line, path: transformedPath(line.path, map) })),
  };
}

/** The side piece seen from its other side: clockwise its edges stand, and run, the other way. */
const turnedOver = (): Piece => ({
  ...pieceOf(
    'side piece',
    sideCorners.toReversed().map(([name, [fx, fy], [tx, ty]]) =>
      side(name, [
        [-tx, ty],
        [-fx, fy],
      ]),
    ),
    { cutting: { count: 2, mirrored: true } },
  ),
  role: 'pocket',
});

function skirt(pocket: Piece, isMirrored = false, waist = true): Pattern {
  const there = isMirrored
    ? {
        side: seam('side', ['-side piece.side', 'front.side'], ['-back.side']),
        waist: {
          ...waistSeam,
          a: [waistSeam.a[0]!, { ...run('-side piece.waist'), part: { from: 0, to: 40 } }],
        },
      }
    : { side: sideSeam, waist: waistSeam };
  return patternOf([front, back, pocket, band], waist ? [there.side, there.waist] : [there.side]);
}

describe('a hip level that ends at a slanting mouth', () => {
  const girth = 4 * sideAt(hipAt);
  const aside = compose(translation({ x: 500, y: -70 }), rotation(2.1));

  test.each([
    ['as it lies under the front', skirt(sidePiece())],
    ['laid aside and turned', skirt(carried(sidePiece(), aside))],
    [
      'laid aside and turned, sewn on below the mouth alone',
      skirt(carried(sidePiece(), aside), false, false),
    ],
    ['drawn the other way round', skirt(turnedOver(), true)],
    ['drawn the other way round, sewn on below the mouth alone', skirt(turnedOver(), true, false)],
    [
      'with the level drawn across it, too',
      skirt(carried(sidePiece([level('hip', [120, hipAt], [sideAt(hipAt), hipAt])]), aside)),
    ],
  ])('goes on over the side piece, %s', (_, pattern) => {
    expect(levelGirths(pattern).hip).toBeCloseTo(girth, 6);
  });

  test('ends there where nothing lies behind', () => {
    const { hip } = levelGirths(patternOf([front, back], []));
    expect(hip).toBeCloseTo(2 * (mouthAt(hipAt) + sideAt(hipAt)), 6);
  });

  test('below the mouth, ends at the side as it is drawn', () => {
    const low = { ...front, lines: [level('hip', [0, 300], [275, 300])] };
    const lowBack = { ...back, lines: [level('hip', [0, 300], [275, 300])] };
    const { seams } = skirt(sidePiece());
    const { hip } = levelGirths(patternOf([low, lowBack, sidePiece(), band], seams));
    expect(hip).toBeCloseTo(4 * 275, 6);
  });
});

// Property: whatever pocket is cut into it, and wherever a level runs, the garment is as wide there as before.
test('a drafted slanting pocket changes no girth of the garment', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 25, max: 60 }),
      fc.integer({ min: 120, max: 200 }),
      fc.integer({ min: 5, max: 110 }),
      (along, down, height) => {
        const lines = [level('hip', [0, height], [sideAt(height), height])];
        const whole = { ...back, name: 'front', lines };
        const before = patternOf([whole, { ...back, lines }], [seam('side', ['front.side'], ['-back.side'])]);
        const { pattern } = draftSlantPocket(before, {
          name: 'pocket',
          piece: 'front',
          waist: 'waist',
          side: 'side',
          in: along,
          down,
        });
        expect(levelGirths(pattern).hip).toBeCloseTo(4 * sideAt(height), 6);
      },
    ),
    { numRuns: 20 },
  );
});
