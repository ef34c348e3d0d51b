import type { EdgeRun } from '../../pattern/types.js';
import type { End, LookAround } from './around-corners.js';
import type { Candidate } from './seam-candidates.js';
import { runsOf, type SewingLine } from './sewing-lines.js';

/** Lines that make one line once seams between their pieces are sewn, as both necks do round the whole neck. */
export interface JoinedLine {
  /** In order, each clockwise or against it. */
  readonly parts: readonly { readonly line: SewingLine; readonly reversed: boolean }[];
  /** It comes back to where it began, as an armhole does. */
  readonly isRing: boolean;
  /** It is the half of such a ring: at both ends it comes to a fold, or to a seam with its own mirror image. */
  readonly isHalfRing: boolean;
  readonly lengthMm: number;
}

/** The runs of a joined line, from its beginning or from its end. */
export const runsOfJoined = ({ parts }: JoinedLine, backwards: boolean): readonly EdgeRun[] =>
  backwards
    ? [...parts].reverse().flatMap(({ line, reversed }) => runsOf(line, !reversed))
    : parts.flatMap(({ line, reversed }) => runsOf(line, reversed));

/** rad: where several pieces meet, a line runs on past half a turn of cloth, give or take; past more there is a corner. */
const bend = 0.9;
const isCorner = (seamsCrossed: number, cloth: number | undefined): boolean =>
  seamsCrossed > 1 && cloth !== undefined && Math.abs(cloth - Math.PI) > bend;

/**
 * What the lines that are still open make together once the seams are sewn: at the ends of a seam the edges beside it
 * run on across it. A line beside no seam is one by itself.
 * @param around over the seams that are sewn
 */
export function joinedLines(
  all: readonly SewingLine[],
  isOpen: (line: SewingLine) => boolean,
  around: LookAround,
): readonly JoinedLine[] {
  const left = new Set(all.filter(isOpen));
  const joined: JoinedLine[] = [];
  for (const line of left) {
    const back = walk({ line, atStart: true }, around);
    const isRing = back.isRing;
    const ahead = isRing ? [] : walk({ line, atStart: false }, around).met;
    const before = back.met.map(end => ({ line: end.line, reversed: end.atStart }));
    const parts = isRing
      ? [{ line, reversed: false }, ...before.reverse()]
      : [
          ...before.reverse(),
          { line, reversed: false },
          ...ahead.map(end => ({ line: end.line, reversed: !end.atStart })),
        ];
    for (const part of parts) left.delete(part.line);
    const ends = [endOf(parts[0]!, true), endOf(parts.at(-1)!, false)];
    joined.push({
      parts,
      isRing,
      isHalfRing: !isRing && ends.every(end => around(end).isMiddle),
      lengthMm: parts.reduce((sum, part) => sum + part.line.lengthMm, 0),
    });
  }
  return joined;
}

/** The end of a line at which a joined line begins or ends with it. */
const endOf = (part: { readonly line: SewingLine; readonly reversed: boolean }, begins: boolean): End => ({
  line: part.line,
  atStart: part.reversed !== begins,
});

/** From an end of a line on over seams, as far as they lead; each line met is entered at the end told. */
function walk(from: End, around: LookAround): { readonly met: readonly End[]; readonly isRing: boolean } {
  const met: End[] = [];
  let at: End = from;
  for (;;) {
    const { met: next, seamsCrossed, cloth } = around(at);
    if (!next || seamsCrossed === 0 || isCorner(seamsCrossed, cloth)) return { met, isRing: false };
    if (next.line === from.line) return { met, isRing: next.atStart !== from.atStart };
    if (met.some(({ line }) => line === next.line)) return { met, isRing: false };
    met.push(next);
    at = { line: next.line, atStart: !next.atStart };
  }
}

/**
 * The ends of lines that run on across a seam, at its beginning and at its end; none across a line's own mirror image.
 */
export function runningOn(
  all: readonly SewingLine[],
  { runs: { a, b } }: Pick<Candidate, 'runs'>,
): readonly (readonly [End | undefined, End | undefined])[] {
  if (a.length === 0 || b.length === 0 || a === b) return [];
  return [
    [beside(all, a[0]!, true), beside(all, b[0]!, true)],
    [beside(all, a.at(-1)!, false), beside(all, b.at(-1)!, false)],
  ];
}

/** The end of the line that a run meets where it begins, or where it ends. */
function beside(all: readonly SewingLine[], run: EdgeRun, begins: boolean): End | undefined {
  const own = all.filter(line => line.piece.name === run.piece);
  const at = own.findIndex(line => line.edges.includes(run.edge));
  const clockwiseStart = begins !== run.reversed;
  const line = own[(at + (clockwiseStart ? -1 : 1) + own.length) % own.length];
  return line && { line, atStart: !clockwiseStart };
}
