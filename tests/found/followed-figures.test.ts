// A remedy with a figure is followed by that figure, as it is printed and rounded, and what it was printed for is gone.
import { easeFindings, orderOfWork, overTheHead } from '@paperhinge/alter';
import { checkPattern, cuttingLine, type Finding, type Pattern } from '@paperhinge/geometry';
import { readSheet, runSheet } from '@paperhinge/sheet';
import { describe, expect, test } from 'vitest';
import { level, patternOf, pieceOf, rectangle, seam, side } from '../support/polygon-piece.js';
import { lengthOf, lengthsIn, remedyOf, tongues, withEdge, withPieces } from './followed.js';
import { foundPattern, foundRun } from './found.js';

type Check = (pattern: Pattern) => readonly Finding[];
interface Case {
  readonly code: string;
  readonly pattern: Pattern;
  readonly check?: Check;
  /** The pattern once the remedy is followed. */
  readonly follow: (remedy: string, pattern: Pattern, finding: Finding) => Pattern;
}

/** Strips sewn along their right sides, of two heights, with notches in mm from the top. */
const strips = (
  [a, aNotches]: readonly [number, readonly number[]],
  [b, bNotches]: readonly [number, readonly number[]],
  ease = 0,
): Pattern => {
  const strip = (name: string, height: number, notches: readonly number[]) =>
    rectangle(name, 50, height, { notches: notches.map(at => ({ edge: 'right', at, style: 'single' })) });
  return patternOf(
    [strip('a', a, aNotches), strip('b', b, bNotches)],
    [seam('s', ['a.right'], ['b.right'], { mm: ease })],
  );
};
const taller = (pattern: Pattern, name: string, byMm: number): Pattern =>
  withPieces(pattern, p =>
    p.name === name
      ? { ...rectangle(name, 50, lengthOf(pattern, name, 'right') + byMm), notches: p.notches }
      : p,
  );
const notchMoved = (pattern: Pattern, { where }: Finding, remedy: string): Pattern => {
  const away = /away|weg/.test(remedy) ? 1 : -1;
  return withPieces(pattern, p =>
    p.name !== where.piece
      ? p
      : { ...p, notches: p.notches.map(n => ({ ...n, at: n.at + away * lengthsIn(remedy)[0]! })) },
  );
};

/** A tube of woven cloth in two halves. */
const tube = (half: number, lines: readonly string[] = ['bust']): Pattern => {
  const piece = (name: string) =>
    rectangle(name, half, 400, { lines: lines.map(l => level(l, [0, 100], [half, 100])) });
  return patternOf(
    [piece('front'), piece('back')],
    [seam('side', ['front.right'], ['-back.left']), seam('other side', ['front.left'], ['-back.right'])],
  );
};
const wider = (pattern: Pattern, byMm: number, lines?: readonly string[]): Pattern =>
  tube(lengthOf(pattern, 'front', 'top') + byMm / 2, lines);
const bust =
  (mm: number): Check =>
  pattern =>
    easeFindings(pattern, { 'bust girth': mm });

