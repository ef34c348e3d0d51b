import { checkPattern, type LengthUnit, measurePattern, type PatternMeasures } from '@paperhinge/geometry';
import { codeFor } from './exit-codes.js';
import { aligned, shownChange, shownLength } from './figures.js';
import type { Io } from './io.js';
import { inFile, loadPattern, loadSheet } from './load.js';
import { findingLine, oneLine } from './one-line.js';
import { wordsIn } from './words.js';

/** `paperhinge check PATTERN`: walks every seam and says what will not sew. @returns the exit code */
export async function checkCommand(
  file: string,
  { json = false, sheet: sheetPath }: { readonly json?: boolean; readonly sheet?: string },
  io: Io,
): Promise<number> {
  const sheet = sheetPath === undefined ? undefined : await loadSheet(sheetPath);
  const { pattern, findings: onReading } = await loadPattern(file, sheet);
  const found = await inFile(file, () => checkPattern(pattern));
  const { seams } = await inFile(file, () => measurePattern(pattern));
  const findings = [...onReading, ...found].map(wordsIn(pattern.unit).finding);
  io.stdout(
    json
      ? `${JSON.stringify({ pattern: pattern.name, seams, findings }, null, 2)}\n`
      : [
          oneLine(pattern.name),
          ...seamList(seams, pattern.unit),
          ...findings.map(findingLine),
          findings.some(f => f.severity === 'fault')
            ? 'It will not sew as it is.'
            : 'Nothing stands in the way of sewing it.',
          '',
        ].join('\n'),
  );
  return codeFor(findings);
}

function seamList(seams: PatternMeasures['seams'], unit: LengthUnit): readonly string[] {
  const rows = Object.entries(seams).map(([name, s]) => [
    `  ${name}`,
    shownLength(s.aMm, unit),
    shownLength(s.bMm, unit),
    shownChange(s.differenceMm, unit),
    `${s.easeWantedMm === 0 ? '' : `${shownChange(s.easeWantedMm, unit)} wanted, `}${s.matches ? 'matches' : 'DOES NOT MATCH'}`,
  ]);
  return rows.length === 0
    ? ['  has no seams']
    : aligned([['  seam', 'one side', 'other side', 'difference', ''], ...rows]).map(oneLine);
}
