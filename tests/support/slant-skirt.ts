// A skirt with slanting pockets, drawn here: the front is 200 mm wide at the waist and 250 at 200 mm below, its side
// straight; the mouth runs from 40 mm inside of the side at the waist to the side at 200 mm.
import type { Piece, PieceLine } from '@paperhinge/geometry';
import { type Corner, level, pieceOf, run, seam, side } from './polygon-piece.js';

/** mm below the waist. */
export const hipAt = 120;
export const sideAt = (y: number) => 200 + y / 4;
export const mouthAt = (y: number) => 160 + (90 * y) / 200;

const hemAndCentre = [
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
];

export const front = pieceOf(
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
    ...hemAndCentre,
  ],
  { lines: [level('hip', [0, hipAt], [mouthAt(hipAt), hipAt])] },
);
export const back = pieceOf(
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
    ...hemAndCentre,
  ],
  { lines: [level('hip', [0, hipAt], [sideAt(hipAt), hipAt])] },
);
export const sideCorners: readonly (readonly [string, Corner, Corner])[] = [
  ['waist', [120, 0], [200, 0]],
  ['side', [200, 0], [250, 200]],
  ['low', [250, 200], [240, 260]],
  ['below', [240, 260], [120, 260]],
  ['inner', [120, 260], [120, 0]],
];
/** What lies behind the mouth and shows beyond it. */
export const sidePiece = (lines: readonly PieceLine[] = []): Piece => ({
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

/** The half of the bag that the mouth is sewn to. */
export const bag = (lines: readonly PieceLine[] = []): Piece => ({
  ...pieceOf(
    'bag',
    (
      [
        ['waist', [120, 0], [160, 0]],
        ['mouth', [160, 0], [250, 200]],
        ['low', [250, 200], [240, 260]],
        ['below', [240, 260], [120, 260]],
        ['inner', [120, 260], [120, 0]],
      ] as const
    ).map(([name, from, to]) => side(name, [from, to])),
    { cutting: { count: 2, mirrored: true }, lines },
  ),
  role: 'pocket',
});

export const band = pieceOf('band', [
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

export const sideSeam = seam('side', ['side piece.side', 'front.side'], ['-back.side']);
export const mouthSeam = seam('mouth', ['front.mouth'], ['bag.mouth']);
export const bagSeam = seam(
  'bag',
  ['side piece.low', 'side piece.below', 'side piece.inner'],
  ['bag.low', 'bag.below', 'bag.inner'],
);
/** Half of the band, on the front and on what of the side piece shows there. */
export const waistSeam = {
  name: 'waist',
  a: [run('front.waist'), { ...run('side piece.waist'), part: { from: 40, to: 80 } }],
  b: [{ ...run('band.lower'), part: { from: 0, to: 200 } }],
  ease: { mm: 0 },
};
