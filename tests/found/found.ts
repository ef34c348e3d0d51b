import { readFileSync } from 'node:fs';
import { checkPattern, type Finding, type Pattern, readPattern } from '@paperhinge/geometry';
import { readSheet, runSheet } from '@paperhinge/sheet';

const folder = new URL('./fixtures/', import.meta.url);
const textOf = (name: string, file: string): string =>
  readFileSync(new URL(`${name}/${file}`, folder), 'utf8');

/** A pattern that was once answered wrongly, as it was found. */
export const foundPattern = (name: string) =>
  readPattern(textOf(name, 'pattern.svg'), { file: 'pattern.svg' });

/** What its sheet does to it, or its first steps alone. */
export function foundRun(name: string, steps = Number.POSITIVE_INFINITY) {
  const { pattern, findings } = foundPattern(name);
  const sheet = readSheet(textOf(name, 'sheet.yaml'), { file: 'sheet.yaml' });
  return runSheet({ ...sheet, steps: sheet.steps.slice(0, steps) }, pattern, {
    readFindings: findings,
  });
}

/** What checking it says. */
export function foundCheck(name: string): {
  readonly pattern: Pattern;
  readonly findings: readonly Finding[];
} {
  const { pattern, findings } = foundPattern(name);
  return { pattern, findings: [...findings, ...checkPattern(pattern)] };
}
