import { band, type Draft, draft, lengthOf, sleeve } from '../twenty-drafts.js';
import { ring, seams, suited } from './ring.js';

// Three more garments, drawn after the last change to the proposals: what they score is a first try.

/** A dress that wraps over in front, with a tie. */
export function wrapDress(): Draft {
  const front = ring(
    '1',
    [-150, 380],
    {
      wrap: [
        [-40, 200],
        [70, 0],
      ],
      shoulder: [[190, 44]],
      armhole: [
        [178, 120],
        [192, 190],
        [238, 214],
      ],
      side: [[212, 392]],
      waist: [[-150, 402]],
      edge: [],
    },
    { cut: 2 },
  );
  const back = suited(
    y =>
      ring(
        '2',
        [0, 22],
        {
          neck: [
            [48, 16],
            [76, 0],
          ],
          shoulder: [[196, 38]],
          armhole: [
            [182, 120],
            [194, 190],
            [236, y!],
          ],
          side: [[206, 392]],
          waist: [[0, 396]],
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [180, 240] },
  );
  const skirt = (name: string, waist: number, fold: boolean) =>
    ring(
      name,
      [0, 0],
      {
        waist: [
          [waist * 0.6, -6],
          [waist, -18],
        ],
        side: [
          [waist + 40, 200],
          [waist + 88, 640],
        ],
        hem: [
          [waist * 0.6, 660],
          [0, 664],
        ],
        [fold ? 'centre' : 'edge']: [],
      },
      fold ? { fold: 'centre' } : { cut: 2 },
    );
  const frontSkirt = suited(waist => skirt('3', waist!, false), {
    edges: ['waist'],
    mm: lengthOf(front, 'waist'),
    between: [300, 420],
  });
  const backSkirt = suited(waist => skirt('4', waist!, true), {
    edges: ['waist'],
    mm: lengthOf(back, 'waist'),
    between: [150, 300],
  });
  const s = sleeve('5', lengthOf(front, 'armhole') + lengthOf(back, 'armhole') + 22, {
    upper: 330,
    wrist: 250,
    long: 300,
  });
  return draft(
    'wrap dress',
    [front, back, frontSkirt, backSkirt, s, band('6', 1400, 90, { cut: 2 })],
    seams(
      '1.shoulder = 2.shoulder',
      '1.side = 2.side',
      '1.waist = 3.waist',
      '2.waist = 4.waist',
      '3.side = 4.side',
      '5.front = 5.back',
      '5.cap = 1.armhole + 2.armhole',
    ),
  );
}

/** A short bodice of three panels a side, laced behind, each drawn. */
export function corset(): Draft {
  const panel = (draw: (x: number) => ReturnType<typeof ring>, edge: string, mm: number) =>
    suited(x => draw(x!), { edges: [edge], mm, between: [-60, 60] });
  const centre = ring(
    '1',
    [0, 40],
    {
      top: [
        [50, 10],
        [86, 6],
      ],
      seam: [
        [70, 150],
        [84, 300],
      ],
      hem: [[0, 340]],
      middle: [],
    },
    { fold: 'middle' },
  );
  const side = panel(
    x =>
      ring(
        '2',
        [0, 10],
        {
          top: [[70, 30]],
          back: [
            [58, 150],
            [76, 280],
          ],
          hem: [[-6, 302]],
          front: [[14 + x, 150]],
        },
        { cut: 2 },
      ),
    'front',
    lengthOf(centre, 'seam'),
  );
  const behind = panel(
    x =>
      ring(
        '3',
        [0, 30],
        {
          top: [[92, 52]],
          lacing: [[88, 284]],
          hem: [[2, 278]],
          seam: [[16 + x, 150]],
        },
        { cut: 2 },
      ),
    'seam',
    lengthOf(side, 'back'),
  );
  return draft('corset of six panels', [centre, side, behind], seams('1.seam = 2.front', '2.back = 3.seam'));
}

/** A skirt with a yoke and its facing, lined, closed with a zip in the side. */
export function linedSkirt(): Draft {
  const half = (name: string, waist: number, bow: number) =>
    ring(
      name,
      [0, 0],
      {
        waist: [
          [waist * 0.6, -6],
          [waist, -20],
        ],
        side: [
          [waist + 26 + bow, 90],
          [waist + 44, 210],
          [waist + 96, 580],
        ],
        hem: [
          [waist * 0.6, 606],
          [0, 612],
        ],
        centre: [],
      },
      { fold: 'centre' },
    );
  const front = half('1', 176, 6);
  const back = suited(bow => half('2', 184, bow!), {
    edges: ['side'],
    mm: lengthOf(front, 'side'),
    between: [-20, 60],
  });
  const lining = (name: string, of: typeof front) => ({ ...of, name });
  const waistband = band('5', 2 * (lengthOf(front, 'waist') + lengthOf(back, 'waist')) + 30, 64);
  return draft(
    'lined skirt',
    [front, back, lining('3', front), lining('4', back), waistband],
    seams(
      '1.side = 2.side',
      '3.side = 4.side',
      '3.waist = 1.waist',
      '4.waist = 2.waist',
      '5.lower = 1.waist + 2.waist',
    ),
  );
}

/** The three of them. */
export const lastThree = (): readonly Draft[] => [wrapDress(), corset(), linedSkirt()];
