import type { Piece } from '@paperhinge/geometry';
import { band, type Draft, draft, lengthOf, type XY } from '../twenty-drafts.js';
import { ring, seams, suited } from './ring.js';

// A dress, pyjama trousers and a skirt as they are sewn at home, drawn without a look at how proposals are made. Every
// seam is told that a maker sews from edge to edge, the ends of a band closed to a ring and a pocket's bags among them.

/** A sleeve fuller behind than in front, its cap as long as asked for. */
export const setIn = (
  name: string,
  cap: number,
  [long, foot]: readonly [long: number, foot: number],
): Piece =>
  suited(
    high =>
      ring(
        name,
        [0, 0],
        {
          cap: [
            [44, -22],
            [96, -high! * 0.72],
            [166, -high!],
            [244, -high! * 0.76],
            [302, -24],
            [346, 0],
          ],
          back: [[173 + foot / 2, long]],
          hem: [[173 - foot / 2, long]],
          front: [],
        },
        { cut: 2 },
      ),
    { edges: ['cap'], mm: cap, between: [60, 200] },
  );

/** To the knee and wider below, pulled over the head, its neck faced. */
export function aLineDress(): Draft {
  const neck: readonly XY[] = [
    [42, 64],
    [72, 0],
  ];
  const front = ring(
    '1',
    [0, 80],
    {
      neck,
      shoulder: [[190, 40]],
      armhole: [
        [176, 120],
        [190, 186],
        [245, 222],
      ],
      side: [
        [236, 400],
        [330, 980],
      ],
      hem: [
        [166, 1003],
        [0, 1010],
      ],
      centre: [],
    },
    { fold: 'centre' },
  );
  const backNeck: readonly XY[] = [
    [48, 15],
    [74, -6],
  ];
  const back = suited(
    y =>
      ring(
        '2',
        [0, 22],
        {
          neck: backNeck,
          shoulder: [[194, 32]],
          armhole: [
            [184, 120],
            [196, 184],
            [240, y!],
          ],
          side: [
            [231, 400],
            [325, 980],
          ],
          hem: [
            [164, 1003],
            [0, 1010],
          ],
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [190, 250] },
  );
  const facing = (name: string, centre: XY, along: readonly XY[], shoulder: XY, outer: readonly XY[]) =>
    ring(name, centre, { neck: along, shoulder: [shoulder], outer, centre: [] }, { fold: 'centre' });
  const armholes = lengthOf(front, 'armhole') + lengthOf(back, 'armhole');
  return draft(
    'A-line dress with neck facings',
    [
      front,
      back,
      setIn('3', armholes + 24, [190, 306]),
      facing(
        '4',
        [0, 80],
        neck,
        [121.56, 16.8],
        [
          [92, 106],
          [0, 140],
        ],
      ),
      facing(
        '5',
        [0, 22],
        backNeck,
        [124.4, 9.96],
        [
          [92, 60],
          [0, 82],
        ],
      ),
    ],
    seams(
      '1.shoulder = 2.shoulder',
      '1.side = 2.side',
      '3.front = 3.back',
      '3.cap = 1.armhole + 2.armhole',
      '4.neck = 1.neck',
      '5.neck = 2.neck',
      '4.shoulder = 5.shoulder',
    ),
  );
}

/** Wide legs with bands at waist and feet and a pocket sewn onto the seat. */
export function pyjamaTrousers(): Draft {
  const front = ring(
    '1',
    [-4, 0],
    {
      waist: [[256, -4]],
      outseam: [
        [268, 200],
        [258, 960],
      ],
      hem: [[46, 960]],
      inseam: [
        [28, 620],
        [-56, 292],
      ],
      crotch: [
        [-24, 270],
        [0, 190],
      ],
    },
    { cut: 2 },
  );
  const back = suited(
    (knee, hip) =>
      ring(
        '2',
        [42, -38],
        {
          waist: [[298, -4]],
          outseam: [
            [hip!, 200],
            [284, 960],
          ],
          hem: [[16, 960]],
          inseam: [
            [knee!, 620],
            [-124, 308],
          ],
          crotch: [
            [-62, 290],
            [6, 180],
          ],
        },
        { cut: 2 },
      ),
    { edges: ['inseam'], mm: lengthOf(front, 'inseam') - 4, between: [20, -90] },
    { edges: ['outseam'], mm: lengthOf(front, 'outseam'), between: [270, 380] },
  );
  const casing = band('3', 2 * (lengthOf(front, 'waist') + lengthOf(back, 'waist')), 90);
  const foot = band('4', lengthOf(front, 'hem') + lengthOf(back, 'hem'), 120, { cut: 2 });
  const pocket = ring('5', [0, 0], {
    opening: [[140, 0]],
    right: [[140, 130]],
    'foot right': [[116, 154]],
    lower: [[24, 154]],
    'foot left': [[0, 130]],
    left: [],
  });
  return draft(
    'pyjama trousers with bands',
    [front, back, casing, foot, pocket],
    seams(
      '1.outseam = 2.outseam',
      '1.inseam = 2.inseam',
      '1.crotch = 1.crotch',
      '2.crotch = 2.crotch',
      '3.lower = 1.waist + 2.waist',
      '3.left = 3.right',
      '4.upper = 1.hem + 2.hem',
      '4.left = 4.right',
    ),
  );
}

/** Half a circle for a waist of 740 mm, dropped behind where its seam and zip are; bags hang in the side seams. */
export function halfCircleSkirt(): Draft {
  const waist = 740 / Math.PI,
    hem = waist + 640;
  const arc = (radius: number, degrees: readonly number[]): readonly XY[] =>
    degrees.map(a => [radius * Math.sin((a * Math.PI) / 180), radius * Math.cos((a * Math.PI) / 180)]);
  const out = [9, 18, 27, 36, 45],
    home = [36, 27, 18, 9, 0];
  const half = (name: string, drop: number, cut: { fold?: string; cut?: number }) =>
    ring(
      name,
      [0, waist + drop],
      {
        waist: arc(waist, drop > 0 ? [27, 45] : out),
        side: arc(hem, [45]),
        hem: arc(hem, home),
        centre: [],
      },
      cut,
    );
  const front = half('1', 0, { fold: 'centre' });
  const back = half('2', 10, { cut: 2 });
  const bag = ring(
    '4',
    [0, 0],
    {
      round: [
        [70, -12],
        [134, 60],
        [146, 190],
        [90, 262],
        [0, 240],
      ],
      opening: [],
    },
    { cut: 4 },
  );
  return draft(
    'half-circle skirt',
    [front, back, band('3', 770, 70), bag],
    seams('1.side = 2.side', '2.centre = 2.centre', '3.lower = 1.waist + 2.waist', '4.round = 4.round'),
  );
}
