import type { Piece } from '@paperhinge/geometry';
import { lengthOf } from '../twenty-drafts.js';
import { neckline } from './block.js';
import { type Cut, patch, shoulderEnd, torso } from './lots-body.js';
import { bend, ring, suited, wedge } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// A short unlined coat with sleeves of two parts.

const deep = 104,
  wide = 84,
  stand = 26;

function body(): readonly [front: Piece, back: Piece] {
  const front = torso(
    'front',
    {
      deep,
      wide,
      stand,
      shoulder: 126,
      slope: 0.39,
      across: 192,
      pit: [272, 246],
      side: [
        [270, 286],
        [268.5, 308],
        ...bend([268.5, 308], [264, 370], [262, 410], [266, 460], 3),
        [284, 720],
      ],
      foot: bend([284, 720], [200, 732], [80, 738], [-stand, 738], 4),
    },
    { cut: 2, darts: { dart: wedge([270, 286], [268.5, 308], 126) } },
  );
  const back = suited(
    y =>
      ring(
        'back',
        [0, 22],
        {
          neck: neckline(22, 86),
          shoulder: [shoulderEnd([86, 0], 134, 0.35)],
          armhole: [
            ...bend(shoulderEnd([86, 0], 134, 0.35), [200, 86], [201, 118], [206, 156], 4),
            ...bend([206, 156], [210, 214], [236, y!], [272, y!], 5),
          ],
          side: [...bend([272, y!], [269, 330], [260, 380], [262, 440], 4), [286, 716]],
          hem: bend([286, 716], [200, 727], [90, 732], [-2, 732], 4),
          centre: [
            ...bend([-2, 732], [4, 600], [14, 480], [12, 400], 3),
            ...bend([12, 400], [10, 300], [0, 160], [0, 22], 4).slice(0, -1),
          ],
        },
        { cut: 2 },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [180, 280] },
  );
  return [front, back];
}

/** Hindarm and forearm seams; the under part is scooped as the armhole is. */
function sleeves(armholes: number): readonly [upper: Piece, under: Piece] {
  const elbow = 190,
    long = 430;
  const under = ring(
    'under sleeve',
    [0, 0],
    {
      cap: bend([0, 0], [30, 30], [96, 24], [158, -62], 6),
      back: [
        ...bend([158, -62], [172, 10], [174, 110], [166, elbow], 4),
        ...bend([166, elbow], [158, 270], [144, 360], [136, long], 3),
      ],
      hem: [[22, long + 4]],
      front: [
        ...bend([22, long + 4], [16, 350], [6, 260], [4, elbow], 3),
        ...bend([4, elbow], [2, 120], [0, 60], [0, 0], 3).slice(0, -1),
      ],
    },
    { cut: 2 },
  );
  const upper = suited(
    (back, foot, high) =>
      ring(
        'upper sleeve',
        [0, 0],
        {
          cap: [
            ...bend([0, 0], [14, -60], [40, -high!], [118, -high!], 6),
            ...bend([118, -high!], [180, -high!], [222, -96], [246, back!], 6),
          ],
          back: [
            ...bend([246, back!], [262, 10], [262, 110], [252, elbow], 4),
            ...bend([252, elbow], [242, 270], [220, 360], [208, long], 3),
          ],
          hem: [[38, foot!]],
          front: [
            ...bend([38, foot!], [30, 350], [14, 260], [10, elbow], 3),
            ...bend([10, elbow], [8, 120], [4, 60], [0, 0], 3).slice(0, -1),
          ],
        },
        { cut: 2 },
      ),
    { edges: ['back'], mm: lengthOf(under, 'back') + 6, between: [-90, -30] },
    { edges: ['front'], mm: lengthOf(under, 'front') - 3, between: [410, 460] },
    { edges: ['cap'], mm: armholes + 30 - lengthOf(under, 'cap'), between: [80, 240] },
  );
  return [upper, under];
}

