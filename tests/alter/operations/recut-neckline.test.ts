import { recutNeckline } from '@paperhinge/alter/edges';
import {
  at,
  definePattern,
  definePiece,
  edgeNamed,
  edgeNames,
  edgePath,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pathOf,
  pieceNamed,
  polyline,
  readPattern,
  validatePattern,
  walkSeam,
  writePattern,
} from '@paperhinge/geometry';
import {
  nearestOnPath,
  pathEnd,
  pathStart,
  pointAlong,
  reversedPath,
  transformedPath,
} from '@paperhinge/geometry/paths';
import { outlinePath, partsOfEdge } from '@paperhinge/geometry/pattern';
import { distance, mirror } from '@paperhinge/geometry/plane';
import { signedArea } from '@paperhinge/geometry/regions';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf as refusal, toldDid, toldFinding } from '../../support/told.js';

/**
 * A half front on the fold: neck from (0, 100) to the neck point (80, 0), shoulder falling 30 over 100 mm, straight
 * armhole and side, hem at 600.
 */
const half = (more: Partial<Parameters<typeof definePiece>[0]> = {}): Piece =>
  definePiece({
    name: 'front',
    outline: [
      {
        name: 'neck',
        allowance: 10,
        path: pathOf([at(0, 100), at(44, 100), at(80, 55), at(80, 0)] as const),
      },
      { name: 'shoulder', allowance: 15, path: polyline(at(80, 0), at(180, 30)) },
      { name: 'armhole', path: polyline(at(180, 30), at(220, 230)) },
      { name: 'side', path: polyline(at(220, 230), at(220, 600)) },
      { name: 'hem', kind: 'hem', path: polyline(at(220, 600), at(0, 600)) },
      { name: 'centre-front', kind: 'fold', path: polyline(at(0, 600), at(0, 100)) },
    ],
    lines: [{ kind: 'grain', name: 'grain', path: polyline(at(60, 500), at(60, 300)) }],
    notches: [
      { edge: 'neck', at: 20, style: 'single', name: 'low' },
      { edge: 'neck', at: 130, style: 'single', name: 'high' },
      { edge: 'shoulder', at: 10, style: 'single', name: 'near neck' },
      { edge: 'shoulder', at: 90, style: 'single', name: 'near armhole' },
      { edge: 'centre-front', at: 300, style: 'single', name: 'centre' },
    ],
    ...more,
  });

/** The same piece mirrored, so that its outline runs from the shoulder to the centre. */
function mirrored(piece: Piece): Piece {
  const map = mirror(at(0, 0), at(0, 1));
  return {
    ...piece,
    outline: {
      parts: [...piece.outline.parts]
        .reverse()
        .map(p => (p.type === 'edge' ? { ...p, path: reversedPath(transformedPath(p.path, map)) } : p)),
    },
    lines: piece.lines.map(l => ({ ...l, path: transformedPath(l.path, map) })),
    notches: piece.notches.map(n => ({ ...n, at: pathLength(edgePath(piece, n.edge)) - n.at })),
  };
}

/** The whole front: both halves about x = 0, the neck in one edge. */
const whole = (): Piece => {
  const piece = half();
  const path = (name: string) => edgePath(piece, name);
  const map = mirror(at(0, 0), at(0, 1));
  const image = (name: string) => reversedPath(transformedPath(path(name), map));
  return definePiece({
    name: 'front',
    outline: [
      {
        name: 'neck',
        allowance: 10,
        path: { segments: [...image('neck').segments, ...path('neck').segments] },
      },
      { name: 'shoulder', path: path('shoulder') },
      { name: 'armhole', path: path('armhole') },
      { name: 'side', path: path('side') },
      { name: 'hem', kind: 'hem', path: polyline(at(220, 600), at(-220, 600)) },
      { name: 'side-left', path: image('side') },
      { name: 'armhole-left', path: image('armhole') },
      { name: 'shoulder-left', path: image('shoulder') },
    ],
    lines: [{ kind: 'grain', name: 'grain', path: polyline(at(60, 500), at(60, 300)) }],
    notches: [
      { edge: 'neck', at: 30, style: 'single', name: 'left' },
      { edge: 'neck', at: pathLength(path('neck')) * 2 - 30, style: 'single', name: 'right' },
    ],
  });
};

