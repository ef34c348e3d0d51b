import { type Pattern, type Piece, type TakenUp, walkSeam, walkSeams } from '@paperhinge/geometry';
import { transformedPath } from '@paperhinge/geometry/paths';
import { type Affine, apply, compose, rotation, translation } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { patternOf, pieceOf, rectangle, seam, side } from '../../support/polygon-piece.js';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldFinding } from '../../support/told.js';

test('the seams of the shift all match, and nothing is found', () => {
  for (const walk of walkSeams(shiftPattern())) {
    expect(walk.matches, walk.seam).toBe(true);
    expect(walk.findings, walk.seam).toEqual([]);
  }
});

test('a seam is a minus b, over all its runs', () => {
  const pattern = patternOf(
    [rectangle('front', 100, 300), rectangle('upper', 80, 120), rectangle('lower', 80, 176)],
    [seam('side', ['front.right'], ['-upper.left', '-lower.left'])],
  );
  const walk = walkSeam(pattern, pattern.seams[0]!);
  expect(walk).toMatchObject({ aMm: 300, bMm: 296, differenceMm: 4, easeWantedMm: 0, matches: false });
});

test('a seam that does not match is a fault that says where, by how much and what to do', () => {
  const pattern = patternOf(
    [rectangle('front', 100, 303.2), rectangle('back', 80, 300)],
    [seam('side', ['front.right'], ['-back.left'])],
  );
  const fault = walkSeam(pattern, pattern.seams[0]!).findings.find(f => f.severity === 'fault')!;
  expect(fault.code).toBe('seam-does-not-match');
  expect(fault.where).toEqual({ piece: 'front', edge: 'right' });
  expect(toldFinding(fault)).toMatchObject({
    message: 'The right of the front is 3.2 mm longer than the left of the back: 303.2 mm against 300 mm.',
    remedy:
      'Shorten the right of the front by 3.2 mm, or lengthen the left of the back by 3.2 mm. ' +
      'If the difference is meant, say so: set seam: { seam: side, ease: 3.2 mm }.',
  });
});

test('the fault lies between the notches where the sides part', () => {
  const notched = (name: string, height: number, first: number, second: number, edge: string): Piece =>
    rectangle(name, 100, height, { notches: [first, second].map(at => ({ edge, at, style: 'single' })) });
  const pattern = patternOf(
    [notched('front', 305, 100, 205, 'right'), notched('back', 300, 100, 200, 'right')],
    [seam('side', ['front.right'], ['back.right'])],
  );
  const walk = walkSeam(pattern, pattern.seams[0]!);
  expect(toldFinding(walk.findings[0]!).message).toContain(
    'between the single notch on the right of the front and the single notch on the right of the front.',
  );
  expect(walk.stretches.map(s => s.easeMm)).toEqual([0, 5, 0]);
});

