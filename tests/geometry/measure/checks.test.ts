import {
  at,
  checkPattern,
  type Finding,
  type Pattern,
  type Piece,
  type PieceLine,
  polyline,
} from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { patternOf, pieceOf, rectangle, seam, side } from '../../support/polygon-piece.js';
import { shiftPattern } from '../../support/shift.js';
import { toldFinding } from '../../support/told.js';

const codes = (pattern: Pattern) => checkPattern(pattern).map(f => f.code);
const of = (pattern: Pattern, code: string): readonly Finding[] =>
  checkPattern(pattern).filter(f => f.code === code);

test('findings come by harm: what will not sew, what will show, what to know', () => {
  const pattern = patternOf(
    [
      rectangle('front', 100, 400, { notches: [{ edge: 'right', at: 90, style: 'single' }] }),
      rectangle('back', 100, 410),
      rectangle('pocket', 50, 60),
    ],
    [seam('side', ['front.right'], ['-back.left'])],
  );
  const weight = { fault: 2, warning: 1, note: 0 };
  const weights = checkPattern(pattern).map(f => weight[f.severity]);
  expect(weights).toEqual(weights.toSorted((p, q) => q - p));
  expect(new Set(weights).size).toBe(3);
});

test('what will not sew comes before what will show, whichever seam is listed first', () => {
  const mark = (at: number) => ({ notches: [{ edge: 'right', at, style: 'single' as const }] });
  const pattern = patternOf(
    [
      rectangle('a', 50, 200, mark(100)),
      rectangle('b', 50, 200, mark(95)),
      rectangle('c', 50, 300),
      rectangle('d', 50, 290),
    ],
    [seam('shown', ['a.right'], ['b.right']), seam('unsewable', ['c.right'], ['d.right'])],
  );
  // Their bottoms are drawn as seams that nothing is sewn to.
  expect(codes(pattern)).toEqual(['seam-does-not-match', 'notches-do-not-meet', 'edges-left-raw']);
});

describe('pieces in no seam', () => {
  const seams = [seam('side', ['front.right'], ['-back.left'])];
  const body = [rectangle('front', 100, 200), rectangle('back', 100, 200)];
  const pocket = rectangle('pocket bag', 90, 120);
  test('are told, each by itself', () => {
    const found = of(patternOf([...body, pocket], seams), 'piece-in-no-seam');
    expect(found.map(f => [f.severity, f.where])).toEqual([['warning', { piece: 'pocket bag' }]]);
    expect(toldFinding(found[0]!)).toMatchObject({
      message: 'No seam takes in the pocket bag: is one missing?',
      remedy:
        'List under "seams" what it is sewn to; or, if it is laid on like a patch pocket, draw its place there with data-line="placement".',
    });
  });
  test.each<[string, Partial<Piece>]>([
    ['drafted for an edge', { madeFor: [{ piece: 'front', edge: 'top' }] }],
    ['an interfacing', { role: 'interfacing' }],
    ['a stay', { role: 'stay' }],
  ])('are not if they are %s', (_, more) => {
    expect(codes(patternOf([...body, { ...pocket, ...more }], seams))).not.toContain('piece-in-no-seam');
  });
  test('are not where a placement line shows where they are laid on', () => {
    const placed = (name: string, kind: PieceLine['kind'] = 'placement') => [
      { ...body[0]!, lines: [{ kind, name, path: polyline(at(10, 10), at(90, 10)) }] },
      body[1]!,
    ];
    const found = (pieces: readonly Piece[]) => codes(patternOf(pieces, seams)).includes('piece-in-no-seam');
    expect(found([...placed('pocket bag'), pocket])).toBe(false);
    expect(found([...placed('bust'), pocket])).toBe(true);
    expect(found([...placed('left'), { ...pocket, role: 'pocket' }])).toBe(false);
    expect(found([...placed('pocket bag', 'style'), pocket])).toBe(true);
  });
  test.each(['collar', 'pocket', 'bodice'] as const)('are, if they are a %s', role => {
    expect(codes(patternOf([...body, { ...pocket, role }], seams))).toContain('piece-in-no-seam');
  });
  test('a listed seam clears it', () => {
    const more = [...seams, seam('pocket', ['pocket bag.top'], ['front.bottom'])];
    expect(codes(patternOf([...body, pocket], more))).not.toContain('piece-in-no-seam');
  });
  test('of a pattern without seams it is said once that nothing was walked', () => {
    const found = checkPattern(patternOf([...body, pocket]));
    expect(found.map(f => [f.severity, f.code])).toEqual([['warning', 'no-seams']]);
    expect(found[0]!.figures).toEqual({ pieces: 3 });
    expect(toldFinding(found[0]!).message).toMatch(/^No seams are listed/);
  });
});

