import type { measurePattern, ToldFinding } from '@paperhinge/geometry';
import type { HemSweep } from '@paperhinge/geometry/measure';
import type { Words } from '@paperhinge/sheet/words';
import type { Verdict } from './view.js';
import { engineWords } from './words.js';

export type Seams = ReturnType<typeof measurePattern>['seams'];

/** What the verdict at the foot of the sheet is given from. */
export interface Standing {
  readonly seams: Seams;
  /** Whether the head passes, if there is a neck. */
  readonly passages: readonly ToldFinding[];
  readonly findings: readonly ToldFinding[];
  readonly sweeps: readonly HemSweep[];
}

/** The standing verdict: seams, head, hem, whatever else will not do, notes. */
export const verdictOf = (standing: Standing, words: Words): readonly Verdict[] => [
  ofSeams(standing, words),
  ...ofHead(standing, words),
  ...ofHem(standing, words),
  ...ofFaults(standing, words),
  ofNotes(standing, words),
];

function ofSeams({ seams }: Standing, { language }: Words): Verdict {
  const all = Object.entries(seams);
  const bad = all.find(([, seam]) => !seam.matches)?.[0];
  const matching = all.filter(([, seam]) => seam.matches).length;
  return {
    strong: engineWords(language).of(matching, all.length),
    text: engineWords(language).sewTogether,
    tone: bad === undefined ? 'sound' : 'fault',
    ...(bad === undefined ? {} : { where: { seam: bad } }),
  };
}

const isOfHead = ({ code }: ToldFinding): boolean => code.startsWith('head-');

function ofHead({ passages }: Standing, { say, language }: Words): readonly Verdict[] {
  const head = passages.find(isOfHead);
  if (!head) return [];
  const passes = head.code === 'head-passes';
  return [
    {
      strong: say.length(head.figures?.spareMm ?? head.figures?.missingMm ?? 0),
      text: passes ? engineWords(language).headPasses : engineWords(language).headLacks,
      tone: passes ? 'sound' : head.severity === 'fault' ? 'fault' : 'care',
      where: head.where,
    },
  ];
}

const ofHem = ({ sweeps }: Standing, { say, language }: Words): readonly Verdict[] =>
  sweeps.slice(0, 1).map(({ sweepMm, edges }) => ({
    strong: say.length(sweepMm),
    text: engineWords(language).hemSweep,
    tone: 'sound',
    where: edges[0]!,
  }));

/** Faults that neither the seams nor the head have told. */
function ofFaults({ findings }: Standing, { language }: Words): readonly Verdict[] {
  const others = findings.filter(
    f => f.severity === 'fault' && f.code !== 'seam-does-not-match' && !isOfHead(f),
  );
  if (others.length === 0) return [];
  return [
    {
      strong: String(others.length),
      text: engineWords(language).faults,
      tone: 'fault',
      where: others[0]!.where,
    },
  ];
}

function ofNotes({ findings }: Standing, { language }: Words): Verdict {
  const warnings = findings.filter(f => f.severity === 'warning').length;
  const notes = findings.filter(f => f.severity === 'note').length;
  return {
    strong: String(notes + warnings),
    text: engineWords(language).notes(warnings),
    tone: warnings > 0 ? 'care' : 'sound',
  };
}
