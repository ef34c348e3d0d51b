import { measured, verbs } from '@paperhinge/alter';
import { runSheet } from '@paperhinge/sheet';
import { expect, test } from 'vitest';
import { renamed } from '../../packages/sheet/src/replay/rename.js';
import { writtenFields } from '../../packages/sheet/src/replay/written-fields.js';
import { shiftPattern } from '../support/shift.js';
import { read, refusals, withSteps } from './sheets.js';

const shared = (among: string) => withSteps(`share dart: { piece: front, dart: bust, among: ${among} }`);
const { fields } = verbs.find(v => v.verb === 'share dart')!;

test('a field may hold several things with fields of their own, or one of them alone', () => {
  expect(
    read(shared('[{ edge: hem, share: 60 % }, { edge: shoulder, at: 1/2 }]')).steps[0]!.parameters,
  ).toEqual({
    piece: 'front',
    dart: 'bust',
    among: [
      { edge: 'hem', share: 0.6 },
      { edge: 'shoulder', at: { share: 0.5 } },
    ],
  });
  expect(read(shared('{ edge: hem }')).steps[0]!.parameters).toMatchObject({ among: [{ edge: 'hem' }] });
});

test('what is wrong in one of them is told where it stands', () => {
  expect(refusals(shared('[{ edge: hem }, { egde: shoulder }]'))[0]).toMatch(/egde.*edge/);
  expect(refusals(shared('[]'))[0]).toMatch(/among/);
  const unknown = read(shared('[{ edge: hem }, { edge: sholder }]'));
  expect(() => runSheet(unknown, shiftPattern())).toThrow(/sholder/);
});

test('is written back and put into the names of another pattern', () => {
  const { parameters } = read(shared('[{ edge: hem, share: 60 % }, { edge: shoulder, at: 1/2 from neck }]'))
    .steps[0]!;
  expect(writtenFields(fields, parameters)).toEqual({
    piece: 'front',
    dart: 'bust',
    among: [
      { edge: 'hem', share: '60 %' },
      { edge: 'shoulder', at: '50 % from neck' },
    ],
  });
  const none = { pieces: {}, edges: {}, darts: {}, lines: {}, marks: {}, seams: {}, fabrics: {} };
  const edges = { 'front.hem': 'waist', 'front.neck': 'collar' };
  expect(renamed(fields, parameters, { ...none, edges })).toMatchObject({
    among: [{ edge: 'waist' }, { at: { from: 'collar' } }],
  });
});

test('an amount in one of them may be what it is to bring about', () => {
  const sheet = read(
    shared(
      '[{ edge: hem, share: { so that: length of front.hem, is: 340 } }, { edge: shoulder, share: 10 % }]',
    ),
  );
  const { altered } = runSheet(sheet, shiftPattern());
  const hem = { of: 'edges', edges: [{ piece: 'front', edge: 'hem' }] } as const;
  expect(measured(altered, hem)).toBeCloseTo(340, 2);
});
