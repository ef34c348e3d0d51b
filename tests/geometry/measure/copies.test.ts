import { checkPattern, measurePattern, type Piece, type Seam, walkSeam } from '@paperhinge/geometry';
import { hemSweep, lengthInGarment } from '@paperhinge/geometry/measure';
import { copiesInGarment } from '@paperhinge/geometry/pattern';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type PieceOptions,
  patternOf,
  pieceOf,
  rectangle,
  run,
  seam,
  side,
} from '../../support/polygon-piece.js';
import { toldFinding } from '../../support/told.js';

/** A strip with a fold at its right: `top`, `fold`, `bottom`, `left`. */
const folded = (name: string, width: number, options: PieceOptions = {}) =>
  pieceOf(
    name,
    [
      side('top', [
        [0, 0],
        [width, 0],
      ]),
      side(
        'fold',
        [
          [width, 0],
          [width, 60],
        ],
        { kind: 'fold' },
      ),
      side('bottom', [
        [width, 60],
        [0, 60],
      ]),
      side('left', [
        [0, 60],
        [0, 0],
      ]),
    ],
    options,
  );
const cut = (count: number, more: object = {}) => ({ cutting: { count, ...more } });
const pair = { cutting: { count: 2, mirrored: true } };

test.each([
  ['once, whole', rectangle('p', 100, 60), 1],
  ['as a pair', rectangle('p', 100, 60, pair), 2],
  ['six times', rectangle('p', 100, 60, cut(6)), 6],
  ['once on the fold', folded('p', 100), 2],
  ['twice on the fold', folded('p', 100, cut(2)), 4],
  ['four times in two layers', rectangle('p', 100, 60, cut(4, { layers: 2 })), 2],
  ['twice on the fold in two layers', folded('p', 100, cut(2, { layers: 2 })), 2],
])('a piece cut %s stands so often in the garment', (_, piece, times) => {
  expect(copiesInGarment(piece)).toBe(times);
});

test('an edge is as long in the garment as all its copies', () => {
  const inGarment = (piece: Piece) => lengthInGarment(patternOf([piece]), { piece: 'p', edge: 'top' });
  expect(inGarment(rectangle('p', 100, 60))).toBe(100);
  expect(inGarment(rectangle('p', 100, 60, cut(6)))).toBe(600);
  expect(inGarment(folded('p', 100, cut(2, { layers: 2 })))).toBe(200);
});

test('what is cut besides does not count', () => {
  const piece = { ...rectangle('p', 100, 60), alsoCut: [{ count: 2, mirrored: true, fabric: 'lining' }] };
  expect(copiesInGarment(piece)).toBe(1);
});

