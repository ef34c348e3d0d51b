import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf } from '../twenty-drafts.js';
import { bend, ring, suited } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// Shorts on elastic, hips of 104 cm, with turn-ups and pockets sewn on.

function legs(): readonly [front: Piece, back: Piece] {
  const front = ring(
    'front',
    [0, 2],
    {
      waist: bend([0, 2], [80, 0], [160, -4], [252, -8], 3),
      outseam: bend([252, -8], [262, 100], [266, 260], [270, 452], 6),
      hem: [[-46, 460]],
      inseam: bend([-46, 460], [-50, 400], [-56, 330], [-66, 272], 4),
      crotch: [...bend([-66, 272], [-26, 266], [-2, 232], [2, 168]), [0, 2]],
    },
    { cut: 2 },
  );
  const back = suited(
    (foot, y) =>
      ring(
        'back',
        [48, -38],
        {
          waist: bend([48, -38], [130, -28], [210, -14], [296, -8], 3),
          outseam: bend([296, -8], [312, 100], [312, 260], [306, foot!], 6),
          hem: bend([306, foot!], [180, 456], [40, 464], [-86, 468], 4),
          inseam: bend([-86, 468], [-94, 400], [-108, 330], [-138, y!], 4),
          crotch: [...bend([-138, y!], [-70, y! + 4], [0, 240], [14, 140]), [48, -38]],
        },
        { cut: 2 },
      ),
    { edges: ['outseam'], mm: lengthOf(front, 'outseam'), between: [420, 490] },
    { edges: ['inseam'], mm: lengthOf(front, 'inseam'), between: [240, 330] },
  );
  return [front, back];
}

/** The band is folded over the elastic; front pockets have a slanted opening, the one behind is square. */
export function shorts(): Unnamed {
  const [front, back] = legs();
  const waist = lengthOf(front, 'waist') + lengthOf(back, 'waist');
  const hem = lengthOf(front, 'hem') + lengthOf(back, 'hem');
  const sidePocket = ring(
    'side pocket',
    [0, 0],
    {
      top: [[72, 0]],
      opening: bend([72, 0], [92, 40], [124, 76], [166, 96], 4),
      side: [[170, 214]],
      foot: [
        ...bend([170, 214], [120, 218], [60, 218], [24, 216], 3),
        ...bend([24, 216], [8, 214], [0, 206], [0, 190], 3),
      ],
      inner: [],
    },
    { cut: 2 },
  );
  const hip = ring('hip pocket', [0, 0], {
    opening: [[152, 0]],
    round: [
      [152, 124],
      ...bend([152, 124], [152, 150], [142, 160], [116, 160], 3),
      [36, 160],
      ...bend([36, 160], [10, 160], [0, 150], [0, 124], 3),
    ],
    left: [],
  });
  return unnamed({
    title: 'shorts with patch pockets and elastic',
    pieces: [
      band('waistband', 2 * waist, 88),
      sidePocket,
      back,
      band('turn-up', hem, 96, { cut: 2 }),
      hip,
      front,
    ],
    over: ['back', 'side pocket'],
    seams: [
      'front.outseam = back.outseam',
      'front.inseam = back.inseam',
      'front.crotch = front.crotch',
      'back.crotch = back.crotch',
      'waistband.lower = front.waist + back.waist, 2 x',
      'waistband.left = waistband.right',
      'turn-up.upper = front.hem + back.hem',
      'turn-up.left = turn-up.right',
    ],
    notches: [
      ['single', ['front.outseam from waist', 210], ['back.outseam from waist', 210]],
      ['single', ['front.inseam from hem', 96], ['back.inseam from hem', 96]],
      ['single', ['front.crotch from inseam', 90]],
      ['double', ['back.crotch from inseam', 140]],
      ['single', ['waistband.lower from left', lengthOf(back, 'waist')]],
      ['single', ['waistband.lower from left', waist]],
      ['single', ['waistband.lower from right', lengthOf(back, 'waist')]],
      ['single', ['turn-up.upper from left', lengthOf(front, 'hem')]],
    ],
  });
}
