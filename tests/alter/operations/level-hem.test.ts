import { readFileSync } from 'node:fs';
import { levelHem } from '@paperhinge/alter/length';
import {
  at,
  edgePath,
  line,
  type Piece,
  pathOf,
  readPattern,
  validatePattern,
  walkSeams,
} from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { runSheet } from '@paperhinge/sheet';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSheet } from '../../../packages/sheet/src/read-sheet.js';
import { toldDid } from '../../support/told.js';
import {
  anyBodice,
  areaOf,
  edge,
  expectClosed,
  expectUntouched,
  lengthOf,
  only,
  patternOf,
  pieceOf,
  refusal,
} from '../hinge/pieces.js';

/** Half a skirt panel on the fold, its waist 600 mm above its hem, its hip 200 below the waist. */
const panel = (): Piece =>
  pieceOf(
    [
      edge('waist', 'seam', line(at(0, 0), at(240, 0))),
      edge('side', 'seam', line(at(240, 0), at(240, 600))),
      edge('hem', 'hem', line(at(240, 600), at(0, 600))),
      edge('centre', 'fold', line(at(0, 600), at(0, 0))),
    ],
    {
      lines: [
        { kind: 'grain', name: 'grain', path: pathOf(line(at(40, 80), at(40, 520))) },
        { kind: 'level', name: 'hip', path: pathOf(line(at(0, 200), at(240, 200))) },
      ],
    },
  );
type Given = Parameters<typeof levelHem>[1];
const level = (changes: Partial<Given> = {}, piece = panel()) =>
  levelHem(patternOf(piece), { pieces: ['block'], from: 'waist', stands: 1040, height: 400, ...changes });

describe('a hem at a height above the floor', () => {
  // A waist 1040 above the floor and a hem 400 above it leave 640 of skirt.
  test('lies as far below the waist as the two heights differ', () => {
    const done = level();
    expect(lengthOf(only(done.pattern), 'side')).toBeCloseTo(640, 9);
    expect(areaOf(only(done.pattern)) - areaOf(panel())).toBeCloseTo(240 * 40, 6);
    expectUntouched(panel(), only(done.pattern), 'side', 'centre');
    expectClosed(only(done.pattern));
    expect(toldDid(done)).toBe(
      'The hem lies 400 mm above the floor, 640 mm down from the waist: the block 40 mm longer.',
    );
  });
  // From a hip 840 above the floor the same hem is 440 down; the hip lies 200 under the waist.
  test('may be measured from another level', () => {
    expect(lengthOf(only(level({ from: 'hip', stands: 840 }).pattern), 'side')).toBeCloseTo(640, 9);
  });
  test('on a piece without side or centre is measured down its grain line', () => {
    const parts = panel().outline.parts.map(p =>
      p.name === 'side'
        ? edge('left', 'seam', line(at(240, 0), at(240, 600)))
        : p.name === 'centre'
          ? edge('right', 'seam', line(at(-40, 600), at(0, 0)))
          : p.name === 'hem'
            ? edge('hem', 'hem', line(at(240, 600), at(-40, 600)))
            : p,
    );
    const after = only(level({}, { ...panel(), outline: { parts } }).pattern);
    expect(lengthOf(after, 'left')).toBeCloseTo(640, 9);
  });
  test('on the ground, and where it is already, moves by what it must', () => {
    expect(lengthOf(only(level({ height: 0 }).pattern), 'side')).toBeCloseTo(1040, 9);
    expect(toldDid(level({ height: 440 }))).toContain('the block as it was');
  });
  test('on any bodice is undone by the height it had', () => {
    const lengths = fc.double({ min: -60, max: 200, noNaN: true });
    fc.assert(
      fc.property(anyBodice, lengths, (piece, by) => {
        // The hem's end at the side, 420 down from it the waist.
        const hemAt = pathStart(edgePath(piece, 'hem')).y;
        const was = 1000 - (hemAt - 420);
        const moved = level({ stands: 1000, height: was - by }, piece).pattern;
        validatePattern(moved);
        const back = level({ stands: 1000, height: was }, only(moved)).pattern;
        expectUntouched(piece, only(moved), 'side-lower', 'centre', 'hem');
        expect(lengthOf(only(back), 'centre')).toBeCloseTo(lengthOf(piece, 'centre'), 6);
      }),
      { numRuns: 50 },
    );
  });
});

test('a sheet carries the height with the wearer’s figures', () => {
  const file = 'darted-dress.svg';
  const { pattern } = readPattern(readFileSync(new URL(`../../../demos/patterns/${file}`, import.meta.url)), {
    file,
  });
  const sheet = readSheet(
    [
      `pattern: ${file}`,
      'unit: cm',
      'wearer: { waist height: 104 }',
      'let: { heel: 4 }',
      'steps:',
      '  - level hem: { pieces: [skirt front, skirt back], from: waist, stands: waist height + heel, height: 48 }',
    ].join('\n'),
    { file: 'hem.yaml' },
  );
  const { altered } = runSheet(sheet, pattern);
  const front = altered.pieces.find(p => p.name === 'skirt front')!;
  // Measured at the side, as the waist's height is: straight down from waist to hem.
  const side = edgePath(front, 'side');
  expect(pathEnd(side).y - pathStart(side).y).toBeCloseTo(600, 6);
  expect(walkSeams(altered).find(w => w.seam === 'skirt side')!.matches).toBe(true);
});

test('pieces sewn to one another change alike, so that trousers still match', () => {
  const file = 'trousers.svg';
  const { pattern } = readPattern(readFileSync(new URL(`../../../demos/patterns/${file}`, import.meta.url)), {
    file,
  });
  const { pattern: after } = levelHem(pattern, {
    pieces: ['front', 'back'],
    from: 'waist',
    stands: 1040,
    height: 60,
  });
  for (const name of ['outseam', 'inseam'])
    expect(walkSeams(after).find(w => w.seam === name)!.matches).toBe(true);
});

describe('what is refused, each with its remedy', () => {
  test('a level that the piece does not have; one that it has mends it', () => {
    expect(() => level({ from: 'knee' })).toThrow(refusal('no-level-there', /level that the piece has/));
    expect(() => level({ from: 'hip', stands: 840 })).not.toThrow();
  });
  test('a hem above the level', () => {
    expect(() => level({ height: 1100 })).toThrow(refusal('hem-above-level', /smaller/));
    expect(() => level({ height: 900 })).not.toThrow();
  });
  test('a piece without a hem', () => {
    const parts = panel().outline.parts.map(p =>
      p.name === 'hem' ? edge('edge', 'seam', line(at(240, 600), at(0, 600))) : p,
    );
    expect(() => level({}, { ...panel(), outline: { parts } })).toThrow(refusal('no-hem'));
  });
});