const patternOf = (...pieces: Piece[]): Pattern => definePattern({ name: 'test', pieces });
const front = (pattern: Pattern): Piece => pieceNamed(pattern, 'front');
const lengthOf = (pattern: Pattern, edge: string): number => pathLength(edgePath(front(pattern), edge));
const near = (a: Point, b: Point): void => expect(distance(a, b)).toBeLessThan(1e-9);

describe('inset V', () => {
  const cut = { piece: 'front', shape: 'inset V', depth: 85, halfWidth: 45 } as const;

  test('a straight line from the new centre point to the present neck at the half width', () => {
    const before = patternOf(half());
    const done = recutNeckline(before, cut);
    const { pattern } = done;
    const inset = edgePath(front(pattern), 'inset');
    near(pathStart(inset), at(0, 185));
    expect(pathEnd(inset).x).toBeCloseTo(45, 9);
    expect(nearestOnPath(edgePath(front(before), 'neck'), pathEnd(inset)).distance).toBeLessThan(1e-9);
    near(pathStart(edgePath(front(pattern), 'neck')), pathEnd(inset));
    expect(lengthOf(pattern, 'inset')).toBeCloseTo(Math.hypot(45, 185 - pathEnd(inset).y), 9);
    expect(lengthOf(pattern, 'centre-front')).toBeCloseTo(500 - 85, 9);
    expect(lengthOf(pattern, 'shoulder')).toBe(lengthOf(before, 'shoulder'));
    expect(toldDid(done)).toBe('The front has a new neckline, an inset V 85 mm deep and 45 mm to each side.');
    validatePattern(pattern);
  });

  test('the inset has the kind and the allowance of the neck it was cut from', () => {
    const { pattern } = recutNeckline(patternOf(half()), cut);
    expect(edgeNamed(front(pattern), 'inset')).toMatchObject({ kind: 'seam', allowance: 10 });
  });

  test('notches on what is left keep their distance from the shoulder, the others are findings', () => {
    const before = patternOf(half());
    const { pattern, findings } = recutNeckline(before, cut);
    const high = front(pattern).notches.find(n => n.name === 'high')!;
    expect(lengthOf(pattern, 'neck') - high.at).toBeCloseTo(lengthOf(before, 'neck') - 130, 9);
    expect(findings.map(f => [f.code, f.where.edge])).toEqual([['notch-cut-away', 'neck']]);
  });

  test('a piece drawn the other way round comes out as its mirror image', () => {
    const one = recutNeckline(patternOf(half()), cut).pattern;
    const other = recutNeckline(patternOf(mirrored(half())), cut).pattern;
    validatePattern(other);
    for (const edge of edgeNames(front(one)))
      expect(lengthOf(other, edge)).toBeCloseTo(lengthOf(one, edge), 9);
    const area = (p: Pattern) => signedArea(outlinePath(front(p).outline));
    expect(area(other)).toBeCloseTo(area(one), 6);
    const places = (p: Pattern) => front(p).notches.map(n => pointAlong(edgePath(front(p), n.edge), n.at));
    for (const [i, p] of places(one).entries())
      expect(distance(p, { ...places(other)[i]!, x: -places(other)[i]!.x })).toBeLessThan(1e-6);
  });

  test('a whole piece gets one inset with its corner in the middle, and the neck stays one edge beside it', () => {
    const before = patternOf(whole());
    const { pattern, findings } = recutNeckline(before, cut);
    const halved = recutNeckline(patternOf(half()), cut).pattern;
    expect(findings).toEqual([]);
    expect(lengthOf(pattern, 'inset')).toBeCloseTo(2 * lengthOf(halved, 'inset'), 9);
    expect(lengthOf(pattern, 'neck')).toBeCloseTo(2 * lengthOf(halved, 'neck'), 9);
    expect(partsOfEdge(front(pattern), 'neck')).toHaveLength(2);
    const inset = edgePath(front(pattern), 'inset');
    near(pointAlong(inset, pathLength(inset) / 2), at(0, 185));
    expect(front(pattern).notches.map(n => n.name)).toEqual(['left', 'right']);
    expect(front(pattern).notches[0]!.at).toBeCloseTo(30, 9);
    expect(lengthOf(pattern, 'neck') - front(pattern).notches[1]!.at).toBeCloseTo(30, 9);
    const again = readPattern(writePattern(pattern)).pattern;
    expect(lengthOf(again, 'neck')).toBeCloseTo(lengthOf(pattern, 'neck'), 6);
  });

  test.each([
    ['neckline-too-deep', { ...cut, depth: 600 }],
    ['half-width-off-neck', { ...cut, halfWidth: 95 }],
    ['field-missing', { piece: 'front', shape: 'inset V', depth: 85 }],
    ['field-missing', { piece: 'front', shape: 'V' }],
    ['field-out-of-range', { ...cut, depth: -5 }],
  ] as const)('%s is refused', (code, parameters) => {
    expect(refusal(() => recutNeckline(patternOf(half()), parameters)).code).toBe(code);
    expect(refusal(() => recutNeckline(patternOf(whole()), parameters)).code).toBe(code);
  });

  test('a second inset is refused', () => {
    const once = recutNeckline(patternOf(whole()), { ...cut }).pattern;
    expect(refusal(() => recutNeckline(once, cut)).remedy).toContain('once');
    const halved = recutNeckline(patternOf(half()), cut).pattern;
    expect(refusal(() => recutNeckline(halved, cut)).code).toBe('neck-not-at-centre');
  });
});

