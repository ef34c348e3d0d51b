import { changeDart } from '@paperhinge/alter/darts';
import { checkPattern, measurePattern, type Pattern, validatePattern, walkSeams } from '@paperhinge/geometry';
import { dartsOf, pleatsOf } from '@paperhinge/geometry/pattern';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { toldDid } from '../../support/told.js';
import { anyBodice, areaOf, block, lengthOf, mouth, only, patternOf, refusal } from '../hinge/pieces.js';

type Into = Parameters<typeof changeDart>[1]['into'];
const change = (into: Into, pattern: Pattern = patternOf(block()), piece = 'block', stitched = 0) =>
  changeDart(pattern, { piece, dart: 'bust', into, stitched });

describe('a dart changed into ease or gathers', () => {
  test('leaves the edge as much longer as it took in, between two notches', () => {
    const after = only(change('gathers').pattern);
    expect(dartsOf(after)).toEqual([]);
    expect(lengthOf(after, 'side-upper')).toBeCloseTo(185 + mouth, 9);
    expect(lengthOf(after, 'side-lower')).toBeCloseTo(385, 9);
    expect(after.notches.map(n => [n.edge, n.at])).toEqual([
      ['side-upper', 185],
      ['side-upper', 185 + mouth],
    ]);
  });
  test('gives the area the dart’s triangle', () => {
    const depth = Math.sqrt(120 ** 2 - 15 ** 2);
    expect(areaOf(only(change('ease').pattern))).toBeCloseTo(areaOf(block()) + (mouth * depth) / 2, 6);
  });
  test('lets its seam take so much ease, and the seam still matches', () => {
    const before = shiftPattern();
    const { pattern } = change('ease', before, 'front');
    const was = measurePattern(before).seams.side!,
      is = measurePattern(pattern).seams.side!;
    expect(is.easeWantedMm - was.easeWantedMm).toBeCloseTo(32, 1);
    expect(is.matches).toBe(true);
    expect(walkSeams(pattern).filter(w => !w.matches)).toEqual([]);
    expect(pattern.seams.find(s => s.name === 'side')!.takenUp).toBe('eased');
    expect(toldDid(change('gathers', before, 'front'))).toContain(
      'taken up in the side seam between two notches',
    );
    expect(checkPattern(pattern).filter(f => f.severity === 'fault')).toEqual([]);
  });
  test('is told where nothing takes it up', () => {
    expect(change('ease').findings.map(f => f.code)).toEqual(['dart-edges-unsewn']);
  });
});

describe('a dart changed into a fold', () => {
  test.each(['knife pleat', 'box pleat', 'inverted pleat', 'tuck'] as const)(
    'into a %s keeps every edge',
    into => {
      const done = change(into, shiftPattern(), 'front', 60);
      const [fold] = pleatsOf(done.pattern.pieces[0]!);
      expect(fold).toMatchObject({ name: 'bust', kind: into.split(' ')[0], stitched: 60, towards: 'end' });
      expect(walkSeams(done.pattern).filter(w => !w.matches)).toEqual([]);
      validatePattern(done.pattern);
      expect(done.became!.things).toContainEqual({
        was: { piece: 'front', dart: 'bust' },
        now: { piece: 'front', pleat: 'bust' },
      });
    },
  );
  test('lies as the dart was pressed', () => {
    const parts = block().outline.parts.map(p =>
      p.type === 'dart' ? { ...p, pressed: 'start' as const } : p,
    );
    const pressed = patternOf({ ...block(), outline: { parts } });
    expect(pleatsOf(only(change('tuck', pressed).pattern))[0]!.towards).toBe('start');
  });
});

test('any bodice whose dart is eased stays sound, its notches where they were', () => {
  fc.assert(
    fc.property(anyBodice, piece => {
      const { pattern } = change('ease', patternOf(piece));
      validatePattern(pattern);
      const after = only(pattern);
      expect(after.notches.filter(n => n.edge !== 'side-upper')).toEqual(
        piece.notches.filter(n => n.edge !== 'side-upper'),
      );
    }),
    { numRuns: 40 },
  );
});

test('what is not there, or no such fold, is refused', () => {
  expect(() => changeDart(patternOf(block()), { piece: 'block', dart: 'waist', into: 'ease' })).toThrow(
    refusal('unknown-dart', /bust/),
  );
  expect(() => change('smocking' as Into)).toThrow(expect.objectContaining({ code: 'choice-unknown' }));
});

describe('a dart changed into flare', () => {
  // check-values §7 [derived]: a dart 30 wide and 120 long, closed, opens a hem 400 mm below its point by 100.
  test('opens the hem as closing it there does', () => {
    const done = change('flare');
    expect(lengthOf(only(done.pattern), 'hem') - lengthOf(block(), 'hem')).toBeCloseTo(100, 9);
    expect(dartsOf(only(done.pattern))).toEqual([]);
    expect(toldDid(done)).toMatch(/^The bust dart of the block .* was closed into the hem/);
  });
  test('is refused where the piece has no hem', () => {
    const parts = block().outline.parts.map(p =>
      p.name === 'hem' ? { ...p, name: 'lower', kind: 'seam' as const } : p,
    );
    const hemless = { ...block(), outline: { parts: parts as ReturnType<typeof block>['outline']['parts'] } };
    expect(() => change('flare', patternOf(hemless))).toThrow(refusal('no-hem', /data-kind="hem"/));
  });
});
