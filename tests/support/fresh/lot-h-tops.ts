import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf, type XY } from '../twenty-drafts.js';
import { arm, armhole, neckline } from './block.js';
import { bend, ring, suited, wedge } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// A sleeveless top faced at neck and armholes, and a sweatshirt with a zip down the front, a chest seam and ribs.

const deep = 112,
  wide = 84,
  tip: XY = [152, 27],
  armpit: XY = [226, 188];

function topBody(): readonly [front: Piece, back: Piece, backArmpit: number] {
  const front = ring(
    'front',
    [0, deep],
    {
      neck: neckline(deep, wide),
      shoulder: [tip],
      armhole: armhole(tip, 144, armpit),
      side: [[222, 230], [219.5, 257], ...bend([219.5, 257], [212, 340], [220, 460], [236, 566], 5)],
      hem: bend([236, 566], [170, 577], [80, 581], [0, 581], 4),
      centre: [],
    },
    { fold: 'centre', darts: { dart: wedge([222, 230], [219.5, 257], 122) } },
  );
  const behind = (y: number): Piece =>
    ring(
      'back',
      [0, 40],
      {
        neck: neckline(40, wide + 2),
        shoulder: [[154, 27]],
        armhole: armhole([154, 27], 151, [220, y]),
        side: bend([220, y], [208, 330], [214, 450], [232, 566], 6),
        hem: bend([232, 566], [160, 574], [80, 577], [0, 577], 4),
        centre: [],
      },
      { cut: 2 },
    );
  const back = suited(y => behind(y!), { edges: ['side'], mm: lengthOf(front, 'side'), between: [160, 270] });
  const side = back.outline.parts.find(part => part.type === 'edge' && part.name === 'side');
  return [front, back, side?.type === 'edge' ? side.path.segments[0]![0]!.y : 0];
}

/** The strip that faces an armhole, 42 mm wide at the side and 32 mm on the shoulder. */
const armFacing = (name: string, [sx, sy]: XY, across: number, [px, py]: XY): Piece => {
  const foot: XY = [px - 3, py + Math.sqrt(42 * 42 - 9)];
  const over: XY = [sx - 29.724, sy - 11.853];
  return ring(
    name,
    [sx, sy],
    {
      armhole: armhole([sx, sy], across, [px, py]),
      side: [foot],
      outer: bend(foot, [foot[0] - 62, foot[1] + 2], [over[0] - 22, over[1] + 132], over, 8),
      shoulder: [],
    },
    { cut: 2 },
  );
};

/** It closes at the top of the back seam with a button and a loop. */
export function facedTop(): Unnamed {
  const [front, back, y] = topBody();
  const neckFacing = (
    name: string,
    deep: number,
    wide: number,
    cut: { fold?: string; cut?: number },
  ): Piece =>
    ring(
      name,
      [0, deep],
      {
        neck: neckline(deep, wide),
        shoulder: [[wide + 30, 12]],
        outer: bend([wide + 30, 12], [wide + 22, deep * 0.6 + 36], [62, deep + 52], [0, deep + 52]),
        centre: [],
      },
      cut,
    );
  return unnamed({
    title: 'sleeveless top with facings',
    pieces: [
      armFacing('back arm facing', [154, 27], 151, [220, y]),
      front,
      neckFacing('back neck facing', 40, wide + 2, { cut: 2 }),
      armFacing('front arm facing', tip, 144, armpit),
      back,
      neckFacing('front neck facing', deep, wide, { fold: 'centre' }),
    ],
    over: ['back', 'back neck facing', 'front arm facing'],
    seams: [
      'front.shoulder = back.shoulder',
      'front.side = back.side',
      'back.centre = back.centre',
      'front neck facing.neck = front.neck',
      'back neck facing.neck = back.neck',
      'front neck facing.shoulder = back neck facing.shoulder',
      'front arm facing.armhole = front.armhole',
      'back arm facing.armhole = back.armhole',
      'front arm facing.shoulder = back arm facing.shoulder',
      'front arm facing.side = back arm facing.side',
    ],
    notches: [
      ['single', ['front.armhole from side', 84], ['front arm facing.armhole from side', 84]],
      ['double', ['back.armhole from side', 90], ['back arm facing.armhole from side', 90]],
      ['single', ['front.neck from shoulder', 62], ['front neck facing.neck from shoulder', 62]],
      ['double', ['back.neck from shoulder', 45], ['back neck facing.neck from shoulder', 45]],
      ['single', ['front.side from hem', 160], ['back.side from hem', 160]],
      ['single', ['back.centre from neck', 120]],
    ],
  });
}

