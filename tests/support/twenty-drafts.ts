import {
  at,
  definePattern,
  edgePath,
  type OutlinePart,
  type Path,
  type Pattern,
  type Piece,
  pathLength,
} from '@paperhinge/geometry';
import { reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { compose, identity, mirror, rotation } from '@paperhinge/geometry/plane';
import { type MeasuredEdge, type MeasuredPoint, measuredPiece } from '@paperhinge/geometry/trace';

// Twenty-one garments drafted by figures in mm, as a maker would off a measure, for what is proposed of drawings without
// names: pieces stand under numbers, and what is sewn to what is known.

/** A seam by the edges of its two sides, `piece.edge`. */
export type KnownSeam = readonly [a: readonly string[], b: readonly string[]];

/** A garment without names, and what its seams are. */
export interface Draft {
  readonly title: string;
  readonly pattern: Pattern;
  readonly seams: readonly KnownSeam[];
}

export type XY = readonly [number, number];
type Through =
  | readonly XY[]
  | { readonly through: readonly XY[]; readonly starts?: 'square'; readonly ends?: 'square' };

/** A piece by its edges once round; each list of places is a line through them. */
export function piece(
  name: string,
  edges: Readonly<Record<string, Through>>,
  { fold, cut = 1, darts = {} }: Cut & { readonly darts?: Readonly<Record<string, readonly XY[]>> } = {},
): Piece {
  const points: Record<string, MeasuredPoint> = {};
  const nameOf = ([x, y]: XY): string => {
    const key = `${x.toFixed(3)} ${y.toFixed(3)}`;
    points[key] = { x, y };
    return key;
  };
  const lines = Object.entries(edges).map(([edge, told]): MeasuredEdge => {
    const { through, ...ends } = 'through' in told ? told : { through: told };
    return { name: edge, through: through.map(nameOf), ...ends, ...(edge === fold ? { kind: 'fold' } : {}) };
  });
  const open = Object.entries(darts).map(([dart, places]) => ({ name: dart, points: places.map(nameOf) }));
  return measuredPiece({ name, points, edges: lines, darts: open, cutting: { count: cut } }).piece;
}
interface Cut {
  readonly fold?: string;
  readonly cut?: number;
}

interface Half {
  readonly neck: XY;
  /** Along the shoulder, and how far it falls to the width. */
  readonly shoulder: number;
  readonly slope: number;
  readonly armpit: XY;
  /** How far the armhole is cut in from the shoulder's end. */
  readonly hollow?: number;
  readonly sideTo: XY;
  readonly centreTo: number;
}

const shoulderEnd = ({ neck: [x], shoulder, slope }: Half): XY => [
  x + shoulder / Math.hypot(1, slope),
  (shoulder * slope) / Math.hypot(1, slope),
];

function armholeOf(half: Half): readonly XY[] {
  const [sx, sy] = shoulderEnd(half),
    [ax, ay] = half.armpit,
    hollow = half.hollow ?? 12;
  return [
    [sx, sy],
    [sx - hollow, sy + (ay - sy) * 0.55],
    [sx - hollow + (ax - sx + hollow) * 0.3, sy + (ay - sy) * 0.86],
    [ax, ay],
  ];
}

export function half(name: string, of: Half, cut: Cut = { fold: 'centre' }): Piece {
  const [nx, ny] = of.neck,
    end = shoulderEnd(of);
  return piece(
    name,
    {
      neck: {
        through: [
          [0, ny],
          [nx * 0.62, ny * 0.66],
          [nx, 0],
        ],
        starts: 'square',
      },
      shoulder: [[nx, 0], end],
      armhole: armholeOf(of),
      side: [of.armpit, of.sideTo],
      hem: { through: [of.sideTo, [0, of.centreTo]], starts: 'square', ends: 'square' },
      centre: [
        [0, of.centreTo],
        [0, ny],
      ],
    },
    cut,
  );
}

export const lengthOf = (of: Piece, ...edges: readonly string[]): number =>
  edges.reduce((sum, edge) => sum + pathLength(edgePath(of, edge)), 0);

/** A sleeve whose cap is as long as asked for; its height is found. */
export function sleeve(
  name: string,
  cap: number,
  { upper, wrist, long }: { upper: number; wrist: number; long: number },
): Piece {
  const draw = (high: number): Piece =>
    piece(
      name,
      {
        cap: [
          [0, 0],
          [upper * 0.13, -high * 0.2],
          [upper * 0.3, -high * 0.78],
          [upper * 0.5, -high],
          [upper * 0.7, -high * 0.78],
          [upper * 0.87, -high * 0.2],
          [upper, 0],
        ],
        back: [
          [upper, 0],
          [(upper + wrist) / 2, long],
        ],
        hem: [
          [(upper + wrist) / 2, long],
          [(upper - wrist) / 2, long],
        ],
        front: [
          [(upper - wrist) / 2, long],
          [0, 0],
        ],
      },
      { cut: 2 },
    );
  let low = 10,
    high = 260;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (lengthOf(draw(middle), 'cap') < cap) low = middle;
    else high = middle;
  }
  return draw(low);
}

