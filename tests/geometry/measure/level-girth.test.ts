import {
  apply,
  at,
  compose,
  edgePath,
  hemSweep,
  levelAcross,
  levelGirths,
  type Path,
  type Pattern,
  pathLength,
  pathOf,
  pieceNamed,
  polyline,
  rotation,
  transformedPath,
  translation,
} from '@paperhinge/geometry';
import fc from 'fast-check';
import { expect, test } from 'vitest';
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

test('the intake of a dart that the level crosses is left out', () => {
  // A waist dart open 40 at the top, its point 200 down: 20 wide at 100.
  const front = pieceOf(
    'front',
    [
      side('top', [
        [0, 0],
        [100, 0],
      ]),
      dart('waist', [100, 0], [120, 200], [140, 0]),
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
    { lines: [level('waist', [0, 100], [240, 100])] },
  );
  const across = levelAcross(front, 'waist');
  expect(across.lengthMm).toBeCloseTo(220, 9);
  expect(across.ends).toEqual([['centre'], ['side']]);
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
