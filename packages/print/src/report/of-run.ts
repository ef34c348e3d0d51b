import { cautionsFor, type Run } from '@paperhinge/alter';
import type { ReportSource } from './source.js';

/** What is written up of a run: the altered pattern, its record, and the cautions that go with the garment. */
export const sourceOfRun = (
  run: Pick<Run, 'before' | 'altered' | 'record' | 'derived' | 'sheet'>,
): ReportSource => ({
  pattern: run.altered,
  before: run.before,
  record: run.record,
  cautions: cautionsFor({ pattern: run.altered, wearer: run.sheet.wearer, derived: run.derived }).map(
    c => c.text,
  ),
});
