import { describe, expect, test } from 'vitest';
import { read, refusals, withSteps } from './sheets.js';

describe('a file that is no sheet', () => {
  test.each([
    ['', '1:1 The sheet is empty. | Give a sheet with the fields "pattern" and "steps".'],
    ['# only a remark\n', '1:1 The sheet is empty. | Give a sheet with the fields "pattern" and "steps".'],
    ['hunter2', '1:1 This is not an alteration sheet. | Give a sheet with the fields "pattern" and "steps".'],
    [
      'hunter2: x\nkey: hunter2',
      '1:1 This is not an alteration sheet. | Give a sheet with the fields "pattern" and "steps".',
    ],
    [
      'root:x:0:0:hunter2:/root:/bin/sh\n',
      '1:1 This is not an alteration sheet. | Give a sheet with the fields "pattern" and "steps".',
    ],
    [
      '"hunter2',
      '1:9 A bracket, quote, comma or colon is missing here. | Check the commas, brackets, quotes and indentation at this place.',
    ],
    [
      'a: "hunter2\\q"',
      '1:12 A backslash in quotes stands before a letter it cannot go with. | Use single quotes, or double the backslash.',
    ],
    [
      'a: b: hunter2',
      '1:4 A second colon stands on one line. | Put the fields of a step in braces, after its verb and a colon: - shorten: { pieces: front, at: hem, by: 20 }; or each on its own line, or a text with a colon in quotes.',
    ],
    ['a:\n\t- hunter2', '2:1 A tab stands where spaces must. | Indent with spaces.'],
    [
      'a: 1\n---\nb: hunter2',
      '2:1 The file holds more than one document. | Keep one sheet in a file; take out the line "---".',
    ],
    [
      '<svg xmlns="hunter2"/>',
      '1:1 This is not an alteration sheet. | Give a sheet with the fields "pattern" and "steps".',
    ],
  ])('is refused with its place and never quoted: %j', (text, expected) => {
    const told = refusals(text);
    expect(told).toEqual([expected]);
    expect(told.join()).not.toContain('hunter2');
  });
});

describe('a sheet that wants more than a sheet should', () => {
  test('keys given twice are refused', () => {
    expect(refusals('pattern: a.svg\nsteps: []\npattern: b.svg')).toEqual([
      '3:1 "pattern" is given twice. | Keep one of the two.',
    ]);
    expect(refusals(withSteps('unfold: { piece: front, piece: back }'))).toEqual([
      '3:29 "piece" is given twice. | Keep one of the two.',
    ]);
  });

  test.each(['!!js/function "x"', '!!binary aGk=', '!!str 12', '!own { a: 1 }', '! x'])(
    'the tag of %s is refused',
    value => {
      const [told] = refusals(`pattern: a.svg\ntitle: ${value}`);
      expect(told).toContain('A tag ("!...") stands before a value. | Take the tag out; values are plain.');
    },
  );

  test('a merge key is a key like any other', () => {
    expect(refusals('pattern: a.svg\nprint: &p { paper: a4 }\nfabrics: { <<: *p }')).toContain(
      '2:13 "<<" has no field "paper". | Choose from its fields: width, stretch, recovery, nap, repeat, role.',
    );
  });

  test('a few aliases are followed', () => {
    const { steps } = read(
      'pattern: a.svg\nsteps:\n  - unfold: &front { piece: front }\n  - remove piece: *front',
    );
    expect(steps[1]!.parameters).toEqual({ piece: 'front' });
  });

  test('many aliases, and aliases of aliases, are refused', () => {
    const many = Array.from({ length: 65 }, () => 'unfold: *f');
    expect(refusals(withSteps('unfold: &f { piece: a }', ...many)).join()).toContain(
      'More than 64 aliases are used.',
    );
    const bomb = ['a: &a [x, x, x, x, x, x, x, x, x]'];
    for (const [from, to] of ['ab', 'bc', 'cd', 'de', 'ef', 'fg', 'gh', 'hi'])
      bomb.push(`${to}: &${to} [${Array(9).fill(`*${from}`).join(', ')}]`);
    expect(refusals(`pattern: a.svg\n${bomb.join('\n')}`).join()).toContain('More than 64 aliases are used.');
  });

  test('an alias within itself, or of nothing, is refused', () => {
    expect(refusals('pattern: a.svg\nsteps: &s [ *s ]').join()).toContain(
      'The sheet holds too much, or holds itself.',
    );
    expect(refusals('pattern: a.svg\nsteps: *s').join()).toContain(
      'An alias stands for nothing named before it.',
    );
  });

  test.each([
    ['brackets', `a: ${'['.repeat(100_000)}`],
    ['braces', '{"a":'.repeat(40_000)],
    ['dashes', `${'- '.repeat(100_000)}a`],
    ['question marks', `${'? '.repeat(100_000)}a`],
    ['indents', Array.from({ length: 400 }, (_, i) => `${' '.repeat(i)}a:`).join('\n')],
  ])('deep nesting by %s is refused at once', (_, text) => {
    expect(refusals(text).join()).toMatch(/nested|holds too much/);
  });

  test('five megabytes are refused at once', () => {
    expect(
      refusals(withSteps(...Array(90_000).fill('close dart: { piece: front, dart: bust, into: hem }'))),
    ).toEqual([
      '1:1 The sheet is over 250 000 characters long. | Give an alteration sheet; they are a few thousand long.',
    ]);
  });

  test('a sheet just within the limits is judged', () => {
    expect(
      refusals(withSteps(...Array(4_400).fill('close dart: { piece: front, dart: bust, into: hem }'))),
    ).toEqual(['2:1 "steps" has over 500 steps. | Divide the work among several sheets.']);
    const keys = Array.from({ length: 18_000 }, (_, i) => `key${i}: 1`).join('\n');
    expect(refusals(`pattern: a.svg\n${keys}`)).toHaveLength(51);
  });

  test('keys are quoted in 40 printable characters at most', () => {
    const [told] = refusals(`pattern: a.svg\n"${'a'.repeat(39)}\\u202e\\u0007${'b'.repeat(500)}": 1`);
    expect(told).toContain(`no field "${'a'.repeat(39)}�…".`);
  });

  test('keys that mean something to JavaScript mean nothing here', () => {
    expect(refusals('pattern: a.svg\n__proto__: { polluted: 1 }')[0]).toContain(
      'The sheet has no field "__proto__".',
    );
    expect(({} as { polluted?: number }).polluted).toBeUndefined();
    expect(refusals(withSteps('constructor: { piece: front }'))[0]).toContain(
      'There is no verb "constructor".',
    );
  });

  test.each(['.inf', '.nan', '-.inf'])('the number %s is refused', value => {
    expect(refusals(withSteps(`shorten: { pieces: front, at: hem, by: ${value} }`))).toHaveLength(1);
  });

  test('names with control characters or line breaks are refused', () => {
    expect(refusals(withSteps('unfold: { piece: "a\\nb" }'))).toEqual([
      '3:22 "piece" is not a printable name of up to 100 characters. | Write letters, digits, spaces and signs on one line.',
    ]);
  });
});
