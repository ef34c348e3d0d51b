import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf } from '../twenty-drafts.js';
import { arm, armhole, neckline } from './block.js';
import { bend, ring, suited } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// Pyjamas of a jacket and shorts, and a child's pinafore with its bloomers.

function shorts(): readonly [front: Piece, back: Piece] {
  const front = ring(
    'short front',
    [6, 0],
    {
      waist: [[232, 0]],
      outseam: bend([232, 0], [238, 120], [246, 280], [252, 430], 4),
      leg: [[-46, 438]],
      inseam: [[-58, 330]],
      crotch: [...bend([-58, 330], [-22, 320], [4, 290], [6, 226]), [6, 0]],
    },
    { cut: 2 },
  );
  const back = suited(
    (y, x) =>
      ring(
        'short back',
        [44, -26],
        {
          waist: [[286, 2]],
          outseam: bend([286, 2], [x!, 120], [280, 280], [282, 430], 4),
          leg: [[-96, 446]],
          inseam: [[-112, y!]],
          crotch: [...bend([-112, y!], [-60, y! + 6], [16, 290], [24, 200]), [44, -26]],
        },
        { cut: 2 },
      ),
    { edges: ['inseam'], mm: lengthOf(front, 'inseam') - 1, between: [300, 400] },
    { edges: ['outseam'], mm: lengthOf(front, 'outseam'), between: [284, 380] },
  );
  return [front, back];
}