describe('a new neck', () => {
  test('a V runs straight from the centre to the present neck end', () => {
    const { pattern, findings } = recutNeckline(patternOf(half()), { piece: 'front', shape: 'V', depth: 60 });
    expect(lengthOf(pattern, 'neck')).toBeCloseTo(Math.hypot(80, 160), 9);
    expect(lengthOf(pattern, 'shoulder')).toBeCloseTo(Math.hypot(100, 30), 9);
    expect(findings.map(f => f.code)).toEqual(['notch-cut-away', 'notch-cut-away']);
    expect(edgeNamed(front(pattern), 'neck').allowance).toBe(10);
  });

  // Hand sum: at 100 mm out the shoulder, 30 in 100, has fallen 6 mm and lost a fifth of its length.
  test('a half width cuts the shoulder there, and its partner is named', () => {
    const back = half({ name: 'back' });
    const pattern = definePattern({
      name: 'test',
      pieces: [half(), back],
      seams: [
        {
          name: 'shoulder',
          a: [{ piece: 'front', edge: 'shoulder', reversed: false }],
          b: [{ piece: 'back', edge: 'shoulder', reversed: false }],
          ease: { mm: 0 },
        },
      ],
    });
    const cut = recutNeckline(pattern, { piece: 'front', shape: 'V', depth: 60, halfWidth: 100 });
    expect(lengthOf(cut.pattern, 'shoulder')).toBeCloseTo(0.8 * Math.hypot(100, 30), 9);
    expect(lengthOf(cut.pattern, 'neck')).toBeCloseTo(Math.hypot(100, 160 - 6), 9);
    expect(toldFinding(cut.findings.find(f => f.code === 'shoulder-cut')!)).toMatchObject({
      where: { piece: 'front', edge: 'shoulder' },
      remedy: expect.stringContaining('back'),
    });
    const notches = front(cut.pattern).notches.filter(n => n.edge === 'shoulder');
    expect(notches.map(n => n.name)).toEqual(['near armhole']);
    expect(lengthOf(cut.pattern, 'shoulder') - notches[0]!.at).toBeCloseTo(Math.hypot(100, 30) - 90, 9);
  });

  test('a narrower neck runs the shoulder on', () => {
    const { pattern } = recutNeckline(patternOf(half()), {
      piece: 'front',
      shape: 'V',
      depth: 60,
      halfWidth: 60,
    });
    near(pathStart(edgePath(front(pattern), 'shoulder')), at(60, -6));
    expect(edgePath(front(pattern), 'shoulder').segments).toHaveLength(1);
  });

  test('a square goes out along the level and straight along the grain to the shoulder', () => {
    const { pattern } = recutNeckline(patternOf(half()), {
      piece: 'front',
      shape: 'square',
      depth: 60,
      halfWidth: 100,
    });
    expect(edgePath(front(pattern), 'neck').segments).toEqual([
      [at(0, 160), expect.objectContaining({ y: 160 })],
      [expect.objectContaining({ y: 160 }), expect.anything()],
    ]);
    expect(lengthOf(pattern, 'neck')).toBeCloseTo(100 + (160 - 6), 9);
  });

  // Ellipse of half axes 100 and 60: perimeter 510.539 977 267 962 57 [derived, check-values §10].
  test('a round one is a quarter of an ellipse', () => {
    const piece = half();
    const low = definePiece({
      ...piece,
      outline: [
        { name: 'neck', path: polyline(at(0, 40), at(100, 0)) },
        { name: 'shoulder', path: polyline(at(100, 0), at(180, 30)) },
        ...piece.outline.parts.slice(2, 5).map(p => p as never),
        { name: 'centre-front', kind: 'fold', path: polyline(at(0, 600), at(0, 40)) },
      ],
      notches: [],
    });
    const { pattern } = recutNeckline(patternOf(low), { piece: 'front', shape: 'round', depth: 20 });
    expect(lengthOf(pattern, 'neck')).toBeCloseTo(510.5399772679626 / 4, 6);
    for (const share of [0, 0.13, 0.31, 0.5, 0.77, 1]) {
      const p = pointAlong(edgePath(front(pattern), 'neck'), share * lengthOf(pattern, 'neck'));
      expect(Math.abs(Math.hypot(p.x / 100, p.y / 60) - 1) * 100).toBeLessThan(0.001);
    }
  });

  test('a whole piece gets one neck with its lowest point in the middle', () => {
    for (const shape of ['V', 'round', 'square'] as const) {
      const cut = { piece: 'front', shape, depth: 60, halfWidth: 100 } as const;
      const both = recutNeckline(patternOf(whole()), cut).pattern;
      const one = recutNeckline(patternOf(half()), cut).pattern;
      expect(lengthOf(both, 'neck')).toBeCloseTo(2 * lengthOf(one, 'neck'), 9);
      expect(lengthOf(both, 'shoulder-left')).toBeCloseTo(lengthOf(one, 'shoulder'), 9);
      near(pointAlong(edgePath(front(both), 'neck'), lengthOf(both, 'neck') / 2), at(0, 160));
      validatePattern(both);
    }
  });

  test('the centre line may be a line of that name', () => {
    const piece = whole();
    const skew = {
      ...piece,
      lines: [{ kind: 'style' as const, name: 'centre front', path: polyline(at(10, 150), at(10, 400)) }],
    };
    const { pattern } = recutNeckline(patternOf(skew), { piece: 'front', shape: 'V', depth: 60 });
    const neck = edgePath(front(pattern), 'neck');
    const corner = pathEnd({ segments: [neck.segments[0]!] });
    expect(corner.x).toBeCloseTo(10, 9);
  });

  test.each([
    ['half-width-beyond-shoulder', { piece: 'front', shape: 'V', depth: 60, halfWidth: 200 }],
    ['neckline-too-deep', { piece: 'front', shape: 'round', depth: 500 }],
    ['no-neck', { piece: 'back', shape: 'round', depth: 50 }],
  ] as const)('%s is refused', (code, parameters) => {
    const back = definePiece({
      name: 'back',
      outline: [
        { name: 'top', path: polyline(at(0, 0), at(100, 0)) },
        { name: 'slope', path: polyline(at(100, 0), at(0, 100)) },
        { name: 'centre', kind: 'fold', path: polyline(at(0, 100), at(0, 0)) },
      ],
    });
    const error = refusal(() => recutNeckline(patternOf(half(), back), parameters));
    expect(error.code).toBe(code);
    expect(error.remedy).not.toBe('');
  });

  test('a whole piece without centre line or grain is refused', () => {
    const piece = { ...whole(), lines: [] };
    expect(
      refusal(() => recutNeckline(patternOf(piece), { piece: 'front', shape: 'V', depth: 60 })).code,
    ).toBe('no-centre-line');
  });
});

