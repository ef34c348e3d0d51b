import { cautionsFor } from '@paperhinge/alter';
import { expect, test } from 'vitest';
import { patternOf, rectangle } from '../../support/polygon-piece.js';
import { shiftPattern } from '../../support/shift.js';
import { sentence } from '../../support/told.js';

const codes = (input: Parameters<typeof cautionsFor>[0]) => cautionsFor(input).map(c => c.code);
const skirt = patternOf([rectangle('skirt', 500, 600)]);

test('the printed square and the blades are always cautioned of', () => {
  expect(codes({ pattern: skirt })).toEqual(['printed-square', 'blades']);
});

test('a garment with a neck must pass the head', () => {
  expect(codes({ pattern: shiftPattern() })).toEqual(['printed-square', 'blades', 'head-opening']);
});

test('a head smaller than an adult one calls for the cautions of children', () => {
  const child = codes({ pattern: skirt, wearer: { 'head girth': 500 } });
  expect(child).toEqual(['printed-square', 'blades', 'children-small-parts', 'cords', 'sleepwear-flame']);
  expect(codes({ pattern: skirt, wearer: { 'head girth': 500 }, use: { child: false } })).toHaveLength(2);
});

test('cords and sleepwear are known by their names', () => {
  const hood = patternOf([rectangle('hood casing', 500, 60)]);
  expect(codes({ pattern: hood })).toContain('cords');
  expect(codes({ pattern: { ...skirt, name: 'Nightgown' } })).toContain('sleepwear-flame');
});

test('what the maker says of its use is heeded', () => {
  const use = { dressesAlone: true, afterSurgery: true };
  expect(codes({ pattern: skirt, use }).slice(2)).toEqual(['back-closure', 'after-surgery']);
});

test('cautions that touch on rules leave them to local rules and licensed practice, and give no limits', () => {
  const all = cautionsFor({ pattern: skirt, use: { child: true, sleepwear: true, afterSurgery: true } });
  const ruled = all.filter(c => /^(children|cords|sleepwear|after)/.test(c.code));
  expect(ruled.length).toBe(4);
  for (const caution of ruled) {
    const text = sentence(caution);
    expect(text).toContain('Local rules and licensed practice decide.');
    expect(text).not.toMatch(/\d/);
  }
});
