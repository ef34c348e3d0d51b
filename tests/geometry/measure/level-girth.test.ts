import {
  at,
  edgePath,
  levelGirths,
  type OutlinePart,
  type Path,
  type Pattern,
  type Piece,
  type PieceLine,
  pathLength,
  pathOf,
  pieceNamed,
  polyline,
} from '@paperhinge/geometry';
import { girthsAtLevels, hemSweep, levelAcross } from '@paperhinge/geometry/measure';
import { reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { apply, compose, rotation, translation } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allRound } from '../../../packages/geometry/src/measure/rings.js';
import { dart, level, patternOf, pieceOf, rectangle, seam, side } from '../../support/polygon-piece.js';
import { shiftPattern } from '../../support/shift.js';

const half = (name: string, width: number, lines = [level('waist', [0, 100], [width, 100])]) =>
  pieceOf(
    name,
    [
      side('top', [
        [0, 0],
        [width, 0],
      ]),
      side('side', [
        [width, 0],
        [width, 300],
      ]),
      side(
        'hem',
        [
          [width, 300],
          [0, 300],
        ],
        { kind: 'hem' },
      ),
      side(
        'centre',
        [
          [0, 300],
          [0, 0],
        ],
        { kind: 'fold' },
      ),
    ],
    { lines },
  );

/** Girths to the nanometre: sums of arc lengths carry rounding. */
const girthsOf = (pattern: Pattern) =>
  Object.fromEntries(
    Object.entries(levelGirths(pattern)).map(([name, mm]) => [name, Math.round(mm * 1e6) / 1e6]),
  );

test('a girth is the sum over the pieces, twice where they are on a fold', () => {
  expect(girthsOf(patternOf([half('front', 240), half('back', 230)]))).toEqual({ waist: 940 });
});

test('a level drawn short is run on to both sides of its piece', () => {
  expect(girthsOf(patternOf([half('front', 240, [level('waist', [30, 100], [60, 100])])]))).toEqual({
    waist: 480,
  });
});

test('a piece drawn whole counts once', () => {
  const whole = rectangle('front', 500, 300, { lines: [level('waist', [10, 100], [490, 100])] });
  expect(girthsOf(patternOf([whole]))).toEqual({ waist: 500 });
});

test('levels keep the order of the pattern, and only pieces with a level of that name count', () => {
  const front = half('front', 240, [level('bust', [0, 50], [240, 50]), level('waist', [0, 100], [240, 100])]);
  expect(Object.entries(girthsOf(patternOf([front, half('back', 230)])))).toEqual([
    ['bust', 480],
    ['waist', 940],
  ]);
});

test('what is drawn beside the body by its role does not count', () => {
  const body = half('front', 240);
  for (const role of ['facing', 'lining', 'interfacing', 'pocket', 'stay', 'placket'] as const)
    expect(girthsOf(patternOf([body, { ...half('inside', 200), role }]))).toEqual({ waist: 480 });
  expect(girthsOf(patternOf([body, { ...half('back', 200), role: 'bodice' }]))).toEqual({ waist: 880 });
});

test('nothing goes round nothing', () => {
  expect(allRound(patternOf([]), [])).toEqual({ mm: 0, limb: false, closed: false });
});

test('a lining and a piece made for an edge do not count', () => {
  const lining = { ...half('lining', 240), cutting: { count: 1, mirrored: false, fabric: 'silk' } };
  const facing = { ...half('facing', 240), madeFor: [{ piece: 'front', edge: 'top' }] };
  const fabrics = [
    { name: 'main', role: 'main' as const },
    { name: 'silk', role: 'lining' as const },
  ];
  expect(girthsOf(patternOf([half('front', 240), lining, facing], [], { fabrics }))).toEqual({
    waist: 480,
  });
});

/** Half a front on the fold, 240 wide, its waist at a depth y; a dart or pleat takes up its top from 100 to 140. */
const takenUpAtTop = (taken: OutlinePart, y: number): Piece =>
  pieceOf(
    'front',
    [
      side('top', [
        [0, 0],
        [100, 0],
      ]),
      taken,
      side('top', [
        [140, 0],
        [240, 0],
      ]),
      side('side', [
        [240, 0],
        [240, 300],
      ]),
      side(
        'hem',
        [
          [240, 300],
          [0, 300],
        ],
        { kind: 'hem' },
      ),
      side(
        'centre',
        [
          [0, 300],
          [0, 0],
        ],
        { kind: 'fold' },
      ),
    ],
    { lines: [level('waist', [0, y], [240, y])] },
  );