describe('a length of shoulder', () => {
  const backOf = (rise: number): Piece => {
    const piece = half({ name: 'back' });
    const parts = piece.outline.parts.map(p =>
      p.name === 'shoulder' && p.type === 'edge' ? { ...p, path: polyline(at(80, 0), at(180, rise)) } : p,
    );
    const armhole = parts.map(p =>
      p.name === 'armhole' && p.type === 'edge' ? { ...p, path: polyline(at(180, rise), at(220, 230)) } : p,
    );
    return { ...piece, outline: { parts: armhole } };
  };
  const sewn = (): Pattern =>
    definePattern({
      name: 't',
      pieces: [half(), backOf(55)],
      seams: [
        {
          name: 'shoulder',
          a: [{ piece: 'front', edge: 'shoulder', reversed: false }],
          b: [{ piece: 'back', edge: 'shoulder', reversed: false }],
          ease: { mm: lengthOf(patternOf(half()), 'shoulder') - Math.hypot(100, 55) },
        },
      ],
    });

  test('is left exactly, whether the neck grows or shrinks', () => {
    for (const shape of ['V', 'round', 'square'] as const)
      for (const shoulder of [70, 104, 120]) {
        const { pattern } = recutNeckline(patternOf(half()), { piece: 'front', shape, depth: 60, shoulder });
        expect(lengthOf(pattern, 'shoulder')).toBeCloseTo(shoulder, 9);
        validatePattern(pattern);
      }
  });

  test('given as the remedy says, both shoulders match again', () => {
    const cut = recutNeckline(sewn(), { piece: 'front', shape: 'round', depth: 60, halfWidth: 100 });
    const told = toldFinding(cut.findings.find(f => f.code === 'shoulder-cut')!);
    const shoulder = Number(/shoulder: ([\d.]+) mm/.exec(told.remedy)![1]);
    const both = recutNeckline(cut.pattern, { piece: 'back', shape: 'round', depth: 30, shoulder });
    expect(both.findings.map(f => f.code)).not.toContain('shoulder-cut');
    expect(walkSeam(both.pattern, both.pattern.seams[0]!).matches).toBe(true);
  });

  test.each([
    ['half-width-or-shoulder', { shape: 'V', depth: 60, halfWidth: 90, shoulder: 60 }],
    ['shoulder-not-cut', { shape: 'inset V', depth: 60, halfWidth: 40, shoulder: 60 }],
    ['shoulder-out-of-reach', { shape: 'V', depth: 60, shoulder: 900 }],
  ] as const)('%s', (code, wish) => {
    expect(refusal(() => recutNeckline(patternOf(half()), { piece: 'front', ...wish })).code).toBe(code);
  });
});

