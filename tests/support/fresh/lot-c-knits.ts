import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf, type XY } from '../twenty-drafts.js';
import { arm, armhole, neckline } from './block.js';
import { bend, ring, suited } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// A hooded sweatshirt for a man and a raglan pullover for a woman, both finished with ribs that are stretched on.

function dropped(): readonly [front: Piece, back: Piece] {
  const front = ring(
    'front',
    [0, 104],
    {
      neck: neckline(104, 90),
      shoulder: [[268, 70]],
      armhole: armhole([268, 70], 262, [304, 306]),
      side: bend([304, 306], [302, 400], [298, 520], [296, 618], 4),
      hem: [[0, 618]],
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
          neck: neckline(24, 91, -2),
          shoulder: [[269.33, 67]],
          armhole: armhole([269.33, 67], 266, [304, y!]),
          side: bend([304, y!], [302, 400], [298, 520], [296, 618], 4),
          hem: [[0, 618]],
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [270, 340] },
  );
  return [front, back];
}

/** A hood lined with itself, a pocket across the front, ribs at wrists and hips. */
export function hoodie(): Unnamed {
  const [front, back] = dropped();
  const [cf, cb] = [lengthOf(front, 'armhole'), lengthOf(back, 'armhole')];
  const sleeve = arm('sleeve', { cap: cf + cb + 4, upper: 456, hem: 270, long: 452, high: [40, 180] });
  const necks = lengthOf(front, 'neck') + lengthOf(back, 'neck');
  const hood = suited(
    x =>
      ring(
        'hood',
        [0, 18],
        {
          face: bend([0, 18], [6, -80], [2, -250], [12, -356], 4),
          crown: [
            ...bend([12, -356], [120, -376], [250, -350], [262, -220]),
            ...bend([262, -220], [266, -130], [x! + 14, -90], [x!, -24], 5),
          ],
          neck: bend([x!, -24], [x! * 0.7, -6], [70, 30], [0, 18], 5),
        },
        { cut: 4 },
      ),
    { edges: ['neck'], mm: necks, between: [150, 300] },
  );
  const pocket = ring('pocket', [60, 0], {
    top: [[270, 0]],
    'right opening': bend([270, 0], [284, 50], [306, 90], [330, 122], 4),
    right: [[330, 205]],
    lower: [[0, 205]],
    left: [[0, 122]],
    'left opening': bend([0, 122], [24, 90], [46, 50], [60, 0], 4),
  });
  const half = 0.84 * (lengthOf(front, 'hem') + lengthOf(back, 'hem'));
  const hip = ring(
    'hip band',
    [0, 0],
    { upper: [[half, 0]], end: [[half, 136]], lower: [[0, 136]], centre: [] },
    { fold: 'centre' },
  );
  const cuff = band('cuff', 212, 136, { cut: 2 });
  return unnamed({
    title: 'hooded sweatshirt with a lined hood',
    pieces: [hood, cuff, back, pocket, front, hip, sleeve],
    over: ['hood'],
    seams: [
      'front.shoulder = back.shoulder',
      'front.side = back.side',
      'sleeve.front = sleeve.back',
      'sleeve.cap = front.armhole + back.armhole, 4 mm',
      'hood.crown = hood.crown',
      'hood.face = hood.face',
      'hood.neck = front.neck + back.neck',
      `cuff.upper = sleeve.hem, ${212 / 270} x`,
      'cuff.left = cuff.right',
      'hip band.upper = front.hem + back.hem, 0.84 x',
      'hip band.end = hip band.end',
    ],
    notches: [
      ['single', ['front.armhole from side', 95], ['sleeve.cap from front', 95]],
      ['double', ['back.armhole from side', 100], ['sleeve.cap from back', 101]],
      ['single', ['sleeve.cap from front', cf + 2]],
      ['single', ['hood.neck from face', lengthOf(front, 'neck')]],
      ['single', ['hip band.upper from centre', 0.84 * lengthOf(front, 'hem')]],
      ['single', ['front.side from hem', 205]],
      ['single', ['back.side from hem', 205]],
      ['single', ['hood.crown from face', 210]],
    ],
  });
}

