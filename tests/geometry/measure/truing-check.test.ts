import { at, checkPattern, edgePath, type Piece, pathLength, pathOf } from '@paperhinge/geometry';
import { edgeTruing } from '@paperhinge/geometry/measure';
import { describe, expect, test } from 'vitest';
import { type Corner, dart, patternOf, pieceOf, rectangle, seam, side } from '../../support/polygon-piece.js';
import { shiftPattern } from '../../support/shift.js';
import { toldFinding } from '../../support/told.js';

/** A piece on a fold whose hem runs through the corners given, from its side to its fold. */
const hemmed = (hem: readonly Corner[]): Piece =>
  pieceOf('front', [
    side('top', [
      [0, 0],
      [300, 0],
    ]),
    side('side', [[300, 0], hem[0]!]),
    side('hem', hem, { kind: 'hem' }),
    side('centre', [hem.at(-1)!, [0, 0]], { kind: 'fold' }),
  ]);
const found = (piece: Piece) =>
  checkPattern(patternOf([piece])).filter(f =>
    ['edge-kinked', 'edge-stepped', 'fold-corner-not-square'].includes(f.code),
  );
const drop = (length: number, degrees: number) => length * Math.tan((degrees * Math.PI) / 180);

const edgeLength = (piece: Piece, name: string) => pathLength(edgePath(piece, name));

test('the shift is true', () => {
  expect(shiftPattern().pieces.flatMap(found)).toEqual([]);
});

test('the bridge of an opened wedge leaves two kinks, found together and sent to be trued', () => {
  // 100 mm of hem, a bridge of 50 mm at 6°, 150 mm of hem at 12°.
  const y1 = 400 - drop(150, 12) - drop(50, 6);
  const piece = hemmed([
    [300, y1],
    [150, 400 - drop(50, 6)],
    [100, 400],
    [0, 400],
  ]);
  const [finding, ...others] = found(piece);
  expect(others).toEqual([]);
  expect(finding).toMatchObject({
    severity: 'warning',
    code: 'edge-kinked',
    where: { piece: 'front', edge: 'hem' },
  });
  expect(toldFinding(finding!)).toMatchObject({
    message: expect.stringMatching(
      /^The hem of the front has 2 kinks, the sharpest of 6°, .* mm from the side\.$/,
    ),
    remedy: 'Redraw it with a fair line: true: { edges: [front.hem] }.',
  });
  expect(finding!.figures!.count).toBe(2);
  expect(finding!.figures!.angleDeg).toBeCloseTo(6, 6);
});

test.each([
  [0.9, 0],
  [1.1, 1],
])('a bend of %d degrees gives %d kinks', (bend, count) => {
  const piece = hemmed([
    [300, 400 - drop(200, bend)],
    [100, 400],
    [0, 400],
  ]);
  expect(edgeTruing(piece, 'hem').kinks).toHaveLength(count);
});

test('a corner of a square line is meant', () => {
  const piece = hemmed([
    [300, 400],
    [200, 400],
    [200, 450],
    [0, 450],
  ]);
  expect(edgeTruing(piece, 'hem')).toEqual({ kinks: [], steps: [] });
});

test('a short bridge that turns one way and back is a step', () => {
  const piece = hemmed([
    [300, 400],
    [150, 400],
    [150, 406],
    [0, 406],
  ]);
  expect(edgeTruing(piece, 'hem')).toEqual({ kinks: [], steps: [{ alongMm: 150, stepMm: 6 }] });
  expect(found(piece)[0]).toMatchObject({ code: 'edge-stepped', figures: { stepMm: 6 } });
});

test('a step that nobody sees is none, however sharp: neither are its two turns, though an alteration left them', () => {
  // Half a millimetre: turns of 45 degrees are corners meant, unless they are left; those of 10 degrees are kinks.
  const jog = (run: number) =>
    hemmed([
      [300, 400],
      [150, 400],
      [150 - run, 400.5],
      [0, 400.5],
    ]);
  const leftToTrue = [150, 150 + Math.hypot(0.5, 0.5)].map(mm => ({ piece: 'front', edge: 'hem', at: mm }));
  expect(edgeTruing(jog(0.5), 'hem', { leftToTrue })).toEqual({ kinks: [], steps: [] });
  expect(edgeTruing(jog(0.5), 'hem', { leftToTrue: leftToTrue.slice(0, 1) })).toEqual({
    kinks: [],
    steps: [],
  });
  const { kinks, steps } = edgeTruing(jog(0.5 / Math.tan(Math.PI / 18)), 'hem');
  expect(steps).toEqual([]);
  expect(kinks.map(k => [k.alongMm, Math.abs(k.turn)])).toEqual([
    [150, expect.closeTo(Math.PI / 18, 9)],
    [expect.closeTo(150 + 0.5 / Math.sin(Math.PI / 18), 9), expect.closeTo(Math.PI / 18, 9)],
  ]);
});