/** A collar of one piece, faced fronts, a pocket on the chest; the shorts have their casing cut on. */
export function pyjamas(): Unnamed {
  const front = ring(
    'front',
    [-24, 152],
    {
      neck: bend([-24, 152], [24, 132], [72, 76], [80, 0]),
      shoulder: [[206, 46]],
      armhole: armhole([206, 46], 194, [276, 240]),
      side: bend([276, 240], [272, 360], [270, 500], [272, 640], 4),
      hem: bend([272, 640], [180, 646], [80, 648], [-24, 648], 4),
      front: [],
    },
    { cut: 2 },
  );
  const back = suited(
    y =>
      ring(
        'back',
        [0, 20],
        {
          neck: neckline(20, 82, -6),
          shoulder: [[210, 34.6]],
          armhole: armhole([210, 34.6], 203, [276, y!]),
          side: bend([276, y!], [272, 360], [270, 500], [272, 640], 4),
          hem: [[0, 644]],
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [210, 270] },
  );
  const [cf, cb] = [lengthOf(front, 'armhole'), lengthOf(back, 'armhole')];
  const sleeve = arm('sleeve', { cap: cf + cb + 10, upper: 412, hem: 300, long: 400, high: [40, 200] });
  const facing = ring(
    'facing',
    [-24, 152],
    {
      neck: bend([-24, 152], [24, 132], [72, 76], [80, 0]),
      shoulder: [[121.3, 15.08]],
      inner: [...bend([121.3, 15.08], [112, 120], [64, 260], [58, 380]), [58, 648]],
      hem: [[-24, 648]],
      front: [],
    },
    { cut: 2 },
  );
  const backFacing = ring(
    'back facing',
    [0, 20],
    {
      neck: neckline(20, 82, -6),
      shoulder: [[123.9, 7.3]],
      outer: bend([123.9, 7.3], [112, 44], [60, 66], [0, 66]),
      centre: [],
    },
    { fold: 'centre' },
  );
  const necks = lengthOf(front, 'neck') + lengthOf(back, 'neck') - 34;
  const collar = suited(
    x =>
      ring(
        'collar',
        [0, 0],
        {
          outer: bend([0, 0], [x! * 0.5, 0], [x! * 0.8, 6], [x! + 16, 20], 4),
          end: [[x! - 8, 86]],
          neck: bend([x! - 8, 86], [x! * 0.7, 84], [x! * 0.45, 74], [0, 74], 5),
          centre: [],
        },
        { fold: 'centre', cut: 2 },
      ),
    { edges: ['neck'], mm: necks, between: [140, 360] },
  );
  const [shortFront, shortBack] = shorts();
  const pocket = ring('pocket', [0, 0], {
    opening: [[116, 0]],
    right: [[116, 98]],
    lower: [
      ...bend([116, 98], [116, 130], [90, 134], [58, 134]),
      ...bend([58, 134], [26, 134], [0, 130], [0, 98]),
    ],
    left: [],
  });
  return unnamed({
    title: 'pyjamas of a jacket and shorts',
    pieces: [
      collar,
      shortFront,
      back,
      sleeve,
      pocket,
      facing,
      band('sleeve band', 300, 100, { cut: 2 }),
      shortBack,
      backFacing,
      front,
    ],
    over: ['short front', 'facing', 'back facing', 'back'],
    seams: [
      'front.shoulder = back.shoulder',
      'front.side = back.side',
      'sleeve.cap = front.armhole + back.armhole, 10 mm',
      'sleeve.front = sleeve.back',
      'sleeve band.upper = sleeve.hem',
      'sleeve band.left = sleeve band.right',
      'collar.neck = front.neck + back.neck, -34 mm',
      'collar.outer = collar.outer',
      'collar.end = collar.end',
      'facing.front = front.front',
      'facing.neck = front.neck',
      'facing.shoulder = back facing.shoulder',
      'back facing.neck = back.neck',
      'short front.outseam = short back.outseam',
      'short back.inseam = short front.inseam, -1 mm',
      'short front.crotch = short front.crotch',
      'short back.crotch = short back.crotch',
    ],
    notches: [
      ['single', ['front.armhole from side', 90], ['sleeve.cap from front', 90]],
      ['double', ['back.armhole from side', 96], ['sleeve.cap from back', 97]],
      ['single', ['sleeve.cap from front', cf + 5]],
      ['single', ['front.side from armhole', 190], ['back.side from armhole', 190]],
      ['single', ['front.neck from front', 34], ['facing.neck from front', 34]],
      ['single', ['collar.neck from centre', lengthOf(back, 'neck')]],
      ['single', ['facing.front from hem', 240], ['front.front from hem', 240]],
      ['single', ['short front.crotch from inseam', 80]],
      ['double', ['short back.crotch from inseam', 120]],
      ['single', ['short front.outseam from leg', 200], ['short back.outseam from leg', 200]],
    ],
  });
}

/** Buttoned on the shoulders, faced round neck and arms in one; bloomers of a leg cut twice. */
export function pinafore(): Unnamed {
  const body = (name: string, neck: number, strap: number, [px, py]: readonly [number, number]): Piece =>
    ring(
      name,
      [0, neck],
      {
        neck: bend([0, neck], [40, neck], [54, neck - 40], [50, strap], 7),
        strap: bend([50, strap], [58, strap - 20], [82, strap - 20], [92, strap + 4], 5),
        armhole: bend([92, strap + 4], [96, 90], [110, py], [px, py], 7),
        side: [[206, 520]],
        hem: bend([206, 520], [140, 534], [70, 538], [0, 538], 4),
        centre: [],
      },
      { fold: 'centre' },
    );
  const front = body('front', 104, 10, [152, 152]);
  const back = suited(y => body('back', 86, -36, [150, y!]), {
    edges: ['side'],
    mm: lengthOf(front, 'side'),
    between: [130, 180],
  });
  const facing = (name: string, neck: number, strap: number, [px, py]: readonly [number, number]): Piece => {
    const share = 46 / Math.hypot(206 - px, 520 - py);
    const low: readonly [number, number] = [px + (206 - px) * share, py + (520 - py) * share];
    return ring(
      name,
      [0, neck],
      {
        neck: bend([0, neck], [40, neck], [54, neck - 40], [50, strap], 7),
        strap: bend([50, strap], [58, strap - 20], [82, strap - 20], [92, strap + 4], 5),
        armhole: bend([92, strap + 4], [96, 90], [110, py], [px, py], 7),
        side: [low],
        lower: bend(low, [110, low[1] + 6], [60, 168], [0, 168], 5),
        centre: [],
      },
      { fold: 'centre' },
    );
  };
  const armpit = back.outline.parts.flatMap(part =>
    part.type === 'edge' && part.name === 'side' ? [part.path.segments[0]![0]] : [],
  )[0]!;
  const leg = suited(
    y =>
      ring(
        'leg',
        [44, 22],
        {
          waist: [[318, 0]],
          'back crotch': bend([318, 0], [322, 80], [336, 160], [384, 206]),
          'back inseam': [[364, 262]],
          hem: bend([364, 262], [260, 250], [120, 250], [18, 266], 5),
          'front inseam': [[0, y!]],
          'front crotch': bend([0, y!], [30, 190], [42, 120], [44, 22], 6).slice(0, -1),
        },
        { cut: 2 },
      ),
    { edges: ['front inseam'], mm: Math.hypot(20, 56), between: [180, 240] },
  );
  const pocket = ring('pocket', [0, 0], {
    opening: [[96, 0]],
    round: [[96, 60], ...bend([96, 60], [96, 110], [0, 110], [0, 60], 8)],
  });
  return unnamed({
    title: 'child’s pinafore with bloomers',
    pieces: [
      facing('back facing', 86, -36, [armpit.x, armpit.y]),
      front,
      { ...pocket, cutting: { ...pocket.cutting, count: 2 } },
      leg,
      back,
      facing('front facing', 104, 10, [152, 152]),
    ],
    over: ['front', 'back facing'],
    seams: [
      'front.side = back.side',
      'front facing.side = back facing.side',
      'front facing.neck = front.neck',
      'front facing.armhole = front.armhole',
      'front facing.strap = front.strap',
      'back facing.neck = back.neck',
      'back facing.armhole = back.armhole',
      'back facing.strap = back.strap',
      'leg.front inseam = leg.back inseam',
      'leg.front crotch = leg.front crotch',
      'leg.back crotch = leg.back crotch',
    ],
    notches: [
      ['single', ['front.side from hem', 180], ['back.side from hem', 180]],
      ['single', ['front.armhole from side', 60], ['front facing.armhole from side', 60]],
      ['double', ['back.armhole from side', 66], ['back facing.armhole from side', 66]],
      ['single', ['leg.front crotch from front inseam', 60]],
      ['double', ['leg.back crotch from back inseam', 70]],
    ],
  });
}