describe('both sides of a seam are counted over as much of the garment', () => {
  const waist = (band: ReturnType<typeof rectangle>, b: readonly string[] = ['front.top', 'back.top']) =>
    patternOf(
      [band, rectangle('front', 200, 500, pair), rectangle('back', 220, 500, pair)],
      [seam('waist', ['band.bottom'], b)],
    );
  const walked = (pattern: ReturnType<typeof waist>) => walkSeam(pattern, pattern.seams[0]!);

  test('as written where both list as many copies', () => {
    const halfBand = walked(waist(folded('band', 420)));
    expect(halfBand).toMatchObject({ counted: 'written', aMm: 420, bMm: 420, matches: true });
    const allListed = ['back.top', 'front.top', '-front.top', '-back.top'];
    expect(walked(waist(rectangle('band', 840, 60), allListed))).toMatchObject({
      counted: 'written',
      aMm: 840,
      bMm: 840,
      matches: true,
    });
  });
  test('a side that is whole against every copy of the other', () => {
    const whole = walked(waist(rectangle('band', 840, 60)));
    expect(whole).toMatchObject({ counted: 'garment', aMm: 840, bMm: 840, matches: true });
    expect(walked(waist(rectangle('band', 900, 60)))).toMatchObject({
      counted: 'garment',
      differenceMm: 60,
      matches: false,
    });
  });
  test('whichever side it is', () => {
    const { seams, ...pattern } = waist(rectangle('band', 840, 60));
    const turned: Seam = { ...seams[0]!, a: seams[0]!.b, b: seams[0]!.a };
    expect(walkSeam({ ...pattern, seams: [turned] }, turned)).toMatchObject({
      counted: 'garment',
      aMm: 840,
      bMm: 840,
    });
  });
  test('a piece cut once that is sewn to one of a pair is taken as written', () => {
    const fly = patternOf(
      [rectangle('fly', 60, 180), rectangle('front', 200, 180, pair)],
      [seam('fly', ['fly.left'], ['front.right'])],
    );
    expect(walkSeam(fly, fly.seams[0]!)).toMatchObject({ counted: 'written', bMm: 180, matches: true });
  });
  test('a piece that is whole among pieces of a pair counts once', () => {
    const collar = patternOf(
      [rectangle('collar', 400, 60), rectangle('front', 90, 300, pair), rectangle('back', 220, 300)],
      [seam('neck', ['collar.bottom'], ['back.top', 'front.top'])],
    );
    const walk = walkSeam(collar, collar.seams[0]!);
    expect(walk).toMatchObject({ counted: 'garment', aMm: 400, bMm: 400 });
  });
  test('gores against half a band on the fold count over the whole garment', () => {
    const gores = patternOf(
      [folded('band', 450), rectangle('gore', 150, 600, cut(6))],
      [seam('waist', ['band.bottom'], ['gore.top'])],
    );
    expect(walkSeam(gores, gores.seams[0]!)).toMatchObject({ counted: 'garment', aMm: 900, bMm: 900 });
  });
  test('pieces cut alike are taken as written, even where the ease would fit every copy of them', () => {
    const sleeve = patternOf(
      [rectangle('sleeve', 206, 300, pair), rectangle('body', 200, 300, pair)],
      [seam('armhole', ['sleeve.top'], ['body.top'], { mm: 12 })],
    );
    expect(walkSeam(sleeve, sleeve.seams[0]!)).toMatchObject({
      counted: 'written',
      differenceMm: 6,
      matches: false,
    });
  });
  test('where neither side is whole and neither way matches, what is written stands', () => {
    const gores = patternOf(
      [folded('band', 500), rectangle('gore', 150, 600, cut(6))],
      [seam('waist', ['band.bottom'], ['gore.top'])],
    );
    const walk = walkSeam(gores, gores.seams[0]!);
    expect(walk).toMatchObject({ counted: 'written', aMm: 500, bMm: 150 });
    expect(walk.findings[0]!.figures).toMatchObject({ otherAMm: 1000, otherBMm: 900 });
    expect(toldFinding(walk.findings[0]!).message).toMatch(
      / Counted as often as the pieces are cut, they measure 1000 mm and 900 mm\.$/,
    );
  });
  test('a percentage of ease is one of side b as it is counted', () => {
    const band = { ...waist(rectangle('band', 882, 60)) };
    const eased: Seam = { ...band.seams[0]!, ease: { percent: 5 } };
    expect(walkSeam({ ...band, seams: [eased] }, eased)).toMatchObject({ easeWantedMm: 42, matches: true });
  });
  test('measures and walks say the same', () => {
    const pattern = waist(rectangle('band', 840, 60));
    expect(measurePattern(pattern).seams.waist).toEqual({
      aMm: 840,
      bMm: 840,
      differenceMm: 0,
      easeWantedMm: 0,
      matches: true,
    });
  });
  test('where neither way matches both sums are told', () => {
    const [fault] = walked(waist(rectangle('band', 900, 60))).findings;
    expect(fault!.figures).toMatchObject({ aMm: 900, bMm: 840, otherAMm: 900, otherBMm: 420 });
    expect(toldFinding(fault!).message).toBe(
      'The bottom of the band is 60 mm longer than the top of the front and the top of the back: 900 mm against 840 mm. ' +
        'That counts every piece as often as it is cut; each once, they measure 900 mm and 420 mm.',
    );
  });
  test('where both ways say the same only one is told', () => {
    const [fault] = walked(waist(folded('band', 450))).findings;
    expect(fault!.figures).not.toHaveProperty('otherAMm');
  });
});

