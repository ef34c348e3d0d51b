import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf, type XY } from '../twenty-drafts.js';
import { armhole, neckline } from './block.js';
import { squareArm } from './lot-g-arm.js';
import { bend, ring, suited, wedge } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// A T-shirt printed with its front and back whole, and a blouse of woven cloth with puffed sleeves.

type Half = Readonly<Record<string, readonly XY[]>>;

/** A half from its centre's top to its centre's foot, opened out: first the side drawn on the right, then the other. */
function opened(name: string, first: XY, half: Half, [right, left]: readonly [string, string]): Piece {
  const over = ([x, y]: XY): XY => [-x, y];
  let at = first;
  const lines = Object.entries(half).map(([edge, places]) => {
    const through = [at, ...places];
    at = through.at(-1)!;
    return { edge, through };
  });
  const back = (through: readonly XY[]): readonly XY[] => through.map(over).reverse();
  const [top, foot, between] = [lines[0]!, lines.at(-1)!, lines.slice(1, -1)];
  const edges = [
    [top.edge, [...back(top.through).slice(1), ...top.through.slice(1)]],
    ...between.map(({ edge, through }) => [`${right} ${edge}`, through.slice(1)]),
    [foot.edge, [...foot.through.slice(1), ...back(foot.through).slice(1)]],
    ...between.toReversed().map(({ edge, through }) => [`${left} ${edge}`, back(through).slice(1)]),
  ];
  const last = edges.at(-1)!;
  return ring(name, over(top.through.at(-1)!), {
    ...Object.fromEntries(edges),
    [last[0] as string]: (last[1] as readonly XY[]).slice(0, -1),
  });
}

/** Short sleeves set in flat, a rib round the neck, a pocket. */
export function teeShirt(): Unnamed {
  const front = opened(
    'front',
    [0, 96],
    {
      neck: neckline(96, 84),
      shoulder: [[204, 38]],
      armhole: armhole([204, 38], 189, [246, 226]),
      side: bend([246, 226], [244, 340], [238, 480], [243, 622]),
      hem: [[0, 622]],
    },
    ['left', 'right'],
  );
  const back = suited(
    y =>
      opened(
        'back',
        [0, 22],
        {
          neck: bend([0, 22], [48, 22], [80, 13], [84, 0]),
          shoulder: [[204, 38]],
          armhole: armhole([204, 38], 194, [249, y!]),
          side: bend([249, y!], [247, 340], [241, 480], [246, 622]),
          hem: [[0, 622]],
        },
        ['right', 'left'],
      ),
    { edges: ['left side'], mm: lengthOf(front, 'left side'), between: [190, 260] },
  );
  const [cf, cb] = [lengthOf(front, 'left armhole'), lengthOf(back, 'left armhole')];
  const sleeve = squareArm('sleeve', { cap: cf + cb + 6, upper: 372, hem: 336, long: 112 });
  const neck = lengthOf(front, 'neck') + lengthOf(back, 'neck');
  const pocket = ring('pocket', [0, 0], {
    opening: [[104, 0]],
    right: [[104, 98]],
    'foot right': [[52, 120]],
    'foot left': [[0, 98]],
    left: [],
  });
  return unnamed({
    title: 'T-shirt printed whole',
    pieces: [sleeve, back, band('neck band', neck * 0.86, 52), pocket, front],
    over: ['sleeve'],
    seams: [
      'front.left shoulder = back.left shoulder',
      'front.right shoulder = back.right shoulder',
      'front.left side = back.left side',
      'front.right side = back.right side',
      'sleeve.cap = front.left armhole + back.left armhole, 6 mm',
      'sleeve.cap = front.right armhole + back.right armhole, 6 mm',
      'sleeve.front = sleeve.back',
      'neck band.upper = front.neck + back.neck, 0.86 x',
      'neck band.left = neck band.right',
    ],
    notches: [
      [
        'single',
        ['front.left armhole from left side', 88],
        ['front.right armhole from right side', 88],
        ['sleeve.cap from front', 88],
      ],
      [
        'double',
        ['back.left armhole from left side', 94],
        ['back.right armhole from right side', 94],
        ['sleeve.cap from back', 94],
      ],
      ['single', ['sleeve.cap from front', cf + 3]],
      [
        'single',
        ['front.left side from hem', 210],
        ['front.right side from hem', 210],
        ['back.left side from hem', 210],
        ['back.right side from hem', 210],
      ],
      ['single', ['front.neck from its start', lengthOf(front, 'neck') / 2]],
      ['single', ['back.neck from its start', lengthOf(back, 'neck') / 2]],
      ['single', ['neck band.upper from left', neck * 0.43]],
    ],
  });
}

const stand = 18;

function blouseBody(): readonly [front: Piece, back: Piece] {
  const front = ring(
    'front',
    [-stand, 86],
    {
      neck: [[0, 86], ...neckline(86, 72)],
      shoulder: [[194, 46]],
      armhole: armhole([194, 46], 177, [254, 224]),
      side: [
        [253.4, 264],
        [253.1, 286],
        ...bend([253.1, 286], [251, 370], [246, 440], [251, 520], 4),
        [256, 600],
      ],
      hem: bend([256, 600], [180, 609], [90, 610], [-stand, 610], 4),
      front: [],
    },
    { cut: 2, darts: { dart: wedge([253.4, 264], [253.1, 286], 138) } },
  );
  const back = suited(
    (x, y) =>
      ring(
        'back',
        [0, 22],
        {
          neck: neckline(22, 75),
          shoulder: [
            [130, 20],
            [142, 24.36],
            [x!, 24.36 + (x! - 142) * 0.364],
          ],
          armhole: armhole([x!, 24.36 + (x! - 142) * 0.364], 193, [252, y!]),
          side: [...bend([252, y!], [251, 340], [241, 440], [246, 520], 5), [252, 600]],
          hem: bend([252, 600], [180, 609], [90, 610], [0, 610], 4),
          centre: [],
        },
        { fold: 'centre', darts: { dart: wedge([130, 20], [142, 24.36], 82) } },
      ),
    { edges: ['shoulder'], mm: lengthOf(front, 'shoulder') + 3, between: [180, 240] },
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [200, 270] },
  );
  return [front, back];
}

