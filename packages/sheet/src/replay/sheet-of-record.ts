import { stringify } from 'yaml';
import type { RecordJson } from '../record.js';

/**
 * A record turned back into the sheet that it is the record of: its steps with the figures that they were done with,
 * names and sums worked out and included steps in their place, and all else as it was written. Run on the same
 * pattern, it comes to the same.
 *
 * @param pattern where the pattern lies, relative to the folder that the sheet is put into; absent = as it was written
 */
export function sheetOfRecord(
  { given, steps }: Pick<RecordJson, 'given' | 'steps'>,
  pattern?: string,
): string {
  const sheet = {
    ...given,
    ...(pattern === undefined ? {} : { pattern }),
    steps: steps.map(({ verb, fields, off }) => ({ [verb]: fields, ...(off ? { off: 'yes' } : {}) })),
  };
  // As written by hand: a step on a line, where it fits.
  return stringify(sheet, { collectionStyle: 'any', lineWidth: 110, indentSeq: true });
}
