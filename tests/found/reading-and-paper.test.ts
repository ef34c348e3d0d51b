// Drawings that were once read, cut or printed wrongly, as they were found.
import { readdirSync, readFileSync } from 'node:fs';
import {
  checkPattern,
  cuttingLine,
  PatternError,
  pathLength,
  pieceNamed,
  readPattern,
} from '@paperhinge/geometry';
import { edgeParts, outlinePath } from '@paperhinge/geometry/pattern';
import { printPattern } from '@paperhinge/print';
import { readSheet } from '@paperhinge/sheet';
import { describe, expect, test } from 'vitest';
import { fonts } from '../../packages/cli/src/fonts.js';
import { refusalOf, toldFinding } from '../support/told.js';
import { foundCheck, foundPattern } from './found.js';

const folder = new URL('./fixtures/', import.meta.url);
const filesIn = (name: string) => readdirSync(new URL(`${name}/`, folder)).filter(f => f.endsWith('.svg'));
const textOf = (name: string, file: string) => readFileSync(new URL(`${name}/${file}`, folder), 'utf8');

describe('how large a drawing is', () => {
  test.each(filesIn('unknown-scale'))('is not guessed where its viewBox says nothing: %s', file => {
    const refused = refusalOf(() => readPattern(textOf('unknown-scale', file), { file }));
    expect(refused.message).toMatch(/How large the drawing is cannot be known/);
    expect(refused.remedy).toMatch(/width="600mm" height="800mm" viewBox="0 0 600 800"/);
  });
});

describe('an edge that is not there to be seen', () => {
  test('is told where it draws nothing', () => {
    const { findings } = readPattern(textOf('edges-unsaid', 'emptyedge.svg'), { file: 'emptyedge.svg' });
    expect(findings.map(f => toldFinding(f).message)).toEqual([
      'The edge "ghost" draws nothing and was left out.',
      'The edge "ghost2" draws nothing and was left out.',
    ]);
  });
  test('is told where it is hidden', () => {
    const { findings } = readPattern(textOf('edges-unsaid', 'hiddenedge.svg'), { file: 'hiddenedge.svg' });
    expect(findings.map(f => toldFinding(f).message)).toEqual([
      'The edge "ghost" is hidden and was left out.',
    ]);
  });
});

describe('a neck whose last handle lies on its end', () => {
  test('has a plain cutting line', () => {
    const { pattern, findings } = foundCheck('retracted-handle-neck');
    expect(findings.filter(f => f.severity === 'fault')).toEqual([]);
    // About a rounded shape a line at distance a is 2 π a longer, more only where corners are mitred; never shorter here.
    const front = pieceNamed(pattern, 'front');
    const [cut, sewn] = [cuttingLine(front, pattern).path, outlinePath(front.outline)].map(pathLength);
    expect(cut! - sewn!).toBeGreaterThan(0);
    expect(cut! - sewn!).toBeLessThan(8 * Math.max(...edgeParts(front).map(e => e.allowance)) + 40);
  });
  test('no allowance is too wide for a bend of 3 micrometres at an end', () => {
    const { pattern } = foundCheck('false-allowance-too-wide');
    expect(checkPattern(pattern).map(f => f.code)).not.toContain('allowance-too-wide');
  });
});

test('a ratio without its sign is answered with the percentage it was meant to be', () => {
  const sheet = () => readSheet(textOf('ratio-without-sign', 'sheet.yaml'), { file: 'sheet.yaml' });
  expect(() => sheet()).toThrow(PatternError);
  expect(refusalOf(sheet).remedy).toBe('Write 80 %, if that is what you mean.');
});

test('equal gores are laid out and printed, each piece once', async () => {
  const { pattern } = foundPattern('gores-crash-the-pages');
  const { pages } = await printPattern(pattern, { paper: 'a4', fonts });
  expect(new Set(pages.pieces.map(p => p.piece))).toEqual(new Set(pattern.pieces.map(p => p.name)));
});

test('letters of many scripts are printed, and the same bytes come out twice', async () => {
  const { pattern } = foundPattern('slow-script');
  const print = async () => Buffer.from((await printPattern(pattern, { paper: 'a4', fonts })).pdf);
  expect((await print()).equals(await print())).toBe(true);
});
