import { changeDart } from '@paperhinge/alter/darts';
import { recutEdge } from '@paperhinge/alter/edges';
import { matchEdge, unfold } from '@paperhinge/alter/seams';
import { cutKimono, cutRaglan } from '@paperhinge/alter/sleeves';
import {
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  type Saying,
  validatePattern,
  walkSeams,
} from '@paperhinge/geometry';
import { endTangent, pathEnd, pathStart, startTangent } from '@paperhinge/geometry/paths';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';

const degrees = Math.PI / 180;
const wish = { seam: 'armhole', slope: 25 * degrees, drop: 50 } as const;
const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));
const way = (pattern: Pattern, piece: string, edge: string): number => {
  const path = edgePath(pieceNamed(pattern, piece), edge);
  const [a, b] = [pathStart(path), pathEnd(path)];
  return Math.atan2(b.y - a.y, b.x - a.x);
};

describe('a kimono from the shift', () => {
  // Property: bodies and hem are rigid; over and under the arm both halves are of one length; the slope is as asked.
  test('sews to equal lengths over and under the arm, and slopes as asked', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 20, max: 70 }), (slope, drop) => {
        const before = shiftPattern();
        const { pattern } = cutKimono(before, {
          seam: 'armhole',
          slope: slope * degrees,
          drop,
          curve: 0,
        });
        validatePattern(pattern);
        for (const walk of walkSeams(pattern)) expect(walk.matches, walk.seam).toBe(true);
        const [front, back] = (['front', 'back'] as const).map(piece => lengthOf(pattern, piece, 'underarm'));
        expect(front).toBeCloseTo(back!, 6);
        expect(way(pattern, 'front', 'overarm') - way(pattern, 'front', 'shoulder')).toBeCloseTo(
          slope * degrees,
          9,
        );
        // The hem of the sleeve is shared out, and the side is shorter by the drop, on both.
        expect(
          lengthOf(pattern, 'front', 'sleeve hem') + lengthOf(pattern, 'back', 'sleeve hem'),
        ).toBeCloseTo(lengthOf(before, 'sleeve', 'hem'), 6);
        expect(lengthOf(before, 'back', 'side') - lengthOf(pattern, 'back', 'side')).toBeCloseTo(drop, 6);
        for (const edge of ['neck', 'shoulder', 'hem', 'centre-front'])
          expect(lengthOf(pattern, 'front', edge)).toBeCloseTo(lengthOf(before, 'front', edge), 9);
      }),
      { numRuns: 25 },
    );
  });

  // Closed form: from the tip over the arm as far as the sleeve is long down its middle.
  test('is as long over the arm as the sleeve down its middle, and its pieces are front and back', () => {
    const before = shiftPattern();
    const done = cutKimono(before, wish);
    const cap = edgePath(pieceNamed(before, 'sleeve'), 'cap');
    const top = Math.min(...cap.segments.flatMap(segment => segment.map(({ y }) => y)));
    expect(Math.abs(lengthOf(done.pattern, 'front', 'overarm') - (565 - top))).toBeLessThan(1);
    expect(done.pattern.pieces.map(p => p.name)).toEqual(['front', 'back', 'neckband']);
    expect(done.pattern.seams.map(s => s.name)).toEqual(['shoulder', 'side', 'neck', 'overarm', 'underarm']);
    expect(done.findings).toEqual([]);
    expect(toldDid(done)).toMatch(
      /^The sleeve was laid half on the front, 25° below the shoulder, and half on the back, [\d.]+° below it; both underarm seams are [\d.]+ mm long, and curve into the side by a radius of [\d.]+ mm\.$/,
    );
  });

  test('a cuff sewn to the sleeve is sewn to both halves of its hem', () => {
    const before = shiftPattern();
    const cuffed: Pattern = {
      ...before,
      seams: [
        ...before.seams,
        {
          name: 'cuff',
          a: [{ piece: 'neckband', edge: 'upper', reversed: false }],
          b: [{ piece: 'sleeve', edge: 'hem', reversed: false }],
          ease: { mm: 0 },
        },
      ],
    };
    const { pattern } = cutKimono(cuffed, wish);
    const runs = pattern.seams.find(s => s.name === 'cuff')!.b;
    expect(runs.map(run => `${run.piece}.${run.edge}`)).toEqual(['front.sleeve hem', 'back.sleeve hem']);
  });
});

