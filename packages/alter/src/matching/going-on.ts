import {
  type EdgeRun,
  edgeNames,
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  type Seam,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { neighboursOf, type PlaceOnEdge } from '@paperhinge/geometry/pattern';
import { acrossSeams } from './across-seam.js';

type End = 'start' | 'end';

/** A seam in which another goes on beyond the seam that crosses both: a skirt's side below a bodice's. */
export interface GoesOn {
  readonly seam: Seam;
  /** The end of the seam given, and that of this one, which meet there. */
  readonly from: End;
  readonly at: End;
  /** The piece beyond that lies on the same side as the piece it was looked for from. */
  readonly here: string;
  readonly beyond: string;
}

/**
 * The seams that go on from the ends of one: the edge beside the seam there is sewn to another piece, which has a corner
 * of its own at the same place, and its edge on the other side of that corner is sewn in the seam found. None where what
 * lies beyond was made for an edge, as a facing is: that is drafted again.
 */
export const seamsGoingOnFrom = (pattern: Pattern, seam: Seam): readonly GoesOn[] =>
  (['start', 'end'] as const).flatMap(from =>
    [seam.a, seam.b].flatMap(side => {
      const run = from === 'start' ? side[0]! : side.at(-1)!;
      const corner = cornerBeside(pattern, run, from);
      return corner ? beyond(pattern, seam, corner).map(found => ({ ...found, from, here: run.piece })) : [];
    }),
  );

/** An end of an edge. */
interface Corner {
  readonly piece: string;
  readonly edge: string;
  readonly end: End;
}

/** Which clockwise end of its edge a run starts or ends at. */
const endOfRun = (run: EdgeRun, at: End): End => (run.reversed === (at === 'end') ? 'start' : 'end');

/** The end of the edge that lies beside a run at that end of its seam. */
function cornerBeside(pattern: Pattern, run: EdgeRun, at: End): Corner | undefined {
  return run.part ? undefined : nextTo(pattern, { ...run, end: endOfRun(run, at) });
}

/** The edge on the other side of a corner; none where a dart or a pleat lies there. */
function nextTo(pattern: Pattern, { piece, edge, end }: Corner): Corner | undefined {
  const owner = pieceNamed(pattern, piece);
  const next = neighboursOf(owner, edge)[end];
  if (!edgeNames(owner).includes(next)) return undefined;
  return { piece, edge: next, end: end === 'start' ? 'end' : 'start' };
}

function beyond(
  pattern: Pattern,
  seam: Seam,
  corner: Corner,
): readonly Pick<GoesOn, 'seam' | 'at' | 'beyond'>[] {
  // A little inside, where it is clear which edge it is sewn to.
  const inside = acrossSeams(pattern, placeIn(pattern, corner, 2 * tolerances.seamTolerance));
  return inside.flatMap(place => {
    if (place.seam === seam || isMade(pattern, place.piece)) return [];
    const meeting = endNear(pattern, place);
    const next = meeting && nextTo(pattern, meeting);
    return next ? seamsEndingAt(pattern, next, seam).map(found => ({ ...found, beyond: next.piece })) : [];
  });
}

/** The place so many mm from an end of an edge. */
function placeIn(pattern: Pattern, { piece, edge, end }: Corner, mm: number): PlaceOnEdge {
  const length = lengthOf(pattern, piece, edge);
  return { piece, edge, at: end === 'start' ? Math.min(mm, length) : Math.max(length - mm, 0) };
}

/** The end of its edge that a place lies at, but for what a maker could sew away. */
function endNear(pattern: Pattern, { piece, edge, at }: PlaceOnEdge): Corner | undefined {
  const far = lengthOf(pattern, piece, edge) - at;
  if (Math.min(at, far) > nearEnd) return undefined;
  return { piece, edge, end: at < far ? 'start' : 'end' };
}

/** mm. As far inside as was looked, and the two sides of a seam may differ by what still matches. */
const nearEnd = 3 * tolerances.seamTolerance;

const seamsEndingAt = (pattern: Pattern, corner: Corner, but: Seam) =>
  pattern.seams
    .filter(seam => seam !== but)
    .flatMap(seam =>
      (['start', 'end'] as const).flatMap(at => {
        const isThere = [seam.a, seam.b].some(side => {
          const run = at === 'start' ? side[0]! : side.at(-1)!;
          return run.piece === corner.piece && run.edge === corner.edge && endOfRun(run, at) === corner.end;
        });
        return isThere ? [{ seam, at }] : [];
      }),
    );

const isMade = (pattern: Pattern, piece: string): boolean =>
  (pieceNamed(pattern, piece).madeFor ?? []).length > 0;

const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));