/** Collar and under collar by their neck; the under one is smaller at its outer edge. */
function collars(neck: number): readonly [collar: Piece, under: Piece] {
  const draw = (name: string, less: number, cut: Cut): Piece =>
    suited(
      x =>
        ring(
          name,
          [0, 0],
          {
            outer: bend([0, 0], [x! * 0.5, 0], [x! * 0.8, 2], [x! + 14 - less, -6 + less], 4),
            end: [[x!, 72]],
            neck: bend([x!, 72], [x! * 0.7, 92], [x! * 0.4, 96 - less], [0, 96 - less], 5),
            centre: [],
          },
          cut,
        ),
      { edges: ['neck'], mm: neck, between: [neck - 60, neck + 10] },
    );
  return [draw('collar', 0, { fold: 'centre' }), draw('under collar', 1.5, { cut: 2 })];
}

function facings(): readonly [front: Piece, back: Piece] {
  const out = shoulderEnd([wide, 0], 46, 0.39);
  const front = ring(
    'front facing',
    [-stand, deep],
    {
      neck: [[0, deep], ...neckline(deep, wide)],
      shoulder: [out],
      inner: [...bend(out, [118, 120], [66, 200], [60, 360], 6), [60, 550], [60, 738]],
      hem: [[-stand, 738]],
      front: [],
    },
    { cut: 2 },
  );
  const nape = shoulderEnd([86, 0], 46, 0.35);
  const back = ring(
    'back facing',
    [0, 22],
    { neck: neckline(22, 86), shoulder: [nape], outer: bend(nape, [118, 70], [70, 92], [0, 92]), centre: [] },
    { fold: 'centre' },
  );
  return [front, back];
}

/** Buttoned up to a turned-down collar, patch pockets with flaps cut double. */
export function coat(): Unnamed {
  const [front, back] = body();
  const [cf, cb] = [lengthOf(front, 'armhole'), lengthOf(back, 'armhole')];
  const [upper, under] = sleeves(cf + cb);
  const [nf, nb] = [lengthOf(front, 'neck'), lengthOf(back, 'neck')];
  const [collar, underCollar] = collars(nf + nb - stand);
  const [frontFacing, backFacing] = facings();
  const uc = lengthOf(under, 'cap');
  return unnamed({
    title: 'short coat with sleeves of two parts',
    pieces: [
      under,
      collar,
      back,
      patch('flap', 168, 58, 4, 22),
      frontFacing,
      patch('pocket', 166, 186, 2, 30),
      upper,
      front,
      backFacing,
      underCollar,
    ],
    over: ['front', 'front facing', 'collar', 'upper sleeve'],
    seams: [
      'back.shoulder = front.shoulder, 8 mm',
      'front.side = back.side',
      'back.centre = back.centre',
      'upper sleeve.back = under sleeve.back, 6 mm',
      'upper sleeve.front = under sleeve.front, -3 mm',
      'upper sleeve.cap + under sleeve.cap = front.armhole + back.armhole, 30 mm',
      'front facing.front = front.centre',
      'front facing.neck = front.neck',
      'back facing.neck = back.neck',
      'front facing.shoulder = back facing.shoulder',
      `under collar.neck = front.neck + back.neck, ${-stand} mm`,
      `collar.neck = front.neck + back.neck, ${-stand} mm`,
      `collar.outer = under collar.outer, ${lengthOf(collar, 'outer') - lengthOf(underCollar, 'outer')} mm`,
      `collar.end = under collar.end, ${lengthOf(collar, 'end') - lengthOf(underCollar, 'end')} mm`,
      'under collar.centre = under collar.centre',
      'flap.round = flap.round',
    ],
    notches: [
      ['single', ['front.armhole from side', 96], ['upper sleeve.cap from front', 97 - uc * 0.3]],
      ['double', ['back.armhole from side', 116], ['under sleeve.cap from back', uc * 0.7 - 116]],
      ['single', ['under sleeve.cap from front', uc * 0.3]],
      ['single', ['upper sleeve.cap from front', cf + 13 - uc * 0.3]],
      ['single', ['upper sleeve.front from hem', 236], ['under sleeve.front from hem', 238]],
      ['double', ['upper sleeve.back from cap', 210], ['under sleeve.back from cap', 206]],
      ['single', ['front.neck from centre', stand], ['front facing.neck from front', stand]],
      ['single', ['collar.neck from end', nf - stand], ['under collar.neck from end', nf - stand]],
      ['single', ['front.side from hem', 262], ['back.side from hem', 262]],
      ['single', ['back.centre from neck', 190]],
    ],
  });
}
