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

test('another number is no slip: A5 is not A4, nor size 12 size 14', () => {
  expect(nearestName('a5', ['a4', 'a3'])).toBeUndefined();
  expect(nearestName('b4', ['a4', 'a3'])).toBeUndefined();
  expect(nearestName('roll-30', ['roll-24', 'roll-36'])).toBeUndefined();
  expect(nearestName('rol 36', ['roll-24', 'roll-36'])).toBe('roll-36');
  expect(nearestName('mn', ['mm', 'cm', 'in'])).toBe('mm');
});
