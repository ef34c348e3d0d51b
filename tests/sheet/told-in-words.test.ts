import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { verbs } from '@paperhinge/alter';
import type { LengthUnit } from '@paperhinge/geometry';
import { patternOfSheet, readSheet, runSheet } from '@paperhinge/sheet';
import { catalogueOf, type Language, languages, wordsOf } from '@paperhinge/sheet/words';
import { beforeAll, describe, expect, test } from 'vitest';
import { withSteps } from './sheets.js';

// Every garment that was once answered wrongly, with all that is told of it, in both languages and in mm and inches.
const fixtures = new URL('../found/fixtures/', import.meta.url);
const names = readdirSync(fixtures).filter(name => existsSync(new URL(`${name}/sheet.yaml`, fixtures)));
const spoken = languages.flatMap(language => (['mm', 'in'] as const).map(unit => ({ language, unit })));

interface Told {
  readonly unit: LengthUnit;
  readonly language: Language;
  readonly from: string;
  readonly sentences: readonly string[];
  readonly remedies: readonly string[];
}

async function toldOf(name: string): Promise<readonly Told[]> {
  const text = readFileSync(new URL(`${name}/sheet.yaml`, fixtures), 'utf8');
  const drawing = readFileSync(new URL(`${name}/pattern.svg`, fixtures));
  const sheet = readSheet(text, { file: 'sheet.yaml' });
  const { pattern, findings } = patternOfSheet(sheet, drawing, 'pattern.svg');
  return Promise.all(
    spoken.map(async ({ language, unit }) => {
      const words = wordsOf(await catalogueOf(language), unit);
      const { record } = runSheet(sheet, pattern, { readFindings: findings, words });
      const remedies = record.findings.map(f => f.remedy);
      const jobs = record.orderOfWork.flatMap(({ text: job, because }) => [job, ...because]);
      const did = record.steps.map(step => step.did);
      return {
        unit,
        language,
        from: name,
        remedies,
        sentences: [...did, ...jobs, ...remedies, ...record.findings.map(f => f.message)],
      };
    }),
  );
}

describe('what is told of garments', () => {
  let told: readonly Told[] = [];
  beforeAll(async () => {
    const all = names.filter(name => !refusedOnReading.has(name)).map(toldOf);
    told = (await Promise.all(all)).flat();
  }, 300_000);

  test('is words: no fact that is missing, no name of a fact, nothing of the program', () => {
    expect(told.length).toBeGreaterThan(40);
    for (const { from, sentences } of told)
      for (const sentence of sentences)
        expect(sentence, from).not.toMatch(/undefined|NaN|\[object|[a-z](Mm|Deg|Percent)\b/);
  });

  test('holds no millimetres where it is told in inches', () => {
    for (const { from, unit, sentences } of told)
      if (unit === 'in') for (const sentence of sentences) expect(sentence, from).not.toMatch(/\d mm\b/);
  });

  test('every step that a remedy writes is one that a sheet reads', () => {
    const step = new RegExp(
      `(?:${verbs.map(v => v.verb).join('|')}): \\{[^{}]*(?:\\{[^{}]*\\}[^{}]*)*\\}`,
      'g',
    );
    const steps = new Set(
      told.flatMap(({ remedies }) => remedies.flatMap(remedy => remedy.match(step) ?? [])),
    );
    expect(steps.size).toBeGreaterThan(20);
    for (const written of steps)
      expect(readSheet(withSteps(written), { file: written }).steps).toHaveLength(1);
  });
});

/** Their fault is in the sheet itself. */
const refusedOnReading: ReadonlySet<string> = new Set(['ratio-without-sign']);
