import { at, checkPattern, type OutlinePart, type Pattern, polyline, walkSeam } from '@paperhinge/geometry';
import { joinedLinesOf } from '@paperhinge/geometry/measure';
import { describe, expect, test } from 'vitest';
import { joinedLinesAcrossFolds } from '../../../packages/geometry/src/measure/joined-lines.js';
import { type Corner, dart, patternOf, pieceOf, rectangle, seam, side } from '../../support/polygon-piece.js';
import { toldFinding } from '../../support/told.js';

/** Half a skirt: 200 wide with a straight side; its hem leaves the fold `hemRise` mm below the side's end. */
const skirt = (
  name: string,
  hemRise: number,
  options: { readonly centre?: string; readonly length?: number } = {},
) => {
  const length = options.length ?? 500;
  return pieceOf(name, [
    side('waist', [
      [0, 0],
      [200, 0],
    ]),
    side('side', [
      [200, 0],
      [200, length],
    ]),
    side(
      'hem',
      [
        [200, length],
        [0, length + hemRise],
      ],
      { kind: 'hem' },
    ),
    side(
      options.centre ?? 'centre',
      [
        [0, length + hemRise],
        [0, 0],
      ],
      { kind: 'fold' },
    ),
  ]);
};
const sideSeam = (front: ReturnType<typeof skirt>, back: ReturnType<typeof skirt>): Pattern =>
  patternOf([front, back], [seam('side', ['front.side'], ['back.side'])]);
const degrees = (x: number) => (x * 180) / Math.PI;
const broken = (pattern: Pattern) => checkPattern(pattern).filter(f => f.code === 'joined-line-broken');

test('a hem that runs on across the side seam is not found', () => {
  expect(broken(sideSeam(skirt('front', 0), skirt('back', 0)))).toEqual([]);
});

// By hand: both hems rise by 40 in 200, so the corner is 2 atan(0.2); 30 mm out on each side the fair curve
// stands 30 sin(atan 0.2) / 2 = 2.9 mm from it.
test('a hem that comes to a corner at the side seam is found with the millimetres to add', () => {
  const pattern = sideSeam(skirt('front', 40), skirt('back', 40));
  const [, hem] = joinedLinesOf(pattern, pattern.seams[0]!, 0);
  expect(hem!.cornerDeg).toBeCloseTo(-degrees(2 * Math.atan(0.2)), 9);
  expect(hem!.takeMm).toBeCloseTo((-30 * Math.sin(Math.atan(0.2))) / 2, 9);
  expect(walkSeam(pattern, pattern.seams[0]!).findings.map(f => f.code)).toEqual(['joined-line-broken']);
  const [finding] = broken(pattern);
  expect(finding).toMatchObject({ severity: 'warning', where: { piece: 'front', edge: 'hem' } });
  expect(toldFinding(finding!)).toMatchObject({
    message: 'With the side seam sewn, the hem of the front and the hem of the back make a dip of 22.6°.',
    remedy:
      'Add 2.9 mm there, running out to nothing within 30 mm on both sides: true: { edges: [front.hem, back.hem] }.',
  });
});

test('a peak is taken off', () => {
  const pattern = sideSeam(skirt('front', -40), skirt('back', -40));
  expect(toldFinding(broken(pattern)[0]!).remedy).toBe(
    'Take 2.9 mm off there, running out to nothing within 30 mm on both sides: true: { edges: [front.hem, back.hem] }.',
  );
});

test.each([
  [4.9, 0],
  [5.1, 1],
])('a corner of %d degrees gives %d findings', (corner, count) => {
  const rise = 200 * Math.tan((corner * Math.PI) / 180);
  expect(broken(sideSeam(skirt('front', rise), skirt('back', 0)))).toHaveLength(count);
});

test('slants that complete each other run on', () => {
  expect(broken(sideSeam(skirt('front', 40), skirt('back', -40)))).toEqual([]);
});

test('sides of different length leave a step at the far end of the seam, told once, with the seam', () => {
  const pattern = sideSeam(skirt('front', 0), skirt('back', 0, { length: 503 }));
  const walk = walkSeam(pattern, pattern.seams[0]!);
  expect(walk.joined.map(line => [line.first.edge, line.stepMm])).toEqual([
    ['waist', 0],
    ['hem', -3],
  ]);
  expect(walk.findings.map(f => f.code)).toEqual(['seam-does-not-match']);
  expect(broken(pattern)).toEqual([]);
});

