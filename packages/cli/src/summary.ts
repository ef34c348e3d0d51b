import { cautionsFor } from '@paperhinge/alter';
import {
  hemSweep,
  type LengthUnit,
  type PatternMeasures,
  type ToldFinding,
  tolerances,
} from '@paperhinge/geometry';
import type { Run } from '@paperhinge/sheet';
import { aligned, shownChange, shownLength } from './figures.js';
import { oneLine } from './one-line.js';
import { wordsIn } from './words.js';

const mostEdges = 12;
const mostFindings = 6;

/**
 * What a run did, in plain words and under a screen.
 * @param files what was written to the folder
 * @param earlier pages that stand there from an earlier run
 */
export function summary(
  run: Run,
  folder: string,
  files: readonly string[],
  earlier: readonly string[] = [],
): string {
  const { record, altered, derived } = run;
  const { unit } = altered;
  const girths = Object.entries(record.girths);
  const seams = Object.values(record.after.seams);
  const matching = seams.filter(seam => seam.matches).length;
  const sections: readonly (readonly string[])[] = [
    [`${record.title ?? altered.name}: ${count(record.steps.length, 'step')} of ${record.sheet} done.`],
    changedEdges(run),
    derived.map(
      d =>
        `${d.name}: cut ${shownLength(d.lengthMm, unit)} × ${shownLength(d.widthMm, unit)} of ${d.fabric} (${d.kind})${stretched(d.figures)}`,
    ),
    [
      ...sweeps(run, unit),
      ...(girths.length > 0 ? aligned(girths.map(([level, g]) => [`${level} girth`, girth(g, unit)])) : []),
    ],
    [
      `Seams: ${matching} of ${seams.length} match.`,
      ...record.findings.filter(f => f.code === 'head-passes').map(f => f.message),
      ...told(record.findings),
    ],
    cautions(run),
    [`Files in ${folder}: ${files.join(', ')}`, ...stale(earlier)],
    ...(unit === 'in' ? [['Inches are to the nearest 1/8; millimetres are exact.']] : []),
  ];
  return `${sections
    .filter(section => section.length > 0)
    .map(section => section.map(oneLine).join('\n'))
    .join('\n\n')}\n`;
}

const count = (n: number, word: string) => `${n} ${word}${n === 1 ? '' : 's'}`;

/** Edges that changed, were made or went, with their lengths as drawn. Drafted pieces are told with their cut size. */
function changedEdges({ record: { before, after, derived }, altered: { unit } }: Run): readonly string[] {
  const then = lengths(before, derived),
    now = lengths(after, derived);
  const rows = [...new Set([...now.keys(), ...then.keys()])].flatMap(name => {
    const a = then.get(name),
      b = now.get(name);
    if (a !== undefined && b !== undefined && Math.abs(b - a) < tolerances.fitTolerance) return [];
    const change = a === undefined ? 'new' : b === undefined ? 'gone' : shownChange(b - a, unit);
    return [
      [
        `  ${name}`,
        a === undefined ? '' : shownLength(a, unit),
        b === undefined ? '' : shownLength(b, unit),
        change,
      ],
    ];
  });
  if (rows.length === 0) return ['No edge changed its length.'];
  const shown = rows.slice(0, mostEdges);
  return [
    ...aligned([['Edges as drawn', 'before', 'after', ''], ...shown]),
    ...(rows.length > shown.length
      ? [`  and ${count(rows.length - shown.length, 'more edge')} in record.json`]
      : []),
  ];
}

const lengths = ({ pieces }: PatternMeasures, derived: object): ReadonlyMap<string, number> =>
  new Map(
    Object.entries(pieces)
      .filter(([piece]) => !Object.hasOwn(derived, piece))
      .flatMap(([piece, { edges }]) =>
        Object.entries(edges).map(([edge, { lengthMm }]) => [`${piece}.${edge}`, lengthMm] as const),
      ),
  );

function cautions({ altered, sheet, derived }: Run): readonly string[] {
  const [first, ...more] = cautionsFor({ pattern: altered, wearer: sheet.wearer, derived });
  if (!first) return [];
  return [
    `${wordsIn(altered.unit).sentence(first)}${more.length > 0 ? ` ${count(more.length, 'more caution')} in report.html.` : ''}`,
  ];
}

const stale = (earlier: readonly string[]) =>
  earlier.length > 0 ? [`Not of this run: ${earlier.join(', ')}`] : [];

const stretched = (figures: Readonly<Record<string, number>>): string =>
  figures.stretchPercent === undefined
    ? ''
    : `; its sewn part stretches by ${figures.stretchPercent.toFixed(1)} %`;

function sweeps({ before, altered }: Run, unit: LengthUnit): readonly string[] {
  const earlier = hemSweep(before);
  return hemSweep(altered).map(({ edges, sweepMm }) => {
    const was = earlier.find(e =>
      e.edges.some(r => edges.some(s => s.piece === r.piece && s.edge === r.edge)),
    );
    const names = edges.map(r => `${r.piece}.${r.edge}`).join(' + ');
    return `Hem sweep all round (${names}): ${was ? `${shownLength(was.sweepMm, unit)}, now ` : ''}${shownLength(sweepMm, unit)}`;
  });
}

type Girth = Run['record']['girths'][string];
function girth({ bodyMm, beforeMm, afterMm, easeMm }: Girth, unit: LengthUnit): string {
  const parts = [
    ...(beforeMm === undefined ? [] : [shownLength(beforeMm, unit)]),
    ...(afterMm === undefined ? ['gone'] : [`now ${shownLength(afterMm, unit)}`]),
    ...(bodyMm === undefined ? [] : [`body ${shownLength(bodyMm, unit)}`]),
    ...(easeMm === undefined ? [] : [`ease ${shownLength(easeMm, unit)}`]),
  ];
  return parts.join(', ');
}

/** Faults and warnings first; notes are only counted. */
function told(findings: readonly ToldFinding[]): readonly string[] {
  const serious = [
    ...findings.filter(f => f.severity === 'fault'),
    ...findings.filter(f => f.severity === 'warning'),
  ];
  const notes = findings.length - serious.length;
  const more = serious.length - mostFindings;
  return [
    ...serious.slice(0, mostFindings).map(f => `${f.severity}: ${f.message} ${f.remedy}`),
    ...(more > 0 ? [`${count(more, 'more finding')} in record.json.`] : []),
    ...(notes > 0 ? [`${count(notes, 'note')} in report.html.`] : []),
  ];
}