test('the intake of a dart that the level crosses is left out', () => {
  // A waist dart open 40 at the top, its point 200 down: 20 wide at 100.
  const front = takenUpAtTop(dart('waist', [100, 0], [120, 200], [140, 0]), 100);
  const across = levelAcross(front, 'waist');
  expect(across.lengthMm).toBeCloseTo(220, 9);
  expect(across.ends).toEqual([['centre'], ['side']]);
  // From whichever side of the dart it is drawn.
  for (const [from, to] of [
    [180, 230],
    [10, 60],
  ] as const) {
    const drawn = { ...front, lines: [level('waist', [from, 100], [to, 100])] };
    expect(levelAcross(drawn, 'waist')).toEqual({
      ...across,
      lengthMm: expect.closeTo(220, 9),
      places: expect.anything(),
    });
  }
});

test('a level that runs out of a dart follows its seam to the side', () => {
  const front = pieceOf(
    'front',
    [
      side('top', [
        [0, 0],
        [240, 0],
      ]),
      side('side-upper', [
        [240, 0],
        [240, 80],
      ]),
      dart('bust', [240, 80], [140, 100], [240, 120]),
      side('side-lower', [
        [240, 120],
        [240, 300],
      ]),
      side(
        'hem',
        [
          [240, 300],
          [0, 300],
        ],
        { kind: 'hem' },
      ),
      side(
        'centre',
        [
          [0, 300],
          [0, 0],
        ],
        { kind: 'fold' },
      ),
    ],
    { lines: [level('bust', [0, 100], [140, 100])] },
  );
  expect(levelAcross(front, 'bust').lengthMm).toBeCloseTo(140 + Math.hypot(100, 20), 9);
  expect(levelAcross(front, 'bust').ends).toEqual([['centre'], ['side-upper', 'side-lower']]);
  // As far below the point, it meets the other leg.
  const below = { ...front, lines: [level('bust', [0, 104], [100, 104])] };
  expect(levelAcross(below, 'bust').lengthMm).toBeCloseTo(160 + 0.8 * Math.hypot(100, 20), 9);
  // 4 mm above the point the level meets a leg a fifth of the way along it.
  const above = { ...front, lines: [level('bust', [0, 96], [100, 96])] };
  expect(levelAcross(above, 'bust').lengthMm).toBeCloseTo(160 + 0.8 * Math.hypot(100, 20), 9);
});

test('a double-pointed dart takes its width from the level', () => {
  const front = half('front', 240);
  const diamond = {
    kind: 'dart' as const,
    name: 'waist',
    path: polyline(at(120, 40), at(130, 100), at(120, 160), at(110, 100), at(120, 40)),
  };
  expect(levelAcross({ ...front, lines: [...front.lines, diamond] }, 'waist').lengthMm).toBeCloseTo(220, 9);
});

test('a level that a hinge broke is followed through the part at the centre', () => {
  const bent = pathOf([at(0, 100), at(100, 100)] as const, [at(100, 100), at(240, 140)] as const);
  const front = half('front', 240, [{ kind: 'level', name: 'waist', path: bent }]);
  expect(levelAcross(front, 'waist').lengthMm).toBeCloseTo(240, 9);
  const pieces = [level('waist', [100, 120], [240, 140]), level('waist', [0, 100], [100, 100])];
  expect(levelAcross(half('front', 240, pieces), 'waist').lengthMm).toBeCloseTo(240, 9);
});

test('of the parts of a broken level the one that touches the centre is followed, be it long or a bridge beside it', () => {
  const parts = [level('waist', [20, 140], [60, 160]), level('waist', [0, 100], [240, 100])];
  expect(levelAcross(half('front', 240, parts), 'waist').lengthMm).toBeCloseTo(240, 9);
  const bridged = [level('waist', [0, 60], [0, 100], [240, 100])];
  expect(levelAcross(half('front', 240, bridged), 'waist').lengthMm).toBeCloseTo(240, 9);
});

test('a point drawn twice on a level is no part of it', () => {
  const doubled = {
    ...level('waist', [0, 100], [240, 100]),
    path: pathOf([at(0, 100), at(0, 100)] as const, [at(0, 100), at(240, 100)] as const),
  };
  expect(levelAcross(half('front', 240, [doubled]), 'waist').lengthMm).toBeCloseTo(240, 9);
  expect(levelAcross(rectangle('panel', 240, 300, { lines: [doubled] }), 'waist').lengthMm).toBeCloseTo(
    240,
    9,
  );
});