test('the step at the far end is what the ease wanted leaves over', () => {
  const plain = sideSeam(skirt('front', 0, { length: 512 }), skirt('back', 0));
  const eased = { ...plain, seams: [{ ...plain.seams[0]!, ease: { mm: 10 } }] };
  expect(walkSeam(eased, eased.seams[0]!).joined.map(line => line.stepMm)).toEqual([0, 2]);
  const matched = { ...plain, seams: [{ ...plain.seams[0]!, ease: { mm: 12 } }] };
  expect(walkSeam(matched, matched.seams[0]!).joined.map(line => line.stepMm)).toEqual([0, 0]);
});

test('a corner at the centre line is not compared', () => {
  const panel = (name: string) =>
    pieceOf(name, [
      side('neck', [
        [0, 0],
        [100, 60],
      ]),
      side('side', [
        [100, 60],
        [100, 300],
      ]),
      side(
        'hem',
        [
          [100, 300],
          [0, 260],
        ],
        { kind: 'hem' },
      ),
      side('centre-back', [
        [0, 260],
        [0, 0],
      ]),
    ]);
  const pattern = patternOf(
    [panel('left'), panel('right')],
    [seam('cb', ['left.centre-back'], ['right.centre-back'])],
  );
  expect(joinedLinesOf(pattern, pattern.seams[0]!, 0)).toEqual([]);
});

test('the ends of an edge that a dart interrupts are those of its first and last part', () => {
  const front = pieceOf('front', [
    side('top', [
      [0, 0],
      [200, 40],
    ]),
    side('side', [
      [200, 40],
      [200, 100],
    ]),
    dart('bust', [200, 100], [100, 120], [200, 140]),
    side('side', [
      [200, 140],
      [200, 300],
    ]),
    side(
      'hem',
      [
        [200, 300],
        [0, 260],
      ],
      { kind: 'hem' },
    ),
    side(
      'centre',
      [
        [0, 260],
        [0, 0],
      ],
      { kind: 'fold' },
    ),
  ]);
  const back = rectangle('back', 200, 220);
  const pattern = patternOf([front, back], [seam('side', ['front.side'], ['back.right'])]);
  // 40 in 200: the top falls towards the side, the hem rises from it.
  const slope = degrees(Math.atan(40 / 200));
  expect(joinedLinesOf(pattern, pattern.seams[0]!, 0).map(l => [l.first.edge, l.cornerDeg])).toEqual([
    ['top', expect.closeTo(-slope, 9)],
    ['hem', expect.closeTo(slope, 9)],
  ]);
});

test('a centre line counts where it meets the corner, on either piece, and nowhere else', () => {
  const panel = (name: string, centreAt?: number) =>
    pieceOf(
      name,
      [
        side('top', [
          [0, 0],
          [100, 40],
        ]),
        side('right', [
          [100, 40],
          [100, 300],
        ]),
        side('foot', [
          [100, 300],
          [0, 300],
        ]),
        side('left', [
          [0, 300],
          [0, 0],
        ]),
      ],
      {
        lines:
          centreAt === undefined
            ? []
            : [
                {
                  kind: 'style',
                  name: 'centre',
                  role: 'centre',
                  path: polyline(at(centreAt, 310), at(centreAt, -10)),
                },
              ],
      },
    );
  const compared = (one?: number, other?: number) => {
    const pattern = patternOf([panel('a', one), panel('b', other)], [seam('s', ['a.left'], ['b.left'])]);
    return joinedLinesOf(pattern, pattern.seams[0]!, 0).length;
  };
  expect(compared()).toBe(2);
  expect(compared(0)).toBe(0);
  expect(compared(undefined, 0)).toBe(0);
  expect(compared(50, 50)).toBe(2);
});

test('an edge sewn to its own mirror image lies on the centre line', () => {
  const leg = pieceOf('leg', [
    side('waist', [
      [0, 0],
      [100, 20],
    ]),
    side('outseam', [
      [100, 20],
      [100, 300],
    ]),
    side(
      'hem',
      [
        [100, 300],
        [0, 300],
      ],
      { kind: 'hem' },
    ),
    side('crotch', [
      [0, 300],
      [0, 0],
    ]),
  ]);
  const pattern = patternOf([leg], [seam('crotch', ['leg.crotch'], ['leg.crotch'])]);
  expect(joinedLinesOf(pattern, pattern.seams[0]!, 0)).toEqual([]);
});

