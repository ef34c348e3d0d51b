import {
  bandStretch,
  cautionsFor,
  easeFindings,
  girthsBesideBody,
  orderOfWork,
  overTheHead,
  verbs,
} from '@paperhinge/alter';
import {
  checkPattern,
  edgeNames,
  type Finding,
  levelGirths,
  measurePattern,
  type Pattern,
  PatternError,
  readPattern,
  type ToldFinding,
} from '@paperhinge/geometry';
import { girthsAtLevels, hemSweep } from '@paperhinge/geometry/measure';
import { dartsOf } from '@paperhinge/geometry/pattern';
import {
  applyStep,
  type Catalogue,
  faultsIn,
  laidOver,
  type Sheet,
  type State,
  type Step,
  stateOf,
  type Words,
  wordsOf,
} from '@paperhinge/sheet';
import { pieceView } from './piece-view.js';
import { readableSheet } from './readable-sheet.js';
import type { Ask, Fault, Names, Row, StepView, Verdict, View } from './view.js';

/** What was last worked out, kept for what is taken away. */
export interface Worked {
  readonly sheet: Sheet;
  readonly before: Pattern;
  readonly readFindings: readonly Finding[];
  readonly words: Words;
  readonly language: Ask['language'];
  /** The steps that were done, and what stood before each and after the last. */
  readonly steps: readonly Step[];
  readonly states: readonly State[];
}

/** The steps of the last sheet; older ones are let go, and what came of them with them. */
let known = new Map<string, Step>();
let read: { text: string; pattern: Pattern; findings: readonly Finding[] } | undefined;

/** The pattern of a text; read again only when it is another. */
function patternOf(text: string, file: string, sheet: Sheet) {
  const key = `${JSON.stringify(sheet.pieces)}${text}`;
  if (read?.text !== key) read = { text: key, ...readPattern(text, { file, pieces: sheet.pieces }) };
  return read;
}

/** Steps that were there before are the same objects, so that what is known of them is not done again. */
function sameObjects(steps: readonly Step[]): readonly Step[] {
  const now = new Map<string, Step>();
  const same = steps.map(step => {
    const key = JSON.stringify(step);
    const have = known.get(key) ?? step;
    now.set(key, have);
    return have;
  });
  known = now;
  return same;
}

let lastLaid: { key: string; read: Pattern; pattern: Pattern } | undefined;

/** The pattern with what the sheet says of its cloths laid over it; the same object as long as nothing of that changes. */
function laid(read: Pattern, sheet: Sheet): Pattern {
  const { steps, stepPlaces, places, print, title, ...rest } = sheet;
  const key = JSON.stringify(rest);
  if (lastLaid?.key !== key || lastLaid.read !== read)
    lastLaid = { key, read, pattern: laidOver(read, sheet).pattern };
  return lastLaid.pattern;
}

/** Does the sheet up to the needle, and says all that the page shows of it. @throws PatternError what cannot be read */
export function work(ask: Ask, catalogue: Catalogue): { readonly view: View; readonly worked: Worked } {
  const started = performance.now();
  const words = wordsOf(catalogue, ask.unit);
  const { sheet, faults } = readableSheet(ask.sheet);
  const { pattern, findings: readFindings } = patternOf(ask.pattern, ask.patternName, sheet);
  const before = laid(pattern, sheet);
  const states: State[] = [stateOf(before)];
  const steps: StepView[] = [];
  const errors: Fault[] = [];
  const written = sameObjects(sheet.steps);
  for (const [i, step] of written.entries()) {
    const state = states[i]!;
    const unread = faults.get(i);
    if (unread || i >= ask.needle) {
      states.push(state);
      const text = unread && spokenFault(unread, words);
      steps.push({ did: '', findings: [], ...(text === undefined ? {} : { fault: text }) });
      if (text !== undefined) errors.push({ line: sheet.stepPlaces[i]!.verb.line, text });
      continue;
    }
    try {
      const verb = verbs.find(v => v.verb === step.verb)!;
      const done = applyStep(state, step, verb);
      states.push(done.state);
      steps.push({
        did: done.did === undefined ? '' : words.sentence(done.did),
        findings: done.findings.map(words.finding),
      });
    } catch (error) {
      if (!(error instanceof PatternError)) throw error;
      const text = spokenFault(faultsIn(error)[0]!, words);
      states.push(state);
      steps.push({ did: '', findings: [], fault: text });
      errors.push({ line: sheet.stepPlaces[i]!.verb.line, text });
    }
  }
  const last = states.at(-1)!;
  const altered = last.pattern;
  const derived = last.derived;
  const { order, findings: ofOrder } = orderOfWork(altered, derived, last.making);
  const passages = overTheHead({ pattern: altered, wearer: sheet.wearer, derived });
  const findings = [
    ...readFindings,
    ...checkPattern(altered),
    ...bandStretch(altered, derived),
    ...easeFindings(altered, sheet.wearer),
    ...passages,
    ...ofOrder,
  ].map(words.finding);
  const measures = measurePattern(altered);
  const girths = new Map(girthsAtLevels(altered).map(g => [g.level, g.girthMm]));
  const view: View = {
    pattern: before.name,
    pieces: altered.pieces.map(piece =>
      pieceView(
        piece,
        altered,
        before.pieces.find(p => p.name === piece.name),
        words,
        girths,
      ),
    ),
    steps,
    verdict: verdictOf(measures.seams, passages.map(words.finding), findings, hemSweep(altered), words),
    girths: girthRows(sheet, before, girths, words),
    seams: seamRows(measures.seams, findings, words),
    findings: byHarm(findings),
    making: order.map(({ text, because }) => ({
      text: words.sentence(text),
      detail: because.map(words.sentence).join('; '),
      tone: 'sound',
    })),
    cautions: cautionsFor({ pattern: altered, wearer: sheet.wearer, derived }).map(words.sentence),
    names: states.map(s => namesOf(s.pattern)),
    errors,
    milliseconds: performance.now() - started,
  };
  const done = { steps: written.slice(0, ask.needle), states: states.slice(0, ask.needle + 1) };
  return { view, worked: { sheet, before, readFindings, words, language: ask.language, ...done } };
}

