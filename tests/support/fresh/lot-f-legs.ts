import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf, type XY } from '../twenty-drafts.js';
import { arm } from './block.js';
import { leg, legEdges, torso } from './lots-body.js';
import { bend, ring, suited, wedge } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// Culottes with a shaped band, and a jumpsuit buttoned to the waist.

function culotteLegs(): readonly [front: Piece, back: Piece] {
  const front = ring(
    'front',
    [0, 6],
    {
      waist: [
        ...bend([0, 6], [30, 6], [60, 4], [88, 2], 3),
        [110, 0],
        ...bend([110, 0], [140, -3], [176, -8], [206, -14], 3),
      ],
      side: [
        ...bend([206, -14], [222, 60], [246, 120], [254, 190], 4),
        ...bend([254, 190], [268, 300], [300, 500], [316, 690], 4),
      ],
      hem: bend([316, 690], [200, 710], [40, 710], [-128, 690], 5),
      inseam: bend([-128, 690], [-116, 560], [-88, 400], [-72, 292], 4),
      crotch: [
        ...bend([-72, 292], [-30, 291], [-2, 250], [0, 196], 5),
        ...bend([0, 196], [0, 130], [0, 70], [0, 6], 3).slice(0, -1),
      ],
    },
    { cut: 2, darts: { dart: wedge([88, 2], [110, 0], 90) } },
  );
  const back = suited(
    (fork, foot) =>
      ring(
        'back',
        [16, -8],
        {
          waist: [
            ...bend([16, -8], [50, -4], [70, -4], [96, -4], 3),
            [124, -6],
            ...bend([124, -6], [160, -8], [190, -11], [220, -16], 3),
          ],
          side: [
            ...bend([220, -16], [238, 60], [262, 120], [270, 190], 4),
            ...bend([270, 190], [282, 300], [316, 500], [332, foot!], 4),
          ],
          hem: bend([332, foot!], [200, 712], [20, 712], [-168, 690], 5),
          inseam: bend([-168, 690], [-154, 560], [-136, 400], [-122, fork!], 4),
          crotch: [
            ...bend([-122, fork!], [-64, fork! - 2], [-6, 250], [0, 186], 5),
            ...bend([0, 186], [4, 120], [10, 60], [16, -8], 3).slice(0, -1),
          ],
        },
        { cut: 2, darts: { dart: wedge([96, -4], [124, -6], 130) } },
      ),
    { edges: ['inseam'], mm: lengthOf(front, 'inseam'), between: [250, 330] },
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [660, 720] },
  );
  return [front, back];
}

/** To the calf; darts, a zip behind, a band in three parts cut double, pocket bags in the side seams. */
export function culottes(): Unnamed {
  const [front, back] = culotteLegs();
  const [f, b] = [lengthOf(front, 'waist'), lengthOf(back, 'waist')];
  const part = (name: string, long: number, cut: { fold?: string; cut: number }): Piece =>
    suited(
      x =>
        ring(
          name,
          [0, 0],
          {
            upper: bend([0, 0], [x! * 0.4, 0], [x! * 0.8, -6], [x!, -15], 4),
            side: [[x! + 6, 34]],
            lower: bend([x! + 6, 34], [x! * 0.82, 43], [x! * 0.4, 50], [0, 50], 4),
            centre: [],
          },
          cut,
        ),
      { edges: ['lower'], mm: long, between: [long - 40, long + 10] },
    );
  const bag = ring(
    'bag',
    [0, 0],
    {
      opening: [[22, 168]],
      round: [
        ...bend([22, 168], [14, 240], [-50, 270], [-100, 250], 4),
        ...bend([-100, 250], [-160, 226], [-150, 140], [-120, 80], 4),
        ...bend([-120, 80], [-96, 30], [-50, 0], [0, 0], 4).slice(0, -1),
      ],
    },
    { cut: 4 },
  );
  return unnamed({
    title: 'culottes with a shaped band',
    pieces: [
      part('front band', f, { fold: 'centre', cut: 2 }),
      back,
      bag,
      part('back band', b, { cut: 4 }),
      front,
    ],
    over: ['back', 'back band'],
    seams: [
      'front.side = back.side',
      'front.inseam = back.inseam',
      'front.crotch = front.crotch',
      'back.crotch = back.crotch',
      'front band.lower = front.waist',
      'back band.lower = back.waist',
      'front band.side = back band.side',
      'front band.upper = front band.upper',
      'back band.upper = back band.upper',
      'back band.centre = back band.centre',
      'bag.round = bag.round',
    ],
    notches: [
      [
        'single',
        ['front.side from waist', 46],
        ['back.side from waist', 46],
        ['bag.opening from its start', 10],
      ],
      [
        'single',
        ['front.side from waist', 196],
        ['back.side from waist', 196],
        ['bag.opening from its start', 160],
      ],
      ['single', ['front.inseam from crotch', 180], ['back.inseam from crotch', 180]],
      ['single', ['front.crotch from inseam', 110]],
      ['double', ['back.crotch from inseam', 140]],
      ['single', ['back.crotch from waist', 170]],
      ['single', ['front.waist from side', 70], ['front band.lower from side', 70]],
      ['double', ['back.waist from side', 60], ['back band.lower from side', 60]],
    ],
  });
}