describe('a drawn line', () => {
  const boat = (from: Point, to: Point): Piece => ({
    ...half(),
    lines: [
      ...half().lines,
      { kind: 'style', name: 'boat', path: pathOf([from, at(60, from.y), at(110, 60), to] as const) },
    ],
  });

  test('becomes the neck, and what lay above it goes', () => {
    const drawn = boat(at(0, 130), at(120, 12));
    const line = drawn.lines.at(-1)!.path;
    const { pattern, findings } = recutNeckline(patternOf(drawn), {
      piece: 'front',
      shape: 'drawn',
      line: 'boat',
    });
    validatePattern(pattern);
    expect(lengthOf(pattern, 'neck')).toBeCloseTo(pathLength(line), 6);
    expect(lengthOf(pattern, 'centre-front')).toBeCloseTo(470, 9);
    expect(lengthOf(pattern, 'shoulder')).toBeCloseTo(0.6 * Math.hypot(100, 30), 6);
    expect(edgeNames(front(pattern))).toEqual(['neck', 'shoulder', 'armhole', 'side', 'hem', 'centre-front']);
    expect(front(pattern).lines.map(l => l.name)).toEqual(['grain']);
    expect(findings.filter(f => f.code === 'notch-cut-away')).toHaveLength(3);
  });

  test('that ends on the neck cuts off the little it encloses, not the piece', () => {
    // From the centre to a point of the neck before its middle: most of the neck lies beyond the line.
    const neck = edgePath(half(), 'neck');
    const end = pointAlong(neck, 50);
    const drawn: Piece = {
      ...half(),
      lines: [...half().lines, { kind: 'style', name: 'nick', path: polyline(at(0, 130), end) }],
    };
    const { pattern } = recutNeckline(patternOf(drawn), { piece: 'front', shape: 'drawn', line: 'nick' });
    expect(edgeNames(front(pattern))).toEqual(edgeNames(half()));
    expect(lengthOf(pattern, 'neck')).toBeCloseTo(distance(at(0, 130), end) + pathLength(neck) - 50, 6);
    expect(lengthOf(pattern, 'centre-front')).toBeCloseTo(470, 9);
  });

  test('may be drawn either way round, and on a piece of either hand', () => {
    const drawn = boat(at(0, 130), at(120, 12));
    const turned = {
      ...drawn,
      lines: drawn.lines.map(l => (l.name === 'boat' ? { ...l, path: reversedPath(l.path) } : l)),
    };
    const cut = { piece: 'front', shape: 'drawn', line: 'boat' } as const;
    const results = [drawn, turned, mirrored(drawn)].map(p => recutNeckline(patternOf(p), cut).pattern);
    for (const p of results) {
      validatePattern(p);
      expect(signedArea(outlinePath(front(p).outline))).toBeCloseTo(
        signedArea(outlinePath(front(results[0]!).outline)),
        6,
      );
    }
  });

  test('that runs to the armhole takes the shoulder with it, and its seam, with a finding', () => {
    const drawn = boat(at(0, 130), at(190, 80));
    const back = half({ name: 'back' });
    const seam = (edge: string) => ({
      name: edge,
      a: [{ piece: 'front', edge, reversed: false }],
      b: [{ piece: 'back', edge, reversed: false }],
      ease: { mm: 0 },
    });
    const pattern = definePattern({
      name: 't',
      pieces: [drawn, back],
      seams: [seam('shoulder'), seam('side')],
    });
    const cut = recutNeckline(pattern, { piece: 'front', shape: 'drawn', line: 'boat' });
    expect(edgeNames(front(cut.pattern))).not.toContain('shoulder');
    expect(cut.pattern.seams.map(s => s.name)).toEqual(['side']);
    expect(cut.findings.map(f => f.code)).toContain('seam-gone');
    validatePattern(cut.pattern);
  });

  test('that ends on the neck itself leaves the rest of the neck in one edge with it', () => {
    const neck = edgePath(half(), 'neck');
    const end = pointAlong(neck, 120);
    const { pattern } = recutNeckline(patternOf(boat(at(0, 130), end)), {
      piece: 'front',
      shape: 'drawn',
      line: 'boat',
    });
    validatePattern(pattern);
    near(pathEnd(edgePath(front(pattern), 'neck')), at(80, 0));
    expect(partsOfEdge(front(pattern), 'neck')).toHaveLength(1);
  });

  test('an end off the outline, or a line that is not there, is refused', () => {
    const off = patternOf(boat(at(5, 130), at(120, 12)));
    expect(refusal(() => recutNeckline(off, { piece: 'front', shape: 'drawn', line: 'boat' }))).toMatchObject(
      {
        code: 'line-ends-off-outline',
        message: expect.stringContaining('5 mm'),
      },
    );
    expect(refusal(() => recutNeckline(off, { piece: 'front', shape: 'drawn', line: 'bateau' })).code).toBe(
      'unknown-line',
    );
    expect(refusal(() => recutNeckline(off, { piece: 'front', shape: 'drawn' })).code).toBe('field-missing');
  });
});

test('on the shift every shape leaves a sound pattern and the rest untouched', () => {
  const before = shiftPattern();
  for (const shape of ['inset V', 'V', 'round', 'square'] as const) {
    const { pattern } = recutNeckline(before, {
      piece: 'front',
      shape,
      depth: 60,
      halfWidth: shape === 'inset V' ? 45 : 130,
    });
    validatePattern(pattern);
    for (const edge of ['armhole', 'side-upper', 'side-lower', 'hem'])
      expect(lengthOf(pattern, edge)).toBe(lengthOf(before, edge));
  }
});
