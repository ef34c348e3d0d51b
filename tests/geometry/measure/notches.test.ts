import { type Notch, type Pattern, type Piece, walkSeam } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { dart, patternOf, pieceOf, rectangle, seam, side } from '../../support/polygon-piece.js';
import { toldFinding } from '../../support/told.js';

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
  expect(finding!.figures).toMatchObject({ aMm: 100, bMm: 97, differenceMm: 3 });
  expect(finding!.figures!.offMm).toBeCloseTo(3, 9);
  expect(toldFinding(finding!).remedy).toBe(
    'Move the single notch on the right of the b by 3 mm away from the beginning of the seam.',
  );
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
  expect(finding!.where.piece).toBe('b');
  const [turned] = found(strips(300, [[96], [200, 'double']], 312, [[106], [206, 'double']], -12));
  expect(turned!.figures!.easeMm).toBeCloseTo(4, 9);
  expect(turned!.where.piece).toBe('a');
});

test('ease taken back only to make good a notch that is off is told with that notch, not again', () => {
  // With 10 to ease, 20 are in at the first pair: 15 of these are taken back up to the second, which is right.
  const findings = found(strips(310, [[120], [205, 'double']], 300, [[100], [200, 'double']], 10));
  expect(findings.map(f => f.code)).toEqual(['notches-do-not-meet']);
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

test('notches of different styles are no partners, however near', () => {
  expect(found(strips(300, [[100]], 300, [[100, 'double']])).map(f => f.code)).toEqual([
    'notch-without-partner',
    'notch-without-partner',
  ]);
});

test('the nearer of two partners is taken, on whichever side there are two', () => {
  const walk = strips(300, [[195]], 300, [[100], [200]]);
  expect(walkSeam(walk, walk.seams[0]!).stretches.map(s => [s.aMm, s.bMm])).toEqual([
    [195, 200],
    [105, 100],
  ]);
});

test('ease of less than a millimetre taken back is told of the longer side, too', () => {
  const [back] = found(strips(310, [[105.9], [205, 'double']], 300, [[100], [200, 'double']], 10));
  expect(back!.figures!.easeMm).toBeCloseTo(-0.9, 9);
  expect(back!.where.piece).toBe('b');
  const [turned] = found(strips(300, [[100], [200, 'double']], 310, [[105.9], [205, 'double']], -10));
  expect(turned!.figures!.easeMm).toBeCloseTo(0.9, 9);
  expect(turned!.where.piece).toBe('a');
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
  expect(finding).toMatchObject({
    severity: 'warning',
    code: 'notch-misses-seam',
    where: { piece: 'sleeve', edge: 'right' },
    figures: { notchMm: 206, crossingMm: 190 },
  });
  expect(finding!.figures!.offMm).toBeCloseTo(4, 9);
});

test('the cap may be either side of the seam, within the same tolerance', () => {
  const capped = (top: number) => {
    const seamed = seam('s', ['front.right', 'back.right'], ['sleeve.right'], { mm: -12 });
    const sleeve = rectangle('sleeve', 50, 412, { notches: [{ edge: 'right', at: top, style: 'single' }] });
    return patternOf([sleeve, rectangle('front', 50, 190), rectangle('back', 50, 210)], [seamed]);
  };
  // The crossing lies at 190: the 12 mm of ease may lie before it or behind it, and 0.8 mm are sewn in.
  for (const top of [189.3, 196, 202.7]) expect(found(capped(top))).toEqual([]);
  for (const [top, offMm] of [
    [206, 4],
    [188, -2],
  ] as const)
    expect(found(capped(top))).toMatchObject([
      { code: 'notch-misses-seam', figures: { crossingMm: 190, offMm: expect.closeTo(offMm, 9) } },
    ]);
});

test('a lone notch belongs to the nearest of several crossing seams, its place eased like the rest', () => {
  const against = (own: number, at: number, widths: readonly number[], ease: number) =>
    patternOf(
      [
        rectangle('sleeve', 50, own, { notches: [{ edge: 'right', at, style: 'single' }] }),
        ...widths.map((width, i) => rectangle(`p${i}`, 50, width)),
      ],
      [
        seam(
          's',
          ['sleeve.right'],
          widths.map((_, i) => `p${i}.right`),
          { mm: ease },
        ),
      ],
    );
  for (const [at, crossingMm] of [
    [105, 100],
    [205, 200],
    [195, 200],
  ] as const)
    expect(found(against(300, at, [100, 100, 100], 0))).toMatchObject([
      { code: 'notch-misses-seam', figures: { crossingMm, offMm: at - crossingMm } },
    ]);
  // Half way between two of them it belongs to neither, and no more is said of it.
  expect(found(against(300, 150, [100, 100, 100], 0)).map(f => f.code)).toEqual(['notch-without-partner']);
  // Gathered to half its length: the crossing at 190 lies at 380 on this side.
  expect(found(against(800, 390, [190, 210], 400))).toEqual([]);
  expect(found(against(800, 190, [190, 210], 400)).map(f => f.code)).toEqual(['notch-without-partner']);
});

test('a drafted piece elsewhere changes nothing', () => {
  const { pieces, seams } = strips(300, [[100]], 300, []);
  const binding = rectangle('binding', 50, 300, { madeFor: [{ piece: 'a', edge: 'top' }] });
  expect(found(patternOf([binding, ...pieces], seams)).map(f => f.code)).toEqual(['notch-without-partner']);
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

/** Half a front whose neck stops 45 mm short of the fold, at an inset; its neck measures 150. */
const inset = pieceOf(
  'front',
  [
    side('inset', [
      [0, 80],
      [45, 0],
    ]),
    side('neck', [
      [45, 0],
      [195, 0],
    ]),
    side('rest', [
      [195, 0],
      [195, 300],
      [0, 300],
    ]),
    side(
      'centre-front',
      [
        [0, 300],
        [0, 80],
      ],
      { kind: 'fold' },
    ),
  ],
  { notches: [{ edge: 'neck', at: 75, style: 'single' }] },
);

// By hand: the band is 300 long, 90 of it over the gap; 105 are stretched to 150 on each side, so half of a neck side
// falls at 52.5 and at 300 − 52.5.
test('a band over a gap is sewn to nothing there, and its marks are held against the rest', () => {
  const banded = (first: number) => {
    const band = rectangle('band', 300, 30, {
      notches: [first, 247.5].map(at => ({ edge: 'top', at, style: 'single' })),
    });
    return patternOf([band, inset], [seam('s', ['band.top'], ['-front.neck', 'front.neck'], { mm: 0 })]);
  };
  const good = banded(52.5),
    walk = walkSeam(good, good.seams[0]!);
  expect(walk).toMatchObject({ aMm: 300, bMm: 300, matches: true, findings: [] });
  expect(walk.stretches.map(s => s.easeMm)).toEqual([-22.5, -45, -22.5]);
  expect(found(banded(140))).toHaveLength(1);
});

test('on whichever side of the seam the gap lies', () => {
  const band = (first: number) =>
    rectangle('band', 300, 30, {
      notches: [first, 247.5].map(at => ({ edge: 'top', at, style: 'single' as const })),
    });
  const turned = (first: number) =>
    patternOf([band(first), inset], [seam('s', ['-front.neck', 'front.neck'], ['band.top'])]);
  const walk = walkSeam(turned(52.5), turned(52.5).seams[0]!);
  expect(walk).toMatchObject({ aMm: 300, bMm: 300, matches: true, findings: [] });
  expect(walk.stretches.map(s => [s.from, s.to].map(p => (typeof p === 'string' ? p : p.notch)))).toEqual([
    ['beginning', 'single'],
    ['single', 'single'],
    ['single', 'end'],
  ]);
  expect(found(turned(140))).toHaveLength(1);
});

test('runs that a fold, a dart or a seam brings together leave no gap', () => {
  const whole = pieceOf('front', [
    side('neck', [
      [0, 0],
      [100, 0],
    ]),
    side('rest', [
      [100, 0],
      [100, 300],
      [0, 300],
    ]),
    side(
      'centre',
      [
        [0, 300],
        [0, 0],
      ],
      { kind: 'fold' },
    ),
  ]);
  const darted = pieceOf('back', [
    side('left', [
      [0, 0],
      [90, 0],
    ]),
    dart('d', [90, 0], [100, 90], [110, 0]),
    side('right', [
      [110, 0],
      [200, 0],
    ]),
    side('rest', [
      [200, 0],
      [200, 300],
      [0, 300],
      [0, 0],
    ]),
  ]);
  const gaps = (pieces: Pattern['pieces'], a: readonly string[], seams: Pattern['seams'] = []) => {
    const s = seam('s', a, ['strip.right']);
    const { stretches } = walkSeam(patternOf([...pieces, rectangle('strip', 50, 200)], [s, ...seams]), s);
    return stretches[0]!.aMm;
  };
  expect(gaps([whole], ['-front.neck', 'front.neck'])).toBe(200);
  expect(gaps([darted], ['back.left', 'back.right'])).toBe(180);
  expect(gaps([inset], ['-front.neck', 'front.neck'])).toBe(390);
  const slit = pieceOf('slit', [
    side('left', [
      [0, 0],
      [90, 0],
    ]),
    side('down', [
      [90, 0],
      [100, 80],
    ]),
    side('up', [
      [100, 80],
      [110, 0],
    ]),
    side('right', [
      [110, 0],
      [200, 0],
    ]),
    side('rest', [
      [200, 0],
      [200, 300],
      [0, 300],
      [0, 0],
    ]),
  ]);
  expect(gaps([slit], ['slit.left', 'slit.right'])).toBe(200);
  expect(gaps([slit], ['slit.left', 'slit.right'], [seam('t', ['-slit.down'], ['slit.up'])])).toBe(180);
  // The same slit sewn in another piece, whose edges are named alike, closes nothing here.
  const twin = { ...slit, name: 'twin' };
  const across = ['slit.left', 'slit.right'];
  expect(gaps([slit, twin], across, [seam('t', ['-twin.down'], ['twin.up'])])).toBe(200);
  // Nor does it where each of its sides is sewn to something else, whichever is listed first and whichever way.
  for (const ends of [['twin.up'], ['-twin.up'], ['twin.down'], ['-twin.down']])
    for (const own of [['slit.down'], ['-slit.down'], ['slit.up'], ['-slit.up']]) {
      expect(gaps([slit, twin], across, [seam('t', ends, own)])).toBe(200);
      expect(gaps([slit, twin], across, [seam('t', own, ends)])).toBe(200);
    }
});

test('side seams of bodice and skirt that miss each other at the waist are noted', () => {
  const waisted = (skirtFront: number) => {
    const pieces = [rectangle('bodice', 200, 90), rectangle('bodice-back', 190, 90)];
    const skirts = [rectangle('skirt', skirtFront, 90), rectangle('skirt-back', 390 - skirtFront, 90)];
    const s = seam('waist', ['bodice.top', 'bodice-back.top'], ['skirt.top', 'skirt-back.top']);
    return walkSeam(patternOf([...pieces, ...skirts], [s]), s).findings;
  };
  expect(waisted(199.5)).toEqual([]);
  expect(waisted(195)[0]).toMatchObject({
    severity: 'note',
    code: 'crossing-seams-apart',
    figures: { offMm: 5 },
  });
  expect(waisted(150)).toEqual([]);
});

test('of several crossings the nearest are held together', () => {
  // Three panels above, three below: their seams at 40 and 150, and at 45 and 100.
  const row = (names: readonly string[], widths: readonly number[]) =>
    names.map((name, i) => rectangle(name, widths[i]!, 90));
  const pieces = [...row(['a', 'b', 'c'], [40, 110, 50]), ...row(['d', 'e', 'f'], [45, 55, 100])];
  const waist = seam('waist', ['a.top', 'b.top', 'c.top'], ['d.top', 'e.top', 'f.top']);
  const notes = walkSeam(patternOf(pieces, [waist]), waist).findings;
  // 150 lies farther than an inch from either of the others, whichever way.
  expect(notes.map(f => [f.figures!.aMm, f.figures!.bMm, f.figures!.offMm])).toEqual([[40, 45, -5]]);
  expect(toldFinding(notes[0]!).message).toBe(
    'On the waist seam, the seam before the top of the b and the seam before the top of the e cross 5 mm apart.',
  );
  const two = [...row(['g', 'h'], [100, 100]), ...row(['i', 'j', 'k'], [60, 50, 90])];
  const between = seam('waist', ['g.top', 'h.top'], ['i.top', 'j.top', 'k.top']);
  expect(
    walkSeam(patternOf(two, [between]), between).findings.map(f => [f.figures!.aMm, f.figures!.bMm]),
  ).toEqual([[100, 110]]);
  const later = seam('waist', ['d.top', 'f.top', 'e.top'], ['a.top', 'b.top', 'c.top']);
  // 45 is held with 40, 145 with 150.
  expect(
    walkSeam(patternOf(pieces, [later]), later).findings.map(f => [f.figures!.aMm, f.figures!.bMm]),
  ).toEqual([
    [45, 40],
    [145, 150],
  ]);
});

describe('what lies between runs of one piece', () => {
  const reach = (piece: Piece, a: readonly string[], seams: Pattern['seams'] = []) => {
    const s = seam('s', a, ['strip.right']);
    const pattern = patternOf([piece, rectangle('strip', 50, 200)], [s, ...seams]);
    return walkSeam(pattern, s).stretches[0]!.aMm;
  };
  const onFold = (left: boolean, stopsShort = 45) => {
    const x = (at: number) => (left ? at : 200 - at);
    const [centre, inner, outer] = [x(0), x(stopsShort), x(195)];
    // The mirror image is drawn the other way round.
    const drawn = (...points: readonly (readonly [number, number])[]) =>
      left ? points : [...points].reverse();
    const neck = side('neck', drawn([inner, 0], [outer, 0]));
    const dip = side('inset', drawn([centre, 80], [inner, 0]));
    const far = side('far', drawn([outer, 0], [outer, 300]));
    const hem = side('foot', drawn([outer, 300], [centre, 300]));
    const fold = side('fold', drawn([centre, 300], [centre, 80]), { kind: 'fold' });
    return pieceOf('front', left ? [dip, neck, far, hem, fold] : [neck, dip, fold, hem, far]);
  };
  test('the gap to the mirror image is the same on whichever side the fold lies', () => {
    expect(reach(onFold(true), ['-front.neck', 'front.neck'])).toBe(390);
    expect(reach(onFold(false), ['front.neck', '-front.neck'])).toBe(390);
    // What snapping leaves between a neck and its fold, 0.02 mm, is none.
    expect(reach(onFold(true, 0.02), ['-front.neck', 'front.neck'])).toBeCloseTo(2 * 194.98, 9);
  });
  test('a centre seam above the fold brings both halves together', () => {
    const back = pieceOf('front', [
      side('neck', [
        [20, 0],
        [120, 0],
      ]),
      side('rest', [
        [120, 0],
        [120, 300],
        [0, 300],
      ]),
      side(
        'fold',
        [
          [0, 300],
          [0, 100],
        ],
        { kind: 'fold' },
      ),
      side('centre-back', [
        [0, 100],
        [20, 0],
      ]),
    ]);
    expect(reach(back, ['-front.neck', 'front.neck'])).toBe(200);
  });
  test('what snapping left open at a corner is no gap', () => {
    const snapped = pieceOf('front', [
      side('top', [
        [0, 0],
        [100, 0],
      ]),
      side('right', [
        [100, 0.03],
        [100, 60],
      ]),
      side('rest', [
        [100, 60],
        [0, 60],
        [0, 0],
      ]),
    ]);
    expect(reach(snapped, ['front.top', 'front.right'])).toBeCloseTo(159.97, 9);
  });
  test('edges that do not touch are bridged straight, whichever way they are travelled', () => {
    const piece = rectangle('front', 100, 60);
    expect(reach(piece, ['front.top', 'front.right'])).toBe(160);
    expect(reach(piece, ['front.top', '-front.bottom'])).toBe(200 + Math.hypot(100, 60));
    expect(reach(piece, ['front.top', 'front.bottom'])).toBe(260);
    // The same edge twice, as it is cut twice: from its end back to its start.
    expect(reach(piece, ['front.top', 'front.top'])).toBe(300);
  });
  test('a seam elsewhere on the piece closes no gap', () => {
    const slit = pieceOf('slit', [
      side('left', [
        [0, 0],
        [90, 0],
      ]),
      side('notch', [
        [90, 0],
        [100, 80],
        [110, 0],
      ]),
      side('right', [
        [110, 0],
        [200, 0],
      ]),
      side('down', [
        [200, 0],
        [200, 300],
      ]),
      side('foot', [
        [200, 300],
        [0, 300],
      ]),
      side('up', [
        [0, 300],
        [0, 0],
      ]),
    ]);
    const elsewhere = [
      seam('ring', ['slit.up'], ['-slit.down']),
      seam('strip', ['strip.top'], ['slit.down']),
      seam('other', ['slit.foot'], ['strip.left']),
    ];
    expect(reach(slit, ['slit.left', 'slit.right'], elsewhere)).toBe(200);
    // Its sides sewn to one another bring the outer ends together, not the inner ones.
    expect(reach(slit, ['slit.right', 'slit.left'], [elsewhere[0]!])).toBe(180);
  });
  const partOf = (part: { readonly from: number; readonly to: number }) => {
    const s = seam('s', ['broken.neck'], ['strip.top']);
    return { ...s, a: s.a.map(r => ({ ...r, part })) };
  };
  test('a notch where a part of an edge begins lies at the beginning of the seam', () => {
    const front = rectangle('front', 300, 400, { notches: [{ edge: 'top', at: 60, style: 'single' }] });
    const yoke = rectangle('yoke', 100, 60, { notches: [{ edge: 'top', at: 0, style: 'single' }] });
    const s = seam('s', ['front.top'], ['yoke.top']);
    const part = { ...s, a: s.a.map(r => ({ ...r, part: { from: 60, to: 160 } })) };
    const walk = walkSeam(patternOf([front, yoke], [part]), part);
    expect(walk.findings).toEqual([]);
    expect(walk.stretches.map(x => x.aMm)).toEqual([0, 100]);
    // Notches before and beyond the part belong to other seams.
    // One at its far end belongs to it.
    const last = walkSeam(
      patternOf(
        [
          { ...front, notches: [{ edge: 'top', at: 160, style: 'double' }] },
          { ...yoke, notches: [{ edge: 'top', at: 100, style: 'double' }] },
        ],
        [part],
      ),
      part,
    );
    expect(last.stretches.map(x => x.aMm)).toEqual([100, 0]);
    // A part that ends on the way is bridged straight from there to what comes next.
    const onward = { ...s, a: [part.a[0]!, { piece: 'front', edge: 'right', reversed: false }] };
    expect(walkSeam(patternOf([front, yoke], [onward]), onward).stretches.at(-1)!.aMm).toBeGreaterThan(400);
    expect(walkSeam(patternOf([front, rectangle('yoke', 100, 60)], [onward]), onward).stretches[0]!.aMm).toBe(
      100 + 140 + 400,
    );
    const others = [10, 60, 220].map(at => ({ edge: 'top', at, style: 'single' as const }));
    const more = walkSeam(patternOf([{ ...front, notches: others }, yoke], [part]), part);
    expect(more).toMatchObject({ findings: [], stretches: walk.stretches });
  });
  test('an edge whose two parts an inset keeps apart is bridged within', () => {
    const broken = pieceOf('broken', [
      side('neck', [
        [0, 0],
        [80, 0],
      ]),
      side('inset', [
        [80, 0],
        [100, 40],
        [120, 0],
      ]),
      side('neck', [
        [120, 0],
        [200, 0],
      ]),
      side('rest', [
        [200, 0],
        [200, 300],
        [0, 300],
        [0, 0],
      ]),
    ]);
    expect(reach(broken, ['broken.neck'])).toBe(200);
    expect(reach(broken, ['-broken.neck'])).toBe(200);
    // An inset whose sides snapping left 0.04 mm apart keeps nothing apart.
    const closed = pieceOf('closed', [
      side('neck', [
        [0, 0],
        [80, 0],
      ]),
      side('inset', [
        [80, 0],
        [80.02, 40],
        [80.04, 0],
      ]),
      side('neck', [
        [80.04, 0],
        [200, 0],
      ]),
      side('rest', [
        [200, 0],
        [200, 300],
        [0, 300],
        [0, 0],
      ]),
    ]);
    expect(reach(closed, ['closed.neck'])).toBeCloseTo(199.96, 9);
    const marked = {
      ...broken,
      notches: [30, 130].map(at => ({ edge: 'neck', at, style: 'single' as const })),
    };
    const strip = rectangle('strip', 50, 200, {
      notches: [30, 170].map(at => ({ edge: 'right', at, style: 'single' as const })),
    });
    const s = seam('s', ['broken.neck'], ['strip.right'], { mm: -40 });
    const walk = walkSeam(patternOf([marked, strip], [s]), s);
    // The far notch lies 130 mm along the neck and 40 mm of gap on.
    expect(walk.stretches.map(x => [x.aMm, x.bMm])).toEqual([
      [30, 30],
      [140, 140],
      [30, 30],
    ]);
    expect(walk).toMatchObject({ aMm: 160, bMm: 200, matches: true });
    // A part that ends before the inset, or begins beyond it, has no gap.
    for (const part of [
      { from: 0, to: 80 },
      { from: 20, to: 70 },
      { from: 80, to: 160 },
    ])
      expect(
        walkSeam(patternOf([broken, strip], [partOf(part)]), partOf(part)).stretches.at(-1)!.aMm,
      ).toBeCloseTo(part.to - part.from, 9);
    const across = partOf({ from: 50, to: 110 });
    expect(walkSeam(patternOf([broken, strip], [across]), across).stretches[0]!.aMm).toBeCloseTo(100, 9);
    const back = seam('s', ['-broken.neck'], ['-strip.right'], { mm: -40 });
    expect(walkSeam(patternOf([marked, strip], [back]), back).stretches.map(x => x.aMm)).toEqual([
      30, 140, 30,
    ]);
  });
});

test('what is told of notches, word for word', () => {
  const told = (pattern: Pattern) => walkSeam(pattern, pattern.seams[0]!).findings.map(f => toldFinding(f));
  expect(told(strips(300, [[100, 'double', 'back']], 300, [[97, 'double']]))).toMatchObject([
    {
      message:
        'The double notch on the right of the b lies 97 mm from the beginning of the s seam, its partner, ' +
        'the notch "back" on the right of the a, 100 mm: they miss each other by 3 mm.',
    },
  ]);
  expect(told(strips(300, [[97]], 300, [[100]]))[0]!.remedy).toBe(
    'Move the single notch on the right of the b by 3 mm towards the beginning of the seam.',
  );
  expect(told(strips(300, [[100], [200, 'double']], 300, []))).toMatchObject([
    {
      message:
        'The single notch on the right of the a and the double notch on the right of the a have no partner ' +
        'on the other side of the s seam.',
      remedy: 'Mark the same distance on the other side, or leave the notch out.',
    },
  ]);
  expect(told(strips(312, [[106], [206, 'double']], 300, [[96], [200, 'double']], 12))).toMatchObject([
    {
      message:
        'Just before the double notch on the right of the b that side is 4 mm the longer, ' +
        'where the s seam as a whole is eased the other way.',
      remedy: 'Move that notch back by 4 mm, or the double notch on the right of the a forward.',
    },
  ]);
  const capped = (top: number) =>
    patternOf(
      [
        rectangle('sleeve', 50, 400, { notches: [{ edge: 'right', at: top, style: 'single' }] }),
        rectangle('front', 50, 190),
        rectangle('back', 50, 210),
      ],
      [seam('s', ['sleeve.right'], ['front.right', 'back.right'])],
    );
  expect(told(capped(193))[0]).toMatchObject({
    message:
      'The single notch on the right of the sleeve misses the seam that meets the s seam on the other side by 3 mm.',
    remedy: 'Move it by 3 mm towards the beginning of the seam.',
  });
  expect(told(capped(187))[0]!.remedy).toBe('Move it by 3 mm away from the beginning of the seam.');
});
