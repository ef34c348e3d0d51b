import { letOut, takeIn } from '@paperhinge/alter/edges';
import {
  at,
  definePattern,
  definePiece,
  edgePath,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  polyline,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import { nearestOnPath, pathEnd, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';

const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));

/** A half panel on the fold: 100 wide at the top, 100 + flare at the hem, 400 long. */
const panel = (name: string, flare: number, more: Partial<Parameters<typeof definePiece>[0]> = {}): Piece =>
  definePiece({
    name,
    outline: [
      { name: 'waist', path: polyline(at(0, 0), at(100, 0)) },
      { name: 'side', path: polyline(at(100, 0), at(100 + flare, 400)) },
      { name: 'hem', kind: 'hem', path: polyline(at(100 + flare, 400), at(0, 400)) },
      { name: 'centre', kind: 'fold', path: polyline(at(0, 400), at(0, 0)) },
    ],
    lines: [{ kind: 'level', name: 'hip', path: polyline(at(0, 200), at(100 + flare / 2, 200)) }],
    notches: [{ edge: 'side', at: 150, style: 'single' }],
    ...more,
  });

const run = (piece: string, edge: string, reversed = false) => ({ piece, edge, reversed });
const skirt = (flare: number): Pattern =>
  definePattern({
    name: 'skirt',
    pieces: [panel('front', flare), panel('back', flare)],
    seams: [{ name: 'side', a: [run('front', 'side')], b: [run('back', 'side')], ease: { mm: 0 } }],
  });

describe('what each edge gives', () => {
  // Published rule: 2 in over two side seams is 4 edges, 1/2 in each (check-values §7) [read].
  test('a side seam of front and back on the fold is four edges', () => {
    const done = takeIn(skirt(0), { seam: 'side', by: 50.8 });
    const { pattern, findings } = done;
    expect(lengthOf(pattern, 'front', 'hem')).toBeCloseTo(100 - 12.7, 9);
    expect(lengthOf(pattern, 'back', 'waist')).toBeCloseTo(100 - 12.7, 9);
    expect(lengthOf(pattern, 'front', 'side')).toBeCloseTo(400, 9);
    expect(toldDid(done)).toBe(
      'The side seam was taken in by 50.8 mm in the whole garment: 12.7 mm on each of 4 edges.',
    );
    expect(findings).toEqual([]);
  });

  test('pieces cut once count once, a seam with its own mirror image is one edge that stands twice', () => {
    const single = (name: string) =>
      panel(name, 0, {
        outline: [
          { name: 'waist', path: polyline(at(0, 0), at(100, 0)) },
          { name: 'side', path: polyline(at(100, 0), at(100, 400)) },
          { name: 'hem', path: polyline(at(100, 400), at(0, 400)) },
          { name: 'middle', path: polyline(at(0, 400), at(0, 0)) },
        ],
      });
    const once = definePattern({
      name: 'p',
      pieces: [single('l'), single('r')],
      seams: [{ name: 's', a: [run('l', 'side')], b: [run('r', 'side')], ease: { mm: 0 } }],
    });
    expect(lengthOf(takeIn(once, { seam: 's', by: 20 }).pattern, 'l', 'hem')).toBeCloseTo(90, 9);
    const pair = definePattern({
      name: 'p',
      pieces: [{ ...single('l'), cutting: { count: 2, mirrored: true, fabric: 'main' } }],
      seams: [{ name: 's', a: [run('l', 'middle')], b: [run('l', 'middle')], ease: { mm: 0 } }],
    });
    const narrowed = takeIn(pair, { seam: 's', by: 20 });
    expect(lengthOf(narrowed.pattern, 'l', 'hem')).toBeCloseTo(90, 9);
    expect(toldDid(narrowed)).toContain('10 mm on each of 2 edges');
  });

  test('letting out widens, and taking in the same again restores', () => {
    const wide = letOut(skirt(30), { seam: 'side', by: 40 }).pattern;
    expect(lengthOf(wide, 'front', 'hem')).toBeGreaterThan(139.9);
    const again = takeIn(wide, { seam: 'side', by: 40 }).pattern;
    for (const edge of ['hem', 'waist', 'side', 'centre'])
      expect(lengthOf(again, 'front', edge)).toBeCloseTo(lengthOf(skirt(30), 'front', edge), 9);
  });

  test('the moved edge is parallel to the old at the share, whatever the slope', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -60, max: 90, noNaN: true }),
        fc.double({ min: 1, max: 120, noNaN: true }),
        (flare, by) => {
          const before = skirt(flare);
          const { pattern } = takeIn(before, { seam: 'side', by });
          const old = edgePath(pieceNamed(before, 'front'), 'side');
          const side = edgePath(pieceNamed(pattern, 'front'), 'side');
          const middle = pointAlong(side, pathLength(side) / 2);
          expect(nearestOnPath(old, middle).distance).toBeCloseTo(by / 4, 7);
          expect(lengthOf(pattern, 'front', 'centre')).toBeCloseTo(400, 9);
          expect(walkSeam(pattern, pattern.seams[0]!).differenceMm).toBeCloseTo(0, 9);
          validatePattern(pattern);
        },
      ),
    );
  });
});

