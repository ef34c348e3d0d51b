import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf, type XY } from '../twenty-drafts.js';
import { bend, ring, suited, wedge } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// Jeans with a yoke, slant pockets and a fly cut in one with the front; a skirt whose waist is faced to shape.

const top: XY = [112, -7],
  low: XY = [230, 148];
const mouth = bend(top, [132, 40], [182, 112], low);
const round = (from: XY, to: XY): readonly XY[] => [
  ...bend(from, [238, 236], [204, 262], [156, 258]),
  ...bend([156, 258], [104, 254], [92, 190], to),
];

function fronts(): readonly [front: Piece, hip: Piece, bag: Piece] {
  const front = ring(
    'front',
    [-35, 4],
    {
      waist: bend([-35, 4], [10, 2], [70, -2], top, 4),
      pocket: mouth,
      outseam: [
        ...bend(low, [242, 190], [238, 330], [214, 610]),
        ...bend([214, 610], [206, 720], [196, 900], [190, 1030], 4),
      ],
      hem: [[30, 1030]],
      inseam: [
        ...bend([30, 1030], [26, 900], [16, 720], [8, 610], 4),
        ...bend([8, 610], [-4, 480], [-24, 360], [-54, 262], 4),
      ],
      crotch: bend([-54, 262], [-22, 252], [-2, 226], [0, 176]),
      fly: [...bend([0, 176], [-24, 172], [-38, 158], [-38, 128], 4), [-35, 4]],
    },
    { cut: 2 },
  );
  const [sideTop, sideLow, inner]: readonly XY[] = [
    [208, -14],
    [236, 186],
    [80, -5],
  ] as const;
  const hip = ring(
    'hip piece',
    inner!,
    {
      waist: bend(inner!, [120, -7], [170, -10], sideTop!, 4),
      side: bend(sideTop!, [220, 50], [230, 110], sideLow!, 5),
      round: round(sideLow!, inner!),
    },
    { cut: 2 },
  );
  const bag = ring(
    'bag',
    inner!,
    { waist: [top], mouth, side: [sideLow!], round: round(sideLow!, inner!) },
    { cut: 2 },
  );
  return [front, hip, bag];
}

/** Belt loops and all. */
export function jeans(): Unnamed {
  const [front, hip, bag] = fronts();
  const yoke = ring(
    'yoke',
    [0, 0],
    {
      waist: bend([0, 0], [66, 18], [134, 22], [204, 8]),
      side: [[213, 52]],
      lower: bend([213, 52], [150, 76], [70, 84], [-9, 84]),
      centre: [],
    },
    { cut: 2 },
  );
  const lap = 38;
  const back = suited(
    (x, y, out) =>
      ring(
        'back',
        [34, 30],
        {
          top: bend([34, 30], [110, 38], [190, 44], [x!, 42], 4),
          outseam: [
            ...bend([x!, 42], [out!, 120], [out! + 6, 280], [228, 610]),
            ...bend([228, 610], [218, 720], [208, 900], [202, 1030], 4),
          ],
          hem: [[18, 1030]],
          inseam: [
            ...bend([18, 1030], [14, 900], [4, 720], [-6, 610], 4),
            ...bend([-6, 610], [-22, 480], [-60, 370], [-116, y!], 4),
          ],
          crotch: [...bend([-116, y!], [-60, y! + 2], [-2, 236], [10, 150]), [34, 30]],
        },
        { cut: 2 },
      ),
    { edges: ['top'], mm: lengthOf(yoke, 'lower'), between: [220, 290] },
    { edges: ['inseam'], mm: lengthOf(front, 'inseam') - 4, between: [230, 320] },
    {
      edges: ['outseam'],
      mm: lengthOf(front, 'outseam') + lengthOf(hip, 'side') - lap - lengthOf(yoke, 'side'),
      between: [200, 420],
    },
  );
  const waist = lengthOf(front, 'waist') + lengthOf(hip, 'waist') - 32 + lengthOf(yoke, 'waist');
  const waistband = suited(
    x =>
      ring(
        'waistband',
        [0, 0],
        {
          upper: bend([0, 0], [120, 0], [280, -16], [x! - 8, -52]),
          end: [[x!, -14]],
          lower: bend([x!, -14], [290, 24], [124, 40], [0, 40]),
          centre: [],
        },
        { fold: 'centre', cut: 2 },
      ),
    { edges: ['lower'], mm: waist, between: [300, 560] },
  );
  const seat = {
    ...ring('seat pocket', [0, 0], {
      opening: [[148, 0]],
      right: [[140, 124]],
      'foot right': [[74, 154]],
      'foot left': [[8, 124]],
      left: [],
    }),
  };
  const outside = lengthOf(front, 'outseam') - 60,
    knee = 420;
  return unnamed({
    title: 'jeans with slant pockets',
    pieces: [
      yoke,
      front,
      band('loop strip', 420, 32),
      { ...seat, cutting: { ...seat.cutting, count: 2 } },
      hip,
      waistband,
      back,
      bag,
    ],
    over: ['back', 'yoke', 'waistband'],
    seams: [
      'back.top = yoke.lower',
      'yoke.centre = yoke.centre',
      'back.crotch = back.crotch',
      'front.crotch = front.crotch',
      'back.inseam = front.inseam, -4 mm',
      `front.outseam + hip piece.side = back.outseam + yoke.side, ${lap} mm`,
      'bag.mouth = front.pocket',
      'bag.round = hip piece.round',
      'waistband.lower = front.waist + hip piece.waist + yoke.waist, -32 mm',
      'waistband.upper = waistband.upper',
      'waistband.end = waistband.end',
    ],
    notches: [
      ['single', ['front.inseam from hem', knee], ['back.inseam from hem', knee - 1]],
      ['single', ['front.outseam from hem', knee], ['back.outseam from hem', knee]],
      ['single', ['front.outseam from hem', outside], ['back.outseam from hem', outside]],
      ['single', ['hip piece.side from round', lap]],
      ['single', ['hip piece.waist from round', 32]],
      ['double', ['back.top from crotch', 95], ['yoke.lower from centre', 95]],
      ['single', ['waistband.lower from centre', lengthOf(yoke, 'waist')]],
      ['single', ['waistband.lower from end', 36]],
      ['single', ['back.crotch from inseam', 120]],
    ],
  });
}