const mouthTop: XY = [166, 4],
  mouthFoot: XY = [242, 168];
const mouth = bend(mouthTop, [186, 60], [212, 124], mouthFoot, 4);
const bagRound = (from: XY, to: XY): readonly XY[] => [
  ...bend(from, [238, 270], [196, 292], [150, 286], 4),
  ...bend([150, 286], [100, 278], [96, 190], to, 4),
];
const lap = { waist: 62, side: 34 };

function jumpsuitLegs(): readonly [front: Piece, back: Piece, hip: Piece, bag: Piece] {
  const { waist, outseam, ...rest } = legEdges({
    waist: [[0, 6], [120, 5], mouthTop],
    hip: [244, 210],
    fork: [-58, 300],
    bow: [0, 206],
    knee: [-4, 224, 640],
    hem: [12, 196, 1010],
  });
  const front = ring(
    'front trousers',
    [0, 6],
    {
      waist: [[80, 5.4], mouthTop],
      pocket: mouth,
      outseam: [
        ...bend(mouthFoot, [247, 240], [246, 330], [238, 440], 4),
        ...bend([238, 440], [230, 540], [218, 600], [210, 690], 3),
        ...bend([210, 690], [204, 800], [198, 900], [196, 1010], 3),
      ],
      ...rest,
      crotch: rest.crotch!.slice(0, -1),
    },
    { cut: 2 },
  );
  const [inner, sideTop, sideLow]: readonly XY[] = [
    [104, 5],
    [228, 2],
    [246, 202],
  ];
  const hip = ring(
    'hip piece',
    inner!,
    {
      waist: [sideTop!],
      side: bend(sideTop!, [236, 60], [244, 130], sideLow!, 4),
      round: bagRound(sideLow!, inner!).slice(0, -1),
    },
    { cut: 2 },
  );
  const bag = ring(
    'bag',
    inner!,
    { waist: [mouthTop], mouth, side: [sideLow!], round: bagRound(sideLow!, inner!).slice(0, -1) },
    { cut: 2 },
  );
  const back = suited(
    (fork, top) =>
      leg('back trousers', {
        waist: [
          [32, -26],
          [130, -12],
          [254, top!],
        ],
        hip: [270, 210],
        fork: [-108, fork!],
        bow: [4, 196],
        dip: -20,
        knee: [-18, 242, 640],
        hem: [4, 212, 1010],
      }),
    { edges: ['inseam'], mm: lengthOf(front, 'inseam') - 3, between: [270, 340] },
    {
      edges: ['outseam'],
      mm: lengthOf(front, 'outseam') + lengthOf(hip, 'side') - lap.side,
      between: [-50, 60],
    },
  );
  return [front, back, hip, bag];
}

