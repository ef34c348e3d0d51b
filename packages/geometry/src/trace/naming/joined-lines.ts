import type { EdgeRun } from '../../pattern/types.js';
import type { Candidate } from './seam-candidates.js';
import { runsOf, type SewingLine } from './sewing-lines.js';

/** Lines that make one line once seams between their pieces are sewn, as both necks do round the whole neck. */
export interface JoinedLine {
  /** In order, each clockwise or against it. */
  readonly parts: readonly { readonly line: SewingLine; readonly reversed: boolean }[];
  /** It comes back to where it began, as an armhole does. */
  readonly isRing: boolean;
  readonly lengthMm: number;
}

/** The runs of a joined line, from its beginning or from its end. */
export const runsOfJoined = ({ parts }: JoinedLine, backwards: boolean): readonly EdgeRun[] =>
  backwards
    ? [...parts].reverse().flatMap(({ line, reversed }) => runsOf(line, !reversed))
    : parts.flatMap(({ line, reversed }) => runsOf(line, reversed));

/** An end of a line: its clockwise beginning, or its end. */
export interface End {
  readonly line: SewingLine;
  readonly atStart: boolean;
}

/**
 * What the lines that are still open make together once the seams are sewn: at both ends of a seam the edges beside it
 * run on across it. A line beside no seam is one by itself.
 */
export function joinedLines(
  all: readonly SewingLine[],
  sewn: readonly Candidate[],
  isOpen: (line: SewingLine) => boolean,
): readonly JoinedLine[] {
  const links = linksOf(all, sewn, isOpen);
  const left = new Set(all.filter(isOpen));
  const joined: JoinedLine[] = [];
  for (const line of left) {
    const back = walk({ line, atStart: true }, links);
    const isRing = back.isRing;
    const ahead = isRing ? [] : walk({ line, atStart: false }, links).met;
    const before = back.met.map(end => ({ line: end.line, reversed: end.atStart }));
    const parts = isRing
      ? [{ line, reversed: false }, ...before.reverse()]
      : [
          ...before.reverse(),
          { line, reversed: false },
          ...ahead.map(end => ({ line: end.line, reversed: !end.atStart })),
        ];
    for (const part of parts) left.delete(part.line);
    joined.push({ parts, isRing, lengthMm: parts.reduce((sum, part) => sum + part.line.lengthMm, 0) });
  }
  return joined;
}

type Links = ReadonlyMap<SewingLine, readonly [start: End | undefined, end: End | undefined]>;

/** From an end of a line on over seams, as far as they lead; each line met is entered at the end told. */
function walk(from: End, links: Links): { readonly met: readonly End[]; readonly isRing: boolean } {
  const met: End[] = [];
  let at: End = from;
  for (;;) {
    const next = links.get(at.line)?.[at.atStart ? 0 : 1];
    if (!next) return { met, isRing: false };
    if (next.line === from.line) return { met, isRing: next.atStart !== from.atStart };
    if (met.some(({ line }) => line === next.line)) return { met, isRing: false };
    met.push(next);
    at = { line: next.line, atStart: !next.atStart };
  }
}

function linksOf(
  all: readonly SewingLine[],
  sewn: readonly Candidate[],
  isOpen: (line: SewingLine) => boolean,
): Links {
  const links = new Map<SewingLine, [End | undefined, End | undefined]>();
  const link = (a: End | undefined, b: End | undefined): void => {
    if (!a || !b || !isOpen(a.line) || !isOpen(b.line)) return;
    for (const [one, other] of [
      [a, b],
      [b, a],
    ] as const) {
      const own = links.get(one.line) ?? [undefined, undefined];
      own[one.atStart ? 0 : 1] ??= other;
      links.set(one.line, own);
    }
  };
  for (const one of sewn) for (const [a, b] of runningOn(all, one)) link(a, b);
  return links;
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
