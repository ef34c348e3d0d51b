import { resizeDart } from '@paperhinge/alter/darts';
import { lengthen, shorten } from '@paperhinge/alter/length';
import {
  at,
  definePattern,
  definePiece,
  edgePath,
  line,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pathOf,
  pieceNamed,
  polyline,
  validatePattern,
  walkSeams,
} from '@paperhinge/geometry';
import { segmentLength } from '@paperhinge/geometry/curves';
import { pathEnd, pathStart, transformedPath } from '@paperhinge/geometry/paths';
import { dartsOf, outlinePath } from '@paperhinge/geometry/pattern';
import { rotation } from '@paperhinge/geometry/plane';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf as refusal, toldDid } from '../../support/told.js';

const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));
const patternOf = (...pieces: Piece[]): Pattern => definePattern({ name: 'test', pieces });

/** A half skirt panel on the fold: top at y = 0, hem at y = 400, side from (100, 0) to (100 + flare, 400). */
function panel(flare: number, more: Partial<Parameters<typeof definePiece>[0]> = {}): Piece {
  const topSide = at(100, 0),
    hemSide = at(100 + flare, 400);
  return definePiece({
    name: 'panel',
    outline: [
      { name: 'neck', path: polyline(at(0, 0), topSide) },
      { name: 'side', path: polyline(topSide, hemSide) },
      { name: 'hem', kind: 'hem', path: polyline(hemSide, at(0, 400)) },
      { name: 'centre-front', kind: 'fold', path: polyline(at(0, 400), at(0, 0)) },
    ],
    lines: [
      { kind: 'grain', name: 'grain', path: polyline(at(30, 50), at(30, 350)) },
      { kind: 'level', name: 'hip', path: polyline(at(0, 200), at(100 + flare / 2, 200)) },
      {
        kind: 'lengthen-shorten',
        name: 'alter here',
        path: polyline(at(0, 150), at(100 + (flare * 3) / 8, 150)),
      },
    ],
    marks: [{ kind: 'point', name: 'low', at: at(50, 300) }],
    notches: [
      { edge: 'side', at: 60, style: 'single', name: 'upper' },
      { edge: 'side', at: 300, style: 'single', name: 'lower' },
    ],
    ...more,
  });
}

/** Shortened by a positive amount, lengthened by a negative one. */
const changed = (pattern: Pattern, where: string, by: number) =>
  (by < 0 ? lengthen : shorten)(pattern, { pieces: ['panel'], at: where, by: Math.abs(by) });

