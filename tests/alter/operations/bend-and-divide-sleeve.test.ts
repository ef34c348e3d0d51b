import { trueEdges } from '@paperhinge/alter/edges';
import { adjust } from '@paperhinge/alter/fit';
import { removePiece } from '@paperhinge/alter/made';
import { setSeam } from '@paperhinge/alter/seams';
import { bendSleeve, divideSleeve } from '@paperhinge/alter/sleeves';
import {
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  validatePattern,
  walkSeam,
  walkSeams,
} from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { dartsOf, outlinePath } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';

const lengthOf = (pattern: Pattern, edge: string, piece = 'sleeve'): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));
const areaOf = (pattern: Pattern, piece: string): number =>
  signedArea(outlinePath(pieceNamed(pattern, piece).outline));
const seamOf = (pattern: Pattern, name: string) =>
  walkSeam(pattern, pattern.seams.find(s => s.name === name)!);
const elbow = (pattern: Pattern) => dartsOf(pieceNamed(pattern, 'sleeve')).find(d => d.name === 'elbow')!;

describe('a sleeve bent at the elbow', () => {
  // Closed form: opened by `by` there, it turns by
  // 2 asin(by / 2R), and the dart's legs are the hypotenuse of its depth and half its mouth.
  test('opens a dart of its width, and keeps every edge as long as it was', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 60 }), fc.integer({ min: 40, max: 120 }), (by, depth) => {
        const before = shiftPattern();
        const { pattern } = bendSleeve(before, { piece: 'sleeve', by, depth });
        validatePattern(pattern);
        const { legs, apex } = elbow(pattern);
        const [a, b] = [pathStart(legs[0]), pathEnd(legs[1])];
        expect(distance(a, b)).toBeCloseTo(by, 6);
        for (const end of [a, b]) expect(distance(end, apex)).toBeCloseTo(Math.hypot(depth, by / 2), 6);
        for (const edge of ['cap', 'hem', 'underarm-front', 'underarm-back'])
          expect(lengthOf(pattern, edge)).toBeCloseTo(lengthOf(before, edge), 6);
        expect(seamOf(pattern, 'underarm').matches).toBe(true);
      }),
      { numRuns: 20 },
    );
  });

  test('bends the lower part by the angle of the opening', () => {
    const before = shiftPattern();
    const hem = (of: Pattern) => {
      const path = edgePath(pieceNamed(of, 'sleeve'), 'hem');
      return Math.atan2(pathEnd(path).y - pathStart(path).y, pathEnd(path).x - pathStart(path).x);
    };
    const after = bendSleeve(before, { piece: 'sleeve', by: 30 }).pattern;
    const [outer, inner] = ['underarm-back', 'underarm-front'].map(edge => {
      const [start, end] = [pathStart, pathEnd].map(of => of(edgePath(pieceNamed(before, 'sleeve'), edge)));
      return { x: (start!.x + end!.x) / 2, y: (start!.y + end!.y) / 2 };
    });
    expect(Math.abs(hem(after) - hem(before))).toBeCloseTo(2 * Math.asin(15 / distance(outer!, inner!)), 6);
  });

  test('eased instead, the back of the elbow is longer by it', () => {
    const before = shiftPattern();
    const { pattern } = bendSleeve(before, { piece: 'sleeve', by: 12, into: 'ease' });
    expect(lengthOf(pattern, 'underarm-back') - lengthOf(before, 'underarm-back')).toBeCloseTo(12, 6);
    expect(seamOf(pattern, 'underarm').matches).toBe(true);
  });

  test('says what it did', () => {
    expect(toldDid(bendSleeve(shiftPattern(), { piece: 'sleeve', by: 25 }))).toBe(
      'The sleeve was bent forward by 4.5° at the elbow; the elbow dart of the sleeve takes in 25 mm and is 70 mm deep.',
    );
  });
});

const two = { piece: 'sleeve', name: 'under sleeve', front: 25, back: [75, 60] } as const;