describe('layers that would make a seam agree', () => {
  const collared = (layers?: number) =>
    patternOf(
      [
        rectangle('collar', 400, 60, cut(2, layers === undefined ? {} : { layers })),
        rectangle('front', 90, 300, pair),
        folded('back', 110),
      ],
      [seam('neck', ['collar.bottom'], ['front.top', 'back.top'])],
    );
  test('are proposed, and with them it agrees', () => {
    const pattern = collared();
    const [fault] = walkSeam(pattern, pattern.seams[0]!).findings;
    expect(fault!.figures!.layers).toBe(2);
    expect(fault!.about!.layered).toEqual({ piece: 'collar' });
    expect(toldFinding(fault!).remedy).toMatch(
      /^If 2 of the collar lie on one another, give it data-layers="2": then the sides agree\./,
    );
    const layered = collared(2);
    expect(walkSeam(layered, layered.seams[0]!)).toMatchObject({ matches: true, counted: 'garment' });
  });
  test('are not proposed where none does', () => {
    const pattern = patternOf(
      [rectangle('collar', 300, 60, cut(2)), rectangle('front', 90, 300, pair)],
      [seam('neck', ['collar.bottom'], ['front.top'])],
    );
    expect(walkSeam(pattern, pattern.seams[0]!).findings[0]!.figures).not.toHaveProperty('layers');
  });
  test('nor where a layer would be left over', () => {
    // Three collars: two on one another would make one and a half, and 600 mm of neck.
    const pattern = patternOf(
      [rectangle('collar', 400, 60, cut(3)), rectangle('front', 200, 300, cut(3))],
      [seam('neck', ['collar.bottom', 'collar.bottom'], ['front.top'])],
    );
    const [fault] = walkSeam(pattern, pattern.seams[0]!).findings;
    expect(fault!.code).toBe('seam-does-not-match');
    expect(fault!.figures).not.toHaveProperty('layers');
  });
});

test('notches are met along every copy: mirror images run back the way they came', () => {
  const marked = (name: string, edge: string, at: readonly number[], width: number, options: PieceOptions) =>
    rectangle(name, width, 60, {
      ...options,
      notches: at.map(x => ({ edge, at: x, style: 'single' as const })),
    });
  const pattern = patternOf(
    [
      // From its right end: the notch of the front, of the back, and again of back and front.
      marked('band', 'bottom', [50, 260, 580, 790], 840, {}),
      marked('front', 'top', [50], 200, pair),
      marked('back', 'top', [60], 220, pair),
    ],
    [seam('waist', ['band.bottom'], ['front.top', 'back.top'])],
  );
  const walk = walkSeam(pattern, pattern.seams[0]!);
  expect(walk.findings).toEqual([]);
  expect(walk.stretches.map(s => s.aMm)).toEqual([50, 210, 320, 210, 50]);
});

test('a piece on the fold runs back the way it came, too', () => {
  const pattern = patternOf(
    [
      rectangle('band', 400, 60, {
        notches: [50, 350].map(at => ({ edge: 'bottom', at, style: 'single' as const })),
      }),
      folded('front', 200, { notches: [{ edge: 'top', at: 50, style: 'single' }] }),
    ],
    [seam('waist', ['band.bottom'], ['front.top'])],
  );
  const walk = walkSeam(pattern, pattern.seams[0]!);
  expect(walk.stretches.map(s => [s.aMm, s.bMm])).toEqual([
    [50, 50],
    [300, 300],
    [50, 50],
  ]);
});