function blouseCollar(neck: number): Piece {
  return suited(
    x =>
      ring(
        'collar',
        [-x! - 20, 6],
        {
          outer: [
            ...bend([-x! - 20, 6], [-x! * 0.6, 0], [-x! * 0.3, 0], [0, 0], 4),
            ...bend([0, 0], [x! * 0.3, 0], [x! * 0.6, 0], [x! + 20, 6], 4),
          ],
          'left end': [[x!, 76]],
          neck: [
            ...bend([x!, 76], [x! * 0.66, 84], [x! * 0.36, 78], [0, 78], 5),
            ...bend([0, 78], [-x! * 0.36, 78], [-x! * 0.66, 84], [-x!, 76], 5),
          ],
          'right end': [],
        },
        { cut: 2 },
      ),
    { edges: ['neck'], mm: neck, between: [150, 260] },
  );
}

function blouseFacings(front: Piece): readonly [front: Piece, back: Piece] {
  const slope = 46 / 122;
  const [fx, bx]: readonly [number, number] = [
    72 + 46,
    75 + 46 * Math.sqrt((1 + slope ** 2) / (1 + 0.364 ** 2)),
  ];
  const facing = ring(
    'front facing',
    [-stand, 86],
    {
      neck: [[0, 86], ...neckline(86, 72)],
      shoulder: [[fx, 46 * slope]],
      inner: [...bend([fx, 46 * slope], [112, 110], [62, 150], [56, 260], 6), [50, 610]],
      hem: [[-stand, 610]],
      front: [],
    },
    { cut: 2 },
  );
  if (Math.abs(lengthOf(facing, 'neck') - lengthOf(front, 'neck')) > 0.01) throw new Error('necks differ');
  const back = ring(
    'back facing',
    [0, 22],
    {
      neck: neckline(22, 75),
      shoulder: [[bx, (bx - 75) * 0.364]],
      outer: bend([bx, (bx - 75) * 0.364], [104, 50], [56, 74], [0, 74]),
      centre: [],
    },
    { fold: 'centre' },
  );
  return [facing, back];
}

/** Buttoned in front, a collar whose ends meet there, darts at bust and shoulder, puffed sleeves on bands. */
export function puffedBlouse(): Unnamed {
  const [front, back] = blouseBody();
  const [frontFacing, backFacing] = blouseFacings(front);
  const half = lengthOf(front, 'neck') + lengthOf(back, 'neck') - stand;
  const collar = blouseCollar(2 * half);
  const [cf, cb] = [lengthOf(front, 'armhole'), lengthOf(back, 'armhole')];
  const full = 118;
  const sleeve = squareArm('sleeve', {
    cap: cf + cb + full,
    upper: 424,
    hem: 410,
    long: 86,
    high: [80, 240],
  });
  const atShoulder = lengthOf(back, 'neck');
  return unnamed({
    title: 'blouse with puffed sleeves',
    pieces: [band('sleeve band', 304, 70, { cut: 2 }), back, frontFacing, sleeve, collar, front, backFacing],
    over: ['front', 'back facing'],
    seams: [
      'back.shoulder = front.shoulder, 3 mm',
      'front.side = back.side',
      `sleeve.cap = front.armhole + back.armhole, ${full} mm`,
      'sleeve.front = sleeve.back',
      `sleeve band.upper = sleeve.hem, ${304 / 410} x`,
      'sleeve band.left = sleeve band.right',
      `collar.neck = front.neck + back.neck, 2 x, ${-2 * stand} mm`,
      'collar.outer = collar.outer',
      'collar.left end = collar.left end',
      'collar.right end = collar.right end',
      'front facing.front = front.front',
      'front facing.neck = front.neck',
      'back facing.neck = back.neck',
      'front facing.shoulder = back facing.shoulder',
    ],
    notches: [
      ['single', ['front.armhole from side', 92], ['sleeve.cap from front', 92]],
      ['double', ['back.armhole from side', 98], ['sleeve.cap from back', 98]],
      ['single', ['sleeve.cap from front', cf + full / 2]],
      ['single', ['front.side from hem', 170], ['back.side from hem', 170]],
      ['single', ['collar.neck from its start', half]],
      ['single', ['collar.neck from its start', half - atShoulder]],
      ['single', ['collar.neck from its end', half - atShoulder]],
      ['single', ['front.neck from front', stand], ['front facing.neck from front', stand]],
      ['single', ['front.front from neck', 230], ['front facing.front from neck', 230]],
      ['single', ['sleeve.hem from front', 62]],
      ['single', ['sleeve.hem from back', 62]],
      ['single', ['sleeve band.upper from left', 62]],
      ['single', ['sleeve band.upper from right', 62]],
    ],
  });
}
