import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf, type XY } from '../twenty-drafts.js';
import { armhole } from './block.js';
import { bend, ring, suited } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// A dress without sleeves whose bodice is cut in panels, its skirt half a circle; an A-line skirt with a yoke and a flounce.

interface Panels {
  readonly centre: Piece;
  readonly side: Piece;
  /** The armhole's places, and where the side panel's shoulder ends. */
  readonly hole: readonly XY[];
  readonly end: XY;
}

const waistLine = 404;

function frontPanels(): Panels {
  const neck = bend([0, 128], [52, 128], [71, 80], [90, 10]);
  const centre = ring(
    'front centre',
    [0, 128],
    {
      neck,
      shoulder: [[119, 20]],
      panel: [
        ...bend([119, 20], [122, 100], [118, 170], [108, 236]),
        ...bend([108, 236], [100, 298], [90.5, 346], [90, waistLine]),
      ],
      waist: bend([90, waistLine], [60, 404.5], [28, 407], [0, 407], 3),
      centre: [],
    },
    { fold: 'centre' },
  );
  const [end, hole]: [XY, readonly XY[]] = [[158, 28], armhole([158, 28], 150, [232, 214])];
  const side = suited(
    y =>
      ring(
        'front side',
        [130, 18],
        {
          shoulder: [end],
          armhole: hole,
          side: bend([232, 214], [232, 270], [222, 330], [220, 396]),
          waist: bend([220, 396], [190, 393], [158, y! - 1], [128, y!], 3),
          panel: [
            ...bend([128, y!], [127, y! - 60], [98, 306], [99, 244]),
            ...bend([99, 244], [100, 176], [127, 98], [130, 18]).slice(0, -1),
          ],
        },
        { cut: 2 },
      ),
    { edges: ['panel'], mm: lengthOf(centre, 'panel') + 4, between: [380, 425] },
  );
  return { centre, side, hole, end };
}

function backPanels(): Panels {
  const centre = ring(
    'back centre',
    [0, 62],
    {
      neck: bend([0, 62], [48, 62], [79, 46], [92, 8]),
      shoulder: [[121, 18]],
      panel: [
        ...bend([121, 18], [124, 90], [120, 160], [110, 226]),
        ...bend([110, 226], [102, 290], [90.5, 344], [90, waistLine]),
      ],
      waist: bend([90, waistLine], [64, 404.5], [38, 406], [12, 406], 3),
      centre: [...bend([12, 406], [12, 340], [0, 270], [0, 190], 4)],
    },
    { cut: 2 },
  );
  const end: XY = [158, 26];
  const hole = armhole(end, 152, [224, 216]);
  const side = suited(
    y =>
      ring(
        'back side',
        [130, 16],
        {
          shoulder: [end],
          armhole: hole,
          side: bend([224, 216], [224, 272], [214, 332], [212, 398]),
          waist: bend([212, 398], [184, 395], [158, y! - 1], [130, y!], 3),
          panel: [
            ...bend([130, y!], [129, y! - 60], [114, 300], [114, 236]),
            ...bend([114, 236], [114, 168], [128, 94], [130, 16]).slice(0, -1),
          ],
        },
        { cut: 2 },
      ),
    { edges: ['panel'], mm: lengthOf(centre, 'panel'), between: [380, 425] },
  );
  return { centre, side, hole, end };
}

/** Neck and armhole faced in one: the panels' upper part with its panel line closed. */
function bothFaced(
  name: string,
  { centre, hole, end }: Panels,
  { first, neck, shoulder: [sx, sy], foot }: { first: XY; neck: readonly XY[]; shoulder: XY; foot: XY },
  cut: { fold?: string; cut?: number },
): Piece {
  const moved = hole.map(([x, y]): XY => [x - end[0] + sx, y - end[1] + sy]);
  const [px, py] = moved.at(-1)!;
  const faced = ring(
    name,
    first,
    {
      neck,
      shoulder: [[sx, sy]],
      armhole: moved,
      side: [foot],
      lower: bend(foot, [px * 0.66, py + 52], [px * 0.4, first[1] + 66], [0, first[1] + 66]),
      centre: [],
    },
    cut,
  );
  if (Math.abs(lengthOf(faced, 'neck') - lengthOf(centre, 'neck')) > 0.01) throw new Error('necks differ');
  return faced;
}