describe('at the hem', () => {
  // Hand sum: the side is 100 → 140 over 400, so 100 mm higher the hem is 10 mm narrower.
  test('a flared panel loses what its straight side tapers, and nothing else', () => {
    const done = shorten(patternOf(panel(40)), { pieces: ['panel'], at: 'hem', by: 100 });
    const { pattern, findings } = done;
    expect(lengthOf(pattern, 'panel', 'hem')).toBeCloseTo(130, 9);
    expect(lengthOf(pattern, 'panel', 'centre-front')).toBeCloseTo(300, 9);
    expect(lengthOf(pattern, 'panel', 'side')).toBeCloseTo(Math.hypot(30, 300), 9);
    expect(lengthOf(pattern, 'panel', 'neck')).toBe(100);
    expect(toldDid(done)).toBe('The panel was shortened by 100 mm at the hem.');
    expect(findings.map(f => f.code)).toEqual([]);
    expect(pieceNamed(pattern, 'panel').notches.map(n => n.at)).toEqual([60, 300]);
  });

  test('lengthening runs the side on along its end tangent and the hem out to it', () => {
    const done = lengthen(patternOf(panel(40)), { pieces: ['panel'], at: 'hem', by: 200 });
    const { pattern } = done;
    expect(lengthOf(pattern, 'panel', 'hem')).toBeCloseTo(160, 9);
    expect(edgePath(pieceNamed(pattern, 'panel'), 'side').segments).toHaveLength(1);
    expect(toldDid(done)).toBe('The panel was lengthened by 200 mm at the hem.');
  });

  // Hand sum: the curve ends along (0, 1), so 80 mm more is 80 mm of straight line; the hem keeps its length.
  test('a curved side goes on as a straight line', () => {
    const curved = panel(0);
    const side = pathOf([at(100, 0), at(130, 120), at(120, 280), at(120, 400)] as const);
    const piece = definePiece({
      name: 'panel',
      outline: [
        { name: 'neck', path: polyline(at(0, 0), at(100, 0)) },
        { name: 'side', path: side },
        { name: 'hem', kind: 'hem', path: polyline(at(120, 400), at(0, 400)) },
        { name: 'centre-front', kind: 'fold', path: polyline(at(0, 400), at(0, 0)) },
      ],
      lines: curved.lines,
    });
    const { pattern } = lengthen(patternOf(piece), { pieces: ['panel'], at: 'hem', by: 80 });
    expect(lengthOf(pattern, 'panel', 'side')).toBeCloseTo(pathLength(side) + 80, 8);
    expect(lengthOf(pattern, 'panel', 'hem')).toBeCloseTo(120, 9);
  });

  test('a notch that is cut away is a finding and no longer there', () => {
    const { pattern, findings } = shorten(patternOf(panel(40)), { pieces: ['panel'], at: 'hem', by: 150 });
    expect(findings.map(f => f.code)).toEqual(['notch-cut-away', 'mark-cut-away']);
    expect(findings[0]).toMatchObject({ code: 'notch-cut-away', where: { piece: 'panel', edge: 'side' } });
    expect(pieceNamed(pattern, 'panel').notches.map(n => n.name)).toEqual(['upper']);
  });

  test('the grain line is cut back to what is left, a level beyond the hem goes with a finding', () => {
    const { pattern, findings } = shorten(patternOf(panel(0)), { pieces: ['panel'], at: 'hem', by: 250 });
    const piece = pieceNamed(pattern, 'panel');
    expect(pathLength(piece.lines.find(l => l.kind === 'grain')!.path)).toBeCloseTo(100, 6);
    expect(piece.lines.map(l => l.name)).toEqual(['grain', 'alter here']);
    expect(findings.map(f => f.code).sort()).toEqual(['line-cut-away', 'mark-cut-away', 'notch-cut-away']);
  });

  test('the hem moves along the grain, whichever way its line was drawn and wherever the piece lies', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.double({ min: -30, max: 80, noNaN: true }),
        fc.double({ min: -200, max: 300, noNaN: true }),
        (angle, flare, by) => {
          const turned = turn(panel(flare), angle);
          const { pattern } = changed(patternOf(turned), 'hem', by);
          expect(lengthOf(pattern, 'panel', 'hem')).toBeCloseTo(100 + (flare * (400 - by)) / 400, 7);
          expect(lengthOf(pattern, 'panel', 'neck')).toBeCloseTo(100, 9);
        },
      ),
    );
  });

  test('shortened and lengthened again, a straight-sided piece is what it was', () => {
    const start = patternOf(panel(40));
    const short = shorten(start, { pieces: ['panel'], at: 'hem', by: 70 }).pattern;
    const again = lengthen(short, { pieces: ['panel'], at: 'hem', by: 70 }).pattern;
    const [before, after] = [start, again].map(p =>
      outlinePath(pieceNamed(p, 'panel').outline).segments.flat(),
    );
    expect(after!.length).toBe(before!.length);
    for (const [i, p] of before!.entries())
      expect(Math.hypot(p.x - after![i]!.x, p.y - after![i]!.y)).toBeLessThan(1e-9);
  });

  test('both sides of the shift still match, and what the hem does not touch keeps its length', () => {
    const before = shiftPattern();
    const { pattern, findings } = shorten(before, { pieces: ['front', 'back'], at: 'hem', by: 210 });
    validatePattern(pattern);
    expect(findings).toEqual([]);
    expect(walkSeams(pattern).filter(w => !w.matches)).toEqual([]);
    for (const edge of ['neck', 'shoulder', 'armhole', 'side-upper'])
      expect(Math.abs(lengthOf(pattern, 'front', edge) - lengthOf(before, 'front', edge))).toBeLessThan(1e-9);
    expect(lengthOf(pattern, 'front', 'centre-front')).toBeCloseTo(808 - 210, 9);
  });

  test('a dart that opens into the hem is cut with it, and its legs stay equal', () => {
    const piece = definePiece({
      name: 'panel',
      outline: [
        { name: 'neck', path: polyline(at(0, 0), at(200, 0)) },
        { name: 'side', path: polyline(at(200, 0), at(200, 400)) },
        { name: 'hem', kind: 'hem', path: polyline(at(200, 400), at(115, 400)) },
        {
          type: 'dart',
          name: 'waist',
          legs: [polyline(at(115, 400), at(100, 200)), polyline(at(100, 200), at(85, 400))],
          apex: at(100, 200),
        },
        { name: 'hem', kind: 'hem', path: polyline(at(85, 400), at(0, 400)) },
        { name: 'centre', kind: 'fold', path: polyline(at(0, 400), at(0, 0)) },
      ],
      lines: [{ kind: 'grain', name: 'grain', path: polyline(at(30, 50), at(30, 350)) }],
    });
    const { pattern } = shorten(patternOf(piece), { pieces: ['panel'], at: 'hem', by: 100 });
    validatePattern(pattern);
    // The mouth is half as wide half way up: 15 mm, so the hem is 200 − 15.
    expect(lengthOf(pattern, 'panel', 'hem')).toBeCloseTo(185, 9);
    const past = refusal(() => shorten(patternOf(piece), { pieces: ['panel'], at: 'hem', by: 250 }));
    expect(past).toMatchObject({
      code: 'shorten-beyond-piece',
      remedy: expect.stringContaining('close the dart'),
    });
  });

  test('a shortening longer than the piece is refused with piece and edge', () => {
    const error = refusal(() => shorten(patternOf(panel(40)), { pieces: ['panel'], at: 'hem', by: 900 }));
    expect(error).toMatchObject({ code: 'shorten-beyond-piece', where: { piece: 'panel' } });
    expect(error.remedy).toContain('less');
  });

  test('a piece without a hem, or with two unnamed ones, is refused', () => {
    const two = (kinds: readonly ('hem' | 'seam')[]) =>
      patternOf(
        definePiece({
          name: 'p',
          outline: [
            { name: 'a', kind: kinds[0]!, path: polyline(at(0, 0), at(10, 0)) },
            { name: 'b', kind: kinds[1]!, path: polyline(at(10, 0), at(0, 10)) },
            { name: 'c', path: polyline(at(0, 10), at(0, 0)) },
          ],
        }),
      );
    expect(refusal(() => shorten(two(['seam', 'seam']), { pieces: ['p'], at: 'hem', by: 1 })).code).toBe(
      'no-hem',
    );
    expect(refusal(() => shorten(two(['hem', 'hem']), { pieces: ['p'], at: 'hem', by: 1 })).code).toBe(
      'several-hems',
    );
  });

  test('without a grain line the vertical serves, and the record says so', () => {
    const { findings } = shorten(patternOf(panel(0, { lines: [] })), {
      pieces: ['panel'],
      at: 'hem',
      by: 10,
    });
    expect(findings).toEqual([expect.objectContaining({ code: 'no-grain-line', severity: 'note' })]);
  });

  test('a grain that runs along the hem is refused', () => {
    const lines = [{ kind: 'grain' as const, name: 'grain', path: polyline(at(10, 200), at(90, 200)) }];
    // The middle of the piece lies straight above the middle of the hem.
    const error = refusal(() =>
      shorten(patternOf(panel(0, { lines })), { pieces: ['panel'], at: 'hem', by: 10 }),
    );
    expect(error.code).toBe('grain-across');
  });
});

