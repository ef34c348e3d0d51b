// What the page gives to take away is what the command writes, byte for byte, but for the name that the sheet goes by:
// the page knows none of its file.
import { readFileSync } from 'node:fs';
import { doJob, type Job, patternOfSheet, readSheet } from '@paperhinge/sheet';
import { catalogueOf } from '@paperhinge/sheet/words';
import { beforeAll, expect, test } from 'vitest';
import { fileFor } from '../../demos/viewer/src/engine/take-away.js';
import { type Worked, work } from '../../demos/viewer/src/engine/work.js';

const demo = (path: string) => readFileSync(new URL(`../../demos/${path}`, import.meta.url), 'utf8');
const drawing = demo('patterns/woven-shift.svg');
const text = `${demo('sheets/cellist-top.yaml').replace(/^print:.*$/m, 'print: { paper: [a3] }')}\nlanguage: de\n`;

let worked: Worked;
let job: Job;
beforeAll(async () => {
  const ask = { id: 1, sheet: text, pattern: drawing, patternName: 'woven-shift.svg', open: undefined };
  const reads = { needle: Number.POSITIVE_INFINITY, unit: 'mm', language: 'de' } as const;
  worked = work({ ...ask, ...reads }, await catalogueOf('de')).worked;
  const sheet = readSheet(text, { file: 'sheet' });
  const { pattern, findings } = patternOfSheet(sheet, drawing, 'woven-shift.svg');
  // As the command does it, whose sheet says the language.
  job = await doJob(sheet, pattern, { readFindings: findings });
});
const written = (bytes: Uint8Array) => new TextDecoder().decode(bytes);

test('the report, with cloth to buy', async () => {
  const report = written((await fileFor({ take: 'report' }, worked)).bytes);
  expect(report).toBe(job.report);
  expect(report).toContain('1,25 m');
});

test('the pages, with cloth to buy on the first of them; it is told what is being done', async () => {
  const told: string[] = [];
  const { bytes } = await fileFor({ take: 'pdf', paper: 'a3' }, worked, text => told.push(text));
  expect(told).toEqual(['Die Seiten werden ausgelegt: A3']);
  expect(bytes).toEqual(job.pages[0]!.pdf);
});

test('the drawing', async () => {
  expect(written((await fileFor({ take: 'svg' }, worked)).bytes)).toBe(job.run.svg);
});
