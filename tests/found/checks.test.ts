import { checkPattern } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { foundCheck, foundRun } from './found.js';

const codes = (findings: readonly { readonly code: string }[]) => findings.map(f => f.code);

describe.each([
  ['facing-square-neck', 'sqf'],
  ['facing-flared-hem', 'hf'],
])('%s', (name, facing) => {
  const run = foundRun(name);
  test('a facing turns back: it is not judged as running on beyond its seam', () => {
    const judged = checkPattern(run.altered).filter(
      f =>
        ['joined-line-broken', 'turned-back-end-off'].includes(f.code) &&
        JSON.stringify(f).includes(`"piece":"${facing}"`),
    );
    expect(judged).toEqual([]);
  });
  test('and there is nothing to bend the garment for', () => {
    const { verb, did } = run.record.steps.at(-1)!;
    expect(verb).toBe('true');
    expect(did).not.toContain('moved');
  });
});

test('a piece that no seam takes in is told', () => {
  const { findings } = foundCheck('piece-in-no-seam');
  expect(findings.filter(f => f.code === 'piece-in-no-seam').map(f => f.where)).toEqual([
    { piece: 'pocket bag' },
  ]);
  expect(codes(findings)).not.toContain('no-seams');
});
