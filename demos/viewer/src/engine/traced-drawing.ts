import { readPattern } from '@paperhinge/geometry';
import { namingSheet } from '@paperhinge/sheet';
import { commandSaying, type Words } from '@paperhinge/sheet/words';
import type { DrawingGiven, Made } from './questions.js';
import type { Tell } from './tell.js';

/** mm: ends of strokes that lie no farther apart are one, as the command takes them unless told otherwise. */
const usualGap = 0.2;

/**
 * A pattern from an SVG, DXF or PDF drawing of any origin, and the sheet that proposes what its pieces, edges and seams
 * are called; its reader is loaded once such a drawing is laid on the table. What was found while it was read stands as
 * remarks over the sheet.
 * @throws PatternError what cannot be read, or holds no outline
 */
export async function tracedDrawing(given: DrawingGiven, words: Words, tell: Tell): Promise<Made> {
  const { sentence } = words;
  const { piecesOfDrawing, proposeNames, writeTrace } = await import('@paperhinge/geometry/trace');
  const { name, taken: { gap = usualGap, layer } = {} } = given;
  const { drawing, findings } = await readDrawing(given, (code, share) =>
    tell(sentence(commandSaying(code, {})), share),
  );
  const {
    pattern,
    bothLines,
    findings: ofPieces,
  } = piecesOfDrawing(name, drawing, {
    gap,
    ...(layer === undefined ? {} : { layer }),
  });
  const made = writeTrace({ patterns: [pattern], bothLines }, 'stitching');
  const file = `${name}.svg`;
  const read = readPattern(made, { file }).pattern;
  const proposed = namingSheet(read, proposeNames(read), { file, sentence: words.sentence });
  const remarks = [...findings, ...ofPieces].map(found => `# ${words.finding(found).message}\n`);
  const layers = [...new Set(drawing.lines.flatMap(line => line.layer ?? []))];
  return { made, sheet: `${remarks.join('')}${proposed}steps: []\n`, layers };
}

async function readDrawing(
  { drawing, kind, name, taken: { unit, columns, overlap = 0 } = {} }: DrawingGiven,
  told: (code: 'reading-pages' | 'laying-pages', share: number) => void,
) {
  const { drawingOfSvg, joinedPages, readDxf } = await import('@paperhinge/geometry/trace');
  if (typeof drawing === 'string')
    return kind === 'dxf' ? readDxf(drawing, unit) : drawingOfSvg(drawing, { file: `${name}.svg` });
  const { readPdf } = await import('./pdf.js');
  const pages = await readPdf(drawing, share => told('reading-pages', share));
  const grid = columns === undefined ? undefined : { columns, overlap };
  return joinedPages(pages, grid, { onProgress: (_, share) => told('laying-pages', share) });
}