export const band = (name: string, long: number, wide: number, cut: Cut = {}): Piece =>
  piece(
    name,
    {
      upper: [
        [0, 0],
        [long, 0],
      ],
      right: [
        [long, 0],
        [long, wide],
      ],
      lower: [
        [long, wide],
        [0, wide],
      ],
      left: [
        [0, wide],
        [0, 0],
      ],
    },
    cut,
  );

interface Skirt {
  readonly waist: number;
  readonly rise: number;
  readonly hem: number;
  readonly long: number;
  readonly bow?: number;
}
export function skirtHalf(
  name: string,
  { waist, rise, hem, long, bow = 0 }: Skirt,
  cut: Cut = { fold: 'centre' },
): Piece {
  const side: readonly XY[] =
    bow === 0
      ? [
          [waist, -rise],
          [hem, long - rise],
        ]
      : [
          [waist, -rise],
          [waist + (hem - waist) * 0.62 + bow, long * 0.33],
          [hem, long - rise],
        ];
  return piece(
    name,
    {
      waist: {
        through: [
          [0, 0],
          [waist, -rise],
        ],
        starts: 'square',
      },
      side,
      hem: {
        through: [
          [hem, long - rise],
          [0, long],
        ],
        ends: 'square',
      },
      centre: [
        [0, long],
        [0, 0],
      ],
    },
    cut,
  );
}

interface Leg {
  readonly waist: number;
  readonly hip: number;
  readonly crotchDeep: number;
  readonly crotchOut: number;
  readonly knee: number;
  readonly hem: number;
  readonly long: number;
  readonly lean: number;
}
/** A leg with its outside to the right; the outseam is straight from hip to hem. */
function leg(name: string, of: Leg): Piece {
  const { waist, hip, crotchDeep, crotchOut, knee, hem, long, lean } = of;
  const middle = (hip - crotchOut) / 2;
  return piece(
    name,
    {
      waist: [
        [lean, 0],
        [lean + waist, 0],
      ],
      outseam: [
        [lean + waist, 0],
        [hip, crotchDeep * 0.7],
        [middle + knee / 2, (long + crotchDeep) / 2],
        [middle + hem / 2, long],
      ],
      hem: [
        [middle + hem / 2, long],
        [middle - hem / 2, long],
      ],
      inseam: [
        [middle - hem / 2, long],
        [middle - knee / 2, (long + crotchDeep) / 2],
        [-crotchOut, crotchDeep],
      ],
      crotch: [
        [-crotchOut, crotchDeep],
        [-crotchOut * 0.25, crotchDeep * 0.86],
        [lean * 0.2, crotchDeep * 0.6],
        [lean, 0],
      ],
    },
    { cut: 2 },
  );
}

/** A garment of these pieces. */
export function draft(title: string, pieces: readonly Piece[], seams: readonly KnownSeam[]): Draft {
  return { title, pattern: definePattern({ name: title, pieces }), seams };
}

const body = { slope: 0.36, hollow: 14 };
export const sewn = (a: string, b: string): KnownSeam => [a.split('+'), b.split('+')];

