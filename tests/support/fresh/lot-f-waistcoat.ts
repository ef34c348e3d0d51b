import type { Piece } from '@paperhinge/geometry';
import { lengthOf, type XY } from '../twenty-drafts.js';
import { armhole, neckline } from './block.js';
import { type Cut, shoulderEnd } from './lots-body.js';
import { bend, ring, suited, wedge } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// A waistcoat, its fronts lined up to a facing and its back with itself.

const neck: XY = [72, -6];
const end = shoulderEnd(neck, 96, 0.42);
const side: XY = [252, 470];
const point: XY = [30, 560];
const foot: XY = [-16, 500];
const breakAt: XY = [-16, 226];
const frontHole = armhole(end, 148, [252, 250]);
/** Where facing and lining meet at the shoulder and at the hem. */
const inShoulder = shoulderEnd(neck, 38, 0.42);
const inFoot: XY = [74, 542.162];
const inside = bend(inShoulder, [104, 130], [70, 300], inFoot, 6);

const edgeOf = (from: XY): readonly XY[] => [
  ...bend(from, [-16, 420], [-16, 300], breakAt, 3),
  ...bend(breakAt, [-14, 170], [52, 60], neck, 5).slice(0, -1),
];

function fronts(): readonly [front: Piece, facing: Piece, lining: Piece] {
  const front = ring(
    'front',
    neck,
    {
      shoulder: [end],
      armhole: frontHole,
      side: bend([252, 250], [246, 320], [240, 370], side, 4),
      hem: [point],
      point: [foot],
      front: edgeOf(foot),
    },
    { cut: 2 },
  );
  const facing = ring(
    'front facing',
    neck,
    { shoulder: [inShoulder], inner: inside, hem: [point], point: [foot], front: edgeOf(foot) },
    { cut: 2 },
  );
  const lining = ring(
    'front lining',
    inShoulder,
    {
      shoulder: [end],
      armhole: frontHole,
      side: bend([252, 250], [246, 320], [240, 370], side, 4),
      hem: [inFoot],
      inner: [...inside].reverse().slice(1),
    },
    { cut: 2 },
  );
  return [front, facing, lining];
}

function backOf(sides: number): Piece {
  const cut: Cut = { cut: 4, darts: { dart: wedge([124, 474.4], [104, 475.4], 190) } };
  return suited(
    y =>
      ring(
        'back',
        [0, 20],
        {
          neck: neckline(20, 74, -8),
          shoulder: [shoulderEnd([74, -8], 98, 0.36)],
          armhole: armhole(shoulderEnd([74, -8], 98, 0.36), 158, [246, y!]),
          side: bend([246, y!], [240, 320], [230, 380], [238, 466], 4),
          hem: [
            ...bend([238, 466], [200, 470], [160, 473], [124, 474.4], 3),
            [104, 475.4],
            ...bend([104, 475.4], [70, 477], [40, 478], [8, 478], 3),
          ],
          centre: bend([8, 478], [14, 380], [2, 200], [0, 20], 4).slice(0, -1),
        },
        cut,
      ),
    { edges: ['side'], mm: sides, between: [200, 290] },
  );
}

/** V-necked, five buttons, welts, a strap and buckle behind. */
export function waistcoat(): Unnamed {
  const [front, facing, lining] = fronts();
  const back = backOf(lengthOf(front, 'side'));
  const strip = (name: string, long: number, wide: number, cut: number): Piece =>
    ring(name, [0, 0], { upper: [[long, 0]], right: [[long, wide]], lower: [[0, wide]], left: [] }, { cut });
  return unnamed({
    title: 'waistcoat with lined fronts',
    pieces: [lining, strip('welt', 108, 46, 2), back, front, strip('strap', 210, 34, 4), facing],
    over: ['front', 'front facing'],
    seams: [
      'back.shoulder = front.shoulder, 2 mm',
      'back.shoulder = front facing.shoulder + front lining.shoulder, 2 mm',
      'front.side = back.side',
      'front lining.side = back.side',
      'back.centre = back.centre',
      'back.neck = back.neck',
      'back.armhole = back.armhole',
      'back.hem = back.hem',
      'front facing.inner = front lining.inner',
      'front facing.front = front.front',
      'front facing.point = front.point',
      'front facing.hem + front lining.hem = front.hem',
      'front lining.armhole = front.armhole',
      'strap.upper = strap.upper',
      'strap.left = strap.left',
    ],
    notches: [
      ['single', ['front.armhole from side', 88], ['front lining.armhole from side', 88]],
      ['double', ['back.armhole from side', 94]],
      [
        'single',
        ['front.side from armhole', 120],
        ['back.side from armhole', 120],
        ['front lining.side from armhole', 120],
      ],
      ['single', ['front facing.inner from shoulder', 250], ['front lining.inner from shoulder', 250]],
      ['single', ['front.front from shoulder', 236], ['front facing.front from shoulder', 236]],
      ['double', ['back.centre from neck', 180]],
    ],
  });
}
