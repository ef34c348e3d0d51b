import type { Path, Piece } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { endTangent, startTangent } from '@paperhinge/geometry/paths';
import { angleBetween, distance, scale } from '@paperhinge/geometry/plane';
import { checkCuts } from './check-cuts.js';
import { type Cut, type CutEnd, courseOf, pointOfEnd, slashOf } from './cut.js';
import type { CutPiece, Joint, Spoke } from './cut-piece.js';
import { facesOf } from './faces.js';
import { ringOf, type Stretch } from './ring.js';
import { refusal } from './tellings.js';

/**
 * Cuts a piece into its sections: the faces of the plane graph of outline and cuts, each traced by keeping to the
 * first branch on the inner side (the usual face traversal of a planar map).
 *
 * @throws PatternError `slash-leaves-piece`, `slash-crosses-dart`, `slashes-cross`, `slashes-too-near`, `slash-twice`, `slash-too-short`,
 *   `slash-not-attached`, `unknown-edge`, `unknown-dart`
 */
export function cutApart(piece: Piece, cuts: readonly Cut[]): CutPiece {
  const courses = cuts.map(cut => courseOf(piece, cut));
  checkCuts(piece, cuts, courses);
  const ring = ringOf(
    piece,
    cuts.flatMap(c => [c.from, c.to]),
  );
  const joints = jointsOf(piece, cuts, courses, ring.gapOf);
  for (const joint of joints) joint.spokes = inOrder(joint, ring.stretches);
  checkAttached(piece, cuts, joints);
  const nodes = joints
    .filter((j): j is Joint & { gap: number } => j.gap !== undefined)
    .sort((a, b) => a.gap - b.gap);
  return {
    piece,
    cuts,
    courses,
    stretches: ring.stretches,
    nodes,
    ...facesOf({ stretches: ring.stretches, courses, joints, nodes }),
  };
}

/** The section on one side of the place where a cut leaves the outline: before or after it in clockwise order. */
export function sectionAt(
  cutPiece: CutPiece,
  cut: number,
  end: 'from' | 'to',
  side: 'before' | 'after',
): number {
  const { left, right } = cutPiece.beside[cut]!;
  return (end === 'from') === (side === 'before') ? right : left;
}

function jointsOf(
  piece: Piece,
  cuts: readonly Cut[],
  courses: readonly Path[],
  gapOf: ReadonlyMap<CutEnd, number>,
): Joint[] {
  const joints: Joint[] = [];
  const meet = (end: CutEnd, spoke: Spoke) => {
    const gap = gapOf.get(end);
    const point = pointOfEnd(piece, end);
    const found = joints.find(j =>
      gap === undefined
        ? j.gap === undefined && distance(j.point, point) <= tolerances.coincidenceTolerance
        : j.gap === gap,
    );
    if (found) found.spokes.push(spoke);
    else joints.push({ point, spokes: [spoke], ...(gap === undefined ? {} : { gap }) });
  };
  for (const [cut, { from, to }] of cuts.entries()) {
    meet(from, { cut, end: 'from', away: startTangent(courses[cut]!) });
    meet(to, { cut, end: 'to', away: scale(endTangent(courses[cut]!), -1) });
  }
  return joints;
}

/** Spokes sorted anticlockwise as seen from where the outline comes from: from its arriving to its leaving stretch. */
function inOrder(joint: Joint, stretches: readonly Stretch[]): Spoke[] {
  const back = joint.gap === undefined ? { x: 1, y: 0 } : scale(endTangent(stretches[joint.gap]!.path), -1);
  const turn = ({ away }: Spoke) => (2 * Math.PI - angleBetween(back, away)) % (2 * Math.PI);
  return [...joint.spokes].sort((a, b) => turn(a) - turn(b));
}

/** A cut that hangs on nothing would leave a section with a hole, which no rigid motion can part. */
function checkAttached(piece: Piece, cuts: readonly Cut[], joints: readonly Joint[]): void {
  const reached = new Set<number>();
  const visit = (joint: Joint) => {
    for (const { cut } of joint.spokes) {
      if (reached.has(cut)) continue;
      reached.add(cut);
      for (const next of joints) if (next.spokes.some(s => s.cut === cut)) visit(next);
    }
  };
  for (const joint of joints) if (joint.gap !== undefined) visit(joint);
  const loose = cuts.find((_, i) => !reached.has(i));
  if (loose) throw refusal('slash-not-attached', { slash: slashOf(loose) }, { piece: piece.name });
}
