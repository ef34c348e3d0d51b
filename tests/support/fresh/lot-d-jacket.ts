import type { Piece } from '@paperhinge/geometry';
import { lengthOf, type XY } from '../twenty-drafts.js';
import { armhole, neckline } from './block.js';
import { bend, ring, suited } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// An unlined work jacket with sleeves of two pieces.

const neck: readonly XY[] = bend([-22, 106], [30, 104], [76, 62], [84, 0]);

function sleeves(armholes: number): readonly [top: Piece, under: Piece] {
  const under0: readonly XY[] = bend([0, 140], [36, 192], [104, 188], [160, 104], 8);
  const draft = (fore: number, elbow: number): Piece =>
    ring(
      'under sleeve',
      [0, 140],
      {
        cap: under0,
        back: [
          ...bend([160, 104], [172, 180], [elbow, 280], [elbow - 6, 360], 4),
          ...bend([elbow - 6, 360], [elbow - 12, 450], [158, 560], [152, 640], 4),
        ],
        hem: [[66, 626]],
        front: bend([66, 626], [fore + 20, 470], [fore, 300], [0, 140], 7),
      },
      { cut: 2 },
    );
  const top = suited(
    h =>
      ring(
        'top sleeve',
        [0, 140],
        {
          cap: [
            ...bend([0, 140], [30, 122], [68, h!], [126, h!], 7),
            ...bend([126, h!], [188, h!], [234, 44], [262, 104], 7),
          ],
          back: [
            ...bend([262, 104], [278, 180], [284, 280], [276, 360], 4),
            ...bend([276, 360], [266, 450], [244, 560], [236, 640], 4),
          ],
          hem: [[76, 626]],
          front: bend([76, 626], [28, 470], [8, 300], [0, 140], 7),
        },
        { cut: 2 },
      ),
    { edges: ['cap'], mm: armholes + 16 - lengthOf(draft(30, 210), 'cap'), between: [110, -60] },
  );
  const under = suited(
    (fore, elbow) => draft(fore!, elbow!),
    { edges: ['front'], mm: lengthOf(top, 'front'), between: [10, 140] },
    { edges: ['back'], mm: lengthOf(top, 'back'), between: [174, 300] },
  );
  return [top, under];
}

/** A collar of two layers, fronts faced, a seam in the middle of the back, pockets sewn on. */
export function workJacket(): Unnamed {
  const front = ring(
    'front',
    [-22, 106],
    {
      neck,
      shoulder: [[214, 54]],
      armhole: armhole([214, 54], 200, [282, 268]),
      side: bend([282, 268], [278, 400], [276, 560], [278, 690], 4),
      hem: [[-22, 696]],
      front: [],
    },
    { cut: 2 },
  );
  const back = suited(
    y =>
      ring(
        'back',
        [0, 22],
        {
          neck: neckline(22, 87, -4),
          shoulder: [[221.5, 46]],
          armhole: armhole([221.5, 46], 214, [280, y!]),
          side: bend([280, y!], [276, 400], [272, 560], [274, 690], 4),
          hem: [[6, 694]],
          centre: bend([6, 694], [6, 560], [12, 420], [0, 22], 6).slice(0, -1),
        },
        { cut: 2 },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [230, 300] },
  );
  const facing = ring(
    'facing',
    [-22, 106],
    {
      neck,
      shoulder: [[131.7, 19.8]],
      inner: [...bend([131.7, 19.8], [118, 120], [74, 220], [66, 330]), [66, 694.24]],
      hem: [[-22, 696]],
      front: [],
    },
    { cut: 2 },
  );
  const [cf, cb] = [lengthOf(front, 'armhole'), lengthOf(back, 'armhole')];
  const [top, under] = sleeves(cf + cb);
  const necks = lengthOf(front, 'neck') + lengthOf(back, 'neck') - 22;
  const collar = suited(
    x =>
      ring(
        'collar',
        [0, 0],
        {
          outer: bend([0, 0], [x! * 0.42, 0], [x! * 0.78, 2], [x! + 24, 14], 4),
          end: [[x!, 88]],
          neck: bend([x!, 88], [x! * 0.7, 80], [x! * 0.42, 72], [0, 72], 5),
          centre: [],
        },
        { fold: 'centre', cut: 2 },
      ),
    { edges: ['neck'], mm: necks, between: [140, 330] },
  );
  const pocket = (name: string, wide: number, high: number, count: number): Piece => {
    const drawn = ring(name, [0, 0], {
      opening: [[wide, 0]],
      right: [[wide, high - 30]],
      'right foot': [[wide - 30, high]],
      lower: [[30, high]],
      'left foot': [[0, high - 30]],
      left: [],
    });
    return { ...drawn, cutting: { ...drawn.cutting, count } };
  };
  const underCap = lengthOf(under, 'cap');
  return unnamed({
    title: 'work jacket',
    pieces: [
      under,
      pocket('pocket', 190, 210, 2),
      back,
      facing,
      top,
      front,
      pocket('chest pocket', 130, 146, 1),
      collar,
    ],
    over: ['back', 'top sleeve', 'under sleeve', 'collar'],
    seams: [
      'back.shoulder = front.shoulder, 3.1 mm',
      'front.side = back.side',
      'back.centre = back.centre',
      'top sleeve.front = under sleeve.front',
      'top sleeve.back = under sleeve.back',
      'top sleeve.cap + under sleeve.cap = front.armhole + back.armhole, 16 mm',
      'collar.neck = front.neck + back.neck, -22 mm',
      'collar.outer = collar.outer',
      'collar.end = collar.end',
      'facing.front = front.front',
      'facing.neck = front.neck',
    ],
    notches: [
      ['single', ['front.armhole from side', underCap * 0.42 + 24], ['top sleeve.cap from front', 24]],
      ['double', ['back.armhole from side', underCap * 0.58 + 30], ['top sleeve.cap from back', 30]],
      ['single', ['top sleeve.cap from front', cf - underCap * 0.42 + 8]],
      ['single', ['under sleeve.cap from front', underCap * 0.42]],
      ['single', ['top sleeve.front from cap', 200], ['under sleeve.front from cap', 200]],
      ['double', ['top sleeve.back from cap', 150], ['under sleeve.back from cap', 150]],
      ['double', ['top sleeve.back from hem', 180], ['under sleeve.back from hem', 180]],
      ['single', ['front.side from armhole', 200], ['back.side from armhole', 200]],
      ['single', ['collar.neck from centre', lengthOf(back, 'neck')]],
      ['single', ['front.neck from front', 22], ['facing.neck from front', 22]],
    ],
  });
}