describe('notches are proposed', () => {
  const walked = (height: number, more: Partial<Piece> = {}, back: Partial<Piece> = {}) =>
    patternOf(
      [
        { ...rectangle('front', 100, height), ...more },
        { ...rectangle('back', 100, height), ...back },
      ],
      [seam('side', ['front.right'], ['-back.left'])],
    );
  test('for a seam over 300 mm that has none', () => {
    const [note] = of(walked(300.1), 'notches-wanted');
    expect(note).toMatchObject({ severity: 'note', figures: { count: 1, longestMm: 300.1 } });
    expect(toldFinding(note!)).toMatchObject({
      message: 'There is no notch yet on the side seam, 300.1 mm long.',
      remedy: 'Mark the middle of both its sides: add notches: { seam: side, count: 1 }.',
    });
  });
  test('not for one of 300 mm', () => {
    expect(codes(walked(300))).not.toContain('notches-wanted');
  });
  test('not where either side has one', () => {
    const notches = (edge: string) => ({ notches: [{ edge, at: 150, style: 'single' as const }] });
    expect(codes(walked(400, notches('right')))).not.toContain('notches-wanted');
    expect(codes(walked(400, {}, notches('left')))).not.toContain('notches-wanted');
  });
  test('not for a piece drafted for the edge', () => {
    const madeFor = { madeFor: [{ piece: 'front', edge: 'right' }] };
    expect(codes(walked(400, {}, madeFor))).not.toContain('notches-wanted');
    expect(codes(walked(400, madeFor))).not.toContain('notches-wanted');
  });
  test('for a piece drafted for a part of a side only', () => {
    const pattern = patternOf(
      [
        rectangle('front', 100, 400),
        rectangle('band', 100, 200, { madeFor: [{ piece: 'front', edge: 'right' }] }),
        rectangle('back', 100, 180),
      ],
      [seam('side', ['front.right'], ['-band.left', '-back.left'])],
    );
    const [note] = of(pattern, 'notches-wanted');
    expect(note!.figures!.longestMm).toBe(400);
    const { seams, ...rest } = pattern;
    const turned = { ...seams[0]!, a: seams[0]!.b, b: seams[0]!.a };
    expect(of({ ...rest, seams: [turned] }, 'notches-wanted')[0]!.figures!.longestMm).toBe(400);
  });
  test('not where seams cross both sides often enough', () => {
    const upper = ['front', 'back'].map(name => rectangle(`${name} upper`, 100, 200));
    const lower = ['front', 'back'].map(name => rectangle(`${name} lower`, 100, 250));
    const side = (b: readonly string[]) => seam('side', ['front upper.right', 'front lower.right'], b);
    const crossed = patternOf([...upper, ...lower], [side(['-back upper.left', '-back lower.left'])]);
    expect(codes(crossed)).not.toContain('notches-wanted');
    const plain = patternOf([...upper, ...lower, rectangle('panel', 100, 450)], [side(['-panel.left'])]);
    expect(codes(plain)).toContain('notches-wanted');
    // One seam crosses on one side, two on the other: nobody can say which is which.
    const thirds = ['one', 'two', 'three'].map(name => rectangle(name, 100, 150));
    const unlike = patternOf(
      [...upper, ...lower, ...thirds],
      [side(['-one.left', '-two.left', '-three.left'])],
    );
    expect(codes(unlike)).toContain('notches-wanted');
  });
  test('for all such seams in one note', () => {
    const pattern = patternOf(
      [rectangle('front', 350, 400), rectangle('back', 350, 400)],
      [seam('side', ['front.right'], ['-back.left']), seam('yoke', ['front.top'], ['-back.top'])],
    );
    const found = of(pattern, 'notches-wanted');
    expect(found).toHaveLength(1);
    expect(toldFinding(found[0]!)).toMatchObject({
      message: 'There is no notch yet on the side seam and the yoke seam, up to 400 mm long.',
      remedy:
        'Mark the middle of each: add notches: { seam: side, count: 1 }, add notches: { seam: yoke, count: 1 }.',
    });
  });
});

