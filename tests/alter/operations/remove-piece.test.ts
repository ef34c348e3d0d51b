import { removePiece } from '@paperhinge/alter/made';
import { type Pattern, pieceNamed } from '@paperhinge/geometry';
import { expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid, toldFinding } from '../../support/told.js';
import { block, patternOf } from '../hinge/pieces.js';

test('removing a piece takes the seams it was one side of, and says which', () => {
  const done = removePiece(shiftPattern(), { piece: 'neckband' });
  const { pattern, findings } = done;
  expect(pattern.pieces.map(p => p.name)).toEqual(['front', 'back', 'sleeve']);
  expect(pattern.seams.map(s => s.name)).toEqual(['shoulder', 'side', 'underarm', 'armhole']);
  expect(toldDid(done)).toBe('The neckband was removed, and the seam it was one side of.');
  expect(findings.map(f => toldFinding(f).message).join()).toContain('neck');
});
test('a seam it shared with others keeps their runs', () => {
  const { pattern, findings } = removePiece(shiftPattern(), { piece: 'front' });
  expect(pattern.seams.find(s => s.name === 'armhole')!.b.map(r => r.piece)).toEqual(['back']);
  expect(pattern.seams.map(s => s.name)).toEqual(['underarm', 'armhole', 'neck']);
  expect(findings).toHaveLength(4);
});
test('an edge that stood twice in a seam is told once', () => {
  const shift = shiftPattern();
  const twice = shift.seams.map(s => (s.name === 'neck' ? { ...s, a: [...s.a, ...s.a] } : s));
  const { findings } = removePiece({ ...shift, seams: twice }, { piece: 'neckband' });
  const gone = toldFinding(findings.find(f => f.code === 'seam-gone')!).message;
  expect(gone.match(/neckband/g)).toHaveLength(1);
});
test('a piece made for an edge of it is named', () => {
  const shift = shiftPattern();
  const facing = {
    ...pieceNamed(shift, 'neckband'),
    name: 'facing',
    madeFor: [{ piece: 'front', edge: 'neck' }],
  };
  const pattern: Pattern = { ...shift, pieces: [...shift.pieces, facing] };
  const { findings } = removePiece(pattern, { piece: 'front' });
  expect(findings.find(f => f.code === 'made-for-removed-piece')!.where.piece).toBe('facing');
});
test('the pieces that are left are untouched', () => {
  const shift = shiftPattern();
  expect(removePiece(shift, { piece: 'sleeve' }).pattern.pieces[0]).toBe(shift.pieces[0]);
});
test('an unknown piece and the last piece are refused', () => {
  expect(refusalOf(() => removePiece(shiftPattern(), { piece: 'collar' })).code).toBe('unknown-piece');
  expect(refusalOf(() => removePiece(patternOf(block()), { piece: 'block' }))).toMatchObject({
    code: 'last-piece',
    remedy: expect.stringContaining('Keep'),
  });
});