function top(
  title: string,
  front: Half,
  back: Half,
  arm?: { upper: number; wrist: number; long: number; ease: number },
): Draft {
  const f = half('1', front),
    b = half('2', back);
  const seams = [sewn('1.shoulder', '2.shoulder'), sewn('1.side', '2.side')];
  if (!arm) return draft(title, [f, b], seams);
  const s = sleeve('3', lengthOf(f, 'armhole') + lengthOf(b, 'armhole') + arm.ease, arm);
  return draft(title, [f, b, s], [...seams, sewn('3.back', '3.front'), sewn('3.cap', '1.armhole+2.armhole')]);
}

/** A body whose side is as long in front as behind. */
export const womans = (long: number, wide = 240): readonly [Half, Half] => [
  {
    ...body,
    neck: [68, 82],
    shoulder: 122,
    armpit: [wide, 222],
    sideTo: [wide + 6, long],
    centreTo: long + 8,
  },
  {
    ...body,
    neck: [70, 24],
    shoulder: 122,
    armpit: [wide, 222],
    hollow: 8,
    sideTo: [wide + 6, long],
    centreTo: long + 6,
  },
];
export const childs = (long: number): readonly [Half, Half] => [
  {
    ...body,
    neck: [52, 58],
    shoulder: 74,
    slope: 0.32,
    armpit: [158, 148],
    sideTo: [170, long],
    centreTo: long + 4,
  },
  {
    ...body,
    neck: [53, 18],
    shoulder: 74,
    slope: 0.32,
    armpit: [158, 148],
    hollow: 8,
    sideTo: [170, long],
    centreTo: long + 4,
  },
];
export const mans = (long: number): readonly [Half, Half] => [
  {
    ...body,
    neck: [78, 90],
    shoulder: 158,
    slope: 0.4,
    armpit: [285, 255],
    sideTo: [285, long],
    centreTo: long,
  },
  {
    ...body,
    neck: [80, 22],
    shoulder: 158,
    slope: 0.4,
    armpit: [285, 255],
    hollow: 10,
    sideTo: [285, long],
    centreTo: long,
  },
];

function whole(name: string, of: Half): Piece {
  const [nx, ny] = of.neck,
    [sx, sy] = shoulderEnd(of),
    over = ([x, y]: XY): XY => [-x, y];
  const armhole = armholeOf(of);
  return piece(name, {
    neck: [
      [-nx, 0],
      [-nx * 0.62, ny * 0.66],
      [0, ny],
      [nx * 0.62, ny * 0.66],
      [nx, 0],
    ],
    'shoulder r': [
      [nx, 0],
      [sx, sy],
    ],
    'armhole r': armhole,
    'side r': [of.armpit, of.sideTo],
    hem: [of.sideTo, [0, of.centreTo], over(of.sideTo)],
    'side l': [over(of.sideTo), over(of.armpit)],
    'armhole l': [...armhole].reverse().map(over),
    'shoulder l': [over([sx, sy]), [-nx, 0]],
  });
}

function dress(title: string, [front, back]: readonly [Half, Half], gather: number, long: number): Draft {
  const f = half('1', front),
    b = half('2', back);
  const panel = (name: string, waist: number): Piece =>
    skirtHalf(name, { waist: waist * gather, rise: 0, hem: waist * gather + (gather > 1 ? 0 : 70), long });
  const [sf, sb] = [panel('3', lengthOf(f, 'hem')), panel('4', lengthOf(b, 'hem'))];
  return draft(
    title,
    [f, b, sf, sb],
    [
      sewn('1.shoulder', '2.shoulder'),
      sewn('1.side', '2.side'),
      sewn('3.side', '4.side'),
      sewn('1.hem', '3.waist'),
      sewn('2.hem', '4.waist'),
    ],
  );
}

function trousers(title: string, front: Leg, back: Leg, waistband?: number): Draft {
  const f = leg('1', front),
    b = leg('2', back);
  const seams = [
    sewn('1.outseam', '2.outseam'),
    sewn('1.inseam', '2.inseam'),
    sewn('1.crotch', '1.crotch'),
    sewn('2.crotch', '2.crotch'),
  ];
  if (waistband === undefined) return draft(title, [f, b], seams);
  const long = 2 * (lengthOf(f, 'waist') + lengthOf(b, 'waist')) + waistband;
  return draft(title, [f, b, band('3', long, 80)], [...seams, sewn('3.lower', '1.waist+2.waist')]);
}