function zipBody(): readonly [chest: Piece, front: Piece, back: Piece] {
  const end: XY = [234, 54],
    arms = armhole(end, 228, [278, 272]),
    across = arms[3]!;
  const chest = ring(
    'chest',
    [0, 94],
    {
      neck: neckline(94, 86),
      shoulder: [end],
      armhole: arms.slice(0, 4),
      lower: bend(across, [150, across[1] + 12], [70, 196], [0, 196], 4),
      centre: [],
    },
    { cut: 2 },
  );
  const front = ring(
    'front',
    [0, 196],
    {
      top: bend([0, 196], [70, 196], [150, across[1] + 12], across, 4),
      armhole: arms.slice(4),
      side: bend([278, 272], [274, 390], [272, 500], [270, 606], 4),
      hem: [[0, 608]],
      centre: [],
    },
    { cut: 2 },
  );
  const back = suited(
    y =>
      ring(
        'back',
        [0, 26],
        {
          neck: neckline(26, 90),
          shoulder: [[238, 54]],
          armhole: armhole([238, 54], 235, [276, y!]),
          side: bend([276, y!], [272, 390], [270, 500], [268, 606], 4),
          hem: [[0, 608]],
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [230, 320] },
  );
  return [chest, front, back];
}

/** The zip runs to the top of a stand collar that is lined with itself; pockets are sewn on. */
export function zippedSweatshirt(): Unnamed {
  const [chest, front, back] = zipBody();
  const [cc, cf, cb] = [chest, front, back].map(own => lengthOf(own, 'armhole')) as [number, number, number];
  const sleeve = arm('sleeve', { cap: cc + cf + cb + 4, upper: 436, hem: 256, long: 446, high: [40, 190] });
  const collar = suited(
    x =>
      ring(
        'collar',
        [0, 0],
        {
          upper: bend([0, 0], [80, 0], [150, -4], [x! - 14, -14], 4),
          front: bend([x! - 14, -14], [x! - 9, 10], [x! - 4, 34], [x!, 58], 3),
          neck: bend([x!, 58], [150, 74], [80, 78], [0, 78], 5),
          centre: [],
        },
        { fold: 'centre', cut: 2 },
      ),
    { edges: ['neck'], mm: lengthOf(chest, 'neck') + lengthOf(back, 'neck'), between: [180, 300] },
  );
  const half = 0.86 * (lengthOf(front, 'hem') + lengthOf(back, 'hem'));
  const hip = ring(
    'hip rib',
    [0, 0],
    { upper: [[half, 0]], end: [[half, 132]], lower: [[0, 132]], centre: [] },
    { fold: 'centre' },
  );
  const pocket = ring(
    'pocket',
    [0, 0],
    {
      top: [[96, 0]],
      opening: bend([96, 0], [112, 44], [134, 88], [164, 124], 4),
      side: [[164, 186]],
      lower: [[0, 186]],
      inner: [],
    },
    { cut: 2 },
  );
  return unnamed({
    title: 'zipped sweatshirt with a stand collar',
    pieces: [hip, back, pocket, sleeve, chest, band('cuff', 204, 132, { cut: 2 }), front, collar],
    over: ['chest', 'sleeve'],
    seams: [
      'chest.shoulder = back.shoulder',
      'chest.lower = front.top',
      'front.side = back.side',
      'sleeve.front = sleeve.back',
      'sleeve.cap = chest.armhole + front.armhole + back.armhole, 4 mm',
      'collar.neck = chest.neck + back.neck',
      'collar.upper = collar.upper',
      'collar.front = collar.front',
      'hip rib.upper = front.hem + back.hem, 0.86 x',
      `cuff.upper = sleeve.hem, ${204 / 256} x`,
      'cuff.left = cuff.right',
    ],
    notches: [
      ['single', ['front.armhole from side', 88], ['sleeve.cap from front', 88]],
      ['double', ['back.armhole from side', 96], ['sleeve.cap from back', 97]],
      ['single', ['sleeve.cap from front', cf + cc + 2]],
      ['single', ['chest.lower from centre', 110], ['front.top from centre', 110]],
      ['single', ['collar.neck from front', lengthOf(chest, 'neck')]],
      ['single', ['front.side from hem', 180], ['back.side from hem', 180]],
      ['single', ['hip rib.upper from end', 0.86 * lengthOf(front, 'hem')]],
      ['single', ['sleeve.back from hem', 200], ['sleeve.front from hem', 200]],
    ],
  });
}