describe('a fault names the edges to change, the longer to be shortened', () => {
  const fault = (a: number, b: number, ease = 0, takenUp?: TakenUp) => {
    const s = {
      ...seam('side', ['front.right'], ['-back.left'], { mm: ease }),
      ...(takenUp ? { takenUp } : {}),
    };
    const pattern = patternOf([rectangle('front', 100, a), rectangle('back', 80, b)], [s]);
    return walkSeam(pattern, s).findings[0]!;
  };
  const front = { piece: 'front', edge: 'right' },
    back = { piece: 'back', edge: 'left' };
  test.each([
    [303, 300, 0, 3, front, back],
    [297, 300, 0, -3, back, front],
    [315, 300, 12, 3, front, back],
    [309, 300, 12, -3, back, front],
    [291, 300, -12, 3, front, back],
    [285, 300, -12, -3, back, front],
  ])('%d against %d with %d of ease: off by %d', (a, b, ease, offMm, longer, shorter) => {
    const { figures, about, where } = fault(a, b, ease);
    expect(figures).toMatchObject({ aMm: a, bMm: b, differenceMm: a - b, easeWantedMm: ease, offMm });
    expect(about).toMatchObject({ longer: [longer], shorter: [shorter], shorten: longer, lengthen: shorter });
    expect(where).toEqual(longer);
  });
  test('by less than a millimetre, too', () => {
    for (const [a, b] of [
      [300.9, 300],
      [300, 300.9],
    ] as const) {
      const { about } = fault(a, b);
      expect(about).toMatchObject(
        a > b ? { shorten: front, lengthen: back } : { shorten: back, lengthen: front },
      );
    }
  });
  test('and all edges of a side, two of one piece among them', () => {
    const s = seam('round', ['front.right', '-front.top'], ['back.left']);
    const pattern = patternOf([rectangle('front', 100, 200), rectangle('back', 80, 290)], [s]);
    expect(walkSeam(pattern, s).findings[0]!.about!.longer).toEqual([
      { piece: 'front', edge: 'right' },
      { piece: 'front', edge: 'top' },
    ]);
  });
  test.each<[TakenUp | undefined, string]>([
    [undefined, 'eased in'],
    ['eased', 'eased in'],
    ['gathered', 'gathered in'],
    ['stretched', 'stretched'],
    ['pleated', 'pleated in'],
  ])('and how the difference is taken up: %s', (takenUp, words) => {
    expect(toldFinding(fault(315, 300, 12, takenUp)).message).toBe(
      `The right of the front is 3 mm too long for the left of the back, with the 12 mm to be ${words} allowed for: 315 mm against 300 mm.`,
    );
  });
  test('and the remedy shortens the one and lengthens the other', () => {
    expect(toldFinding(fault(297, 300)).remedy).toMatch(
      /^Shorten the left of the back by 3 mm, or lengthen the right of the front by 3 mm\./,
    );
  });
});

describe('of several edges the fault names the one where the sides part', () => {
  /** Two edges on each side, with a notch so far along each; the first stretch is 5 longer on side a. */
  const parted = (a: readonly number[], aMark: number, b: readonly number[], bMark: number) => {
    const mark = (at: number, edges: readonly number[], i: number) => {
      const along = i === 0 ? at : at - edges[0]!;
      return along > 0 && along <= edges[i]! ? [{ edge: 'right', at: along, style: 'single' as const }] : [];
    };
    const pieces = [a, b].flatMap((edges, k) =>
      edges.map((height, i) =>
        rectangle(`${'ab'[k]}${i}`, 50, height, { notches: mark(k === 0 ? aMark : bMark, edges, i) }),
      ),
    );
    const s = seam('s', ['a0.right', 'a1.right'], ['b0.right', 'b1.right']);
    const turned = seam(
      's',
      s.b.map(r => `${r.piece}.right`),
      s.a.map(r => `${r.piece}.right`),
    );
    const named = (one: typeof s) => {
      const { about } = walkSeam(patternOf(pieces, [one]), one).findings.find(f => f.severity === 'fault')!;
      const pieceOf = (thing: unknown) => (thing as { piece: string }).piece;
      return [pieceOf(about!.shorten), pieceOf(about!.lengthen)];
    };
    return [named(s), named(turned)];
  };
  test('in the first stretch', () => {
    expect(parted([97, 208], 95, [92, 208], 90)).toEqual([
      ['a0', 'b0'],
      ['a0', 'b0'],
    ]);
  });
  test('where the stretch ends in the second edge of one side', () => {
    expect(parted([93, 212], 95, [92, 208], 90)).toEqual([
      ['a1', 'b0'],
      ['a1', 'b0'],
    ]);
    expect(parted([97, 208], 95, [88, 212], 90)).toEqual([
      ['a0', 'b1'],
      ['a0', 'b1'],
    ]);
  });
  test('where the stretch ends with the first edge of both sides', () => {
    // The notches stand at the far ends of the first edges, where these meet the second.
    expect(parted([105, 200], 105, [100, 200], 100)).toEqual([
      ['a0', 'b0'],
      ['a0', 'b0'],
    ]);
  });
  test('in the last stretch', () => {
    expect(parted([100, 205], 90, [100, 200], 90)).toEqual([
      ['a1', 'b1'],
      ['a1', 'b1'],
    ]);
  });
});