function raglan(): Draft {
  const line = (name: string, neckDeep: number): Piece =>
    piece(
      name,
      {
        neck: {
          through: [
            [0, neckDeep],
            [48, neckDeep * 0.72],
            [76, neckDeep * 0.28],
          ],
          starts: 'square',
        },
        raglan: [
          [76, neckDeep * 0.28],
          [160, 150],
          [248, 250],
        ],
        side: [
          [248, 250],
          [250, 610],
        ],
        hem: [
          [250, 610],
          [0, 612],
        ],
        centre: [
          [0, 612],
          [0, neckDeep],
        ],
      },
      { fold: 'centre' },
    );
  const f = line('1', 96),
    b = line('2', 34);
  const [lf, lb] = [lengthOf(f, 'raglan'), lengthOf(b, 'raglan')];
  const up = (long: number, wide: number): number => Math.sqrt(long * long - wide * wide);
  const s = piece(
    '3',
    {
      top: [
        [150, 250 - up(lf, 150)],
        [215, 250 - up(lb, 155)],
      ],
      back: [
        [215, 250 - up(lb, 155)],
        [370, 250],
      ],
      under1: [
        [370, 250],
        [300, 690],
      ],
      hem: [
        [300, 690],
        [70, 690],
      ],
      under2: [
        [70, 690],
        [0, 250],
      ],
      front: [
        [0, 250],
        [150, 250 - up(lf, 150)],
      ],
    },
    { cut: 2 },
  );
  // The sleeve's lines are straight and as long as the curves.
  return draft(
    'raglan pullover',
    [f, b, s],
    [
      sewn('1.side', '2.side'),
      sewn('3.under1', '3.under2'),
      sewn('3.front', '1.raglan'),
      sewn('3.back', '2.raglan'),
    ],
  );
}

function kimono(): Draft {
  const line = (name: string, neck: XY): Piece =>
    piece(
      name,
      {
        neck: {
          through: [
            [0, neck[1]],
            [neck[0] * 0.62, neck[1] * 0.66],
            [neck[0], 0],
          ],
          starts: 'square',
        },
        over: [
          [neck[0], 0],
          [neck[0] + 420, 128],
        ],
        wrist: [
          [neck[0] + 420, 128],
          [neck[0] + 382, 268],
        ],
        under: [
          [neck[0] + 382, 268],
          [300, 268],
          [258, 330],
          [250, 640],
        ],
        hem: [
          [250, 640],
          [0, 646],
        ],
        centre: [
          [0, 646],
          [0, neck[1]],
        ],
      },
      { fold: 'centre' },
    );
  return draft(
    'kimono-sleeved top',
    [line('1', [80, 100]), line('2', [80, 30])],
    [sewn('1.over', '2.over'), sewn('1.under', '2.under')],
  );
}

function gores(): Draft {
  const gore = piece(
    '1',
    {
      waist: [
        [-62, 0],
        [0, 6],
        [62, 0],
      ],
      right: [
        [62, 0],
        [160, 690],
      ],
      hem: [
        [160, 690],
        [0, 712],
        [-160, 690],
      ],
      left: [
        [-160, 690],
        [-62, 0],
      ],
    },
    { cut: 6 },
  );
  return draft(
    'six-gored skirt',
    [gore, band('2', 6 * lengthOf(gore, 'waist') + 30, 70)],
    [sewn('1.right', '1.left'), sewn('2.lower', '1.waist')],
  );
}

