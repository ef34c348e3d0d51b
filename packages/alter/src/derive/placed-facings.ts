import {
  type EdgeRun,
  edgePath,
  type Finding,
  type Pattern,
  pathLength,
  pieceNamed,
  type Seam,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { facingJoints, facingsOf, jointSeam } from './facing-joints.js';
import type { FacingOn } from './facing-piece.js';
import { laidAside } from './free-place.js';
import { takePlace } from './take-place.js';

/** Facings put into a pattern: laid aside, sewn to the edges they were made for, and to one another. */
export interface PlacedFacings {
  readonly pattern: Pattern;
  readonly facings: readonly FacingOn[];
  readonly findings: readonly Finding[];
}

export function placedFacings(pattern: Pattern, facings: readonly FacingOn[]): PlacedFacings {
  const findings: Finding[] = [];
  const laid: FacingOn[] = [];
  let altered = pattern;
  for (const facing of facings) {
    const piece = laidAside(altered, facing.piece);
    const [closing] = facing.closed;
    const closed = closing === undefined ? undefined : ownSeam(piece.name, closing);
    const placed = takePlace(
      altered,
      piece,
      { ...sewnAlong(facing), easeMm: longerBy(altered, facing) },
      closed,
    );
    altered = placed.pattern;
    findings.push(...placed.findings);
    laid.push({ ...facing, piece });
  }
  return { pattern: withJoints(altered, laid), facings: laid, findings };
}

/** An edge that was a fold, sewn to its own mirror image. */
const ownSeam = (piece: string, edge: string): Pick<Seam, 'a' | 'b'> => {
  const run = [{ piece, edge, reversed: false }];
  return { a: run, b: run };
};

/** mm by which a facing's edges are longer than those of the garment, as where they roll to the outside. */
function longerBy(pattern: Pattern, { piece, faced }: FacingOn): number {
  const mm = faced.reduce(
    (sum, { edge, source }) =>
      sum +
      pathLength(edgePath(piece, edge)) -
      pathLength(edgePath(pieceNamed(pattern, source.piece), source.edge)),
    0,
  );
  return Math.abs(mm) <= tolerances.leastSeen ? 0 : mm;
}

/** The facing's edges lie on those of the garment one by one. */
const sewnAlong = ({ piece, faced }: FacingOn) => ({
  own: faced.map(({ edge }): EdgeRun => ({ piece: piece.name, edge, reversed: false })),
  partner: faced.map(({ source, reversed }): EdgeRun => ({ ...source, reversed })),
});

/** Seams where the facings meet one another, or facings that were there before; those of an earlier draft go. */
function withJoints(pattern: Pattern, facings: readonly FacingOn[]): Pattern {
  const isNew = (name: string): boolean => facings.some(f => f.piece.name === name);
  const before = facingsOf(pattern).filter(({ piece }) => !isNew(piece.name));
  const all = [...facings, ...before];
  const isFacing = (run: EdgeRun): boolean => all.some(f => f.piece.name === run.piece);
  const closing = new Set(facings.flatMap(f => f.closed.map(edge => `${f.piece.name}\n${edge}`)));
  const stale = ({ a, b }: Seam): boolean => {
    const runs = [...a, ...b];
    return (
      runs.every(isFacing) &&
      runs.some(r => isNew(r.piece)) &&
      !runs.some(r => closing.has(`${r.piece}\n${r.edge}`))
    );
  };
  const kept = pattern.seams.filter(seam => !stale(seam));
  const joints = facingJoints(pattern, all).filter(({ first, second }) =>
    [first, second].some(({ facing }) => isNew(facing.piece.name)),
  );
  const names = new Set(kept.map(s => s.name));
  const added = joints.map((joint): Seam => {
    const { first, second } = joint;
    const pieces = [...new Set([first.facing.piece.name, second.facing.piece.name])];
    const name = unused(`${pieces.join(' and ')} at ${joint.seam}`, names);
    return { name, ...jointSeam(joint), ease: { mm: 0 } };
  });
  return added.length === 0 && kept.length === pattern.seams.length
    ? pattern
    : { ...pattern, seams: [...kept, ...added] };
}

function unused(wanted: string, names: Set<string>): string {
  let free = wanted;
  for (let n = 2; names.has(free); n++) free = `${wanted}-${n}`;
  names.add(free);
  return free;
}