test('pieces of which there are unlike numbers are each taken as often as they are cut', () => {
  const pattern = patternOf(
    [rectangle('band', 900, 60), rectangle('gore', 100, 500, cut(6)), rectangle('front', 150, 500, pair)],
    [seam('waist', ['band.bottom'], ['gore.top', 'front.top'])],
  );
  expect(walkSeam(pattern, pattern.seams[0]!)).toMatchObject({ counted: 'garment', bMm: 900, matches: true });
});

test('copies that are cut alike follow one another', () => {
  const pattern = patternOf(
    [
      rectangle('band', 600, 60, {
        notches: [10, 210, 410].map(at => ({ edge: 'bottom', at, style: 'single' as const })),
      }),
      rectangle('gore', 200, 500, { ...cut(3), notches: [{ edge: 'top', at: 10, style: 'single' }] }),
    ],
    [seam('waist', ['band.bottom'], ['gore.top']), seam('panels', ['gore.right'], ['-gore.left'])],
  );
  const walk = walkSeam(pattern, pattern.seams[0]!);
  expect(walk.matches).toBe(true);
  expect(walk.stretches.map(s => s.bMm)).toEqual([10, 200, 200, 190]);
});

test('a seam in part is as long as the part, and meets the notches that lie in it', () => {
  const front = rectangle('front', 300, 400, {
    notches: [20, 100, 250].map(at => ({ edge: 'top', at, style: 'single' as const })),
  });
  const yoke = rectangle('yoke', 160, 60, { notches: [{ edge: 'bottom', at: 120, style: 'single' }] });
  const part: Seam = {
    name: 'yoke',
    a: [{ ...run('front.top'), part: { from: 60, to: 220 } }],
    b: [run('-yoke.bottom')],
    ease: { mm: 0 },
  };
  const pattern = patternOf([front, yoke], [part]);
  const walk = walkSeam(pattern, part);
  expect(walk).toMatchObject({ aMm: 160, bMm: 160, matches: true });
  expect(walk.stretches.map(s => [s.aMm, s.bMm])).toEqual([
    [40, 40],
    [120, 120],
  ]);
  // Its ends lie within the edge of the front: nothing runs on there.
  expect(walk.joined).toEqual([]);
  // Travelled the other way it meets the same notch from the other end.
  const back: Seam = { ...part, a: part.a.map(r => ({ ...r, reversed: true })), b: [run('yoke.bottom')] };
  expect(walkSeam({ ...pattern, seams: [back] }, back).stretches.map(s => s.aMm)).toEqual([120, 40]);
});

test('a part that reaches an end of its edge runs on there, and there alone', () => {
  const front = rectangle('front', 300, 400),
    yoke = rectangle('yoke', 100, 60);
  const joined = (from: number, to: number) => {
    const s: Seam = {
      name: 'yoke',
      a: [{ ...run('front.top'), part: { from, to } }],
      b: [run('yoke.top')],
      ease: { mm: 0 },
    };
    return walkSeam(patternOf([front, yoke], [s]), s).joined.map(line => line.first.edge);
  };
  expect(joined(0, 100)).toEqual(['left']);
  expect(joined(200, 300)).toEqual(['right']);
  expect(joined(100, 200)).toEqual([]);
  expect(joined(0, 300)).toEqual(['left', 'right']);
});

test('what is known of a seam is forgotten with the pieces it was known of', () => {
  const s = seam('side', ['front.right'], ['-back.left']);
  const back = rectangle('back', 80, 300);
  const walked = (front: Piece, other: Piece = back) => walkSeam(patternOf([front, other], seams), s);
  const seams = [s];
  expect(walked(rectangle('front', 100, 300)).differenceMm).toBe(0);
  expect(walked(rectangle('front', 100, 310)).differenceMm).toBe(10);
  expect(walked(rectangle('front', 100, 310), rectangle('back', 80, 305)).differenceMm).toBe(5);
  const pairs = (count: number) =>
    walked(rectangle('front', 100, 600), rectangle('back', 80, 300, cut(count)));
  expect(pairs(2)).toMatchObject({ counted: 'garment', differenceMm: 0 });
  expect(pairs(3)).toMatchObject({ counted: 'garment', differenceMm: -300 });
});

