import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf } from '../twenty-drafts.js';
import { bend, ring, suited, wedge } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// Wide trousers that are pulled on, and a skirt that is buttoned down the front.

/** A flat band in front and an elastic one behind; bags hang in the outseams. */
export function wideTrousers(): Unnamed {
  const front = ring(
    'front',
    [2, 0],
    {
      waist: bend([2, 0], [70, 0], [140, -3], [208, -9], 3),
      outseam: [
        ...bend([208, -9], [226, 60], [246, 130], [250, 200], 5),
        ...bend([250, 200], [256, 400], [268, 800], [272, 1000], 4),
      ],
      hem: [[-18, 1000]],
      inseam: bend([-18, 1000], [-20, 760], [-30, 480], [-66, 292], 5),
      crotch: [...bend([-66, 292], [-30, 284], [-2, 250], [0, 186]), [2, 0]],
    },
    { cut: 2 },
  );
  const back = suited(
    (y, out) =>
      ring(
        'back',
        [48, -40],
        {
          waist: bend([48, -40], [120, -32], [200, -18], [262, -8], 3),
          outseam: [
            ...bend([262, -8], [out! - 22, 60], [out! - 4, 130], [out!, 200], 5),
            ...bend([out!, 200], [out! + 4, 400], [288, 800], [292, 1000], 4),
          ],
          hem: [[-42, 1000]],
          inseam: bend([-42, 1000], [-44, 760], [-64, 480], [-128, y!], 5),
          crotch: [...bend([-128, y!], [-70, y! + 4], [6, 250], [18, 160]), [48, -40]],
        },
        { cut: 2 },
      ),
    { edges: ['inseam'], mm: lengthOf(front, 'inseam') - 4, between: [260, 360] },
    { edges: ['outseam'], mm: lengthOf(front, 'outseam'), between: [282, 420] },
  );
  const strip = (name: string, long: number): Piece =>
    ring(
      name,
      [0, 0],
      { upper: [[long, 0]], end: [[long, 84]], lower: [[0, 84]], centre: [] },
      { fold: 'centre' },
    );
  const bag = ring(
    'bag',
    [0, 0],
    {
      opening: [[10, -176]],
      round: [
        ...bend([10, -176], [80, -170], [150, -90], [158, 10]),
        ...bend([158, 10], [162, 80], [60, 90], [0, 0]),
      ],
    },
    { cut: 4 },
  );
  const long = lengthOf(bag, 'opening');
  return unnamed({
    title: 'wide trousers to pull on',
    pieces: [
      back,
      strip('back band', lengthOf(back, 'waist')),
      bag,
      front,
      strip('front band', lengthOf(front, 'waist')),
    ],
    over: ['back', 'back band'],
    seams: [
      'front.outseam = back.outseam',
      'back.inseam = front.inseam, -4 mm',
      'front.crotch = front.crotch',
      'back.crotch = back.crotch',
      'front band.lower = front.waist',
      'back band.lower = back.waist',
      'front band.end = back band.end',
      'bag.round = bag.round',
    ],
    notches: [
      [
        'single',
        ['front.outseam from waist', 50],
        ['back.outseam from waist', 50],
        ['bag.opening from its end', 14],
      ],
      [
        'single',
        ['front.outseam from waist', 198],
        ['back.outseam from waist', 198],
        ['bag.opening from its end', long - 14],
      ],
      ['single', ['front.inseam from hem', 400], ['back.inseam from hem', 398]],
      ['single', ['front.crotch from inseam', 90]],
      ['double', ['back.crotch from inseam', 140]],
    ],
  });
}

/** Faced in front, darted behind, a straight band, two pockets sewn on. */
export function buttonedSkirt(): Unnamed {
  const front = ring(
    'front',
    [-20, 2],
    {
      waist: bend([-20, 2], [50, 0], [130, -6], [186, -16], 4),
      side: [...bend([186, -16], [204, 60], [226, 120], [234, 196], 5), [292, 660]],
      hem: bend([292, 660], [200, 686], [100, 694], [-20, 696], 5),
      front: [],
    },
    { cut: 2 },
  );
  const back = suited(
    x =>
      ring(
        'back',
        [0, 8],
        {
          waist: [
            ...bend([0, 8], [30, 8], [56, 6], [84, 4], 3),
            [110, 0.5],
            ...bend([110, 0.5], [140, -4], [174, -10], [204, -18], 3),
          ],
          side: [...bend([204, -18], [x!, 60], [240, 120], [246, 196], 5), [298, 660]],
          hem: bend([298, 660], [210, 686], [110, 696], [0, 697], 5),
          centre: [],
        },
        { fold: 'centre', darts: { dart: wedge([84, 4], [110, 0.5], 124) } },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [190, 330] },
  );
  const facing = ring(
    'facing',
    [-20, 2],
    {
      waist: bend([-20, 2], [4, 1.4], [29, 0.2], [54, -1.6], 3),
      inner: [[54, 694.2]],
      hem: bend([54, 694.2], [30, 695.2], [5, 695.8], [-20, 696], 3),
      front: [],
    },
    { cut: 2 },
  );
  const [f, b] = [lengthOf(front, 'waist'), lengthOf(back, 'waist')];
  const waistband = band('waistband', 2 * (f + b), 72);
  const pocket = ring('pocket', [6, 0], {
    opening: [[164, 0]],
    right: [[170, 150]],
    'right foot': [[146, 178]],
    lower: [[24, 178]],
    'left foot': [[0, 150]],
    left: [],
  });
  return unnamed({
    title: 'skirt buttoned in front',
    pieces: [waistband, facing, back, { ...pocket, cutting: { ...pocket.cutting, count: 2 } }, front],
    over: ['facing', 'front'],
    seams: [
      'front.side = back.side',
      'facing.front = front.front',
      'waistband.lower = front.waist + back.waist, 2 x',
    ],
    notches: [
      ['single', ['front.side from waist', 210], ['back.side from waist', 210]],
      ['single', ['waistband.lower from left', f], ['waistband.lower from right', f]],
      ['single', ['waistband.lower from left', f + b]],
      ['single', ['waistband.lower from left', 20], ['waistband.lower from right', 20]],
      ['single', ['front.waist from front', 20]],
    ],
  });
}