/** A bodice half whose armhole leaves the shoulder and meets the side at the corners given. */
const bodice = (name: string, underarm: Corner, shoulderEnd: Corner) =>
  pieceOf(name, [
    side('neck', [
      [0, 20],
      [60, 0],
    ]),
    side('shoulder', [[60, 0], shoulderEnd]),
    side('armhole', [shoulderEnd, [150, 150], underarm]),
    side('side', [underarm, [200, 400]]),
    side(
      'hem',
      [
        [200, 400],
        [0, 400],
      ],
      { kind: 'hem' },
    ),
    side(
      'centre',
      [
        [0, 400],
        [0, 20],
      ],
      { kind: 'fold' },
    ),
  ]);

test('armholes are compared across shoulder and side where a sleeve is sewn to both in one run', () => {
  const front = bodice('front', [200, 150], [150, 0]),
    back = bodice('back', [200, 190], [150, 0]);
  const sleeve = pieceOf('sleeve', [
    side('cap', [
      [0, 0],
      [200, -100],
      [400, 0],
    ]),
    side('underarm-front', [
      [400, 0],
      [400, 300],
    ]),
    side(
      'hem',
      [
        [400, 300],
        [0, 300],
      ],
      { kind: 'hem' },
    ),
    side('underarm-back', [
      [0, 300],
      [0, 0],
    ]),
  ]);
  const seams = [
    seam('shoulder', ['front.shoulder'], ['back.shoulder']),
    seam('side', ['front.side'], ['back.side']),
    seam('underarm', ['sleeve.underarm-front'], ['-sleeve.underarm-back']),
    seam('armhole', ['-sleeve.cap'], ['-front.armhole', 'back.armhole']),
  ];
  const pattern = patternOf([front, back, sleeve], seams);
  const lines = (i: number) => joinedLinesOf(pattern, seams[i]!, 0).map(l => [l.first.edge, l.second.edge]);
  expect(lines(0)).toEqual([
    ['neck', 'neck'],
    ['armhole', 'armhole'],
  ]);
  // The armhole side is a ring: its last run meets its first at the side seam.
  expect(lines(1)).toEqual([
    ['armhole', 'armhole'],
    ['hem', 'hem'],
  ]);
  expect(lines(2)).toEqual([
    ['cap', 'cap'],
    ['hem', 'hem'],
  ]);
  expect(lines(3)).toEqual([]);
  // By hand: the back armhole meets its side at 90° + atan(40 / 50), the front at 90°: a dip.
  const [underarm] = joinedLinesOf(pattern, seams[1]!, 0);
  expect(underarm!.cornerDeg).toBeCloseTo(-degrees(Math.atan(40 / 50)), 6);
});

test('neighbours sewn in different seams are not compared', () => {
  const front = bodice('front', [200, 150], [150, 0]),
    back = bodice('back', [200, 190], [150, 0]);
  const seams = [seam('side', ['front.side'], ['back.side']), seam('one', ['front.armhole'], ['back.neck'])];
  const pattern = patternOf([front, back], seams);
  expect(joinedLinesOf(pattern, seams[0]!, 0).map(l => l.first.edge)).toEqual(['hem']);
});

test('a side with a dart is compared across its closed mouth', () => {
  // Closed, the two parts of the side meet at 180° only if each leans by half the dart: here they do not.
  const front = (lean: number) =>
    pieceOf('front', [
      side('top', [
        [0, 0],
        [200 - lean, 0],
      ]),
      side('side-upper', [
        [200 - lean, 0],
        [200, 100],
      ]),
      dart('bust', [200, 100], [100, 120], [200, 140]),
      side('side-lower', [
        [200, 140],
        [200 - lean, 240],
      ]),
      side(
        'hem',
        [
          [200 - lean, 240],
          [0, 240],
        ],
        { kind: 'hem' },
      ),
      side(
        'centre',
        [
          [0, 240],
          [0, 0],
        ],
        { kind: 'fold' },
      ),
    ]);
  const found = (lean: number) => {
    const pattern = patternOf(
      [front(lean), skirt('back', 0)],
      [seam('side', ['front.side-upper', 'front.side-lower'], ['back.side'])],
    );
    return broken(pattern).filter(f => f.where.edge === 'side-upper');
  };
  // Angle at each mouth end: 90° + atan(20/100) − atan(lean/100).
  expect(found(20)).toEqual([]);
  const [finding] = found(0);
  expect(finding!.figures!.cornerDeg).toBeCloseTo(180 - 2 * (90 + degrees(Math.atan(0.2))), 6);
  expect(toldFinding(finding!).message).toBe(
    'With the bust dart of the front sewn, the side upper of the front and the side lower of the front make a dip of 22.6°.',
  );
});