const raglanLine = ([x, y]: XY, [px, py]: XY, hollow: number): readonly XY[] =>
  bend(
    [x, y],
    [x + (px - x) * 0.34, y + (py - y) * 0.42],
    [px - (px - x) * 0.42, py - (py - y) * hollow],
    [px, py],
    7,
  );

/** Raglan sleeves of one piece; ribs at neck, wrists and hips, each a strip closed to a ring. */
export function raglanPullover(): Unnamed {
  const front = ring(
    'front',
    [0, 92],
    {
      neck: bend([0, 92], [34, 92], [54, 70], [62, 36]),
      raglan: raglanLine([62, 36], [242, 246], 0.16),
      side: bend([242, 246], [236, 330], [230, 420], [232, 546], 4),
      hem: [[0, 548]],
      centre: [],
    },
    { fold: 'centre' },
  );
  const back = suited(
    y =>
      ring(
        'back',
        [0, 32],
        {
          neck: bend([0, 32], [36, 32], [58, 24], [70, 8]),
          raglan: raglanLine([70, 8], [240, y!], 0.2),
          side: bend([240, y!], [234, 330], [228, 420], [230, 546], 4),
          hem: [[0, 548]],
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [200, 300] },
  );
  const sleeve = suited(
    (hf, hb) =>
      ring(
        'sleeve',
        [0, 0],
        {
          front: bend([0, 0], [70, -hf! * 0.14], [104, -hf! * 0.58], [148, -hf!], 7),
          top: bend([148, -hf!], [162, -hf! + 6], [190, -hb! + 16], [206, -hb!], 4),
          back: bend([206, -hb!], [244, -hb! * 0.58], [276, -hb! * 0.16], [352, 0], 7),
          'back underarm': [[278, 430]],
          hem: [[74, 430]],
          'front underarm': [],
        },
        { cut: 2 },
      ),
    { edges: ['front'], mm: lengthOf(front, 'raglan'), between: [180, 330] },
    { edges: ['back'], mm: lengthOf(back, 'raglan'), between: [180, 360] },
  );
  const neck = 2 * (lengthOf(front, 'neck') + lengthOf(back, 'neck') + lengthOf(sleeve, 'top'));
  const hips = 2 * (lengthOf(front, 'hem') + lengthOf(back, 'hem'));
  return unnamed({
    title: 'raglan pullover with ribs',
    pieces: [
      band('neck band', neck * 0.82, 64),
      sleeve,
      band('hip band', hips * 0.86, 120),
      back,
      band('cuff', 160, 120, { cut: 2 }),
      front,
    ],
    over: ['sleeve'],
    seams: [
      'front.side = back.side',
      'sleeve.front = front.raglan',
      'sleeve.back = back.raglan',
      'sleeve.front underarm = sleeve.back underarm',
      'neck band.lower = front.neck + back.neck + sleeve.top, 1.64 x',
      'neck band.left = neck band.right',
      'hip band.upper = front.hem + back.hem, 1.72 x',
      'hip band.left = hip band.right',
      `cuff.upper = sleeve.hem, ${160 / 204} x`,
      'cuff.left = cuff.right',
    ],
    notches: [
      ['single', ['front.raglan from side', 95], ['sleeve.front from front underarm', 95]],
      ['double', ['back.raglan from side', 105], ['sleeve.back from back underarm', 105]],
      ['single', ['front.side from hem', 180], ['back.side from hem', 180]],
      ['single', ['neck band.lower from left', neck * 0.41]],
      ['single', ['hip band.upper from left', hips * 0.43]],
      ['single', ['sleeve.top from front', lengthOf(sleeve, 'top') / 2]],
    ],
  });
}
