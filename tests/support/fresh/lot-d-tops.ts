import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf } from '../twenty-drafts.js';
import { arm, neckline } from './block.js';
import { bend, ring, suited, wedge } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// A boxy top with sleeves cut in one with it, and a dress with panel seams from the armhole.

/** A bust dart in the side, bands on the sleeves, a slit behind that buttons at the neck. */
export function boxyTop(): Unnamed {
  const neckFront = neckline(112, 88);
  const front = ring(
    'front',
    [0, 112],
    {
      neck: neckFront,
      over: bend([88, 0], [170, 28], [250, 62], [330, 112], 5),
      sleeve: [[306, 236]],
      side: [
        ...bend([306, 236], [286, 236], [268, 244], [262, 268], 4),
        [261, 282],
        [259.5, 308],
        ...bend([259.5, 308], [257, 400], [258, 500], [262, 600], 4),
      ],
      hem: [[0, 606]],
      centre: [],
    },
    { fold: 'centre', darts: { dart: wedge([261, 282], [259.5, 308], 140) } },
  );
  const back = suited(
    (x, y) =>
      ring(
        'back',
        [0, 26],
        {
          neck: neckline(26, 90, -4),
          over: bend([90, -4], [172, 20], [252, 54], [x!, 104], 5),
          sleeve: [[306, 230]],
          side: [
            ...bend([306, 230], [286, 230], [268, 240], [262, 268], 4),
            ...bend([262, 268], [258, 400], [256, 490], [258, y!], 4),
          ],
          hem: [[0, y! + 4]],
          centre: [],
        },
        { cut: 2 },
      ),
    { edges: ['over'], mm: lengthOf(front, 'over'), between: [300, 350] },
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [520, 640] },
  );
  const frontFacing = ring(
    'front facing',
    [0, 112],
    {
      neck: neckFront,
      over: bend([88, 0], [105.9, 6.1], [123.6, 12.5], [141, 19.4], 3),
      outer: bend([141, 19.4], [132, 110], [84, 166], [0, 168]),
      centre: [],
    },
    { fold: 'centre' },
  );
  const backFacing = suited(
    x =>
      ring(
        'back facing',
        [0, 26],
        {
          neck: neckline(26, 90, -4),
          over: bend([90, -4], [108, 1], [126, 6.5], [x!, 13.5], 3),
          outer: bend([x!, 13.5], [130, 56], [70, 84], [0, 84]),
          centre: [],
        },
        { cut: 2 },
      ),
    { edges: ['over'], mm: lengthOf(frontFacing, 'over'), between: [120, 160] },
  );
  const opening = lengthOf(front, 'sleeve') + lengthOf(back, 'sleeve');
  return unnamed({
    title: 'boxy top with sleeves cut in one',
    pieces: [front, band('sleeve band', opening, 92, { cut: 2 }), backFacing, back, frontFacing],
    over: ['front'],
    seams: [
      'front.over = back.over',
      'front.side = back.side',
      'back.centre = back.centre',
      'front facing.over = back facing.over',
      'front facing.neck = front.neck',
      'back facing.neck = back.neck',
      'sleeve band.upper = front.sleeve + back.sleeve',
      'sleeve band.left = sleeve band.right',
    ],
    notches: [
      ['single', ['front.over from neck', 130], ['back.over from neck', 130]],
      ['single', ['front.side from hem', 150], ['back.side from hem', 150]],
      ['single', ['back.centre from neck', 120]],
      ['single', ['sleeve band.upper from left', lengthOf(front, 'sleeve')]],
    ],
  });
}

