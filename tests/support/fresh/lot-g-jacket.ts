import type { Piece } from '@paperhinge/geometry';
import { lengthOf, type XY } from '../twenty-drafts.js';
import { armhole, neckline } from './block.js';
import { bend, ring, suited, wedge } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// A short jacket for a bust of 96 cm: sleeves in two parts, a collar that stands, faced in front and at the neck behind.

const stand = 20,
  deep = 84,
  wide = 76,
  fall = 46 / 126;

function jacketBody(): readonly [front: Piece, back: Piece] {
  const front = ring(
    'front',
    [-stand, deep],
    {
      neck: [[0, deep], ...neckline(deep, wide)],
      shoulder: [[202, 46]],
      armhole: armhole([202, 46], 188, [264, 238]),
      side: [
        [263.4, 286],
        [263.1, 308],
        ...bend([263.1, 308], [262, 350], [253, 410], [256, 460], 4),
        [270, 620],
      ],
      hem: bend([270, 620], [190, 628], [110, 638], [-stand, 638], 4),
      front: [],
    },
    { cut: 2, darts: { dart: wedge([263.4, 286], [263.1, 308], 142) } },
  );
  const back = suited(
    (x, y) =>
      ring(
        'back',
        [0, 20],
        {
          neck: neckline(20, 79),
          shoulder: [
            [138, 59 * fall],
            [151, 72 * fall],
            [x!, (x! - 79) * fall],
          ],
          armhole: armhole([x!, (x! - 79) * fall], 205, [258, y!]),
          side: [...bend([258, y!], [257, 330], [245, 400], [248, 460], 5), [262, 620]],
          hem: bend([262, 620], [180, 629], [100, 632], [14, 632], 4),
          centre: [
            ...bend([14, 632], [16, 520], [18, 420], [10, 320], 4),
            ...bend([10, 320], [3, 230], [0, 180], [0, 110], 4),
          ],
        },
        { cut: 2, darts: { dart: wedge([138, 59 * fall], [151, 72 * fall], 88) } },
      ),
    { edges: ['shoulder'], mm: lengthOf(front, 'shoulder') + 5, between: [190, 250] },
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [210, 280] },
  );
  return [front, back];
}

const foot: XY = [12, 430],
  heel: XY = [166, 452];

function sleeveParts(holes: number): readonly [upper: Piece, under: Piece] {
  const inner = (from: XY, to: XY): readonly XY[] => {
    const at = (t: number, off: number): XY => [
      from[0] + (to[0] - from[0]) * t - off,
      from[1] + (to[1] - from[1]) * t,
    ];
    return bend(from, at(0.3, -16), at(0.62, -16), to);
  };
  const outer = (from: XY, elbow: XY, to: XY): readonly XY[] => [
    ...bend(from, [from[0] + 14, from[1] + 90], [elbow[0] + 8, elbow[1] - 90], elbow, 5),
    ...bend(elbow, [elbow[0] - 8, elbow[1] + 90], [to[0] + 10, to[1] - 70], to, 4),
  ];
  const under = ring(
    'under sleeve',
    [28, 4],
    {
      cap: [
        ...bend([28, 4], [42, 30], [68, 36], [94, 26], 5),
        ...bend([94, 26], [124, 14], [158, -20], [172, -66], 5),
      ],
      back: outer([172, -66], [188, 176], [130, 446]),
      hem: [[40, 432]],
      front: inner([40, 432], [28, 4]).slice(0, -1),
    },
    { cut: 2 },
  );
  const upper = suited(
    (y, h, x) =>
      ring(
        'upper sleeve',
        [0, y!],
        {
          cap: [
            ...bend([0, y!], [12, -42], [56, -h!], [112, -h!]),
            ...bend([112, -h!], [164, -h!], [208, -108], [232, -66]),
          ],
          back: outer([232, -66], [x!, 176], heel),
          hem: [foot],
          front: inner(foot, [0, y!]).slice(0, -1),
        },
        { cut: 2 },
      ),
    { edges: ['front'], mm: lengthOf(under, 'front') - 3, between: [-40, 40] },
    { edges: ['cap'], mm: holes + 32 - lengthOf(under, 'cap'), between: [70, 260] },
    { edges: ['back'], mm: lengthOf(under, 'back') + 6, between: [225, 310] },
  );
  return [upper, under];
}

