import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf, type XY } from '../twenty-drafts.js';
import { arm, neckline } from './block.js';
import { over, shoulderEnd, torso } from './lots-body.js';
import { bend, ring, suited, wedge } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// A blouse with full sleeves, buttoned in front and faced, and an apron with a bib.

const deep = 92,
  wide = 74,
  stand = 18;

function body(): readonly [front: Piece, back: Piece] {
  const front = torso(
    'front',
    {
      deep,
      wide,
      stand,
      shoulder: 118,
      slope: 0.4,
      across: 168,
      pit: [244, 222],
      side: [[241, 262], [238, 288], ...bend([238, 288], [230, 340], [228, 380], [230, 404], 3), [248, 570]],
      foot: bend([248, 570], [180, 582], [60, 588], [-stand, 588], 4),
    },
    { cut: 2, darts: { dart: wedge([241, 262], [238, 288], 120) } },
  );
  const back = suited(
    y =>
      torso('back', {
        deep: 20,
        wide: 76,
        shoulder: 123,
        slope: 0.36,
        across: 184,
        pit: [244, y!],
        side: [...bend([244, y!], [242, 280], [230, 330], [230, 396], 3), [250, 566]],
        foot: bend([250, 566], [180, 576], [60, 580], [0, 580], 4),
      }),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [170, 260] },
  );
  return [front, back];
}

/** Gathered at the shoulder and into a doubled cuff; a strip binds the slit at the wrist. */
export function blouse(): Unnamed {
  const [front, back] = body();
  const [cf, cb] = [lengthOf(front, 'armhole'), lengthOf(back, 'armhole')];
  const cap = (cf + cb) * 1.28;
  const sleeve = arm('sleeve', { cap, upper: 424, hem: 356, long: 400, high: [60, 280] });
  const shoulder = shoulderEnd([wide, 0], 48, 0.4);
  const frontFacing = ring(
    'front facing',
    [-stand, deep],
    {
      neck: [[0, deep], ...neckline(deep, wide)],
      shoulder: [shoulder],
      inner: [...bend(shoulder, [114, 100], [52, 170], [48, 330], 6), [47, 460], [46, 588]],
      hem: [[-stand, 588]],
      front: [],
    },
    { cut: 2 },
  );
  const backFacing = ring(
    'back facing',
    [0, 20],
    {
      neck: neckline(20, 76),
      shoulder: [shoulderEnd([76, 0], 48, 0.36)],
      outer: bend(shoulderEnd([76, 0], 48, 0.36), [112, 56], [60, 80], [0, 80]),
      centre: [],
    },
    { fold: 'centre' },
  );
  const ratio = 218 / 356;
  const ends = [104, 112] as const;
  return unnamed({
    title: 'blouse with full sleeves',
    pieces: [
      back,
      band('cuff', 238, 100, { cut: 2 }),
      frontFacing,
      sleeve,
      band('slit binding', 190, 32, { cut: 2 }),
      backFacing,
      front,
    ],
    over: ['front facing', 'back facing'],
    seams: [
      'back.shoulder = front.shoulder, 5 mm',
      'front.side = back.side',
      'sleeve.cap = front.armhole + back.armhole, 1.28 x',
      'sleeve.front = sleeve.back',
      `cuff.upper = sleeve.hem, ${ratio} x, 20 mm`,
      'front facing.front = front.centre',
      'front facing.neck = front.neck',
      'back facing.neck = back.neck',
      'front facing.shoulder = back facing.shoulder',
    ],
    notches: [
      ['single', ['front.armhole from side', ends[0]], ['sleeve.cap from front', ends[0] + 2]],
      ['double', ['back.armhole from side', ends[1]], ['sleeve.cap from back', ends[1] + 2]],
      ['single', ['sleeve.cap from front', cap * (cf / (cf + cb))]],
      ['single', ['front.side from hem', 170], ['back.side from hem', 170]],
      ['single', ['front.neck from centre', stand], ['front facing.neck from front', stand]],
      ['single', ['front.hem from centre', stand]],
      ['single', ['sleeve.hem from back', 96]],
      ['single', ['cuff.upper from left', 20]],
      ['single', ['sleeve.hem from front', 178]],
      ['single', ['cuff.upper from right', 109]],
    ],
  });
}

/** A bib faced at the top, strips that bind its hollows, one wide pocket, a strap and two ties. */
export function apron(): Unnamed {
  const hollow = bend([128, 0], [140, 120], [190, 250], [330, 290], 7);
  const apronBody = ring(
    'body',
    [0, 0],
    {
      top: [[128, 0]],
      armhole: hollow,
      side: [[336, 820]],
      hem: [[0, 820]],
      centre: [],
    },
    { fold: 'centre' },
  );
  const facing = ring(
    'facing',
    [0, 0],
    {
      top: [[128, 0]],
      end: bend([128, 0], [130, 22], [133, 44], [137, 66], 3),
      lower: [[0, 66]],
      centre: [],
    },
    { fold: 'centre' },
  );
  const corner: XY = [190, 214];
  const pocket = ring('pocket', [-190, 0], {
    opening: [[190, 0]],
    right: [[190, 180]],
    'corner right': [[156, corner[1]]],
    foot: [over([156, corner[1]])],
    'corner left': [[-190, 180]],
    left: [],
  });
  return unnamed({
    title: 'apron with a bib',
    pieces: [
      pocket,
      band('binding', lengthOf(apronBody, 'armhole'), 40, { cut: 2 }),
      apronBody,
      band('tie', 860, 80, { cut: 2 }),
      facing,
      band('neck strap', 620, 70),
    ],
    seams: ['facing.top = body.top', 'binding.lower = body.armhole'],
    notches: [
      ['single', ['body.top from armhole', 18], ['facing.top from end', 18]],
      ['single', ['body.side from armhole', 30]],
      ['single', ['binding.lower from right', 180], ['body.armhole from top', 180]],
    ],
  });
}
