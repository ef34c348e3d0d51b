import { girthsBesideBody } from '@paperhinge/alter';
import { edgeNames, levelGirths, type Pattern, type ToldFinding } from '@paperhinge/geometry';
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
  const girths = girthsBesideBody(wearer, levelGirths(before), Object.fromEntries(after));
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

/** The names there are to choose from. */
export function namesOf(pattern: Pattern): Names {
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
