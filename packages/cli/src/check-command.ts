import { basename, dirname } from 'node:path';
import {
  checkPattern,
  type Finding,
  measurePattern,
  type Pattern,
  type PatternMeasures,
  type Severity,
} from '@paperhinge/geometry';
import { commandSaying, type Words } from '@paperhinge/sheet/words';
import { asAsked, type PatternArguments } from './asked.js';
import { aligned } from './columns.js';
import { codeFor } from './exit-codes.js';
import { fileToWrite } from './file-to-write.js';
import type { Io } from './io.js';
import { inFile, loadPattern } from './load.js';
import { findingLine, oneLine } from './one-line.js';
import { wordsFor } from './speech.js';

interface CheckArguments extends PatternArguments {
  /** Where to draw the pieces with the names of their edges. */
  readonly picture?: string;
}

/** `paperhinge check PATTERN`: walks every seam and says what will not sew. @returns the exit code */
export const checkCommand = (file: string, options: CheckArguments, io: Io): Promise<number> =>
  asAsked(options, async ({ sheet, language, unit }) => {
    const { pattern, findings: onReading } = await loadPattern(file, sheet);
    const found = await inFile(file, () => checkPattern(pattern));
    const { seams } = await inFile(file, () => measurePattern(pattern));
    const words = await wordsFor({ language, unit: unit ?? pattern.unit });
    const findings = byHarm([...onReading, ...found]).map(words.finding);
    const lines = () => [
      oneLine(pattern.name),
      ...seamList(seams, words),
      ...findings.map(finding => findingLine(finding, words)),
      verdict(Object.keys(seams).length > 0, codeFor(findings) === 0, words),
    ];
    if (options.picture !== undefined)
      await draw(pattern, fileToWrite(options.picture, 'drawing'), [file, options.sheet]);
    io.stdout(
      options.json
        ? `${JSON.stringify({ pattern: pattern.name, seams, findings }, null, 2)}\n`
        : `${lines().join('\n')}\n`,
    );
    return codeFor(findings);
  });

const weights: readonly Severity[] = ['fault', 'warning', 'note'];

/** What will not sew, what will show, what to know: within each in the order found. */
const byHarm = (findings: readonly Finding[]): readonly Finding[] =>
  weights.flatMap(weight => findings.filter(f => f.severity === weight));

async function draw(pattern: Pattern, path: string, inputs: readonly (string | undefined)[]): Promise<void> {
  const { namedEdgesSvg } = await import('@paperhinge/print/drawing');
  const { checkOutputs, writeOutputs } = await import('./write-outputs.js');
  const name = basename(path);
  await checkOutputs(
    dirname(path),
    [name],
    inputs.filter(input => input !== undefined),
  );
  await writeOutputs(dirname(path), [{ name, content: namedEdgesSvg(pattern) }]);
}

/** Nothing is said of how a pattern sews together that tells no seams. */
function verdict(hasSeams: boolean, sews: boolean, { sentence }: Words): string {
  if (!sews) return sentence(commandSaying('will-not-sew', {}));
  return sentence(commandSaying(hasSeams ? 'nothing-in-the-way' : 'seams-not-checked', {}));
}

function seamList(seams: PatternMeasures['seams'], { sentence, say }: Words): readonly string[] {
  const rows = Object.entries(seams).map(([name, s]) => {
    const wanted =
      s.easeWantedMm === 0 ? [] : [sentence(commandSaying('ease-wanted', { easeMm: s.easeWantedMm }))];
    const verdict = sentence(commandSaying(s.matches ? 'matches' : 'does-not-match', {}));
    return [
      `  ${name}`,
      say.length(s.aMm),
      say.length(s.bMm),
      say.change(s.differenceMm),
      [...wanted, verdict].join(', '),
    ];
  });
  if (rows.length === 0) return [`  ${sentence(commandSaying('no-seams', {}))}`];
  const heading = (['seam', 'one-side', 'other-side', 'difference'] as const).map(code =>
    sentence(commandSaying(code, {})),
  );
  return aligned([[`  ${heading[0]}`, ...heading.slice(1), ''], ...rows]).map(oneLine);
}