const spokenFault = (fault: PatternError, words: Words): string => {
  const { message, remedy } = words.error(fault);
  return `${message} ${remedy}`;
};

const weights = { fault: 0, warning: 1, note: 2 } as const;
const byHarm = (findings: readonly ToldFinding[]): readonly ToldFinding[] =>
  [...findings].sort((p, q) => weights[p.severity] - weights[q.severity]);

type Seams = ReturnType<typeof measurePattern>['seams'];

function verdictOf(
  seams: Seams,
  passages: readonly ToldFinding[],
  findings: readonly ToldFinding[],
  sweeps: ReturnType<typeof hemSweep>,
  words: Words,
): readonly Verdict[] {
  const { say, language } = words;
  const all = Object.values(seams),
    matching = all.filter(s => s.matches).length;
  const de = language === 'de';
  const head = passages.find(f => f.code.startsWith('head-'));
  const notes = findings.filter(f => f.severity === 'note').length,
    warnings = findings.filter(f => f.severity === 'warning').length;
  const bad = Object.entries(seams).find(([, s]) => !s.matches)?.[0];
  return [
    {
      strong: de ? `${matching} von ${all.length}` : `${matching} of ${all.length}`,
      text: de ? 'Nähten passen' : 'seams sew together',
      tone: matching === all.length ? 'sound' : 'fault',
      ...(bad === undefined ? {} : { where: { seam: bad } }),
    },
    ...(head
      ? [
          {
            strong: say.length(head.figures?.spareMm ?? head.figures?.missingMm ?? 0),
            text:
              head.code === 'head-passes'
                ? de
                  ? 'Luft für den Kopf'
                  : 'to spare over the head'
                : de
                  ? 'fehlen für den Kopf'
                  : 'missing for the head',
            tone:
              head.code === 'head-passes'
                ? ('sound' as const)
                : head.severity === 'fault'
                  ? ('fault' as const)
                  : ('care' as const),
            where: head.where,
          },
        ]
      : []),
    ...sweeps.slice(0, 1).map(({ sweepMm, edges }) => ({
      strong: say.length(sweepMm),
      text: de ? 'Saumweite' : 'hem sweep',
      tone: 'sound' as const,
      where: edges[0]!,
    })),
    {
      strong: String(notes + warnings),
      text: de ? 'Hinweise' : warnings > 0 ? `notes, ${warnings} to look at` : 'notes',
      tone: warnings > 0 ? 'care' : 'sound',
    },
  ];
}

/** Each level that both the garment and the body have. */
function girthRows(
  { wearer }: Sheet,
  before: Pattern,
  after: ReadonlyMap<string, number>,
  { say }: Words,
): readonly Row[] {
  const girths = girthsBesideBody(wearer, levelGirths(before), Object.fromEntries(after));
  return Object.entries(girths).flatMap(([level, { afterMm, easeMm }]): readonly Row[] =>
    afterMm === undefined || easeMm === undefined
      ? []
      : [
          {
            text: `${say.name(level)} ${say.length(afterMm)}`,
            detail: say.change(easeMm),
            tone: easeMm < 0 ? 'care' : 'sound',
          },
        ],
  );
}

/** Worst first. */
function seamRows(seams: Seams, findings: readonly ToldFinding[], words: Words): readonly Row[] {
  const { say } = words;
  const rows = Object.entries(seams).map(([name, s]): Row & { off: number } => {
    const finding = findings.find(f => f.where.seam === name);
    return {
      text: say.thing({ seam: name }),
      seam: name,
      detail: `${say.length(s.aMm)} · ${say.length(s.bMm)}${Math.abs(s.easeWantedMm) > 0.05 ? ` · ${say.change(s.easeWantedMm)}` : ''}`,
      tone: s.matches ? 'sound' : 'fault',
      off: Math.abs(s.differenceMm - s.easeWantedMm),
      ...(finding ? { where: finding.where } : {}),
    };
  });
  return rows.sort((p, q) => q.off - p.off).map(({ off, ...row }) => row);
}

function namesOf(pattern: Pattern): Names {
  const by = (names: (p: Pattern['pieces'][number]) => readonly string[]) =>
    Object.fromEntries(pattern.pieces.map(p => [p.name, names(p)]));
  return {
    pieces: pattern.pieces.map(p => p.name),
    edges: by(edgeNames),
    darts: by(p => dartsOf(p).map(d => d.name)),
    lines: by(p => p.lines.map(l => l.name)),
    marks: by(p => p.marks.map(m => m.name)),
    seams: pattern.seams.map(s => s.name),
    fabrics: pattern.fabrics.map(f => f.name),
  };
}
