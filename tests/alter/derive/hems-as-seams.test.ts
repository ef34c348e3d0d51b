import { draftBand, draftBinding, draftFacing, draftStay, draftStrip } from '@paperhinge/alter/made';
import { edgeNamed, type Pattern, pieceNamed } from '@paperhinge/geometry';
import { withPiece } from '@paperhinge/geometry/pattern';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { toldFinding } from '../../support/told.js';

const hem = { piece: 'sleeve', edge: 'hem' };
const made = { name: 'cuff', along: [hem], width: 80, join: 10 };
const drafts = {
  band: (p: Pattern, more = {}) => draftBand(p, { ...made, ratio: 0.9, ...more }),
  strip: (p: Pattern, more = {}) => draftStrip(p, { ...made, ...more }),
  binding: (p: Pattern, more = {}) => draftBinding(p, { ...made, width: 10, ...more }),
  facing: (p: Pattern, more = {}) => draftFacing(p, { ...made, ...more }),
};

describe.each(Object.entries(drafts))('a %s on a hem', (_, draft) => {
  const hemOf = (pattern: Pattern) => edgeNamed(pieceNamed(pattern, 'sleeve'), 'hem');
  test('turns the hem into a seam with the allowance most seams have, and says so', () => {
    const { pattern, findings } = draft(shiftPattern());
    expect(hemOf(pattern)).toMatchObject({ kind: 'seam', allowance: 15.875 });
    expect(toldFinding(findings.find(f => f.code === 'hem-becomes-seam')!, 'in').message).toBe(
      'The hem of the sleeve is no longer turned up: the cuff is sewn on there, so the 1 in of hem became a seam allowance of 5/8 in.',
    );
  });
  test('or with the one asked for, which the remedy names', () => {
    const { pattern, findings } = draft(shiftPattern(), { allowance: 7 });
    expect(hemOf(pattern).allowance).toBe(7);
    expect(toldFinding(findings.find(f => f.code === 'hem-becomes-seam')!).remedy).toContain('"allowance"');
  });
  test('leaves a seam as it is, unsaid', () => {
    const shift = draft(shiftPattern()).pattern;
    expect(draft(shift).findings.map(f => f.code)).not.toContain('hem-becomes-seam');
  });
  test('drops how the hem was turned', () => {
    const shift = shiftPattern();
    const sleeve = pieceNamed(shift, 'sleeve');
    const parts = sleeve.outline.parts.map(part =>
      part.name === 'hem' && part.type === 'edge'
        ? {
            ...part,
            finish: 'turned twice' as const,
            corners: { start: 'turned-up' as const, end: 'mitre' as const },
          }
        : part,
    );
    const turned = withPiece(shift, { ...sleeve, outline: { parts } });
    const now = hemOf(draft(turned).pattern);
    expect([now.finish, now.corners]).toEqual([undefined, { end: 'mitre' }]);
  });
});

test('a stay leaves the hem a hem', () => {
  const { pattern, findings } = draftStay(shiftPattern(), { name: 'stay', along: [hem], width: 15 });
  expect(edgeNamed(pieceNamed(pattern, 'sleeve'), 'hem').kind).toBe('hem');
  expect(findings).toEqual([]);
});