describe('a sleeve divided into two', () => {
  // Property: two straight cuts and a straight seam laid shut: no cloth is gained or lost, each new seam is one line.
  test('has as much cloth as before, and seams that walk to equal lengths', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 12, max: 45 }),
        fc.integer({ min: 30, max: 90 }),
        fc.integer({ min: 25, max: 70 }),
        (front, atCap, atHem) => {
          const before = shiftPattern();
          const { pattern } = divideSleeve(before, { ...two, front, back: [atCap, atHem] });
          validatePattern(pattern);
          expect(areaOf(pattern, 'sleeve') + areaOf(pattern, 'under sleeve')).toBeCloseTo(
            areaOf(before, 'sleeve'),
            3,
          );
          for (const seam of ['fore-arm', 'hind-arm', 'armhole'])
            expect(seamOf(pattern, seam).matches).toBe(true);
          expect(Math.abs(seamOf(pattern, 'hind-arm').differenceMm)).toBeLessThan(1e-6);
          // Cap and hem are shared out, no more and no less.
          for (const [edge, taken] of [
            ['cap', front + atCap],
            ['hem', front + atHem],
          ] as const) {
            expect(lengthOf(pattern, edge, 'under sleeve')).toBeCloseTo(taken, 6);
            expect(lengthOf(pattern, edge) + taken).toBeCloseTo(lengthOf(before, edge), 6);
          }
        },
      ),
      { numRuns: 15 },
    );
  });

  test('marks fore-arm and hind-arm, one notch in front and two at the back, and loses no notch', () => {
    const done = divideSleeve(shiftPattern(), two);
    for (const piece of ['sleeve', 'under sleeve'])
      expect(
        pieceNamed(done.pattern, piece)
          .notches.filter(n => n.edge.endsWith('-arm'))
          .map(n => [n.edge, n.style]),
      ).toEqual([
        ['fore-arm', 'single'],
        ['hind-arm', 'double'],
      ]);
    expect(done.findings.map(f => f.code)).toEqual([]);
    expect(done.pattern.seams.map(s => s.name)).not.toContain('underarm');
    expect(toldDid(done)).toMatch(
      /^The sleeve was divided: it is the upper sleeve, and the under sleeve lies below it; the fore-arm seam is [\d.]+ mm long and the hind-arm seam [\d.]+ mm, on both\.$/,
    );
  });

  // Bent by one angle both hems turn alike; the wider upper sleeve opens further by the difference of the widths.
  test('bent, eases at the elbow what the upper sleeve opens further', () => {
    const straight = divideSleeve(shiftPattern(), two).pattern;
    const done = divideSleeve(shiftPattern(), { ...two, bend: 18 });
    validatePattern(done.pattern);
    expect(lengthOf(done.pattern, 'hind-arm') - lengthOf(straight, 'hind-arm')).toBeCloseTo(18, 6);
    expect(lengthOf(done.pattern, 'fore-arm')).toBeCloseTo(lengthOf(straight, 'fore-arm'), 6);
    const hind = seamOf(done.pattern, 'hind-arm');
    expect(hind.matches).toBe(true);
    expect(hind.differenceMm).toBeGreaterThan(5);
    expect(hind.differenceMm).toBeLessThan(18);
    expect(toldDid(done)).toContain('more to ease in at the elbow of the upper sleeve');
    expect(walkSeams(done.pattern).filter(walk => !walk.matches)).toEqual([]);
  });
});

describe('what is refused, and mended by its remedy', () => {
  const shift = shiftPattern();
  const refused = (work: () => unknown) => refusalOf(work);

  test('a sleeve that is sewn into nothing, or has no underarm seam', () => {
    const without = (...names: readonly string[]): Pattern => ({
      ...shift,
      seams: shift.seams.filter(s => !names.includes(s.name)),
    });
    expect(refused(() => bendSleeve(without('armhole'), { piece: 'sleeve', by: 20 }))).toMatchObject({
      code: 'cap-not-sewn',
      remedy: 'Give the armhole seam under "seams" at the top of the sheet.',
    });
    expect(refused(() => divideSleeve(without('underarm'), two))).toMatchObject({
      code: 'underarm-not-sewn',
      remedy: 'Give the underarm seam under "seams" at the top of the sheet.',
    });
    expect(refused(() => bendSleeve(shift, { piece: 'front', by: 20 }))).toMatchObject({ code: 'no-cap' });
  });

  test('a bend beyond what an elbow does, and a dart across the whole sleeve', () => {
    const { code, remedy } = refused(() => bendSleeve(shift, { piece: 'sleeve', by: 300 }));
    expect([code, remedy]).toEqual(['bend-too-far', 'Give at most 244.9 mm.']);
    validatePattern(bendSleeve(shift, { piece: 'sleeve', by: 244 }).pattern);
    expect(refused(() => divideSleeve(shift, { ...two, bend: 290 }))).toMatchObject({ code: 'bend-too-far' });
    const deep = refused(() => bendSleeve(shift, { piece: 'sleeve', by: 20, depth: 400 }));
    expect([deep.code, deep.remedy]).toEqual(['elbow-dart-too-deep', 'Make it less deep than 320 mm.']);
    validatePattern(bendSleeve(shift, { piece: 'sleeve', by: 20, depth: 300 }).pattern);
  });

  test('strips that leave nothing of the upper sleeve, and a name that is taken', () => {
    const wide = refused(() => divideSleeve(shift, { ...two, front: 130, back: 130 }));
    expect([wide.code, wide.remedy]).toEqual([
      'strips-too-wide',
      'Give front and back less than 256.9 mm together.',
    ]);
    validatePattern(divideSleeve(shift, { ...two, front: 60, back: 60 }).pattern);
    expect(refused(() => divideSleeve(shift, { ...two, name: 'neckband' }))).toMatchObject({
      code: 'piece-name-taken',
    });
    validatePattern(
      divideSleeve(removePiece(shift, { piece: 'neckband' }).pattern, { ...two, name: 'neckband' }).pattern,
    );
  });

  test('a sleeve that was bent does not lie flat along its underarm: divide it first', () => {
    const bent = bendSleeve(shift, { piece: 'sleeve', by: 30 }).pattern;
    expect(refused(() => divideSleeve(bent, two))).toMatchObject({ code: 'join-through-dart' });
  });
});

test('the bend in front can be trued', () => {
  const bent = bendSleeve(shiftPattern(), { piece: 'sleeve', by: 25 }).pattern;
  const edges = [{ piece: 'sleeve', edge: 'underarm-front' }];
  validatePattern(trueEdges(bent, { edges, within: 10 }).pattern);
});

test('a full arm can be bent and divided too', () => {
  const full = adjust(shiftPattern(), { for: 'full upper arm', by: 30 }).pattern;
  validatePattern(bendSleeve(full, { piece: 'sleeve', by: 25 }).pattern);
  validatePattern(divideSleeve(full, { ...two, bend: 15 }).pattern);
  validatePattern(setSeam(full, { seam: 'armhole', ease: { mm: 12 } }).pattern);
});