describe('at a line', () => {
  test('a straight side stays one straight line from its two corners', () => {
    for (const by of [60, -60]) {
      const { pattern } = changed(patternOf(panel(40)), 'hip', by);
      const side = edgePath(pieceNamed(pattern, 'panel'), 'side');
      expect(side.segments).toHaveLength(1);
      expect(pathStart(side)).toEqual(at(100, 0));
      expect(pathEnd(side).x).toBeCloseTo(140, 9);
      expect(pathEnd(side).y).toBeCloseTo(400 - by, 9);
      expect(lengthOf(pattern, 'panel', 'hem')).toBeCloseTo(140, 9);
      expect(lengthOf(pattern, 'panel', 'centre-front')).toBeCloseTo(400 - by, 9);
    }
  });

  test('levels, marks and notches of the moved part go with it, those above stay', () => {
    const { pattern, findings } = shorten(patternOf(panel(0)), {
      pieces: ['panel'],
      at: 'alter here',
      by: 40,
    });
    const piece = pieceNamed(pattern, 'panel');
    expect(findings).toEqual([]);
    expect(pathStart(piece.lines.find(l => l.name === 'hip')!.path).y).toBeCloseTo(160, 9);
    expect(pathStart(piece.lines.find(l => l.name === 'alter here')!.path).y).toBeCloseTo(110, 9);
    expect(piece.marks[0]!.at).toEqual(at(50, 260));
    expect(piece.notches.map(n => n.at)).toEqual([60, 260]);
    const grain = piece.lines.find(l => l.kind === 'grain')!.path;
    expect([pathStart(grain).y, pathEnd(grain).y]).toEqual([50, 310]);
  });

  test('a notch or a level in the strip that is taken out is a finding', () => {
    const { pattern, findings } = shorten(patternOf(panel(0)), { pieces: ['panel'], at: 'hip', by: 145 });
    expect(findings.map(f => f.code)).toEqual(['notch-cut-away']);
    expect(pieceNamed(pattern, 'panel').notches.map(n => n.name)).toEqual(['lower']);
  });

  // A curved side: shear keeps its ends, and the curve stays without a corner where the two parts meet.
  test('a curved side keeps both corners and stays smooth where it is lengthened', () => {
    const before = shiftPattern();
    const { pattern, findings } = lengthen(before, { pieces: ['front', 'back'], at: 'waist', by: 40 });
    validatePattern(pattern);
    expect(findings).toEqual([]);
    expect(walkSeams(pattern).flatMap(w => w.findings)).toEqual([]);
    for (const edge of ['neck', 'shoulder', 'armhole', 'side-upper', 'hem'])
      expect(Math.abs(lengthOf(pattern, 'front', edge) - lengthOf(before, 'front', edge))).toBeLessThan(1e-9);
    expect(lengthOf(pattern, 'front', 'centre-front')).toBeCloseTo(848, 9);
  });

  test('lengthened and shortened again at the same line, even a curved piece is what it was', () => {
    const start = shiftPattern();
    const long = lengthen(start, { pieces: ['back'], at: 'hip', by: 35 }).pattern;
    const again = shorten(long, { pieces: ['back'], at: 'hip', by: 35 }).pattern;
    const ends = (p: Pattern) =>
      pieceNamed(p, 'back').outline.parts.flatMap(e => (e.type === 'edge' ? [pathStart(e.path)] : []));
    for (const [i, p] of ends(start).entries())
      expect(Math.hypot(p.x - ends(again)[i]!.x, p.y - ends(again)[i]!.y)).toBeLessThan(1e-8);
    expect(lengthOf(again, 'back', 'side')).toBeCloseTo(lengthOf(start, 'back', 'side'), 6);
    const area = (p: Pattern) => signedArea(outlinePath(pieceNamed(p, 'back').outline));
    expect(area(again)).toBeCloseTo(area(start), 4);
  });

  test('the sleeve keeps its cap', () => {
    const before = shiftPattern();
    const sleeve = pieceNamed(before, 'sleeve');
    const elbow = {
      kind: 'lengthen-shorten' as const,
      name: 'elbow',
      path: pathOf(line(at(-150, 330), at(150, 330))),
    };
    const marked = {
      ...before,
      pieces: before.pieces.map(p => (p === sleeve ? { ...p, lines: [...p.lines, elbow] } : p)),
    };
    const { pattern } = shorten(marked, { pieces: ['sleeve'], at: 'elbow', by: 50 });
    expect(lengthOf(pattern, 'sleeve', 'cap')).toBe(lengthOf(before, 'sleeve', 'cap'));
    expect(lengthOf(pattern, 'sleeve', 'hem')).toBeCloseTo(lengthOf(before, 'sleeve', 'hem'), 9);
    expect(walkSeams(pattern).every(w => w.matches)).toBe(true);
  });

  test.each([
    ['unknown-line', 'knee', 10, 'hip'],
    ['shorten-beyond-piece', 'hip', 250, 'less'],
  ])('%s is refused', (code, name, by, remedy) => {
    const error = refusal(() => shorten(patternOf(panel(0)), { pieces: ['panel'], at: name, by }));
    expect(error).toMatchObject({ code, remedy: expect.stringContaining(remedy) });
  });

  test('a line through a corner, or beside the piece, is refused', () => {
    const with_ = (from: Point, to: Point) =>
      patternOf({
        ...panel(0),
        lines: [...panel(0).lines, { kind: 'level', name: 'x', path: polyline(from, to) }],
      });
    const tried = (from: Point, to: Point) =>
      refusal(() => shorten(with_(from, to), { pieces: ['panel'], at: 'x', by: 10 })).code;
    expect(tried(at(0, 100), at(100, 0))).toBe('line-through-corner');
    expect(tried(at(0, 500), at(100, 500))).toBe('line-off-piece');
  });
});

