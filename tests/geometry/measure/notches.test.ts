import { type Notch, type Pattern, walkSeam } from '@paperhinge/geometry';
import { expect, test } from 'vitest';
import { patternOf, rectangle, seam } from '../../support/polygon-piece.js';

type Marks = readonly (readonly [number, Notch['style']?, string?])[];

/** Two strips sewn along their right sides, each with its notches in mm from the top; ease in mm. */
function strips(a: number, aMarks: Marks, b: number, bMarks: Marks, ease = 0): Pattern {
  const strip = (name: string, height: number, marks: Marks) =>
    rectangle(name, 50, height, {
      notches: marks.map(([at, style = 'single', label]) => ({
        edge: 'right',
        at,
        style,
        ...(label ? { name: label } : {}),
      })),
    });
  return patternOf(
    [strip('a', a, aMarks), strip('b', b, bMarks)],
    [seam('s', ['a.right'], ['b.right'], { mm: ease })],
  );
}
const found = (pattern: Pattern) => {
  const codes = ['notches-do-not-meet', 'ease-the-wrong-way', 'notch-without-partner', 'notch-misses-seam'];
  return walkSeam(pattern, pattern.seams[0]!).findings.filter(f => codes.includes(f.code));
};

test('notches at the same distance meet', () => {
  expect(found(strips(300, [[100], [200, 'double']], 300, [[100.8], [199.2, 'double']]))).toEqual([]);
});

test('a notch that misses its partner is found once, with the millimetres to move it', () => {
  const [finding, ...others] = found(strips(300, [[100]], 300, [[97]]));
  expect(others).toEqual([]);
  expect(finding).toMatchObject({
    severity: 'warning',
    code: 'notches-do-not-meet',
    where: { piece: 'b', edge: 'right' },
  });
  expect(finding!.figures!.offMm).toBeCloseTo(3, 9);
  expect(finding!.remedy).toMatch(/^Move the notch of b.right by 3.0 mm away from the seam's beginning/);
});

test('notches that follow one that is off are not found again', () => {
  expect(found(strips(310, [[110], [210]], 300, [[100], [200]]))).toHaveLength(1);
});

test('ease may lie anywhere between the notches', () => {
  const easedAt = (bMark: number) =>
    found(strips(312, [[106], [212, 'double']], 300, [[bMark], [200, 'double']], 12));
  expect(easedAt(106)).toEqual([]);
  expect(easedAt(100)).toEqual([]);
  expect(easedAt(94)).toEqual([]);
  expect(easedAt(92)[0]).toMatchObject({ code: 'notches-do-not-meet' });
  expect(easedAt(108)[0]).toMatchObject({ code: 'notches-do-not-meet' });
});

test('ease that one stretch takes back from another is found', () => {
  const [finding] = found(strips(312, [[106], [206, 'double']], 300, [[96], [200, 'double']], 12));
  expect(finding).toMatchObject({ code: 'ease-the-wrong-way', severity: 'warning' });
  expect(finding!.figures!.easeMm).toBeCloseTo(-4, 9);
});

test('single meets single and double meets double, in order', () => {
  const walk = strips(300, [[50], [100, 'double'], [200]], 300, [[100, 'double'], [200]]);
  const { stretches, findings } = walkSeam(walk, walk.seams[0]!);
  expect(stretches.map(s => s.aMm)).toEqual([100, 100, 100]);
  expect(findings.map(f => f.code)).toEqual(['notch-without-partner']);
  expect(findings[0]).toMatchObject({
    severity: 'note',
    where: { piece: 'a', edge: 'right' },
    figures: { alongMm: 50 },
  });
});

test('the nearer of two pairings is taken', () => {
  const walk = strips(300, [[100], [200]], 300, [[199]]);
  expect(walkSeam(walk, walk.seams[0]!).stretches.map(s => Math.round(s.aMm))).toEqual([200, 100]);
});

test('the top of a cap belongs to the shoulder seam that crosses the armhole', () => {
  const capped = (top: number) =>
    patternOf(
      [
        rectangle('sleeve', 50, 412, { notches: [{ edge: 'right', at: top, style: 'single' }] }),
        rectangle('front', 50, 190),
        rectangle('back', 50, 210),
      ],
      [seam('s', ['sleeve.right'], ['front.right', 'back.right'], { mm: 12 })],
    );
  expect(found(capped(196))).toEqual([]);
  const [finding] = found(capped(206));
  expect(finding).toMatchObject({ code: 'notch-misses-seam', figures: { notchMm: 206, crossingMm: 190 } });
  expect(finding!.figures!.offMm).toBeCloseTo(4, 9);
});

test('the division marks of a band need no partner', () => {
  const band = rectangle('band', 50, 240, {
    notches: [{ edge: 'right', at: 60, style: 'single' }],
    madeFor: [{ piece: 'b', edge: 'right' }],
  });
  const pattern = patternOf(
    [band, rectangle('b', 50, 300)],
    [seam('s', ['band.right'], ['b.right'], { mm: -60 })],
  );
  expect(found(pattern)).toEqual([]);
});