describe('small differences', () => {
  const drop = (length: number, degrees: number) => length * Math.tan((degrees * Math.PI) / 180);
  /** A hem that bends by so many degrees 100 mm from its fold. */
  const bent = (name: string, bend: number) =>
    pieceOf(name, [
      side('top', [
        [0, 0],
        [300, 0],
      ]),
      side('side', [
        [300, 0],
        [300, 400 - drop(200, bend)],
      ]),
      side(
        'hem',
        [
          [300, 400 - drop(200, bend)],
          [100, 400],
          [0, 400],
        ],
        { kind: 'hem' },
      ),
      side(
        'centre',
        [
          [0, 400],
          [0, 0],
        ],
        { kind: 'fold' },
      ),
    ]);
  test('kinks under 3 degrees and differences within the tolerance are one note', () => {
    const pattern = patternOf(
      [bent('front', -2.9), bent('back', 1.5), rectangle('strap', 40, 100), rectangle('tab', 40, 100.7)],
      [seam('strap', ['strap.right'], ['tab.right'])],
    );
    const [note, ...others] = of(pattern, 'small-differences');
    expect(others).toEqual([]);
    expect(codes(pattern)).not.toContain('edge-kinked');
    expect(note).toMatchObject({ severity: 'note', figures: { kinks: 2 } });
    expect(note!.figures!.sharpestDeg).toBeCloseTo(2.9, 9);
    expect(note!.figures!.mostMm).toBeCloseTo(0.7, 9);
    expect(toldFinding(note!)).toMatchObject({
      message:
        'Small enough to sew as it is: 2 kinks of 2.9° at most (the hem of the front and the hem of the back) ' +
        'and a difference of 0.7 mm between the two sides of the strap seam.',
      remedy: 'To smooth the kinks: true: { edges: [front.hem, back.hem] }.',
    });
  });
  test.each([
    [2.99, 'small-differences', 'edge-kinked'],
    [3.01, 'edge-kinked', 'small-differences'],
  ])('a kink of %d degrees is %s', (bend, told, not) => {
    const found = codes(patternOf([bent('front', bend)]));
    expect(found).toContain(told);
    expect(found).not.toContain(not);
  });
  test.each([
    [0.09, 0],
    [0.1, 1],
    [0.8, 1],
    [0.81, 0],
  ])('a difference of %d mm between the sides of a seam gives %d notes', (difference, count) => {
    const pattern = patternOf(
      [rectangle('front', 100, 200 + difference), rectangle('back', 100, 200)],
      [seam('side', ['front.right'], ['-back.left'])],
    );
    expect(of(pattern, 'small-differences')).toHaveLength(count);
  });
  test('a sharp kink is none, whichever way it turns', () => {
    for (const bend of [5, -5]) {
      const found = codes(patternOf([bent('front', bend)]));
      expect(found).toContain('edge-kinked');
      expect(found).not.toContain('small-differences');
    }
  });
  test('seams alone, or kinks alone', () => {
    const seamOnly = patternOf(
      [rectangle('front', 100, 200.5), rectangle('back', 100, 200)],
      [seam('side', ['front.right'], ['-back.left'])],
    );
    expect(of(seamOnly, 'small-differences')[0]!.figures).toEqual({
      kinks: 0,
      sharpestDeg: 0,
      mostMm: expect.closeTo(0.5, 9),
    });
    expect(of(patternOf([bent('front', 2)]), 'small-differences')[0]!.figures).toEqual({
      kinks: 1,
      sharpestDeg: expect.closeTo(2, 9),
      mostMm: 0,
    });
  });
  test('an edge with several kinks is named once', () => {
    // Two bends of 2 degrees, one after the other.
    const piece = pieceOf('front', [
      side('top', [
        [0, 0],
        [300, 0],
      ]),
      side('side', [
        [300, 0],
        [300, 400 - drop(100, 2) - drop(100, 4)],
      ]),
      side(
        'hem',
        [
          [300, 400 - drop(100, 2) - drop(100, 4)],
          [200, 400 - drop(100, 2)],
          [100, 400],
          [0, 400],
        ],
        { kind: 'hem' },
      ),
      side(
        'centre',
        [
          [0, 400],
          [0, 0],
        ],
        { kind: 'fold' },
      ),
    ]);
    const [note] = of(patternOf([piece]), 'small-differences');
    expect(note!.figures!.kinks).toBe(2);
    expect(toldFinding(note!)).toMatchObject({
      message: expect.stringContaining('2 kinks of 2° at most (the hem of the front)'),
      remedy: 'To smooth the kinks: true: { edges: [front.hem] }.',
    });
  });
  test('what the ease explains is no difference', () => {
    const pattern = patternOf(
      [rectangle('front', 100, 210), rectangle('back', 100, 200)],
      [seam('side', ['front.right'], ['-back.left'], { mm: 10 })],
    );
    expect(of(pattern, 'small-differences')).toEqual([]);
  });
  test('the shift has none', () => {
    expect(codes(shiftPattern())).not.toContain('small-differences');
  });
});