/** A band collar, elastic in a strip inside the waist seam, slanting pockets, short sleeves with turned-up bands. */
export function jumpsuit(): Unnamed {
  const [trousers, backTrousers, hip, bag] = jumpsuitLegs();
  const stand = 16;
  const waist = lengthOf(trousers, 'waist') + lengthOf(hip, 'waist') - lap.waist;
  const front = suited(
    x =>
      torso(
        'front',
        {
          deep: 90,
          wide: 74,
          stand,
          shoulder: 124,
          slope: 0.38,
          across: 178,
          pit: [254, 230],
          side: [[x!, 430]],
          foot: bend([x!, 430], [150, 434], [60, 436], [-stand, 436], 4),
          footName: 'waist',
        },
        { cut: 2 },
      ),
    { edges: ['waist'], mm: waist + stand, between: [200, 270] },
  );
  const back = suited(
    (x, y) =>
      torso('back', {
        deep: 20,
        wide: 76,
        shoulder: 128,
        slope: 0.34,
        across: 192,
        pit: [258, y!],
        side: [[x!, 428]],
        foot: bend([x!, 428], [150, 430], [60, 431], [0, 431], 4),
        footName: 'waist',
      }),
    { edges: ['waist'], mm: lengthOf(backTrousers, 'waist'), between: [200, 280] },
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [190, 260] },
  );
  const [cf, cb] = [lengthOf(front, 'armhole'), lengthOf(back, 'armhole')];
  const sleeve = arm('sleeve', { cap: cf + cb + 12, upper: 370, hem: 344, long: 110, high: [40, 200] });
  const necks = lengthOf(front, 'neck') + lengthOf(back, 'neck');
  const collar = suited(
    x =>
      ring(
        'collar',
        [0, 0],
        {
          upper: bend([0, 0], [x! * 0.5, 0], [x! * 0.75, -6], [x! - 10, -18], 5),
          end: bend([x! - 10, -18], [x!, -14], [x! + 3, 0], [x! + 2, 14], 3),
          neck: bend([x! + 2, 14], [x! * 0.75, 28], [x! * 0.5, 34], [0, 34], 5),
          centre: [],
        },
        { fold: 'centre', cut: 2 },
      ),
    { edges: ['neck'], mm: necks, between: [necks - 40, necks + 10] },
  );
  return unnamed({
    title: 'jumpsuit with buttons and slanting pockets',
    pieces: [
      hip,
      back,
      trousers,
      band('elastic strip', 2 * (lengthOf(back, 'waist') + waist), 60),
      collar,
      backTrousers,
      sleeve,
      front,
      band('sleeve band', 344, 90, { cut: 2 }),
      bag,
    ],
    over: ['front trousers', 'hip piece', 'bag', 'back', 'collar'],
    seams: [
      'back.shoulder = front.shoulder, 4 mm',
      'front.side = back.side',
      'sleeve.cap = front.armhole + back.armhole, 12 mm',
      'sleeve.front = sleeve.back',
      'sleeve band.upper = sleeve.hem',
      'sleeve band.left = sleeve band.right',
      'collar.neck = front.neck + back.neck',
      'collar.upper = collar.upper',
      'collar.end = collar.end',
      `front.waist = front trousers.waist + hip piece.waist, ${stand - lap.waist} mm`,
      'back.waist = back trousers.waist',
      `elastic strip.lower = front trousers.waist + hip piece.waist + back trousers.waist, 2 x, ${-2 * lap.waist} mm`,
      `front trousers.outseam + hip piece.side = back trousers.outseam, ${lap.side} mm`,
      'back trousers.inseam = front trousers.inseam, -3 mm',
      'front trousers.crotch = front trousers.crotch',
      'back trousers.crotch = back trousers.crotch',
      'bag.mouth = front trousers.pocket',
      'bag.round = hip piece.round',
    ],
    notches: [
      ['single', ['front.armhole from side', 92], ['sleeve.cap from front', 93]],
      ['double', ['back.armhole from side', 96], ['sleeve.cap from back', 98]],
      ['single', ['sleeve.cap from front', cf + 6]],
      ['single', ['collar.neck from end', lengthOf(front, 'neck')]],
      ['single', ['collar.neck from end', stand], ['front.neck from centre', stand]],
      ['single', ['front.waist from centre', stand]],
      ['single', ['front.side from armhole', 100], ['back.side from armhole', 100]],
      ['single', ['front trousers.outseam from hem', 370], ['back trousers.outseam from hem', 370]],
      ['single', ['front trousers.inseam from hem', 370], ['back trousers.inseam from hem', 369]],
      ['single', ['hip piece.side from round', lap.side]],
      ['single', ['hip piece.waist from round', lap.waist]],
      ['single', ['front trousers.crotch from inseam', 100]],
      ['double', ['back trousers.crotch from inseam', 140]],
    ],
  });
}
