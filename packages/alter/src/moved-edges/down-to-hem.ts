import { edgePath, type Path, type Piece, type Point, pathLength } from '@paperhinge/geometry';
import {
  intersectPaths,
  joined,
  nearestOnPath,
  pathEnd,
  pathStart,
  pointAlong,
} from '@paperhinge/geometry/paths';
import { centreEdgeOf, edgesOfRole, lineRoleOf, outlinePath } from '@paperhinge/geometry/pattern';
import { dot, lerp, subtract } from '@paperhinge/geometry/plane';
import { alongGrainTowards, grainOrVertical, middleOf } from './grain.js';
import { lineThrough, reachOf } from './meet.js';
import { hemOf } from './move-hem.js';
import { refusal } from './tellings.js';

/**
 * mm along the grain from a level of a piece, or from its waist, down to its hem: at its side, where a body's heights
 * are taken and the pieces beside it read the same, else at its centre, else through the middle of its grain line.
 *
 * @param from the name of a line; `waist`: also the waist line or edge by its role
 * @throws PatternError `no-level-there`; `no-hem`, `several-hems`, `grain-across`
 */
export function downToHem(piece: Piece, from: string): number {
  const level = levelOf(piece, from);
  const hem = edgePath(piece, hemOf(piece));
  const { grain } = grainOrVertical(piece);
  const down = alongGrainTowards(piece, grain, middleOf(piece), pointAlong(hem, pathLength(hem) / 2));
  const beside = sideOf(piece) ?? centreEdgeOf(piece)?.path;
  const [top, bottom] = beside
    ? [endNearest(level, beside), endNearest(hem, beside)]
    : [level, hem].map(path => onGrainLine(piece, path, down, from));
  return dot(subtract(bottom!, top!), down);
}

function levelOf(piece: Piece, from: string): Path {
  const line = piece.lines.find(({ name }) => name === from);
  if (line) return line.path;
  if (from === 'waist') {
    const byRole = piece.lines.find(one => lineRoleOf(one) === 'waist');
    if (byRole) return byRole.path;
    const [edge] = edgesOfRole(piece, 'waist');
    if (edge !== undefined) return edgePath(piece, edge);
  }
  throw noLevel(piece, from);
}

/** All of the outer side, or the outseam, that comes down to the hem. */
function sideOf(piece: Piece): Path | undefined {
  const names = edgesOfRole(piece, 'outseam', 'side');
  const paths = names.map(name => edgePath(piece, name));
  return paths.length > 0 ? joined(...paths) : undefined;
}

const endNearest = (path: Path, edge: Path): Point => {
  const [a, b] = [pathStart(path), pathEnd(path)];
  return nearestOnPath(edge, a).distance <= nearestOnPath(edge, b).distance ? a : b;
};

/** Where the grain line, run on both ways, crosses a path. @throws PatternError `no-level-there` */
function onGrainLine(piece: Piece, path: Path, down: Point, from: string): Point {
  const drawn = piece.lines.find(({ kind }) => kind === 'grain')?.path;
  const middle = drawn ? lerp(pathStart(drawn), pathEnd(drawn), 0.5) : middleOf(piece);
  const reach = reachOf(outlinePath(piece.outline)) + reachOf(path);
  const [crossing] = intersectPaths(lineThrough(middle, down, reach), path);
  if (!crossing) throw noLevel(piece, from);
  return pointAlong(path, crossing.alongB);
}

const noLevel = (piece: Piece, from: string) =>
  refusal(
    'no-level-there',
    {
      piece: { piece: piece.name },
      from,
      levels: piece.lines.filter(({ kind }) => kind === 'level').map(({ name }) => name),
    },
    { piece: piece.name },
  );