describe('tapering', () => {
  // Hand sum: the full 10 mm at the beginning, nothing at the end.
  test('from the beginning to the end a straight side stays straight, full at the waist', () => {
    const done = takeIn(skirt(0), { seam: 'side', by: 40, from: { share: 0 } });
    const side = edgePath(pieceNamed(done.pattern, 'front'), 'side');
    expect(side.segments).toHaveLength(1);
    expect(pathStart(side).x).toBeCloseTo(90, 9);
    expect(pathEnd(side)).toEqual(at(100, 400));
    expect(toldDid(done)).toBe(
      'The side seam was taken in by 40 mm in the whole garment at its beginning, 10 mm on each of 4 edges, tapering to nothing at its end.',
    );
  });

  // Hand sum: full 10 mm down to 100 mm, nothing at 400 mm, so 5 mm half way between.
  test('it is full up to the first place and half as much half way on', () => {
    const { pattern } = takeIn(skirt(0), { seam: 'side', by: 40, from: { mm: 100 } });
    const side = edgePath(pieceNamed(pattern, 'front'), 'side');
    for (const [x, y] of [
      [90, 0],
      [90, 60],
      [90, 100],
      [95, 250],
      [100, 400],
    ] as const)
      expect(nearestOnPath(side, at(x, y)).distance).toBeLessThan(1e-9);
    expect(lengthOf(pattern, 'front', 'hem')).toBe(100);
    expect(lengthOf(pattern, 'front', 'waist')).toBeCloseTo(90, 9);
  });

  test('beyond the second place nothing moves', () => {
    const { pattern } = takeIn(skirt(0), { seam: 'side', by: 40, from: { mm: 100 }, to: { mm: 300 } });
    const side = edgePath(pieceNamed(pattern, 'front'), 'side');
    for (const [x, y] of [
      [90, 100],
      [95, 200],
      [100, 300],
      [100, 350],
    ] as const)
      expect(nearestOnPath(side, at(x, y)).distance).toBeLessThan(1e-9);
  });

  test('from the hem towards the waist it is the other way about', () => {
    const places = { from: { mm: 100, from: 'hem' }, to: { mm: 100, from: 'waist' } };
    const done = letOut(skirt(0), { seam: 'side', by: 40, ...places });
    const side = edgePath(pieceNamed(done.pattern, 'front'), 'side');
    for (const [x, y] of [
      [100, 50],
      [100, 100],
      [105, 200],
      [110, 300],
      [110, 400],
    ] as const)
      expect(nearestOnPath(side, at(x, y)).distance).toBeLessThan(1e-9);
    expect(toldDid(done)).toBe(
      'The side seam was let out by 40 mm in the whole garment at 100 mm from the hem, 10 mm on each of 4 edges, tapering to nothing at 100 mm from the waist.',
    );
  });

  test('an amount at each end', () => {
    const done = takeIn(skirt(0), { seam: 'side', by: [8, 40] });
    const side = edgePath(pieceNamed(done.pattern, 'front'), 'side');
    expect(side.segments).toHaveLength(1);
    expect(lengthOf(done.pattern, 'front', 'waist')).toBeCloseTo(98, 9);
    expect(lengthOf(done.pattern, 'front', 'hem')).toBeCloseTo(90, 9);
    expect(toldDid(done)).toContain('by 8 mm in the whole garment at its beginning and by 40 mm at its end');
    const within = takeIn(skirt(0), { seam: 'side', by: [8, 40], from: { mm: 100 }, to: { mm: 300 } });
    const line = edgePath(pieceNamed(within.pattern, 'front'), 'side');
    for (const [x, y] of [
      [98, 50],
      [98, 100],
      [94, 200],
      [90, 300],
      [90, 390],
    ] as const)
      expect(nearestOnPath(line, at(x, y)).distance).toBeLessThan(1e-9);
  });

  test('with nothing at either end nothing moves', () => {
    const before = skirt(0);
    expect(takeIn(before, { seam: 'side', by: [0, 0] }).pattern.pieces).toEqual(before.pieces);
  });

  test('between two places it is full half way and touches the old line at either', () => {
    for (const between of [
      [{ share: 0.25 }, { share: 0.75 }],
      [{ share: 0.75 }, { share: 0.25 }],
    ] as const) {
      const { pattern } = takeIn(skirt(0), { seam: 'side', by: 40, between });
      const side = edgePath(pieceNamed(pattern, 'front'), 'side');
      expect(nearestOnPath(side, at(90, 200)).distance).toBeLessThan(0.01);
      expect(pointAlong(side, 50)).toEqual(at(100, 50));
      expect(lengthOf(pattern, 'front', 'hem')).toBe(100);
      validatePattern(pattern);
    }
  });

  test('places may be told from a neighbour, and the other side follows at the same share', () => {
    const { pattern } = takeIn(skirt(0), { seam: 'side', by: 40, to: { share: 0.5, from: 'hem' } });
    for (const piece of ['front', 'back']) {
      expect(lengthOf(pattern, piece, 'hem')).toBe(100);
      expect(lengthOf(pattern, piece, 'waist')).toBeCloseTo(90, 9);
    }
  });
});

