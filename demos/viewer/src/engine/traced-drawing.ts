import { readPattern } from '@paperhinge/geometry';
import { namingSheet, type Words } from '@paperhinge/sheet';
import type { DrawingKind, Made } from './view.js';

/** mm: ends of strokes that lie no farther apart are one, as the command takes them unless told otherwise. */
const gap = 0.2;

/**
 * A pattern from an SVG or DXF drawing of any origin, and the sheet that proposes what its pieces, edges and seams are called; its reader is loaded once such a drawing is laid on the table. What was
 * found while it was read stands as remarks over the sheet.
 * @throws PatternError what cannot be read, or holds no outline
 */
export async function tracedDrawing(
  given: { readonly drawing: string; readonly kind: DrawingKind; readonly name: string },
  words: Words,
): Promise<Made> {
  const { drawingOfSvg, piecesOfDrawing, proposeNames, readDxf, writeTrace } = await import(
    '@paperhinge/geometry/trace'
  );
  const { name } = given;
  const { drawing, findings } =
    given.kind === 'dxf' ? readDxf(given.drawing) : drawingOfSvg(given.drawing, { file: `${name}.svg` });
  const { pattern, bothLines, findings: ofPieces } = piecesOfDrawing(name, drawing, { gap });
  const made = writeTrace({ patterns: [pattern], bothLines }, 'stitching');
  const file = `${name}.svg`;
  const read = readPattern(made, { file }).pattern;
  const proposed = namingSheet(read, proposeNames(read), { file, sentence: words.sentence });
  const remarks = [...findings, ...ofPieces].map(found => `# ${words.finding(found).message}\n`);
  return { made, sheet: `${remarks.join('')}${proposed}steps: []\n` };
}
