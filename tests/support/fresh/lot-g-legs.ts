import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf, type XY } from '../twenty-drafts.js';
import { neckline } from './block.js';
import { bend, ring, suited, wedge } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// Wide trousers with darts, and pyjamas: a top with its sleeves cut on, trousers whose legs have no seam at the side.

function trouserLegs(): readonly [front: Piece, back: Piece] {
  const front = ring(
    'front',
    [8, 2],
    {
      waist: [
        ...bend([8, 2], [40, 1], [76, -1], [102, -3], 3),
        [122, -4.6],
        ...bend([122, -4.6], [156, -8], [190, -14], [216, -19], 3),
      ],
      outseam: [
        ...bend([216, -19], [230, 52], [246, 136], [247, 206]),
        ...bend([247, 206], [248, 300], [244, 420], [243, 540], 4),
        ...bend([243, 540], [242, 700], [239, 870], [238, 1030], 4),
      ],
      hem: [[24, 1030]],
      inseam: [
        ...bend([24, 1030], [22, 870], [15, 700], [14, 540], 4),
        ...bend([14, 540], [13, 440], [-23, 360], [-54, 270], 4),
      ],
      crotch: bend([-54, 270], [-18, 257], [0, 236], [1, 176]),
    },
    { cut: 2, darts: { dart: wedge([102, -3], [122, -4.6], 88) } },
  );
  const back = suited(
    (y, side) =>
      ring(
        'back',
        [52, -26],
        {
          waist: [
            ...bend([52, -26], [76, -19], [96, -14], [116, -12], 3),
            [140, -11],
            ...bend([140, -11], [160, -10], [178, -10], [196, -11], 3),
            [216, -12.5],
            ...bend([216, -12.5], [236, -14], [256, side! + 4], [278, side!], 3),
          ],
          outseam: [
            ...bend([278, side!], [288, 56], [293, 136], [291, 206]),
            ...bend([291, 206], [288, 330], [274, 420], [270, 540], 4),
            ...bend([270, 540], [266, 700], [263, 870], [262, 1030], 4),
          ],
          hem: [[4, 1030]],
          inseam: [
            ...bend([4, 1030], [2, 870], [-11, 700], [-12, 540], 4),
            ...bend([-12, 540], [-13, 450], [-68, y! + 92], [-110, y!], 4),
          ],
          crotch: bend([-110, y!], [-48, y! - 28], [4, 236], [16, 150]),
        },
        {
          cut: 2,
          darts: {
            'first dart': wedge([116, -12], [140, -11], 128),
            'second dart': wedge([196, -11], [216, -12.5], 112),
          },
        },
      ),
    { edges: ['inseam'], mm: lengthOf(front, 'inseam') - 5, between: [230, 330] },
    { edges: ['outseam'], mm: lengthOf(front, 'outseam'), between: [-60, 30] },
  );
  return [front, back];
}

/** A fly in front whose shield and facing lie along a part of the centre; pockets in the side seams; a straight band. */
export function wideTrousers(): Unnamed {
  const [front, back] = trouserLegs();
  const [wf, wb] = [lengthOf(front, 'waist'), lengthOf(back, 'waist')];
  const lap = 36;
  const bag = ring(
    'bag',
    [0, 0],
    {
      upper: [[96, -8]],
      round: [
        ...bend([96, -8], [128, 60], [152, 140], [148, 208]),
        ...bend([148, 208], [144, 262], [60, 262], [28, 196]),
      ],
      opening: bend([28, 196], [28, 130], [14, 66], [0, 0], 4).slice(0, -1),
    },
    { cut: 4 },
  );
  const fly = ring('fly facing', [0, 0], {
    waist: [[42, -2]],
    outer: [[42, 120], ...bend([42, 120], [42, 152], [26, 172], [-7, 176], 4)],
    centre: [],
  });
  return unnamed({
    title: 'wide trousers with a fly',
    pieces: [bag, back, band('fly shield', 84, 180), band('waistband', 2 * (wf + wb) + lap, 84), front, fly],
    over: ['front'],
    seams: [
      'front.outseam = back.outseam',
      'back.inseam = front.inseam, -5 mm',
      'front.crotch = front.crotch',
      'back.crotch = back.crotch',
      `waistband.upper = front.waist + back.waist, 2 x, ${lap} mm`,
      'bag.round = bag.round',
    ],
    notches: [
      ['single', ['front.inseam from hem', 490], ['back.inseam from hem', 490]],
      ['single', ['front.outseam from hem', 490], ['back.outseam from hem', 490]],
      ['single', ['front.outseam from waist', 50], ['back.outseam from waist', 50]],
      ['single', ['front.outseam from waist', 200], ['back.outseam from waist', 200]],
      ['single', ['bag.opening from upper', 50]],
      ['single', ['front.crotch from waist', 178], ['fly facing.centre from waist', 176]],
      ['double', ['back.crotch from inseam', 130]],
      ['single', ['waistband.upper from left', wf]],
      ['double', ['waistband.upper from left', wf + wb]],
      ['single', ['waistband.upper from left', wf + 2 * wb]],
      ['single', ['waistband.upper from right', lap]],
    ],
  });
}

