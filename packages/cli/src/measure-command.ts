import {
  isPatternDrawing,
  measurePattern,
  type PatternMeasures,
  readPattern,
  readShapes,
} from '@paperhinge/geometry';
import { commandSaying, type Words } from '@paperhinge/sheet/words';
import { asAsked, type PatternArguments } from './asked.js';
import { aligned } from './columns.js';
import { codeFor } from './exit-codes.js';
import type { Io } from './io.js';
import { asToldBy, drawingBytes, inFile } from './load.js';
import { findingLine, oneLine } from './one-line.js';
import { wordsFor } from './speech.js';

/** `paperhinge measure PATTERN`: a pattern, or the shapes of any other drawing. @returns the exit code */
export const measureCommand = (file: string, options: PatternArguments, io: Io): Promise<number> =>
  asAsked(options, async ({ sheet, language, unit }) => {
    const bytes = await drawingBytes(file, { file });
    if (!sheet && !isPatternDrawing(bytes, { file })) {
      const words = await wordsFor({ language });
      const { shapes, findings: found } = readShapes(bytes, { file });
      const findings = found.map(words.finding);
      for (const finding of findings) io.stderr(`${findingLine(finding, words)}\n`);
      io.stdout(
        options.json ? `${JSON.stringify({ shapes, findings }, null, 2)}\n` : shapeList(shapes, words),
      );
      return codeFor(findings);
    }
    const { pattern, findings } = sheet ? await asToldBy(sheet, bytes, file) : readPattern(bytes, { file });
    const measures = await inFile(file, () => measurePattern(pattern));
    const words = await wordsFor({ language, unit: unit ?? pattern.unit });
    for (const finding of findings.map(words.finding)) io.stderr(`${findingLine(finding, words)}\n`);
    io.stdout(options.json ? `${JSON.stringify(measures, null, 2)}\n` : measureList(measures, words));
    return codeFor(findings);
  });

type Shapes = ReturnType<typeof readShapes>['shapes'];
function shapeList(shapes: Shapes, { sentence, say }: Words): string {
  if (shapes.length === 0) return `${sentence(commandSaying('no-shapes', {}))}\n`;
  const open = sentence(commandSaying('open-shape', {}));
  const rows = shapes.map(s => [
    s.element,
    s.id ?? '',
    `${say.number(s.lengthMm, 2)} mm`,
    s.closed ? `${say.number(s.areaMm2 / 100, 2)} cm²` : open,
  ]);
  const headings = sentence(commandSaying('shape-headings', {})).split('\n');
  return `${aligned([headings, ...rows])
    .map(oneLine)
    .join('\n')}\n`;
}

function measureList(measures: PatternMeasures, { sentence, say }: Words): string {
  const pieces = Object.entries(measures.pieces).flatMap(([piece, { areaMm2, edges, darts }]) => [
    '',
    sentence(commandSaying('within-stitching-line', { piece, areaMm2 })),
    ...aligned([
      ...Object.entries(edges).map(([edge, { lengthMm, allowanceMm }]) => [
        `  ${edge}`,
        say.length(lengthMm),
        sentence(commandSaying('with-allowance', { allowanceMm })),
      ]),
      ...Object.entries(darts).map(
        ([
          dart,
          {
            angleDeg,
            legMm: [firstMm, secondMm],
          },
        ]) => [
          `  ${sentence(commandSaying('dart-named', { dart }))}`,
          say.angle(angleDeg),
          sentence(commandSaying('with-legs', { firstMm, secondMm })),
        ],
      ),
    ]),
  ]);
  const heading = sentence(commandSaying('each-piece-as-drawn', { pattern: measures.pattern }));
  return `${[heading, ...pieces].map(oneLine).join('\n')}\n`;
}