/** A skirt to the knee with darts, a zip in the back seam and two patch pockets. */
export function facedSkirt(): Unnamed {
  const front = ring(
    'front',
    [0, 0],
    {
      waist: [
        ...bend([0, 0], [30, 0], [60, -1], [86, -2.5], 3),
        [106, -4],
        ...bend([106, -4], [140, -7], [170, -11], [200, -16], 3),
      ],
      side: [...bend([200, -16], [214, 60], [238, 120], [243, 196]), [274, 600]],
      hem: bend([274, 600], [190, 618], [90, 624], [0, 624], 4),
      centre: [],
    },
    { fold: 'centre', darts: { dart: wedge([86, -2.5], [106, -4], 92) } },
  );
  const back = suited(
    x =>
      ring(
        'back',
        [0, 6],
        {
          waist: [
            ...bend([0, 6], [30, 5], [60, 3], [82, 1], 3),
            [110, -2.5],
            ...bend([110, -2.5], [140, -6], [176, -11], [208, -16], 3),
          ],
          side: [...bend([208, -16], [x!, 60], [240, 120], [245, 196]), [274, 600]],
          hem: bend([274, 600], [190, 618], [90, 624], [0, 624], 4),
          centre: [],
        },
        { cut: 2, darts: { dart: wedge([82, 1], [110, -2.5], 130) } },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [190, 300] },
  );
  const facing = (name: string, waist: number, cut: { fold?: string; cut?: number }): Piece =>
    suited(
      x =>
        ring(
          name,
          [0, 0],
          {
            waist: bend([0, 0], [60, 0], [120, -10], [x!, -34]),
            side: [[x! + 16, 24]],
            outer: bend([x! + 16, 24], [130, 52], [66, 62], [0, 62]),
            centre: [],
          },
          cut,
        ),
      { edges: ['waist'], mm: waist, between: [140, 230] },
    );
  const [f, b] = [lengthOf(front, 'waist'), lengthOf(back, 'waist')];
  const pocket = ring('pocket', [0, 0], {
    opening: [[150, 0]],
    round: [
      [150, 110],
      ...bend([150, 110], [150, 150], [132, 166], [75, 168]),
      ...bend([75, 168], [18, 166], [0, 150], [0, 110]),
    ],
  });
  return unnamed({
    title: 'skirt with shaped facings',
    pieces: [
      facing('front facing', f, { fold: 'centre' }),
      back,
      { ...pocket, cutting: { ...pocket.cutting, count: 2 } },
      front,
      facing('back facing', b, { cut: 2 }),
    ],
    over: ['front', 'front facing'],
    seams: [
      'front.side = back.side',
      'back.centre = back.centre',
      'front facing.side = back facing.side',
      'front facing.waist = front.waist',
      'back facing.waist = back.waist',
    ],
    notches: [
      ['single', ['front.side from waist', 205], ['back.side from waist', 205]],
      ['single', ['back.centre from waist', 180]],
      ['single', ['front.waist from side', f / 2], ['front facing.waist from side', f / 2]],
      ['double', ['back.waist from side', b / 2], ['back facing.waist from side', b / 2]],
    ],
  });
}
