import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf, type XY } from '../twenty-drafts.js';
import { leg, patch } from './lots-body.js';
import { bend, ring, suited } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// Pyjama trousers with a casing cut in one, and dungarees for a child of four.

/** Pockets hang in the side seams; doubled bands at the hems; a cord or elastic runs in the turned waist. */
export function pyjamaTrousers(): Unnamed {
  const front = leg('front', {
    waist: [
      [6, 0],
      [140, -2],
      [262, -4],
    ],
    hip: [272, 230],
    fork: [-56, 318],
    bow: [2, 216],
    knee: [-2, 232, 660],
    hem: [6, 220, 960],
  });
  const back = suited(
    (fork, top) =>
      leg('back', {
        waist: [
          [42, -34],
          [160, -15],
          [272, top!],
        ],
        hip: [288, 230],
        fork: [-112, fork!],
        bow: [6, 200],
        dip: -20,
        knee: [-20, 250, 660],
        hem: [-8, 234, 960],
      }),
    { edges: ['inseam'], mm: lengthOf(front, 'inseam') - 4, between: [300, 360] },
    { edges: ['outseam'], mm: lengthOf(front, 'outseam'), between: [-40, 30] },
  );
  const bag = ring(
    'bag',
    [0, 0],
    {
      opening: [[0, 160]],
      round: [
        ...bend([0, 160], [-10, 230], [-40, 276], [-90, 276], 4),
        ...bend([-90, 276], [-150, 276], [-158, 210], [-150, 150], 4),
        ...bend([-150, 150], [-136, 70], [-70, 6], [0, 0], 4).slice(0, -1),
      ],
    },
    { cut: 4 },
  );
  const hems = lengthOf(front, 'hem') + lengthOf(back, 'hem');
  const side = lengthOf(front, 'outseam');
  return unnamed({
    title: 'pyjama trousers with pockets in the side seams',
    pieces: [back, band('hem band', hems, 160, { cut: 2 }), bag, front],
    over: ['front', 'bag'],
    seams: [
      'front.outseam = back.outseam',
      'back.inseam = front.inseam, -4 mm',
      'front.crotch = front.crotch',
      'back.crotch = back.crotch',
      'hem band.upper = front.hem + back.hem',
      'hem band.left = hem band.right',
      'bag.round = bag.round',
    ],
    notches: [
      [
        'single',
        ['front.outseam from waist', 110],
        ['back.outseam from waist', 110],
        ['bag.opening from its start', 12],
      ],
      [
        'single',
        ['front.outseam from waist', 246],
        ['back.outseam from waist', 246],
        ['bag.opening from its start', 148],
      ],
      ['single', ['front.outseam from hem', side - 664], ['back.outseam from hem', side - 664]],
      ['single', ['front.inseam from hem', 300], ['back.inseam from hem', 300]],
      ['single', ['front.crotch from inseam', 90]],
      ['double', ['back.crotch from inseam', 130]],
    ],
  });
}

const low = 640;
const hollow = bend([84, -176], [88, -96], [116, -22], [166, -22], 6);

function bibbed(): readonly [front: Piece, back: Piece] {
  const front = ring(
    'front',
    [0, -176],
    {
      top: [[84, -176]],
      armhole: hollow,
      side: [...bend([166, -22], [168, 40], [184, 90], [184, 150], 3), [182, 380], [172, low]],
      hem: [[14, low]],
      inseam: [[4, 420], ...bend([4, 420], [0, 340], [-14, 280], [-30, 232], 3)],
      centre: [...bend([-30, 232], [-14, 226], [0, 200], [0, 160], 4), [0, 0]],
    },
    { cut: 2 },
  );
  const back = suited(
    (fork, side) =>
      ring(
        'back',
        [8, -128],
        {
          top: [[76, -132]],
          armhole: bend([76, -132], [84, -70], [122, side!], [172, side!], 6),
          side: [...bend([172, side!], [174, 40], [194, 90], [194, 150], 3), [190, 380], [180, low]],
          hem: [[6, low]],
          inseam: [[-8, 420], ...bend([-8, 420], [-14, 340], [-38, 280], [-66, fork!], 3)],
          centre: [...bend([-66, fork!], [-30, fork! - 13], [-2, 206], [2, 140], 4), [6, 0]],
        },
        { cut: 2 },
      ),
    { edges: ['inseam'], mm: lengthOf(front, 'inseam'), between: [200, 280] },
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [-50, 20] },
  );
  return [front, back];
}

/** A facing along the top and the armholes of a bib, 50 mm below at the side. */
const topFacing = (name: string, top: readonly [XY, XY], round: readonly XY[], depth: number): Piece => {
  const [sx, sy] = round.at(-1)!;
  return ring(
    name,
    top[0],
    {
      top: [top[1]],
      armhole: round,
      side: [[sx + 4, sy + 50]],
      lower: bend([sx + 4, sy + 50], [sx - 60, sy + 40], [top[1][0] - 20, depth], [0, depth], 5),
      centre: [],
    },
    { fold: 'centre' },
  );
};

/** Front and back run up to a bib; straps, faced to shape, patch pockets; it buttons at the sides. */
export function dungarees(): Unnamed {
  const [front, back] = bibbed();
  const frontFacing = topFacing(
    'front facing',
    [
      [0, -176],
      [84, -176],
    ],
    hollow,
    -60,
  );
  const sideTop = back.outline.parts.find(part => part.type === 'edge' && part.name === 'side');
  const y = sideTop?.type === 'edge' ? sideTop.path.segments[0]![0]!.y : 0;
  const backFacing = suited(
    x =>
      topFacing(
        'back facing',
        [
          [0, -129],
          [x!, -132],
        ],
        bend([x!, -132], [x! + 8, -70], [x! + 46, y], [x! + 96, y], 6),
        -30,
      ),
    { edges: ['top'], mm: lengthOf(back, 'top'), between: [60, 90] },
  );
  return unnamed({
    title: 'dungarees for a child',
    pieces: [
      band('strap', 470, 70, { cut: 2 }),
      backFacing,
      front,
      patch('bib pocket', 112, 100, 1, 14),
      back,
      frontFacing,
      patch('seat pocket', 104, 112, 2, 30),
    ],
    over: ['back', 'front facing'],
    seams: [
      'front.centre = front.centre',
      'back.centre = back.centre',
      'front.side = back.side',
      'front.inseam = back.inseam',
      'front facing.top = front.top',
      'front facing.armhole = front.armhole',
      'back facing.top = back.top',
      'back facing.armhole = back.armhole',
      'front facing.side = back facing.side',
    ],
    notches: [
      ['single', ['front.side from armhole', 120], ['back.side from armhole', 120]],
      ['single', ['front.inseam from hem', 210], ['back.inseam from hem', 210]],
      ['single', ['front.centre from inseam', 110]],
      ['double', ['back.centre from inseam', 150]],
      ['single', ['front.armhole from side', 90], ['front facing.armhole from side', 90]],
      ['double', ['back.armhole from side', 80], ['back facing.armhole from side', 80]],
    ],
  });
}