test('on the shift both sides move alike and the dart between them closes as before', () => {
  const before = shiftPattern();
  const { pattern } = takeIn(before, { seam: 'side', by: 24 });
  validatePattern(pattern);
  const dart = pieceNamed(pattern, 'front').outline.parts.find(p => p.type === 'dart')!;
  if (dart.type !== 'dart') throw new Error('no dart');
  expect(pathLength(dart.legs[0])).toBeCloseTo(pathLength(dart.legs[1]), 6);
  expect(walkSeam(pattern, pattern.seams[1]!).matches).toBe(true);
  expect(lengthOf(pattern, 'front', 'neck')).toBe(lengthOf(before, 'front', 'neck'));
});

test('a shoulder seam that is taken in cuts neck and armhole', () => {
  const before = shiftPattern();
  const { pattern } = takeIn(before, { seam: 'shoulder', by: 12 });
  validatePattern(pattern);
  expect(lengthOf(pattern, 'front', 'neck')).toBeLessThan(lengthOf(before, 'front', 'neck'));
  expect(lengthOf(pattern, 'front', 'armhole')).toBeLessThan(lengthOf(before, 'front', 'armhole'));
});

/** A front in two: a hip piece that goes on behind the front below, and is sewn at the side down to 100 mm only. */
const pocketed = (): Pattern =>
  definePattern({
    name: 'skirt',
    pieces: [
      panel('hip', 0),
      definePiece({
        name: 'front',
        outline: [
          { name: 'top', path: polyline(at(0, 100), at(100, 100)) },
          { name: 'side', path: polyline(at(100, 100), at(100, 400)) },
          { name: 'hem', kind: 'hem', path: polyline(at(100, 400), at(0, 400)) },
          { name: 'centre', kind: 'fold', path: polyline(at(0, 400), at(0, 100)) },
        ],
      }),
      panel('back', 0),
    ],
    seams: [
      {
        name: 'side',
        a: [{ ...run('hip', 'side'), part: { from: 0, to: 100 } }, run('front', 'side')],
        b: [run('back', 'side')],
        ease: { mm: 0 },
      },
    ],
  });

