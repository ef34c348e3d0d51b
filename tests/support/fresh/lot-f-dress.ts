import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf, type XY } from '../twenty-drafts.js';
import { arm, neckline } from './block.js';
import { arc, patch, shoulderEnd, torso, torsoEdges, whole } from './lots-body.js';
import { bend, ring, suited } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// A dress of panels with a skirt of half a circle, and a child's dress with a high waist.

const tip: XY = shoulderEnd([96, 0], 72, 0.4);
const split: XY = [154, 126];
const pit: XY = [236, 214];
const upperHole = bend(tip, [151, 57], [150, 95], split, 3);
const lowerHole = (end: XY): readonly XY[] => bend(split, [154, 174], [190, end[1]], end, 5);

interface Bodice {
  readonly front: Piece;
  readonly side: Piece;
  readonly back: Piece;
  readonly backSide: Piece;
}

function frontPanels(): readonly [front: Piece, side: Piece] {
  const front = ring(
    'front',
    [0, 128],
    {
      neck: neckline(128, 96),
      shoulder: [tip],
      armhole: upperHole,
      panel: [
        ...bend(split, [130, 140], [108, 190], [104, 246], 4),
        ...bend([104, 246], [102, 300], [94, 360], [86, 414], 3),
      ],
      waist: bend([86, 414], [58, 417], [28, 418], [0, 418], 3),
      centre: [],
    },
    { fold: 'centre' },
  );
  const side = suited(
    x =>
      ring(
        'front side',
        split,
        {
          armhole: lowerHole(pit),
          side: [[220, 400]],
          waist: bend([220, 400], [184, 402], [150, 408], [114, 414], 3),
          panel: [
            ...bend([114, 414], [108, 360], [x! + 2, 300], [x!, 246], 3),
            ...bend([x!, 246], [x! - 2, 190], [128, 134], split, 4).slice(0, -1),
          ],
        },
        { cut: 2 },
      ),
    { edges: ['panel'], mm: lengthOf(front, 'panel') + 4, between: [116, 76] },
  );
  return [front, side];
}

function backPanels(sides: number): readonly [back: Piece, side: Piece] {
  const back = ring(
    'back',
    [0, 54],
    {
      neck: neckline(54, 96),
      shoulder: [tip],
      armhole: bend(tip, [152, 58], [158, 96], [162, 132], 3),
      panel: [
        ...bend([162, 132], [136, 144], [116, 190], [106, 250], 4),
        ...bend([106, 250], [98, 300], [84, 350], [76, 410], 3),
      ],
      waist: bend([76, 410], [54, 412], [30, 413], [10, 413], 3),
      centre: bend([10, 413], [9, 330], [2, 240], [0, 54], 4).slice(0, -1),
    },
    { cut: 2 },
  );
  const side = suited(
    (y, x) =>
      ring(
        'back side',
        [162, 132],
        {
          armhole: bend([162, 132], [163, 176], [194, y!], [236, y!], 5),
          side: [[212, 400]],
          waist: bend([212, 400], [180, 402], [146, 406], [110, 410], 3),
          panel: [
            ...bend([110, 410], [112, 350], [x! + 4, 300], [x! + 4, 250], 3),
            ...bend([x! + 4, 250], [x! + 6, 196], [138, 142], [162, 132], 4).slice(0, -1),
          ],
        },
        { cut: 2 },
      ),
    { edges: ['side'], mm: sides, between: [180, 250] },
    { edges: ['panel'], mm: lengthOf(back, 'panel'), between: [140, 88] },
  );
  return [back, side];
}

function bodice(): Bodice {
  const [front, side] = frontPanels();
  const [back, backSide] = backPanels(lengthOf(side, 'side'));
  return { front, side, back, backSide };
}