describe('the curve under the arm', () => {
  const turnAt = (pattern: Pattern, piece: string, side: string): number => {
    const [seam, below] = ['underarm', side].map(edge => edgePath(pieceNamed(pattern, piece), edge));
    const [a, b] =
      pathEnd(seam!).y === pathStart(below!).y
        ? [endTangent(seam!), startTangent(below!)]
        : [endTangent(below!), startTangent(seam!)];
    return Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
  };

  // Closed form: a curve of radius r about a corner that turns by θ saves 2 r tan(θ/2) − rθ of the way, half of it of
  // either seam; the back saves as much, so that both seams still walk. Within 8 %, as the side is not quite straight.
  test('has the radius asked in front, runs on from seam to seam, and leaves every seam walking', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 18 }), fc.integer({ min: 8, max: 18 }), (slope, curve) => {
        const asked = { ...wish, slope: slope * degrees, drop: 15 };
        const before = shiftPattern();
        const corner = cutKimono(before, { ...asked, curve: 0 }).pattern;
        const { pattern } = cutKimono(before, { ...asked, curve });
        validatePattern(pattern);
        for (const walk of walkSeams(pattern)) expect(walk.matches, walk.seam).toBe(true);
        for (const [piece, side] of [
          ['front', 'side-upper'],
          ['back', 'side'],
        ] as const) {
          expect(Math.abs(turnAt(pattern, piece, side))).toBeLessThan(1e-6);
          const lost = (edge: string) => lengthOf(corner, piece, edge) - lengthOf(pattern, piece, edge);
          const turn = Math.abs(turnAt(corner, 'front', 'side-upper'));
          const saved = curve * (2 * Math.tan(turn / 2) - turn);
          expect(Math.abs(lost('underarm') + lost(side) - saved)).toBeLessThan(0.08 * curve);
        }
        expect(lengthOf(pattern, 'front', 'underarm')).toBeCloseTo(lengthOf(pattern, 'back', 'underarm'), 4);
      }),
      { numRuns: 20 },
    );
  });

  test('left out, is as wide as the side leaves room for, and too wide a one is refused', () => {
    const refused = refusalOf(() => cutKimono(shiftPattern(), { ...wish, curve: 300 }));
    expect(refused.code).toBe('kimono-curve-too-wide');
    const [, least] = /Give "curve" (\d+) mm or less/.exec(refused.remedy)!;
    validatePattern(cutKimono(shiftPattern(), { ...wish, curve: Number(least) }).pattern);
    const usual = cutKimono(shiftPattern(), wish).pattern;
    expect(Math.abs(turnAt(usual, 'front', 'side-upper'))).toBeLessThan(1e-6);
    for (const walk of walkSeams(usual)) expect(walk.matches, walk.seam).toBe(true);
  });

  test('is not asked for beside a gusset', () => {
    expect(refusalOf(() => cutKimono(shiftPattern(), { ...wish, curve: 40, gusset: 80 }))).toMatchObject({
      code: 'kimono-curve-and-gusset',
      remedy: expect.stringContaining('Leave out'),
    });
  });
});

