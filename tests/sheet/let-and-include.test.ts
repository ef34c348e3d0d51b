import { PatternError } from '@paperhinge/geometry';
import { type Included, readSheet, runSheet, sheetOfRecord } from '@paperhinge/sheet';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isSum, valueOfSum } from '../../packages/sheet/src/values/value.js';
import { shiftPattern } from '../support/shift.js';
import { faultsOf, read, refusals, withSteps } from './sheets.js';

const kept = (lets: string, step: string, more = '') =>
  read(`${more}let: { ${lets} }\n${withSteps(step)}`).steps[0]!.parameters;
const byOf = (lets: string, by: string, more = '') =>
  (kept(lets, `shorten: { pieces: front, at: hem, by: ${by} }`, more) as { by: number }).by;

describe('figures kept under names', () => {
  test('a length, in whatever unit it is written', () => {
    expect(byOf('hem drop: 210', 'hem drop')).toBe(210);
    expect(byOf('hem drop: 3/8 in', 'hem drop')).toBeCloseTo(9.525, 12);
    expect(byOf('hem drop: 21', 'hem drop', 'unit: cm\n')).toBe(210);
  });

  test.each([
    ['hem drop + 10', 220],
    ['hem drop - 1 cm', 200],
    ['hem drop / 2', 105],
    ['hem drop * 50 %', 105],
    ['10 + hem drop / 3 + 2 * hem drop', 500],
    ['hem drop × 2 − 20', 400],
    ['half drop', 105],
  ])('%s', (sum, mm) => {
    expect(byOf('half drop: hem drop / 2, hem drop: 210', sum)).toBeCloseTo(mm, 9);
  });

  test("the wearer's own figures", () => {
    expect(byOf('ease: 20', 'hip girth / 4 + ease', 'wearer: { hip girth: 1080 }\n')).toBe(290);
  });

  test('shares, angles and places', () => {
    expect(
      kept('part: 60 %', 'close dart: { piece: front, dart: bust, into: hem, share: part, at: part }'),
    ).toMatchObject({
      share: 0.6,
      at: { share: 0.6 },
    });
    expect(
      kept('far: 60', 'close dart: { piece: front, dart: bust, into: hem, at: far + 5 from side-upper }'),
    ).toMatchObject({ at: { mm: 65, from: 'side-upper' } });
    expect(
      kept(
        'turn: 6 deg',
        'spread: { piece: front, from: { edge: hem }, to: { edge: neck }, angle: turn * 2 }',
      ),
    ).toMatchObject({ angle: Math.PI / 15 });
  });

  test('a fraction with spaces is still a figure', () => {
    expect(byOf('x: 1', '3 / 8 in')).toBeCloseTo(9.525, 12);
    expect(isSum('1 / 3', new Map(), 'mm')).toBe(false);
  });

  // Property: sums are worked out as arithmetic does it, products first.
  test('a sum of three is worked out as arithmetic does it', () => {
    const figure = fc.integer({ min: 1, max: 400 });
    const sign = fc.constantFrom('+', '-', '*');
    fc.assert(
      fc.property(figure, sign, figure, sign, figure, (a, s, b, t, c) => {
        const value = valueOfSum(`${a} ${s} ${b} ${t} ${c}`, () => undefined, 'mm');
        const times = (x: number, y: number) => x * y;
        const expected =
          s === '*' && t === '*'
            ? a * b * c
            : s === '*'
              ? times(a, b) + (t === '+' ? c : -c)
              : t === '*'
                ? a + (s === '+' ? 1 : -1) * times(b, c)
                : a + (s === '+' ? b : -b) + (t === '+' ? c : -c);
        expect(value).toMatchObject({ amount: expected });
      }),
    );
  });
});

describe('what is told of names and sums', () => {
  const told = (lets: string, by: string) =>
    refusals(`let: { ${lets} }\n${withSteps(`shorten: { pieces: front, at: hem, by: ${by} }`)}`);

  test.each([
    ['drop: 210', 'drip', /"drip".*"drop"/],
    ['drop: 210', 'hem + 10', /"hem"/],
    ['drop: 50 %', 'drop', /takes a length, and this is a percentage/],
    ['drop: 21 cm', 'drop * drop', /a length \* a length.*plain number/],
    ['drop: 21 cm', 'drop + 10 %', /a length \+ a percentage.*one kind/],
    ['a: b + 1, b: a + 1', '10', /needs itself.*as a figure/],
    ['a: [1]', '10', /neither a figure nor a sum/],
  ])('%s; %s', (lets, by, telling) => {
    const [one, ...others] = told(lets, by);
    expect(one).toMatch(telling);
    expect(others.length).toBeLessThanOrEqual(1);
  });
});

const files: Readonly<Record<string, string>> = {
  'hem.yaml': `unit: cm\nlet: { drop: 4, deeper: drop * 2 }\nsteps:\n  - shorten: { pieces: [front, back], at: hem, by: deeper }\n  - close dart: { piece: front, dart: bust, into: hem, at: 1/2 from side }\n`,
  'round.yaml': 'steps:\n  - include: { sheet: round.yaml }\n',
  'wrong.yaml': 'steps:\n  - shorten: { pieces: [front], at: hem, by: long }\n',
};
const included: Included = path =>
  files[path] === undefined ? undefined : { file: path, text: files[path] };
