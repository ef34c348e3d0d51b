import {
  type EdgeRef,
  type EdgeRun,
  edgeNamed,
  type Finding,
  type Pattern,
  pieceNamed,
  pieceRoleOf,
  type Seam,
} from '@paperhinge/geometry';
import { oncePer } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { neighboursAtEnds, type PlacedEnd, sidesOfSeam } from '@paperhinge/geometry/measure';
import { neighboursOf } from '@paperhinge/geometry/pattern';
import { eachOnce, edgeOf, holdsEdge, isSewn } from '../edge-refs.js';
import { isWithin } from './pieces.js';
import { finding } from './tellings.js';

/** The seams that sew a facing on: one side of facings alone, the other of none, nor of a lining or a band. */
export const facingSeams: (pattern: Pattern) => readonly Seam[] = /* @__PURE__ */ oncePer(
  (pattern: Pattern) =>
    pattern.seams.filter(({ a, b }) => {
      const isIn = ({ piece }: EdgeRef): boolean => isWithin(pattern, pieceNamed(pattern, piece));
      const isBand = ({ piece }: EdgeRef): boolean => pieceRoleOf(pieceNamed(pattern, piece)) === 'band';
      return (
        a.every(isFacing(pattern)) !== b.every(isFacing(pattern)) &&
        ![...a, ...b].every(isIn) &&
        !a.every(isBand) &&
        !b.every(isBand)
      );
    }),
);

const isFacing =
  (pattern: Pattern) =>
  ({ piece }: EdgeRef): boolean =>
    pieceRoleOf(pieceNamed(pattern, piece)) === 'facing';

/**
 * A pattern with the seams that join its maker's own facings to one another where they are not listed: those that meet
 * on the garment's edges where a seam of the garment ends, the two that face a neck at the shoulder. Nothing is joined
 * where that seam is open there, as at a zip. What is missing is told.
 */
export function withFacingsJoined(pattern: Pattern): {
  readonly pattern: Pattern;
  readonly findings: readonly Finding[];
} {
  const facings = facingSeams(pattern);
  if (facings.length === 0) return { pattern, findings: [] };
  const joints = pattern.seams
    .filter(seam => !facings.includes(seam) && ![...seam.a, ...seam.b].some(isFacing(pattern)))
    .filter(seam => !opens(pattern, seam))
    .flatMap(seam =>
      neighboursAtEnds(pattern, seam).flatMap(({ first, second }) =>
        jointAt(pattern, facings, first, second),
      ),
    );
  const missing = eachOnce(joints, (one, other) => keyOf(one) === keyOf(other));
  const names = pattern.seams.map(seam => seam.name);
  const seams = missing.map(({ ends: [a, b] }): Seam => {
    const name = unused(names, a.piece === b.piece ? a.piece : `${a.piece} and ${b.piece}`);
    names.push(name);
    return { name, a: [runFrom(a)], b: [runFrom(b)], ease: { mm: 0 } };
  });
  return {
    pattern: seams.length === 0 ? pattern : { ...pattern, seams: [...pattern.seams, ...seams] },
    findings: seams.map((seam, i) => told(pattern, seam, missing[i]!)),
  };
}

/** The ends of facings that lie on one another: the edge there, and the clockwise end of it that the faced edge is at. */
interface Joint {
  readonly ends: readonly [PlacedEnd, PlacedEnd];
}
const keyOf = ({ ends }: Joint): string =>
  ends
    .map(({ piece, edge, end }) => JSON.stringify([piece, edge, end]))
    .sort()
    .join();

const runFrom = ({ piece, edge, end }: PlacedEnd): EdgeRun => ({ piece, edge, reversed: end === 'end' });

/** A placket, a zip or a slit in a seam: what faces the edges there ends at it. */
const opens = ({ pieces, fastenings = [] }: Pattern, { a, b }: Seam): boolean =>
  [...a, ...b].some(
    run =>
      fastenings.some(({ along }) => along.piece === run.piece && along.edge === run.edge) ||
      pieces.some(piece => piece.name === run.piece && (edgeNamed(piece, run.edge).opening ?? 0) > 0),
  );

function jointAt(
  pattern: Pattern,
  facings: readonly Seam[],
  first: PlacedEnd,
  second: PlacedEnd,
): readonly Joint[] {
  const [one, other] = [first, second].map(end => facingEnds(pattern, facings, end)) as [
    readonly PlacedEnd[],
    readonly PlacedEnd[],
  ];
  if (one.length === 0 || other.length === 0) return [];
  const all = eachOnce([...one, ...other], (p, q) => keyOf({ ends: [p, p] }) === keyOf({ ends: [q, q] }));
  const { cutting } = pieceNamed(pattern, all[0]!.piece);
  // Left and right of a pair meet with the same edge.
  const ends = all.length === 1 && cutting.count > 1 ? [all[0]!, all[0]!] : all;
  if (ends.length !== 2) return [];
  return ends.every(end => isRaw(pattern, end)) ? [{ ends: [ends[0]!, ends[1]!] }] : [];
}

const isRaw = (pattern: Pattern, end: PlacedEnd): boolean => {
  const piece = pieceNamed(pattern, end.piece);
  const { kind, allowance } = edgeNamed(piece, end.edge);
  return piece.madeFor === undefined && kind === 'seam' && allowance > 0 && !isSewn(pattern, end);
};

/** The ends of facings that lie on an end of a faced edge: each the edge that goes on from there into the facing. */
const facingEnds = (pattern: Pattern, facings: readonly Seam[], place: PlacedEnd): readonly PlacedEnd[] =>
  facings.flatMap(seam => {
    const sides = sidesOfSeam(pattern, seam);
    const [facing, faced] = seam.a.every(isFacing(pattern)) ? [sides.a, sides.b] : [sides.b, sides.a];
    const at = faced.runs
      .filter(({ run }) => holdsEdge([run], place) && run.part === undefined)
      .map(({ run, fromMm, lengthMm }) =>
        (place.end === 'start') === run.reversed ? fromMm + lengthMm : fromMm,
      );
    const isAt = (mm: number) => at.some(one => Math.abs(one - mm) <= tolerances.seamTolerance);
    return facing.runs
      .filter(({ run }) => run.part === undefined)
      .flatMap(({ run, fromMm, lengthMm }) => [
        ...(isAt(fromMm) ? [beside(pattern, run, run.reversed ? 'end' : 'start')] : []),
        ...(isAt(fromMm + lengthMm) ? [beside(pattern, run, run.reversed ? 'start' : 'end')] : []),
      ])
      .filter(end => end !== undefined);
  });

/** The edge beside an end of a run; none where a dart or a pleat lies there. */
function beside(pattern: Pattern, run: EdgeRun, end: 'start' | 'end'): PlacedEnd | undefined {
  const piece = pieceNamed(pattern, run.piece);
  const edge = neighboursOf(piece, run.edge)[end];
  const isEdge = piece.outline.parts.some(part => part.type === 'edge' && part.name === edge);
  return isEdge ? { piece: run.piece, edge, end: end === 'start' ? 'end' : 'start' } : undefined;
}

const unused = (names: readonly string[], wanted: string): string =>
  names.includes(wanted) ? unused(names, `${wanted} again`) : wanted;

function told(pattern: Pattern, { name, a, b }: Seam, { ends }: Joint): Finding {
  const from = ends.map(({ piece, edge, end }) => neighboursOf(pieceNamed(pattern, piece), edge)[end]);
  return finding('note', 'facings-not-joined', edgeOf(a[0]!), {
    seam: { seam: name },
    edges: [edgeOf(a[0]!), edgeOf(b[0]!)],
    from,
  });
}
