import { draftBinding, draftStrip } from '@paperhinge/alter/made';
import {
  at,
  cuttingLine,
  definePattern,
  definePiece,
  edgeNamed,
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  polyline,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import { boundsOfPath, pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid, toldFinding } from '../../support/told.js';

const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));
const ref = (text: string) => ({ piece: text.split('.')[0]!, edge: text.split('.')[1]! });
const hem = [ref('front.hem'), ref('back.hem')];
const box = (pattern: Pattern, piece: string) => {
  const { min, max } = boundsOfPath(cuttingLine(pieceNamed(pattern, piece)).path);
  return [max.x - min.x, max.y - min.y];
};

test('a strip is as long as its edges in the garment, and two joins, at the width given', () => {
  const before = shiftPattern();
  const whole = 2 * (lengthOf(before, 'front', 'hem') + lengthOf(before, 'back', 'hem'));
  const done = draftStrip(before, {
    name: 'flounce',
    along: hem,
    width: 120,
    join: 10,
  });
  const { pattern, derived } = done;
  validatePattern(pattern);
  expect(derived![0]).toMatchObject({ kind: 'strip', widthMm: 120, figures: { joinMm: 10 } });
  expect(derived![0]!.lengthMm).toBeCloseTo(whole + 20, 9);
  expect(box(pattern, 'flounce')[0]).toBeCloseTo(whole + 20, 6);
  expect(box(pattern, 'flounce')[1]).toBeCloseTo(120, 6);
  expect(edgeNamed(pieceNamed(pattern, 'flounce'), 'sewn').allowance).toBe(15.875);
  expect(toldDid(done)).toContain('× 120 mm');
});

// Cut width 4 × finished (1/2 in → 2 in) [read, check-values §4].
test('a binding is cut four times its finished width, on the bias', () => {
  const before = shiftPattern();
  const done = draftBinding(before, {
    name: 'binding',
    along: hem,
    width: 12.7,
    join: 0,
  });
  const { pattern, derived } = done;
  expect(derived![0]!.widthMm).toBeCloseTo(50.8, 9);
  expect(derived![0]!.figures.finishedWidthMm).toBe(12.7);
  expect(box(pattern, 'binding')[1]).toBeCloseTo(50.8, 6);
  const grain = pieceNamed(pattern, 'binding').lines.find(l => l.kind === 'grain')!.path;
  const [a, b] = [pathStart(grain), pathEnd(grain)];
  expect(Math.abs((b.y - a.y) / (b.x - a.x))).toBeCloseTo(1, 9);
  expect(toldDid(done)).toContain('on the bias');
});

test('its seam with the edges walks, and it is joined with itself where they make a ring', () => {
  const { pattern } = draftStrip(shiftPattern(), {
    name: 'flounce',
    along: hem,
    width: 120,
    join: 10,
  });
  for (const name of ['flounce', 'flounce join'])
    expect(walkSeam(pattern, pattern.seams.find(s => s.name === name)!).matches).toBe(true);
});

test('a strip narrower than two allowances is stitched a quarter of its width in', () => {
  const { pattern } = draftStrip(shiftPattern(), {
    name: 's',
    along: hem,
    width: 30,
    join: 0,
  });
  expect(edgeNamed(pieceNamed(pattern, 's'), 'sewn').allowance).toBe(7.5);
  expect(box(pattern, 's')[1]).toBeCloseTo(30, 6);
});

test('edges in unlike stretches are drafted together, with a note', () => {
  const { pattern, findings, derived } = draftBinding(shiftPattern(), {
    name: 'edging',
    along: [ref('front.armhole'), ref('back.armhole'), ref('front.neck'), ref('back.neck')],
    width: 8,
    join: 7,
  });
  expect(findings).toEqual([expect.objectContaining({ code: 'several-stretches', severity: 'note' })]);
  expect(derived![0]!.lengthMm).toBeCloseTo(derived![0]!.edgeMm + 14, 9);
  expect(walkSeam(pattern, pattern.seams.at(-1)!).findings).toEqual([]);
});

test('two armholes get a pair, each as long as its own', () => {
  const before = shiftPattern();
  const { pattern, findings, derived } = draftBinding(before, {
    name: 'arms',
    along: [ref('front.armhole'), ref('back.armhole')],
    width: 8,
    join: 7,
  });
  const ring = lengthOf(before, 'front', 'armhole') + lengthOf(before, 'back', 'armhole');
  expect(derived![0]).toMatchObject({ count: 2, edgeMm: expect.closeTo(ring, 9) });
  expect(derived![0]!.lengthMm).toBeCloseTo(ring + 14, 9);
  expect(pieceNamed(pattern, 'arms').cutting).toMatchObject({ count: 2, mirrored: true });
  expect(findings.map(f => toldFinding(f).message)).toEqual([
    expect.stringMatching(/^There is one for the left and one for the right: the arms is cut twice/),
  ]);
  for (const seam of pattern.seams.slice(-2)) expect(walkSeam(pattern, seam).findings).toEqual([]);
});

describe('what cannot be drafted is refused', () => {
  test.each([
    ['field-out-of-range', { width: 0 }],
    ['field-out-of-range', { join: -2 }],
    ['field-not-usable', { along: [] }],
    ['unknown-edge', { along: [ref('front.hm')] }],
  ] as const)('%s %j', (code, change) => {
    const wanted = { name: 's', along: hem, width: 40, join: 0, ...change } as const;
    const { code: told, remedy } = refusalOf(() => draftStrip(shiftPattern(), wanted));
    expect([told, remedy !== '']).toEqual([code, true]);
  });
});

// Quilting references, check-values §4 [read]: 100 × 3½ in from a square of 18.71 in, 250 × 2 in from 22.36 in.
test.each([
  [100, 3.5, 18.71],
  [250, 2, 22.36],
])('a bias strip of %d by %d in needs a square of %d in', (lengthIn, widthIn, squareIn) => {
  const piece = definePiece({
    name: 'front',
    outline: [
      { name: 'edge', path: polyline(at(0, 0), at(lengthIn * 25.4, 0)) },
      { name: 'side', path: polyline(at(lengthIn * 25.4, 0), at(0, 300), at(0, 0)) },
    ],
  });
  const pattern = definePattern({ name: 'test', pieces: [piece] });
  const along = [{ piece: 'front', edge: 'edge' }];
  const { derived } = draftBinding(pattern, { name: 'binding', along, width: (widthIn * 25.4) / 4 });
  expect((derived![0]!.figures.squareMm ?? 0) / 25.4).toBeCloseTo(squareIn, 2);
});
