import { band, type Draft, draft, half, lengthOf, mans, sleeve } from '../twenty-drafts.js';
import { ring, seams, suited } from './ring.js';

// Three garments drawn after the proposals were mended and never tuned for.

/** A yoke all round, the body gathered to it, long sleeves with cuffs, a small collar. */
export function nightgown(): Draft {
  const yoke = (name: string, deep: number, neck: number) =>
    ring(
      name,
      [0, neck],
      {
        neck: [
          [44, neck * 0.66],
          [68, 0],
        ],
        shoulder: [[176, 36]],
        armhole: [
          [166, 80],
          [166, deep],
        ],
        lower: [[0, deep]],
        centre: [],
      },
      { fold: 'centre' },
    );
  const [front, back] = [yoke('1', 134, 78), yoke('2', 118, 22)];
  const body = (name: string, top: number, armhole: number) =>
    ring(
      name,
      [0, 0],
      {
        top: [[top, 0]],
        armhole: [
          [top + 12, armhole * 0.7],
          [top + 76, armhole],
        ],
        side: [[top + 150, 960]],
        hem: [[0, 980]],
        centre: [],
      },
      { fold: 'centre' },
    );
  const frontBody = body('3', 268, 108);
  const backBody = suited(armhole => body('4', 272, armhole!), {
    edges: ['side'],
    mm: lengthOf(frontBody, 'side'),
    between: [80, 150],
  });
  const armholes = [front, back, frontBody, backBody].reduce((sum, own) => sum + lengthOf(own, 'armhole'), 0);
  const s = sleeve('5', armholes + 20, { upper: 400, wrist: 320, long: 420 });
  const cuff = band('6', 230, 110, { cut: 2 });
  const necks = lengthOf(front, 'neck') + lengthOf(back, 'neck');
  const collar = ring(
    '7',
    [0, 0],
    {
      outer: [
        [necks * 0.7, 4],
        [necks + 14, 24],
      ],
      end: [[necks - 1, 66]],
      neck: [
        [necks * 0.6, 56],
        [0, 54],
      ],
      centre: [],
    },
    { fold: 'centre', cut: 2 },
  );
  return draft(
    'nightgown on a yoke',
    [front, back, frontBody, backBody, s, cuff, collar],
    seams(
      '1.shoulder = 2.shoulder',
      '1.lower = 3.top',
      '2.lower = 4.top',
      '3.side = 4.side',
      '5.front = 5.back',
      '5.cap = 1.armhole + 2.armhole + 3.armhole + 4.armhole',
      '6.lower = 5.hem',
      '7.neck = 1.neck + 2.neck',
    ),
  );
}

/** Wide legs to the knee on a band, with a pocket bag in the side seam. */
export function culottes(): Draft {
  const leg = (name: string, out: number, waist: number, flare: number, hip: number) =>
    ring(
      name,
      [0, 0],
      {
        waist: [[waist, -8]],
        outseam: [
          [hip, 190],
          [waist + flare, 610],
        ],
        hem: [
          [waist * 0.4, 622],
          [-out - 14, 616],
        ],
        inseam: [[-out, 310]],
        crotch: [
          [-out * 0.4, 284],
          [-4, 200],
        ],
      },
      { cut: 2 },
    );
  const front = leg('1', 62, 180, 130, 236);
  const back = suited(hip => leg('2', 108, 186, 134, hip!), {
    edges: ['outseam'],
    mm: lengthOf(front, 'outseam'),
    between: [200, 300],
  });
  const waist = 2 * (lengthOf(front, 'waist') + lengthOf(back, 'waist'));
  const bag = ring(
    '4',
    [0, 0],
    {
      opening: [[0, -170]],
      upper: [
        [60, -200],
        [130, -120],
      ],
      round: [
        [150, 40],
        [90, 90],
      ],
      lower: [],
    },
    { cut: 4 },
  );
  return draft(
    'culottes',
    [front, back, band('3', waist + 40, 70), bag],
    seams(
      '1.outseam = 2.outseam',
      '1.inseam = 2.inseam',
      '1.crotch = 1.crotch',
      '2.crotch = 2.crotch',
      '3.lower = 1.waist + 2.waist',
    ),
  );
}

/** A hood of two sides and a strip between, a pocket on the front, ribbed bands at hem and wrists. */
export function hoodedShirt(): Draft {
  const [f, b] = mans(620);
  const [front, back] = [half('1', f), half('2', b)];
  const s = sleeve('3', lengthOf(front, 'armhole') + lengthOf(back, 'armhole') + 4, {
    upper: 440,
    wrist: 270,
    long: 470,
  });
  const necks = lengthOf(front, 'neck') + lengthOf(back, 'neck');
  const side = suited(
    x =>
      ring(
        '4',
        [0, 0],
        {
          face: [[10, -330]],
          crown: [
            [110, -372],
            [230, -270],
            [x!, -20],
          ],
          neck: [[x! * 0.5, 22]],
        },
        { cut: 2 },
      ),
    { edges: ['neck'], mm: necks - 38, between: [120, 330] },
  );
  const strip = band('5', lengthOf(side, 'crown'), 76);
  const pocket = ring(
    '6',
    [0, 0],
    {
      upper: [[90, 0]],
      opening: [[160, 120]],
      side: [[160, 200]],
      lower: [[0, 200]],
      centre: [],
    },
    { fold: 'centre' },
  );
  const hemBand = band('7', (lengthOf(front, 'hem') + lengthOf(back, 'hem')) * 2 * 0.85, 120);
  const cuff = band('8', lengthOf(s, 'hem') * 0.78, 120, { cut: 2 });
  return draft(
    'hooded sweatshirt',
    [front, back, s, side, strip, pocket, hemBand, cuff],
    seams(
      '1.shoulder = 2.shoulder',
      '1.side = 2.side',
      '3.cap = 1.armhole + 2.armhole',
      '3.front = 3.back',
      '4.crown = 5.lower',
      '7.lower = 1.hem + 2.hem',
      '8.lower = 3.hem',
      '4.neck + 5.left = 1.neck + 2.neck',
    ),
  );
}

/** The three of them. */
export const heldOutGarments = (): readonly Draft[] => [nightgown(), culottes(), hoodedShirt()];