const backNeck = bend([0, 24], [48, 24], [84.2, 14], [86, 0]);

function cutOn(): readonly [front: Piece, back: Piece] {
  const hem: XY = [348.7, 240.9];
  const front = ring(
    'front',
    [0, 94],
    {
      neck: neckline(94, 86),
      overarm: [[390, 76]],
      'sleeve hem': [hem],
      underarm: [
        ...bend(hem, [300, 230], [260, 262], [260, 350], 8),
        ...bend([260, 350], [260, 440], [262, 540], [262, 640], 4),
      ],
      hem: [[0, 640]],
      centre: [],
    },
    { fold: 'centre' },
  );
  const back = suited(
    y =>
      ring(
        'back',
        [0, 24],
        {
          neck: backNeck,
          overarm: [[390, 76]],
          'sleeve hem': [hem],
          underarm: [
            ...bend(hem, [302, 230], [266, 250], [266, y!], 8),
            ...bend([266, y!], [266, 450], [266, 550], [266, 640], 4),
          ],
          hem: [[0, 640]],
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['underarm'], mm: lengthOf(front, 'underarm'), between: [300, 440] },
  );
  return [front, back];
}

/** Trousers of two pieces in all with the casing cut on; the top's neck is faced, a pocket lies on it. */
export function pyjamas(): Unnamed {
  const [front, back] = cutOn();
  const facing = (name: string, deep: number, neck: readonly XY[]): Piece =>
    ring(
      name,
      [0, deep],
      {
        neck,
        shoulder: [[144.2, 14.55]],
        outer: bend([144.2, 14.55], [138, deep + 20], [72, deep + 60], [0, deep + 60]),
        centre: [],
      },
      { fold: 'centre' },
    );
  const inside = bend([104, 1010], [92, 640], [46, 430], [0, 304]);
  const leg = suited(
    y =>
      ring(
        'leg',
        [64, 14],
        {
          waist: bend([64, 14], [240, 8], [420, -18], [596, -30]),
          'back crotch': [
            ...bend([596, -30], [604, 50], [612, 110], [624, 180], 4),
            ...bend([624, 180], [634, 240], [674, y! - 26], [744, y!]),
          ],
          'back inseam': bend([744, y!], [690, y! + 130], [640, 640], [622, 1010]),
          hem: [[104, 1010]],
          'front inseam': inside,
          'front crotch': [
            ...bend([0, 304], [38, 292], [60, 262], [62, 200]),
            ...bend([62, 200], [63, 140], [64, 80], [64, 14], 3).slice(0, -1),
          ],
        },
        { cut: 2 },
      ),
    {
      edges: ['back inseam'],
      mm: lengthOf(ring('inside', [104, 1010], { inseam: inside, rest: [] }), 'inseam'),
      between: [280, 360],
    },
  );
  return unnamed({
    title: 'pyjamas with sleeves cut on',
    pieces: [
      leg,
      facing('back facing', 24, backNeck),
      front,
      band('pocket', 116, 138),
      facing('front facing', 94, neckline(94, 86)),
      back,
    ],
    over: ['leg', 'back'],
    seams: [
      'front.overarm = back.overarm',
      'front.underarm = back.underarm',
      'front facing.neck = front.neck',
      'back facing.neck = back.neck',
      'front facing.shoulder = back facing.shoulder',
      'leg.front crotch = leg.front crotch',
      'leg.back crotch = leg.back crotch',
      'leg.front inseam = leg.back inseam',
    ],
    notches: [
      ['single', ['front.overarm from neck', 130]],
      ['single', ['back.overarm from neck', 130]],
      ['single', ['front.underarm from hem', 300], ['back.underarm from hem', 300]],
      ['single', ['leg.front inseam from hem', 340], ['leg.back inseam from hem', 340]],
      ['single', ['leg.front crotch from front inseam', 100]],
      ['double', ['leg.back crotch from back inseam', 140]],
    ],
  });
}
