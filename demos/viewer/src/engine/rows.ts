import { girthsBesideBody } from '@paperhinge/alter';
import { edgeNames, levelGirths, type Pattern, type Piece, type ToldFinding } from '@paperhinge/geometry';
import { oncePer } from '@paperhinge/geometry/internal';
import { dartsOf } from '@paperhinge/geometry/pattern';
import type { Sheet } from '@paperhinge/sheet';
import type { Words } from '@paperhinge/sheet/words';
import type { Seams } from './verdict.js';
import type { Names, Row } from './view.js';

/** Each level that both the garment and the body have. */
export function girthRows(
  { wearer }: Sheet,
  before: Pattern,
  after: ReadonlyMap<string, number>,
  { say }: Words,
): readonly Row[] {
  const girths = girthsBesideBody(before, wearer, levelGirths(before), Object.fromEntries(after));
  return Object.entries(girths).flatMap(([level, { bodyMm, afterMm, easeMm }]): readonly Row[] =>
    afterMm === undefined || easeMm === undefined
      ? []
      : [
          {
            text: `${say.name(level)} ${say.length(afterMm)}`,
            detail: say.change(easeMm),
            tone: easeMm < 0 ? 'care' : 'sound',
            level,
            ...(bodyMm === undefined ? {} : { body: say.length(bodyMm) }),
          },
        ],
  );
}

/** mm: ease that is worth a word. */
const leastEase = 0.05;

/** Every seam with the lengths of its sides, worst first. */
export function seamRows(seams: Seams, findings: readonly ToldFinding[], { say }: Words): readonly Row[] {
  const rows = Object.entries(seams).map(([name, s]): Row & { off: number } => {
    const finding = findings.find(f => f.where.seam === name);
    const ease = Math.abs(s.easeWantedMm) > leastEase ? [say.change(s.easeWantedMm)] : [];
    return {
      text: say.thing({ seam: name }),
      seam: name,
      detail: [say.length(s.aMm), say.length(s.bMm), ...ease].join(' · '),
      tone: s.matches ? 'sound' : 'fault',
      off: Math.abs(s.differenceMm - s.easeWantedMm),
      ...(finding ? { where: finding.where } : {}),
    };
  });
  return rows.sort((p, q) => q.off - p.off).map(({ off, ...row }) => row);
}

/** The names there are to choose from, by the pieces that have them. */
type NamesOfPieces = Pick<Names, 'edges' | 'darts' | 'lines' | 'marks'>;
const kindsOfNames: Readonly<Record<keyof NamesOfPieces, (piece: Piece) => readonly string[]>> = {
  edges: edgeNames,
  darts: piece => dartsOf(piece).map(d => d.name),
  lines: piece => piece.lines.map(l => l.name),
  marks: piece => piece.marks.map(m => m.name),
};

/** The names there are to choose from in each of some patterns; of neighbours that have the same, the same object. */
export function namesOfEach(patterns: readonly Pattern[]): readonly Names[] {
  const all: Names[] = [];
  for (const [i, pattern] of patterns.entries()) {
    const had = all.at(-1);
    all.push(had && haveSameNames(pattern, patterns[i - 1]!, had) ? had : namesOf(pattern));
  }
  return all;
}

const namesOf: (pattern: Pattern) => Names = oncePer((pattern: Pattern): Names => {
  const by = (kind: keyof NamesOfPieces) =>
    Object.fromEntries(pattern.pieces.map(p => [p.name, kindsOfNames[kind](p)]));
  return {
    pieces: pattern.pieces.map(p => p.name),
    edges: by('edges'),
    darts: by('darts'),
    lines: by('lines'),
    marks: by('marks'),
    seams: pattern.seams.map(s => s.name),
    fabrics: pattern.fabrics.map(f => f.name),
  };
});

/** Whether a pattern has the names of the one before it. */
function haveSameNames(now: Pattern, before: Pattern, had: Names): boolean {
  if (now === before) return true;
  const kinds = Object.keys(kindsOfNames) as readonly (keyof NamesOfPieces)[];
  return (
    areSame(
      now.seams.map(s => s.name),
      had.seams,
    ) &&
    areSame(
      now.fabrics.map(f => f.name),
      had.fabrics,
    ) &&
    areSame(
      now.pieces.map(p => p.name),
      had.pieces,
    ) &&
    now.pieces.every(
      (piece, i) =>
        piece === before.pieces[i] ||
        kinds.every(kind => areSame(kindsOfNames[kind](piece), had[kind][piece.name] ?? [])),
    )
  );
}

const areSame = (now: readonly string[], had: readonly string[]): boolean =>
  now.length === had.length && now.every((name, i) => name === had[i]);
