import { type AnyVerb, verbs } from '@paperhinge/alter';
import { type Pattern, pathLength } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { applyStep, runSteps, type Step, stateOf } from '../../packages/sheet/src/index.js';
import { shiftPattern } from '../support/shift.js';
import { faultsOf, read, withSteps } from './sheets.js';

/** A verb that counts how often it is done, and does nothing. */
const counted = () => {
  let times = 0;
  const verb: AnyVerb = {
    verb: 'look at',
    does: 'Looks at a piece.',
    fields: { piece: { kind: 'piece', giving: 'needed' } },
    sentence: 'Look at the {piece}',
    startsAt: { piece: ['piece'] },
    example: { pattern: 'woven-shift', step: { piece: 'front' } },
    alter: (pattern: Pattern) => {
      times++;
      return { pattern, did: '', findings: [] };
    },
  };
  return { verb, times: () => times };
};
const look = (piece: string): Step => ({ verb: 'look at', parameters: { piece } });

describe('a run goes on from what is known', () => {
  test('the same steps from the same state are not done again', () => {
    const { verb, times } = counted();
    const start = stateOf(shiftPattern());
    const steps = [look('front'), look('back'), look('sleeve')];
    const once = runSteps(start, steps, { verbs: [verb] });
    const again = runSteps(start, steps, { verbs: [verb] });
    expect(times()).toBe(3);
    expect(again).toEqual(once);
    expect(again.every((done, i) => done === once[i])).toBe(true);
  });

  test('changing one step does it and those after it again, and none before it', () => {
    const { verb, times } = counted();
    const start = stateOf(shiftPattern());
    const steps = [look('front'), look('back'), look('sleeve'), look('front')];
    const before = runSteps(start, steps, { verbs: [verb] });
    const after = runSteps(start, steps.with(2, look('back')), { verbs: [verb] });
    expect(times()).toBe(6);
    expect(after.slice(0, 2)).toEqual(before.slice(0, 2));
    expect(after[2]).not.toBe(before[2]);
  });

  test('what a resumed run says is what a whole run says', () => {
    const steps = read(
      withSteps(
        'shorten: { pieces: [front, back], at: hem, by: 100 }',
        'close dart: { piece: front, dart: bust, into: hem }',
        'set allowance: { edges: all seams, to: 7 }',
      ),
    ).steps;
    const changed: readonly Step[] = steps.with(0, {
      ...steps[0]!,
      parameters: { ...steps[0]!.parameters, by: 120 },
    });
    const start = stateOf(shiftPattern());
    runSteps(start, steps);
    const told = (done: ReturnType<typeof runSteps>) =>
      done.map(({ did, findings, state }) => [did, findings, state.pattern]);
    expect(told(runSteps(start, changed))).toEqual(told(runSteps(stateOf(shiftPattern()), changed)));
  });

  test('another pattern is another state', () => {
    const { verb, times } = counted();
    const step = look('front');
    applyStep(stateOf(shiftPattern()), step, verb);
    applyStep(stateOf(shiftPattern()), step, verb);
    expect(times()).toBe(2);
  });
});

describe('a step that is switched off', () => {
  const text = (off: string) =>
    `pattern: a.svg\nsteps:\n  - unfold: { piece: front }\n    ${off}\n  - set allowance: { edges: front.neck, to: 3 }`;

  test('stands in the sheet, is not done, and nothing is asked of its names', () => {
    const { steps } = read(text('off: yes').replace('piece: front', 'piece: nobody'));
    expect(steps[0]).toEqual({ verb: 'unfold', parameters: { piece: 'nobody' }, off: true });
    const start = stateOf(shiftPattern());
    const [first, second] = runSteps(start, steps);
    expect(first).toEqual({ step: steps[0], findings: [], state: start });
    expect(second!.did).toBeDefined();
  });

  test('is on again with off: no', () => {
    expect(read(text('off: no')).steps[0]).toEqual({ verb: 'unfold', parameters: { piece: 'front' } });
  });
});

describe('a verb of one’s own, in one declaration', () => {
  // As its file would be: the declaration beside what it does.
  const raiseHem: AnyVerb = {
    verb: 'raise hem',
    does: 'Cuts a piece off at its hem.',
    fields: {
      piece: { kind: 'piece', giving: 'needed' },
      share: { kind: 'share', giving: 'usual', usual: 0.1, least: 0, most: 0.5 },
      keepEdge: { kind: 'edge', giving: 'optional', of: 'piece' },
    },
    sentence: 'Raise the hem of the {piece} by {share}',
    startsAt: { piece: ['piece'] },
    example: { pattern: 'woven-shift', step: { piece: 'front', share: '20 %' } },
    alter: (pattern: Pattern, { piece, share }: { readonly piece: string; readonly share: number }) => {
      const sides = pattern.pieces.find(p => p.name === piece)!.outline.parts;
      const longest = Math.max(
        ...sides.flatMap(part => (part.type === 'edge' ? [pathLength(part.path)] : [])),
      );
      const shorten = verbs.find(v => v.verb === 'shorten')!;
      return shorten.alter(pattern, { pieces: [piece], at: 'hem', by: share * longest } as never);
    },
  };
  const own = { file: 'top.yaml', verbs: [...verbs, raiseHem] };

  test('is read in the sheet’s own words and done with its usual values', async () => {
    const { readSheet } = await import('../../packages/sheet/src/read-sheet.js');
    const sheet = readSheet(withSteps('raise hem: { piece: back, share: 20 %, keep edge: neck }'), own);
    expect(sheet.steps[0]!.parameters).toEqual({ piece: 'back', share: 0.2, keepEdge: 'neck' });
    const usual = readSheet(withSteps('raise hem: { piece: back }'), own).steps;
    const [done] = runSteps(stateOf(shiftPattern()), usual, { verbs: own.verbs });
    expect(done!.did).toMatchObject({ code: 'shortened' });
  });

  test('its faults are told as those of any verb', async () => {
    const { readSheet } = await import('../../packages/sheet/src/read-sheet.js');
    const codes = (text: string) =>
      faultsOf(() => {
        const { steps, stepPlaces } = readSheet(withSteps(text), own);
        runSteps(stateOf(shiftPattern()), steps, { verbs: own.verbs, file: 'top.yaml', places: stepPlaces });
      }).map(({ code, where }) => [code, where.line, where.column]);
    expect(codes('raise hem: { piece: back, share: 60 % }')).toEqual([['percent-out-of-range', 3, 38]]);
    expect(codes('raise hem: { piece: back, keep edge: nekc }')).toEqual([['unknown-edge', 3, 42]]);
    expect(codes('rase hem: { piece: back }')).toEqual([['unknown-verb', 3, 5]]);
  });
});