const quarter = (name: string, waist: number, long: number, cut: { fold?: string; cut?: number }): Piece => {
  const radius = waist / (Math.PI / 4);
  return suited(
    r => {
      const out = r! + long;
      return ring(
        name,
        [0, r!],
        {
          waist: arc(r!, 0, 45),
          side: [arc(out, 0, 45).at(-1)!],
          hem: arc(out, 45, 0),
          centre: [],
        },
        cut,
      );
    },
    { edges: ['waist'], mm: waist, between: [radius - 5, radius + 5] },
  );
};

const allInOne = (
  name: string,
  deep: number,
  hole: (y: number) => readonly XY[],
  mm: number,
  cut: { fold?: string; cut?: number },
): Piece =>
  suited(
    y =>
      ring(
        name,
        [0, deep],
        {
          neck: neckline(deep, 96),
          shoulder: [tip],
          armhole: hole(y!),
          side: [[pit[0] - 4, y! + 56]],
          lower: bend([pit[0] - 4, y! + 56], [170, y! + 50], [90, deep + 80], [0, deep + 66], 5),
          centre: [],
        },
        cut,
      ),
    { edges: ['armhole'], mm, between: [190, 240] },
  );

/** No sleeves: faced in one at neck and armholes, a zip in the back seam. */
export function panelledDress(): Unnamed {
  const { front, side, back, backSide } = bodice();
  const frontHole = lengthOf(front, 'armhole') + lengthOf(side, 'armhole');
  const backHole = lengthOf(back, 'armhole') + lengthOf(backSide, 'armhole');
  const frontFacing = allInOne(
    'front facing',
    128,
    y => [...upperHole, ...lowerHole([pit[0], y])],
    frontHole,
    { fold: 'centre' },
  );
  const backFacing = allInOne(
    'back facing',
    54,
    y => [
      ...bend(tip, [152, 58], [158, 96], [162, 132], 3),
      ...bend([162, 132], [163, 176], [194, y], [236, y], 5),
    ],
    backHole,
    { cut: 2 },
  );
  const skirt = quarter('front skirt', lengthOf(front, 'waist') + lengthOf(side, 'waist'), 560, {
    fold: 'centre',
  });
  const backSkirt = quarter('back skirt', lengthOf(back, 'waist') + lengthOf(backSide, 'waist'), 560, {
    cut: 2,
  });
  const mb = lengthOf(back, 'panel');
  return unnamed({
    title: 'dress of panels with half a circle of skirt',
    pieces: [backSide, skirt, frontFacing, front, back, backSkirt, side, backFacing],
    over: ['front side', 'back', 'back skirt'],
    seams: [
      'front side.panel = front.panel, 4 mm',
      'back side.panel = back.panel',
      'front side.side = back side.side',
      'front.shoulder = back.shoulder',
      'back.centre = back.centre',
      'front skirt.waist = front.waist + front side.waist',
      'back skirt.waist = back.waist + back side.waist',
      'front skirt.side = back skirt.side',
      'back skirt.centre = back skirt.centre',
      'front facing.neck = front.neck',
      'back facing.neck = back.neck',
      'front facing.armhole = front.armhole + front side.armhole',
      'back facing.armhole = back.armhole + back side.armhole',
      'front facing.shoulder = back facing.shoulder',
      'front facing.side = back facing.side',
    ],
    notches: [
      ['single', ['front.panel from armhole', 90], ['front side.panel from armhole', 90]],
      ['single', ['front.panel from armhole', 172], ['front side.panel from armhole', 176]],
      ['double', ['back.panel from armhole', mb * 0.45], ['back side.panel from armhole', mb * 0.45]],
      ['single', ['front side.side from armhole', 90], ['back side.side from armhole', 90]],
      ['single', ['front skirt.waist from centre', lengthOf(front, 'waist')]],
      ['single', ['back skirt.waist from centre', lengthOf(back, 'waist')]],
      ['single', ['front side.armhole from side', 70], ['front facing.armhole from side', 70]],
      ['double', ['back side.armhole from side', 74], ['back facing.armhole from side', 74]],
      ['single', ['back skirt.centre from waist', 200]],
      ['single', ['front skirt.side from waist', 220], ['back skirt.side from waist', 220]],
    ],
  });
}

