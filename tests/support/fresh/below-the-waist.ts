import { band, type Draft, draft, lengthOf } from '../twenty-drafts.js';
import { ring, seams, suited } from './ring.js';

// Trousers with five pockets, and a dirndl with its apron.

/** A yoke behind, pockets cut into the front with a hip piece and a bag under each, a pocket on each seat. */
export function fivePockets(): Draft {
  const front = ring(
    '1',
    [12, 0],
    {
      waist: [[118, -6]],
      pocket: [
        [128, 44],
        [160, 76],
        [232, 84],
      ],
      outseam: [
        [246, 220],
        [214, 560],
        [200, 1010],
      ],
      hem: [[26, 1010]],
      inseam: [
        [14, 620],
        [-46, 262],
      ],
      crotch: [
        [-14, 226],
        [4, 150],
      ],
    },
    { cut: 2 },
  );
  const hip = ring(
    '2',
    [80, -4],
    {
      waist: [[208, -12]],
      side: [
        [222, 40],
        [232, 84],
      ],
      low: [[240, 150]],
      inner: [
        [150, 140],
        [86, 90],
      ],
    },
    { cut: 2 },
  );
  const bag = ring(
    '3',
    [118, -6],
    {
      mouth: [
        [128, 44],
        [160, 76],
        [232, 84],
      ],
      side: [[240, 220]],
      round: [
        [180, 260],
        [110, 250],
      ],
      front: [
        [88, 120],
        [80, -4],
      ],
      waist: [],
    },
    { cut: 2 },
  );
  const yoke = ring(
    '5',
    [0, 0],
    {
      waist: [
        [96, 10],
        [196, 34],
      ],
      side: [[190, 76]],
      lower: [[0, 84]],
      centre: [],
    },
    { cut: 2 },
  );
  const long = lengthOf(front, 'outseam') + lengthOf(hip, 'side') - lengthOf(yoke, 'side');
  const back = suited(
    (knee, out) =>
      ring(
        '4',
        [44, 62],
        {
          upper: [[44 + lengthOf(yoke, 'lower') - 2, 40]],
          outseam: [
            [out, 230],
            [236, 560],
            [226, 1010],
          ],
          hem: [[22, 1010]],
          inseam: [
            [knee, 620],
            [-104, 276],
          ],
          crotch: [
            [-40, 242],
            [8, 160],
          ],
        },
        { cut: 2 },
      ),
    { edges: ['inseam'], mm: lengthOf(front, 'inseam') - 4, between: [30, -70] },
    { edges: ['outseam'], mm: long, between: [262, 380] },
  );
  const waist = lengthOf(front, 'waist') + lengthOf(hip, 'waist') - 38 + lengthOf(yoke, 'waist');
  const seat = ring('7', [0, 0], {
    opening: [[150, 0]],
    right: [[142, 120]],
    'foot right': [[75, 152]],
    'foot left': [[8, 120]],
    left: [],
  });
  return draft(
    'trousers with five pockets',
    [
      front,
      hip,
      bag,
      back,
      yoke,
      band('6', 2 * waist + 40, 76),
      { ...seat, cutting: { ...seat.cutting, count: 2 } },
    ],
    seams(
      '3.mouth = 1.pocket',
      '4.upper = 5.lower',
      '5.centre = 5.centre',
      '4.crotch = 4.crotch',
      '1.crotch = 1.crotch',
      '1.inseam = 4.inseam',
      '1.outseam + 2.side = 4.outseam + 5.side',
      '6.lower = 1.waist + 2.waist + 5.waist',
    ),
  );
}

/** A bodice of four panels closed in front, a skirt gathered to it, an apron gathered to its tie. */
export function dirndl(): Draft {
  const front = ring(
    '1',
    [0, 150],
    {
      neck: [
        [52, 146],
        [84, 10],
      ],
      shoulder: [[122, 18]],
      armhole: [
        [124, 90],
        [132, 130],
      ],
      panel: [
        [118, 210],
        [98, 400],
      ],
      waist: [[0, 412]],
      centre: [],
    },
    { cut: 2 },
  );
  const side = suited(
    bow =>
      ring(
        '2',
        [0, 130],
        {
          armhole: [
            [24, 186],
            [92, 214],
          ],
          side: [[82, 398]],
          waist: [[-2, 402]],
          panel: [[bow, 210]],
        },
        { cut: 2 },
      ),
    { edges: ['panel'], mm: lengthOf(front, 'panel'), between: [0, -60] },
  );
  const back = suited(
    y =>
      ring(
        '3',
        [0, 60],
        {
          neck: [
            [60, 52],
            [86, 6],
          ],
          shoulder: [[124, 14]],
          armhole: [
            [128, 120],
            [150, 190],
            [214, y],
          ],
          side: [[188, 400]],
          waist: [[0, 404]],
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['side'], mm: lengthOf(side, 'side'), between: [190, 250] },
  );
  const skirt = (name: string, wide: number) => {
    const whole = band(name, wide, 720);
    return whole;
  };
  const apron = band('6', 620, 660);
  const tie = band('7', 1900, 70);
  return draft(
    'dirndl with its apron',
    [front, side, back, skirt('4', 1000), skirt('5', 940), apron, tie],
    seams(
      '1.panel = 2.panel',
      '1.shoulder = 3.shoulder',
      '2.side = 3.side',
      '4.right = 5.left',
      '4.left = 5.right',
      '4.upper = 1.waist + 2.waist',
      '5.upper = 3.waist',
    ),
  );
}
