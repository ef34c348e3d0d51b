import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf, type XY } from '../twenty-drafts.js';
import { arm, armhole, neckline } from './block.js';
import { bend, ring, suited } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// A man's shirt with everything a shirt has, and a house jacket with a band round its front and neck.

/** Depth of the pleat in the centre of the back, half of it. */
const pleat = 20;

function shirtBody(): readonly [front: Piece, back: Piece, yoke: Piece] {
  const yoke = ring(
    'yoke',
    [0, 22],
    {
      neck: bend([0, 22], [44, 22], [78, 8], [88, -30]),
      shoulder: [[236, 22]],
      armhole: bend([236, 22], [230, 52], [226, 80], [226, 108], 4),
      lower: bend([226, 108], [150, 116], [70, 118], [0, 118], 4),
      centre: [],
    },
    { fold: 'centre', cut: 2 },
  );
  const [sx, sy]: XY = [70, 20];
  const long = lengthOf(yoke, 'shoulder');
  const end: XY = [sx + long * 0.936, sy + long * Math.sqrt(1 - 0.936 ** 2)];
  const front = ring(
    'front',
    [16, 96],
    {
      neck: bend([16, 96], [44, 94], [66, 62], [sx, sy]),
      shoulder: [end],
      armhole: armhole(end, 200, [284, 266]),
      side: [...bend([284, 266], [278, 400], [276, 560], [282, 690], 5)],
      hem: [...bend([282, 690], [240, 700], [190, 770], [90, 776]), [16, 776]],
      centre: [],
    },
    { cut: 2 },
  );
  const back = suited(
    (wide, y) =>
      ring(
        'back',
        [0, 118],
        {
          top: bend([0, 118], [80, 118], [170, 114], [wide!, 106], 4),
          armhole: [
            ...bend([wide!, 106], [wide! - 2, 150], [wide! - 2, 190], [wide! + 6, 218], 4),
            ...bend([wide! + 6, 218], [wide! + 14, 250], [wide! + 30, y!], [306, y!], 4),
          ],
          side: bend([306, y!], [298, 400], [296, 560], [302, 690], 5),
          hem: [...bend([302, 690], [262, 700], [210, 792], [100, 798]), [0, 798]],
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['top'], mm: lengthOf(yoke, 'lower') + pleat, between: [220, 280] },
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [230, 300] },
  );
  return [front, back, yoke];
}

function collarAndStand(neck: number): readonly [collar: Piece, stand: Piece] {
  const stand = suited(
    n =>
      ring(
        'stand',
        [0, 0],
        {
          upper: bend([0, 0], [n! * 0.4, 0], [n! * 0.7, -3], [n! - 20, -14], 5),
          front: bend([n! - 20, -14], [n! - 6, -12], [n! - 1, 2], [n!, 17], 4),
          neck: bend([n!, 17], [n! * 0.7, 31], [n! * 0.4, 35], [0, 35], 5),
          centre: [],
        },
        { fold: 'centre', cut: 2 },
      ),
    { edges: ['neck'], mm: neck, between: [neck - 40, neck + 10] },
  );
  const collar = suited(
    x =>
      ring(
        'collar',
        [0, 0],
        {
          outer: bend([0, 0], [x! * 0.5, 0], [x! * 0.8, 4], [x! + 22, 18], 4),
          end: [[x!, 80]],
          neck: bend([x!, 80], [x! * 0.7, 58], [x! * 0.4, 50], [0, 50], 5),
          centre: [],
        },
        { fold: 'centre', cut: 2 },
      ),
    { edges: ['neck'], mm: lengthOf(stand, 'upper'), between: [neck - 80, neck + 10] },
  );
  return [collar, stand];
}