function princess(): Draft {
  const middle = (name: string, neckDeep: number): Piece =>
    piece(
      name,
      {
        neck: {
          through: [
            [0, neckDeep],
            [44, neckDeep * 0.66],
            [70, 0],
          ],
          starts: 'square',
        },
        shoulder: [
          [70, 0],
          [122, 20],
        ],
        panel: [
          [122, 20],
          [112, 200],
          [104, 400],
          [128, 640],
        ],
        hem: [
          [128, 640],
          [0, 646],
        ],
        centre: [
          [0, 646],
          [0, neckDeep],
        ],
      },
      { fold: 'centre' },
    );
  const [f, b] = [middle('1', 84), middle('3', 26)];
  const side = (name: string, hollow: number): Piece =>
    piece(
      name,
      {
        shoulder: [
          [0, 0],
          [64, 24],
        ],
        armhole: [
          [64, 24],
          [64 - hollow, 110],
          [80, 178],
          [124, 206],
        ],
        side: [
          [124, 206],
          [110, 390],
          [140, 630],
        ],
        hem: [
          [140, 630],
          [-6, 622],
        ],
        panel: [
          [-6, 622],
          [18, 380],
          [8, 180],
          [0, 0],
        ],
      },
      { cut: 2 },
    );
  return draft(
    'princess dress',
    [f, side('2', 12), b, side('4', 8)],
    [
      sewn('1.shoulder', '3.shoulder'),
      sewn('2.shoulder', '4.shoulder'),
      sewn('2.side', '4.side'),
      sewn('1.panel', '2.panel'),
      sewn('3.panel', '4.panel'),
    ],
  );
}

function legging(): Draft {
  const one = piece(
    '1',
    {
      waist: [
        [40, 30],
        [330, 0],
      ],
      'crotch b': [
        [330, 0],
        [352, 150],
        [410, 245],
      ],
      'inseam b': [
        [410, 245],
        [330, 560],
        [270, 930],
      ],
      hem: [
        [270, 930],
        [90, 930],
      ],
      'inseam f': [
        [90, 930],
        [40, 565],
        [0, 252],
      ],
      'crotch f': [
        [0, 252],
        [30, 170],
        [40, 30],
      ],
    },
    { cut: 2 },
  );
  return draft(
    'leggings',
    [one],
    [sewn('1.inseam b', '1.inseam f'), sewn('1.crotch f', '1.crotch f'), sewn('1.crotch b', '1.crotch b')],
  );
}

function pyjamaJacket(): Draft {
  const [front, back] = mans(720);
  const f = half('1', front, { cut: 2 }),
    b = half('2', back);
  const s = sleeve('3', lengthOf(f, 'armhole') + lengthOf(b, 'armhole') + 10, {
    upper: 430,
    wrist: 280,
    long: 470,
  });
  const neck = lengthOf(f, 'neck') + lengthOf(b, 'neck');
  const collar = piece(
    '4',
    {
      outer: [
        [0, 0],
        [neck + 12, -6],
      ],
      end: [
        [neck + 12, -6],
        [neck - 4, 72],
      ],
      neck: {
        through: [
          [neck - 4, 72],
          [0, 78],
        ],
        ends: 'square',
      },
      centre: [
        [0, 78],
        [0, 0],
      ],
    },
    { fold: 'centre', cut: 2 },
  );
  return draft(
    'pyjama jacket',
    [f, b, s, collar],
    [
      sewn('1.shoulder', '2.shoulder'),
      sewn('1.side', '2.side'),
      sewn('3.back', '3.front'),
      sewn('3.cap', '1.armhole+2.armhole'),
      sewn('4.neck', '1.neck+2.neck'),
    ],
  );
}

function tee(): Draft {
  const [front, back] = childs(430);
  const f = whole('1', front),
    b = whole('2', back);
  const s = sleeve('3', lengthOf(f, 'armhole r') + lengthOf(b, 'armhole r') + 4, {
    upper: 300,
    wrist: 250,
    long: 90,
  });
  return draft(
    'child’s T-shirt, drawn whole',
    [f, b, s],
    [
      sewn('1.shoulder r', '2.shoulder r'),
      sewn('1.shoulder l', '2.shoulder l'),
      sewn('1.side r', '2.side r'),
      sewn('1.side l', '2.side l'),
      sewn('3.back', '3.front'),
    ],
  );
}

const front: Leg = {
  waist: 195,
  hip: 250,
  crotchDeep: 275,
  crotchOut: 52,
  knee: 225,
  hem: 200,
  long: 1050,
  lean: 6,
};
const rear: Leg = {
  waist: 195,
  hip: 268,
  crotchDeep: 275,
  crotchOut: 112,
  knee: 245,
  hem: 220,
  long: 1050,
  lean: 52,
};

