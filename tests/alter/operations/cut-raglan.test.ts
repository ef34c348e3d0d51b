import { closeDart, openDart } from '@paperhinge/alter/darts';
import { recutEdge } from '@paperhinge/alter/edges';
import { adjust } from '@paperhinge/alter/fit';
import { divide, joinPieces, matchEdge, unfold } from '@paperhinge/alter/seams';
import { changeCap, cutRaglan } from '@paperhinge/alter/sleeves';
import {
  edgeNames,
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  validatePattern,
  walkSeams,
} from '@paperhinge/geometry';
import { dartsOf, outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Corner, patternOf, pieceOf, seam, side } from '../../support/polygon-piece.js';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';

const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));
const areaOf = (pattern: Pattern, piece: string): number =>
  signedArea(outlinePath(pieceNamed(pattern, piece).outline));
const wish = { seam: 'armhole', front: 45, back: 30 } as const;

/** Straight armholes of 200 mm under shoulders that fall 40 in 110, and a cap of two straight sides of 200 mm. */
function straightBlock(): Pattern {
  const body = (name: string, neckDrop: number) => {
    const corners: readonly Corner[] = [
      [0, neckDrop],
      [70, 0],
      [180, 40],
      [180, 240],
      [180, 400],
      [0, 400],
    ];
    const between = (i: number): readonly Corner[] => [corners[i]!, corners[(i + 1) % 6]!];
    const names = ['neck', 'shoulder', 'armhole', 'side', 'hem', 'centre'];
    const kinds = { hem: 'hem', centre: 'fold' } as Record<string, 'hem' | 'fold'>;
    const parts = names.map((edge, i) => side(edge, between(i), { kind: kinds[edge] ?? 'seam' }));
    return pieceOf(name, parts);
  };
  const sleeve = pieceOf(
    'sleeve',
    [
      side('cap', [
        [-160, 0],
        [0, -120],
        [160, 0],
      ]),
      side('underarm front', [
        [160, 0],
        [120, 300],
      ]),
      side(
        'hem',
        [
          [120, 300],
          [-120, 300],
        ],
        { kind: 'hem' },
      ),
      side('underarm back', [
        [-120, 300],
        [-160, 0],
      ]),
    ],
    { cutting: { count: 2, mirrored: true } },
  );
  const seams = [
    seam('shoulder', ['front.shoulder'], ['back.shoulder']),
    seam('armhole', ['-sleeve.cap'], ['-front.armhole', 'back.armhole']),
    seam('underarm', ['sleeve.underarm front'], ['-sleeve.underarm back']),
  ];
  const roled = { cap: 'cap', neck: 'neck', shoulder: 'shoulder', armhole: 'armhole' } as const;
  const withRoles = (piece: ReturnType<typeof pieceOf>) => ({
    ...piece,
    outline: {
      parts: piece.outline.parts.map(part => {
        const role = roled[part.name as keyof typeof roled];
        return part.type === 'edge' && role ? { ...part, role } : part;
      }),
    },
  });
  return patternOf([body('front', 80), body('back', 20), sleeve].map(withRoles), seams);
}

describe('a raglan from a block of straight lines', () => {
  const before = straightBlock();
  const { pattern } = cutRaglan(before, { ...wish, up: 50 });
  const tip = dartsOf(pieceNamed(pattern, 'sleeve'))[0]!;

  // Foot to tip is 150 mm on body and cap alike, so the tips meet in the cap's own top.
  test('has its shoulder point where the cap had its top', () => {
    expect(tip.apex.x).toBeCloseTo(0, 9);
    expect(tip.apex.y).toBeCloseTo(-120, 9);
  });

  // About that point lie the cap's angle, 2 atan(160/120), and twice that of shoulder and armhole, 90° + atan(40/110).
  test('has what is left of a full turn as its dart', () => {
    const [a, b] = tip.legs.map(({ segments }) => [segments[0]![0], segments[0]!.at(-1)!] as const);
    const angle = (from: { x: number; y: number }) => Math.atan2(from.y + 120, from.x);
    const dart = Math.abs(angle(a![0]) - angle(b![1]));
    const turn = 2 * Math.PI - 2 * Math.atan(160 / 120) - 2 * (Math.PI / 2 + Math.atan(40 / 110));
    expect(dart).toBeCloseTo(turn, 9);
    expect(tip.legs.map(pathLength)).toEqual([
      expect.closeTo(Math.hypot(110, 40), 9),
      expect.closeTo(Math.hypot(110, 40), 9),
    ]);
  });

  test('has no more and no less cloth than the block', () => {
    const all = (of: Pattern) => ['front', 'back', 'sleeve'].reduce((sum, name) => sum + areaOf(of, name), 0);
    expect(all(pattern)).toBeCloseTo(all(before), 6);
  });

  // Hand-worked: the neck's slant is 106.3 mm in front; 45 mm along it lies at (37.07, 33.87); the foot at (180, 190).
  test('has the raglan line from neck to armhole', () => {
    const [x, y] = [70 - (45 * 70) / Math.hypot(70, 80), (45 * 80) / Math.hypot(70, 80)];
    expect(lengthOf(pattern, 'front', 'raglan')).toBeCloseTo(Math.hypot(180 - x, 190 - y), 9);
  });
});

