import { describe, expect, test } from 'vitest';
import { read, refusals, withSteps } from './sheets.js';

const shorten = (fields: string): string => withSteps(`shorten: { ${fields} }`);

describe('a slip of the pen is told at its own place', () => {
  test.each([
    [
      'a verb without its colon',
      withSteps('shorten { pieces: [front, back], at: hem, by: 20 }'),
      '3:3 A colon is missing',
    ],
    [
      'a field without its colon',
      'pattern p.svg\nsteps:\n  - unfold: { piece: front }\n',
      '1:1 A colon is missing',
    ],
    [
      'a brace left open',
      'pattern: p.svg\nsteps:\n  - shorten: { pieces: [front], at: hem, by: 20\n',
      '3:14 What is opened',
    ],
    [
      'a bracket left open',
      'pattern: p.svg\nsteps:\n  - shorten: { pieces: [front, at: hem, by: 20 }\n',
      '3:24 What is opened',
    ],
    [
      'a brace left open before another step',
      'pattern: p.svg\nsteps:\n  - shorten: { pieces: [front], at: hem, by: 20\n  - unfold: { piece: front }\n',
      '3:14 What is opened',
    ],
  ])('%s', (_, text, told) => {
    const all = refusals(text);
    expect(all).toHaveLength(1);
    expect(all[0]).toContain(told);
  });

  test('mended as its remedy says, each is read', () => {
    for (const text of [
      withSteps('shorten: { pieces: [front, back], at: hem, by: 20 }'),
      'pattern: p.svg\nsteps:\n  - unfold: { piece: front }\n',
      'pattern: p.svg\nsteps:\n  - shorten: { pieces: [front], at: hem, by: 20 }\n',
    ])
      expect(() => read(text)).not.toThrow();
  });

  test('a misspelt field is told, not the lack of it that follows', () => {
    expect(refusals('Pattern: p.svg\nsteps:\n  - unfold: { piece: front }\n')).toEqual([
      expect.stringContaining('Did you mean "pattern"?'),
    ]);
  });
});

test('curly quotes of a word processor are quotes', () => {
  const plain = read(shorten('pieces: [front], at: hem, by: 20')).steps[0]!.parameters;
  for (const [a, b] of ['“”', '„“', '‘’', '«»'] as const)
    expect(read(shorten(`pieces: [${a}front${b}], at: ${a}hem${b}, by: 20`)).steps[0]!.parameters).toEqual(
      plain,
    );
  expect(read(shorten('pieces: [front], at: hem, by: 1 1/2”')).steps[0]!.parameters).toMatchObject({
    by: 38.1,
  });
});

test('of many verbs those are listed first that share a word with what was written', () => {
  const [told] = refusals(withSteps('bind edge: { along: front.neck }'));
  expect(told).toMatch(/Choose from its verbs: [^.]*draft binding/);
  const [other] = refusals(withSteps('neckline change: { piece: front }'));
  expect(other).toMatch(/Choose from its verbs: [^.]*recut neckline/);
});