function standing(neck: number): Piece {
  return suited(
    x =>
      ring(
        'collar',
        [0, 0],
        {
          upper: bend([0, 0], [70, 0], [140, -2], [x! - 16, -16], 5),
          end: bend([x! - 16, -16], [x! - 4, -13], [x! + 2, 0], [x! + 1, 14], 4),
          neck: bend([x! + 1, 14], [140, 36], [70, 38], [0, 38], 5),
          centre: [],
        },
        { fold: 'centre', cut: 2 },
      ),
    { edges: ['neck'], mm: neck, between: [160, 260] },
  );
}

/** Buttoned to the neck. */
export function shortJacket(): Unnamed {
  const [front, back] = jacketBody();
  const [cf, cb] = [lengthOf(front, 'armhole'), lengthOf(back, 'armhole')];
  const [upper, under] = sleeveParts(cf + cb);
  const collar = standing(lengthOf(front, 'neck') + lengthOf(back, 'neck') - stand);
  const reach = 48;
  const facing = ring(
    'front facing',
    [-stand, deep],
    {
      neck: [[0, deep], ...neckline(deep, wide)],
      shoulder: [[wide + reach, reach * fall]],
      inner: [...bend([wide + reach, reach * fall], [120, 110], [70, 160], [66, 270]), [60, 637]],
      hem: bend([60, 637], [40, 638], [10, 638], [-stand, 638], 3),
      front: [],
    },
    { cut: 2 },
  );
  const behind = ring(
    'back facing',
    [0, 20],
    {
      neck: neckline(20, 79),
      shoulder: [[79 + reach, reach * fall]],
      outer: bend([79 + reach, reach * fall], [112, 52], [60, 78], [0, 78]),
      centre: [],
    },
    { fold: 'centre' },
  );
  const pocket = ring('pocket', [0, 0], {
    opening: [[136, 0]],
    right: [[140, 96]],
    foot: [
      ...bend([140, 96], [142, 134], [124, 148], [68, 148]),
      ...bend([68, 148], [12, 148], [-6, 134], [-4, 96]),
    ],
    left: [],
  });
  const low = lengthOf(under, 'cap');
  const lowInFront = low * 0.4;
  return unnamed({
    title: 'short jacket with sleeves in two parts',
    pieces: [
      facing,
      upper,
      back,
      collar,
      { ...pocket, cutting: { ...pocket.cutting, count: 2 } },
      under,
      behind,
      front,
    ],
    over: ['front facing', 'upper sleeve', 'front'],
    seams: [
      'back.shoulder = front.shoulder, 5 mm',
      'front.side = back.side',
      'back.centre = back.centre',
      'upper sleeve.cap + under sleeve.cap = front.armhole + back.armhole, 32 mm',
      'upper sleeve.front = under sleeve.front, -3 mm',
      'upper sleeve.back = under sleeve.back, 6 mm',
      `collar.neck = front.neck + back.neck, ${-stand} mm`,
      'collar.upper = collar.upper',
      'collar.end = collar.end',
      'front facing.front = front.front',
      'front facing.neck = front.neck',
      'back facing.neck = back.neck',
      'front facing.shoulder = back facing.shoulder',
    ],
    notches: [
      ['single', ['under sleeve.cap from its start', lowInFront]],
      ['single', ['front.armhole from side', 112], ['upper sleeve.cap from front', 112 - lowInFront]],
      ['double', ['back.armhole from side', 96], ['under sleeve.cap from back', low * 0.6 - 96]],
      ['single', ['upper sleeve.cap from front', cf - lowInFront + 14]],
      ['single', ['upper sleeve.front from hem', 190], ['under sleeve.front from hem', 190]],
      ['single', ['upper sleeve.back from cap', 190], ['under sleeve.back from cap', 188]],
      ['single', ['front.side from hem', 200], ['back.side from hem', 200]],
      ['single', ['back.centre from neck', 150]],
      ['single', ['collar.neck from centre', lengthOf(back, 'neck')]],
      ['single', ['front.neck from front', stand], ['front facing.neck from front', stand]],
      ['single', ['front.front from neck', 280], ['front facing.front from neck', 280]],
    ],
  });
}