test('a V at either end of a fold is meant, unless an alteration left it', () => {
  const piece = pieceOf('front', [
    side('top', [
      [0, 0],
      [300, 150],
    ]),
    side('side', [
      [300, 150],
      [300, 400],
    ]),
    side(
      'hem',
      [
        [300, 400],
        [0, 550],
      ],
      { kind: 'hem' },
    ),
    side(
      'centre',
      [
        [0, 550],
        [0, 0],
      ],
      { kind: 'fold' },
    ),
  ]);
  const told = (...left: readonly { readonly edge: string; readonly at: number }[]) =>
    checkPattern({
      ...patternOf([piece]),
      leftToTrue: left.map(place => ({ piece: 'front', ...place })),
    })
      .filter(f => f.code === 'fold-corner-not-square')
      .map(f => f.where.edge);
  expect(told()).toEqual([]);
  expect(told({ edge: 'top', at: 0 })).toEqual(['top']);
  expect(told({ edge: 'centre', at: 550 })).toEqual(['top']);
  expect(told({ edge: 'centre', at: 0 })).toEqual(['hem']);
  expect(told({ edge: 'hem', at: edgeLength(piece, 'hem') })).toEqual(['hem']);
});

test('segments no longer than the gap left on reading are passed over', () => {
  const piece = hemmed([
    [300, 400],
    [150, 400],
    [150, 400.01],
    [0, 400.01],
  ]);
  expect(edgeTruing(piece, 'hem')).toEqual({ kinks: [], steps: [] });
});

test.each([
  [1.9, 0],
  [2.1, 1],
  [19, 1],
  [21, 0],
])('a hem that meets its fold %d degrees from square gives %d findings', (off, count) => {
  expect(
    found(
      hemmed([
        [300, 400],
        [0, 400 + drop(300, off)],
      ]),
    ),
  ).toHaveLength(count);
});

test('the finding at a fold says whether it is a point or a dip', () => {
  const told = (rise: number) =>
    toldFinding(
      found(
        hemmed([
          [300, 400],
          [0, 400 + rise],
        ]),
      )[0]!,
    );
  // 30 mm out on each side the fair curve stands 30 sin(5°) / 2 = 1.3 mm from the corner.
  expect(told(drop(300, 5))).toMatchObject({
    severity: 'warning',
    message:
      'The hem of the front meets the fold at 85° instead of 90°: opened out, it comes to a point at the centre.',
    remedy: 'Draw it square to the fold, about 1.3 mm off there: true: { edges: [front.hem] }.',
  });
  expect(told(-drop(300, 5))).toMatchObject({
    message: 'The hem of the front meets the fold at 95° instead of 90°: opened out, it dips at the centre.',
    remedy: 'Draw it square to the fold, about 1.3 mm on there: true: { edges: [front.hem] }.',
  });
});

test('a curve is as smooth as its tangents', () => {
  const smooth: Piece = {
    ...hemmed([
      [300, 400],
      [0, 400],
    ]),
    outline: {
      parts: hemmed([
        [300, 400],
        [0, 400],
      ]).outline.parts.map(p =>
        p.type === 'edge' && p.name === 'hem'
          ? {
              ...p,
              path: pathOf(
                [at(300, 400), at(250, 410), at(200, 420), at(150, 420)],
                [at(150, 420), at(100, 420), at(50, 400), at(0, 400)],
              ),
            }
          : p,
      ),
    },
  };
  expect(edgeTruing(smooth, 'hem').kinks).toEqual([]);
});

