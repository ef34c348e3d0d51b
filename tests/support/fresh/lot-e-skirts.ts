import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf, type XY } from '../twenty-drafts.js';
import { arm, neckline } from './block.js';
import { shoulderEnd, torso } from './lots-body.js';
import { bend, ring, suited, wedge } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// A skirt of eight flaring panels, and a dress that wraps over in front.

interface Panel {
  /** Across at the waist, at the hip and at the hem, from a left line at x = 0. */
  readonly across: readonly [waist: number, hip: number, hem: number];
  readonly drop: number;
  readonly long: number;
}

/** A panel whose left lies on the fold. */
const middlePanel = (name: string, { across: [waist, hip, hem], drop, long }: Panel): Piece =>
  ring(
    name,
    [0, 0],
    {
      waist: bend([0, 0], [waist * 0.36, 0], [waist - 20, 4.6 - drop], [waist, -drop], 3),
      panel: [
        ...bend([waist, -drop], [waist + (hip - waist) * 0.6, 60], [hip - 3, 130], [hip, 190], 4),
        ...bend(
          [hip, 190],
          [hip + (hem - hip) * 0.2, 300],
          [hem - (hem - hip) * 0.3, 540],
          [hem, long - hem * 0.067],
          3,
        ),
      ],
      hem: bend(
        [hem, long - hem * 0.067],
        [hem - 40, long - hem * 0.067 + 5.3],
        [hem * 0.4, long],
        [0, long],
        4,
      ),
      centre: [],
    },
    { fold: 'centre' },
  );

const sidePanel = (
  name: string,
  inner: string,
  [waist, hip, hem]: readonly [number, number, number],
  [sx, hx, ex]: readonly [number, number, number],
  [innerFoot, sideFoot]: readonly [number, number],
): Piece =>
  ring(
    name,
    [waist, 0],
    {
      waist: bend([waist, 0], [waist + 40, 5], [sx - 40, -4], [sx, -14], 4),
      side: [
        ...bend([sx, -14], [sx + (hx - sx) * 0.6, 50], [hx - 4, 120], [hx, 190], 4),
        ...bend([hx, 190], [hx + 14, 300], [ex - 22, 540], [ex, sideFoot], 3),
      ],
      hem: bend([ex, sideFoot], [ex - 70, sideFoot + 12.4], [hem + 70, innerFoot + 9], [hem, innerFoot], 5),
      [inner]: [
        ...bend([hem, innerFoot], [hem + 18, 540], [hip - 16, 320], [hip, 190], 3),
        ...bend([hip, 190], [hip + 3, 130], [waist - (waist - hip) * 0.4, 60], [waist, 0], 4).slice(0, -1),
      ],
    },
    { cut: 2 },
  );

/** A zip in the left side, a doubled band that laps. */
export function panelledSkirt(): Unnamed {
  const frontMiddle = middlePanel('front middle', { across: [62, 86, 150], drop: 7, long: 700 });
  const panel = lengthOf(frontMiddle, 'panel');
  const front = suited(y => sidePanel('front', 'panel', [0, -22, -84], [124, 150, 214], [y!, 664]), {
    edges: ['panel'],
    mm: panel,
    between: [620, 740],
  });
  const back = suited(y => sidePanel('back', 'panel', [0, -24, -86], [116, 152, 218], [682, y!]), {
    edges: ['side'],
    mm: lengthOf(front, 'side'),
    between: [600, 720],
  });
  const backMiddle = suited(
    long => middlePanel('back middle', { across: [66, 96, 160], drop: 8, long: long! }),
    { edges: ['panel'], mm: lengthOf(back, 'panel'), between: [640, 760] },
  );
  const [m, f, b, n] = [frontMiddle, front, back, backMiddle].map(one => lengthOf(one, 'waist')) as [
    number,
    number,
    number,
    number,
  ];
  const round = 2 * (m + f + b + n) + 30;
  return unnamed({
    title: 'skirt of eight panels',
    pieces: [front, backMiddle, band('waistband', round, 70), back, frontMiddle],
    over: ['back', 'back middle'],
    seams: [
      'front middle.panel = front.panel',
      'front.side = back.side',
      'back middle.panel = back.panel',
      'waistband.lower = front middle.waist + front.waist + back.waist + back middle.waist, 2 x, 30 mm',
    ],
    notches: [
      ['single', ['front middle.panel from waist', 195], ['front.panel from waist', 195]],
      ['single', ['front.side from waist', 206], ['back.side from waist', 206]],
      ['double', ['back middle.panel from waist', 195], ['back.panel from waist', 195]],
      ['single', ['waistband.lower from right', 2 * (m + f)]],
      ['single', ['waistband.lower from left', 30]],
      ['single', ['waistband.lower from right', m + f]],
    ],
  });
}

