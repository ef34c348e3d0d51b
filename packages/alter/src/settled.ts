import {
  type EdgeRef,
  type EdgeRun,
  edgeNames,
  type Fastening,
  type Finding,
  type Notch,
  type Pattern,
  type Piece,
  type Seam,
  type Thing,
} from '@paperhinge/geometry';
import { abs } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import type { Said } from './alteration.js';
import { thingsOn } from './became/by-names.js';
import { followed } from './became/followed.js';
import type { Step } from './became/run.js';
import { finding } from './became/tellings.js';
import { followPlace, followThing } from './became/things.js';
import { distinctEdges, edgeOf, hasEdge, holdsEdge, sameEdge } from './edge-refs.js';

/**
 * An alteration with everything that every operation owes: seams, fastenings and notches that follow what became of
 * what, and a finding for each thing that went. Where it does not say what became of what, see `saidByNames`.
 */
export function settled(before: Pattern, alteration: Said): Said {
  const { pattern: after, became } = alteration;
  const kept = withoutLost(followed({ before, after, became }));
  const drafted = alteration.derived?.map(d => d.name) ?? [];
  const lost = lostThings({ before, after: kept.pattern, became }, drafted, alteration.notchedAnew);
  const told = new Set(alteration.findings.map(keyOf));
  const added = [...lost, ...kept.findings].filter(one => !told.has(keyOf(one)));
  return {
    ...alteration,
    pattern: kept.pattern,
    findings: [...alteration.findings, ...added],
  };
}

const keyOf = ({ code, where, figures, about }: Finding): string =>
  JSON.stringify([code, where.piece, where.edge, figures, about]);

/** Notches, edges, lines and marks that a step left no place for, on pieces still there and not drafted anew. */
function lostThings(
  step: Step,
  drafted: readonly string[],
  notchedAnew: readonly EdgeRef[] = [],
): readonly Finding[] {
  const { before, after, became } = step;
  const stay = before.pieces.filter(
    piece =>
      !after.pieces.includes(piece) &&
      !drafted.includes(piece.name) &&
      followThing(became, { piece: piece.name }).length > 0,
  );
  return stay.flatMap(piece => [
    ...piece.notches
      .filter(
        notch =>
          !holdsEdge(notchedAnew, { piece: piece.name, edge: notch.edge }) && isLost(step, piece, notch),
      )
      .map(({ name: notch, edge, at: atMm }) => {
        const where = { piece: piece.name, edge };
        return finding('warning', 'notch-cut-away', where, { notch, edge: where, atMm });
      }),
    ...edgeNames(piece)
      .map(edge => ({ piece: piece.name, edge }))
      .filter(
        edge =>
          !followThing<Thing>(became, edge).some(
            now => now.edge === undefined || hasEdge(after, now as EdgeRef),
          ),
      )
      .map(edge => finding('warning', 'edge-cut-away', edge, { edge })),
    ...thingsOn(piece).flatMap(thing => {
      if (followThing(became, thing).length > 0) return [];
      const where = { piece: piece.name };
      if (thing.line !== undefined) return [finding('note', 'line-cut-away', where, { line: thing })];
      return thing.mark === undefined ? [] : [finding('note', 'mark-cut-away', where, { mark: thing })];
    }),
  ]);
}

/** A named notch that now stands elsewhere was set anew, as those of a band's quarters are. */
function isLost({ after, became }: Step, piece: Piece, notch: Notch): boolean {
  const all = after.pieces.flatMap(p => p.notches.map(n => ({ ...n, piece: p.name })));
  if (notch.name !== undefined && all.some(n => n.name === notch.name)) return false;
  const was = { piece: piece.name, edge: notch.edge, at: notch.at };
  // An edge that is no edge any more, as one that a piece was joined at, needs no notches.
  if (followThing<Thing>(became, edgeOf(was)).some(now => now.edge === undefined)) return false;
  return !followPlace(became, was).some(place =>
    all.some(n => sameEdge(n, place) && abs(n.at - place.at) <= tolerances.joiningGap),
  );
}

/** Takes runs along edges that are gone out of every seam, and seams and fastenings that have none left. */
export function withoutLost(pattern: Pattern): {
  readonly pattern: Pattern;
  readonly findings: readonly Finding[];
} {
  const there = (run: EdgeRun): boolean =>
    hasEdge(pattern, run) && (run.part === undefined || run.part.from < run.part.to);
  const findings: Finding[] = [];
  const seams = pattern.seams.flatMap((seam): readonly Seam[] => {
    const lost = [...seam.a, ...seam.b].filter(run => !there(run));
    if (lost.length === 0) return [seam];
    const edges = distinctEdges(lost).map(edgeOf);
    const left = { ...seam, a: seam.a.filter(there), b: seam.b.filter(there) };
    const gone = left.a.length === 0 || left.b.length === 0;
    const facts = { seam: { seam: seam.name }, edges };
    findings.push(finding('warning', gone ? 'seam-gone' : 'seam-run-gone', { seam: seam.name }, facts));
    return gone ? [] : [left];
  });
  const fastenings = pattern.fastenings?.filter((one: Fastening) => {
    if (there(one.along)) return true;
    const edge = edgeOf(one.along);
    findings.push(finding('warning', 'fastening-gone', edge, { fastening: { fastening: one.name }, edge }));
    return false;
  });
  if (findings.length === 0) return { pattern, findings };
  return { pattern: { ...pattern, seams, ...(fastenings ? { fastenings } : {}) }, findings };
}
