import { recutNeckline } from '@paperhinge/alter/edges';
import { draftFacing, draftStay, draftStrip } from '@paperhinge/alter/made';
import { unfold } from '@paperhinge/alter/seams';
import {
  at,
  cuttingLine,
  definePattern,
  definePiece,
  edgeNamed,
  edgeNames,
  edgePath,
  type Pattern,
  type Piece,
  pathLength,
  pathOf,
  pieceNamed,
  polyline,
  validatePattern,
  walkSeam,
  walkSeams,
} from '@paperhinge/geometry';
import { boundsOfPath, nearestOnPath, pathEnd, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import { edgeParts, foldEdgeOf, outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';

const ref = (text: string) => ({ piece: text.split('.')[0]!, edge: text.split('.')[1]! });
const areaOf = (piece: Piece): number => signedArea(outlinePath(piece.outline));
const lengthOf = (piece: Piece, edge: string): number => pathLength(edgePath(piece, edge));

/** A half box on the fold: square neck 100 deep and 60 out, shoulder level. */
const box = (more: Partial<Parameters<typeof definePiece>[0]> = {}): Piece =>
  definePiece({
    name: 'front',
    outline: [
      { name: 'neck', allowance: 6, path: polyline(at(0, 100), at(60, 100), at(60, 0)) },
      { name: 'shoulder', allowance: 10, path: polyline(at(60, 0), at(200, 0)) },
      { name: 'side', path: polyline(at(200, 0), at(200, 500)) },
      { name: 'hem', kind: 'hem', path: polyline(at(200, 500), at(0, 500)) },
      { name: 'centre-front', kind: 'fold', path: polyline(at(0, 500), at(0, 100)) },
    ],
    lines: [{ kind: 'grain', name: 'grain', path: polyline(at(100, 400), at(100, 200)) }],
    notches: [{ edge: 'neck', at: 80, style: 'single' }],
    ...more,
  });
const patternOf = (...pieces: Piece[]): Pattern => definePattern({ name: 'test', pieces });
const facing = {
  name: 'neck facing',
  along: [ref('front.neck')],
  width: 50,
  join: 0,
} as const;

describe('a facing', () => {
  // Hand sum: 50 wide round an inner corner: 60 × 50 below the neck, 50 × 100 beside it, 50 × 50 in the corner.
  test('follows its edge at the width, mitred at the corner, on the fold and on the shoulder', () => {
    const { pattern, derived } = draftFacing(patternOf(box()), facing);
    validatePattern(pattern);
    const piece = pieceNamed(pattern, 'neck facing');
    expect(areaOf(piece)).toBeCloseTo(60 * 50 + 50 * 100 + 50 * 50, 6);
    expect(edgeNames(piece)).toEqual(['neck', 'shoulder', 'inner', 'centre-front']);
    expect(lengthOf(piece, 'inner')).toBeCloseTo(110 + 150, 6);
    expect(lengthOf(piece, 'shoulder')).toBeCloseTo(50, 9);
    expect(foldEdgeOf(piece)?.name).toBe('centre-front');
    expect(derived![0]).toMatchObject({ kind: 'facing', lengthMm: 160, edgeMm: 320, widthMm: 50 });
  });

  test('keeps the allowances of its source, its notches, and a grain line in the same direction', () => {
    const piece = pieceNamed(draftFacing(patternOf(box()), facing).pattern, 'neck facing');
    expect(edgeParts(piece).map(e => [e.name, e.kind, e.allowance])).toEqual([
      ['neck', 'seam', 6],
      ['shoulder', 'seam', 10],
      ['inner', 'raw', 0],
      ['centre-front', 'fold', 0],
    ]);
    expect(piece.notches).toEqual([{ edge: 'neck', at: 80, style: 'single' }]);
    const grain = piece.lines.find(l => l.kind === 'grain')!.path;
    expect(pathStart(grain).x).toBeCloseTo(pointAlong(grain, pathLength(grain)).x, 9);
    expect(cuttingLine(piece).findings).toEqual([]);
  });

  test('is sewn to its edge by a seam that walks', () => {
    const { pattern } = draftFacing(patternOf(box()), facing);
    expect(walkSeam(pattern, pattern.seams[0]!)).toMatchObject({ seam: 'neck facing', matches: true });
  });

  test('on the shift lies everywhere at its width, for front and back one each', () => {
    const before = shiftPattern();
    const done = draftFacing(before, {
      ...facing,
      along: [ref('front.neck'), ref('back.neck')],
      width: 60,
    });
    const { pattern, derived } = done;
    validatePattern(pattern);
    expect(derived!.map(d => d.name)).toEqual(['neck facing front', 'neck facing back']);
    for (const source of ['front', 'back']) {
      const made = pieceNamed(pattern, `neck facing ${source}`);
      const inner = edgePath(made, 'inner'),
        neck = edgePath(made, 'neck');
      expect(pathLength(neck)).toBeCloseTo(pathLength(edgePath(pieceNamed(before, source), 'neck')), 9);
      for (const share of [0.1, 0.3, 0.5, 0.7, 0.9]) {
        const gap = nearestOnPath(neck, pointAlong(inner, share * pathLength(inner))).distance;
        expect(Math.abs(gap - 60)).toBeLessThan(0.01);
      }
    }
    expect(toldDid(done)).toContain('neck facing back');
    expect(walkSeams(pattern).flatMap(w => w.findings)).toEqual([]);
  });

  test('lies clear of its source in the drawing', () => {
    const { pattern } = draftFacing(shiftPattern(), { ...facing, along: [ref('front.neck')] });
    const boxOf = (name: string) => boundsOfPath(outlinePath(pieceNamed(pattern, name).outline));
    const lowest = Math.max(...['front', 'back', 'sleeve', 'neckband'].map(name => boxOf(name).max.y));
    expect(boxOf('neck facing').min.y).toBeGreaterThan(lowest);
  });

  test('crosses from one edge to the next with a mitre', () => {
    const cut = recutNeckline(shiftPattern(), {
      piece: 'front',
      shape: 'inset V',
      depth: 85,
      halfWidth: 45,
    }).pattern;
    const { pattern } = draftFacing(cut, { ...facing, along: [ref('front.neck'), ref('front.inset')] });
    const piece = pieceNamed(pattern, 'neck facing');
    validatePattern(pattern);
    expect(edgeNames(piece)).toEqual(['inset', 'neck', 'shoulder', 'inner', 'centre-front']);
    expect(walkSeam(pattern, pattern.seams.at(-1)!)).toMatchObject({ matches: true, findings: [] });
  });

  // Hand sum, width 30 about the box's square neck and level shoulder: 90 × 30 below the neck, 30 × 40 beside it up to
  // the shoulder's own strip, 140 × 30 under the shoulder, 30 × 30 in the mitre of the inner corner.
  test('is the same round an inner and an outer corner, whichever comes first', () => {
    const flipped = definePiece({
      name: 'front',
      outline: [
        { name: 'shoulder', path: polyline(at(-200, 0), at(-60, 0)) },
        { name: 'neck', path: polyline(at(-60, 0), at(-60, 100), at(0, 100)) },
        { name: 'centre-front', kind: 'fold', path: polyline(at(0, 100), at(0, 500)) },
        { name: 'hem', kind: 'hem', path: polyline(at(0, 500), at(-200, 500)) },
        { name: 'side', path: polyline(at(-200, 500), at(-200, 0)) },
      ],
      lines: [{ kind: 'grain', name: 'grain', path: polyline(at(-100, 400), at(-100, 200)) }],
    });
    const along = [ref('front.neck'), ref('front.shoulder')];
    for (const piece of [box(), flipped]) {
      const { pattern } = draftFacing(patternOf(piece), { ...facing, along, width: 30 });
      validatePattern(pattern);
      expect(areaOf(pieceNamed(pattern, 'neck facing'))).toBeCloseTo(90 * 30 + 70 * 30 + 140 * 30, 6);
    }
  });

  // The parallel of a side 60 long loses 50 at the outer corner: 10 are left, and the facing is still exact.
  test('keeps the little that a corner leaves of a short side', () => {
    const along = [ref('front.neck'), ref('front.shoulder')];
    const short = box({
      outline: [
        { name: 'neck', path: polyline(at(0, 60), at(60, 60), at(60, 0)) },
        { name: 'shoulder', path: polyline(at(60, 0), at(200, 0)) },
        { name: 'side', path: polyline(at(200, 0), at(200, 500)) },
        { name: 'hem', kind: 'hem', path: polyline(at(200, 500), at(0, 500)) },
        { name: 'centre-front', kind: 'fold', path: polyline(at(0, 500), at(0, 60)) },
      ],
      notches: [],
    });
    const { pattern } = draftFacing(patternOf(short), { ...facing, along, width: 50 });
    validatePattern(pattern);
    expect(areaOf(pieceNamed(pattern, 'neck facing'))).toBeCloseTo(110 * 50 + 60 * 50 + 90 * 50, 6);
  });

  test('of a mirrored pair is a mirrored pair', () => {
    const pair = box({
      outline: [
        { name: 'neck', path: polyline(at(0, 100), at(60, 0)) },
        { name: 'shoulder', path: polyline(at(60, 0), at(200, 0)) },
        { name: 'side', path: polyline(at(200, 0), at(200, 500)) },
        { name: 'hem', path: polyline(at(200, 500), at(0, 500)) },
        { name: 'front-edge', path: polyline(at(0, 500), at(0, 100)) },
      ],
      cutting: { count: 2 },
    });
    const { pattern } = draftFacing(patternOf(pair), { ...facing, fabric: 'lining' });
    expect(pieceNamed(pattern, 'neck facing').cutting).toEqual({
      count: 2,
      mirrored: true,
      fabric: 'lining',
    });
  });
});

describe('a stay', () => {
  const stay = { name: 'inset stay', along: [ref('front.inset')], width: 18, join: 0 } as const;
  const cut = () =>
    recutNeckline(shiftPattern(), { piece: 'front', shape: 'inset V', depth: 85, halfWidth: 45 }).pattern;

  test('is whole, without allowance, and twice as long as the half edge on the fold', () => {
    const before = cut();
    const { pattern, derived } = draftStay(before, stay);
    validatePattern(pattern);
    const piece = pieceNamed(pattern, 'inset stay');
    const half = lengthOf(pieceNamed(before, 'front'), 'inset');
    expect(derived![0]!.lengthMm).toBeCloseTo(2 * half, 9);
    expect(edgeParts(piece).every(e => e.allowance === 0 && e.kind === 'raw')).toBe(true);
    expect(foldEdgeOf(piece)).toBeUndefined();
    expect(piece.cutting.count).toBe(1);
    expect(pattern.seams).toEqual(before.seams);
  });

  test('of a whole piece is the same as that of the half on the fold', () => {
    const whole = recutNeckline(unfold(shiftPattern(), { piece: 'front' }).pattern, {
      piece: 'front',
      shape: 'inset V',
      depth: 85,
      halfWidth: 45,
    }).pattern;
    const [one, other] = [cut(), whole].map(p => pieceNamed(draftStay(p, stay).pattern, 'inset stay'));
    expect(areaOf(other!)).toBeCloseTo(areaOf(one!), 4);
    expect(lengthOf(other!, 'inner')).toBeCloseTo(lengthOf(one!, 'inner'), 4);
  });

  // Hand sum: a V of 3-4-5 sides, 60 out and 80 up; the inner line's point lies 18 / sin(half angle) = 18 / 0.6 lower.
  test('has its mitre on the bisector of the V', () => {
    const v = box({
      outline: [
        { name: 'neck', path: polyline(at(0, 80), at(60, 0)) },
        { name: 'shoulder', path: polyline(at(60, 0), at(200, 0)) },
        { name: 'side', path: polyline(at(200, 0), at(200, 500)) },
        { name: 'hem', path: polyline(at(200, 500), at(0, 500)) },
        { name: 'centre-front', kind: 'fold', path: polyline(at(0, 500), at(0, 80)) },
      ],
      notches: [],
    });
    const { pattern } = draftStay(patternOf(v), { ...stay, along: [ref('front.neck')] });
    const inner = edgePath(pieceNamed(pattern, 'inset stay'), 'inner');
    const point = pointAlong(inner, pathLength(inner) / 2);
    const tip = pathEnd(pathOf(edgePath(pieceNamed(pattern, 'inset stay'), 'outer').segments[0]!));
    expect(point.x).toBeCloseTo(tip.x, 9);
    expect(point.y).toBeCloseTo(tip.y + 18 / 0.6, 9);
    expect(edgeNamed(pieceNamed(pattern, 'inset stay'), 'outer').path.segments).toHaveLength(2);
  });
});

// Hand sum: 30 wide along a hem 200 long with a corner rounded to 20: inside, the two straight parallels meet square.
test('a bend tighter than the width is faced too, its inner line cut to a corner, and said so', () => {
  const k = 20 * 0.5523;
  const rounded = box({
    outline: [
      { name: 'neck', path: polyline(at(0, 100), at(60, 100), at(60, 0)) },
      { name: 'shoulder', path: polyline(at(60, 0), at(200, 0)) },
      { name: 'side', path: polyline(at(200, 0), at(200, 300)) },
      {
        name: 'hem',
        path: {
          segments: [
            [at(200, 300), at(200, 480)],
            [at(200, 480), at(200, 480 + k), at(180 + k, 500), at(180, 500)],
            [at(180, 500), at(0, 500)],
          ],
        },
      },
      { name: 'centre-front', kind: 'fold', path: polyline(at(0, 500), at(0, 100)) },
    ],
    notches: [],
  });
  const { pattern, findings } = draftFacing(patternOf(rounded), {
    ...facing,
    name: 'hem facing',
    along: [ref('front.hem')],
    width: 30,
  });
  expect(findings.map(f => f.code)).toContain('inner-line-trimmed');
  const piece = pieceNamed(pattern, 'hem facing');
  validatePattern(pattern);
  expect(lengthOf(piece, 'inner')).toBeCloseTo(170 + 170, 2);
  const corner = areaOf(piece);
  // 30 × 200 and 30 × 170, less what the round takes off the corner: (1 − π / 4) 20².
  expect(Math.abs(corner - (6000 + 5100 - (1 - Math.PI / 4) * 400))).toBeLessThan(0.5);
});

describe('what cannot be drafted is refused', () => {
  test.each([
    ['field-out-of-range', { width: 0 }],
    ['field-not-usable', { along: [] }],
    ['facing-too-wide', { width: 400 }],
    ['edges-not-in-one-run', { along: [ref('front.neck'), ref('front.hem')] }],
    ['unknown-edge', { along: [ref('front.nek')] }],
    ['unknown-piece', { along: [ref('yoke.neck')] }],
  ] as const)('%s %j', (code, change) => {
    const { code: told, remedy } = refusalOf(() => draftFacing(patternOf(box()), { ...facing, ...change }));
    expect([told, remedy !== '']).toEqual([code, true]);
  });

  // Found by random sequences: the end of a strip 0.05 mm wide is too short for any line beside it.
  test('a stay along an edge that is next to nothing', () => {
    const along = [ref('front.neck')];
    const thread = draftStrip(patternOf(box()), { name: 'thread', along, width: 0.05, join: 5 }).pattern;
    expect(
      refusalOf(() => draftStay(thread, { name: 'stay', along: [ref('thread.join-end')], width: 5 })).code,
    ).toBe('facing-too-wide');
  });
});
