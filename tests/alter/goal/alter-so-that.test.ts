import { alterSoThat, type Goal, type Measure, measured } from '@paperhinge/alter';
import { at, definePattern, definePiece, type Pattern, polyline } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { recutNecklineVerb } from '../../../packages/alter/src/operations/recut-neckline.js';
import { shortenVerb } from '../../../packages/alter/src/operations/shorten.js';
import { spreadVerb } from '../../../packages/alter/src/operations/spread.js';
import { takeInVerb } from '../../../packages/alter/src/operations/take-in.js';
import type { AnyVerb } from '../../../packages/alter/src/verb/form.js';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldFinding } from '../../support/told.js';

/** A half panel on the fold, 100 wide and 400 long, with levels 100 and 300 down. */
const panel = (name: string) =>
  definePiece({
    name,
    outline: [
      { name: 'waist', path: polyline(at(0, 0), at(100, 0)) },
      { name: 'side', path: polyline(at(100, 0), at(100, 400)) },
      { name: 'hem', kind: 'hem', path: polyline(at(100, 400), at(0, 400)) },
      { name: 'centre', kind: 'fold', path: polyline(at(0, 400), at(0, 0)) },
    ],
    lines: [
      { kind: 'grain', name: 'grain', path: polyline(at(20, 50), at(20, 350)) },
      { kind: 'level', name: 'hip', path: polyline(at(0, 100), at(100, 100)) },
      { kind: 'level', name: 'knee', path: polyline(at(0, 300), at(100, 300)) },
    ],
  });
const run = (piece: string, edge: string) => ({ piece, edge, reversed: false });
const skirt: Pattern = definePattern({
  name: 'skirt',
  pieces: [panel('front'), panel('back')],
  seams: [{ name: 'side', a: [run('front', 'side')], b: [run('back', 'side')], ease: { mm: 0 } }],
});

const soThat = (measure: Measure, is: Goal['is']): Goal => ({ soThat: measure, is });
const alter = (verb: AnyVerb, pattern: Pattern, given: object) => alterSoThat(verb, pattern, given);
const amountOf = (findings: ReturnType<typeof alter>['findings']) =>
  findings.filter(f => f.code === 'amount-found').map(f => f.figures?.amountMm);

describe('an amount given by what it brings about', () => {
  // A wedge of 40 at a hem of 100 is bridged by 40: the hem is 140 long.
  test('a spread is as wide as its hem is to be longer', () => {
    const hem: Measure = { of: 'edges', edges: [{ piece: 'front', edge: 'hem' }] };
    const done = alter(spreadVerb, skirt, {
      piece: 'front',
      from: { edge: 'hem' },
      to: { edge: 'waist' },
      by: soThat(hem, 140),
    });
    expect(amountOf(done.findings)[0]).toBeCloseTo(40, 2);
    expect(measured(done.pattern, hem)).toBeCloseTo(140, 2);
  });

  // Four edges of 100 all round are 400; taken in to 360 is 40 in the garment.
  test('a seam is taken in until the girth at a level is what is wanted', () => {
    const done = alter(takeInVerb, skirt, { seam: 'side', by: soThat({ of: 'girth', level: 'hip' }, 360) });
    expect(amountOf(done.findings)[0]).toBeCloseTo(40, 2);
  });

  test('ease counts from the wearer', () => {
    const wearer = { 'hip girth': 340 };
    const done = alter(takeInVerb, skirt, {
      seam: 'side',
      by: soThat({ of: 'ease', level: 'hip', wearer }, [10, 50]),
    });
    expect(amountOf(done.findings)[0]).toBeCloseTo(10, 2);
  });

  // 100 × (400 − by) = 30 000 mm².
  test('a piece is shortened to an area', () => {
    const done = alter(shortenVerb, skirt, {
      pieces: ['front'],
      at: 'hem',
      by: soThat({ of: 'area', piece: 'front' }, 30000),
    });
    expect(amountOf(done.findings)[0]).toBeCloseTo(100, 1);
  });

  test('the finding says the amount and what it came to', () => {
    const done = alter(shortenVerb, skirt, {
      pieces: ['front', 'back'],
      at: 'hem',
      by: soThat({ of: 'height', piece: 'back' }, 350),
    });
    expect(done.findings.map(f => toldFinding(f))).toContainEqual(
      expect.objectContaining({ message: 'With 50 mm for "by", the height of the back is 350 mm.' }),
    );
  });

  test('a neck of the drawn shift is cut deep enough for its opening, all round', () => {
    const done = alter(recutNecklineVerb, shiftPattern(), {
      piece: 'front',
      shape: 'round',
      depth: soThat({ of: 'neck' }, 640),
      halfWidth: 90,
    });
    expect(measured(done.pattern, { of: 'neck' })).toBeCloseTo(640, 2);
  });
});

