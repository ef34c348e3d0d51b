import { codeCells, codeSide, sheetsInFrame, targetIndex, targetPlaces } from '@paperhinge/geometry/trace';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readCode, targetCount } from '../../../packages/geometry/src/trace/photo/target-code.js';
import { targetAt } from '../../../packages/geometry/src/trace/photo/target-sheet.js';

/** The picture of a target turned a quarter clockwise. */
const turned = (cells: readonly boolean[]) =>
  cells.map((_, i) => cells[(codeSide - 1 - (i % codeSide)) * codeSide + Math.floor(i / codeSide)]!);

const apart = (a: readonly boolean[], b: readonly boolean[]) => a.filter((cell, i) => cell !== b[i]).length;

test('codes differ from each other and from their own quarter turns in eleven cells or more', () => {
  const codes = Array.from({ length: targetCount }, (_, i) => codeCells(i));
  let least = Number.POSITIVE_INFINITY;
  for (const [i, code] of codes.entries()) {
    let view = code;
    for (let quarter = 0; quarter < 4; quarter++) {
      for (let j = quarter === 0 ? i + 1 : i; j < codes.length; j++)
        least = Math.min(least, apart(view, codes[j]!));
      view = turned(view);
    }
  }
  expect(least).toBeGreaterThanOrEqual(11);
});

const anyTarget = fc.integer({ min: 0, max: targetCount - 1 });

test('a target is read in any quarter turn with three cells wrong', () => {
  const wrongCells = fc.uniqueArray(fc.integer({ min: 0, max: codeSide ** 2 - 1 }), { maxLength: 3 });
  fc.assert(
    fc.property(anyTarget, fc.integer({ min: 0, max: 3 }), wrongCells, (index, turns, wrong) => {
      let cells: readonly boolean[] = codeCells(index).map((cell, i) => cell !== wrong.includes(i));
      for (let k = 0; k < turns; k++) cells = turned(cells);
      expect(readCode(cells)).toEqual({ index, turns, wrong: wrong.length });
    }),
  );
});

test('cells that are nearest to no code are no target', () => {
  expect(readCode(new Array(36).fill(true))).toBeUndefined();
  expect(readCode(new Array(36).fill(false))).toBeUndefined();
});

test('each place of each sheet has a code of its own', () => {
  const seen = new Set<number>();
  for (const paper of ['a4', 'letter'] as const)
    for (let number = 1; number <= sheetsInFrame; number++)
      for (const place of targetPlaces.keys()) {
        const index = targetIndex({ paper, number }, place);
        expect(targetAt(index)).toEqual({ sheet: { paper, number }, place });
        seen.add(index);
      }
  expect(seen.size).toBe(2 * sheetsInFrame * targetPlaces.length);
  expect(Math.max(...seen)).toBeLessThan(targetCount);
});