test('a level through a corner ends at both the edges that meet there', () => {
  const house = pieceOf(
    'house',
    [
      side('roof', [
        [0, 100],
        [60, 0],
        [200, 100],
      ]),
      side('wall', [
        [200, 100],
        [200, 300],
      ]),
      side('foot', [
        [200, 300],
        [0, 300],
      ]),
      side('back', [
        [0, 300],
        [0, 100],
      ]),
    ],
    { lines: [level('eaves', [0, 100], [200, 100])] },
  );
  expect(levelAcross(house, 'eaves').ends.map(end => [...end].sort())).toEqual([
    ['back', 'roof'],
    ['roof', 'wall'],
  ]);
});

test('in a mirror a level is as long, its ends changed over', () => {
  const mirrored = (piece: Piece): Piece => {
    const map = { a: -1, b: 0, c: 0, d: 1, e: 0, f: 0 };
    const turned = (path: Path) => reversedPath(transformedPath(path, map));
    const parts = [...piece.outline.parts].reverse().map((part): OutlinePart => {
      if (part.type === 'edge') return { ...part, path: turned(part.path) };
      if (part.type === 'pleat') return { ...part, mouth: turned(part.mouth) };
      return {
        ...part,
        legs: [turned(part.legs[1]), turned(part.legs[0])],
        apex: at(-part.apex.x, part.apex.y),
      };
    });
    return {
      ...piece,
      outline: { parts },
      lines: piece.lines.map(l => ({ ...l, path: transformedPath(l.path, map) })),
    };
  };
  const sided = (mouth: number, y: number) =>
    pieceOf(
      'front',
      [
        side('top', [
          [0, 0],
          [240, 0],
        ]),
        side('upper', [
          [240, 0],
          [240, 100 - mouth],
        ]),
        dart('bust', [240, 100 - mouth], [140, 100], [240, 100 + mouth]),
        side('lower', [
          [240, 100 + mouth],
          [240, 300],
        ]),
        side('hem', [
          [240, 300],
          [0, 300],
        ]),
        side('left', [
          [0, 300],
          [0, 0],
        ]),
      ],
      { lines: [level('line', [0, y], [130, y])] },
    );
  for (const piece of [
    sided(20, 100),
    sided(20, 96),
    sided(20, 104),
    takenUpAtTop(dart('waist', [100, 0], [120, 200], [140, 0]), 100),
  ]) {
    const name = piece.lines[0]!.name;
    const [one, other] = [levelAcross(piece, name), levelAcross(mirrored(piece), name)];
    expect(other.lengthMm).toBeCloseTo(one.lengthMm, 9);
    const ends = (across: typeof one) => across.ends.map(end => [...end].sort().join()).sort();
    expect(ends(other)).toEqual(ends(one));
  }
});

test('without a centre or a grain the first part of a broken level is followed', () => {
  const lines = [level('waist', [0, 100], [120, 100]), level('waist', [120, 100], [240, 150])];
  expect(levelAcross(rectangle('panel', 240, 300, { lines }), 'waist').lengthMm).toBeCloseTo(240, 9);
});

test('a level stops where the cloth ends, and does not leap a gap that is no dart', () => {
  const forked = pieceOf(
    'front',
    [
      side('top', [
        [0, 0],
        [100, 0],
      ]),
      side('slit', [
        [100, 0],
        [100, 150],
        [160, 150],
        [160, 0],
      ]),
      side('strap', [
        [160, 0],
        [240, 0],
      ]),
      side('side', [
        [240, 0],
        [240, 300],
      ]),
      side('hem', [
        [240, 300],
        [0, 300],
      ]),
      side(
        'centre',
        [
          [0, 300],
          [0, 0],
        ],
        { kind: 'fold' },
      ),
    ],
    { lines: [level('chest', [0, 100], [50, 100])] },
  );
  expect(levelAcross(forked, 'chest').lengthMm).toBeCloseTo(100, 9);
  // Drawn outside the cloth, it is that of the nearest part of it.
  const drawn = (from: number, to: number) =>
    levelAcross({ ...forked, lines: [level('chest', [from, 100], [to, 100])] }, 'chest').lengthMm;
  expect(drawn(250, 290)).toBeCloseTo(80, 9);
  expect(drawn(-60, -20)).toBeCloseTo(100, 9);
  expect(drawn(140, 158)).toBeCloseTo(80, 9);
});

test('a pair of sleeves has the girth of one', () => {
  const girths = levelGirths(shiftPattern());
  expect(girths['upper arm']).toBeCloseTo(2 * 192, 6);
  expect(girths.waist).toBeCloseTo(4 * 266, 6);
});

