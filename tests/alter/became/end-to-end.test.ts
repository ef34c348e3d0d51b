// A waistcoat's front drawn here: its front edge, 420 mm and straight, opens from end to end or in part.
import { perform, verbs } from '@paperhinge/alter';
import { at, edgeNamed, type Fastening, type Pattern, pieceNamed, polyline } from '@paperhinge/geometry';
import { readSheet, runSheet } from '@paperhinge/sheet';
import { english, wordsOf } from '@paperhinge/sheet/words';
import { describe, expect, test } from 'vitest';
import { patternOf, pieceOf, run, side } from '../../support/polygon-piece.js';

const front = (opening?: number, name = 'front') =>
  pieceOf(
    name,
    [
      side('neck', [
        [0, 80],
        [70, 0],
      ]),
      side('side', [
        [70, 0],
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
      side(
        'front edge',
        [
          [0, 500],
          [0, 80],
        ],
        opening === undefined ? {} : { opening },
      ),
    ],
    {
      cutting: { count: 2, mirrored: true },
      lines: [{ kind: 'grain', name: 'grain', path: polyline(at(100, 400), at(100, 200)) }],
    },
  );
const buttons = (length?: number): Fastening => ({
  name: 'buttons',
  kind: 'buttons',
  along: { ...run('front.front edge'), reversed: true },
  ...(length === undefined ? {} : { length }),
  count: 5,
});
const waistcoat = (opening?: number, fastenings: readonly Fastening[] = []): Pattern =>
  patternOf([front(opening)], [], { fastenings });

const openingOf = (pattern: Pattern) => edgeNamed(pieceNamed(pattern, 'front'), 'front edge').opening;
const step = (verb: 'shorten' | 'lengthen') => (pattern: Pattern, fields: object) =>
  perform(verbs.find(one => one.verb === verb)!, pattern, fields);
const [lengthen, shorten] = [step('lengthen'), step('shorten')];
const hem = (by: number) => ({ pieces: ['front'], at: 'hem', by });

describe('an edge that is open from end to end', () => {
  test.each([
    ['lengthened', lengthen, 60, 480],
    ['shortened', shorten, 45, 375],
  ] as const)('stays so when it is %s', (_, verb, by, edgeMm) => {
    const { pattern, findings } = verb(waistcoat(420), hem(by));
    expect(openingOf(pattern)).toBeCloseTo(edgeMm, 6);
    expect(findings).toMatchObject([
      {
        code: 'opening-follows',
        severity: 'note',
        figures: { wasMm: 420, edgeMm: expect.closeTo(edgeMm, 6) },
      },
    ]);
  });

  test('is fastened from end to end as before', () => {
    const { pattern } = lengthen(waistcoat(undefined, [buttons(420)]), hem(60));
    expect(pattern.fastenings![0]!.length).toBeCloseTo(480, 6);
  });

  test('follows a small change, too, and says nothing of it', () => {
    const { pattern, findings } = lengthen(waistcoat(420), hem(3));
    expect(openingOf(pattern)).toBeCloseTo(423, 6);
    expect(findings).toEqual([]);
  });

  test('is told nothing where it is no longer than before', () => {
    const other = { ...waistcoat(420), pieces: [front(420), front(undefined, 'other')] };
    expect(lengthen(other, { ...hem(60), pieces: ['other'] }).findings).toEqual([]);
  });
});

describe('an edge that is open for a stated length', () => {
  test('keeps that length, of its opening and of its buttons, and says so', () => {
    const { pattern, findings } = lengthen(waistcoat(300, [buttons(280)]), hem(60));
    expect(openingOf(pattern)).toBe(300);
    expect(pattern.fastenings![0]!.length).toBe(280);
    expect(findings).toMatchObject([
      { code: 'opening-kept', figures: { openMm: 300, wasMm: 420, edgeMm: 480 } },
    ]);
  });

  test('follows once it is said to be open from end to end, as the remedy has it', () => {
    const steps = 'steps:\n  - lengthen: { pieces: [front], at: hem, by: 60 }';
    const found = runSheet(
      readSheet(`pattern: p.svg\n${steps}`, { file: 's.yaml' }),
      waistcoat(300),
    ).findings;
    const remedy = wordsOf(english, 'mm').finding(found.find(f => f.code === 'opening-kept')!).remedy;
    const written = /opening: \{ .* \}/.exec(remedy)![0];
    const mended = runSheet(
      readSheet(`pattern: p.svg\n${written}\n${steps}`, { file: 's.yaml' }),
      waistcoat(300),
    );
    expect(mended.findings.map(f => f.code)).not.toContain('opening-kept');
    expect(openingOf(mended.altered)).toBeCloseTo(480, 6);
  });
});