/** A top whose neck is `half` mm from shoulder to fold in front and behind. */
const necked = (half: number): Pattern => {
  const piece = (name: string) =>
    pieceOf(name, [
      {
        ...side('neck', [
          [0, 0],
          [half, 0],
        ]),
        role: 'neck',
      },
      {
        ...side('shoulder', [
          [half, 0],
          [half + 100, 20],
        ]),
        role: 'shoulder',
      },
      side('side', [
        [half + 100, 20],
        [half + 100, 400],
      ]),
      side(
        'hem',
        [
          [half + 100, 400],
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
  return patternOf(
    [piece('front'), piece('back')],
    [seam('shoulder', ['front.shoulder'], ['back.shoulder'])],
  );
};
const head =
  (mm: number): Check =>
  pattern =>
    overTheHead({ pattern, wearer: { 'head girth': mm }, derived: [] });

/** A skirt whose waist is `half` mm in front and behind. */
const skirted = (half: number): Pattern => {
  const piece = (name: string) => ({
    ...pieceOf(name, [
      {
        ...side('waist', [
          [0, 0],
          [half, 0],
        ]),
        role: 'waist' as const,
      },
      side('side', [
        [half, 0],
        [half, 600],
      ]),
      side(
        'hem',
        [
          [half, 600],
          [0, 600],
        ],
        { kind: 'hem' },
      ),
      side(
        'centre',
        [
          [0, 600],
          [0, 0],
        ],
        { kind: 'fold' },
      ),
    ]),
    role: 'skirt' as const,
  });
  return patternOf([piece('front'), piece('back')], [seam('side', ['front.side'], ['back.side'])]);
};
const hips =
  (mm: number): Check =>
  pattern =>
    overTheHead({ pattern, wearer: { 'hip girth': mm }, derived: [] });

/** The figure of a remedy that says it last: "open it with a slit of at least 88.4 mm". */
const last = (remedy: string): number => lengthsIn(remedy).at(-1)!;

/** A hem that bows, on a fold; 40 mm deep. */
const bowed = (): Pattern =>
  patternOf([
    pieceOf('skirt', [
      side('waist', [
        [0, 0],
        [200, 0],
      ]),
      side('side', [
        [200, 0],
        [260, 500],
      ]),
      {
        ...side(
          'hem',
          [
            [260, 500],
            [0, 540],
          ],
          { kind: 'hem', allowance: 40 },
        ),
        path: {
          segments: [
            [
              { x: 260, y: 500 },
              { x: 180, y: 528 },
              { x: 90, y: 540 },
              { x: 0, y: 540 },
            ],
          ],
        },
      },
      side(
        'centre',
        [
          [0, 540],
          [0, 0],
        ],
        { kind: 'fold' },
      ),
    ]),
  ]);
const cut: Check = pattern => pattern.pieces.flatMap(piece => cuttingLine(piece, pattern).findings);

const cases: Readonly<Record<string, Case>> = {
  'a seam that does not match, its longer side shortened': {
    code: 'seam-does-not-match',
    pattern: strips([303.23, []], [300, []]),
    follow: (remedy, pattern) => taller(pattern, 'a', -lengthsIn(remedy)[0]!),
  },
  'a seam that does not match, its shorter side lengthened': {
    code: 'seam-does-not-match',
    pattern: strips([303.23, []], [300, []]),
    follow: (remedy, pattern) => taller(pattern, 'b', lengthsIn(remedy)[1]!),
  },
  'a seam whose longer side lacks its ease': {
    code: 'seam-does-not-match',
    pattern: strips([305.17, []], [300, []], 12),
    follow: (remedy, pattern) => taller(pattern, 'b', -lengthsIn(remedy)[0]!),
  },
  'notches that do not meet': {
    code: 'notches-do-not-meet',
    pattern: strips([300, [106.3]], [300, [100]]),
    follow: (remedy, pattern, finding) => notchMoved(pattern, finding, remedy),
  },
  'a notch that misses the seam beyond': {
    code: 'notch-misses-seam',
    pattern: patternOf(
      [
        rectangle('sleeve', 50, 412, { notches: [{ edge: 'right', at: 206.2, style: 'single' }] }),
        rectangle('front', 50, 190),
        rectangle('back', 50, 210),
      ],
      [seam('s', ['sleeve.right'], ['front.right', 'back.right'], { mm: 12 })],
    ),
    follow: (remedy, pattern, finding) => notchMoved(pattern, finding, remedy),
  },
  'seams that cross a third apart': {
    code: 'crossing-seams-apart',
    pattern: patternOf(
      [
        rectangle('bodice', 200, 90),
        rectangle('bodice back', 190, 90),
        rectangle('skirt', 195.2, 90),
        rectangle('skirt back', 194.8, 90),
      ],
      [seam('waist', ['bodice.top', 'bodice back.top'], ['skirt.top', 'skirt back.top'])],
    ),
    follow: (remedy, pattern) => {
      const by = lengthsIn(remedy)[0]!;
      return withPieces(pattern, p =>
        p.name === 'skirt'
          ? rectangle('skirt', 195.2 + by, 90)
          : p.name === 'skirt back'
            ? rectangle('skirt back', 194.8 - by, 90)
            : p,
      );
    },
  },
  'a garment smaller than the body': {
    code: 'girth-too-small',
    pattern: tube(450.03),
    check: bust(960),
    follow: (remedy, pattern) => wider(pattern, lengthsIn(remedy)[0]!),
  },
  'less ease than is usual': {
    code: 'ease-below-usual',
    pattern: tube(450.03),
    check: bust(890),
    follow: (remedy, pattern) => wider(pattern, lengthsIn(remedy)[0]!),
  },
  'a neck that the head does not pass, opened by a slit': {
    code: 'head-does-not-pass',
    pattern: necked(120.03),
    check: head(571),
    follow: (remedy, pattern) =>
      withEdge(pattern, 'front', 'neck', edge => ({ ...edge, opening: last(remedy) })),
  },
  'a neck that the head does not pass, made wider': {
    code: 'head-does-not-pass',
    pattern: necked(120.03),
    check: head(571),
    follow: remedy => necked(120.03 + lengthsIn(remedy)[0]! / 4),
  },
  'a waist that the hips do not pass, opened by a slit': {
    code: 'part-does-not-pass',
    pattern: skirted(200.03),
    check: hips(1010),
    follow: (remedy, pattern) =>
      withEdge(pattern, 'front', 'side', edge => ({ ...edge, opening: last(remedy) })),
  },
  'a waist that the hips do not pass, made wider': {
    code: 'part-does-not-pass',
    pattern: skirted(200.03),
    check: hips(1010),
    follow: remedy => skirted(200.03 + lengthsIn(remedy)[0]! / 4),
  },
  'an opening longer than its edge': {
    code: 'opening-longer-than-edge',
    pattern: withEdge(strips([300, []], [300, []]), 'a', 'right', edge => ({ ...edge, opening: 340 })),
    follow: (_, pattern) => withEdge(pattern, 'a', 'right', edge => ({ ...edge, opening: 300 })),
  },
  'a curved hem, made as shallow as is said': {
    code: 'curved-hem',
    pattern: bowed(),
    check: cut,
    follow: (remedy, pattern) =>
      withEdge(pattern, 'skirt', 'hem', edge => ({ ...edge, allowance: last(remedy) })),
  },
  'an allowance wider than a slot has room for': {
    code: 'allowance-too-wide',
    pattern: patternOf([
      pieceOf('front', [
        side('top', [
          [0, 0],
          [90, 0],
        ]),
        side('slot', [
          [90, 0],
          [95, 120],
          [105, 120],
          [110, 0],
        ]),
        side('rest', [
          [110, 0],
          [200, 0],
        ]),
        side('right', [
          [200, 0],
          [200, 300],
        ]),
        side('bottom', [
          [200, 300],
          [0, 300],
        ]),
        side('left', [
          [0, 300],
          [0, 0],
        ]),
      ]),
    ]),
    check: cut,
    follow: (_, pattern) => withEdge(pattern, 'front', 'slot', edge => ({ ...edge, allowance: 2 })),
  },
};

const same = (one: Finding) => (other: Finding) =>
  other.code === one.code && JSON.stringify(other.where) === JSON.stringify(one.where);

describe.each(Object.entries(cases))('%s', (_, { code, pattern, check = checkPattern, follow }) => {
  test.each(tongues)('is mended by what is said in %s and %s', async (language, unit) => {
    const found = check(pattern).find(f => f.code === code);
    expect(
      found,
      check(pattern)
        .map(f => f.code)
        .join(),
    ).toBeDefined();
    const remedy = await remedyOf(found!, language, unit);
    expect(check(follow(remedy, pattern, found!)).filter(same(found!)), remedy).toEqual([]);
  });
});

describe('what is said of a step', () => {
  /** A fixture's sheet with steps added. */
  const runWith = (name: string, ...steps: readonly string[]) => {
    const sheet = foundRun(name).record.steps.length;
    const { pattern } = foundPattern(name);
    expect(sheet).toBeGreaterThan(0);
    return runSheet(
      readSheet(['pattern: p.svg', 'steps:', ...steps.map(s => `  - ${s}`)].join('\n'), { file: 's.yaml' }),
      pattern,
    );
  };

  test.each(tongues)(
    'a shoulder cut by a neckline: the other recut by the length said in %s and %s',
    async (language, unit) => {
      const cutFront = 'recut neckline: { piece: front, shape: round, depth: 30, half width: 95 }';
      const cut = runWith('shoulders-recut-unequal', cutFront);
      const found = cut.steps[0]!.findings.find(f => f.code === 'shoulder-cut')!;
      const [shoulder] = lengthsIn(await remedyOf(found, language, unit));
      const mended = runWith(
        'shoulders-recut-unequal',
        cutFront,
        `recut neckline: { piece: back, shape: round, depth: 20, shoulder: ${shoulder} }`,
      );
      expect(mended.findings.map(f => f.code)).not.toContain('shoulder-cut');
      expect(mended.findings.map(f => f.code)).not.toContain('seam-does-not-match');
    },
  );

  test.each(tongues)(
    'a place that truing left: allowed as much as is said in %s and %s',
    async (language, unit) => {
      const steps = [
        'take in: { seam: side, by: 30, to: 200 mm from waist }',
        'spread:  { piece: back, from: { edge: crotch, at: 1/2 }, to: { edge: side, at: 1/5 }, by: 20 }',
      ];
      const left = runWith('true-after-take-in-and-spread', ...steps, 'true: { edges: [back.crotch] }');
      const found = left.steps.at(-1)!.findings.find(f => f.code === 'truing-left')!;
      const [within] = lengthsIn(await remedyOf(found, language, unit));
      const trued = runWith(
        'true-after-take-in-and-spread',
        ...steps,
        `true: { edges: [back.crotch], within: ${within} }`,
      );
      expect(trued.steps.at(-1)!.findings.map(f => f.code)).not.toContain('truing-left');
    },
  );

  test.each(tongues)(
    'an edge too far from straight: allowed as much as is said in %s and %s',
    async (language, unit) => {
      const left = runWith('dart-dip-remedy', 'true: { edges: [front.side], straight: yes }');
      const found = left.steps[0]!.findings.find(f => f.code === 'straight-left')!;
      const [within] = lengthsIn(await remedyOf(found, language, unit));
      const drawn = runWith(
        'dart-dip-remedy',
        `true: { edges: [front.side], straight: yes, within: ${within} }`,
      );
      expect(drawn.steps[0]!.findings.map(f => f.code)).not.toContain('straight-left');
    },
  );

  test('a lining with no way out: the seam named left open is a way', async () => {
    const { pattern } = foundPattern('trial-waistcoat');
    const shut = withPieces(pattern, p => ({
      ...p,
      outline: { parts: p.outline.parts.map(e => (e.type === 'edge' ? { ...e, opening: 0 } : e)) },
    }));
    // A coat lined all round, its armholes bound apart: nothing is left to turn it through.
    const coat = { ...shut, seams: shut.seams.filter(s => s.name !== 'armhole') };
    const bound = withPieces(coat, p => ({
      ...p,
      outline: {
        parts: p.outline.parts.map(e =>
          e.type === 'edge' && e.name === 'armhole' ? { ...e, kind: 'fold' as const } : e,
        ),
      },
    }));
    const found = orderOfWork(bound, [], []).findings.find(f => f.code === 'lining-cannot-be-turned')!;
    expect(found.where.seam).toBe('lining centre back');
    for (const [language, unit] of tongues) {
      const [gap] = lengthsIn(await remedyOf(found, language, unit));
      const open = withEdge(bound, 'back lining', 'centre-back', edge => ({ ...edge, opening: gap! }));
      const { findings, order } = orderOfWork(open, [], []);
      expect(findings.map(f => f.code)).not.toContain('lining-cannot-be-turned');
      expect(order.map(o => o.job)).toContain('close back lining.centre-back');
    }
  });
});