test('front and back of a trouser leg are a tube at the thigh, and half of the hips', () => {
  const leg = (name: string, width: number) =>
    pieceOf(
      name,
      [
        side('waist', [
          [0, 0],
          [width, 0],
        ]),
        side('outseam', [
          [width, 0],
          [width, 900],
        ]),
        side(
          'hem',
          [
            [width, 900],
            [0, 900],
          ],
          { kind: 'hem' },
        ),
        side('inseam', [
          [0, 900],
          [0, 250],
        ]),
        side('crotch', [
          [0, 250],
          [0, 0],
        ]),
      ],
      {
        lines: [level('hip', [0, 200], [width, 200]), level('thigh', [0, 300], [width, 300])],
        cutting: { count: 2, mirrored: true },
      },
    );
  const pattern = patternOf(
    [leg('front', 240), leg('back', 300)],
    [
      seam('outseam', ['front.outseam'], ['back.outseam']),
      seam('inseam', ['front.inseam'], ['back.inseam']),
      seam('crotch', ['front.crotch'], ['front.crotch']),
    ],
  );
  expect(girthsOf(pattern)).toEqual({ hip: 2 * 540, thigh: 540 });
});

/** Girths to the nanometre: sums of arc lengths carry rounding. */
const roundedGirths = (pattern: Pattern) =>
  girthsAtLevels(pattern).map(g => ({ ...g, girthMm: Math.round(g.girthMm * 1e6) / 1e6 }));

/** A panel of a leg: waist, crotch curve (square here) and inseam on its left, outseam on its right. */
const leg = (name: string, width: number, lines: readonly PieceLine[], more: Partial<Piece> = {}): Piece => ({
  ...pieceOf(
    name,
    [
      side('waist', [
        [0, 0],
        [width, 0],
      ]),
      side('outseam', [
        [width, 0],
        [width, 900],
      ]),
      side(
        'hem',
        [
          [width, 900],
          [0, 900],
        ],
        { kind: 'hem' },
      ),
      side('inseam', [
        [0, 900],
        [-50, 250],
      ]),
      side('crotch', [
        [-50, 250],
        [0, 200],
        [0, 0],
      ]),
    ],
    { lines, cutting: { count: 2, mirrored: true } },
  ),
  ...more,
});
const legSeams = [
  seam('crotch', ['front.crotch', '-back.crotch'], ['front.crotch', '-back.crotch']),
  seam('outseam', ['front.outseam'], ['back.outseam']),
  seam('inseam', ['front.inseam'], ['back.inseam']),
];
const legs = (lines: (width: number) => readonly PieceLine[], more: Partial<Piece> = {}) =>
  patternOf([leg('front', 240, lines(240), more), leg('back', 300, lines(300), more)], legSeams);

describe('a leg', () => {
  test('is one leg at the corner of crotch and inseam, both above it', () => {
    const at250 = legs(width => [level('thigh', [-50, 250], [width, 250])]);
    expect(roundedGirths(at250)).toMatchObject([
      { level: 'thigh', girthMm: 640, limb: true, pieces: ['front', 'back'] },
    ]);
    expect(roundedGirths(legs(width => [level('hip', [0, 150], [width, 150])]))).toMatchObject([
      { level: 'hip', girthMm: 1080, limb: false },
    ]);
  });
  test('whose level ends on the crotch, near the corner, runs to the corner', () => {
    // 3 mm above the corner the level ends on the crotch; taken to the corner it slants by those 3 mm.
    const near = legs(width => [level('thigh', [0, 247], [width, 247])]);
    const [thigh] = girthsAtLevels(near);
    expect(thigh!.limb).toBe(true);
    expect(thigh!.girthMm).toBeCloseTo(Math.hypot(290, 3) + Math.hypot(350, 3), 6);
  });
  test('whose level ends on the crotch, farther from the corner than an inch, is measured over both', () => {
    const high = legs(width => [level('seat', [-20, 224], [width, 224])]);
    expect(roundedGirths(high)).toMatchObject([{ limb: false }]);
    expect(roundedGirths(high)[0]!.girthMm).toBeCloseTo(2 * (240 + 300 + 2 * 24), 6);
  });
  test('is one of the pair where its seams are not listed and its role says that it is a leg', () => {
    const pattern = legs(width => [level('knee', [0, 600], [width, 600])], { role: 'trouser' });
    const across = (width: number) => width + (50 * 300) / 650;
    const girth = { girthMm: expect.closeTo(across(240) + across(300), 6), limb: true };
    expect(roundedGirths({ ...pattern, seams: [] })).toMatchObject([girth]);
    const plain = legs(width => [level('knee', [0, 600], [width, 600])]);
    expect(roundedGirths({ ...plain, seams: [] })).toMatchObject([
      { girthMm: expect.closeTo(2 * (across(240) + across(300)), 6), limb: false },
    ]);
  });
});

