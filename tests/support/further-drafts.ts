import {
  band,
  childs,
  type Draft,
  draft,
  half,
  lengthOf,
  mans,
  piece,
  sewn,
  skirtHalf,
  sleeve,
  womans,
  type XY,
} from './twenty-drafts.js';

// Garments that the proposals of names and seams were not built on: faced, of panels drawn one by one, with cuffs, with
// a hip yoke, with raglan sleeves.

/** A facing as deep as asked for along the neck of a front or back that is drawn on a fold. */
function neckFacing(name: string, [nx, ny]: XY, deep: number, slope: number) {
  const out: XY = [nx + deep / Math.hypot(1, slope), (deep * slope) / Math.hypot(1, slope)];
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
      shoulder: [[nx, 0], out],
      outer: {
        through: [out, [(nx + deep) * 0.66, (ny + deep) * 0.7], [0, ny + deep]],
        ends: 'square',
      },
      centre: [
        [0, ny + deep],
        [0, ny],
      ],
    },
    { fold: 'centre' },
  );
}

function faced(): Draft {
  const [front, back] = womans(590, 246);
  const [f, b] = [half('1', front), half('2', back)];
  return draft(
    'shell with neck facings',
    [f, b, neckFacing('3', front.neck, 55, front.slope), neckFacing('4', back.neck, 55, back.slope)],
    [
      sewn('1.shoulder', '2.shoulder'),
      sewn('1.side', '2.side'),
      sewn('3.neck', '1.neck'),
      sewn('4.neck', '2.neck'),
      sewn('3.shoulder', '4.shoulder'),
    ],
  );
}

function eightPanels(): Draft {
  const count = 8;
  const panels = Array.from({ length: count }, (_, i) =>
    piece(`${i + 1}`, {
      waist: [
        [-46, 0],
        [0, 4],
        [46, 0],
      ],
      right: [
        [46, 0],
        [118, 640],
      ],
      hem: [
        [118, 640],
        [0, 654],
        [-118, 640],
      ],
      left: [
        [-118, 640],
        [-46, 0],
      ],
    }),
  );
  const round = panels.map((_, i) => sewn(`${i + 1}.right`, `${((i + 1) % count) + 1}.left`));
  return draft('skirt of eight panels, each drawn', panels, round);
}

function cuffed(): Draft {
  const [front, back] = mans(700);
  const [f, b] = [half('1', front), half('2', back)];
  const arm = { upper: 420, wrist: 300, long: 460 };
  const s = sleeve('3', lengthOf(f, 'armhole') + lengthOf(b, 'armhole') + 8, arm);
  return draft(
    'pullover shirt with cuffs',
    [f, b, s, band('4', lengthOf(s, 'hem') - 50, 120, { cut: 2 })],
    [
      sewn('1.shoulder', '2.shoulder'),
      sewn('1.side', '2.side'),
      sewn('3.back', '3.front'),
      sewn('3.cap', '1.armhole+2.armhole'),
      sewn('4.lower', '3.hem'),
    ],
  );
}

function hipYoke(): Draft {
  const yoke = (name: string, waist: number) =>
    piece(
      name,
      {
        waist: {
          through: [
            [0, 0],
            [waist * 0.55, -4],
            [waist, -16],
          ],
          starts: 'square',
        },
        side: [
          [waist, -16],
          [waist + 26, 104],
        ],
        lower: {
          through: [
            [waist + 26, 104],
            [waist * 0.6, 122],
            [0, 128],
          ],
          ends: 'square',
        },
        centre: [
          [0, 128],
          [0, 0],
        ],
      },
      { fold: 'centre' },
    );
  const [front, back] = [yoke('1', 178), yoke('2', 186)];
  const under = (name: string, waist: number) =>
    skirtHalf(name, { waist: waist * 1.5, rise: 0, hem: waist * 1.5 + 30, long: 470 });
  const [sf, sb] = [under('3', lengthOf(front, 'lower')), under('4', lengthOf(back, 'lower'))];
  return draft(
    'gathered skirt on a hip yoke',
    [front, back, sf, sb],
    [
      sewn('1.side', '2.side'),
      sewn('3.side', '4.side'),
      sewn('1.lower', '3.waist'),
      sewn('2.lower', '4.waist'),
    ],
  );
}

function childsRaglan(): Draft {
  const [front, back] = childs(390);
  const body = (name: string, { neck: [nx, ny], armpit, sideTo, centreTo }: typeof front) =>
    piece(
      name,
      {
        neck: {
          through: [
            [0, ny],
            [nx * 0.55, ny * 0.72],
            [nx * 0.95, ny * 0.1],
          ],
          starts: 'square',
        },
        raglan: [
          [nx * 0.95, ny * 0.1],
          [nx + 50, 76],
          [armpit[0], armpit[1]],
        ],
        side: [armpit, sideTo],
        hem: [sideTo, [0, centreTo]],
        centre: [
          [0, centreTo],
          [0, ny],
        ],
      },
      { fold: 'centre' },
    );
  const [f, b] = [body('1', front), body('2', back)];
  const [lf, lb] = [lengthOf(f, 'raglan'), lengthOf(b, 'raglan')];
  const up = (long: number, wide: number): number => Math.sqrt(long * long - wide * wide);
  const s = piece(
    '3',
    {
      top: [
        [104, 170 - up(lf, 104)],
        [150, 170 - up(lb, 106)],
      ],
      back: [
        [150, 170 - up(lb, 106)],
        [256, 170],
      ],
      under1: [
        [256, 170],
        [214, 430],
      ],
      hem: [
        [214, 430],
        [44, 430],
      ],
      under2: [
        [44, 430],
        [0, 170],
      ],
      front: [
        [0, 170],
        [104, 170 - up(lf, 104)],
      ],
    },
    { cut: 2 },
  );
  return draft(
    'child’s raglan shirt',
    [f, b, s],
    [
      sewn('1.side', '2.side'),
      sewn('3.under1', '3.under2'),
      sewn('3.front', '1.raglan'),
      sewn('3.back', '2.raglan'),
    ],
  );
}

/** The drafts as they are drawn upright. */
export const furtherDrafts = (): readonly Draft[] => [
  faced(),
  eightPanels(),
  cuffed(),
  hipYoke(),
  childsRaglan(),
];
