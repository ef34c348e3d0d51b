import { cutApart } from '@paperhinge/alter/hinge';
import { edgeNames } from '@paperhinge/geometry';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutToDart } from '../../../packages/alter/src/hinge/cut-to-dart.js';
import { anyBodice, begunAt, lengthOf } from './pieces.js';

/** What was cut, or the code and the sentence's facts of the refusal. */
const outcome = (work: () => unknown): unknown => {
  try {
    return work();
  } catch (error) {
    const { code, where, facts } = error as { code?: string; where?: unknown; facts?: unknown };
    return { code, where, facts };
  }
};

test('one cut to a dart’s point is what cutting apart makes of it, wherever the outline’s list begins', () => {
  let cut = 0;
  fc.assert(
    fc.property(
      anyBodice,
      fc.nat(20),
      fc.nat(20),
      fc.constantFrom(0, 0.2, 0.5, 0.9, 1),
      (drawn, begin, edge, share) => {
        const piece = begunAt(drawn, begin % drawn.outline.parts.length);
        const names = edgeNames(piece);
        const name = names[edge % names.length]!;
        const from = { edge: name, along: share * lengthOf(piece, name) };
        const one = outcome(() => cutToDart(piece, from, 'bust'));
        expect(one).toEqual(outcome(() => cutApart(piece, [{ from, to: { dart: 'bust' } }])));
        if (one !== null && typeof one === 'object' && 'sections' in one) cut++;
      },
    ),
    { numRuns: 200 },
  );
  expect(cut).toBeGreaterThan(50);
});
