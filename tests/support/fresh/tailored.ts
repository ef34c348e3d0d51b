import { type Draft, draft, lengthOf, type XY } from '../twenty-drafts.js';
import { ring, seams, suited } from './ring.js';

// A lined waistcoat and a jacket with panel seams.

/** Points below, a seam in the centre of the back, lined but for a facing in front. */
export function linedWaistcoat(): Draft {
  const armhole: readonly XY[] = [
    [150, 120],
    [176, 214],
    [238, 252],
  ];
  const front = ring(
    '1',
    [-18, 262],
    {
      neck: [[74, 0]],
      shoulder: [[186, 38]],
      armhole,
      side: [
        [228, 420],
        [232, 510],
      ],
      hem: [
        [120, 536],
        [52, 572],
      ],
      point: [[-18, 530]],
      centre: [],
    },
    { cut: 2 },
  );
  const lining = ring(
    '4',
    [130, 19],
    {
      shoulder: [[186, 38]],
      armhole,
      side: [
        [228, 420],
        [232, 510],
      ],
      hem: [[120, 536]],
      inner: [
        [88, 380],
        [92, 210],
      ],
    },
    { cut: 2 },
  );
  const facing = ring(
    '3',
    [-18, 262],
    {
      neck: [[74, 0]],
      shoulder: [[130, 19]],
      inner: [
        [92, 210],
        [88, 380],
        [120, 536],
      ],
      hem: [[52, 572]],
      point: [[-18, 530]],
      centre: [],
    },
    { cut: 2 },
  );
  const back = (name: string) =>
    suited(
      y =>
        ring(
          name,
          [0, 22],
          {
            neck: [
              [44, 16],
              [76, 0],
            ],
            shoulder: [[187, 34]],
            armhole: [
              [160, 130],
              [180, 220],
              [240, y],
            ],
            side: [
              [230, 420],
              [234, 506],
            ],
            hem: [[16, 500]],
            centre: [
              [18, 380],
              [6, 180],
            ],
          },
          { cut: 2 },
        ),
      { edges: ['side'], mm: lengthOf(front, 'side'), between: [200, 300] },
    );
  return draft(
    'lined waistcoat',
    [front, back('2'), facing, lining, back('5')],
    seams(
      '1.shoulder = 2.shoulder',
      '1.side = 2.side',
      '2.centre = 2.centre',
      '3.inner = 4.inner',
      '3.shoulder + 4.shoulder = 5.shoulder',
      '4.side = 5.side',
      '5.centre = 5.centre',
      '3.neck = 1.neck',
      '3.centre = 1.centre',
      '3.point = 1.point',
      '4.armhole = 1.armhole',
      '5.armhole = 2.armhole',
      '5.neck = 2.neck',
      '5.hem = 2.hem',
    ),
  );
}

/** Panels from the armhole in front and behind, sleeves of two pieces, a collar and front facings. */
export function panelledJacket(): Draft {
  const front = ring(
    '1',
    [-20, 90],
    {
      neck: [
        [24, 88],
        [58, 56],
        [76, 0],
      ],
      shoulder: [[196, 44]],
      armhole: [
        [178, 100],
        [176, 146],
      ],
      panel: [
        [140, 250],
        [132, 400],
        [160, 640],
      ],
      hem: [[-20, 648]],
      centre: [],
    },
    { cut: 2 },
  );
  const side = suited(
    bow =>
      ring(
        '2',
        [0, 146],
        {
          armhole: [
            [16, 190],
            [66, 214],
          ],
          side: [
            [54, 400],
            [88, 636],
          ],
          hem: [[-22, 640]],
          panel: [
            [4, 400],
            [bow, 250],
          ],
        },
        { cut: 2 },
      ),
    { edges: ['panel'], mm: lengthOf(front, 'panel') + 3, between: [-14, -70] },
  );
  const back = ring(
    '3',
    [0, 24],
    {
      neck: [
        [48, 18],
        [78, 0],
      ],
      shoulder: [[204, 40]],
      armhole: [
        [188, 100],
        [184, 160],
      ],
      panel: [
        [130, 280],
        [110, 410],
        [142, 638],
      ],
      hem: [[8, 642]],
      centre: [
        [16, 400],
        [4, 160],
      ],
    },
    { cut: 2 },
  );
  const sideBack = suited(
    (bow, y) =>
      ring(
        '4',
        [70, 160],
        {
          panel: [
            [bow, 280],
            [70, 410],
            [96, 638],
          ],
          hem: [[-30, 634]],
          side: [
            [4, 400],
            [-10, y],
          ],
          armhole: [[36, 206]],
        },
        { cut: 2 },
      ),
    { edges: ['panel'], mm: lengthOf(back, 'panel'), between: [74, 130] },
    { edges: ['side'], mm: lengthOf(side, 'side'), between: [180, 240] },
  );
  const armhole = [front, side, back, sideBack].reduce((sum, own) => sum + lengthOf(own, 'armhole'), 0);
  const upper = suited(
    high =>
      ring(
        '5',
        [0, 150],
        {
          cap: [
            [34, 100],
            [104, high!],
            [170, 70],
            [216, 130],
          ],
          back: [
            [230, 330],
            [196, 610],
          ],
          hem: [[56, 600]],
          front: [[12, 360]],
        },
        { cut: 2 },
      ),
    { edges: ['cap'], mm: armhole + 24 - 175, between: [10, 120] },
  );
  const under = suited(
    (fore, elbow) =>
      ring(
        '6',
        [0, 150],
        {
          cap: [
            [50, 176],
            [118, 172],
            [160, 128],
          ],
          back: [
            [elbow, 330],
            [146, 610],
          ],
          hem: [[56, 600]],
          front: [[fore, 360]],
        },
        { cut: 2 },
      ),
    { edges: ['front'], mm: lengthOf(upper, 'front'), between: [60, 4] },
    { edges: ['back'], mm: lengthOf(upper, 'back'), between: [150, 240] },
  );
  const necks = lengthOf(front, 'neck') + lengthOf(back, 'neck');
  const collar = ring(
    '7',
    [0, 0],
    {
      outer: [
        [necks * 0.6, 0],
        [necks + 26, 14],
      ],
      end: [[necks, 84]],
      neck: [
        [necks * 0.55, 70],
        [0, 68],
      ],
      centre: [],
    },
    { fold: 'centre', cut: 2 },
  );
  const facing = ring(
    '8',
    [-20, 90],
    {
      neck: [
        [24, 88],
        [58, 56],
        [76, 0],
      ],
      shoulder: [[116, 14]],
      inner: [
        [92, 200],
        [60, 420],
        [58, 646],
      ],
      hem: [[-20, 648]],
      centre: [],
    },
    { cut: 2 },
  );
  return draft(
    'jacket with panel seams and sleeves of two pieces',
    [front, side, back, sideBack, upper, under, collar, facing],
    seams(
      '1.panel = 2.panel',
      '3.panel = 4.panel',
      '2.side = 4.side',
      '1.shoulder = 3.shoulder',
      '3.centre = 3.centre',
      '5.front = 6.front',
      '5.back = 6.back',
      '5.cap + 6.cap = 1.armhole + 2.armhole + 3.armhole + 4.armhole',
      '7.neck = 1.neck + 3.neck',
      '8.centre = 1.centre',
      '8.neck = 1.neck',
    ),
  );
}
