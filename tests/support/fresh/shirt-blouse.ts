import type { Piece } from '@paperhinge/geometry';
import { type Draft, draft, lengthOf } from '../twenty-drafts.js';
import { setIn } from './everyday.js';
import { ring, seams, suited } from './ring.js';

// A blouse made as a shirt is, drawn without a look at how proposals are made.

function frontAndBack(): readonly [front: Piece, back: Piece, yoke: Piece] {
  const front = ring(
    '1',
    [-18, 88],
    {
      neck: [
        [4, 87],
        [48, 60],
        [70, 4],
      ],
      shoulder: [[188, 44]],
      armhole: [
        [174, 120],
        [188, 186],
        [248, 220],
      ],
      side: [
        [244, 262],
        [240, 292],
        [228, 410],
        [250, 650],
      ],
      hem: [
        [120, 672],
        [-18, 676],
      ],
      centre: [],
    },
    {
      cut: 2,
      darts: {
        bust: [
          [244, 262],
          [126, 261.53],
          [240, 292],
        ],
      },
    },
  );
  const yoke = ring(
    '3',
    [0, 24],
    {
      neck: [
        [46, 17],
        [72, -4],
      ],
      shoulder: [[191, 34]],
      armhole: [
        [183, 72],
        [180, 108],
      ],
      lower: [[0, 108]],
      centre: [],
    },
    { fold: 'centre', cut: 2 },
  );
  const back = suited(
    y =>
      ring(
        '2',
        [0, 108],
        {
          top: [
            [90, 109],
            [180, 115],
          ],
          armhole: [
            [180, 160],
            [192, 200],
            [244, y!],
          ],
          side: [
            [226, 410],
            [248, 650],
          ],
          hem: [
            [120, 672],
            [0, 676],
          ],
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [215, 300] },
  );
  return [front, back, yoke];
}

/** A stand and the collar on it, both halves on the fold, for half a neck of so many mm. */
function standAndCollar(neck: number): readonly [stand: Piece, collar: Piece] {
  const stand = suited(
    n =>
      ring(
        '7',
        [0, 0],
        {
          upper: [
            [n! * 0.5, 1],
            [n! - 22, -12],
          ],
          front: [
            [n! - 6, -6],
            [n!, 14],
          ],
          neck: [
            [n! * 0.55, 31],
            [0, 32],
          ],
          centre: [],
        },
        { fold: 'centre', cut: 2 },
      ),
    { edges: ['neck'], mm: neck, between: [neck - 30, neck + 10] },
  );
  const collar = suited(
    x =>
      ring(
        '6',
        [0, 0],
        {
          outer: [
            [x! * 0.6, 0],
            [x! + 24, 12],
          ],
          end: [[x!, 68]],
          neck: [
            [x! * 0.5, 54],
            [0, 50],
          ],
          centre: [],
        },
        { fold: 'centre', cut: 2 },
      ),
    { edges: ['neck'], mm: lengthOf(stand, 'upper'), between: [neck - 70, neck + 10] },
  );
  return [stand, collar];
}

/** A bust dart in the side, a yoke behind, long sleeves pleated into cuffs of two layers, a collar on a stand. */
export function shirtBlouse(): Draft {
  const [front, back, yoke] = frontAndBack();
  const armholes = [front, back, yoke].reduce((sum, own) => sum + lengthOf(own, 'armhole'), 0);
  const sleeve = setIn('4', armholes + 22, [430, 300]);
  const cuff = ring(
    '5',
    [0, 0],
    {
      upper: [[250, 0]],
      outer: [
        [251, 40],
        [234, 64],
        [125, 67],
        [16, 64],
        [-1, 40],
      ],
    },
    { cut: 4 },
  );
  const [stand, collar] = standAndCollar(lengthOf(front, 'neck') + lengthOf(yoke, 'neck'));
  return draft(
    'shirt-blouse',
    [front, back, yoke, sleeve, cuff, collar, stand],
    seams(
      '1.shoulder = 3.shoulder',
      '2.top = 3.lower',
      '1.side = 2.side',
      '4.cap = 1.armhole + 2.armhole + 3.armhole',
      '4.front = 4.back',
      '5.upper = 4.hem',
      '5.outer = 5.outer',
      '6.neck = 7.upper',
      '6.outer = 6.outer',
      '6.end = 6.end',
      '7.front = 7.front',
      '7.neck = 1.neck + 3.neck',
    ),
  );
}