function wrapBodice(): readonly [front: Piece, back: Piece, facing: Piece] {
  const neck: XY = [70, 0];
  const end = shoulderEnd(neck, 116, 0.4);
  const edge = bend([-128, 428], [-90, 330], [26, 150], neck, 6).slice(0, -1);
  const front = ring(
    'front',
    neck,
    {
      shoulder: [end],
      armhole: [
        ...bend(end, [164, 90], [160, 120], [166, 150], 4),
        ...bend([166, 150], [172, 196], [204, 216], [238, 218], 4),
      ],
      side: [[218, 402]],
      waist: [
        ...bend([218, 402], [190, 403], [150, 410], [122, 414], 3),
        [90, 416],
        ...bend([90, 416], [40, 420], [-60, 426], [-128, 428], 4),
      ],
      edge,
    },
    { cut: 2, darts: { dart: wedge([122, 414], [90, 416], 124) } },
  );
  const back = suited(
    y =>
      torso(
        'back',
        {
          deep: 22,
          wide: 72,
          shoulder: 121,
          slope: 0.36,
          across: 178,
          pit: [234, y!],
          side: [[208, 402]],
          foot: [
            ...bend([208, 402], [176, 402], [140, 406], [104, 409], 3),
            [80, 409.5],
            ...bend([80, 409.5], [50, 410], [20, 410], [0, 410], 3),
          ],
          footName: 'waist',
        },
        { fold: 'centre', darts: { dart: wedge([104, 409], [80, 409.5], 150) } },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [180, 260] },
  );
  const out = shoulderEnd(neck, 50, 0.4);
  const facing = ring(
    'front facing',
    neck,
    {
      shoulder: [out],
      outer: bend(out, [80, 170], [-20, 350], [-58, 425], 6),
      waist: [[-128, 428]],
      edge,
    },
    { cut: 2 },
  );
  return [front, back, facing];
}

/** It ties at the side: darted bodice, flaring skirt of three parts, sleeves to the elbow. */
export function wrapDress(): Unnamed {
  const [front, back, frontFacing] = wrapBodice();
  const [cf, cb] = [lengthOf(front, 'armhole'), lengthOf(back, 'armhole')];
  const sleeve = arm('sleeve', { cap: cf + cb + 24, upper: 334, hem: 286, long: 210 });
  const nape = shoulderEnd([72, 0], 50, 0.36);
  const backFacing = ring(
    'back facing',
    [0, 22],
    {
      neck: neckline(22, 72),
      shoulder: [nape],
      outer: bend(nape, [110, 60], [60, 84], [0, 84]),
      centre: [],
    },
    { fold: 'centre' },
  );
  const frontSkirt = suited(
    x =>
      ring(
        'front skirt',
        [0, 0],
        {
          waist: bend([0, 0], [x! * 0.4, 2], [x! * 0.7, -16], [x!, -52], 5),
          side: [
            ...bend([x!, -52], [x! + 24, 30], [x! + 44, 90], [x! + 62, 150], 3),
            ...bend([x! + 62, 150], [x! + 88, 260], [x! + 118, 450], [x! + 150, 590], 3),
          ],
          hem: bend([x! + 150, 590], [x! * 0.8, 650], [x! * 0.4, 668], [0, 668], 5),
          edge: [],
        },
        { cut: 2 },
      ),
    { edges: ['waist'], mm: lengthOf(front, 'waist'), between: [240, 380] },
  );
  const backSkirt = suited(
    (x, y) =>
      ring(
        'back skirt',
        [0, 0],
        {
          waist: bend([0, 0], [x! * 0.5, 0], [x! * 0.8, -8], [x!, -26], 4),
          side: [
            ...bend([x!, -26], [x! + 26, 50], [x! + 48, 110], [x! + 64, 176], 3),
            ...bend([x! + 64, 176], [x! + 88, 276], [x! + 116, y! - 140], [x! + 146, y!], 3),
          ],
          hem: bend([x! + 146, y!], [x! * 1.1, y! + 34], [x! * 0.5, y! + 50], [0, y! + 50], 5),
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['waist'], mm: lengthOf(back, 'waist'), between: [140, 240] },
    { edges: ['side'], mm: lengthOf(frontSkirt, 'side'), between: [540, 700] },
  );
  return unnamed({
    title: 'wrap dress',
    pieces: [
      backSkirt,
      frontFacing,
      sleeve,
      front,
      band('tie', 960, 70, { cut: 2 }),
      backFacing,
      frontSkirt,
      back,
    ],
    over: ['front', 'sleeve', 'back facing'],
    seams: [
      'back.shoulder = front.shoulder, 5 mm',
      'front.side = back.side',
      'sleeve.cap = front.armhole + back.armhole, 24 mm',
      'sleeve.front = sleeve.back',
      'front skirt.waist = front.waist',
      'back skirt.waist = back.waist',
      'front skirt.side = back skirt.side',
      'front facing.edge = front.edge',
      'back facing.neck = back.neck',
      'front facing.shoulder = back facing.shoulder',
    ],
    notches: [
      ['single', ['front.armhole from side', 88], ['sleeve.cap from front', 90]],
      ['double', ['back.armhole from side', 92], ['sleeve.cap from back', 95]],
      ['single', ['sleeve.cap from front', cf + 11]],
      ['single', ['front.edge from waist', 190], ['front facing.edge from waist', 190]],
      ['single', ['front.waist from side', 170], ['front skirt.waist from side', 170]],
      ['double', ['back.waist from side', 70], ['back skirt.waist from side', 70]],
      ['single', ['front skirt.side from waist', 205], ['back skirt.side from waist', 205]],
      ['single', ['front.side from waist', 60]],
    ],
  });
}