test('edges that a closed dart welded at an angle are found, and a corner that was meant is not', () => {
  const welded = (bend: number, code = 'edge-kinked') => {
    const front = pieceOf('front', [
      side('top', [
        [0, 0],
        [300, 0],
      ]),
      side('side-upper', [
        [300, 0],
        [300, 100],
      ]),
      side('side-lower', [
        [300, 100],
        [300 + drop(200, bend), 300],
      ]),
      side(
        'hem',
        [
          [300 + drop(200, bend), 300],
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
    ]);
    const seams = [seam('side', ['front.side-upper', 'front.side-lower'], ['back.right'])];
    const length = edgeLength(front, 'side-upper') + edgeLength(front, 'side-lower');
    return checkPattern(patternOf([front, rectangle('back', 100, length)], seams)).filter(
      f => f.code === code,
    );
  };
  expect(welded(0.9)).toEqual([]);
  expect(welded(0.5, 'small-differences')).toEqual([]);
  expect(welded(2, 'small-differences')).toHaveLength(1);
  expect(toldFinding(welded(6)[0]!)).toMatchObject({
    message: 'The side upper of the front runs on as the side lower of the front with a kink of 6°.',
    remedy: 'Redraw both with a fair line: true: { edges: [front.side-upper, front.side-lower] }.',
  });
  expect(welded(21)).toEqual([]);
});

test('the two turns of a step are no kinks besides, however gently its bridge leans', () => {
  // 12 mm at 15 degrees shift the line by 3.1 mm; each turn alone, over 3 and under 20 degrees, would be a kink.
  const [dx, dy] = [12 * Math.cos(Math.PI / 12), 12 * Math.sin(Math.PI / 12)];
  const stepped = (beyond: readonly Corner[] = []) =>
    edgeTruing(hemmed([[300, 400], [150, 400], [150 - dx, 400 + dy], ...beyond, [0, 400 + dy]]), 'hem');
  expect(stepped()).toEqual({ kinks: [], steps: [{ alongMm: 150, stepMm: expect.closeTo(dy, 9) }] });
  // A kink 50 mm on is one of its own.
  const { kinks } = stepped([
    [100 - dx, 400 + dy],
    [50 - dx, 400 + dy + drop(50, 6)],
  ]);
  expect(kinks[0]).toEqual({
    alongMm: expect.closeTo(150 + 12 + 50, 9),
    turn: expect.closeTo((-6 * Math.PI) / 180, 9),
  });
});

test('a step is as high as it shifts the line, up or down, wherever its bridge leans', () => {
  // A bridge of 10 mm at 30 degrees shifts a level line by 5.
  const [dx, dy] = [10 * Math.cos(Math.PI / 6), 10 * Math.sin(Math.PI / 6)];
  for (const way of [1, -1]) {
    const piece = hemmed([
      [300, 400],
      [150, 400],
      [150 - dx, 400 + way * dy],
      [0, 400 + way * dy],
    ]);
    const { steps, kinks } = edgeTruing(piece, 'hem');
    expect(kinks).toEqual([]);
    expect(steps).toEqual([{ alongMm: 150, stepMm: expect.closeTo(5, 9) }]);
  }
});

test('a curve that swings out and back is no step, however short', () => {
  const [up, down] = [at(150, 400), at(140, 405)];
  const curve = [up, at(146, 400), at(144, 405), down] as const;
  const piece = hemmed([
    [300, 400],
    [0, 405],
  ]);
  // Its handles lean by 20 degrees each way, so that the hem turns at both its ends.
  const swung = [up, at(146, 402), at(144, 403), down] as const;
  for (const bridge of [curve, swung]) {
    const parts = piece.outline.parts.map(part =>
      part.name === 'hem' && part.type === 'edge'
        ? { ...part, path: { segments: [[at(300, 400), up] as const, bridge, [down, at(0, 405)] as const] } }
        : part,
    );
    expect(edgeTruing({ ...piece, outline: { parts } }, 'hem').steps).toEqual([]);
  }
});

test('a kink and a step of one edge are both told', () => {
  const piece = hemmed([
    [300, 400 - drop(100, 6)],
    [200, 400],
    [150, 400],
    [150, 406],
    [0, 406],
  ]);
  expect(found(piece).map(f => f.code)).toEqual(['edge-kinked', 'edge-stepped']);
});

describe('a spur within an edge', () => {
  /** 0 = straight out of the piece. */
  const spurred = (size: number, angle = 0) =>
    hemmed([
      [300, 400],
      [120, 400],
      [120 + size * Math.sin(angle), 400 + size * Math.cos(angle)],
      [120, 400],
      [0, 400],
    ]);
  const told = (piece: Piece) => checkPattern(patternOf([piece])).filter(f => f.code === 'edge-turns-back');

  test.each([0.06, 0.3, 1.9])('of %s mm is told with its place; without its tip it is gone', size => {
    for (const angle of [0, 0.7, 2.5, 4, Math.PI / 2, -Math.PI / 2]) {
      const [finding, ...others] = told(spurred(size, angle));
      expect(others).toEqual([]);
      expect(finding!.figures!.spurMm).toBeCloseTo(size, 9);
      expect(Math.abs(finding!.figures!.alongMm! - 180 - size / 2)).toBeLessThanOrEqual(size / 2 + 1e-9);
      expect(toldFinding(finding!)).toMatchObject({
        message: expect.stringContaining(
          'from the side: a spur, about which the cutting line may run to a point.',
        ),
        remedy: 'Delete the point at its tip in the drawing.',
      });
    }
    // As the remedy says.
    expect(
      told(
        hemmed([
          [300, 400],
          [120, 400],
          [0, 400],
        ]),
      ),
    ).toEqual([]);
  });
  test.each([0.01, 0.04, 2.5, 40])('of %s mm is none: no line shows it, or it is drawn so', size => {
    expect(told(spurred(size))).toEqual([]);
  });
  test('scallops and teeth are none', () => {
    const teeth = Array.from({ length: 61 }, (_, i): Corner => [300 - 5 * i, i % 2 === 0 ? 400 : 402]);
    expect(told(hemmed(teeth))).toEqual([]);
  });
});

describe('a hook at an end of an edge', () => {
  /** The hem begins or ends with a stretch of a length that leads off by an angle from where it goes. */
  const hooked = (size: number, angle: number, atStart: boolean) => {
    const off: Corner = [size * Math.cos(angle), size * Math.sin(angle)];
    return hemmed(
      atStart
        ? [
            [300, 400],
            [300 - off[0], 400 + off[1]],
            [0, 400],
          ]
        : [
            [300, 400],
            [off[0], 400 + off[1]],
            [0, 400],
          ],
    );
  };
  const told = (piece: Piece) => checkPattern(patternOf([piece])).filter(f => f.code === 'edge-ends-hooked');

  test.each([0.012, 0.03, 0.049])('of %s mm is told with its corner; without its point it is gone', size => {
    for (const atStart of [true, false])
      for (const angle of [0.6, Math.PI / 2, 2.8, -1]) {
        const [finding, ...others] = told(hooked(size, angle, atStart));
        expect(others).toEqual([]);
        expect(finding!.figures!.hookMm).toBeCloseTo(size, 9);
        expect(toldFinding(finding!).message).toContain(
          `The hem of the front ends beside the ${atStart ? 'side' : 'centre'} in a hook of`,
        );
      }
    // As the remedy says: without that point.
    expect(
      told(
        hemmed([
          [300, 400],
          [0, 400],
        ]),
      ),
    ).toEqual([]);
  });
  test.each([0.005, 0.06, 3])('of %s mm is none: no corner goes by it, or it is seen', size => {
    expect(told(hooked(size, Math.PI / 2, true))).toEqual([]);
  });
  test('a short end that runs on straight is none', () => {
    expect(told(hooked(0.03, 0.1, true))).toEqual([]);
  });
});

test('a dart at the fold makes no corner there', () => {
  const piece = pieceOf('front', [
    side('top', [
      [0, 0],
      [300, 0],
    ]),
    side('side', [
      [300, 0],
      [300, 400],
    ]),
    side('hem', [
      [300, 400],
      [20, 400],
    ]),
    dart('centre-dart', [20, 400], [10, 300], [0, 390]),
    side(
      'centre',
      [
        [0, 390],
        [0, 0],
      ],
      { kind: 'fold' },
    ),
  ]);
  expect(found(piece)).toEqual([]);
});

test('a bridge that doubles back is a step as long as itself', () => {
  // It turns by 100 degrees, and back.
  const [dx, dy] = [6 * Math.cos((80 * Math.PI) / 180), 6 * Math.sin((80 * Math.PI) / 180)];
  const piece = hemmed([
    [300, 400],
    [150, 400],
    [150 + dx, 400 + dy],
    [0, 400 + dy],
  ]);
  expect(edgeTruing(piece, 'hem').steps).toEqual([{ alongMm: 150, stepMm: expect.closeTo(6, 9) }]);
});

test('a bridge that is longer, or turns on the same way, is no step', () => {
  const long = hemmed([
    [300, 400],
    [150, 400],
    [140, 412],
    [0, 412],
  ]);
  expect(edgeTruing(long, 'hem').steps).toEqual([]);
  const bent = hemmed([
    [300, 400],
    [150, 400],
    [141, 403],
    [60, 450],
  ]);
  const { steps, kinks } = edgeTruing(bent, 'hem');
  expect(steps).toEqual([]);
  expect(kinks).toHaveLength(2);
});

test('kinks are found whichever way they turn, and lie where they are along the edge', () => {
  const kinks = (bend: number) =>
    edgeTruing(
      hemmed([
        [300, 400 - drop(200, bend)],
        [100, 400],
        [0, 400],
      ]),
      'hem',
    ).kinks;
  expect(kinks(5)).toEqual([
    {
      alongMm: expect.closeTo(Math.hypot(200, drop(200, 5)), 9),
      turn: expect.closeTo((5 * Math.PI) / 180, 9),
    },
  ]);
  expect(kinks(-5)[0]!.turn).toBeCloseTo((-5 * Math.PI) / 180, 9);
  expect(kinks(25)).toEqual([]);
  expect(kinks(-25)).toEqual([]);
});

test('a dart within an edge takes none of its length', () => {
  const piece = pieceOf('skirt', [
    side('waist', [
      [0, 0],
      [40, 0],
      [100, 0],
    ]),
    dart('waist', [100, 0], [110, 90], [120, 0]),
    side('waist', [
      [120, 0],
      [160, 0],
      [240, drop(80, 6)],
    ]),
    side('side', [
      [240, drop(80, 6)],
      [240, 500],
    ]),
    side('hem', [
      [240, 500],
      [0, 500],
    ]),
    side('centre-seam', [
      [0, 500],
      [0, 0],
    ]),
  ]);
  expect(edgeTruing(piece, 'waist').kinks).toEqual([
    { alongMm: expect.closeTo(140, 9), turn: expect.closeTo((6 * Math.PI) / 180, 9) },
  ]);
  expect(toldFinding(found(piece)[0]!).message).toBe(
    'The waist of the skirt has a kink of 6°, 140 mm from the centre seam.',
  );
});

test('a place on an edge is told from what the edge begins at', () => {
  const piece = pieceOf('skirt', [
    side('waist', [
      [0, 0],
      [100, 0],
    ]),
    dart('bust', [100, 0], [110, 90], [120, 0]),
    side('yoke', [
      [120, 0],
      [160, 0],
      [160, 6],
      [240, 6],
    ]),
    side('rest', [
      [240, 6],
      [240, 500],
      [0, 500],
      [0, 0],
    ]),
  ]);
  expect(found(piece).map(f => toldFinding(f).message)).toEqual([
    'The yoke of the skirt steps by 6 mm, 40 mm from the bust dart.',
  ]);
});

test('the sharpest of several kinks is told', () => {
  const piece = hemmed([
    [300, 400 - drop(100, 8) - drop(100, 4)],
    [200, 400 - drop(100, 4)],
    [100, 400],
    [0, 400],
  ]);
  const { figures } = found(piece)[0]!;
  expect(figures!.count).toBe(2);
  expect(figures!.angleDeg).toBeCloseTo(4, 6);
  const mirrored = hemmed([
    [300, 400 + drop(100, 9) + drop(100, 4)],
    [200, 400 + drop(100, 4)],
    [100, 400],
    [0, 400],
  ]);
  expect(found(mirrored)[0]!.figures!.angleDeg).toBeCloseTo(5, 6);
  expect(found(mirrored)[0]!.figures!.alongMm).toBeCloseTo(Math.hypot(100, drop(100, 9)), 6);
});

test('of kinks that turn either way the sharpest is told, by its size', () => {
  // 4 degrees one way, then 9 the other.
  const piece = hemmed([
    [300, 400 - drop(100, 4) + drop(100, 5)],
    [200, 400 - drop(100, 4)],
    [100, 400],
    [0, 400],
  ]);
  expect(found(piece)[0]!.figures!.angleDeg).toBeCloseTo(9, 6);
  expect(found(piece)[0]!.figures!.alongMm).toBeCloseTo(Math.hypot(100, drop(100, 5)), 6);
  // The other way round, the small one first: 5 degrees, then 9 back.
  const later = hemmed([
    [300, 400 + drop(100, 9) + drop(100, 4)],
    [200, 400 + drop(100, 9)],
    [100, 400],
    [0, 400],
  ]);
  const turns = edgeTruing(later, 'hem').kinks.map(k => Math.round((k.turn * 180) / Math.PI));
  expect(turns).toEqual([5, -9]);
  expect(found(later)[0]!.figures!.angleDeg).toBeCloseTo(9, 6);
});