describe('at a line across a dart', () => {
  /** A panel with a dart from the waist, its point at (90 + slant, 160) and the line at 100. */
  const darted = (slant: number, mouth = 30): Piece => {
    const apex = at(90 + slant, 160);
    return definePiece({
      name: 'panel',
      outline: [
        { name: 'waist', path: polyline(at(0, 0), at(90 - mouth / 2, 0)) },
        {
          type: 'dart',
          name: 'waist dart',
          legs: [polyline(at(90 - mouth / 2, 0), apex), polyline(apex, at(90 + mouth / 2, 0))],
          apex,
        },
        { name: 'waist', path: polyline(at(90 + mouth / 2, 0), at(200, 0)) },
        { name: 'side', path: polyline(at(200, 0), at(230, 400)) },
        { name: 'hem', kind: 'hem', path: polyline(at(230, 400), at(0, 400)) },
        { name: 'centre', kind: 'fold', path: polyline(at(0, 400), at(0, 0)) },
      ],
      lines: [
        { kind: 'grain', name: 'grain', path: polyline(at(30, 50), at(30, 350)) },
        { kind: 'lengthen-shorten', name: 'across', path: polyline(at(0, 100), at(210, 100)) },
      ],
    });
  };
  const dartOf = (pattern: Pattern) => dartsOf(pieceNamed(pattern, 'panel'))[0]!;

  test('its legs run straight from the mouth to the moved point', () => {
    for (const by of [25, -25]) {
      const { pattern, findings } = changed(patternOf(darted(0)), 'across', by);
      validatePattern(pattern);
      const { apex, legs } = dartOf(pattern);
      // The hem stays put or moves; either way the point lies 25 mm farther from, or nearer to, the mouth.
      expect(apex.y - pathStart(legs[0]).y).toBeCloseTo(160 - by, 9);
      expect(legs.map(leg => leg.segments.length)).toEqual([1, 1]);
      expect(lengthOf(pattern, 'panel', 'waist')).toBeCloseTo(170, 9);
      expect(findings.map(f => f.code)).toEqual(['dart-redrawn']);
    }
  });

  test('slanted, its legs stay as long as one another', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.double({ min: 2, max: 60, noNaN: true }),
        fc.double({ min: -30, max: 60, noNaN: true }),
        (slant, mouth, by) => {
          // As slanted as a dart may be: its legs differ by 0.9 mm at most, about mouth × slant / depth.
          const before = darted(slant * Math.min(70, (0.9 * 160) / mouth), mouth);
          const { pattern } = changed(patternOf(before), 'across', by);
          validatePattern(pattern);
          const { legs } = dartOf(pattern);
          expect(Math.abs(pathLength(legs[0]) - pathLength(legs[1]))).toBeLessThanOrEqual(1 + 1e-6);
        },
      ),
    );
  });

  test('run out between the legs of a side dart, it parts the mouth: told, and mended as told', () => {
    // The mouth runs straight down a side that is 400 mm long; the point lies square to its middle.
    const apex = at(100, 150);
    const sided = definePiece({
      name: 'panel',
      outline: [
        { name: 'top', path: polyline(at(0, 0), at(220, 0)) },
        { name: 'side', path: polyline(at(220, 0), at(220, 134)) },
        {
          type: 'dart',
          name: 'bust',
          legs: [polyline(at(220, 134), apex), polyline(apex, at(220, 166))],
          apex,
        },
        { name: 'side', path: polyline(at(220, 166), at(220, 400)) },
        { name: 'hem', kind: 'hem', path: polyline(at(220, 400), at(0, 400)) },
        { name: 'centre', kind: 'fold', path: polyline(at(0, 400), at(0, 0)) },
      ],
      lines: [
        { kind: 'grain', name: 'grain', path: polyline(at(30, 50), at(30, 350)) },
        { kind: 'lengthen-shorten', name: 'across', path: polyline(at(0, 145), at(210, 152)) },
      ],
    });
    for (const by of [-20, 20]) {
      const { pattern, findings } = changed(patternOf(sided), 'across', by);
      expect(findings.map(f => [f.code, f.figures])).toEqual([
        ['dart-mouth-parted', { wasMm: 32, isMm: expect.closeTo(32 - by, 9) }],
      ]);
      expect(lengthOf(pattern, 'panel', 'side')).toBeCloseTo(368, 9);
      const mended = resizeDart(pattern, { piece: 'panel', dart: 'bust', to: 32 }).pattern;
      expect(lengthOf(mended, 'panel', 'side')).toBeCloseTo(368 - by, 9);
    }
  });

  test('a line beside which what stays slants away is still square to the grain', () => {
    // The waist rises from 0 to 120 mm: its middle lies as high as the line's, so the grain points to neither by it.
    const rising = definePiece({
      name: 'panel',
      outline: [
        { name: 'waist', path: polyline(at(0, 0), at(200, 120)) },
        { name: 'side', path: polyline(at(200, 120), at(200, 500)) },
        { name: 'bottom', path: polyline(at(200, 500), at(0, 500)) },
        { name: 'centre', kind: 'fold', path: polyline(at(0, 500), at(0, 0)) },
      ],
      lines: [
        { kind: 'grain', name: 'grain', path: polyline(at(30, 150), at(30, 450)) },
        { kind: 'lengthen-shorten', name: 'across', path: polyline(at(0, 2), at(200, 125)) },
      ],
    });
    const { pattern } = changed(patternOf(rising), 'across', -30);
    expect(lengthOf(pattern, 'panel', 'centre')).toBeCloseTo(530, 9);
    expect(lengthOf(pattern, 'panel', 'side')).toBeCloseTo(410, 9);
  });

  test('a line that ends on a drawn node leaves no segment without length', () => {
    const side = polyline(at(200, 0), at(210, 200), at(230, 400));
    const noded = definePiece({
      name: 'panel',
      outline: [
        { name: 'waist', path: polyline(at(0, 0), at(200, 0)) },
        { name: 'side', path: side },
        { name: 'hem', kind: 'hem', path: polyline(at(230, 400), at(0, 400)) },
        { name: 'centre', kind: 'fold', path: polyline(at(0, 400), at(0, 0)) },
      ],
      lines: [
        { kind: 'grain', name: 'grain', path: polyline(at(30, 50), at(30, 350)) },
        { kind: 'level', name: 'knee', path: polyline(at(0, 200), at(210, 200)) },
      ],
    });
    for (const by of [40, -40]) {
      const { pattern } = changed(patternOf(noded), 'knee', by);
      for (const part of pieceNamed(pattern, 'panel').outline.parts)
        if (part.type === 'edge')
          for (const segment of part.path.segments) expect(segmentLength(segment)).toBeGreaterThan(1);
      validatePattern(pattern);
    }
  });

  test('a piece with neither neck nor hem comes out the same whichever half stays', () => {
    const strip = definePiece({
      name: 'panel',
      outline: [
        { name: 'a', path: polyline(at(0, 0), at(100, 0)) },
        { name: 'b', path: polyline(at(100, 0), at(120, 300)) },
        { name: 'c', path: polyline(at(120, 300), at(0, 300)) },
        { name: 'd', path: polyline(at(0, 300), at(0, 0)) },
      ],
      lines: [
        { kind: 'grain', name: 'grain', path: polyline(at(30, 50), at(30, 250)) },
        { kind: 'level', name: 'middle', path: polyline(at(0, 150), at(110, 150)) },
      ],
    });
    const { pattern } = changed(patternOf(strip), 'middle', 50);
    expect(lengthOf(pattern, 'panel', 'd')).toBeCloseTo(250, 9);
    expect(lengthOf(pattern, 'panel', 'b')).toBeCloseTo(Math.hypot(20, 250), 9);
    expect(lengthOf(pattern, 'panel', 'a')).toBeCloseTo(100, 9);
  });
});

function turn(piece: Piece, angle: number): Piece {
  const map = rotation(angle, at(20, 30));
  const flip = angle > 0;
  return {
    ...piece,
    outline: {
      parts: piece.outline.parts.map(p =>
        p.type === 'edge' ? { ...p, path: transformedPath(p.path, map) } : p,
      ),
    },
    lines: piece.lines.map(l => {
      const path = transformedPath(l.path, map);
      return { ...l, path: flip ? pathOf(line(pathEnd(path), pathStart(path))) : path };
    }),
    marks: [],
    notches: [],
  };
}