describe('panels sewn to themselves', () => {
  const gore = (count: number, more: Partial<Piece> = {}, mirrored = false) => {
    const piece = rectangle('gore', 100, 500, {
      lines: [level('hip', [0, 200], [100, 200])],
      cutting: { count, mirrored },
    });
    return patternOf([{ ...piece, ...more }], [seam('panels', ['gore.right'], ['-gore.left'])]);
  };
  test.each([3, 6, 8])('%d gores go round together', count => {
    expect(roundedGirths(gore(count))).toMatchObject([{ girthMm: 100 * count, limb: false }]);
    expect(roundedGirths(gore(count, {}, true))).toMatchObject([{ girthMm: 100 * count, limb: false }]);
  });
  test('two that are alike go round together, two that mirror each other are limbs', () => {
    expect(roundedGirths(gore(2))).toMatchObject([{ girthMm: 200, limb: false }]);
    expect(roundedGirths(gore(2, {}, true))).toMatchObject([{ girthMm: 100, limb: true }]);
  });
  test('unless their role says which', () => {
    expect(roundedGirths(gore(2, { role: 'sleeve' }))).toMatchObject([{ girthMm: 100, limb: true }]);
    expect(roundedGirths(gore(2, { role: 'cuff' }, true))).toMatchObject([{ girthMm: 100, limb: true }]);
    expect(roundedGirths(gore(2, { role: 'skirt' }, true))).toMatchObject([{ girthMm: 200, limb: false }]);
  });
});

test('limbs without seams are one of a pair only where every piece is cut as a pair', () => {
  const part = (name: string, count: number): Piece => ({
    ...rectangle(name, 100, 400, {
      lines: [level('elbow', [0, 100], [100, 100])],
      cutting: { count, mirrored: count === 2 },
    }),
    role: 'sleeve',
  });
  expect(roundedGirths(patternOf([part('upper', 2), part('under', 2)]))).toMatchObject([
    { girthMm: 200, limb: true },
  ]);
  expect(roundedGirths(patternOf([part('upper', 2), part('under', 1)]))).toMatchObject([
    { girthMm: 300, limb: false },
  ]);
});

test('a level that body and sleeves share is no girth of a limb', () => {
  const lines = [level('bust', [0, 100], [100, 100])];
  const cutting = { count: 2, mirrored: true };
  const body = rectangle('front', 100, 400, { lines, cutting });
  const sleeve: Piece = { ...rectangle('sleeve', 100, 400, { lines, cutting }), role: 'sleeve' };
  expect(roundedGirths(patternOf([body, sleeve]))).toMatchObject([{ girthMm: 400, limb: false }]);
});

test('a level drawn beside the piece goes across nothing', () => {
  const beside = rectangle('panel', 100, 300, { lines: [level('waist', [0, -50], [100, -50])] });
  expect(levelAcross(beside, 'waist')).toMatchObject({ lengthMm: 0, ends: [[], []] });
  expect(levelAcross(beside, 'hip')).toMatchObject({ lengthMm: 0, ends: [[], []] });
});

test('a sleeve cut on the fold is one sleeve', () => {
  const sleeve = {
    ...half('sleeve', 150, [level('elbow', [0, 100], [150, 100])]),
    cutting: { count: 2, mirrored: false, fabric: 'main' },
  };
  const pattern = patternOf([sleeve], [seam('underarm', ['sleeve.side'], ['sleeve.side'])]);
  expect(roundedGirths(pattern)).toMatchObject([{ girthMm: 300, limb: true }]);
});

test('sleeves drawn for left and right are each one, and the narrower is told', () => {
  const sleeve = (name: string, width: number) =>
    rectangle(name, width, 400, { lines: [level('elbow', [0, 100], [width, 100])] });
  const pattern = patternOf(
    [sleeve('left', 320), sleeve('right', 310)],
    ['left', 'right'].map(name => seam(name, [`${name}.right`], [`-${name}.left`])),
  );
  expect(roundedGirths(pattern)).toMatchObject([{ girthMm: 310, limb: true }]);
});

describe('a body in four', () => {
  const body = (name: string, more: Partial<Piece> = {}): Piece => ({
    ...half(name, 240),
    cutting: { count: 1, mirrored: false, fabric: 'main' },
    ...more,
  });
  test('on the fold and joined at its sides is one ring', () => {
    const pattern = patternOf([body('front'), body('back')], [seam('side', ['front.side'], ['back.side'])]);
    expect(roundedGirths(pattern)).toMatchObject([{ girthMm: 960, limb: false }]);
  });
  test('open at the front is not closed, and counts all the same', () => {
    const open = rectangle('front', 240, 300, {
      lines: [level('waist', [0, 100], [240, 100])],
      cutting: { count: 2, mirrored: true },
    });
    const pattern = patternOf([open, body('back')], [seam('side', ['front.right'], ['back.side'])]);
    expect(roundedGirths(pattern)).toMatchObject([{ girthMm: 960, limb: false }]);
  });
});