describe('two goals where two amounts are free', () => {
  // From 400 to 380 at the hip and 330 at the knee: a straight taper a + (b − a) s, s = (y − 0) / 400.
  test('both ends of a tapered seam are found together', () => {
    const done = alter(takeInVerb, skirt, {
      seam: 'side',
      by: [soThat({ of: 'girth', level: 'hip' }, 380), soThat({ of: 'girth', level: 'knee' }, 330)],
      from: { share: 0.25 },
      to: { share: 0.75 },
    });
    expect(measured(done.pattern, { of: 'girth', level: 'hip' })).toBeCloseTo(380, 2);
    expect(measured(done.pattern, { of: 'girth', level: 'knee' })).toBeCloseTo(330, 2);
    const [atHip, atKnee] = amountOf(done.findings);
    expect(atHip).toBeCloseTo(20, 1);
    expect(atKnee).toBeCloseTo(70, 1);
  });

  test('depth and half width of a neckline together', () => {
    const done = alter(recutNecklineVerb, shiftPattern(), {
      piece: 'front',
      shape: 'V',
      depth: soThat({ of: 'neck' }, 600),
      halfWidth: soThat({ of: 'edges', edges: [{ piece: 'front', edge: 'shoulder' }] }, 90),
    });
    expect(measured(done.pattern, { of: 'neck' })).toBeCloseTo(600, 2);
    expect(
      measured(done.pattern, { of: 'edges', edges: [{ piece: 'front', edge: 'shoulder' }] }),
    ).toBeCloseTo(90, 2);
  });
});

describe('what is refused', () => {
  const shortened = (is: Goal['is']) => () =>
    alter(shortenVerb, skirt, {
      pieces: ['front'],
      at: 'hem',
      by: soThat({ of: 'height', piece: 'front' }, is),
    });

  test('a goal that no amount reaches, with how near it comes; the remedy mends it', () => {
    const error = refusalOf(shortened(500));
    expect(error).toMatchObject({ code: 'goal-not-reached' });
    const { message, remedy } = error;
    expect(message).toBe(
      'No amount of "by" that can be done gives what is wanted of the height of the front. The nearest is 400 mm, with 0 mm.',
    );
    expect(remedy).toBe('Write is: [400 mm, 400 mm] to have the nearest.');
    expect(shortened([400, 400])).not.toThrow();
  });

  test('a level that is not there, with those that are', () => {
    const by = soThat({ of: 'girth', level: 'hips' }, 360);
    expect(refusalOf(() => alter(takeInVerb, skirt, { seam: 'side', by }))).toMatchObject({
      code: 'goal-level-unknown',
      remedy: expect.stringContaining('hip'),
    });
  });

  test('an ease where the wearer is not measured', () => {
    const by = soThat({ of: 'ease', level: 'hip', wearer: {} }, 20);
    expect(refusalOf(() => alter(takeInVerb, skirt, { seam: 'side', by }))).toMatchObject({
      code: 'goal-body-unknown',
    });
  });

  test('the sweep of an edge that is no hem', () => {
    const by = soThat({ of: 'sweep', edge: { piece: 'front', edge: 'waist' } }, 360);
    expect(refusalOf(() => alter(takeInVerb, skirt, { seam: 'side', by }))).toMatchObject({
      code: 'goal-hem-unknown',
    });
  });

  test('more goals than can be told apart', () => {
    const goal = soThat({ of: 'neck' }, 600);
    const given = { seam: 'side', by: [goal, goal], from: goal };
    const verb = { ...takeInVerb, fields: { ...takeInVerb.fields, from: takeInVerb.fields.by } };
    expect(refusalOf(() => alter(verb as AnyVerb, skirt, given))).toMatchObject({ code: 'too-many-goals' });
  });

  test('what the step itself refuses for every amount is told as it is', () => {
    const by = soThat({ of: 'neck' }, 600);
    expect(refusalOf(() => alter(shortenVerb, skirt, { pieces: ['front'], at: 'ankle', by }))).toMatchObject({
      code: 'unknown-line',
    });
  });
});
