import {
  isPatternDrawing,
  measurePattern,
  type PatternMeasures,
  readPattern,
  readShapes,
} from '@paperhinge/geometry';
import { codeFor } from './exit-codes.js';
import { aligned, shownLength } from './figures.js';
import type { Io } from './io.js';
import { inFile, loadSheet } from './load.js';
import { findingLine, oneLine } from './one-line.js';
import { readInput } from './read-input.js';
import { wordsIn } from './words.js';

/** `paperhinge measure PATTERN`: a pattern, or the shapes of any other drawing. @returns the exit code */
export async function measureCommand(
  file: string,
  { json = false, sheet: sheetPath }: { readonly json?: boolean; readonly sheet?: string },
  io: Io,
): Promise<number> {
  const sheet = sheetPath === undefined ? undefined : await loadSheet(sheetPath);
  const bytes = await readInput(file, 'pattern', { file });
  if (!sheet && !isPatternDrawing(bytes, { file })) {
    const { shapes, findings } = readShapes(bytes, { file });
    for (const finding of findings.map(wordsIn('mm').finding)) io.stderr(`${findingLine(finding)}\n`);
    io.stdout(json ? `${JSON.stringify({ shapes }, null, 2)}\n` : shapeList(shapes));
    return codeFor(findings);
  }
  const { pattern, findings } = readPattern(bytes, { file, ...(sheet ? { pieces: sheet.pieces } : {}) });
  for (const finding of findings.map(wordsIn(pattern.unit).finding)) io.stderr(`${findingLine(finding)}\n`);
  const measures = await inFile(file, () => measurePattern(pattern));
  io.stdout(json ? `${JSON.stringify(measures, null, 2)}\n` : measureList(measures, pattern.unit));
  return codeFor(findings);
}

type Shapes = ReturnType<typeof readShapes>['shapes'];
const shapeList = (shapes: Shapes): string =>
  shapes.length === 0
    ? 'The drawing shows no shapes.\n'
    : `${aligned([
        ['shape', 'id', 'length', 'area'],
        ...shapes.map(s => [
          s.element,
          s.id ?? '',
          `${s.lengthMm.toFixed(2)} mm`,
          s.closed ? `${(s.areaMm2 / 100).toFixed(2)} cm²` : 'open',
        ]),
      ])
        .map(oneLine)
        .join('\n')}\n`;

function measureList(measures: PatternMeasures, unit: Parameters<typeof shownLength>[1]): string {
  const pieces = Object.entries(measures.pieces).flatMap(([name, { areaMm2, edges, darts }]) => [
    '',
    `${name}: ${(areaMm2 / 100).toFixed(1)} cm² within the stitching line`,
    ...aligned([
      ...Object.entries(edges).map(([edge, e]) => [
        `  ${edge}`,
        shownLength(e.lengthMm, unit),
        `allowance ${shownLength(e.allowanceMm, unit)}`,
      ]),
      ...Object.entries(darts).map(([dart, d]) => [
        `  dart ${dart}`,
        `${d.angleDeg.toFixed(2)}°`,
        `legs ${d.legMm.map(mm => shownLength(mm, unit)).join(' and ')}`,
      ]),
    ]),
  ]);
  return `${[`${measures.pattern}, each piece as drawn`, ...pieces].map(oneLine).join('\n')}\n`;
}
