import type { Piece } from '@paperhinge/geometry';
import { lengthOf, type XY } from '../twenty-drafts.js';
import { arm, armhole, neckline } from './block.js';
import { bend, ring, suited, wedge } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// A dress for a bust of 92 cm: darted bodice, gathered skirt of rectangles, flat round collar, short sleeves, zip behind.

const deep = 76,
  wide = 66;

function bodice(): readonly [front: Piece, back: Piece] {
  const bust = wedge([232, 252], [228.5, 280], 128);
  const waist = wedge([112, 408.5], [84, 410], 118);
  const front = ring(
    'front',
    [0, deep],
    {
      neck: neckline(deep, wide),
      shoulder: [[186, 42]],
      armhole: armhole([186, 42], 168, [237, 212]),
      side: [
        [232, 252],
        [228.5, 280],
        [220, 398],
      ],
      waist: [
        ...bend([220, 398], [180, 404], [140, 407.5], [112, 408.5], 3),
        [84, 410],
        ...bend([84, 410], [50, 411.5], [20, 412], [0, 412], 3),
      ],
      centre: [],
    },
    { fold: 'centre', darts: { 'bust dart': bust, 'waist dart': waist } },
  );
  const back = suited(
    y =>
      ring(
        'back',
        [0, 20],
        {
          neck: neckline(20, 69),
          shoulder: [[194, 40]],
          armhole: armhole([194, 40], 180, [233, y!]),
          side: [[206, 398]],
          waist: [
            ...bend([206, 398], [170, 402], [140, 404], [108, 404.8], 3),
            [82, 405.2],
            ...bend([82, 405.2], [50, 406], [20, 406], [0, 406], 3),
          ],
          centre: [],
        },
        { cut: 2, darts: { dart: wedge([108, 404.8], [82, 405.2], 140) } },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [180, 260] },
  );
  return [front, back];
}

/** Half of a flat collar, as the necks lie with their shoulders lapped; it begins 5 mm from the centre in front. */
const flatCollar = (neck: number): Piece =>
  suited(
    far => {
      const behind: XY = [66 - 34 * far!, -64 * far!];
      const out: XY = [behind[0] + 44, behind[1] - 45];
      return ring(
        'collar',
        [5, deep],
        {
          neck: [
            ...bend([5, deep], [40, deep], [58, 38], [wide, 0]),
            ...bend([wide, 0], [68, -16], [behind[0] + 22, behind[1] + 21], behind),
          ],
          end: [out],
          outer: [
            ...bend(out, [out[0] + 40, out[1] + 40], [140, -20], [132, 32]),
            ...bend([132, 32], [122, 108], [66, 152], [30, 130]),
            ...bend([30, 130], [14, 120], [5, 100], [5, deep], 4),
          ],
        },
        { cut: 4 },
      );
    },
    { edges: ['neck'], mm: neck, between: [0.7, 1.4] },
  );

/** Buttoned up to the neck nowhere: it closes with a zip in the centre of the back. */
export function collaredDress(): Unnamed {
  const [front, back] = bodice();
  const armholes = lengthOf(front, 'armhole') + lengthOf(back, 'armhole');
  const sleeve = arm('sleeve', { cap: armholes + 24, upper: 332, hem: 306, long: 95 });
  const collar = flatCollar(lengthOf(front, 'neck') + lengthOf(back, 'neck') - 8);
  const frontFacing = ring(
    'front facing',
    [0, deep],
    {
      neck: neckline(deep, wide),
      shoulder: [[122, 19.6]],
      outer: bend([122, 19.6], [110, 90], [62, 134], [0, 134]),
      centre: [],
    },
    { fold: 'centre' },
  );
  const backFacing = ring(
    'back facing',
    [0, 20],
    {
      neck: neckline(20, 69),
      shoulder: [[125.5, 18.08]],
      outer: bend([125.5, 18.08], [112, 54], [60, 78], [0, 78]),
      centre: [],
    },
    { cut: 2 },
  );
  const skirt = (name: string, width: number, cut: { fold?: string; cut?: number }): Piece =>
    ring(name, [0, 0], { top: [[width, 0]], side: [[width, 640]], hem: [[0, 640]], centre: [] }, cut);
  const bag = ring(
    'bag',
    [0, 0],
    {
      round: [
        ...bend([0, 0], [60, -6], [128, 60], [150, 150]),
        ...bend([150, 150], [168, 226], [90, 262], [0, 190]),
      ],
      opening: [],
    },
    { cut: 4 },
  );
  const [cf, cb] = [lengthOf(front, 'armhole'), lengthOf(back, 'armhole')];
  return unnamed({
    title: 'dress with a flat collar and a gathered skirt',
    pieces: [
      skirt('back skirt', 330, { cut: 2 }),
      collar,
      front,
      bag,
      sleeve,
      backFacing,
      skirt('front skirt', 350, { fold: 'centre' }),
      back,
      frontFacing,
    ],
    over: ['back', 'back skirt', 'back facing'],
    seams: [
      'back.shoulder = front.shoulder, 3.78 mm',
      'front.side = back.side',
      'back.centre = back.centre',
      'sleeve.front = sleeve.back',
      'sleeve.cap = front.armhole + back.armhole, 24 mm',
      `front skirt.top = front.waist, ${350 / lengthOf(front, 'waist')} x`,
      `back skirt.top = back.waist, ${330 / lengthOf(back, 'waist')} x`,
      'front skirt.side = back skirt.side',
      'back skirt.centre = back skirt.centre',
      'collar.neck = front.neck + back.neck, -8 mm',
      'collar.outer = collar.outer',
      'collar.end = collar.end',
      'front facing.shoulder = back facing.shoulder',
      'front facing.neck = front.neck',
      'back facing.neck = back.neck',
      'bag.round = bag.round',
    ],
    notches: [
      ['single', ['front.armhole from side', 86], ['sleeve.cap from front', 87]],
      ['double', ['back.armhole from side', 92], ['sleeve.cap from back', 94]],
      ['single', ['sleeve.cap from front', cf + 24 * (cf / (cf + cb))]],
      ['single', ['collar.neck from end', lengthOf(back, 'neck') - 3]],
      ['single', ['front.waist from side', lengthOf(front, 'waist') / 2], ['front skirt.top from side', 175]],
      ['single', ['back.waist from side', lengthOf(back, 'waist') / 2], ['back skirt.top from side', 165]],
      [
        'single',
        ['front skirt.side from top', 40],
        ['back skirt.side from top', 40],
        ['bag.opening from its start', 15],
      ],
      [
        'single',
        ['front skirt.side from top', 200],
        ['back skirt.side from top', 200],
        ['bag.opening from its start', 175],
      ],
      ['single', ['back skirt.centre from top', 130]],
    ],
  });
}
