import type { Piece } from '@paperhinge/geometry';
import { lengthOf } from '../twenty-drafts.js';
import { arm, armhole, neckline } from './block.js';
import { bend, ring, suited } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// A child's coat for a height of 104 cm: round collar, yoke and pleat behind, flaps over sewn-on pockets.

const lap = 24;
/** Half of the pleat under the yoke. */
const pleat = 30;

function coatBody(): readonly [front: Piece, yoke: Piece, back: Piece] {
  const front = ring(
    'front',
    [-lap, 64],
    {
      neck: bend([-lap, 64], [22, 64], [50, 38], [57, 0]),
      shoulder: [[136, 30]],
      armhole: armhole([136, 30], 125, [172, 156]),
      side: [[206, 530]],
      hem: bend([206, 530], [140, 543], [60, 548], [-lap, 548], 4),
      front: [],
    },
    { cut: 2 },
  );
  const yoke = ring(
    'yoke',
    [0, 17],
    {
      neck: neckline(17, 59),
      shoulder: [[139, 30]],
      armhole: bend([139, 30], [134, 52], [132, 76], [132, 100], 4),
      lower: bend([132, 100], [90, 103], [40, 104], [0, 104], 3),
      centre: [],
    },
    { fold: 'centre' },
  );
  const back = suited(
    (w, y) =>
      ring(
        'back',
        [0, 104],
        {
          top: bend([0, 104], [60, 104], [110, 103], [w!, 100], 3),
          armhole: bend([w!, 100], [w! - 1, 132], [w! + 10, y! - 1], [w! + 39, y!], 6),
          side: [[w! + 74, 530]],
          hem: bend([w! + 74, 530], [160, 543], [70, 549], [0, 549], 4),
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['top'], mm: lengthOf(yoke, 'lower') + pleat, between: [130, 200] },
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [120, 190] },
  );
  return [front, yoke, back];
}

function coatFacings(): readonly [front: Piece, back: Piece] {
  const reach = (dx: number, dy: number): readonly [number, number] => [
    (36 * dx) / Math.hypot(dx, dy),
    (36 * dy) / Math.hypot(dx, dy),
  ];
  const [fx, fy] = reach(79, 30),
    [bx, by] = reach(80, 30);
  const before = ring(
    'front facing',
    [-lap, 64],
    {
      neck: bend([-lap, 64], [22, 64], [50, 38], [57, 0]),
      shoulder: [[57 + fx, fy]],
      outer: [...bend([57 + fx, fy], [90, 84], [46, 140], [46, 230]), [46, 300], [46, 400], [46, 548]],
      hem: [[-lap, 548]],
      front: [],
    },
    { cut: 2 },
  );
  const behind = ring(
    'back facing',
    [0, 17],
    {
      neck: neckline(17, 59),
      shoulder: [[59 + bx, by]],
      outer: bend([59 + bx, by], [84, 44], [50, 62], [0, 62]),
      centre: [],
    },
    { fold: 'centre' },
  );
  return [before, behind];
}

/** Buttoned to the neck. */
export function childsCoat(): Unnamed {
  const [front, yoke, back] = coatBody();
  const [facing, backFacing] = coatFacings();
  const [cf, cy, cb] = [front, yoke, back].map(own => lengthOf(own, 'armhole')) as [number, number, number];
  const sleeve = arm('sleeve', { cap: cf + cy + cb + 16, upper: 262, hem: 212, long: 262, high: [40, 170] });
  const collar = suited(
    x =>
      ring(
        'collar',
        [0, 0],
        {
          outer: [
            ...bend([0, 0], [50, 0], [x! - 50, 4], [x! - 8, 18], 4),
            ...bend([x! - 8, 18], [x! + 22, 30], [x! + 28, 62], [x!, 84], 4),
          ],
          neck: bend([x!, 84], [100, 70], [50, 62], [0, 62], 5),
          centre: [],
        },
        { fold: 'centre', cut: 2 },
      ),
    { edges: ['neck'], mm: lengthOf(front, 'neck') + lengthOf(yoke, 'neck') - lap, between: [110, 220] },
  );
  const pocket = ring('pocket', [0, 0], {
    opening: [[112, 0]],
    round: [
      [112, 84],
      ...bend([112, 84], [112, 116], [94, 128], [56, 128], 4),
      ...bend([56, 128], [18, 128], [0, 116], [0, 84], 4),
    ],
    left: [],
  });
  const flap = ring(
    'flap',
    [0, 0],
    {
      top: [[118, 0]],
      round: [
        [118, 24],
        ...bend([118, 24], [118, 42], [96, 52], [59, 52], 4),
        ...bend([59, 52], [22, 52], [0, 42], [0, 24], 4),
        [0, 0],
      ],
    },
    { cut: 4 },
  );
  const ease = lengthOf(yoke, 'shoulder') - lengthOf(front, 'shoulder');
  return unnamed({
    title: 'child’s coat with a round collar',
    pieces: [
      collar,
      facing,
      back,
      { ...pocket, cutting: { ...pocket.cutting, count: 2 } },
      front,
      backFacing,
      flap,
      sleeve,
      yoke,
    ],
    over: ['front', 'back', 'back facing'],
    seams: [
      `yoke.shoulder = front.shoulder, ${ease} mm`,
      `back.top = yoke.lower, ${pleat} mm`,
      'front.side = back.side',
      'sleeve.front = sleeve.back',
      'sleeve.cap = front.armhole + yoke.armhole + back.armhole, 16 mm',
      `collar.neck = front.neck + yoke.neck, ${-lap} mm`,
      'collar.outer = collar.outer',
      'front facing.front = front.front',
      'front facing.neck = front.neck',
      'front facing.shoulder = back facing.shoulder',
      'back facing.neck = yoke.neck',
      'flap.round = flap.round',
    ],
    notches: [
      ['single', ['front.armhole from side', 66], ['sleeve.cap from front', 67]],
      ['double', ['back.armhole from side', 38], ['sleeve.cap from back', 39]],
      ['single', ['sleeve.cap from front', cf + 8]],
      ['single', ['back.top from centre', pleat]],
      ['single', ['collar.neck from outer', lengthOf(front, 'neck') - lap]],
      ['single', ['front.neck from front', lap], ['front facing.neck from front', lap]],
      ['single', ['front.side from hem', 190], ['back.side from hem', 190]],
      ['single', ['front.front from hem', 40], ['front facing.front from hem', 40]],
      ['single', ['sleeve.front from hem', 110], ['sleeve.back from hem', 110]],
    ],
  });
}
