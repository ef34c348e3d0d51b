import { readShapes } from '@paperhinge/geometry';
import { patternOfSheet, readSheet } from '@paperhinge/sheet';
import type { Words } from '@paperhinge/sheet/words';
import type { Tried, TryOut } from './questions.js';
import { told } from './told.js';

/** mm²: smaller closed shapes are marks and letters, not pieces. */
const smallestPiece = 2000;
const mostProposed = 12;

/** Whether a pattern and a sheet can be read; if the drawing has no pieces, which shapes may be some. */
export function triedOut({ pattern, patternName, sheet }: TryOut['tried'], words: Words): Tried {
  try {
    patternOfSheet(readSheet(sheet, { file: 'sheet' }), pattern || undefined, patternName);
    return {};
  } catch (error) {
    return { refused: told(error, words), shapes: shapesIn(pattern) };
  }
}

function shapesIn(drawing: string): readonly string[] {
  try {
    return readShapes(drawing)
      .shapes.filter(s => s.closed && s.areaMm2 > smallestPiece && s.id !== undefined)
      .sort((p, q) => q.areaMm2 - p.areaMm2)
      .slice(0, mostProposed)
      .map(s => s.id!);
  } catch {
    return [];
  }
}
