// What is told of cutting lines: done as its remedy says, in file or sheet, it is told no longer.
import {
  at,
  cuttingLine,
  type Edge,
  type Finding,
  type OutlinePart,
  type Pattern,
  polyline,
} from '@paperhinge/geometry';
import { offsetOutline, stitchingLine } from '@paperhinge/geometry/cutting-line';
import { describe, expect, test } from 'vitest';
import { cuttingLine as words } from '../../packages/sheet/src/words/english/cutting-line.js';
import { type Corner, dart, patternOf, pieceOf, side } from '../support/polygon-piece.js';
import { refusalOf } from '../support/told.js';
import { remedyOf, tongues, withEdge, withPieces } from './followed.js';

const cut = (pattern: Pattern): readonly Finding[] =>
  pattern.pieces.flatMap(piece => cuttingLine(piece, pattern).findings);
const codes = (findings: readonly Finding[]) => findings.map(f => f.code);

interface Fold {
  /** Where the waist begins and ends; the mouth lies between 80 and 120, level. */
  readonly from?: Corner;
  readonly to?: Corner;
  readonly allowances?: readonly [number, number];
  readonly fold: OutlinePart;
}

/** A skirt front whose waist is drawn on both sides of a fold. */
const skirt = ({ from = [0, 0], to = [200, 0], allowances: [a, b] = [10, 10], fold }: Fold): Pattern =>
  patternOf([
    pieceOf('skirt', [
      side('waist-left', [from, [80, 0]], { allowance: a }),
      fold,
      side('waist-right', [[120, 0], to], { allowance: b }),
      side('side', [to, [to[0], 300]]),
      side('hem', [
        [to[0], 300],
        [from[0], 300],
      ]),
      side('centre', [[from[0], 300], from], { kind: 'fold' }),
    ]),
  ]);