describe('tolerance', () => {
  const pair = (difference: number, more: Partial<Pattern> = {}, ofSeam?: number) =>
    patternOf(
      [rectangle('front', 100, 200 + difference), rectangle('back', 100, 200)],
      [
        {
          ...seam('side', ['front.right'], ['-back.left']),
          ...(ofSeam === undefined ? {} : { tolerance: ofSeam }),
        },
      ],
      more,
    );
  test('of the pattern holds for every seam, that of a seam before it', () => {
    expect(codes(pair(1.5))).toContain('seam-does-not-match');
    expect(codes(pair(1.5, { tolerance: 2 }))).not.toContain('seam-does-not-match');
    expect(codes(pair(1.5, { tolerance: 2 }, 1))).toContain('seam-does-not-match');
    expect(codes(pair(2.5, { tolerance: 2 }, 3))).not.toContain('seam-does-not-match');
  });
  test('holds for notches as for lengths, that of a seam before that of the pattern', () => {
    const marked = (ofSeam?: number) => {
      const { pieces, ...rest } = pair(0, { tolerance: 2 }, ofSeam);
      const mark = (edge: string, at: number) => ({ notches: [{ edge, at, style: 'single' as const }] });
      return {
        ...rest,
        pieces: [
          { ...pieces[0]!, ...mark('right', 80) },
          { ...pieces[1]!, ...mark('left', 118.5) },
        ],
      };
    };
    expect(codes(marked())).not.toContain('notches-do-not-meet');
    expect(codes(marked(1))).toContain('notches-do-not-meet');
    expect(codes(marked(3))).not.toContain('notches-do-not-meet');
  });
  test('of one pattern is not taken for that of another with the same seams', () => {
    const { tolerance: _, ...strict } = pair(1.5, { tolerance: 2 });
    const lax = { ...strict, tolerance: 2 };
    expect(codes(strict)).toContain('seam-does-not-match');
    expect(codes(lax)).not.toContain('seam-does-not-match');
    expect(codes(strict)).toContain('seam-does-not-match');
  });
});

