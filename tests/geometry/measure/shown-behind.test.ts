// A hip level that ends at a slanting pocket's mouth, of a skirt drawn here: the front is 200 mm wide at the waist and 250
// at 200 mm below, its side straight; the mouth runs from 40 mm inside of the side at the waist to the side at 200 mm.
// The side piece is laid aside, turned, or drawn the other way round: only its seams say where it lies.
import { levelGirths, type Pattern, type Piece, type PieceLine } from '@paperhinge/geometry';
import { transformedPath } from '@paperhinge/geometry/paths';
import { type Affine, compose, rotation, translation } from '@paperhinge/geometry/plane';
import { describe, expect, test } from 'vitest';
import { type Corner, level, patternOf, pieceOf, run, seam, side } from '../../support/polygon-piece.js';

const hipAt = 120;
const sideAt = (y: number) => 200 + y / 4;
const mouthAt = (y: number) => 160 + (90 * y) / 200;

const front = pieceOf(
  'front',
  [
    side('waist', [
      [0, 0],
      [160, 0],
    ]),
    side('mouth', [
      [160, 0],
      [250, 200],
    ]),
    side('side', [
      [250, 200],
      [350, 600],
    ]),
    side(
      'hem',
      [
        [350, 600],
        [0, 600],
      ],
      { kind: 'hem' },
    ),
    side(
      'centre',
      [
        [0, 600],
        [0, 0],
      ],
      { kind: 'fold' },
    ),
  ],
  { lines: [level('hip', [0, hipAt], [mouthAt(hipAt), hipAt])] },
);
const back = pieceOf(
  'back',
  [
    side('waist', [
      [0, 0],
      [200, 0],
    ]),
    side('side', [
      [200, 0],
      [350, 600],
    ]),
    side(
      'hem',
      [
        [350, 600],
        [0, 600],
      ],
      { kind: 'hem' },
    ),
    side(
      'centre',
      [
        [0, 600],
        [0, 0],
      ],
      { kind: 'fold' },
    ),
  ],
  { lines: [level('hip', [0, hipAt], [sideAt(hipAt), hipAt])] },
);
const sideCorners: readonly (readonly [string, Corner, Corner])[] = [
  ['waist', [120, 0], [200, 0]],
  ['side', [200, 0], [250, 200]],
  ['low', [250, 200], [240, 260]],
  ['below', [240, 260], [120, 260]],
  ['inner', [120, 260], [120, 0]],
];
const pocket = (lines: readonly PieceLine[] = []): Piece => ({
  ...pieceOf(
    'side piece',
    sideCorners.map(([name, from, to]) => side(name, [from, to])),
    {
      cutting: { count: 2, mirrored: true },
      lines,
    },
  ),
  role: 'pocket',
});

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

const band = pieceOf('band', [
  side('lower', [
    [0, 0],
    [400, 0],
  ]),
  side('end', [
    [400, 0],
    [400, 40],
  ]),
  side(
    'upper',
    [
      [400, 40],
      [0, 40],
    ],
    { kind: 'fold' },
  ),
  side('start', [
    [0, 40],
    [0, 0],
  ]),
]);

function skirt(sidePiece: Piece, isMirrored = false, waist = true): Pattern {
  const [to, part] = isMirrored ? ['-', { from: 0, to: 40 }] : ['', { from: 40, to: 80 }];
  const sideSeam = seam(
    'side',
    [isMirrored ? '-side piece.side' : 'side piece.side', 'front.side'],
    ['-back.side'],
  );
  const waistSeam = {
    name: 'waist',
    a: [run('front.waist'), { ...run(`${to}side piece.waist`), part }],
    b: [{ ...run('band.lower'), part: { from: 0, to: 200 } }],
    ease: { mm: 0 },
  };
  return patternOf([front, back, sidePiece, band], waist ? [sideSeam, waistSeam] : [sideSeam]);
}

describe('a hip level that ends at a slanting mouth', () => {
  const girth = 4 * sideAt(hipAt);
  const aside = compose(translation({ x: 500, y: -70 }), rotation(2.1));

  test.each([
    ['as it lies under the front', skirt(pocket())],
    ['laid aside and turned', skirt(carried(pocket(), aside))],
    ['laid aside and turned, sewn on below the mouth alone', skirt(carried(pocket(), aside), false, false)],
    ['drawn the other way round', skirt(turnedOver(), true)],
    ['drawn the other way round, sewn on below the mouth alone', skirt(turnedOver(), true, false)],
    [
      'with the level drawn across it, too',
      skirt(carried(pocket([level('hip', [120, hipAt], [sideAt(hipAt), hipAt])]), aside)),
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
    const { seams } = skirt(pocket());
    const { hip } = levelGirths(patternOf([low, lowBack, pocket(), band], seams));
    expect(hip).toBeCloseTo(4 * 275, 6);
  });
});