test('an edge that a dart interrupts is compared with itself', () => {
  const piece = pieceOf('front', [
    side('top', [
      [0, 0],
      [200, 0],
    ]),
    side('side', [
      [200, 0],
      [200, 100],
    ]),
    dart('bust', [200, 100], [100, 120], [200, 141.5]),
    side('side', [
      [200, 141.5],
      [200, 240],
    ]),
    side(
      'hem',
      [
        [200, 240],
        [0, 240],
      ],
      { kind: 'hem' },
    ),
    side(
      'centre',
      [
        [0, 240],
        [0, 0],
      ],
      { kind: 'fold' },
    ),
  ]);
  const [finding] = broken(patternOf([piece]));
  expect(toldFinding(finding!).message).toBe(
    'With the bust dart of the front sewn, the side of the front makes a dip of 23.4°.',
  );
});

test('the findings of a walk hold its joined lines', () => {
  const pattern = sideSeam(skirt('front', 40), skirt('back', 40));
  expect(walkSeam(pattern, pattern.seams[0]!).findings.map(f => f.code)).toEqual(['joined-line-broken']);
});

describe('lines across darts', () => {
  /** A waist in two edges on either side of a dart, leaning against each other when the dart is shut. */
  const skirtWith = (more: readonly OutlinePart[] = []) =>
    pieceOf('skirt', [
      side('waist-side', [
        [0, 0],
        [100, 0],
      ]),
      dart('first', [100, 0], [112, 120], [124, 0]),
      ...more,
      side('waist-centre', [
        [more.length > 0 ? 148 : 124, 0],
        [240, 0],
      ]),
      side('rest', [
        [240, 0],
        [240, 500],
        [0, 500],
        [0, 0],
      ]),
    ]);
  const bands = (...edges: readonly string[]) =>
    edges.map((edge, i) => seam(`s${i}`, [`skirt.${edge}`], [`band${i}.bottom`]));
  const strips = [rectangle('band0', 100, 30), rectangle('band1', 116, 30)];
  test('are compared where both are unsewn', () => {
    expect(broken(patternOf([skirtWith()]))).toHaveLength(1);
  });
  test('or follow one another in one side of a seam', () => {
    const one = seam('waist', ['skirt.waist-side', 'skirt.waist-centre'], ['band0.bottom']);
    expect(broken(patternOf([skirtWith(), ...strips], [one])).map(f => f.about!.closed)).toEqual([
      { piece: 'skirt', dart: 'first' },
    ]);
  });
  test('not where they are sewn in different seams, or one of them is not sewn', () => {
    const apart = patternOf([skirtWith(), ...strips], bands('waist-side', 'waist-centre'));
    const half = patternOf([skirtWith(), ...strips], bands('waist-side'));
    for (const pattern of [apart, half])
      expect(broken(pattern).filter(f => 'dart' in (f.about!.closed as object))).toEqual([]);
  });
  test('not where another dart begins where one ends', () => {
    const twice = skirtWith([dart('second', [124, 0], [136, 120], [148, 0])]);
    expect(broken(patternOf([twice]))).toEqual([]);
    // Even where no seam is listed for what lies beyond the second.
    const listed = patternOf([twice, ...strips], bands('rest'));
    expect(joinedLinesAcrossFolds(listed, twice)).toEqual([]);
  });
  test('the fair line over a closed dart is no longer than the shorter line beside it', () => {
    const beside = (before: number, after: number) =>
      pieceOf('skirt', [
        side('top', [
          [100 - before, 0],
          [100, 0],
        ]),
        dart('waist', [100, 0], [110, 80], [120, 0]),
        side('top', [
          [120, 0],
          [120 + after, 0],
        ]),
        side('rest', [
          [120 + after, 0],
          [120, 300],
          [100 - before, 0],
        ]),
      ]);
    const reach = (before: number, after: number) => {
      const piece = beside(before, after);
      const [line] = joinedLinesAcrossFolds(patternOf([piece]), piece);
      // Each side of the mouth leans by atan(10 / 80): closed they dip by twice that.
      expect(line!.takeMm).toBeCloseTo((-line!.blendMm * Math.sin(Math.atan(10 / 80))) / 2, 9);
      return line!.blendMm;
    };
    expect(reach(12, 80)).toBeCloseTo(12, 9);
    expect(reach(80, 12)).toBeCloseTo(12, 9);
    expect(reach(80, 80)).toBe(30);
  });
  test('a dart whose legs differ steps by as much', () => {
    const legs = (first: number, second: number) =>
      pieceOf('skirt', [
        side('top', [
          [0, 0],
          [100, 0],
        ]),
        dart('uneven', [100, 0], [100, first], [100, first - second]),
        side('top', [
          [100, first - second],
          [240, first - second],
        ]),
        side('rest', [
          [240, first - second],
          [240, 500],
          [0, 500],
          [0, 0],
        ]),
      ]);
    expect(broken(patternOf([legs(100, 99.3)]))).toEqual([]);
    const told = toldFinding(
      broken(patternOf([legs(100, 98.5)])).find(f => Math.abs(f.figures!.stepMm!) > 1)!,
    );
    expect(told.message).toContain('a step of 1.5 mm');
    expect(told.remedy).toContain('Take 1.5 mm off the top of the skirt there');
  });
});