test('an edge that is sewn in part moves whole, as its partner does at the same height', () => {
  // 40 mm over four edges: 10 mm at the waist, nothing 200 mm down and below; closed form 10 × (1 − y / 200).
  const { pattern } = takeIn(pocketed(), { seam: 'side', by: 40, to: { share: 0.5 } });
  const inset = (piece: string, y: number) =>
    100 -
    nearestOnPath(edgePath(pieceNamed(pattern, piece), 'side'), at(100 - 10 * Math.max(0, 1 - y / 200), y))
      .point.x;
  for (const y of [0, 50, 100, 150, 300])
    for (const piece of y < 100 ? ['hip', 'back'] : ['hip', 'front', 'back'])
      expect(inset(piece, y), `${piece} at ${y}`).toBeCloseTo(10 * Math.max(0, 1 - y / 200), 6);
});

test('a neighbour that runs straight on cannot be met: it is named, and what to do', () => {
  const parted = definePattern({
    name: 'skirt',
    pieces: [
      definePiece({
        name: 'front',
        outline: [
          { name: 'waist', path: polyline(at(0, 0), at(100, 0)) },
          { name: 'side', path: polyline(at(100, 0), at(100, 150)) },
          { name: 'side lower', path: polyline(at(100, 150), at(100, 400)) },
          { name: 'hem', path: polyline(at(100, 400), at(0, 400)) },
          { name: 'centre', kind: 'fold', path: polyline(at(0, 400), at(0, 0)) },
        ],
      }),
      panel('back', 0),
    ],
    seams: [{ name: 'side', a: [run('front', 'side')], b: [run('back', 'side')], ease: { mm: 0 } }],
  });
  expect(refusalOf(() => letOut(parted, { seam: 'side', by: 20 }))).toMatchObject({
    code: 'take-in-too-much',
    remedy:
      'Let the side lower of the front move along: make it one edge with the other, or list it in the seam, too.',
  });
});

test("notches keep their distance from the seam's beginning on both sides", () => {
  const { pattern } = takeIn(skirt(20), { seam: 'side', by: 30 });
  for (const piece of ['front', 'back'])
    expect(pieceNamed(pattern, piece).notches[0]!.at).toBeCloseTo(150, 9);
});

test.each([
  ['unknown-seam', { seam: 'sides', by: 10 }, 'side'],
  ['position-off-seam', { seam: 'side', by: 10, from: { mm: 900 } }, 'within the seam'],
  [
    'taper-without-length',
    { seam: 'side', by: 10, from: { mm: 100 }, to: { mm: 300, from: 'hem' } },
    'apart',
  ],
  [
    'taper-with-between',
    { seam: 'side', by: 10, from: { mm: 100 }, between: [{ share: 0 }, { share: 1 }] },
    'either',
  ],
  ['field-out-of-range', { seam: 'side', by: -10 }, '0 mm to'],
  ['seam-end-unknown', { seam: 'side', by: 10, from: { share: 0.1, from: 'centre' } }, 'from start'],
  ['take-in-too-much', { seam: 'side', by: 900 }, 'less'],
] as const)('%s is refused with a remedy', (code, parameters, remedy) => {
  expect(refusalOf(() => takeIn(skirt(0), parameters))).toMatchObject({
    code,
    remedy: expect.stringContaining(remedy),
  });
});
