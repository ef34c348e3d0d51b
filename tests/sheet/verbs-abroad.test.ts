import { verbs } from '@paperhinge/alter';
import { expect, test } from 'vitest';
import { verbAbroad } from '../../packages/sheet/src/words/verbs-abroad.js';

const names = verbs.map(v => v.verb);

test.each([
  ['verlängern', 'lengthen'],
  ['verlaengert', 'lengthen'],
  ['Abnäher schließen', 'close dart'],
  ['enger machen', 'take in'],
  ['Bündchen zeichnen', 'draft band'],
  ['Bund zeichnen', 'draft waistband'],
])('%s is %s', (written, verb) => {
  expect(verbAbroad(written, names)).toBe(verb);
});

test('no verb of ours is taken for a word of another tongue', () => {
  expect(names.filter(name => verbAbroad(name, names) !== undefined)).toEqual([]);
});

test('a verb that is not there is not proposed', () => {
  expect(verbAbroad('kürzen', ['lengthen'])).toBeUndefined();
});
