// What hangs loose, by how it is drawn and sewn: strips of 30 × 600 mm on a bodice of 400 × 500.
import { cautionsFor } from '@paperhinge/alter';
import {
  at,
  checkPattern,
  type Fastening,
  type Pattern,
  type Piece,
  polyline,
  type Seam,
} from '@paperhinge/geometry';
import { isTie, looseEnds } from '@paperhinge/geometry/measure';
import { readSheet, runSheet } from '@paperhinge/sheet';
import { describe, expect, test } from 'vitest';
import { patternOf, pieceOf, rectangle, run, seam, side } from '../../support/polygon-piece.js';
import { toldFinding } from '../../support/told.js';

const body = rectangle('body', 400, 500);
const strip = (change: Partial<Piece> = {}, long: 'seam' | 'fold' = 'seam'): Piece => ({
  ...pieceOf('sash', [
    side('top', [
      [0, 0],
      [30, 0],
    ]),
    side(
      'long',
      [
        [30, 0],
        [30, 600],
      ],
      { kind: long },
    ),
    side('bottom', [
      [30, 600],
      [0, 600],
    ]),
    side('other', [
      [0, 600],
      [0, 0],
    ]),
  ]),
  ...change,
});
const sewn = (edge: string, to = 'left', name = edge): Seam => seam(name, [`sash.${edge}`], [`body.${to}`]);
const garment = (piece: Piece, seams: readonly Seam[], more: Partial<Pattern> = {}) =>
  patternOf([body, piece], seams, more);
const told = (pattern: Pattern) => checkPattern(pattern).filter(f => f.code === 'ends-hang-loose');

describe('a strip that hangs loose', () => {
  test.each([
    ['sewn on by one end, though nothing says that it is a tie', garment(strip(), [sewn('top')]), true],
    ['folded along its length', garment(strip({}, 'fold'), [sewn('top')]), true],
    [
      'a belt, folded along its length and sewn to nothing',
      garment(strip({}, 'fold'), [seam('body', ['body.left'], ['body.right'])]),
      true,
    ],
    ['a strip by its role', garment(strip({ role: 'strip' }), [sewn('top')]), false],
    [
      'a strip by a role that was guessed',
      garment(strip({ role: 'strip', roleGuessed: true }), [sewn('top')]),
      true,
    ],
  ])('is told, and whether that is a guess: %s', (_, pattern, guessed) => {
    expect(looseEnds(pattern)).toEqual([{ piece: 'sash', guessed }]);
    expect(told(pattern).map(f => f.about!.guessed)).toEqual([guessed]);
    expect(toldFinding(told(pattern)[0]!).message.includes('looks like')).toBe(guessed);
    expect(cautionsFor({ pattern }).map(c => c.code)).toContain('cords');
  });

  test.each([
    ['sewn on at both ends, as its remedy says', garment(strip(), [sewn('top'), sewn('bottom', 'right')])],
    ['sewn on along a long edge: a band', garment(strip(), [sewn('long')])],
    ['joined into a ring', garment(strip(), [seam('ring', ['sash.top'], ['sash.bottom'])])],
    [
      'in no seam and with no fold: what it is nobody knows yet',
      garment(strip(), [seam('body', ['body.left'], ['body.right'])]),
    ],
    ['a band by its role', garment(strip({ role: 'band' }), [sewn('top')])],
    [
      'a loop whose place is marked',
      patternOf(
        [
          {
            ...body,
            lines: [{ kind: 'placement', name: 'sash', path: polyline(at(100, 100), at(100, 400)) }],
          },
          strip({ role: 'strip' }),
        ],
        [seam('body', ['body.left'], ['body.right'])],
      ),
    ],
    [
      'half as long as broad',
      patternOf([body, rectangle('sash', 300, 600)], [seam('top', ['sash.top'], ['body.left'])]),
    ],
  ])('is not told where there is none: %s', (_, pattern) => {
    expect(told(pattern)).toEqual([]);
  });

  test('is told once, at the end, where it was drafted', () => {
    const tie = 'draft tie: { name: tie, length: 500, width: 20 }';
    const of = (...steps: readonly string[]) =>
      runSheet(
        readSheet(['pattern: p.svg', 'steps:', ...steps.map(text => `  - ${text}`)].join('\n'), {
          file: 's.yaml',
        }),
        garment(strip(), [sewn('long')]),
      ).findings.filter(f => f.code.includes('loose'));
    expect(of(tie).map(f => [f.code, f.about!.things])).toEqual([['ends-hang-loose', [{ piece: 'tie' }]]]);
  });

  test('is the ends of a drawcord, too', () => {
    const cord: Fastening = { name: 'cord', kind: 'drawcord', along: run('body.top') };
    const pattern = garment(strip(), [sewn('long')], { fastenings: [cord] });
    expect(told(pattern).map(f => f.about!.things)).toEqual([[{ fastening: 'cord' }]]);
  });
});

test('a strip drawn at its full width is folded and turned before its end is sewn on; a single layer of two is not', () => {
  expect(isTie(garment(strip(), [sewn('top')]), strip())).toBe(true);
  const layered = strip({ cutting: { count: 2, layers: 2, mirrored: false, fabric: 'main' } });
  expect(isTie(garment(layered, [sewn('top')]), layered)).toBe(false);
});
