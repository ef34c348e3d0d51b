import { type AnyVerb, perform, verbs } from '@paperhinge/alter';
import { closeDart } from '@paperhinge/alter/darts';
import { shorten } from '@paperhinge/alter/length';
import type { Field } from '@paperhinge/alter/verb';
import { type Pattern, PatternError } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { placesWithin, valueAt, withValueAt } from '../../support/places-within.js';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf } from '../../support/told.js';

/** What an empty form, a slip of the pen or plain JavaScript may hand over. */
const hostile: readonly unknown[] = [
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  1e12,
  -1e12,
  1.5,
  '',
  '  ',
  'nonsense',
  '12',
  null,
  true,
  [],
  [Number.NaN, 1],
  [1, 2, 3],
  ['nonsense'],
  {},
  { share: Number.NaN },
  { mm: '3' },
  { share: 0.5, mm: 3 },
  { piece: 'front' },
  { edge: 7 },
  12n,
  Symbol('x'),
  () => 1,
  new Date(Number.NaN),
];

const isText = (value: unknown): boolean => typeof value === 'string' && value.trim() !== '';
const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);
/** Whether a value has the form of its field, so that only the pattern can tell that it will not do. */
const hasForm: Readonly<Partial<Record<Field['kind'], (value: unknown, field: Field) => boolean>>> = {
  length: (value, { least, most }) => isNumber(value) && value >= least! && value <= most!,
  lengths: (value, { least, most }) => isNumber(value) && value >= least! && value <= most!,
  share: (value, { least, most }) => isNumber(value) && value >= least! && value <= most!,
  angle: (value, { least, most }) => isNumber(value) && value >= least! && value <= most!,
  count: () => false,
  choice: () => false,
  'yes-or-no': value => value === true,
  pieces: value => Array.isArray(value) && value.length > 0 && value.every(isText),
  marks: value => Array.isArray(value) && value.length > 0 && value.every(isText),
  'edge-of-piece': () => false,
  'edges-of-pieces': () => false,
  place: () => false,
  places: () => false,
  range: () => false,
  ease: () => false,
  group: () => false,
  groups: () => false,
};

/** A value of each kind that the shift has. */
const sound: Readonly<Partial<Record<Field['kind'], unknown>>> = {
  piece: 'front',
  pieces: ['front'],
  edge: 'hem',
  'edge-of-piece': { piece: 'front', edge: 'hem' },
  'edges-of-pieces': [{ piece: 'front', edge: 'hem' }],
  dart: 'bust',
  line: 'waist',
  mark: 'bust point',
  marks: ['bust point'],
  seam: 'side',
  length: 5,
  lengths: 5,
  share: 0.5,
  angle: 0.2,
  'new-name': 'new',
  place: { share: 0.5 },
  range: [{ share: 0.25 }, { share: 0.75 }],
};
function soundValue({ kind, words, fields }: Field): unknown {
  if (!fields) return words?.[0] ?? sound[kind];
  const needed = Object.entries(fields).filter(([, inner]) => inner.giving === 'needed');
  const group = Object.fromEntries(needed.map(([name, inner]) => [name, soundValue(inner)]));
  return kind === 'groups' ? [group] : group;
}
const soundParameters = (verb: AnyVerb): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(verb.fields)
      .filter(([, field]) => field.giving === 'needed')
      .map(([name, field]) => [name, soundValue(field)]),
  );

const shut = ['field-not-usable', 'field-out-of-range', 'choice-unknown', 'field-missing', 'field-unknown'];

/** What plain JavaScript may hand over as a pattern, and where its fault is. */
const noPatterns: readonly (readonly [string, unknown])[] = [
  ['pattern', undefined],
  ['pattern', null],
  ['pattern', 7],
  ['pattern', 'front'],
  ['pattern', [shiftPattern()]],
  ['pattern.pieces', {}],
  ...[undefined, null, {}, 'front'].map(pieces => ['pattern.pieces', { ...shiftPattern(), pieces }] as const),
  ...[undefined, null, {}, 'side'].map(seams => ['pattern.seams', { ...shiftPattern(), seams }] as const),
  ['pattern.pieces.0', { ...shiftPattern(), pieces: [null] }],
  ['pattern.pieces.0', { ...shiftPattern(), pieces: new Array(1) }],
  ['pattern.pieces.0.name', { ...shiftPattern(), pieces: [{}] }],
  ['pattern.seams.0', { ...shiftPattern(), seams: [null] }],
  ['pattern.seams.0.name', { ...shiftPattern(), seams: [{}] }],
  ['pattern.seams.0.b', { ...shiftPattern(), seams: [{ name: 'side', a: [] }] }],
];