describe('a raglan from the shift', () => {
  // Property: bodies, upper parts and the lower sleeve are rigid; each raglan line is one line on both pieces.
  test('keeps neck, underarm and hem, and its seams walk to equal lengths', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 40, max: 90 }),
        fc.integer({ min: 30, max: 70 }),
        fc.integer({ min: 75, max: 95 }),
        fc.constantFrom(0, 4, 9),
        (front, back, up, bow) => {
          const before = shiftPattern();
          const { pattern } = cutRaglan(before, { seam: 'armhole', front, back, up, bow });
          validatePattern(pattern);
          for (const walk of walkSeams(pattern)) expect(walk.matches, walk.seam).toBe(true);
          for (const body of ['front', 'back']) {
            expect(lengthOf(pattern, body, 'armhole')).toBeCloseTo(up, 6);
            expect(lengthOf(pattern, 'sleeve', `cap ${body}`)).toBeCloseTo(up, 6);
            expect(lengthOf(pattern, 'sleeve', `raglan ${body}`)).toBeCloseTo(
              lengthOf(pattern, body, 'raglan'),
              9,
            );
          }
          const neck = (of: Pattern) => lengthOf(of, 'front', 'neck') + lengthOf(of, 'back', 'neck');
          expect(lengthOf(pattern, 'sleeve', 'neck')).toBeCloseTo(front + back, 6);
          expect(neck(pattern) + front + back).toBeCloseTo(neck(before), 6);
          for (const edge of ['underarm-front', 'underarm-back', 'hem'])
            expect(lengthOf(pattern, 'sleeve', edge)).toBeCloseTo(lengthOf(before, 'sleeve', edge), 9);
        },
      ),
      { numRuns: 25 },
    );
  });

  test('sews the neck across the sleeve, and says what it did', () => {
    const done = cutRaglan(shiftPattern(), wish);
    const neck = done.pattern.seams.find(s => s.name === 'neck')!;
    expect(neck.b.map(run => `${run.piece}.${run.edge}`)).toEqual(['front.neck', 'sleeve.neck', 'back.neck']);
    expect(done.pattern.seams.map(s => s.name)).toEqual([
      'side',
      'underarm',
      'neck',
      'raglan front',
      'raglan back',
    ]);
    expect(done.findings).toEqual([]);
    expect(toldDid(done)).toMatch(
      /^The upper parts of the front and the back were joined to the sleeve; the raglan seams are [\d.]+ mm and [\d.]+ mm long from underarm to neck\. The dart over the shoulder is [\d.]+°, its point [\d.]+ mm (within|beyond) the old cap; 12 mm of ease went with the cap\.$/,
    );
  });

  test('marks both sides of each raglan seam alike: one notch in front, two at the back', () => {
    const { pattern } = cutRaglan(shiftPattern(), wish);
    const notches = (piece: string) =>
      pieceNamed(pattern, piece).notches.filter(n => n.edge.startsWith('raglan'));
    expect(notches('sleeve').map(n => [n.edge, n.style])).toEqual([
      ['raglan front', 'single'],
      ['raglan back', 'double'],
    ]);
    expect(notches('front')[0]!.at).toBeCloseTo(lengthOf(pattern, 'front', 'raglan') / 2, 9);
  });

  test('with a seam over the shoulder is in two halves, sewn from the neck to the hem', () => {
    const done = cutRaglan(shiftPattern(), { ...wish, shoulder: 'seam' });
    validatePattern(done.pattern);
    expect(dartsOf(pieceNamed(done.pattern, 'sleeve'))).toEqual([]);
    expect(edgeNames(pieceNamed(done.pattern, 'sleeve front'))).toContain('raglan front');
    expect(edgeNames(pieceNamed(done.pattern, 'sleeve'))).toContain('raglan back');
    for (const walk of walkSeams(done.pattern)) expect(walk.matches, walk.seam).toBe(true);
    expect(done.pattern.seams.map(s => s.name)).toContain('overarm');
    expect(toldDid(done)).toContain('The sleeve front is cut off along the shoulder and down the arm');
  });
});