describe('a piece that is turned back', () => {
  /** A neck of 100 mm whose side falls away at an angle from square, and its facing with ends at another. */
  const faced = (slant: number, facingSlant: number, role: 'facing' | 'lining' = 'facing') => {
    const panel = (name: string, lean: number, more: Partial<Piece> = {}): Piece => ({
      ...pieceOf(name, [
        side('neck', [
          [0, 0],
          [100, 0],
        ]),
        side('end', [
          [100, 0],
          [100 + lean, 50],
        ]),
        side('inner', [
          [100 + lean, 50],
          [0, 50],
        ]),
        side(
          'centre',
          [
            [0, 50],
            [0, 0],
          ],
          { kind: 'fold' },
        ),
      ]),
      ...more,
    });
    return patternOf(
      [panel('front', slant), panel('facing', facingSlant, { role })],
      [seam('neck', ['facing.neck'], ['front.neck'])],
    );
  };
  test('lies along what it lies on, however that slants', () => {
    for (const slant of [-30, 0, 12, 40]) {
      const found = codes(faced(slant, slant));
      expect(found).not.toContain('joined-line-broken');
      expect(found).not.toContain('turned-back-end-off');
    }
  });
  test('is told where it does not, and nothing is to be trued', () => {
    const [found] = of(faced(20, 0), 'turned-back-end-off');
    expect(found).toMatchObject({ severity: 'warning', where: { piece: 'facing', edge: 'end' } });
    expect(found!.figures!.angleDeg).toBeCloseTo((Math.atan(20 / 50) * 180) / Math.PI, 9);
    expect(toldFinding(found!)).toMatchObject({
      message:
        'Turned under, the end of the facing does not lie along the end of the front: it is 21.8° out.',
      remedy:
        'Give the facing the shape of what it lies under there, or draft it again from the pattern as it is now.',
    });
  });
  test('may be on either side of the seam, a lining too', () => {
    const { seams, ...pattern } = faced(20, 0, 'lining');
    const turned = { ...seams[0]!, a: seams[0]!.b, b: seams[0]!.a };
    expect(of({ ...pattern, seams: [turned] }, 'turned-back-end-off')[0]!.where.piece).toBe('facing');
  });
  test('is compared while its own end is free, whatever is sewn to the end that it lies on', () => {
    const pattern = faced(20, 0);
    const length = Math.hypot(20, 50);
    const sewn = (end: string, mm: number) => ({
      ...pattern,
      pieces: [...pattern.pieces, rectangle('other', 40, mm)],
      seams: [...pattern.seams, seam('ends', [end], ['other.right'])],
    });
    for (const seams of [pattern.seams, pattern.seams.map(s => ({ ...s, a: s.b, b: s.a }))]) {
      const turned = (end: string, mm: number) => {
        const all = sewn(end, mm);
        return of({ ...all, seams: [...seams, all.seams.at(-1)!] }, 'turned-back-end-off');
      };
      expect(turned('front.end', length)).toHaveLength(1);
      expect(turned('facing.end', 50)).toEqual([]);
    }
  });
  test.each([
    [4, 0],
    [5, 1],
  ])('may lie %d in 50 off: %d findings', (lean, count) => {
    expect(of(faced(lean, 0), 'turned-back-end-off')).toHaveLength(count);
  });
});

describe('pleats', () => {
  const pleated = (lift: number) =>
    pieceOf('skirt', [
      side('waist', [
        [0, 0],
        [100, 0],
      ]),
      {
        type: 'pleat',
        name: 'front',
        kind: 'knife',
        mouth: polyline(at(100, 0), at(130, 0)),
        towards: 'start',
        stitched: 40,
      },
      side('waist', [
        [130, 0],
        [250, lift],
      ]),
      side('side', [
        [250, lift],
        [250, 500],
      ]),
      side(
        'hem',
        [
          [250, 500],
          [0, 500],
        ],
        { kind: 'hem' },
      ),
      side(
        'centre',
        [
          [0, 500],
          [0, 0],
        ],
        { kind: 'fold' },
      ),
    ]);
  const waisted = (lift: number) =>
    patternOf(
      [pleated(lift), rectangle('band', 100 + Math.hypot(120, lift), 40)],
      [seam('waist', ['skirt.waist'], ['-band.bottom'])],
    );
  test('an edge walks at its pleated length', () => {
    expect(codes(waisted(0))).not.toContain('seam-does-not-match');
  });
  test('folded, the edge must run on across the pleat', () => {
    const across = (lift: number) =>
      of(waisted(lift), 'joined-line-broken').filter(f => 'pleat' in (f.about!.closed as object));
    expect(across(0)).toEqual([]);
    // The far side rises by 30 in 120: a turn of atan(1/4) in the folded waist.
    const [found] = across(-30);
    expect(found!.about!.closed).toEqual({ piece: 'skirt', pleat: 'front' });
    expect(Math.abs(found!.figures!.cornerDeg!)).toBeCloseTo((Math.atan(1 / 4) * 180) / Math.PI, 9);
    expect(toldFinding(found!).message).toBe(
      'With the front pleat of the skirt folded, the waist of the skirt makes a dip of 14°.',
    );
  });
});
