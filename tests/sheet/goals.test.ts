import { measured } from '@paperhinge/alter';
import { runSheet } from '@paperhinge/sheet';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../support/shift.js';
import { read, refusals, withSteps } from './sheets.js';

const by = (goal: string) =>
  (
    read(withSteps(`shorten: { pieces: front, at: hem, by: ${goal} }`)).steps[0]!.parameters as {
      by: unknown;
    }
  ).by;

describe('an amount by what it brings about, as a sheet writes it', () => {
  test.each([
    ['girth at bust', { of: 'girth', level: 'bust' }],
    ['ease at bust', { of: 'ease', level: 'bust', wearer: {} }],
    ['length of front.hem', { of: 'edges', edges: [{ piece: 'front', edge: 'hem' }] }],
    [
      'length of front.neck + back.neck',
      {
        of: 'edges',
        edges: [
          { piece: 'front', edge: 'neck' },
          { piece: 'back', edge: 'neck' },
        ],
      },
    ],
    ['length of side', { of: 'seam', seam: 'side' }],
    ['ease of armhole', { of: 'seam-ease', seam: 'armhole' }],
    ['sweep of front.hem', { of: 'sweep', edge: { piece: 'front', edge: 'hem' } }],
    ['neck opening', { of: 'neck' }],
    ['height of front', { of: 'height', piece: 'front' }],
  ])('%s', (text, soThat) => {
    expect(by(`{ so that: ${text}, is: 60 cm }`)).toEqual({ soThat, is: 600 });
  });

  test('a range, and an area with its own unit', () => {
    expect(by('{ so that: neck opening, is: [58 cm, 600] }')).toEqual({
      soThat: { of: 'neck' },
      is: [580, 600],
    });
    expect(by('{ so that: area of front, is: 150 cm2 }')).toEqual({
      soThat: { of: 'area', piece: 'front' },
      is: 15000,
    });
    expect(by('{ so that: area of front, is: 2 in² }')).toMatchObject({ is: 2 * 25.4 * 25.4 });
  });

  test('the ease is that of the wearer of the sheet', () => {
    const text = `wearer: { bust girth: 1020 }\n${withSteps('take in: { seam: side, by: { so that: ease at bust, is: 60 } }')}`;
    expect(read(text).steps[0]!.parameters).toMatchObject({
      by: { soThat: { wearer: { 'bust girth': 1020 } } },
    });
  });

  test('a run finds the amount, and its record says it', () => {
    const sheet = read(withSteps('take in: { seam: side, by: { so that: girth at bust, is: 1080 } }'));
    const run = runSheet(sheet, shiftPattern());
    expect(measured(run.altered, { of: 'girth', level: 'bust' })).toBeCloseTo(1080, 2);
    expect(run.record.steps[0]!.findings.map(f => f.message)).toContainEqual(
      expect.stringMatching(/^With [\d.]+ mm for "by", the girth at the bust is 1080 mm\.$/),
    );
  });
});

describe('what is told of goals that cannot be read', () => {
  const told = (goal: string) => refusals(withSteps(`shorten: { pieces: front, at: hem, by: ${goal} }`));

  test.each([
    ['{ so that: waist of front, is: 10 }', /is nothing that can be measured.*girth at LEVEL/],
    ['{ so that: neck opening, is: [1, 2, 3] }', /neither a figure nor two.*\[580 mm, 600 mm\]/],
    ['{ so that: area of front, is: 15000 }', /not an area.*150 cm2/],
    ['{ so that: neck opening }', /is/],
  ])('%s', (goal, telling) => {
    const [one, ...others] = told(goal);
    expect(one).toMatch(telling);
    expect(others).toEqual([]);
  });
});