describe('over pleats', () => {
  const pleated = (stitched: number, y: number) =>
    takenUpAtTop(
      {
        type: 'pleat',
        name: 'tuck',
        kind: 'tuck',
        mouth: polyline(at(100, 0), at(140, 0)),
        towards: 'start',
        stitched,
      },
      y,
    );
  test.each([
    [80, 79, 200],
    [80, 81, 240],
    [0, 10, 240],
  ])('stitched %d mm down, a level %d mm down is %d mm', (stitched, y, lengthMm) => {
    expect(levelAcross(pleated(stitched, y), 'waist').lengthMm).toBeCloseTo(lengthMm, 9);
  });
});

test('hems that run on across seams are one sweep', () => {
  const sweeps = hemSweep(shiftPattern());
  expect(sweeps.map(s => s.edges.map(e => e.piece))).toEqual([['front', 'back'], ['sleeve']]);
  const pattern = patternOf(
    [half('front', 240), half('back', 230)],
    [seam('side', ['front.side'], ['back.side'])],
  );
  expect(hemSweep(pattern)).toEqual([
    {
      edges: [
        { piece: 'front', edge: 'hem' },
        { piece: 'back', edge: 'hem' },
      ],
      sweepMm: 940,
    },
  ]);
});

test('three panels in a row are one sweep, a hem of its own is another', () => {
  const panel = (name: string, width: number, kind: 'hem' | 'seam' = 'hem') =>
    pieceOf(name, [
      side('top', [
        [0, 0],
        [width, 0],
      ]),
      side('right', [
        [width, 0],
        [width, 300],
      ]),
      side(
        'hem',
        [
          [width, 300],
          [0, 300],
        ],
        { kind },
      ),
      side('left', [
        [0, 300],
        [0, 0],
      ]),
    ]);
  const pieces = [
    panel('lone', 70),
    panel('a', 100),
    panel('b', 110),
    panel('c', 130),
    panel('plain', 90, 'seam'),
  ];
  const seams = [
    seam('bc', ['b.right'], ['-c.left']),
    seam('ab', ['a.right'], ['-b.left']),
    seam('plain', ['c.right'], ['-plain.left']),
  ];
  expect(hemSweep(patternOf(pieces, seams)).map(s => [s.edges.map(e => e.piece), s.sweepMm])).toEqual([
    [['lone'], 70],
    [['a', 'b', 'c'], 340],
  ]);
});

test('what a dart takes up beyond the cloth of the level does not count', () => {
  const forked = half('front', 240, [level('waist', [0, 100], [100, 100])]);
  const cutOff: Piece = {
    ...forked,
    outline: {
      parts: [
        side('top', [
          [0, 0],
          [120, 0],
        ]),
        side('slit', [
          [120, 0],
          [120, 200],
          [140, 200],
          [140, 0],
        ]),
        side('strap', [
          [140, 0],
          [240, 0],
        ]),
        ...forked.outline.parts.slice(1),
      ],
    },
  };
  const lozenge = (x: number) => ({
    kind: 'dart' as const,
    name: `dart ${x}`,
    path: polyline(at(x, 40), at(x + 10, 100), at(x, 160), at(x - 10, 100), at(x, 40)),
  });
  const taken = (...xs: readonly number[]) =>
    levelAcross({ ...cutOff, lines: [...cutOff.lines, ...xs.map(lozenge)] }, 'waist').lengthMm;
  expect(taken()).toBeCloseTo(120, 9);
  expect(taken(60)).toBeCloseTo(100, 9);
  expect(taken(200)).toBeCloseTo(120, 9);
  expect(taken(60, 200)).toBeCloseTo(100, 9);
});

test('the sweep of a sleeve hem is that of one sleeve, that of the body goes all round', () => {
  const pattern = shiftPattern();
  const [body, sleeve] = hemSweep(pattern);
  const drawn = (piece: string) => pathLength(edgePath(pieceNamed(pattern, piece), 'hem'));
  expect(body!.sweepMm).toBeCloseTo(2 * (drawn('front') + drawn('back')), 9);
  expect(sleeve!.sweepMm).toBeCloseTo(drawn('sleeve'), 9);
});

