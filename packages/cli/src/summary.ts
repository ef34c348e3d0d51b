import type { PatternMeasures, ToldFinding } from '@paperhinge/geometry';
import { hemSweep } from '@paperhinge/geometry/measure';
import type { Job } from '@paperhinge/sheet';
import { commandSaying, type Say, type Words } from '@paperhinge/sheet/words';
import { aligned } from './columns.js';
import { oneLine } from './one-line.js';

const mostEdges = 12;
const mostFindings = 6;

/**
 * What a job did, in plain words and under a screen.
 * @param files what was written to the folder
 * @param earlier pages that stand there from an earlier run
 */
export function summary(
  job: Job,
  folder: string,
  files: readonly string[],
  earlier: readonly string[] = [],
): string {
  const { words, record, run, findings } = job;
  const { sentence } = words;
  const seams = Object.values(record.after.seams);
  const matching = seams.filter(seam => seam.matches).length;
  const sections: readonly (readonly string[])[] = [
    [stepsDone(job)],
    changedEdges(job),
    run.derived.map(({ name, kind, lengthMm, widthMm, fabric, figures: { stretchPercent } }) =>
      sentence(
        commandSaying('cut-size', {
          piece: name,
          kind,
          lengthMm,
          widthMm,
          fabric,
          ...(stretchPercent === undefined ? {} : { stretchPercent }),
        }),
      ),
    ),
    clothToBuy(job),
    [...sweeps(job), ...girths(job)],
    [
      sentence(commandSaying('seams-matching', { matching, seams: seams.length })),
      ...findings.filter(f => f.code === 'head-passes').map(f => f.message),
      ...told(findings, words),
    ],
    cautions(job),
    [
      sentence(commandSaying('files-in', { folder, files })),
      ...(earlier.length > 0 ? [sentence(commandSaying('not-of-this-run', { files: earlier }))] : []),
    ],
    words.unit === 'in' ? [sentence(commandSaying('inches-rounded', {}))] : [],
  ];
  const shown = sections.filter(section => section.length > 0);
  return `${shown.map(section => section.map(oneLine).join('\n')).join('\n\n')}\n`;
}

const clothToBuy = ({ record, words }: Job): readonly string[] =>
  record.cloth.flatMap(({ cloth, widthMm, lays: [best] }) =>
    best
      ? [
          words.sentence(
            commandSaying('cloth-to-buy', { cloth, widthMm, buyMm: best.buyMm, laid: best.laid }),
          ),
        ]
      : [],
  );

function stepsDone({ words, record, run }: Job): string {
  const off = run.steps.filter(({ step }) => step.off).length;
  const { title = run.altered.name, sheet } = record;
  return words.sentence(commandSaying('steps-done', { title, sheet, off, steps: run.steps.length - off }));
}

/** Edges that changed, were made or went, with their lengths as drawn. Drafted pieces are told with their cut size. */
function changedEdges({
  record: { before, after, derived },
  words: { sentence, say },
}: Job): readonly string[] {
  const then = lengths(before, derived, say),
    now = lengths(after, derived, say);
  const length = (mm: number | undefined) => (mm === undefined ? '' : say.length(mm));
  const rows = [...new Set([...now.keys(), ...then.keys()])].flatMap(name => {
    const a = then.get(name),
      b = now.get(name);
    // What reads the same has not changed for whoever cuts it.
    if (a !== undefined && b !== undefined && length(a) === length(b)) return [];
    const change =
      a === undefined || b === undefined
        ? sentence(commandSaying(a === undefined ? 'new' : 'gone', {}))
        : say.change(b - a);
    return [[`  ${name}`, length(a), length(b), change]];
  });
  if (rows.length === 0) return [sentence(commandSaying('no-edge-changed', {}))];
  const shown = rows.slice(0, mostEdges);
  const more = rows.length - shown.length;
  const headings = (['edges-as-drawn', 'before', 'after'] as const).map(c => sentence(commandSaying(c, {})));
  return [
    ...aligned([[...headings, ''], ...shown]),
    ...(more > 0 ? [`  ${sentence(commandSaying('more-edges', { more }))}`] : []),
  ];
}

/** Lengths of edges by what a maker calls them. */
const lengths = ({ pieces }: PatternMeasures, derived: object, say: Say): ReadonlyMap<string, number> =>
  new Map(
    Object.entries(pieces)
      .filter(([piece]) => !Object.hasOwn(derived, piece))
      .flatMap(([piece, { edges }]) =>
        Object.entries(edges).map(
          ([edge, { lengthMm }]) => [say.shortly({ piece, edge }), lengthMm] as const,
        ),
      ),
  );

function cautions({ cautions: [first, ...more], words }: Job): readonly string[] {
  if (first === undefined) return [];
  const rest =
    more.length > 0 ? ` ${words.sentence(commandSaying('more-cautions', { more: more.length }))}` : '';
  return [`${first}${rest}`];
}

function sweeps({ run: { before, altered }, words }: Job): readonly string[] {
  const earlier = hemSweep(before);
  return hemSweep(altered).map(({ edges, sweepMm }) => {
    const was = earlier.find(e =>
      e.edges.some(r => edges.some(s => s.piece === r.piece && s.edge === r.edge)),
    );
    const beforeMm = was === undefined ? {} : { beforeMm: was.sweepMm };
    return words.sentence(commandSaying('hem-sweep', { edges, afterMm: sweepMm, ...beforeMm }));
  });
}

function girths({ record, words: { sentence } }: Job): readonly string[] {
  const rows = Object.entries(record.girths).map(([level, { bodyMm, beforeMm, afterMm, easeMm }]) => [
    sentence(commandSaying('girth-at', { level })),
    sentence(
      commandSaying('girth-figures', {
        ...(bodyMm === undefined ? {} : { bodyMm }),
        ...(beforeMm === undefined ? {} : { beforeMm }),
        ...(afterMm === undefined ? {} : { afterMm }),
        ...(easeMm === undefined ? {} : { easeMm }),
      }),
    ),
  ]);
  return rows.length === 0 ? [] : aligned(rows);
}

/** Faults and warnings first; notes are only counted. */
function told(findings: readonly ToldFinding[], { sentence }: Words): readonly string[] {
  const serious = (['fault', 'warning'] as const).flatMap(severity =>
    findings.filter(f => f.severity === severity),
  );
  const notes = findings.length - serious.length;
  const more = serious.length - mostFindings;
  return [
    ...serious
      .slice(0, mostFindings)
      .map(f => `${sentence(commandSaying('severity', { severity: f.severity }))}: ${f.message} ${f.remedy}`),
    ...(more > 0 ? [sentence(commandSaying('more-findings', { more }))] : []),
    ...(notes > 0 ? [sentence(commandSaying('notes-in-report', { notes }))] : []),
  ];
}
