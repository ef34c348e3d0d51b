import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf } from '../twenty-drafts.js';
import { arm, armhole, neckline } from './block.js';
import { bend, ring, suited, wedge } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// A dress that buttons down the front: darted bodice, flared skirt, collar in one piece, facing from neck to hem.

/** How far the front laps over its centre. */
const lap = 17;

function bodice(): readonly [front: Piece, back: Piece] {
  const front = ring(
    'front',
    [-lap, 87],
    {
      neck: bend([-lap, 87], [30, 86], [60, 48], [69, 0]),
      shoulder: [[190, 45]],
      armhole: armhole([190, 45], 171, [240, 208]),
      side: [
        [236.5, 246],
        [234, 271],
        [221, 394],
      ],
      waist: [
        ...bend([221, 394], [180, 399], [140, 402], [118, 403], 3),
        [93, 404],
        ...bend([93, 404], [60, 405.4], [20, 406], [-lap, 406], 4),
      ],
      front: [],
    },
    {
      cut: 2,
      darts: {
        'bust dart': wedge([236.5, 246], [234, 271], 124),
        'waist dart': wedge([118, 403], [93, 404], 112),
      },
    },
  );
  const back = suited(
    y =>
      ring(
        'back',
        [0, 23],
        {
          neck: neckline(23, 71),
          shoulder: [[197, 43]],
          armhole: armhole([197, 43], 184, [236, y!]),
          side: [[209, 394]],
          waist: [
            ...bend([209, 394], [170, 398], [140, 400], [110, 401], 3),
            [84, 401.6],
            ...bend([84, 401.6], [50, 402.4], [20, 402.6], [0, 402.6], 3),
          ],
          centre: [],
        },
        { fold: 'centre', darts: { dart: wedge([110, 401], [84, 401.6], 136) } },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [180, 260] },
  );
  return [front, back];
}