test('the stretch where the sides part is told by the places between which it lies', () => {
  const strip = (name: string, height: number, at: number) =>
    rectangle(name, 50, height, { notches: [{ edge: 'right', at, style: 'double' }] });
  const told = (a: number, aMark: number) => {
    const s = seam('s', ['a.right'], ['b.right']);
    return toldFinding(walkSeam(patternOf([strip('a', a, aMark), strip('b', 300, 100)], [s]), s).findings[0]!)
      .message;
  };
  expect(told(305, 105)).toContain(
    'lies between the beginning of the seam and the double notch on the right of the a.',
  );
  expect(told(305, 100)).toContain(
    'lies between the double notch on the right of the a and the end of the seam.',
  );
  // Shared between both stretches, or with nothing to tell them apart, nothing is claimed.
  expect(told(306, 103)).not.toContain('lies between');
});

// 1/32 in, rounded as the trade says it: design.md §2.
test.each([
  [0.8, true],
  [0.81, false],
  [-0.8, true],
  [-0.81, false],
])('a difference of %d mm matches: %s', (difference, matches) => {
  const pattern = patternOf(
    [rectangle('front', 100, 300 + difference), rectangle('back', 80, 300)],
    [seam('side', ['front.right'], ['-back.left'])],
  );
  expect(walkSeam(pattern, pattern.seams[0]!).matches).toBe(matches);
});

test('ease wanted is allowed for, in millimetres and as a percentage of b', () => {
  const pieces = [rectangle('sleeve', 100, 312), rectangle('body', 80, 300)];
  const walked = (ease: { mm: number } | { percent: number }) => {
    const pattern = patternOf(pieces, [seam('armhole', ['sleeve.right'], ['-body.left'], ease)]);
    return walkSeam(pattern, pattern.seams[0]!);
  };
  expect(walked({ mm: 12 })).toMatchObject({ easeWantedMm: 12, matches: true });
  expect(walked({ percent: 4 })).toMatchObject({ easeWantedMm: 12, matches: true });
  expect(walked({ percent: 5 })).toMatchObject({ easeWantedMm: 15, matches: false });
});

test('a piece drafted for the seam is to be drafted again', () => {
  const band = rectangle('neckband', 260, 30, { madeFor: [{ piece: 'front', edge: 'top' }] });
  const pattern = patternOf(
    [band, rectangle('front', 250, 300)],
    [seam('neck', ['neckband.bottom'], ['front.top'])],
  );
  expect(toldFinding(walkSeam(pattern, pattern.seams[0]!).findings[0]!).remedy).toMatch(
    /^Draft the neckband again for the edges as they are now, or shorten/,
  );
});

test.each([
  [[], ['back.left']],
  [['front.right'], []],
])('a side without edges is refused: %j against %j', (a, b) => {
  const s = seam('side', a, b);
  const pattern = patternOf([rectangle('front', 100, 300), rectangle('back', 80, 300)], [s]);
  expect(refusalOf(() => walkSeam(pattern, s))).toMatchObject({
    code: 'empty-seam',
    where: { seam: 'side' },
  });
});

test('a seam that names a missing edge is refused with the edges there are', () => {
  const pattern = patternOf(
    [rectangle('front', 100, 300), rectangle('back', 80, 300)],
    [seam('side', ['front.sid'], ['back.left'])],
  );
  expect(refusalOf(() => walkSeams(pattern))).toMatchObject({
    code: 'unknown-edge',
    remedy: expect.stringContaining('right'),
  });
});

const shifts = fc.constant(shiftPattern());
const motion = fc
  .tuple(fc.double({ min: -3, max: 3, noNaN: true }), fc.double({ min: -900, max: 900, noNaN: true }))
  .map(([angle, x]) => compose(rotation(angle), translation({ x, y: -x / 2 })));

