import { band, type Draft, draft, lengthOf, sleeve } from '../twenty-drafts.js';
import { ring, seams, suited } from './ring.js';

// A boiler suit, a leotard and a child’s dungarees.

/** Front and back sewn to legs in the waist, open in front, with a collar and a pocket on the chest. */
export function boilerSuit(): Draft {
  const front = ring(
    '1',
    [-18, 97],
    {
      neck: [
        [20, 92],
        [62, 55],
        [80, 8],
      ],
      shoulder: [[228, 66]],
      armhole: [
        [212, 150],
        [226, 226],
        [292, 262],
      ],
      side: [[286, 470]],
      waist: [[-18, 482]],
      centre: [],
    },
    { cut: 2 },
  );
  const back = suited(
    y =>
      ring(
        '2',
        [0, 26],
        {
          neck: [
            [50, 18],
            [84, -4],
          ],
          shoulder: [[234, 50]],
          armhole: [
            [222, 140],
            [236, 226],
            [296, y],
          ],
          side: [[290, 470]],
          waist: [[0, 474]],
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [200, 320] },
  );
  const leg = (name: string, out: number, waist: number, lean: number) =>
    ring(
      name,
      [lean, 0],
      {
        waist: [[lean + waist, -2]],
        outseam: [
          [292, 190],
          [262, 600],
          [238, 1040],
        ],
        hem: [[6, 1040]],
        inseam: [
          [-14, 640],
          [-out, 300],
        ],
        crotch: [
          [-out * 0.35, 262],
          [lean * 0.35, 180],
        ],
      },
      { cut: 2 },
    );
  const frontLeg = leg('5', 52, lengthOf(front, 'waist'), -14);
  const inseam = lengthOf(frontLeg, 'inseam'),
    outseam = lengthOf(frontLeg, 'outseam');
  const backLeg = suited(
    (knee, hip) =>
      ring(
        '6',
        [44, -34],
        {
          waist: [[44 + lengthOf(back, 'waist'), 2]],
          outseam: [
            [hip!, 190],
            [272, 600],
            [250, 1040],
          ],
          hem: [[-6, 1040]],
          inseam: [
            [knee!, 640],
            [-112, 316],
          ],
          crotch: [
            [-40, 278],
            [14, 180],
          ],
        },
        { cut: 2 },
      ),
    { edges: ['inseam'], mm: inseam - 3, between: [60, -60] },
    { edges: ['outseam'], mm: outseam + 2, between: [240, 420] },
  );
  const s = sleeve('3', lengthOf(front, 'armhole') + lengthOf(back, 'armhole') + 16, {
    upper: 430,
    wrist: 290,
    long: 450,
  });
  const collar = ring(
    '4',
    [0, 0],
    {
      outer: [[lengthOf(front, 'neck') + lengthOf(back, 'neck') + 22, -10]],
      end: [[lengthOf(front, 'neck') + lengthOf(back, 'neck') - 1, 72]],
      neck: [
        [100, 80],
        [0, 80],
      ],
      centre: [],
    },
    { fold: 'centre', cut: 2 },
  );
  const pocket = ring(
    '7',
    [0, 0],
    {
      opening: [[130, 0]],
      right: [[130, 130]],
      'foot right': [[65, 156]],
      'foot left': [[0, 130]],
      left: [],
    },
    { cut: 2 },
  );
  return draft(
    'boiler suit',
    [front, back, s, collar, frontLeg, backLeg, pocket],
    seams(
      '1.shoulder = 2.shoulder',
      '1.side = 2.side',
      '3.cap = 1.armhole + 2.armhole',
      '3.front = 3.back',
      '4.neck = 1.neck + 2.neck',
      '1.waist = 5.waist',
      '2.waist = 6.waist',
      '5.outseam = 6.outseam',
      '5.inseam = 6.inseam',
      '5.crotch = 5.crotch',
      '6.crotch = 6.crotch',
    ),
  );
}

/** High in the leg, its crotch a short seam, with long sleeves. */
export function leotard(): Draft {
  const half = (name: string, neck: number, hollow: number, leg: readonly (readonly [number, number])[]) =>
    ring(
      name,
      [0, neck],
      {
        neck: [
          [46, neck * 0.72],
          [78, 0],
        ],
        shoulder: [[140, 24]],
        armhole: [
          [140 - hollow, 100],
          [150, 152],
          [196, 172],
        ],
        side: [
          [168, 330],
          [192, 490],
        ],
        leg,
        crotch: [[0, 704]],
        centre: [],
      },
      { fold: 'centre' },
    );
  const front = half('1', 130, 14, [
    [104, 596],
    [50, 660],
    [34, 704],
  ]);
  const back = half('2', 60, 6, [
    [150, 600],
    [74, 690],
    [34, 704],
  ]);
  const s = sleeve('3', lengthOf(front, 'armhole') + lengthOf(back, 'armhole'), {
    upper: 262,
    wrist: 150,
    long: 470,
  });
  const gusset = ring(
    '4',
    [0, 0],
    {
      front: [[34, 0]],
      leg: [
        [44, 60],
        [72, 110],
      ],
      back: [[0, 118]],
      centre: [],
    },
    { fold: 'centre' },
  );
  return draft(
    'leotard',
    [front, back, s, gusset],
    seams(
      '1.shoulder = 2.shoulder',
      '1.side = 2.side',
      '1.crotch = 2.crotch',
      '3.cap = 1.armhole + 2.armhole',
      '3.front = 3.back',
    ),
  );
}

/** Bibs sewn to legs in the waist, straps and a pocket on the bib. */
export function dungarees(): Draft {
  const bib = (name: string, high: number, wide: number, waist: number) =>
    ring(
      name,
      [0, 0],
      {
        upper: [[wide, 0]],
        side: [
          [wide + 10, high * 0.5],
          [waist, high],
        ],
        waist: [[0, high]],
        centre: [],
      },
      { fold: 'centre', cut: 2 },
    );
  const [front, back] = [bib('1', 190, 84, 158), bib('2', 160, 62, 164)];
  const leg = (name: string, waist: number, hip: number, out: readonly [number, number], lean: number) =>
    ring(
      name,
      [lean, 0],
      {
        waist: [[lean + waist, 0]],
        outseam: [
          [hip, 130],
          [200, 560],
        ],
        hem: [[10, 560]],
        inseam: [[-out[0], out[1]]],
        crotch: [
          [-out[0] * 0.3, out[1] - 26],
          [lean * 0.5, 130],
        ],
      },
      { cut: 2 },
    );
  const frontLeg = leg('3', 158, 192, [36, 222], 4);
  const inside = lengthOf(frontLeg, 'inseam');
  const deep = 560 - Math.sqrt(inside * inside - 74 * 74);
  const backLeg = suited(hip => leg('4', 164, hip, [64, deep], 22), {
    edges: ['outseam'],
    mm: lengthOf(frontLeg, 'outseam'),
    between: [150, 240],
  });
  const strap = band('5', 520, 80, { cut: 2 });
  const pocket = ring('6', [0, 0], {
    opening: [[120, 0]],
    right: [[120, 110]],
    lower: [
      [60, 122],
      [0, 110],
    ],
    left: [],
  });
  return draft(
    'child’s dungarees',
    [front, back, frontLeg, backLeg, strap, pocket],
    seams(
      '1.waist = 3.waist',
      '2.waist = 4.waist',
      '3.outseam = 4.outseam',
      '3.inseam = 4.inseam',
      '3.crotch = 3.crotch',
      '4.crotch = 4.crotch',
    ),
  );
}