function skirts(front: Piece, back: Piece): readonly [front: Piece, back: Piece] {
  const before = suited(
    x =>
      ring(
        'front skirt',
        [-lap, 0],
        {
          top: bend([-lap, 0], [60, 0], [140, -10], [x!, -24], 5),
          side: [...bend([x!, -24], [x! + 22, 60], [x! + 38, 120], [x! + 56, 196], 4), [x! + 142, 616]],
          hem: bend([x! + 142, 616], [230, 646], [100, 660], [-lap, 660], 5),
          front: [],
        },
        { cut: 2 },
      ),
    { edges: ['top'], mm: lengthOf(front, 'waist'), between: [150, 260] },
  );
  const behind = suited(
    (x, y) =>
      ring(
        'back skirt',
        [0, 4],
        {
          top: bend([0, 4], [60, 4], [130, -6], [x!, -24], 5),
          side: [...bend([x!, -24], [x! + 28, 60], [x! + 46, 120], [x! + 64, 196], 4), [x! + 148, y!]],
          hem: bend([x! + 148, y!], [230, 646], [100, 662], [0, 662], 5),
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['top'], mm: lengthOf(back, 'waist'), between: [130, 260] },
    { edges: ['side'], mm: lengthOf(before, 'side'), between: [560, 680] },
  );
  return [before, behind];
}

function facings(front: Piece, skirt: Piece): readonly [front: Piece, back: Piece] {
  const foot = 87 + lengthOf(front, 'front') + lengthOf(skirt, 'front');
  const along = (dx: number, dy: number): readonly [number, number] => [
    (42 * dx) / Math.hypot(dx, dy),
    (42 * dy) / Math.hypot(dx, dy),
  ];
  const [fx, fy] = along(121, 45),
    [bx, by] = along(126, 43);
  const before = ring(
    'front facing',
    [-lap, 87],
    {
      neck: bend([-lap, 87], [30, 86], [60, 48], [69, 0]),
      shoulder: [[69 + fx, fy]],
      outer: [
        ...bend([69 + fx, fy], [110, 120], [58, 180], [58, 320]),
        [58, 420],
        [58, 540],
        [58, 800],
        [58, foot],
      ],
      hem: [[-lap, foot]],
      front: [],
    },
    { cut: 2 },
  );
  const behind = ring(
    'back facing',
    [0, 23],
    {
      neck: neckline(23, 71),
      shoulder: [[71 + bx, by]],
      outer: bend([71 + bx, by], [100, 50], [60, 76], [0, 76]),
      centre: [],
    },
    { fold: 'centre' },
  );
  return [before, behind];
}

/** Short sleeves with bands, pockets in the side seams, a tie belt joined behind. */
export function buttonedDress(): Unnamed {
  const [front, back] = bodice();
  const [skirt, behind] = skirts(front, back);
  const [facing, backFacing] = facings(front, skirt);
  const [cf, cb] = [lengthOf(front, 'armhole'), lengthOf(back, 'armhole')];
  const sleeve = arm('sleeve', { cap: cf + cb + 26, upper: 338, hem: 316, long: 104 });
  const collar = suited(
    x =>
      ring(
        'collar',
        [0, 0],
        {
          outer: bend([0, 0], [90, 0], [x! - 40, 6], [x! + 26, 24], 4),
          end: [[x!, 92]],
          neck: bend([x!, 92], [130, 78], [70, 72], [0, 72], 5),
          centre: [],
        },
        { fold: 'centre', cut: 2 },
      ),
    { edges: ['neck'], mm: lengthOf(front, 'neck') + lengthOf(back, 'neck') - lap, between: [150, 260] },
  );
  const bag = ring(
    'bag',
    [0, 0],
    {
      round: [
        ...bend([0, 0], [70, 10], [134, 70], [152, 150]),
        ...bend([152, 150], [164, 236], [80, 262], [0, 206]),
      ],
      opening: [],
    },
    { cut: 4 },
  );
  const ease = lengthOf(back, 'shoulder') - lengthOf(front, 'shoulder');
  return unnamed({
    title: 'shirt dress with a flared skirt',
    pieces: [
      sleeve,
      behind,
      facing,
      band('belt', 880, 76, { cut: 2 }),
      back,
      bag,
      skirt,
      collar,
      band('sleeve band', 316, 74, { cut: 2 }),
      backFacing,
      front,
    ],
    over: ['front', 'front skirt', 'collar'],
    seams: [
      `back.shoulder = front.shoulder, ${ease} mm`,
      'front.side = back.side',
      'front skirt.top = front.waist',
      'back skirt.top = back.waist',
      'front skirt.side = back skirt.side',
      'sleeve.front = sleeve.back',
      'sleeve.cap = front.armhole + back.armhole, 26 mm',
      'sleeve band.upper = sleeve.hem',
      'sleeve band.left = sleeve band.right',
      `collar.neck = front.neck + back.neck, ${-lap} mm`,
      'collar.outer = collar.outer',
      'collar.end = collar.end',
      'front facing.front = front.front + front skirt.front',
      'front facing.neck = front.neck',
      'front facing.shoulder = back facing.shoulder',
      'back facing.neck = back.neck',
      'bag.round = bag.round',
      'belt.left = belt.left',
    ],
    notches: [
      ['single', ['front.armhole from side', 88], ['sleeve.cap from front', 89]],
      ['double', ['back.armhole from side', 94], ['sleeve.cap from back', 96]],
      ['single', ['sleeve.cap from front', cf + 26 * (cf / (cf + cb))]],
      ['single', ['collar.neck from end', lengthOf(front, 'neck') - lap]],
      ['single', ['front.neck from front', lap], ['front facing.neck from front', lap]],
      ['single', ['front.waist from front', lap], ['front skirt.top from front', lap]],
      ['single', ['front.waist from side', 52], ['front skirt.top from side', 52]],
      ['double', ['back.waist from side', 48], ['back skirt.top from side', 48]],
      [
        'single',
        ['front skirt.side from top', 60],
        ['back skirt.side from top', 60],
        ['bag.opening from its end', 20],
      ],
      [
        'single',
        ['front skirt.side from top', 220],
        ['back skirt.side from top', 220],
        ['bag.opening from its end', 180],
      ],
      ['single', ['front facing.front from neck', lengthOf(front, 'front')]],
      ['single', ['back facing.neck from shoulder', 40], ['back.neck from shoulder', 40]],
    ],
  });
}
