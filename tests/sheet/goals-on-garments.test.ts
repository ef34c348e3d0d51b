// Every measure that an amount may be given by, brought about on garments of the demos by the verb a maker would take.

import { measured } from '@paperhinge/alter';
import type { Pattern } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { measureOf } from '../../packages/sheet/src/fields/measure.js';
import { runSteps } from '../../packages/sheet/src/run-steps.js';
import { stateOf } from '../../packages/sheet/src/state.js';
import { demoPattern } from '../support/demo-pattern.js';
import { read } from './sheets.js';

const wearer = { 'bust girth': 920, 'hip girth': 980, 'waist height': 1040 };

/** What a step leaves of a demo. */
function altered(pattern: string, step: string): Pattern {
  const given = 'wearer: { bust girth: 920, hip girth: 980, waist height: 1040 }';
  const { steps } = read([`pattern: ${pattern}.svg`, given, 'steps:', `  - ${step}`].join('\n'));
  return runSteps(stateOf(demoPattern(pattern)), steps).at(-1)!.state.pattern;
}
const is = (pattern: Pattern, measure: string): number => measured(pattern, measureOf(measure, wearer)!);

describe('one amount', () => {
  test.each([
    [
      'darted-dress',
      'sweep of skirt front.hem',
      1100,
      (by: string) => `let out: { seam: skirt side, by: ${by}, from: end, to: start }`,
    ],
    [
      'woven-shift',
      'neck opening',
      620,
      (by: string) => `recut neckline: { piece: front, shape: round, depth: ${by} }`,
    ],
    ['darted-dress', 'girth at hip', 970, (by: string) => `take in: { seam: skirt side, by: ${by} }`],
    ['woven-shift', 'ease at bust', 120, (by: string) => `take in: { seam: side, by: ${by} }`],
    [
      'woven-shift',
      'ease of armhole',
      25,
      (by: string) => `change cap: { piece: sleeve, by: ${by}, keep: width }`,
    ],
    [
      'darted-dress',
      'length of skirt side',
      500,
      (by: string) =>
        `level hem: { pieces: [skirt front, skirt back], from: waist, stands: waist height, height: ${by} }`,
    ],
    [
      'yoke-skirt',
      'height of front',
      500,
      (by: string) => `shorten: { pieces: [front, back], at: hem, by: ${by} }`,
    ],
    [
      'trousers',
      'area of pocket side',
      40000,
      (by: string) =>
        `draft slant pocket: { name: pocket, piece: front, waist: waist, side: outseam, depth: ${by} }`,
    ],
  ])('on the %s: the %s', (pattern, measure, wanted, step) => {
    const figure = measure.startsWith('area') ? `${wanted / 100} cm2` : `${wanted}`;
    const after = altered(pattern, step(`{ so that: ${measure}, is: ${figure} }`));
    expect(Math.abs(is(after, measure) - wanted)).toBeLessThan(measure.startsWith('area') ? 10 : 0.01);
  });
});

describe('two amounts at once', () => {
  test('both ends of a slash: the hem and the waist of a skirt', () => {
    const slash = `{ from: { edge: hem, at: 1/3 }, to: { edge: waist, at: 3/4 }, by: { so that: length of skirt front.hem, is: 300 }, other end: { so that: length of skirt front.waist, is: 215 } }`;
    const after = altered('darted-dress', `slash: { piece: skirt front, slashes: [${slash}] }`);
    expect(is(after, 'length of skirt front.hem')).toBeCloseTo(300, 2);
    expect(is(after, 'length of skirt front.waist')).toBeCloseTo(215, 2);
  });
  test('width and height of a pocket: its width and its area', () => {
    const step =
      'draft patch pocket: { name: bag, piece: front, width: { so that: width of bag, is: 120 }, height: { so that: area of bag, is: 168 cm2 }, beside: { edge: centre, at: 200 mm from top, in: 110 } }';
    const after = altered('yoke-skirt', step);
    expect(is(after, 'width of bag')).toBeCloseTo(120, 2);
    expect(is(after, 'area of bag') / 100).toBeCloseTo(168, 1);
    expect(is(after, 'height of bag')).toBeCloseTo(140, 1);
  });
});