function panels(): readonly [front: Piece, sideFront: Piece, back: Piece, sideBack: Piece] {
  const front = ring(
    'front',
    [0, 98],
    {
      neck: neckline(98, 76),
      shoulder: [[188, 42]],
      armhole: bend([188, 42], [178, 76], [172, 110], [172, 146], 4),
      panel: [
        ...bend([172, 146], [138, 172], [106, 210], [100, 266]),
        ...bend([100, 266], [94, 320], [84, 360], [84, 412], 5),
        ...bend([84, 412], [84, 490], [108, 560], [118, 640], 4),
        [148, 1000],
      ],
      hem: bend([148, 1000], [100, 1004], [50, 1006], [0, 1006], 3),
      centre: [],
    },
    { fold: 'centre' },
  );
  const sideFront = suited(
    top =>
      ring(
        'side front',
        [4, top!],
        {
          armhole: bend([4, top!], [6, 180], [30, 214], [78, 214], 5),
          side: [
            ...bend([78, 214], [72, 290], [60, 350], [60, 410], 4),
            ...bend([60, 410], [60, 490], [86, 560], [92, 640], 4),
            [128, 992],
          ],
          hem: bend([128, 992], [80, 998], [30, 1000], [-30, 1000], 3),
          panel: [
            [-2, 640],
            ...bend([-2, 640], [6, 560], [16, 490], [16, 412], 4),
            ...bend([16, 412], [16, 350], [-14, 310], [-16, 256], 5),
            ...bend([-16, 256], [-18, 214], [-4, top! + 32], [4, top!]),
          ],
        },
        { cut: 2 },
      ),
    { edges: ['panel'], mm: lengthOf(front, 'panel') + 5, between: [90, 160] },
  );
  const back = ring(
    'back',
    [0, 22],
    {
      neck: neckline(22, 79, -3),
      shoulder: [[196.5, 37]],
      armhole: bend([196.5, 37], [188, 76], [186, 116], [187, 156], 4),
      panel: [
        ...bend([187, 156], [156, 190], [112, 280], [102, 412]),
        ...bend([102, 412], [102, 490], [118, 560], [128, 640], 4),
        [158, 1002],
      ],
      hem: [[6, 1008]],
      centre: [
        [6, 640],
        ...bend([6, 640], [8, 560], [16, 480], [14, 412], 4),
        ...bend([14, 412], [10, 280], [0, 150], [0, 22], 5),
      ],
    },
    { cut: 2 },
  );
  const sideBack = suited(
    (top, y) =>
      ring(
        'side back',
        [0, top!],
        {
          armhole: bend([0, top!], [2, 186], [20, y!], [62, y!], 5),
          side: [
            ...bend([62, y!], [56, 290], [46, 350], [46, 410], 4),
            ...bend([46, 410], [46, 490], [70, 560], [78, 640], 4),
            [112, 994],
          ],
          hem: bend([112, 994], [70, 1000], [20, 1002], [-30, 1002], 3),
          panel: [
            [-4, 640],
            ...bend([-4, 640], [2, 560], [8, 490], [8, 412], 4),
            ...bend([8, 412], [6, 330], [-22, 220], [0, top!]),
          ],
        },
        { cut: 2 },
      ),
    { edges: ['panel'], mm: lengthOf(back, 'panel') + 3, between: [100, 180] },
    { edges: ['side'], mm: lengthOf(sideFront, 'side'), between: [190, 240] },
  );
  return [front, sideFront, back, sideBack];
}

/** Sleeves to the elbow, a zip behind, the neck faced. */
export function panelDress(): Unnamed {
  const [front, sideFront, back, sideBack] = panels();
  const [f, sf, b, sb] = [front, sideFront, back, sideBack].map(own => lengthOf(own, 'armhole')) as [
    number,
    number,
    number,
    number,
  ];
  const sleeve = arm('sleeve', { cap: f + sf + b + sb + 26, upper: 334, hem: 286, long: 205 });
  const frontFacing = ring(
    'front facing',
    [0, 98],
    {
      neck: neckline(98, 76),
      shoulder: [[132, 21]],
      outer: bend([132, 21], [126, 100], [70, 156], [0, 156]),
      centre: [],
    },
    { fold: 'centre' },
  );
  const backFacing = ring(
    'back facing',
    [0, 22],
    {
      neck: neckline(22, 79, -3),
      shoulder: [[135.2, 16.1]],
      outer: bend([135.2, 16.1], [124, 58], [66, 80], [1, 80]),
      centre: [],
    },
    { cut: 2 },
  );
  return unnamed({
    title: 'dress with panel seams',
    pieces: [sideBack, front, sleeve, backFacing, sideFront, back, frontFacing],
    over: ['back', 'side back', 'back facing'],
    seams: [
      'back.shoulder = front.shoulder, 4.5 mm',
      'side front.panel = front.panel, 5 mm',
      'side back.panel = back.panel, 3 mm',
      'side front.side = side back.side',
      'back.centre = back.centre',
      'sleeve.front = sleeve.back',
      'sleeve.cap = front.armhole + side front.armhole + side back.armhole + back.armhole, 26 mm',
      'front facing.shoulder = back facing.shoulder',
      'front facing.neck = front.neck',
      'back facing.neck = back.neck',
    ],
    notches: [
      ['single', ['front.panel from armhole', 90], ['side front.panel from armhole', 92]],
      ['single', ['front.panel from armhole', 180], ['side front.panel from armhole', 185]],
      ['single', ['front.panel from hem', 592], ['side front.panel from hem', 592]],
      ['double', ['back.panel from armhole', 120], ['side back.panel from armhole', 123]],
      ['double', ['back.panel from hem', 592], ['side back.panel from hem', 592]],
      ['single', ['side front.side from hem', 585], ['side back.side from hem', 585]],
      ['single', ['side front.armhole from side', 80], ['sleeve.cap from front', 81]],
      ['double', ['side back.armhole from side', 76], ['sleeve.cap from back', 78]],
      ['single', ['sleeve.cap from front', f + sf + 13]],
      ['single', ['back.centre from hem', 430]],
    ],
  });
}