const pleat = (towards: 'start' | 'end'): OutlinePart => ({
  type: 'pleat',
  name: 'pleat',
  kind: 'knife',
  mouth: {
    segments: [
      [
        { x: 80, y: 0 },
        { x: 120, y: 0 },
      ],
    ],
  },
  towards,
  stitched: 0,
});
const tuck = dart('dart', [80, 0], [100, 120], [120, 0]);
/** Two darts with 8 mm between them, the second pressed onto those or away from them. */
const twoDarts = (pressed: 'start' | 'end'): Pattern =>
  patternOf([
    pieceOf('skirt', [
      side('waist-left', [
        [0, 0],
        [80, 0],
      ]),
      { ...tuck, pressed: 'start' },
      side('waist-middle', [
        [120, 0],
        [128, 0],
      ]),
      { ...dart('other', [128, 0], [148, 60], [168, 0]), pressed },
      side('waist-right', [
        [168, 0],
        [300, 0],
      ]),
      side('side', [
        [300, 0],
        [300, 300],
      ]),
      side('hem', [
        [300, 300],
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
    ]),
  ]);

/** The two edges of a waist given one allowance, the greater of the two. */
const oneAllowance = (pattern: Pattern): Pattern =>
  withEdge(pattern, 'skirt', 'waist-left', edge => ({ ...edge, allowance: 25 }));
const laidOtherWay = (pattern: Pattern): Pattern =>
  withPieces(pattern, piece => ({
    ...piece,
    outline: {
      parts: piece.outline.parts.map((part): OutlinePart => {
        return part.type === 'pleat' ? { ...part, towards: 'end' } : part;
      }),
    },
  }));

interface Case {
  readonly code: string;
  readonly pattern: Pattern;
  /** What the remedy says in English, where it says it in words. */
  readonly says: RegExp;
  readonly follow: (pattern: Pattern) => Pattern;
}
const cases: Readonly<Record<string, Case>> = {
  'a step at a dart between two allowances': {
    code: 'dart-fold-step',
    pattern: skirt({ allowances: [15, 25], fold: tuck }),
    says: /same allowance/,
    follow: oneAllowance,
  },
  'a step at a pleat between two allowances': {
    code: 'pleat-fold-step',
    pattern: skirt({ allowances: [15, 25], fold: pleat('start') }),
    says: /same allowance/,
    follow: oneAllowance,
  },
  'a dart deeper than the edge that it is pressed onto': {
    code: 'dart-mouth-bridged',
    pattern: twoDarts('start'),
    says: /press it the other way/,
    follow: () => twoDarts('end'),
  },
  'a pleat deeper than the edge that it is laid onto': {
    code: 'pleat-mouth-bridged',
    pattern: skirt({ from: [70, 0], fold: pleat('start') }),
    says: /lay it the other way/,
    follow: laidOtherWay,
  },
};

test('a step at a dart between equal allowances is mended on paper or cloth, and no figure is blamed', async () => {
  const [found] = cut(skirt({ from: [0, -40], fold: tuck })).filter(f => f.code === 'dart-fold-step');
  expect(await remedyOf(found!, 'en', 'mm')).toMatch(/^Fold it on the paper/);
  expect(await remedyOf(found!, 'de', 'cm')).not.toMatch(/gleiche/);
});

describe.each(Object.entries(cases))('%s', (_, { code, pattern, says, follow }) => {
  test.each(tongues)('is mended by what is said in %s and %s', async (language, unit) => {
    const found = cut(pattern).find(f => f.code === code);
    expect(found, codes(cut(pattern)).join()).toBeDefined();
    expect(await remedyOf(found!, 'en', unit)).toMatch(says);
    expect((await remedyOf(found!, language, unit)).length).toBeGreaterThan(0);
    expect(codes(cut(follow(pattern)))).not.toContain(code);
  });
});

/** A rectangle as it is drawn on its cutting line, its top edge in two. */
const drawn: readonly Edge[] = [
  side('first', [
    [0, 0],
    [100, 0],
  ]),
  side('second', [
    [100, 0],
    [200, 0],
  ]),
  side('right', [
    [200, 0],
    [200, 150],
  ]),
  side('foot', [
    [200, 150],
    [0, 150],
  ]),
  side('left', [
    [0, 150],
    [0, 0],
  ]),
];

describe('an outline that includes its allowances', () => {
  test('corner-not-recovered: one allowance along the line, or its corner drawn on the stitching line', async () => {
    const including = (second: number, parts: readonly Edge[] = drawn) =>
      stitchingLine(parts, e => (e.name === 'second' ? second : 10)).findings;
    const [found] = including(20);
    expect(found!.code).toBe('corner-not-recovered');
    expect(await remedyOf(found!, 'en', 'mm')).toMatch(/one included allowance.*on the stitching line/);
    expect(codes(including(10))).toEqual([]);
    const onStitching = drawn.map(edge => ({ ...edge, allowance: 0 }));
    expect(codes(stitchingLine(onStitching, e => e.allowance).findings)).toEqual([]);
  });
  test('corner-guessed: drawn on the stitching line, it is no guess', () => {
    const bowed = drawn.map(edge =>
      edge.name === 'first'
        ? {
            ...edge,
            path: {
              segments: [
                [
                  { x: 0, y: 0 },
                  { x: 40, y: -12 },
                  { x: 70, y: 8 },
                  { x: 100, y: 10 },
                ] as const,
              ],
            },
          }
        : edge.name === 'second'
          ? side('second', [
              [100, 10],
              [100, -40],
              [200, -40],
            ])
          : edge.name === 'right'
            ? side('right', [
                [200, -40],
                [200, 150],
              ])
            : edge,
    );
    expect(codes(stitchingLine(bowed, () => 10).findings)).toContain('corner-guessed');
    expect(codes(stitchingLine(bowed, () => 0).findings)).toEqual([]);
  });
  test('corner-doubted: a snipped corner, measured on the paper and drawn on the stitching line, is none', async () => {
    const snipped = [
      side('top', [
        [0, 0],
        [200, 0],
      ]),
      side('right', [
        [200, 0],
        [200, 300],
      ]),
      {
        ...side('hem', [
          [200, 300],
          [30, 300],
          [0, 270],
        ]),
        kind: 'hem' as const,
      },
      side('left', [
        [0, 270],
        [0, 0],
      ]),
    ];
    const [found] = stitchingLine(snipped, e => (e.name === 'hem' ? 25 : 10)).findings.filter(
      f => f.code === 'corner-doubted',
    );
    expect(found).toMatchObject({ severity: 'warning', where: { edge: 'hem' } });
    expect(found!.figures!.lengthMm).toBeCloseTo(30 * Math.SQRT2, 6);
    expect(await remedyOf(found!, 'en', 'mm')).toMatch(/Measure both edges.*on the stitching line/);
    expect(codes(stitchingLine(snipped, () => 0).findings)).toEqual([]);
  });
  test('included-allowance-too-wide: 80 mm was meant in another unit, 8 mm has room', () => {
    const refused = refusalOf(() => stitchingLine(drawn, () => 80));
    expect(refused).toMatchObject({
      code: 'included-allowance-too-wide',
      remedy: expect.stringContaining('unit'),
    });
    expect(codes(stitchingLine(drawn, () => 8).findings)).toEqual([]);
  });
});

describe('an outline moved by a distance', () => {
  const ring = (...corners: readonly Corner[]) =>
    polyline(...[...corners, corners[0]!].map(([x, y]) => at(x, y)));
  const bow = ring([0, 0], [100, 0], [110, 60], [120, 0], [220, 0], [220, 80], [0, 80]);
  test.each([
    ['parallel-in-parts', -15, -5],
    ['parallel-trimmed', -15, -5],
    ['parallel-vanished', -45, -30],
  ])('%s: by %d mm, no longer by %d mm', (code, by, smaller) => {
    expect(codes(offsetOutline(bow, by).findings)).toContain(code);
    expect(codes(offsetOutline(bow, smaller).findings)).not.toContain(code);
  });
  test('offset-both-ways: in two steps', () => {
    const refused = refusalOf(() => offsetOutline(bow, name => (name === '7' ? 5 : -5)));
    expect(refused).toMatchObject({ code: 'offset-both-ways', remedy: expect.stringContaining('two steps') });
    const [out] = offsetOutline(bow, name => (name === '7' ? 5 : 0)).loops;
    const parts = out!.stretches.map(({ of, path }) => ({ name: of, path }));
    expect(offsetOutline(parts, name => (name === '7' ? 0 : -5)).loops).toHaveLength(1);
  });
});

/** Followed here, in `followed-figures` or in `followed-words`. */
const followed = [
  ...new Set(Object.values(cases).map(({ code }) => code)),
  'corner-not-recovered',
  'corner-guessed',
  'corner-doubted',
  'included-allowance-too-wide',
  'parallel-in-parts',
  'parallel-trimmed',
  'parallel-vanished',
  'offset-both-ways',
  'curved-hem',
  'allowance-too-wide',
  'corner-not-shaped',
];
/** Notes of what was left out rightly: there is only a corner to look at, and nothing to change. */
const onlyLookedAt = ['corner-tail-dropped', 'dart-tip-dropped'];
/** Told where loops cannot be removed: no drawing is known of which that is so. */
const neverMet = ['cutting-line-not-simple', 'parallel-not-closed'];

test('every remedy of a cutting line is followed in some test', () => {
  const left = Object.keys(words).filter(code => ![...followed, ...onlyLookedAt, ...neverMet].includes(code));
  expect(left).toEqual([]);
});