const readWith = (...steps: string[]) => readSheet(withSteps(...steps), { file: 'top.yaml', included });

describe('a sheet within a sheet', () => {
  test("its steps come in its own unit, in the include's place", () => {
    const sheet = readWith(
      'unfold: { piece: back }',
      'include: { sheet: hem.yaml }',
      'true: { edges: front.hem }',
    );
    expect(sheet.steps.map(s => s.verb)).toEqual(['unfold', 'shorten', 'close dart', 'true']);
    expect(sheet.steps[1]!.parameters).toMatchObject({ by: 80 });
    expect(sheet.stepPlaces[1]).toMatchObject({ file: 'hem.yaml', verb: { line: 4 } });
  });

  test('figures of its own give way to those of the sheet that includes it', () => {
    expect(readWith('include: { sheet: hem.yaml, let: { drop: 15 mm } }').steps[0]!.parameters).toMatchObject(
      { by: 30 },
    );
  });

  test("another pattern's names take the place of its own", () => {
    const names =
      'pieces: { front: bodice front, back: bodice back }, edges: { front.hem: lower, front.side: left side }, darts: { front.bust: side dart }';
    const [first, second] = readWith(`include: { sheet: hem.yaml, names: { ${names} } }`).steps;
    expect(first!.parameters).toMatchObject({ pieces: ['bodice front', 'bodice back'] });
    expect(second!.parameters).toEqual({
      piece: 'bodice front',
      dart: 'side dart',
      into: 'lower',
      at: { share: 0.5, from: 'left side' },
    });
  });

  test('switched off, all of it is', () => {
    const sheet = readSheet(`${withSteps('include: { sheet: hem.yaml }')}\n    off: yes\n`, {
      file: 'top.yaml',
      included,
    });
    expect(sheet.steps.map(s => s.off)).toEqual([true, true]);
  });

  test('what is wrong in it is told with its own file and line', () => {
    const [fault] = faultsOf(() => readWith('include: { sheet: wrong.yaml }'));
    expect(fault).toBeInstanceOf(PatternError);
    expect(fault!.where).toMatchObject({ file: 'wrong.yaml', line: 2, step: 1 });
  });

  test.each([
    ['none.yaml', 'include-not-here'],
    ['round.yaml', 'include-in-itself'],
  ])('%s is refused: %s', (sheet, code) => {
    expect(faultsOf(() => readWith(`include: { sheet: ${sheet} }`)).map(f => f.code)).toEqual([code]);
  });

  test('a hostile sheet that includes many ends', () => {
    const many: Included = (path, from) => ({
      file: `${from}/${path}`,
      text: `steps:\n${'  - include: { sheet: x }\n'.repeat(400)}`,
    });
    const work = () => readSheet(withSteps('include: { sheet: x }'), { file: 'top.yaml', included: many });
    expect(faultsOf(work).length).toBeGreaterThan(0);
  });
});

describe('a record turned back into a sheet', () => {
  const sheet = `title: Top\nunit: cm\nlet: { drop: 21 }\nwearer: { bust girth: 102 }\n${withSteps(
    'shorten: { pieces: [front, back], at: hem, by: drop / 3 }',
    'close dart: { piece: front, dart: bust, into: hem, share: 60 %, at: 1/3 from side-lower }',
    'take in: { seam: side, by: { so that: girth at bust, is: [100 cm, 104 cm] } }',
    'set seam: { seam: armhole, ease: 12 mm }',
    'set allowance: { edges: all seams, to: 7 mm }',
    'draft band: { name: neckband, along: [front.neck, back.neck], ratio: 80 %, width: 5.6, join: 7 mm }',
  )}`;

  test('does the same again, to the digits of a record', () => {
    const first = runSheet(read(sheet), shiftPattern());
    const text = sheetOfRecord(first.record, 'other/shift.svg');
    const again = read(text);
    expect(again).toMatchObject({ pattern: 'other/shift.svg', title: 'Top', wearer: { 'bust girth': 1020 } });
    const second = runSheet(again, shiftPattern());
    expect(second.record.steps.map(s => s.did)).toEqual(first.record.steps.map(s => s.did));
    const hem = (run: typeof first) => run.record.after.pieces.front!.edges.hem!.lengthMm;
    expect(Math.abs(hem(second) - hem(first))).toBeLessThan(1e-6);
  });
});

test('a figure of the wearer that is not given is asked for under wearer, alone and in a sum', () => {
  const level = (stands: string, wearer = '') =>
    refusals(
      `${wearer}${withSteps(`level hem: { pieces: front, from: waist, stands: ${stands}, height: 400 }`)}`,
    );
  for (const stands of ['waist height', 'Waist-height', 'waist height + 40'])
    expect(level(stands)[0]).toMatch(/Add the wearer's "[Ww]aist.height" under wearer\.$/);
  expect(() => level('waist height', 'wearer: { waist height: 1040 }\n')).toThrow('Nothing was refused.');
});