/** A quarter of half a circle, its waist as long as asked for. */
function flared(name: string, waist: number, long: number, cut: { fold?: string; cut?: number }): Piece {
  const arc = (r: number): readonly XY[] =>
    Array.from({ length: 9 }, (_, i): XY => {
      const turn = (i / 8) * (Math.PI / 4);
      return [r * Math.sin(turn), r * Math.cos(turn)];
    });
  return suited(
    r =>
      ring(
        name,
        [0, r!],
        {
          waist: arc(r!).slice(1),
          side: [arc(r! + long).at(-1)!],
          hem: arc(r! + long)
            .toReversed()
            .slice(1),
          centre: [],
        },
        cut,
      ),
    { edges: ['waist'], mm: waist, between: [120, 320] },
  );
}

/** A zip in the centre of the back. */
export function panelDress(): Unnamed {
  const front = frontPanels();
  const back = backPanels();
  const closed = (from: XY, by: number): XY => [
    from[0] + (29 / Math.hypot(29, 10)) * by,
    from[1] + (10 / Math.hypot(29, 10)) * by,
  ];
  const shoulder = lengthOf(front.centre, 'shoulder') + lengthOf(front.side, 'shoulder');
  const frontEnd = closed([90, 10], shoulder),
    backEnd = closed([92, 8], shoulder);
  const footOf = (panels: Panels, at: XY, [dx, dy]: XY): XY => {
    const [px, py] = panels.hole.at(-1)!;
    const by = 58 / Math.hypot(dx, dy);
    return [px - panels.end[0] + at[0] + dx * by, py - panels.end[1] + at[1] + dy * by];
  };
  const frontFacing = bothFaced(
    'front facing',
    front,
    {
      first: [0, 128],
      neck: bend([0, 128], [52, 128], [71, 80], [90, 10]),
      shoulder: frontEnd,
      foot: footOf(front, frontEnd, [-0.8, 58]),
    },
    { fold: 'centre' },
  );
  const backFacing = bothFaced(
    'back facing',
    back,
    {
      first: [0, 62],
      neck: bend([0, 62], [48, 62], [79, 46], [92, 8]),
      shoulder: backEnd,
      foot: footOf(back, backEnd, [-0.8, 58]),
    },
    { cut: 2 },
  );
  const [wf, wb] = [front, back].map(one => lengthOf(one.centre, 'waist') + lengthOf(one.side, 'waist')) as [
    number,
    number,
  ];
  return unnamed({
    title: 'dress with panels and a flared skirt',
    pieces: [
      back.side,
      flared('front skirt', wf, 610, { fold: 'centre' }),
      front.centre,
      backFacing,
      flared('back skirt', wb, 610, { cut: 2 }),
      front.side,
      frontFacing,
      back.centre,
    ],
    over: ['back centre', 'back side', 'back skirt'],
    seams: [
      'front side.panel = front centre.panel, 4 mm',
      'back side.panel = back centre.panel',
      'front centre.shoulder = back centre.shoulder',
      'front side.shoulder = back side.shoulder',
      'front side.side = back side.side',
      'back centre.centre = back centre.centre',
      'front skirt.waist = front centre.waist + front side.waist',
      'back skirt.waist = back centre.waist + back side.waist',
      'front skirt.side = back skirt.side',
      'back skirt.centre = back skirt.centre',
      'front facing.neck = front centre.neck',
      'back facing.neck = back centre.neck',
      'front facing.armhole = front side.armhole',
      'back facing.armhole = back side.armhole',
      'front facing.shoulder = back facing.shoulder',
      'front facing.side = back facing.side',
    ],
    notches: [
      ['single', ['front centre.panel from shoulder', 150], ['front side.panel from shoulder', 150]],
      ['single', ['front centre.panel from waist', 120], ['front side.panel from waist', 120]],
      ['double', ['back centre.panel from shoulder', 140], ['back side.panel from shoulder', 140]],
      ['single', ['front side.side from armhole', 90], ['back side.side from armhole', 90]],
      ['single', ['front skirt.waist from centre', lengthOf(front.centre, 'waist')]],
      ['single', ['back skirt.waist from centre', lengthOf(back.centre, 'waist')]],
      ['single', ['front skirt.side from waist', 200], ['back skirt.side from waist', 200]],
      ['single', ['back skirt.centre from waist', 190]],
      ['single', ['front facing.armhole from side', 80], ['front side.armhole from side', 80]],
      ['double', ['back facing.armhole from side', 80], ['back side.armhole from side', 80]],
    ],
  });
}