describe('edges that meet as they are drawn', () => {
  /** Two edges at the foot that bend by 10 degrees where they meet, and a side that leaves the second by 8. */
  const foot = (first: 'hem' | 'seam', second: 'hem' | 'seam') => {
    const fall = 100 * Math.tan((10 * Math.PI) / 180);
    return pieceOf('skirt', [
      side('top', [
        [0, 0],
        [200, 0],
      ]),
      side('right', [
        [200, 0],
        [200, 300],
      ]),
      side(
        'hem-right',
        [
          [200, 300],
          [100, 300],
        ],
        { kind: first },
      ),
      side(
        'hem-left',
        [
          [100, 300],
          [0, 300 - fall],
        ],
        { kind: second },
      ),
      side('left', [
        [0, 300 - fall],
        [0, 0],
      ]),
    ]);
  };
  const kinked = (pattern: Pattern) =>
    checkPattern(pattern)
      .filter(f => f.code === 'edge-kinked')
      .map(f => [f.about!.edge, f.about!.next]);
  const hems = [
    { piece: 'skirt', edge: 'hem-right' },
    { piece: 'skirt', edge: 'hem-left' },
  ];
  test('are one line where both are unsewn hems', () => {
    expect(kinked(patternOf([foot('hem', 'hem')]))).toEqual([hems]);
  });
  test('not where only one is a hem, or neither', () => {
    expect(kinked(patternOf([foot('hem', 'seam')]))).toEqual([]);
    expect(kinked(patternOf([foot('seam', 'hem')]))).toEqual([]);
    expect(kinked(patternOf([foot('seam', 'seam')]))).toEqual([]);
  });
  test('not where one hem is sewn to something of its own', () => {
    const band = rectangle('band', 100, 40);
    const sewn = (edge: string) =>
      patternOf([foot('hem', 'hem'), band], [seam('band', [`skirt.${edge}`], ['band.top'])]);
    expect(kinked(sewn('hem-right'))).toEqual([]);
    expect(kinked(sewn('hem-left'))).toEqual([]);
  });
  test('not where the two are sewn one after the other by their far ends', () => {
    const band = rectangle('band', 201, 40);
    for (const a of [
      ['-skirt.hem-right', '-skirt.hem-left'],
      ['skirt.hem-right', '-skirt.hem-left'],
    ]) {
      const s = seam('band', [...a, 'band.left'], ['band.top', 'band.right']);
      expect(kinked(patternOf([foot('seam', 'seam'), band], [s]))).toEqual([]);
    }
  });
  test('and where both are sewn, one after the other', () => {
    const band = rectangle('band', 201, 40);
    const both = seam('band', ['skirt.hem-right', 'skirt.hem-left'], ['band.top']);
    expect(kinked(patternOf([foot('seam', 'seam'), band], [both]))).toEqual([hems]);
    const back = seam('band', ['-skirt.hem-left', '-skirt.hem-right'], ['band.top']);
    expect(kinked(patternOf([foot('seam', 'seam'), band], [back]))).toEqual([hems]);
  });
});
