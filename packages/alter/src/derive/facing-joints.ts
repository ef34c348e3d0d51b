import {
  type EdgeRun,
  edgeNames,
  edgePath,
  type Pattern,
  type Piece,
  pathLength,
  pieceRoleOf,
  type Seam,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { edgeParts, neighboursOf } from '@paperhinge/geometry/pattern';
import { partnerCorners } from './chain-links.js';
import { type FacingEnd, type FacingOn, shouldersBetween } from './facing-piece.js';

/** Two ends of facings that lie along one seam of the garment, so that they are joined to one another there. */
export interface FacingJoint {
  readonly seam: string;
  readonly first: JointEnd;
  readonly second: JointEnd;
}
interface JointEnd {
  readonly facing: Facing;
  readonly end: FacingEnd;
}
/** What of a facing tells where it is joined to others. */
export type Facing = Pick<FacingOn, 'piece' | 'ends'>;

/** Where the seams of the garment bring ends of these facings together; a facing may be joined to itself. */
export function facingJoints(pattern: Pattern, facings: readonly Facing[]): readonly FacingJoint[] {
  const ends = facings.flatMap(facing => facing.ends.map(end => ({ facing, end })));
  return pattern.seams.flatMap(seam =>
    ends.flatMap((first, i) =>
      ends
        .slice(i)
        .filter(second => met(seam, first.end, second.end))
        .map(second => ({ seam: seam.name, first, second })),
    ),
  );
}

/** Whether a seam lays one end on the other, the corners at which both meet the faced line on one another. */
function met({ a, b }: Seam, one: FacingEnd, other: FacingEnd): boolean {
  const reaches = (own: readonly EdgeRun[], partner: readonly EdgeRun[]): boolean =>
    partnerCorners({ own, partner }, one.source, one.corner).some(
      ({ run, end }) =>
        run.piece === other.source.piece && run.edge === other.source.edge && end === other.corner,
    );
  return reaches(a, b) || reaches(b, a);
}

/** The seam at a joint, from the faced line inwards, as far as the shorter of the two ends goes. */
export function jointSeam({ first, second }: FacingJoint): Pick<Seam, 'a' | 'b'> {
  const [a, b] = [first, second].map(({ facing, end }) => pathLength(edgePath(facing.piece, end.edge)));
  const shorter = Math.min(a!, b!);
  const run = ({ facing, end }: JointEnd, length: number): readonly EdgeRun[] => {
    const reversed = end.corner === 'end';
    const part = reversed ? { from: length - shorter, to: length } : { from: 0, to: shorter };
    const rest = length - shorter > tolerances.coincidenceTolerance ? { part } : {};
    return [{ piece: facing.piece.name, edge: end.edge, reversed, ...rest }];
  };
  return { a: run(first, a!), b: run(second, b!) };
}

/** The facings that a pattern has already, each made for one piece, as far as joining others to them asks. */
export const facingsOf = (pattern: Pattern): readonly Facing[] =>
  pattern.pieces.flatMap((piece): readonly Facing[] => {
    const [first] = piece.madeFor ?? [];
    const source = pattern.pieces.find(p => p.name === first?.piece);
    if (pieceRoleOf(piece) !== 'facing' || !source) return [];
    if (!piece.madeFor!.every(ref => ref.piece === source.name)) return [];
    return [{ piece, ends: endsOn(piece, source) }];
  });

/** The ends of a facing that have the names of the edges of its source they lie on. */
function endsOn(facing: Piece, source: Piece): readonly FacingEnd[] {
  const own = edgeNames(facing);
  const ends = facing.madeFor!.flatMap(({ edge }): readonly FacingEnd[] => {
    if (!own.includes(edge) || !edgeNames(source).includes(edge)) return [];
    const [here, there] = [neighboursOf(facing, edge), neighboursOf(source, edge)];
    return [
      ...(here.end === there.end
        ? [{ edge: here.end, source: { piece: source.name, edge: there.end }, corner: 'start' as const }]
        : []),
      ...(here.start === there.start
        ? [{ edge: here.start, source: { piece: source.name, edge: there.start }, corner: 'end' as const }]
        : []),
    ].filter(end => own.includes(end.edge) && !facing.madeFor!.some(ref => ref.edge === end.edge));
  });
  // A shoulder between neck and armhole is met at both its ends: it is joined from the neck outwards.
  return ends.filter(end => {
    const both = ends.filter(other => other.edge === end.edge);
    return (
      both.length === 1 ||
      end.corner ===
        shouldersBetween(edgeParts(facing), facing.madeFor!).find(s => s.edge === end.edge)?.corner
    );
  });
}