/** A pleat behind, button bands, long sleeves with plackets, folded cuffs, a pocket. */
export function mansShirt(): Unnamed {
  const [front, back, yoke] = shirtBody();
  const [cf, cb, cy] = [front, back, yoke].map(own => lengthOf(own, 'armhole')) as [number, number, number];
  const sleeve = arm('sleeve', { cap: cf + cb + cy + 8, upper: 446, hem: 292, long: 448, high: [40, 180] });
  const buttonBand = band('button band', 64, lengthOf(front, 'centre'), { cut: 2 });
  const [collar, stand] = collarAndStand(lengthOf(front, 'neck') + lengthOf(yoke, 'neck') + 32);
  const placket = ring('placket', [0, 0], {
    tip: [
      [16, -18],
      [32, 0],
    ],
    right: [
      [32, 52],
      [32, 165],
    ],
    lower: [[-20, 165]],
    left: [[-20, 20]],
    shoulder: [[0, 20]],
    inner: [],
  });
  const pocket = ring('pocket', [0, 0], {
    opening: [[118, 0]],
    right: [[118, 112]],
    'foot right': [[59, 136]],
    'foot left': [[0, 112]],
    left: [],
  });
  return unnamed({
    title: 'shirt with a yoke and a collar on a stand',
    pieces: [
      sleeve,
      stand,
      pocket,
      yoke,
      { ...placket, cutting: { ...placket.cutting, count: 2 } },
      front,
      band('cuff', 248, 136, { cut: 2 }),
      buttonBand,
      collar,
      back,
    ],
    over: ['front', 'collar', 'stand'],
    seams: [
      'front.shoulder = yoke.shoulder',
      `back.top = yoke.lower, ${pleat} mm`,
      'front.side = back.side',
      'sleeve.cap = front.armhole + back.armhole + yoke.armhole, 8 mm',
      'sleeve.front = sleeve.back',
      'cuff.upper = sleeve.hem, -44 mm',
      'button band.left = front.centre',
      'collar.neck = stand.upper',
      'collar.outer = collar.outer',
      'collar.end = collar.end',
      'stand.front = stand.front',
      'stand.neck = front.neck + yoke.neck + button band.upper, -32 mm',
    ],
    notches: [
      ['single', ['front.armhole from side', 100], ['sleeve.cap from front', 100]],
      ['double', ['back.armhole from side', 96], ['sleeve.cap from back', 98]],
      ['single', ['sleeve.cap from front', cf + 4 + 26]],
      ['single', ['yoke.armhole from shoulder', 26]],
      ['single', ['back.top from centre', pleat]],
      ['single', ['front.side from armhole', 170], ['back.side from armhole', 170]],
      ['single', ['stand.neck from centre', lengthOf(yoke, 'neck') - 26]],
      ['single', ['yoke.neck from shoulder', 26]],
      ['single', ['stand.neck from front', 16]],
      ['single', ['sleeve.hem from back', 66]],
      ['single', ['sleeve.hem from back', 106]],
      ['single', ['sleeve.hem from back', 130]],
    ],
  });
}

/** It wraps over; sleeves with turned-up bands, pockets, a belt joined behind. */
export function houseJacket(): Unnamed {
  const front = ring(
    'front',
    [64, 0],
    {
      shoulder: [[262, 46]],
      armhole: bend([262, 46], [256, 130], [258, 220], [266, 306], 5),
      side: [[284, 860]],
      hem: bend([284, 860], [180, 868], [60, 872], [-64, 872], 4),
      front: [[-64, 560], ...bend([-64, 560], [-60, 380], [6, 120], [64, 0])],
    },
    { cut: 2 },
  );
  const back = suited(
    y =>
      ring(
        'back',
        [0, 16],
        {
          neck: neckline(16, 68, -4),
          shoulder: [[267, 39.6]],
          armhole: bend([267, 39.6], [264, 130], [266, 220], [272, y!], 5),
          side: [[290, 860]],
          hem: bend([290, 860], [200, 868], [100, 871], [0, 871], 4),
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [260, 340] },
  );
  const [cf, cb] = [lengthOf(front, 'armhole'), lengthOf(back, 'armhole')];
  const sleeve = arm('sleeve', { cap: cf + cb, upper: 506, hem: 408, long: 360, high: [5, 100] });
  const long = lengthOf(front, 'front') + lengthOf(back, 'neck');
  const strip = band('band', 112, long, { cut: 2 });
  return unnamed({
    title: 'house jacket with a band',
    pieces: [
      back,
      strip,
      band('belt', 940, 84, { cut: 2 }),
      front,
      band('sleeve band', 408, 164, { cut: 2 }),
      band('pocket', 182, 204, { cut: 2 }),
      sleeve,
    ],
    over: ['front'],
    seams: [
      'back.shoulder = front.shoulder',
      'front.side = back.side',
      'sleeve.cap = front.armhole + back.armhole',
      'sleeve.front = sleeve.back',
      'sleeve band.upper = sleeve.hem',
      'sleeve band.left = sleeve band.right',
      'band.left = front.front + back.neck',
      'band.upper = band.upper',
      'belt.left = belt.left',
    ],
    notches: [
      ['single', ['front.armhole from side', 110], ['sleeve.cap from front', 110]],
      ['double', ['back.armhole from side', 110], ['sleeve.cap from back', 110]],
      ['single', ['sleeve.cap from front', cf]],
      ['single', ['front.side from armhole', 230], ['back.side from armhole', 230]],
      ['single', ['band.right from upper', lengthOf(back, 'neck')]],
      ['single', ['band.left from upper', lengthOf(back, 'neck')]],
    ],
  });
}
