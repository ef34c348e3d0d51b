// The sentence of a step on the page: a field that holds several things is said value by value, each a blank of its own.
import { verbForms } from '@paperhinge/alter';
import { expect, test } from 'vitest';
import type { Declared } from '../../demos/viewer/src/engine/view.js';
import { eachSaid, fieldAt, partsOf, valueAt } from '../../demos/viewer/src/sheet/sentence.js';

const share = verbForms.find(v => v.verb === 'share dart') as unknown as Declared;
const fields = {
  piece: 'front',
  dart: 'bust',
  among: [
    { dart: 'waist', share: '50 %' },
    { edge: 'shoulder', at: '1/2' },
  ],
};

test('several things are said one after the other, each value at its own place', () => {
  const parts = partsOf('Share out among {among}', () => true).flatMap(part => eachSaid(part, share, fields));
  expect(parts).toEqual([
    { words: 'Share out among ' },
    { field: 'among.0.dart' },
    { words: ' ' },
    { field: 'among.0.share' },
    { words: '; ' },
    { field: 'among.1.edge' },
    { words: ' ' },
    { field: 'among.1.at' },
  ]);
  expect(valueAt(fields, 'among.1.edge')).toBe('shoulder');
  expect(fieldAt(share, 'among.1.edge')?.kind).toBe('edge');
  expect(fieldAt(share, 'among.0.share')?.kind).toBe('share');
});

test('one alone, or none yet, is one blank', () => {
  const part = { field: 'among' };
  expect(eachSaid(part, share, { among: { edge: 'hem' } })).toEqual([part]);
  expect(eachSaid(part, share, {})).toEqual([part]);
  expect(eachSaid({ field: 'dart' }, share, fields)).toEqual([{ field: 'dart' }]);
});