test('moving and turning a piece does not change a girth', () => {
  const pattern = shiftPattern();
  const before = levelGirths(pattern);
  const angle = fc.double({ min: -3, max: 3, noNaN: true });
  fc.assert(
    fc.property(angle, fc.constantFrom('front', 'back', 'sleeve'), (turn, name) => {
      const map = compose(rotation(turn), translation(at(400 * turn, -90)));
      const path = (p: Path) => transformedPath(p, map);
      const moved = pattern.pieces.map(piece => ({
        ...piece,
        lines: piece.lines.map(l => ({ ...l, path: path(l.path) })),
        outline: {
          parts: piece.outline.parts.map(part =>
            part.type === 'edge'
              ? { ...part, path: path(part.path) }
              : part.type === 'pleat'
                ? part
                : {
                    ...part,
                    legs: [path(part.legs[0]), path(part.legs[1])] as const,
                    apex: apply(map, part.apex),
                  },
          ),
        },
      }));
      const pieces = pattern.pieces.map((p, i) => (p.name === name ? moved[i]! : p));
      const after = levelGirths({ ...pattern, pieces });
      for (const [level, mm] of Object.entries(before)) expect(after[level]).toBeCloseTo(mm, 6);
    }),
    { numRuns: 25 },
  );
});

describe('a sleeve whose level was drawn from corner to corner', () => {
  /** A sleeve 300 wide at its underarm, its right half turned by an alteration so that its corner lies lower. */
  const sleeve = (drop: number, levelTo: readonly [number, number] = [300, 100 + drop]) =>
    pieceOf(
      'sleeve',
      [
        side('cap', [
          [0, 100],
          [150, 0],
          [300, 100 + drop],
        ]),
        side('under-front', [
          [300, 100 + drop],
          [260, 400],
        ]),
        side(
          'hem',
          [
            [260, 400],
            [40, 400],
          ],
          { kind: 'hem' },
        ),
        side('under-back', [
          [40, 400],
          [0, 100],
        ]),
      ],
      {
        lines: [
          { kind: 'grain', name: 'grain', path: polyline(at(60, 350), at(60, 120)) },
          level('upper arm', [0, 100], [150, 100], levelTo),
        ],
        cutting: { count: 2, mirrored: true },
      },
    );
  const underarm = [seam('underarm', ['sleeve.under-front'], ['-sleeve.under-back'])];
  test.each([0, 3, 12, 40])('runs from corner to corner where one lies %d mm lower', drop => {
    const [girth] = girthsAtLevels(patternOf([sleeve(drop)], underarm));
    expect(girth).toMatchObject({ limb: true });
    expect(girth!.girthMm).toBeCloseTo(Math.hypot(300, drop), 6);
  });
  test('stays where it is drawn where it goes round the sleeve as it is, a little below the corner', () => {
    // 12 mm below the underarm, where the seam leans in by 40 in 300 on both sides.
    const lower = {
      ...sleeve(0),
      lines: [level('upper arm', [10, 112], [290, 112])],
    };
    const [girth] = girthsAtLevels(patternOf([lower], underarm));
    expect(girth).toMatchObject({ limb: true, girthMm: expect.closeTo(300 - 2 * 1.6, 6) });
  });
  test('is that of one sleeve even where its level ends elsewhere, on the cap', () => {
    // The level stops half way: nothing says that it belongs to the corner, 40 mm below it.
    const stray = sleeve(40, [200, 110]);
    const straight = levelAcross(stray, 'upper arm');
    expect(straight.ends).toEqual([['cap', 'under-back'], ['cap']]);
    const plain = girthsAtLevels(patternOf([stray], underarm));
    expect(plain).toMatchObject([{ limb: false, girthMm: 2 * straight.lengthMm }]);
    const known = girthsAtLevels(patternOf([{ ...stray, role: 'sleeve' }], underarm));
    expect(known).toMatchObject([{ limb: true, girthMm: straight.lengthMm }]);
  });
});

