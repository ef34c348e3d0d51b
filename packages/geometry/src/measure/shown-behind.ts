import { line } from '../curve/segment.js';
import { endOfTravel } from '../joining/corner.js';
import { oncePer } from '../once-per.js';
import { boundsOfPath } from '../path/bounds.js';
import { intersectPaths } from '../path/intersect.js';
import { pathLength, tangentAlong } from '../path/length.js';
import { nearestOnPath } from '../path/nearest.js';
import { pathOf } from '../path/path.js';
import { edgePath, outlinePath, pieceNamed } from '../pattern/outline.js';
import type { EdgeRun, Pattern, Piece } from '../pattern/types.js';
import { containsPoint } from '../region/contains.js';
import { coincidenceTolerance, joiningGap } from '../tolerance.js';
import { add, cross, distance, dot, leftOf, type Point, scale, subtract, unit } from '../vector.js';
import { bodyPieces } from './body-pieces.js';
import { facingEdges } from './facing-edges.js';
import { endOfRun } from './gap-between.js';
import { hipPieces } from './hip-pieces.js';
import type { LevelAcross } from './level-across.js';

/** A place at which a seam runs on from a piece of the garment to the side piece that lies under its pocket's mouth. */
interface Joint {
  readonly piece: string;
  readonly side: string;
  readonly from: EdgeRun;
  readonly to: EdgeRun;
  /** Where that is on each, and which way the seam goes there. */
  readonly at: { readonly place: Point; readonly way: Point };
  readonly there: { readonly place: Point; readonly way: Point };
}

/**
 * A level with what the garment shows of it behind a pocket's mouth: where it ends at an edge that no piece of the
 * garment is sewn to, it goes on over the side piece (`hipPieces`) as far as that reaches. Where the side piece lies is
 * told by the seams that run on from one to the other, at the waist and below the mouth; by one of them alone where
 * there is no other. A level drawn on the side piece itself says nothing more: half of it is hidden.
 */
export function withShownBehind(pattern: Pattern, piece: Piece, level: LevelAcross): LevelAcross {
  const joints = jointsOf(pattern).filter(joint => joint.piece === piece.name);
  if (joints.length === 0 || level.places.length < 2) return level;
  const outer = outerPieces(pattern);
  const isMouth = (edges: readonly string[]): boolean =>
    !facingEdges(pattern).some(({ a, b }) =>
      [
        [a, b],
        [b, a],
      ].some(
        ([own, other]) => own!.piece === piece.name && edges.includes(own!.edge) && outer.has(other!.piece),
      ),
    );
  const shown = ([0, 1] as const).map(end => {
    const [here, back] = [level.places[end]!, level.places[1 - end]!];
    return isMouth(level.ends[end]!) ? stripOn(pattern, joints, here, unit(subtract(here, back))) : undefined;
  });
  return {
    ...level,
    lengthMm: shown.reduce((sum, strip) => sum + (strip?.mm ?? 0), level.lengthMm),
    ends: level.ends.map((edges, end) => [...edges, ...(shown[end]?.edges ?? [])]),
  };
}

/** Whether a level of this piece is a part of one that `withShownBehind` runs on from another. */
export const isShownBehind = (pattern: Pattern, piece: Piece, having: readonly Piece[]): boolean =>
  jointsOf(pattern).some(
    joint => joint.side === piece.name && having.some(other => other.name === joint.piece),
  );

const outerPieces = /* @__PURE__ */ oncePer(
  (pattern: Pattern): ReadonlySet<string> => new Set(bodyPieces(pattern).map(piece => piece.name)),
);

const jointsOf = /* @__PURE__ */ oncePer((pattern: Pattern): readonly Joint[] => {
  const sides = hipPieces(pattern);
  if (sides.size === 0) return [];
  return pattern.seams.flatMap(({ a, b }) =>
    [a, b].flatMap(side =>
      side.slice(1).flatMap((run, i) => {
        const before = side[i]!;
        if (before.piece === run.piece || sides.has(before.piece) === sides.has(run.piece)) return [];
        const leaving = seenAt(pattern, before, 'end'),
          arriving = seenAt(pattern, run, 'start');
        return sides.has(run.piece)
          ? [{ piece: before.piece, side: run.piece, from: before, to: run, at: leaving, there: arriving }]
          : [{ piece: run.piece, side: before.piece, from: run, to: before, at: arriving, there: leaving }];
      }),
    ),
  );
});

/** Where a run starts or ends on its piece, and the way the seam goes there. */
function seenAt(pattern: Pattern, run: EdgeRun, end: 'start' | 'end') {
  const piece = pieceNamed(pattern, run.piece);
  const path = edgePath(piece, run.edge);
  const along =
    endOfTravel(run, end) === 'start' ? (run.part?.from ?? 0) : (run.part?.to ?? pathLength(path));
  return {
    place: endOfRun(piece, run, end),
    way: scale(tangentAlong(path, along), run.reversed ? -1 : 1),
  };
}

/** What is seen of a side piece beyond a place on the mouth, and the edge that its far end is sewn on with. */
function stripOn(pattern: Pattern, joints: readonly Joint[], place: Point, way: Point) {
  for (const side of new Set(joints.map(joint => joint.side))) {
    const piece = pieceNamed(pattern, side);
    const own = joints.filter(joint => joint.side === side);
    const lay = laidOn(own);
    const from = lay(place);
    const beyond = unit(subtract(lay(add(place, way)), from));
    const outline = outlinePath(piece.outline);
    const { min, max } = boundsOfPath(outline);
    const reach = distance(min, max) + distance(from, min);
    const end = intersectPaths(pathOf(line(from, add(from, scale(beyond, reach)))), outline).find(
      ({ alongA }) => alongA > coincidenceTolerance,
    );
    if (!end || !containsPoint(outline, add(from, scale(beyond, end.alongA / 2)))) continue;
    // Beyond the side piece the seam goes on with the piece's own edge: round the garment that is where it ends.
    const at = add(from, scale(beyond, end.alongA));
    const edges = own.filter(({ to }) => isOn(piece, to.edge, at)).map(({ from: { edge } }) => edge);
    return { mm: end.alongA, edges };
  }
  return undefined;
}

const isOn = (piece: Piece, edge: string, place: Point): boolean =>
  nearestOnPath(edgePath(piece, edge), place).distance <= joiningGap;

/** Carries a place on a piece to the side piece that lies under it. */
function laidOn(joints: readonly Joint[]): (place: Point) => Point {
  const [first] = joints as readonly [Joint];
  const other = joints.find(joint => distance(joint.at.place, first.at.place) > joiningGap);
  const [here, there] = other
    ? [subtract(other.at.place, first.at.place), subtract(other.there.place, first.there.place)]
    : [first.at.way, first.there.way];
  const [along, alongThere] = [unit(here), unit(there)];
  // Drawn the other way round, the seam goes along the one clockwise and against the clock along the other.
  const turned = first.from.reversed === first.to.reversed ? 1 : -1;
  return place => {
    const from = subtract(place, first.at.place);
    const on = scale(alongThere, dot(from, along));
    return add(add(first.there.place, on), scale(leftOf(alongThere), -turned * cross(along, from)));
  };
}