describe('a gusset', () => {
  const done = cutKimono(shiftPattern(), { ...wish, gusset: 90 });

  // The slash runs in 90 mm from the underarm; its stitching lines begin 6 mm from there on either side.
  test('has four sides as long as the slashes it is sewn into', () => {
    validatePattern(done.pattern);
    for (const walk of walkSeams(done.pattern)) expect(walk.matches, walk.seam).toBe(true);
    const names = done.pattern.seams.filter(s => s.name.startsWith('gusset')).map(s => s.name);
    expect(names).toEqual([
      'gusset sleeve front',
      'gusset side front',
      'gusset sleeve back',
      'gusset side back',
    ]);
    const without = cutKimono(shiftPattern(), { ...wish, curve: 0 }).pattern;
    expect(lengthOf(without, 'front', 'underarm') - lengthOf(done.pattern, 'front', 'underarm')).toBeCloseTo(
      6,
      6,
    );
    expect(lengthOf(without, 'back', 'side') - lengthOf(done.pattern, 'back', 'side')).toBeCloseTo(6, 6);
    for (const edge of ['gusset sleeve', 'gusset side']) {
      const long = lengthOf(done.pattern, 'front', edge);
      expect(long).toBeGreaterThan(90);
      expect(long).toBeLessThan(96);
    }
  });

  test('is cut as a pair, square at the end of the front slash', () => {
    const gusset = pieceNamed(done.pattern, 'gusset');
    expect(gusset.cutting).toMatchObject({ count: 2, mirrored: true });
    const turn = way(done.pattern, 'gusset', 'side front') - way(done.pattern, 'gusset', 'sleeve front');
    expect(Math.abs(Math.cos(turn))).toBeLessThan(1e-9);
  });

  test('and is spoken of', () => {
    expect(toldDid(done)).toContain('The gusset is sewn into both slashes.');
  });
});

describe('what is refused, and mended by its remedy', () => {
  const shift = shiftPattern();
  const refused = (pattern: Pattern, changes: Partial<Parameters<typeof cutKimono>[1]> = {}) =>
    refusalOf(() => cutKimono(pattern, { ...wish, ...changes }));

  test('an underarm further down than the side goes before its dart', () => {
    expect(refused(shift, { drop: 90 })).toMatchObject({
      code: 'kimono-off-side',
      remedy: 'Give "drop" less than 76 mm.',
    });
    validatePattern(cutKimono(shift, { ...wish, drop: 75 }).pattern);
    const eased = changeDart(shift, { piece: 'front', dart: 'bust', into: 'ease' }).pattern;
    validatePattern(cutKimono(eased, { ...wish, drop: 90 }).pattern);
  });

  test('a sleeve laid so steeply that it lies on the body', () => {
    expect(refused(shift, { slope: 75 * degrees })).toMatchObject({
      code: expect.stringMatching(/^kimono-(crosses|underarms-unlike)$/),
      remedy: expect.stringMatching(/^Give (less|another) slope\.$/),
    });
    validatePattern(cutKimono(shift, { ...wish, slope: 20 * degrees }).pattern);
  });

  test('a gusset with no depth', () => {
    expect(refused(shift, { gusset: 5 })).toMatchObject({
      code: 'gusset-too-shallow',
      remedy: 'Give the gusset 80 mm or so.',
    });
    validatePattern(cutKimono(shift, { ...wish, gusset: 80 }).pattern);
  });

  test('what a raglan refuses too', () => {
    expect(refused(shift, { seam: 'side' }).code).toBe('seam-without-cap');
    expect(refused(unfold(shift, { piece: 'front' }).pattern).code).toBe('sleeve-cut-unlike');
    expect(refused(cutRaglan(shift, { seam: 'armhole', front: 45, back: 30 }).pattern).code).toBe(
      'unknown-seam',
    );
    const longer = recutEdge(shift, { piece: 'back', edge: 'armhole', out: [8, 0] }).pattern;
    expect(refused(longer).code).toBe('shoulders-unlike');
    const alike = matchEdge(longer, { edge: { piece: 'front', edge: 'shoulder' }, at: 'start' }).pattern;
    validatePattern(cutKimono(alike, wish).pattern);
  });
});

test('the slopes are told as they are', () => {
  const { facts } = cutKimono(shiftPattern(), wish).did as Saying;
  expect((facts.slopesDeg as readonly number[])[0]).toBeCloseTo(25, 9);
});