const sleeve = shiftPattern().pieces.findIndex(({ name }) => name === 'sleeve');
/** A coordinate, an allowance and a notch's place of a piece that few verbs are asked to touch. */
const untouched = placesWithin(shiftPattern().pieces[sleeve]).filter(
  (place, i, all) =>
    ['x', 'allowance', 'at'].includes(place.at(-1)!) &&
    typeof valueAt(shiftPattern().pieces[sleeve], place) === 'number' &&
    all.findIndex(other => other.at(-1) === place.at(-1)) === i,
);

describe('no pattern', () => {
  const pattern = shiftPattern();
  const shorter = { pieces: ['front'], at: 'hem', by: 20 };
  const wholeDart = { piece: 'front', dart: 'bust', into: 'hem' };

  test.each([
    ['shorten', (given: Pattern) => shorten(given, shorter)],
    ['close dart', (given: Pattern) => closeDart(given, wholeDart)],
  ])('is refused by the functions that carry no more than they need: %s', (_, work) => {
    for (const [at, given] of noPatterns)
      expect(refusalOf(() => work(given as Pattern))).toMatchObject({
        code: 'pattern-not-usable',
        facts: { at },
      });
    expect(() => work(pattern)).not.toThrow();
  });

  test('is one with a number anywhere that is not finite', () => {
    const numbers = placesWithin(pattern).filter(place => typeof valueAt(pattern, place) === 'number');
    expect(numbers.length).toBeGreaterThan(200);
    for (const place of numbers)
      for (const value of [Number.NaN, Number.POSITIVE_INFINITY])
        expect(
          refusalOf(() => shorten(withValueAt(pattern, place, value) as Pattern, shorter)),
        ).toMatchObject({ code: 'pattern-not-usable', facts: { at: ['pattern', ...place].join('.') } });
  });

  test('whatever stands in the place of any of its things, no untyped error comes of it', () => {
    for (const place of placesWithin(pattern))
      for (const value of [undefined, null, {}, [], [null], 7, 'x'])
        try {
          shorten(withValueAt(pattern, place, value) as Pattern, shorter);
        } catch (error) {
          expect([place.join('.'), value, error]).toEqual([place.join('.'), value, expect.any(PatternError)]);
        }
  });
});

describe.each(verbs.map(verb => [verb.verb, verb] as const))('%s', (_, verb) => {
  const pattern = shiftPattern();
  const cases = Object.entries(verb.fields).flatMap(([name, field]) =>
    hostile
      .filter(value => !(hasForm[field.kind] ?? isText)(value, field))
      .map(value => [name, value] as const),
  );

  test('refuses at the door whatever is no value of a field', () => {
    expect(cases.length).toBeGreaterThan(10);
    for (const [name, value] of cases) {
      const told = refusalOf(() => perform(verb, pattern, { ...soundParameters(verb), [name]: value }));
      expect([name, shut.includes(told.code)]).toEqual([name, true]);
      expect(told.message).not.toMatch(/undefined|NaN|\[object/);
      expect(told.remedy).not.toBe('');
    }
  });

  test('refuses what is no pattern, and a number in it that is none, also where it does nothing', () => {
    expect(untouched).toHaveLength(3);
    const broken = untouched.flatMap(place =>
      [Number.NaN, Number.NEGATIVE_INFINITY].map(value => {
        const where = ['pieces', `${sleeve}`, ...place];
        return [['pattern', ...where].join('.'), withValueAt(pattern, where, value)] as const;
      }),
    );
    for (const [at, given] of [...noPatterns, ...broken]) {
      const told = refusalOf(() => perform(verb, given as Pattern, soundParameters(verb)));
      expect(told).toMatchObject({ code: 'pattern-not-usable', facts: { at } });
      expect(told.message).toContain(at);
      expect(told.remedy).toContain('from its file');
    }
  });

  test('refuses fields it does not have, and what is no fields at all', () => {
    for (const name of ['nonsense', 'constructor', 'toString', '__proto__x'])
      expect(refusalOf(() => perform(verb, pattern, { ...soundParameters(verb), [name]: 1 })).code).toBe(
        'field-unknown',
      );
    for (const given of [null, undefined, 'front', 7, [], [1]])
      expect(refusalOf(() => perform(verb, pattern, given as never)).code).toBe('fields-expected');
  });

  test('misses what must be given', () => {
    for (const [name, field] of Object.entries(verb.fields)) {
      if (field.giving !== 'needed') continue;
      const told = refusalOf(() => perform(verb, pattern, { ...soundParameters(verb), [name]: undefined }));
      expect(told).toMatchObject({ code: 'field-missing', facts: { fields: [name] } });
    }
  });

  test('never throws anything but a typed error where the form is right', () => {
    for (const [name, field] of Object.entries(verb.fields))
      for (const value of hostile.filter(v => (hasForm[field.kind] ?? isText)(v, field))) {
        try {
          perform(verb, pattern, { ...soundParameters(verb), [name]: value });
        } catch (error) {
          expect(error).toBeInstanceOf(PatternError);
        }
      }
  });
});