test('parts of one edge that follow each other are one line, what lies between them is bridged', () => {
  const parts = (to: number, from: number): Seam => ({
    name: 'waist',
    a: [
      { ...run('skirt.top'), part: { from: 0, to } },
      { ...run('skirt.top'), part: { from, to: 300 } },
    ],
    b: [run('-band.bottom')],
    ease: { mm: 0 },
  });
  const pattern = (s: Seam) => patternOf([rectangle('skirt', 300, 400), rectangle('band', 300, 60)], [s]);
  const whole = parts(120, 120),
    open = parts(100, 140);
  expect(walkSeam(pattern(whole), whole)).toMatchObject({ aMm: 300, matches: true });
  expect(walkSeam(pattern(open), open)).toMatchObject({ aMm: 260, differenceMm: -40 });
});

test('hems joined by a seam are one, whichever of the pieces it names first', () => {
  const panel = (name: string, width: number) =>
    pieceOf(name, [
      side('top', [
        [0, 0],
        [width, 0],
      ]),
      side('right', [
        [width, 0],
        [width, 600],
      ]),
      side(
        'hem',
        [
          [width, 600],
          [0, 600],
        ],
        { kind: 'hem' },
      ),
      side('left', [
        [0, 600],
        [0, 0],
      ]),
    ]);
  const panels = [panel('one', 200), panel('two', 300), panel('three', 400)];
  const swept = (...seams: readonly Seam[]) =>
    hemSweep(patternOf(panels, seams)).map(({ edges, sweepMm }) => [edges.map(e => e.piece).join(), sweepMm]);
  expect(swept()).toEqual([
    ['one', 200],
    ['two', 300],
    ['three', 400],
  ]);
  for (const joined of [
    seam('panels', ['one.right'], ['-two.left']),
    seam('panels', ['-two.left'], ['one.right']),
  ])
    expect(swept(joined)).toEqual([
      ['one,two', 500],
      ['three', 400],
    ]);
  const across = seam('rest', ['three.right'], ['-one.left']);
  expect(swept(seam('panels', ['two.right'], ['-three.left']), across)).toEqual([['one,two,three', 900]]);
});

test('a hem that is cut several times sweeps as often', () => {
  const gore = pieceOf(
    'gore',
    [
      side('top', [
        [50, 0],
        [150, 0],
      ]),
      side('right', [
        [150, 0],
        [200, 600],
      ]),
      side(
        'hem',
        [
          [200, 600],
          [0, 600],
        ],
        { kind: 'hem' },
      ),
      side('left', [
        [0, 600],
        [50, 0],
      ]),
    ],
    cut(8),
  );
  expect(hemSweep(patternOf([gore], [seam('panels', ['gore.right'], ['-gore.left'])]))).toEqual([
    { edges: [{ piece: 'gore', edge: 'hem' }], sweepMm: 1600 },
  ]);
});

test('a seam of pieces cut n times to one another does not depend on n', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 12 }), fc.boolean(), (count, mirrored) => {
      const pieces = ['a', 'b'].map((name, i) =>
        rectangle(name, 100 + i, 300, { cutting: { count, mirrored } }),
      );
      const pattern = patternOf(pieces, [seam('s', ['a.top'], ['b.top'])]);
      const walk = walkSeam(pattern, pattern.seams[0]!);
      expect(walk).toMatchObject({ counted: 'written', aMm: 100, bMm: 101 });
      expect(checkPattern(pattern).filter(f => f.code === 'seam-does-not-match')).toHaveLength(1);
    }),
  );
});
