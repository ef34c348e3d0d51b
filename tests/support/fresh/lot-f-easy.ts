import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf, type XY } from '../twenty-drafts.js';
import { bend, ring, suited } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// Leggings of one piece a leg, and a nightgown whose raglan sleeves are gathered with it into a neck binding.

const frontInseam = [
  ...bend([222, 256], [186, 340], [150, 460], [140, 580], 4),
  ...bend([140, 580], [134, 660], [112, 820], [98, 940], 4),
];

const legOf = (fork: number): Piece =>
  ring(
    'leg',
    [-186, -44],
    {
      waist: bend([-186, -44], [-80, -34], [90, 10], [158, 6], 4),
      'front crotch': [
        ...bend([158, 6], [164, 80], [168, 130], [176, 180], 3),
        ...bend([176, 180], [182, 220], [196, 246], [222, 256], 4),
      ],
      'front inseam': frontInseam,
      hem: [[-98, 940]],
      'back inseam': [
        ...bend([-98, 940], [-112, 820], [-142, 660], [-150, 580], 4),
        ...bend([-150, 580], [-162, 470], [-210, 340], [-268, fork], 4),
      ],
      'back crotch': [
        ...bend([-268, fork], [-236, fork - 16], [-214, 214], [-206, 150], 5),
        ...bend([-206, 150], [-200, 90], [-192, 20], [-186, -44], 3).slice(0, -1),
      ],
    },
    { cut: 2 },
  );

/** Its side has no seam; a wide doubled band is stretched on at the waist. */
export function leggings(): Unnamed {
  const leg = suited(fork => legOf(fork!), {
    edges: ['back inseam'],
    mm: lengthOf(legOf(256), 'front inseam'),
    between: [200, 330],
  });
  const waist = lengthOf(leg, 'waist');
  const strip = 2 * 0.92 * waist;
  return unnamed({
    title: 'leggings of one piece a leg',
    pieces: [band('waistband', strip, 160), leg],
    over: ['leg'],
    seams: [
      'leg.front inseam = leg.back inseam',
      'leg.front crotch = leg.front crotch',
      'leg.back crotch = leg.back crotch',
      'waistband.lower = leg.waist, 1.84 x',
      'waistband.left = waistband.right',
    ],
    notches: [
      ['single', ['leg.front inseam from hem', 366], ['leg.back inseam from hem', 366]],
      ['single', ['leg.front crotch from front inseam', 92]],
      ['double', ['leg.back crotch from back inseam', 120]],
      ['single', ['leg.waist from front crotch', waist * 0.48]],
      ['single', ['waistband.lower from left', strip / 2]],
      ['single', ['waistband.lower from left', 0.92 * waist * 0.52]],
      ['single', ['waistband.lower from right', 0.92 * waist * 0.52]],
    ],
  });
}

const raglan = ([x, y]: XY, [px, py]: XY): readonly XY[] =>
  bend(
    [x, y],
    [x + (px - x) * 0.3, y + (py - y) * 0.42],
    [px - (px - x) * 0.4, py - (py - y) * 0.1],
    [px, py],
    7,
  );

function gown(): readonly [front: Piece, back: Piece, sleeve: Piece] {
  const front = ring(
    'front',
    [0, 64],
    {
      neck: bend([0, 64], [60, 64], [110, 56], [150, 30], 5),
      raglan: raglan([150, 30], [286, 258]),
      side: bend([286, 258], [294, 460], [318, 760], [338, 960], 4),
      hem: bend([338, 960], [240, 976], [100, 982], [0, 982], 4),
      centre: [],
    },
    { fold: 'centre' },
  );
  const back = suited(
    y =>
      ring(
        'back',
        [0, 26],
        {
          neck: bend([0, 26], [60, 26], [110, 22], [146, 4], 5),
          raglan: raglan([146, 4], [284, y!]),
          side: bend([284, y!], [292, 460], [316, 760], [336, 960], 4),
          hem: bend([336, 960], [240, 976], [100, 982], [0, 982], 4),
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [200, 320] },
  );
  const sleeve = suited(
    (hf, hb) =>
      ring(
        'sleeve',
        [0, 0],
        {
          front: bend([0, 0], [62, -hf! * 0.1], [96, -hf! * 0.6], [122, -hf!], 7),
          top: bend([122, -hf!], [170, -hf! - 6], [250, -hb! + 4], [300, -hb!], 4),
          back: bend([300, -hb!], [328, -hb! * 0.6], [364, -hb! * 0.1], [430, 0], 7),
          'back underarm': [[392, 250]],
          hem: [[38, 250]],
          'front underarm': [],
        },
        { cut: 2 },
      ),
    { edges: ['front'], mm: lengthOf(front, 'raglan'), between: [160, 330] },
    { edges: ['back'], mm: lengthOf(back, 'raglan'), between: [160, 360] },
  );
  return [front, back, sleeve];
}

/** Pulled over; a flounce at the hem, elastic in the hem of the sleeves. */
export function nightgown(): Unnamed {
  const [front, back, sleeve] = gown();
  const neck = lengthOf(front, 'neck') + lengthOf(back, 'neck') + lengthOf(sleeve, 'top');
  const long = 660;
  const flounce = 1.55 * (lengthOf(front, 'hem') + lengthOf(back, 'hem'));
  return unnamed({
    title: 'nightgown with raglan sleeves and a flounce',
    pieces: [front, sleeve, band('flounce', flounce, 190, { cut: 2 }), band('neck binding', long, 48), back],
    over: ['back'],
    seams: [
      'front.side = back.side',
      'sleeve.front = front.raglan',
      'sleeve.back = back.raglan',
      'sleeve.front underarm = sleeve.back underarm',
      `neck binding.lower = front.neck + back.neck + sleeve.top, ${long / neck} x`,
      'neck binding.left = neck binding.right',
      'flounce.upper = front.hem + back.hem, 1.55 x',
      'flounce.left = flounce.right',
    ],
    notches: [
      ['single', ['front.raglan from side', 104], ['sleeve.front from front underarm', 104]],
      ['double', ['back.raglan from side', 112], ['sleeve.back from back underarm', 112]],
      ['single', ['front.side from hem', 400], ['back.side from hem', 400]],
      ['single', ['front.neck from raglan', 46]],
      ['single', ['back.neck from raglan', 46]],
      ['single', ['sleeve.top from front', lengthOf(sleeve, 'top') / 2]],
      ['single', ['neck binding.lower from left', long / 2]],
      ['single', ['flounce.upper from left', flounce / 2]],
    ],
  });
}