/** Legs whose inside and outside seams match: the back is drawn until they do. */
function fitted(f: Leg, b: Leg): readonly [Leg, Leg] {
  const goal = leg('f', f);
  let back = b;
  for (let i = 0; i < 40; i++) {
    const now = leg('b', back);
    back = {
      ...back,
      hip: back.hip + (lengthOf(goal, 'outseam') - lengthOf(now, 'outseam')) * 0.5,
      crotchDeep: back.crotchDeep - (lengthOf(goal, 'inseam') - lengthOf(now, 'inseam')) * 0.9,
    };
  }
  return [f, back];
}

const skirt = (title: string, f: Skirt, b: Skirt, waistband?: number): Draft => {
  const [one, two] = [skirtHalf('1', f), skirtHalf('2', b)];
  const seams = [sewn('1.side', '2.side')];
  if (waistband === undefined) return draft(title, [one, two], seams);
  const long = 2 * (lengthOf(one, 'waist') + lengthOf(two, 'waist')) + waistband;
  return draft(title, [one, two, band('3', long, 64)], [...seams, sewn('3.lower', '1.waist+2.waist')]);
};

/** The drafts as they are drawn upright. */
export const twentyDrafts = (): readonly Draft[] => [
  top('woven top', ...womans(600), { upper: 350, wrist: 240, long: 430, ease: 18 }),
  top('sleeveless shell', ...womans(560, 250)),
  top('nightshirt', ...mans(1020), { upper: 440, wrist: 260, long: 480, ease: 6 }),
  top('child’s blouse', ...childs(400), { upper: 270, wrist: 180, long: 300, ease: 14 }),
  top('short-sleeved tee', ...womans(640, 235), { upper: 330, wrist: 290, long: 120, ease: 2 }),
  top('vest', ...mans(640)),
  tee(),
  dress('dress with a waist seam', womans(420), 1, 640),
  dress('child’s dress, gathered', childs(250), 1.7, 330),
  pyjamaJacket(),
  skirt(
    'A-line skirt',
    { waist: 186, rise: 12, hem: 320, long: 620 },
    { waist: 190, rise: 12, hem: 324, long: 620 },
    30,
  ),
  skirt(
    'pencil skirt',
    { waist: 205, rise: 14, hem: 226, long: 640, bow: 26 },
    { waist: 212, rise: 14, hem: 233, long: 640, bow: 26 },
  ),
  skirt(
    'child’s skirt',
    { waist: 150, rise: 4, hem: 230, long: 300 },
    { waist: 152, rise: 4, hem: 232, long: 300 },
    0,
  ),
  gores(),
  trousers('straight trousers', ...fitted(front, rear), 30),
  trousers('wide trousers', ...fitted({ ...front, knee: 300, hem: 310 }, { ...rear, knee: 320, hem: 330 })),
  trousers(
    'child’s shorts',
    ...fitted(
      { waist: 170, hip: 205, crotchDeep: 220, crotchOut: 40, knee: 215, hem: 212, long: 360, lean: 4 },
      { waist: 170, hip: 215, crotchDeep: 220, crotchOut: 84, knee: 232, hem: 230, long: 360, lean: 34 },
    ),
  ),
  raglan(),
  kimono(),
  princess(),
  legging(),
];

/** The same draft with its pieces lying as they come: each turned its own way, every other one turned over. */
export function strewn({ title, pattern, seams }: Draft): Draft {
  const pieces = pattern.pieces.map((own, i): Piece => {
    const over = i % 2 === 1;
    const map = compose(over ? mirror(at(0, 0), at(0, 1)) : identity, rotation(0.4 + 1.7 * i));
    const path = (line: Path): Path =>
      over ? reversedPath(transformedPath(line, map)) : transformedPath(line, map);
    const parts = own.outline.parts.map((part): OutlinePart => {
      if (part.type === 'edge') return { ...part, path: path(part.path) };
      if (part.type !== 'dart') return part;
      const [a, b] = part.legs;
      return { ...part, legs: over ? [path(b), path(a)] : [path(a), path(b)] };
    });
    const notches = over
      ? own.notches.map(notch => ({ ...notch, at: lengthOf(own, notch.edge) - notch.at }))
      : own.notches;
    return { ...own, outline: { parts: over ? parts.reverse() : parts }, notches };
  });
  return { title, seams, pattern: definePattern({ name: title, pieces }) };
}
