import type { Piece } from '@paperhinge/geometry';
import { band, lengthOf } from '../twenty-drafts.js';
import { bend, ring, suited } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// Two skirts held by elastic: one of jersey with a hip yoke, one of three tiers.

function yokes(): readonly [front: Piece, back: Piece] {
  const front = ring(
    'front yoke',
    [0, 0],
    {
      waist: bend([0, 0], [70, 0], [140, -8], [206, -19]),
      side: bend([206, -19], [214, 20], [221, 56], [226, 90], 3),
      lower: bend([226, 90], [150, 106], [70, 113], [0, 113]),
      centre: [],
    },
    { fold: 'centre' },
  );
  const back = suited(
    y =>
      ring(
        'back yoke',
        [0, 9],
        {
          waist: bend([0, 9], [70, 9], [134, -2], [198, -19]),
          side: bend([198, -19], [208, 20], [217, 56], [223, y!], 3),
          lower: bend([223, y!], [150, 112], [70, 128], [0, 128]),
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [60, 120] },
  );
  return [front, back];
}

/** A casing of its own holds the elastic. */
export function jerseySkirt(): Unnamed {
  const [frontYoke, backYoke] = yokes();
  const front = suited(
    x =>
      ring(
        'front',
        [0, 0],
        {
          top: bend([0, 0], [70, 0], [150, -14], [x!, -42]),
          side: [[x! + 128, 436]],
          hem: bend([x! + 128, 436], [250, 484], [110, 508], [0, 508]),
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['top'], mm: lengthOf(frontYoke, 'lower'), between: [190, 260] },
  );
  const back = suited(
    (x, y) =>
      ring(
        'back',
        [0, 0],
        {
          top: bend([0, 0], [70, 0], [150, -12], [x!, -38]),
          side: [[x! + 138, y!]],
          hem: bend([x! + 138, y!], [250, 490], [110, 510], [0, 510]),
          centre: [],
        },
        { fold: 'centre' },
      ),
    { edges: ['top'], mm: lengthOf(backYoke, 'lower'), between: [190, 260] },
    { edges: ['side'], mm: lengthOf(front, 'side'), between: [390, 490] },
  );
  const waist = lengthOf(frontYoke, 'waist') + lengthOf(backYoke, 'waist');
  const [lf, lb] = [lengthOf(frontYoke, 'lower'), lengthOf(backYoke, 'lower')];
  return unnamed({
    title: 'jersey skirt with a hip yoke and an elastic casing',
    pieces: [back, frontYoke, band('casing', 2 * waist, 72), front, backYoke],
    over: ['back', 'front yoke'],
    seams: [
      'front yoke.side = back yoke.side',
      'front.side = back.side',
      'front.top = front yoke.lower',
      'back.top = back yoke.lower',
      'casing.lower = front yoke.waist + back yoke.waist, 2 x',
      'casing.left = casing.right',
    ],
    notches: [
      ['single', ['front.top from side', lf / 2], ['front yoke.lower from side', lf / 2]],
      ['double', ['back.top from side', lb / 2], ['back yoke.lower from side', lb / 2]],
      ['single', ['front.side from hem', 240], ['back.side from hem', 240]],
      ['single', ['casing.lower from left', lengthOf(backYoke, 'waist')]],
      ['single', ['casing.lower from left', waist]],
      ['single', ['casing.lower from right', lengthOf(backYoke, 'waist')]],
    ],
  });
}

/** Two strips for each lower tier, gathered to what is above; pockets in the side seams of the first. */
export function tieredSkirt(): Unnamed {
  const first = (name: string, wide: number, rise: number): Piece =>
    ring(
      name,
      [0, rise],
      {
        top: bend([0, rise], [90, rise], [190, 0], [wide, 0], 4),
        side: [[wide + 14, 206]],
        lower: bend([wide + 14, 206], [190, 212], [90, 215], [0, 215], 4),
        centre: [],
      },
      { fold: 'centre' },
    );
  const [front, back] = [first('front', 262, 8), first('back', 270, -6)];
  const bag = ring(
    'bag',
    [0, 0],
    {
      round: [
        ...bend([0, 0], [64, 2], [120, 50], [140, 130]),
        ...bend([140, 130], [156, 214], [76, 236], [0, 178]),
      ],
      opening: [],
    },
    { cut: 4 },
  );
  const [second, third] = [826, 1240] as const;
  const [tf, tb] = [lengthOf(front, 'top'), lengthOf(back, 'top')];
  const [lf, lb] = [lengthOf(front, 'lower'), lengthOf(back, 'lower')];
  return unnamed({
    title: 'tiered skirt with an elastic casing',
    pieces: [
      band('lower tier', third, 262, { cut: 2 }),
      bag,
      back,
      band('casing', 2 * (tf + tb), 84),
      front,
      band('middle tier', second, 232, { cut: 2 }),
    ],
    over: ['front'],
    seams: [
      'front.side = back.side',
      'middle tier.left = middle tier.right',
      'lower tier.left = lower tier.right',
      `middle tier.upper = front.lower + back.lower, ${second / (lf + lb)} x`,
      `lower tier.upper = middle tier.lower, ${third / second} x`,
      'casing.lower = front.top + back.top, 2 x',
      'casing.left = casing.right',
      'bag.round = bag.round',
    ],
    notches: [
      ['single', ['front.lower from side', lf / 2], ['middle tier.upper from left', second / 4]],
      ['double', ['back.lower from side', lb / 2], ['middle tier.upper from right', second / 4]],
      ['single', ['middle tier.upper from left', second / 2]],
      ['single', ['middle tier.lower from left', second / 2], ['lower tier.upper from left', third / 2]],
      ['single', ['casing.lower from left', tb], ['casing.lower from right', tb]],
      ['single', ['casing.lower from left', tf + tb]],
      ['single', ['front.side from top', 24], ['back.side from top', 24], ['bag.opening from its end', 12]],
      [
        'single',
        ['front.side from top', 174],
        ['back.side from top', 174],
        ['bag.opening from its end', 162],
      ],
    ],
  });
}
