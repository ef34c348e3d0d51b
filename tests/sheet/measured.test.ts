import { readFileSync } from 'node:fs';
import { edgePath, pathLength, pieceNamed } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { patternOfSheet } from '../../packages/sheet/src/pattern-of-sheet.js';
import { measuredExample } from '../../packages/sheet/src/reference/sheet-example.js';
import { faultsOf, read, refusals } from './sheets.js';

const skirt = readFileSync(new URL('../../demos/sheets/skirt-by-figures.yaml', import.meta.url), 'utf8');
const gusset = (lines: string) => `pieces:
  gusset:
    points: { 1: [0, 0], 2: [30 cm, 0], 3: { from: { 1: 40 cm, 2: 50 cm }, towards: down } }
    edges: { top: [1, 2], long: [2, 3], side: [3, 1] }
${lines}`;

describe('pieces measured on paper', () => {
  test('a sheet without a drawing is a pattern of its own', () => {
    const { pattern, findings } = patternOfSheet(read(skirt), undefined, 'skirt.yaml');
    expect(pattern).toMatchObject({ name: 'Skirt by figures', unit: 'cm' });
    expect(findings).toEqual([]);
    for (const name of ['front', 'back']) {
      const piece = pieceNamed(pattern, name);
      expect(piece.role).toBe('skirt');
      expect(pathLength(edgePath(piece, 'side'))).toBeCloseTo(638, 6);
      expect(piece.outline.parts.filter(part => part.type === 'dart')).toHaveLength(1);
      expect(piece.outline.parts).toContainEqual(
        expect.objectContaining({ name: 'hem', kind: 'hem', allowance: 15 }),
      );
      expect(piece.outline.parts).toContainEqual(
        expect.objectContaining({ name: 'centre', kind: 'fold', allowance: 0 }),
      );
    }
  });

  test('points may be numbered, as in a draft', () => {
    const { pattern } = patternOfSheet(read(gusset('')), undefined, 'top.yaml');
    expect(pattern.name).toBe('top');
    expect(pathLength(edgePath(pattern.pieces[0]!, 'long'))).toBeCloseTo(500, 6);
  });

  test('a measured piece stands beside drawn ones', () => {
    const drawing = readFileSync(new URL('../../demos/patterns/woven-shift.svg', import.meta.url));
    const { pattern } = patternOfSheet(
      read(`pattern: woven-shift.svg\n${gusset('')}`),
      drawing,
      'woven-shift.svg',
    );
    expect(pattern.pieces.map(piece => piece.name)).toEqual([
      'front',
      'back',
      'sleeve',
      'neckband',
      'gusset',
    ]);
    expect(pattern.seams.length).toBeGreaterThan(0);
  });

  test('the cutting line is measured where the sheet says so', () => {
    const told = gusset('    line drawn: cutting\n    included allowance: 15');
    const { pattern } = patternOfSheet(read(told), undefined, 'top.yaml');
    // Half the sides' sum less the longest is the inscribed circle's radius, 100: moved in by 15, 85 % of 300 is left.
    expect(pathLength(edgePath(pattern.pieces[0]!, 'top'))).toBeCloseTo(255, 6);
  });

  test('the example of the reference is read and made', () => {
    const { pattern, findings } = patternOfSheet(read(measuredExample), undefined, 'pocket.yaml');
    const [pocket] = pattern.pieces;
    expect(findings).toEqual([]);
    expect(pocket).toMatchObject({ cutting: { count: 2, mirrored: true }, marks: [{ name: 'middle' }] });
    expect(pocket!.notches).toMatchObject([{ edge: 'left', style: 'single' }]);
  });

  test('what cannot be placed is told at its line', () => {
    const [fault] = faultsOf(() =>
      patternOfSheet(read(gusset('').replace('40 cm, 2', '4 cm, 2')), undefined, 'top.yaml'),
    );
    expect(fault).toMatchObject({
      code: 'distances-do-not-meet',
      where: { file: 'top.yaml', line: 3, piece: 'gusset' },
    });
  });

  test.each([
    ['points: { A: 12 }', '"A" does not say where a point lies.'],
    ['points: { A: [1, 2, 3] }', '"A" is not a list of two.'],
    ['points: { A: { mirror: B, over: [C] } }', '"over" is not a list of two.'],
    ['points: { A: { from: { B: 0 } } }', '"B" is nothing.'],
    ['points: {}\n    edges: { top: [] }', '"top" names nothing.'],
  ])('%s is not understood', (line, message) => {
    expect(refusals(`pieces:\n  gusset:\n    ${line}\n`)[0]).toContain(message);
  });

  test('a sheet with neither a drawing nor points lacks its pattern', () => {
    expect(refusals('pieces:\n  gusset: { cut: 2 }\n')).toEqual([
      expect.stringMatching(/^1:1 The sheet lacks "pattern"\./),
    ]);
  });
});
