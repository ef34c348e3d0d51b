import { listed, nearestName, quoted, suggestion } from '@paperhinge/geometry/sayings';
import { expect, test } from 'vitest';

const edges = ['neck', 'shoulder', 'armhole', 'side-upper', 'side-lower', 'hem', 'centre-front'];

test.each([
  ['shoudler', 'shoulder'],
  ['Neck', 'neck'],
  ['side uper', 'side-upper'],
  ['centre_front', 'centre-front'],
  ['hm', 'hem'],
  ['arm hole', 'armhole'],
])('%s most likely means %s', (name, meant) => {
  expect(nearestName(name, edges)).toBe(meant);
});

test.each(['cuff', 'x', '', 'z'.repeat(10_000)])('nothing is suggested for "%s"', name => {
  expect(nearestName(name, edges)).toBeUndefined();
});

test('a remedy suggests the nearest name, or lists those there are', () => {
  expect(suggestion('shoudler', edges, 'edges')).toBe('Did you mean "shoulder"?');
  expect(suggestion('cuff', ['neck', 'hem'], 'edges')).toBe('Use one of its edges: neck, hem.');
  expect(suggestion('cuff', [], 'edges')).toBe('There are no edges to choose from.');
});

test('quoted names are printable and short', () => {
  expect(quoted('neck')).toBe('"neck"');
  expect(quoted('a\nb\u202e')).toBe('"a�b�"');
  expect([...quoted('😀'.repeat(100))]).toHaveLength(43);
  expect(
    listed(
      Array.from({ length: 20 }, (_, i) => `e${i}`),
      3,
    ),
  ).toBe('e0, e1, e2, …');
});

test('the beginning of a name stands for it', () => {
  expect(nearestName('bust', ['head girth', 'bust girth'])).toBe('bust girth');
  expect(nearestName('bu', ['bust girth'])).toBeUndefined();
});
