import { cautionsFor, overTheHead } from '@paperhinge/alter';
import { type Finding, measurePattern, type ToldFinding } from '@paperhinge/geometry';
import { girthsAtLevels, hemSweep } from '@paperhinge/geometry/measure';
import type { StepDone } from '@paperhinge/sheet';
import type { InParts } from './in-parts.js';
import { girthRows, seamRows } from './rows.js';
import { spokenOf } from './spoken-of.js';
import { verdictOf } from './verdict.js';
import type { Proof } from './view.js';
import { engineWords } from './words.js';
import type { Worked } from './work.js';

/**
 * What is found out of what is drawn: whether it sews, its girths, the order of work. It takes longer than a frame, and so
 * stops between its parts, where what came in meanwhile can be seen to.
 */
export function* proofOf({ concluded, words }: Worked): InParts<Proof> {
  const started = performance.now();
  const { sheet, before, altered, derived, order, steps, findings: found } = concluded();
  const { wearer } = sheet;
  yield;
  const passages = overTheHead({ pattern: altered, wearer, derived }).map(words.finding);
  const findings = found.map(words.finding);
  const { seams } = measurePattern(altered);
  yield;
  const girths = new Map(girthsAtLevels(altered).map(g => [g.level, g.girthMm]));
  const sweeps = hemSweep(altered);
  return {
    verdict: verdictOf({ seams, passages, findings, sweeps }, words),
    girths: girthRows(sheet, before, girths, words),
    levels: [...girths].map(([line, mm]) => ({
      line,
      told: `${words.say.length(mm)} ${engineWords(words.language).allRound}`,
    })),
    seams: seamRows(seams, findings, words),
    findings: byHarm(findings),
    left: steps.map(step => ({ findings: leftBy(step, found).map(words.finding) })),
    making: order.map(({ text, because }) => ({
      text: words.sentence(text),
      lights: spokenOf(text, altered),
      detail: because.map(words.sentence).join('; '),
      tone: 'sound' as const,
    })),
    cautions: cautionsFor({ pattern: altered, wearer, derived }).map(words.sentence),
    milliseconds: performance.now() - started,
  };
}

const weights = { fault: 0, warning: 1, note: 2 } as const;
const byHarm = (findings: readonly ToldFinding[]): readonly ToldFinding[] =>
  [...findings].sort((p, q) => weights[p.severity] - weights[q.severity]);

/** What a step left to look at; a later one may have mended it: then it is no longer told. */
const leftBy = ({ findings }: StepDone, standing: readonly Finding[]): readonly Finding[] =>
  findings.filter(
    ({ severity, code, where: { seam, piece, edge } }) =>
      severity !== 'note' &&
      standing.some(
        f => f.code === code && f.where.seam === seam && f.where.piece === piece && f.where.edge === edge,
      ),
  );
