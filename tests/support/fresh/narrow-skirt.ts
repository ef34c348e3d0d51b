import type { Piece } from '@paperhinge/geometry';
import { type Draft, draft, lengthOf, type XY } from '../twenty-drafts.js';
import { ring, seams, suited } from './ring.js';

// Drawn after the proposals were mended by the everyday garments, and not mended for.

/** Darts at the waist, a seam behind, faced. */
export function narrowSkirt(): Draft {
  const half = (
    name: string,
    waist: readonly XY[],
    dart: readonly XY[],
    hip: number,
    cut: { fold?: string; cut?: number },
  ) =>
    ring(
      name,
      waist[0]!,
      {
        waist: [dart[0]!, dart[2]!, waist[1]!],
        side: [
          [hip, 190],
          [224, 600],
        ],
        hem: [[0, 606]],
        centre: [],
      },
      { ...cut, darts: { dart } },
    );
  const front = half(
    '1',
    [
      [0, 0],
      [190, -14],
    ],
    [
      [82, -4],
      [101.45, 89.53],
      [102, -6],
    ],
    232,
    { fold: 'centre' },
  );
  const back = suited(
    hip =>
      half(
        '2',
        [
          [0, 10],
          [200, -12],
        ],
        [
          [78, 2],
          [101.26, 130.67],
          [106, 0],
        ],
        hip!,
        { cut: 2 },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [215, 250] },
  );
  const facing = (name: string, of: Piece, cut: { fold?: string; cut?: number }): Piece =>
    suited(
      wide =>
        ring(
          name,
          [0, 0],
          {
            waist: [
              [wide! / 2, -4],
              [wide!, -16],
            ],
            side: [[wide! + 11, 38]],
            lower: [
              [wide! / 2, 51],
              [0, 55],
            ],
            centre: [],
          },
          cut,
        ),
      { edges: ['waist'], mm: lengthOf(of, 'waist'), between: [120, 220] },
    );
  return draft(
    'narrow skirt, faced',
    [front, back, facing('3', front, { fold: 'centre' }), facing('4', back, { cut: 2 })],
    seams(
      '1.side = 2.side',
      '2.centre = 2.centre',
      '3.waist = 1.waist',
      '4.waist = 2.waist',
      '3.side = 4.side',
    ),
  );
}