describe('a half that buttons', () => {
  // 20 mm of button stand beyond the centre, at x = 0; the level 260 mm wide to the side.
  const half = (lines: readonly PieceLine[]) =>
    pieceOf(
      'front',
      [
        side('top', [
          [-20, 0],
          [240, 0],
        ]),
        side('side', [
          [240, 0],
          [240, 300],
        ]),
        side('hem', [
          [240, 300],
          [-20, 300],
        ]),
        side('edge', [
          [-20, 300],
          [-20, 0],
        ]),
      ],
      { lines: [level('bust', [-20, 100], [240, 100]), ...lines], cutting: { count: 2, mirrored: true } },
    );
  const buttoned = (lines: readonly PieceLine[], lap: object = {}) =>
    levelGirths({
      ...patternOf([half(lines)]),
      fastenings: [
        {
          name: 'buttons',
          kind: 'buttons',
          along: { piece: 'front', edge: 'edge', reversed: false },
          ...lap,
        },
      ],
    }).bust;
  const centre: PieceLine = {
    kind: 'fold',
    name: 'centre front',
    path: { segments: [[at(0, 0), at(0, 300)]] },
  };

  test('is worn to its centre line: what lies beyond overlaps', () => {
    expect(buttoned([centre])).toBeCloseTo(2 * 240, 9);
  });
  test('laps by what its fastening says where no centre line is drawn', () => {
    expect(buttoned([], { overlap: 20, underlap: 20 })).toBeCloseTo(2 * 260 - 40, 9);
    expect(buttoned([])).toBeCloseTo(2 * 260, 9);
  });
  test('a band that buttons at the fold it is laid double along counts once, half of it lapped', () => {
    // Two bands of 30 mm, each of two layers: one layer of each is worn, and half of that lies on the other's.
    const band = (lines: readonly PieceLine[]) =>
      pieceOf(
        'band',
        [
          side('top', [
            [0, 0],
            [30, 0],
          ]),
          side(
            'edge',
            [
              [30, 0],
              [30, 300],
            ],
            { kind: 'fold' },
          ),
          side('hem', [
            [30, 300],
            [0, 300],
          ]),
          side('sewn', [
            [0, 300],
            [0, 0],
          ]),
        ],
        { lines: [level('bust', [-5, 100], [35, 100]), ...lines], cutting: { count: 2, mirrored: true } },
      );
    const worn = (lines: readonly PieceLine[]) =>
      levelGirths({
        ...patternOf([band(lines)]),
        fastenings: [
          { name: 'buttons', kind: 'buttons', along: { piece: 'band', edge: 'edge', reversed: false } },
        ],
      }).bust;
    expect(worn([])).toBeCloseTo(2 * 30 - 2 * 15, 9);
    // Its centre drawn 10 mm from the fold, that is what laps.
    const at10: PieceLine = {
      kind: 'fold',
      name: 'centre front',
      path: { segments: [[at(20, 0), at(20, 300)]] },
    };
    expect(worn([at10])).toBeCloseTo(2 * 30 - 2 * 10, 9);
  });
  test('a fastening of another edge, or of another piece, laps nothing here', () => {
    const along = (piece: string, edge: string) => ({ piece, edge, reversed: false });
    const lap = { kind: 'buttons' as const, overlap: 50, underlap: 50 };
    const own = { kind: 'buttons' as const, overlap: 20, underlap: 20 };
    const pocket = rectangle('pocket', 100, 120);
    const girth = levelGirths({
      ...patternOf([half([]), pocket]),
      fastenings: [
        { name: 'buttons', along: along('front', 'edge'), ...own },
        { name: 'shoulder', along: along('front', 'top'), ...lap },
        { name: 'flap', along: along('pocket', 'top'), ...lap },
      ],
    }).bust;
    expect(girth).toBeCloseTo(2 * 260 - 40, 9);
  });
});

test('a level drawn to the corner under the arm runs to it, though the armhole dips below', () => {
  // The armhole comes up to its corner over the last 40 mm: the level is outside the cloth there, by 6 mm at most.
  const piece = pieceOf(
    'front',
    [
      side('top', [
        [0, 0],
        [120, 0],
      ]),
      side('armhole', [
        [120, 0],
        [130, 106],
        [180, 106],
        [200, 100],
      ]),
      side('side', [
        [200, 100],
        [210, 300],
      ]),
      side('hem', [
        [210, 300],
        [0, 300],
      ]),
      side(
        'centre',
        [
          [0, 300],
          [0, 0],
        ],
        { kind: 'fold' },
      ),
    ],
    { lines: [level('bust', [0, 100], [200, 100])] },
  );
  expect(levelGirths(patternOf([piece])).bust).toBeCloseTo(400, 9);
});

describe('a level that is drawn in several stretches, or in none', () => {
  const folded = (path: Path) => {
    const { outline, ...piece } = rectangle('front', 200, 300);
    const parts = outline.parts.map(p => (p.name === 'left' ? { ...p, kind: 'fold' as const } : p));
    return { ...piece, outline: { parts }, lines: [{ kind: 'level' as const, name: 'bust', path }] } as Piece;
  };
  test('goes on as the stretch at the centre does, though another is squarer to it', () => {
    const slanted = folded(polyline(at(0, 100), at(100, 120), at(200, 120)));
    expect(levelAcross(slanted, 'bust').lengthMm).toBeCloseTo(Math.hypot(200, 40), 9);
    const square = folded(polyline(at(0, 100), at(100, 100), at(200, 120)));
    expect(levelAcross(square, 'bust').lengthMm).toBeCloseTo(200, 9);
  });
  test('has no length where it is a dot', () => {
    const dot = folded({ segments: [[at(50, 100), at(50, 100)]] });
    expect(levelAcross(dot, 'bust')).toEqual({ lengthMm: 0, ends: [[], []], places: [] });
  });
});