function moved(pattern: Pattern, name: string, map: Affine): Pattern {
  const path = (p: Parameters<typeof transformedPath>[0]) => transformedPath(p, map);
  return {
    ...pattern,
    pieces: pattern.pieces.map(piece =>
      piece.name !== name
        ? piece
        : {
            ...piece,
            outline: {
              parts: piece.outline.parts.map(part =>
                part.type === 'edge'
                  ? { ...part, path: path(part.path) }
                  : part.type === 'pleat'
                    ? part
                    : {
                        ...part,
                        legs: [path(part.legs[0]), path(part.legs[1])] as const,
                        apex: apply(map, part.apex),
                      },
              ),
            },
          },
    ),
  };
}

test('moving and turning a piece does not change the walk', () => {
  fc.assert(
    fc.property(shifts, motion, fc.constantFrom('front', 'back', 'sleeve'), (pattern, map, name) => {
      const before = walkSeams(pattern),
        after = walkSeams(moved(pattern, name, map));
      after.forEach((walk, i) => {
        expect(walk.differenceMm).toBeCloseTo(before[i]!.differenceMm, 7);
        expect(walk.findings).toEqual(before[i]!.findings);
      });
    }),
    { numRuns: 25 },
  );
});

test('swapping a and b negates the difference and where the ease sits', () => {
  const pattern = shiftPattern();
  for (const s of pattern.seams) {
    const mm = 'mm' in s.ease ? s.ease.mm : 0;
    const there = walkSeam(pattern, s),
      back = walkSeam(pattern, { ...s, a: s.b, b: s.a, ease: { mm: -mm } });
    expect(back.differenceMm).toBeCloseTo(-there.differenceMm, 9);
    expect(back.matches).toBe(there.matches);
    back.stretches.forEach((stretch, i) => {
      expect(stretch.easeMm).toBeCloseTo(-there.stretches[i]!.easeMm, 9);
    });
  }
});

test('walking a seam from its other end changes nothing but the order', () => {
  const pattern = shiftPattern();
  for (const s of pattern.seams) {
    const turned = (side: typeof s.a) => side.toReversed().map(r => ({ ...r, reversed: !r.reversed }));
    const walk = walkSeam(pattern, { ...s, a: turned(s.a), b: turned(s.b) });
    expect(walk.findings).toEqual([]);
    expect(walk.stretches.map(t => t.easeMm.toFixed(6).replace('-0.000000', '0.000000'))).toEqual(
      walkSeam(pattern, s)
        .stretches.map(t => t.easeMm.toFixed(6).replace('-0.000000', '0.000000'))
        .toReversed(),
    );
  }
});

test('an edge on both halves of the garment is listed twice, and counts twice', () => {
  const front = pieceOf('front', [
    side('neck', [
      [0, 0],
      [120, 0],
    ]),
    side('side', [
      [120, 0],
      [120, 300],
    ]),
    side(
      'hem',
      [
        [120, 300],
        [0, 300],
      ],
      { kind: 'hem' },
    ),
    side(
      'centre-front',
      [
        [0, 300],
        [0, 0],
      ],
      { kind: 'fold' },
    ),
  ]);
  const pattern = patternOf(
    [rectangle('band', 200, 30), front],
    [seam('neck', ['-band.bottom'], ['-front.neck', 'front.neck'], { mm: -40 })],
  );
  expect(walkSeam(pattern, pattern.seams[0]!)).toMatchObject({
    aMm: 200,
    bMm: 240,
    matches: true,
    findings: [],
  });
});

test('a walk tells how the longer side is taken up: eased, unless the seam says otherwise', () => {
  const pattern = (takenUp?: 'gathered') =>
    patternOf(
      [rectangle('front', 100, 240), rectangle('back', 100, 200)],
      [{ ...seam('side', ['front.right'], ['back.right'], { mm: 40 }), ...(takenUp ? { takenUp } : {}) }],
    );
  const walked = (drawn: Pattern) => walkSeam(drawn, drawn.seams[0]!);
  expect(walked(pattern())).toMatchObject({ takenUp: 'eased', matches: true });
  expect(walked(pattern('gathered'))).toMatchObject({ takenUp: 'gathered', matches: true });
});