function hipYoke(name: string, [x, y]: XY, dip: number, out: number): Piece {
  const down = Math.sqrt(94 * 94 - out * out);
  const steep = out / down;
  return ring(
    name,
    [0, dip],
    {
      upper: bend([0, dip], [56, dip], [x - 56, y + 56 * steep], [x, y]),
      side: [[x + out, y + down]],
      lower: bend([x + out, y + down], [x + out - 66, y + down + 66 * steep], [72, dip + 94], [0, dip + 94]),
      centre: [],
    },
    { fold: 'centre', cut: 2 },
  );
}

/** Its foot is cut to run square into the side. */
function underYoke(name: string, top: number, hem: number, long: number): Piece {
  return suited(
    (x, y) => {
      const steep = 0.16;
      const foot: XY = [x! + hem, y! - 24];
      return ring(
        name,
        [0, 0],
        {
          top: bend([0, 0], [70, 0], [x! - 70, -24 + 70 * steep], [x!, -24]),
          side: [foot],
          hem: bend(foot, [foot[0] - 100, foot[1] + 100 * steep], [110, y! + 6], [0, y! + 6]),
          centre: [],
        },
        { fold: 'centre' },
      );
    },
    { edges: ['top'], mm: top, between: [160, 340] },
    { edges: ['side'], mm: long, between: [300, 600] },
  );
}

/** A zip in the left side, an inverted pleat in front, a gathered flounce of two equal strips, patch pockets. */
export function yokedSkirt(): Unnamed {
  const frontYoke = hipYoke('front yoke', [174, -34], 0, 30);
  const backYoke = hipYoke('back yoke', [180, -30], 8, 34);
  const pleat = 44;
  const front = underYoke('front', lengthOf(frontYoke, 'lower') + pleat, 66, 396);
  const back = underYoke('back', lengthOf(backYoke, 'lower'), 66, 396);
  const hems = lengthOf(front, 'hem') + lengthOf(back, 'hem');
  const pocket = ring('pocket', [0, 0], {
    opening: [[152, 0]],
    right: [[158, 108]],
    foot: [
      ...bend([158, 108], [160, 150], [132, 168], [79, 168]),
      ...bend([79, 168], [26, 168], [-2, 150], [-6, 108]),
    ],
    left: [],
  });
  return unnamed({
    title: 'A-line skirt with a hip yoke and a flounce',
    pieces: [
      front,
      backYoke,
      band('flounce', hems * 1.7, 168, { cut: 2 }),
      { ...pocket, cutting: { ...pocket.cutting, count: 2 } },
      back,
      frontYoke,
    ],
    over: ['back', 'back yoke'],
    seams: [
      'front yoke.side = back yoke.side',
      'front.side = back.side',
      `front.top = front yoke.lower, ${pleat} mm`,
      'back.top = back yoke.lower',
      'front yoke.upper = front yoke.upper',
      'back yoke.upper = back yoke.upper',
      'flounce.upper = front.hem + back.hem, 1.7 x',
      'flounce.left = flounce.right',
    ],
    notches: [
      ['single', ['front.top from centre', pleat]],
      ['single', ['front.top from side', 100], ['front yoke.lower from side', 100]],
      ['double', ['back.top from side', 100], ['back yoke.lower from side', 100]],
      ['single', ['front.side from top', 110], ['back.side from top', 110]],
      ['single', ['flounce.upper from left', hems * 0.85]],
    ],
  });
}
