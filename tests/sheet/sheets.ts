import { PatternError } from '@paperhinge/geometry';
import { english, wordsOf } from '@paperhinge/sheet/words';
import { faultsIn } from '../../packages/sheet/src/faults.js';
import { readSheet } from '../../packages/sheet/src/read-sheet.js';
import type { Sheet } from '../../packages/sheet/src/sheet.js';

export const read = (text: string): Sheet => readSheet(text, { file: 'top.yaml' });

/** A sheet with these steps, one a line. The first step stands on line 3. */
export const withSteps = (...steps: readonly string[]): string =>
  ['pattern: shift.svg', 'steps:', ...steps.map(step => `  - ${step}`)].join('\n');

/** What refusing the text says: `line:column message | remedy`, one entry a fault. */
export const refusals = (text: string): readonly string[] =>
  faultsOf(() => read(text)).map(fault => {
    const { message, remedy } = inEnglish.error(fault);
    return `${fault.where.line}:${fault.where.column} ${message} | ${remedy}`;
  });
const inEnglish = wordsOf(english, 'mm');

export function faultsOf(work: () => unknown): readonly PatternError[] {
  try {
    work();
  } catch (error) {
    if (error instanceof PatternError) return faultsIn(error);
    throw error;
  }
  throw new Error('Nothing was refused.');
}
