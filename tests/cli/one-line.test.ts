import { PatternError } from '@paperhinge/geometry';
import { expect, test } from 'vitest';
import { errorLine, named } from '../../packages/cli/src/one-line.js';
import { wordsFor } from '../../packages/cli/src/speech.js';

const words = await wordsFor();

const line = (where: object, code = 'unknown-edge') =>
  errorLine(
    new PatternError(code, { facts: { piece: 'front', name: 'hemm', names: ['hem', 'side'] }, where }),
    words,
  );

test('an error is file, line, column, what, where and remedy on one line', () => {
  expect(line({ file: 'top.yaml', line: 12, column: 5, step: 2, piece: 'front', edge: 'hemm' })).toBe(
    'top.yaml:12:5: The front has no edge "hemm" (step 2, piece front, edge hemm): Did you mean "hem"?',
  );
});

test('an error of a whole file points to its beginning', () => {
  expect(line({ file: 'top.yaml' })).toBe('top.yaml:1:1: The front has no edge "hemm": Did you mean "hem"?');
});

test('names with line breaks and terminal codes cannot break the line', () => {
  expect(line({ file: 'a\nb.yaml', piece: '\u001b[31mred\u202e' })).toBe(
    'a b.yaml:1:1: The front has no edge "hemm" (piece �[31mred�): Did you mean "hem"?',
  );
});

test('what stands between two names is no name, and what is to be typed is told whole', () => {
  const between = errorLine(
    new PatternError('edges-do-not-meet', {
      facts: {
        edges: ['c', 'a'].map(edge => ({ piece: 'tri', edge })),
        points: ['D', 'A'],
      },
    }),
    words,
  );
  expect(between).toContain('ends at "D", and the a of the tri, which comes after it, begins at "A"');
  const layers = ['black solid', 'black dashed 6-2', 'black dashed 1-2'];
  const typed = errorLine(new PatternError('outlines-nested', { facts: { layers } }), words);
  expect(typed).toContain('--sizes "S=black solid, M=black dashed 6-2, L=black dashed 1-2"');
});

test('no more than 40 characters of a name are told, in the line or in JSON', () => {
  const name = `secret ${'x'.repeat(90)}`;
  const error = new PatternError('duplicate-edge', {
    facts: { name },
    where: { file: 'top.yaml', piece: name, edge: name },
  });
  for (const told of [errorLine(error, words), JSON.stringify(named(error, words))]) {
    expect(told).toContain('secret xxx');
    expect(told).not.toContain('x'.repeat(40));
  }
});
