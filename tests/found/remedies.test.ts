// A remedy that is printed with a step to type mends what it was printed for: each is typed and run.
import { at, checkPattern, type Finding, type Pattern, type Piece } from '@paperhinge/geometry';
import { readSheet, runSheet } from '@paperhinge/sheet';
import { catalogueOf, wordsOf } from '@paperhinge/sheet/words';
import { describe, expect, test } from 'vitest';
import { type Corner, dart, patternOf, pieceOf, rectangle, seam, side } from '../support/polygon-piece.js';
import { toldFinding } from '../support/told.js';
import { foundPattern } from './found.js';

const drop = (length: number, degrees: number) => length * Math.tan((degrees * Math.PI) / 180);

/** The steps in a remedy, as they would be pasted into a sheet. */
const stepsIn = (remedy: string): readonly string[] =>
  [...remedy.matchAll(/\b(?:true|set seam|add notches): \{[^{}]*\}/g)].map(([step]) => step);

function followed(pattern: Pattern, remedy: string): Pattern {
  const steps = stepsIn(remedy).map(step => `  - ${step}`);
  const sheet = readSheet(['pattern: p.svg', 'steps:', ...steps].join('\n'), { file: 'sheet.yaml' });
  return runSheet(sheet, pattern).altered;
}

/** A piece on a fold whose hem runs through the corners given, from its side to its fold. */
const hemmed = (name: string, hem: readonly Corner[]): Piece =>
  pieceOf(
    name,
    [
      side('top', [
        [0, 0],
        [300, 0],
      ]),
      side('side', [[300, 0], hem[0]!]),
      side('hem', hem, { kind: 'hem' }),
      side('centre', [hem.at(-1)!, [0, 0]], { kind: 'fold' }),
    ],
    { lines: [{ kind: 'grain', name: 'grain', path: { segments: [[at(50, 300), at(50, 50)]] } }] },
  );
const flat: readonly Corner[] = [
  [300, 400],
  [0, 400],
];
const sideSeam = (front: Piece, back: Piece) =>
  patternOf([front, back], [seam('side', ['front.side'], ['back.side'])]);

/** A waist whose two parts lean away from square to the legs of the dart between them. */
const darted = () =>
  pieceOf('skirt', [
    side('waist-side', [
      [0, 0],
      [100, 0],
    ]),
    dart('waist', [100, 0], [112, 120], [124, 0]),
    side('waist-centre', [
      [124, 0],
      [240, 0],
    ]),
    side('side', [
      [240, 0],
      [240, 500],
    ]),
    side(
      'hem',
      [
        [240, 500],
        [0, 500],
      ],
      { kind: 'hem' },
    ),
    side('centre-seam', [
      [0, 500],
      [0, 0],
    ]),
  ]);

const cases: Readonly<Record<string, readonly [string, Pattern]>> = {
  'a seam that does not match': [
    'seam-does-not-match',
    patternOf(
      [rectangle('front', 100, 303.2), rectangle('back', 80, 300)],
      [seam('side', ['front.right'], ['-back.left'])],
    ),
  ],
  'a seam that is too short for its ease': [
    'seam-does-not-match',
    patternOf(
      [rectangle('front', 100, 290), rectangle('back', 80, 300)],
      [seam('side', ['front.right'], ['-back.left'], { mm: 12 })],
    ),
  ],
  'a seam whose name must be quoted': [
    'seam-does-not-match',
    patternOf(
      [rectangle('front', 100, 303.2), rectangle('back', 80, 300)],
      [seam('side: left, right', ['front.right'], ['-back.left'])],
    ),
  ],
  'seams without notches': [
    'notches-wanted',
    patternOf(
      [rectangle('front', 350, 400), rectangle('back', 350, 400)],
      [seam('side', ['front.right'], ['-back.left']), seam('yoke', ['front.top'], ['-back.top'])],
    ),
  ],
  'a hem that dips at the side seam': [
    'joined-line-broken',
    sideSeam(
      hemmed('front', [
        [300, 385],
        [150, 396],
        [0, 400],
      ]),
      hemmed('back', [
        [300, 385],
        [150, 396],
        [0, 400],
      ]),
    ),
  ],
  'a waist that dips at its dart': [
    'joined-line-broken',
    patternOf(
      [darted(), rectangle('band', 216, 40)],
      [seam('w', ['skirt.waist-side', 'skirt.waist-centre'], ['-band.bottom'])],
    ),
  ],
  'a kinked hem': [
    'edge-kinked',
    patternOf([
      hemmed('front', [
        [300, 400 - drop(200, 5)],
        [100, 400],
        [0, 400],
      ]),
    ]),
  ],
  'a stepped hem': [
    'edge-stepped',
    patternOf([
      hemmed('front', [
        [300, 400],
        [150, 400],
        [150, 402],
        [0, 402],
      ]),
    ]),
  ],
  'a hem out of square with the fold': [
    'fold-corner-not-square',
    patternOf([
      hemmed('front', [
        [300, 400],
        [0, 400 + drop(300, 4)],
      ]),
    ]),
  ],
  'slight kinks': [
    'small-differences',
    patternOf([
      hemmed('front', [
        [300, 400 - drop(200, 2)],
        [100, 400],
        [0, 400],
      ]),
      hemmed('back', flat),
    ]),
  ],
  'two edges that run on as one with a kink': [
    'edge-kinked',
    patternOf(
      [
        pieceOf('front', [
          side('top', [
            [0, 0],
            [300, 0],
          ]),
          side('side-upper', [
            [300, 0],
            [300, 100],
          ]),
          side('side-lower', [
            [300, 100],
            [300 + drop(200, 5), 300],
          ]),
          side('hem', [
            [300 + drop(200, 5), 300],
            [0, 300],
          ]),
          side('centre', [
            [0, 300],
            [0, 0],
          ]),
        ]),
        rectangle('back', 100, 300),
      ],
      [seam('side', ['front.side-upper', 'front.side-lower'], ['back.right'])],
    ),
  ],
};

const same = (one: Finding) => (other: Finding) =>
  other.code === one.code && JSON.stringify(other.where) === JSON.stringify(one.where);

describe.each(Object.entries(cases))('%s', (_, [code, pattern]) => {
  test.each([
    ['en', 'mm'],
    ['en', 'in'],
    ['de', 'cm'],
  ] as const)('is mended by what is said in %s and %s', async (language, unit) => {
    const found = checkPattern(pattern).find(f => f.code === code)!;
    const { remedy } = wordsOf(await catalogueOf(language), unit).finding(found);
    expect(stepsIn(remedy)).not.toEqual([]);
    expect(checkPattern(followed(pattern, remedy)).filter(same(found))).toEqual([]);
  });
});

describe('the trousers whose darts dipped for good', () => {
  const { pattern } = foundPattern('dart-dip-remedy');
  test('are mended by the remedies told of them', () => {
    const dips = checkPattern(pattern).filter(
      f => f.code === 'joined-line-broken' && f.where.piece === 'back',
    );
    expect(dips).toHaveLength(2);
    for (const dip of dips) {
      const mended = followed(pattern, toldFinding(dip).remedy);
      expect(checkPattern(mended).filter(same(dip))).toEqual([]);
    }
  });
});
