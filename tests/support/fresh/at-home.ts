import type { Piece } from '@paperhinge/geometry';
import { band, type Draft, draft, lengthOf, sleeve, type XY } from '../twenty-drafts.js';
import { ring, seams, suited } from './ring.js';

// A child’s dress, joggers and a bathrobe, drawn after the proposals were mended by the everyday
// garments; what they showed in turn (robes, ribs, puffed caps) was mended after they had been judged.

/** A flat collar of two halves, each of two layers, along a neck of so many mm. */
function flatCollar(name: string, neck: number): Piece {
  const inner = 62,
    angle = neck / inner;
  const on = (radius: number, share: number): XY => [
    radius * Math.sin(angle * share),
    -radius * Math.cos(angle * share),
  ];
  const shares = [0.2, 0.4, 0.6, 0.8];
  return ring(
    name,
    on(inner, 1),
    {
      neck: [...shares.map(share => on(inner, 1 - share)), on(inner, 0)],
      outer: [
        on(inner + 34, 0.03),
        on(inner + 50, 0.2),
        ...[0.4, 0.6, 0.8].map(s => on(inner + 50, s)),
        on(inner + 34, 0.97),
      ],
    },
    { cut: 4 },
  );
}

/** Buttoned behind, its skirt gathered to the waist, puffed sleeves on bands. */
export function childsDress(): Draft {
  const front = ring(
    '1',
    [0, 62],
    {
      neck: [
        [34, 50],
        [56, 4],
      ],
      shoulder: [[120, 26]],
      armhole: [
        [112, 80],
        [121, 118],
        [158, 140],
      ],
      side: [[150, 250]],
      waist: [
        [75, 256],
        [0, 258],
      ],
      centre: [],
    },
    { fold: 'centre' },
  );
  const back = suited(
    y =>
      ring(
        '2',
        [-18, 22],
        {
          neck: [
            [6, 21],
            [40, 12],
            [58, -2],
          ],
          shoulder: [[121, 22]],
          armhole: [
            [114, 80],
            [123, 118],
            [156, y!],
          ],
          side: [[150, 250]],
          waist: [[-18, 254]],
          centre: [],
        },
        { cut: 2 },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [120, 160] },
  );
  const armholes = lengthOf(front, 'armhole') + lengthOf(back, 'armhole');
  const puff = sleeve('5', armholes + 92, { upper: 310, wrist: 296, long: 110 });
  return draft(
    'child’s dress with a flat collar',
    [
      front,
      back,
      band('3', 660, 420),
      band('4', 640, 420),
      puff,
      band('6', 214, 50, { cut: 2 }),
      flatCollar('7', lengthOf(front, 'neck') + lengthOf(back, 'neck') - 18),
    ],
    seams(
      '1.shoulder = 2.shoulder',
      '1.side = 2.side',
      '3.left = 4.right',
      '3.upper = 1.waist',
      '4.upper = 2.waist',
      '5.front = 5.back',
      '5.cap = 1.armhole + 2.armhole',
      '6.lower = 5.hem',
      '6.left = 6.right',
      '7.neck = 1.neck + 2.neck',
      '7.outer = 7.outer',
    ),
  );
}

/** Ribs at waist and feet, bags in the side seams. */
export function joggers(): Draft {
  const front = ring(
    '1',
    [-2, 0],
    {
      waist: [[228, -6]],
      outseam: [
        [250, 190],
        [212, 560],
        [176, 930],
      ],
      hem: [[48, 930]],
      inseam: [
        [30, 600],
        [-46, 280],
      ],
      crotch: [
        [-20, 258],
        [2, 180],
      ],
    },
    { cut: 2 },
  );
  const back = suited(
    (knee, hip) =>
      ring(
        '2',
        [36, -40],
        {
          waist: [[270, -4]],
          outseam: [
            [hip!, 190],
            [244, 560],
            [200, 930],
          ],
          hem: [[22, 930]],
          inseam: [
            [knee!, 600],
            [-104, 296],
          ],
          crotch: [
            [-52, 277],
            [4, 176],
          ],
        },
        { cut: 2 },
      ),
    { edges: ['inseam'], mm: lengthOf(front, 'inseam') - 3, between: [60, -90] },
    { edges: ['outseam'], mm: lengthOf(front, 'outseam'), between: [240, 360] },
  );
  const both = (edge: string): number => lengthOf(front, edge) + lengthOf(back, edge);
  const bag = ring(
    '5',
    [0, 0],
    {
      round: [
        [60, 10],
        [120, 70],
        [150, 170],
        [120, 230],
        [50, 236],
        [0, 200],
      ],
      opening: [],
    },
    { cut: 4 },
  );
  return draft(
    'joggers',
    [front, back, band('3', both('hem') * 0.74, 150, { cut: 2 }), band('4', both('waist') * 1.6, 120), bag],
    seams(
      '1.outseam = 2.outseam',
      '1.inseam = 2.inseam',
      '1.crotch = 1.crotch',
      '2.crotch = 2.crotch',
      '3.lower = 1.hem + 2.hem',
      '3.left = 3.right',
      '4.lower = 1.waist + 2.waist',
      '4.left = 4.right',
      '5.round = 5.round',
    ),
  );
}

/** It wraps over in front; a band runs round the fronts and the neck. */
export function bathrobe(): Draft {
  const front = ring(
    '1',
    [60, 0],
    {
      shoulder: [[250, 40]],
      armhole: [[256, 290]],
      side: [[290, 1180]],
      hem: [[-30, 1190]],
      front: [
        [-30, 640],
        [8, 250],
      ],
    },
    { cut: 2 },
  );
  const back = suited(
    y =>
      ring(
        '2',
        [0, 18],
        {
          neck: [
            [46, 12],
            [70, -6],
          ],
          shoulder: [[260, 36]],
          armhole: [[264, y!]],
          side: [[296, 1178]],
          hem: [[0, 1186]],
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [260, 320] },
  );
  const arm = suited(
    wide =>
      ring(
        '3',
        [0, 0],
        {
          cap: [
            [wide! / 2, -22],
            [wide!, 0],
          ],
          back: [[wide! - 44, 410]],
          hem: [[44, 410]],
          front: [],
        },
        { cut: 2 },
      ),
    { edges: ['cap'], mm: lengthOf(front, 'armhole') + lengthOf(back, 'armhole') + 4, between: [400, 560] },
  );
  const long = lengthOf(front, 'front') + lengthOf(back, 'neck');
  const pocket = band('6', 190, 210, { cut: 2 });
  return draft(
    'bathrobe',
    [front, back, arm, band('4', long, 116, { cut: 2 }), band('5', 1800, 90), pocket],
    seams(
      '1.shoulder = 2.shoulder',
      '1.side = 2.side',
      '3.cap = 1.armhole + 2.armhole',
      '3.front = 3.back',
      '4.lower = 1.front + 2.neck',
      '4.left = 4.left',
    ),
  );
}