describe('what is refused, and mended by its remedy', () => {
  const shift = shiftPattern();
  const refused = (pattern: Pattern, changes: Partial<Parameters<typeof cutRaglan>[1]> = {}) =>
    refusalOf(() => cutRaglan(pattern, { ...wish, ...changes }));
  const works = (pattern: Pattern) => validatePattern(cutRaglan(pattern, wish).pattern);

  test('a seam that is no armhole', () => {
    expect(refused(shift, { seam: 'side' })).toMatchObject({
      code: 'seam-without-cap',
      remedy: expect.stringContaining('Name the seam that does'),
    });
  });

  test('an armhole across a yoke', () => {
    const from = { edge: 'armhole', at: { mm: 90, from: 'shoulder' } };
    const to = { edge: 'centre-back', at: { mm: 100, from: 'neck' } };
    const yoked = divide(shift, { piece: 'back', name: 'yoke', from, to }).pattern;
    expect(refused(yoked)).toMatchObject({
      code: 'armhole-of-several',
      remedy: 'Join a yoke or panel to its front or back first, with "join pieces".',
    });
    works(joinPieces(yoked, { seam: 'yoke' }).pattern);
  });

  test('a dart in the shoulder, or in the neck above the line', () => {
    const blade = { piece: 'back', name: 'blade', intake: 0.6, depth: 20 };
    const shoulder = openDart(shift, { ...blade, edge: 'shoulder', at: { share: 0.5 } }).pattern;
    expect(refused(shoulder)).toMatchObject({
      code: 'shoulder-not-sewn',
      remedy: 'Close a dart in the shoulder into the hem first, with "close dart".',
    });
    const moved = (pattern: Pattern) =>
      closeDart(pattern, { piece: 'back', dart: 'blade', into: 'hem' }).pattern;
    works(moved(shoulder));
    const neck = openDart(shift, { ...blade, edge: 'neck', at: { mm: 8, from: 'shoulder' } }).pattern;
    expect(refused(neck)).toMatchObject({
      code: 'raglan-through-dart',
      remedy: 'Close it into the hem first, with "close dart".',
    });
    works(moved(neck));
  });

  test('shoulders of other lengths', () => {
    const longer = recutEdge(shift, { piece: 'back', edge: 'armhole', out: [8, 0] }).pattern;
    const { code, remedy } = refused(longer);
    expect(code).toBe('shoulders-unlike');
    expect(remedy).toBe('Make them equally long first: match edge: { edge: front.shoulder, at: start }.');
    works(matchEdge(longer, { edge: { piece: 'front', edge: 'shoulder' }, at: 'start' }).pattern);
  });

  test('a front that is opened out', () => {
    expect(refused(unfold(shift, { piece: 'front' }).pattern)).toMatchObject({
      code: 'sleeve-cut-unlike',
      remedy: expect.stringContaining('before it is opened out'),
    });
    validatePattern(unfold(cutRaglan(shift, wish).pattern, { piece: 'front' }).pattern);
  });

  test('a line that runs off neck or armhole', () => {
    expect(refused(shift, { back: 140 })).toMatchObject({
      code: 'raglan-off-edge',
      remedy: 'Give less than 120.1 mm.',
    });
    expect(refused(shift, { up: 400 })).toMatchObject({ code: 'raglan-off-edge' });
    expect(refused(shift, { front: 5 })).toMatchObject({
      code: 'raglan-off-piece',
      remedy: 'Begin it further down the neck, away from the shoulder.',
    });
  });

  test('a cap too flat for the upper parts to meet over it', () => {
    const flat = adjust(shift, { for: 'full upper arm', by: 60 }).pattern;
    expect(refused(flat)).toMatchObject({
      code: 'cap-too-flat',
      remedy: 'Raise the cap first: change cap with keep: seam.',
    });
    works(changeCap(flat, { piece: 'sleeve', by: 40, keep: 'seam' }).pattern);
  });
});
