import { blendSizes, type Pattern, type PatternReading, readPattern } from '@paperhinge/geometry';
import type { Sheet } from './sheet.js';

/**
 * The pattern that a sheet is for, from its drawing: read with the sheet's `pieces` and `scale`, in the size that it
 * asks for, or between two of them.
 *
 * @param file the drawing's name, for findings and errors
 * @throws PatternError what `readPattern` and `blendSizes` refuse
 */
export function patternOfSheet(sheet: Sheet, source: Uint8Array | string, file: string): PatternReading {
  const { pieces, scale, size } = sheet;
  const options = { file, pieces, ...(scale === undefined ? {} : { scale }) };
  if (size === undefined) return readPattern(source, options);
  if (typeof size === 'string') return readPattern(source, { ...options, size });
  const [first, second] = size.between.map(one => readPattern(source, { ...options, size: one }));
  const pattern: Pattern = blendSizes(first!.pattern, second!.pattern, size.share);
  return { ...first!, pattern };
}