/** For a girl of six: bodice front and skirts printed whole, buttons behind, puffed sleeves into bands, a bound neck. */
export function childsDress(): Unnamed {
  const shared = { wide: 58, shoulder: 74, slope: 0.36, footName: 'waist' } as const;
  const front = whole(
    'front',
    [0, 66],
    torsoEdges({
      ...shared,
      deep: 66,
      across: 112,
      pit: [166, 152],
      side: [[164, 236]],
      foot: bend([164, 236], [110, 240], [50, 242], [0, 242], 4),
    }),
  );
  const back = suited(
    y =>
      torso(
        'back',
        {
          ...shared,
          deep: 18,
          stand: 20,
          across: 120,
          pit: [166, y!],
          side: [[164, 236]],
          foot: bend([164, 236], [110, 239], [50, 240], [-20, 240], 4),
        },
        { cut: 2 },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side r'), between: [120, 190] },
  );
  const [cf, cb] = [lengthOf(front, 'armhole r'), lengthOf(back, 'armhole')];
  const cap = 1.32 * (cf + cb);
  const sleeve = arm('sleeve', { cap, upper: 330, hem: 300, long: 44, high: [30, 190] });
  const tier = (name: string, width: number): Piece =>
    whole(name, [0, 0], {
      waist: [[width, 0]],
      side: [[width + 40, 400]],
      hem: bend([width + 40, 400], [width * 0.7, 408], [width * 0.3, 410], [0, 410], 4),
    });
  const nape = lengthOf(back, 'neck');
  const neck = lengthOf(front, 'neck') + 2 * nape;
  const skirt = tier('front skirt', 270),
    backSkirt = tier('back skirt', 270);
  const [wf, wb] = [lengthOf(front, 'waist'), lengthOf(back, 'waist')];
  return unnamed({
    title: 'dress for a child with puffed sleeves',
    pieces: [
      skirt,
      band('neck binding', neck, 36),
      sleeve,
      patch('pocket', 110, 120, 2, 34),
      back,
      band('sleeve band', 216, 50, { cut: 2 }),
      front,
      backSkirt,
    ],
    over: ['back'],
    seams: [
      'front.shoulder r = back.shoulder',
      'front.shoulder l = back.shoulder',
      'front.side r = back.side',
      'front.side l = back.side',
      'sleeve.cap = front.armhole r + back.armhole, 1.32 x',
      'sleeve.cap = front.armhole l + back.armhole, 1.32 x',
      'sleeve.front = sleeve.back',
      `neck binding.lower = front.neck + back.neck, ${nape} mm`,
      'sleeve band.upper = sleeve.hem, 0.72 x',
      'sleeve band.left = sleeve band.right',
      `front skirt.waist = front.waist, ${540 / wf} x`,
      `back skirt.waist = back.waist, ${540 / wb} x`,
      'front skirt.side r = back skirt.side r',
      'front skirt.side l = back skirt.side l',
    ],
    notches: [
      [
        'single',
        ['front.armhole r from side r', 50],
        ['front.armhole l from side l', 50],
        ['sleeve.cap from front', 51],
      ],
      ['double', ['back.armhole from side', 54], ['sleeve.cap from back', 55]],
      ['single', ['sleeve.cap from front', cap * (cf / (cf + cb))]],
      ['single', ['front.waist from side r', wf / 2], ['front skirt.waist from side r', 270]],
      ['single', ['back skirt.waist from side r', 270], ['back.waist from centre', 20]],
      ['single', ['back.neck from centre', 20]],
      ['single', ['front skirt.side r from waist', 130], ['back skirt.side r from waist', 130]],
      ['single', ['front skirt.side l from waist', 130], ['back skirt.side l from waist', 130]],
    ],
  });
}
