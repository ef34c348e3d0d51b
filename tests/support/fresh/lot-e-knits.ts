import { band, lengthOf } from '../twenty-drafts.js';
import { arm, armhole } from './block.js';
import { shoulderEnd, type Torso, torso, torsoEdges, whole } from './lots-body.js';
import { bend, ring, suited } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// A T-shirt printed whole, and a long cardigan with a band round its front.

/** Short sleeves, a doubled strip at the neck. */
export function teeShirt(): Unnamed {
  const body = { wide: 80, shoulder: 112, slope: 0.37, across: 0, side: [] as const };
  const front: Torso = {
    ...body,
    deep: 98,
    across: 170,
    pit: [238, 206],
    side: bend([238, 206], [237, 270], [222, 350], [226, 400], 3).concat(
      bend([226, 400], [230, 460], [240, 530], [242, 596], 3),
    ),
    foot: bend([242, 596], [180, 603], [80, 604], [0, 604], 3),
  };
  const f = whole('front', [0, 98], torsoEdges(front));
  const back = suited(
    y =>
      whole(
        'back',
        [0, 24],
        torsoEdges({
          ...front,
          deep: 24,
          across: 181,
          pit: [240, y!],
          side: bend([240, y!], [239, 270], [226, 350], [229, 400], 3).concat(
            bend([229, 400], [232, 460], [242, 530], [244, 596], 3),
          ),
          foot: bend([244, 596], [180, 603], [80, 604], [0, 604], 3),
        }),
      ),
    { edges: ['side r'], mm: lengthOf(f, 'side r'), between: [180, 240] },
  );
  const [cf, cb] = [lengthOf(f, 'armhole r'), lengthOf(back, 'armhole r')];
  const sleeve = arm('sleeve', { cap: cf + cb + 6, upper: 326, hem: 298, long: 72, high: [40, 160] });
  const [nf, nb] = [lengthOf(f, 'neck'), lengthOf(back, 'neck')];
  const strip = 0.86 * (nf + nb);
  return unnamed({
    title: 'T-shirt printed whole',
    pieces: [sleeve, f, band('neck band', strip, 44), back],
    over: ['sleeve'],
    seams: [
      'front.shoulder r = back.shoulder r',
      'front.shoulder l = back.shoulder l',
      'front.side r = back.side r',
      'front.side l = back.side l',
      'sleeve.cap = front.armhole r + back.armhole r, 6 mm',
      'sleeve.cap = front.armhole l + back.armhole l, 6 mm',
      'sleeve.front = sleeve.back',
      'neck band.lower = front.neck + back.neck, 0.86 x',
      'neck band.left = neck band.right',
    ],
    notches: [
      [
        'single',
        ['front.armhole r from side r', 88],
        ['front.armhole l from side l', 88],
        ['sleeve.cap from front', 89],
      ],
      [
        'double',
        ['back.armhole r from side r', 94],
        ['back.armhole l from side l', 94],
        ['sleeve.cap from back', 95],
      ],
      ['single', ['sleeve.cap from front', cf + 3]],
      ['single', ['front.neck from shoulder r', nf / 2], ['back.neck from shoulder r', nb / 2]],
      ['single', ['neck band.lower from left', strip / 2]],
      ['single', ['front.side r from hem', 210], ['back.side r from hem', 210]],
      ['single', ['front.side l from hem', 210], ['back.side l from hem', 210]],
    ],
  });
}

/** Shoulders that drop over the arm, a doubled band from hem to hem joined behind, two patch pockets. */
export function cardigan(): Unnamed {
  const end = shoulderEnd([82, 0], 176, 0.3);
  const front = ring(
    'front',
    [82, 0],
    {
      shoulder: [end],
      armhole: armhole(end, 246, [288, 262]),
      side: bend([288, 262], [282, 380], [278, 560], [284, 760], 4),
      hem: [[20, 766]],
      front: [[20, 470], [20, 360], ...bend([20, 360], [24, 250], [62, 90], [82, 0], 5).slice(0, -1)],
    },
    { cut: 2 },
  );
  const back = suited(
    y =>
      torso('back', {
        deep: 20,
        wide: 82,
        shoulder: 176,
        slope: 0.3,
        across: 250,
        pit: [288, y!],
        side: bend([288, y!], [284, 380], [282, 560], [286, 760], 4),
        foot: [[0, 766]],
      }),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [230, 300] },
  );
  const [cf, cb] = [lengthOf(front, 'armhole'), lengthOf(back, 'armhole')];
  const sleeve = arm('sleeve', { cap: cf + cb, upper: 408, hem: 250, long: 440, high: [20, 160] });
  const edge = lengthOf(front, 'front'),
    nape = lengthOf(back, 'neck');
  return unnamed({
    title: 'long cardigan with a band',
    pieces: [
      band('band', edge + nape, 76, { cut: 2 }),
      back,
      band('pocket', 160, 190, { cut: 2 }),
      sleeve,
      front,
      band('sleeve band', 236, 90, { cut: 2 }),
    ],
    over: ['front', 'back'],
    seams: [
      'front.shoulder = back.shoulder',
      'front.side = back.side',
      'sleeve.cap = front.armhole + back.armhole',
      'sleeve.front = sleeve.back',
      'band.lower = front.front + back.neck',
      'band.left = band.left',
      `sleeve band.upper = sleeve.hem, ${236 / 250} x`,
      'sleeve band.left = sleeve band.right',
    ],
    notches: [
      ['single', ['front.armhole from side', 84], ['sleeve.cap from front', 84]],
      ['double', ['back.armhole from side', 84], ['sleeve.cap from back', 84]],
      ['single', ['sleeve.cap from front', cf]],
      ['single', ['band.lower from left', nape]],
      ['single', ['front.front from hem', 300], ['band.lower from right', 300]],
      ['single', ['front.side from hem', 330], ['back.side from hem', 330]],
    ],
  });
}
