import {
  type EdgeRole,
  edgePath,
  type LineRole,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pieceRoleOf,
  type Seam,
} from '@paperhinge/geometry';
import { namesBack } from '@paperhinge/geometry/internal';
import { intersectPaths, pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { edgesOfRole, lineRoleOf, markRoleOf, outlinePath } from '@paperhinge/geometry/pattern';
import { subtract, unit } from '@paperhinge/geometry/plane';
import { grainOrVertical } from '../../moved-edges/grain.js';
import { lineThrough, reachOf } from '../../moved-edges/meet.js';
import { isBack } from '../front-and-back.js';
import { garmentPieces } from '../rings.js';
import { refusal } from './tellings.js';

/** Which pieces an adjustment is for. */
export type Where = 'front' | 'back' | 'sleeve' | 'skirt front' | 'skirt back' | 'trousers';

/** The pieces that a part of the body has, by their roles and edges. @throws PatternError `adjust-needs-piece` */
export function piecesFor(pattern: Pattern, where: Where): readonly Piece[] {
  const found = garmentPieces(pattern).filter(piece => isFor(pattern, piece, where));
  if (found.length > 0) return found;
  throw refusal('adjust-needs-piece', { what: where });
}

function isFor(pattern: Pattern, piece: Piece, where: Where): boolean {
  const role = pieceRoleOf(piece);
  switch (where) {
    case 'sleeve':
      return role === 'sleeve';
    case 'trousers':
      return role === 'trouser';
    case 'front':
    case 'back':
      return isBodice(piece) && isBack(pattern, piece) === (where === 'back');
    default: {
      if (role === 'trouser') return isSeat(pattern, piece) === (where === 'skirt back');
      // A garment in one piece has its skirt below its bodice.
      const isSkirt =
        role === 'skirt' || (isBodice(piece) && levelOf(piece, ['hip', 'abdomen']) !== undefined);
      if (!isSkirt) return false;
      const back = isBodice(piece) ? isBack(pattern, piece) : namesBack(piece.name);
      return back === (where === 'skirt back');
    }
  }
}

/** The back of trousers has the longer crotch. */
function isSeat(pattern: Pattern, piece: Piece): boolean {
  const crotch = (one: Piece): number =>
    edgesOfRole(one, 'crotch').reduce((sum, edge) => sum + lengthOf(one, edge), 0);
  return crotch(piece) > 0 && !pattern.pieces.some(one => crotch(one) > crotch(piece));
}

const isBodice = (piece: Piece): boolean =>
  pieceRoleOf(piece) !== 'sleeve' &&
  edgesOfRole(piece, 'neck').length > 0 &&
  edgesOfRole(piece, 'shoulder').length > 0;

/** The edge of a piece that has a role; where it opens at the centre, the edge there. @throws PatternError `adjust-needs-edge` */
export function edgeFor(piece: Piece, role: EdgeRole): string {
  const [edge] = edgesOfRole(piece, role);
  if (edge !== undefined) return edge;
  const own = piece.outline.parts.find(
    part =>
      part.type === 'edge' &&
      ((role === 'centre' && part.kind === 'fold') || (role === 'hem' && part.kind === 'hem')),
  );
  if (own) return own.name;
  const [opening] = role === 'centre' ? edgesOfRole(piece, 'opening') : [];
  if (opening !== undefined) return opening;
  throw refusal('adjust-needs-edge', { piece: { piece: piece.name }, role }, { piece: piece.name });
}

/** The edge that a piece ends at below: its hem, else its waist. @throws PatternError `adjust-needs-edge` */
export const bottomOf = (piece: Piece): string =>
  piece.outline.parts.some(part => part.type === 'edge' && part.kind === 'hem')
    ? edgeFor(piece, 'hem')
    : (edgesOfRole(piece, 'wrist')[0] ?? edgeFor(piece, 'waist'));

/** The bust point: its mark. @throws PatternError `bust-point-unknown` */
export const bustPointOf = (piece: Piece): Point => bustMark(piece).at;

/** Its name. @throws PatternError `bust-point-unknown` */
export const bustMarkOf = (piece: Piece): string => bustMark(piece).name;

function bustMark(piece: Piece) {
  const mark = piece.marks.find(one => markRoleOf(one) === 'bust point');
  if (mark) return mark;
  throw refusal('bust-point-unknown', { piece: { piece: piece.name } }, { piece: piece.name });
}

const levelOf = (piece: Piece, roles: readonly LineRole[]) =>
  roles.flatMap(role => piece.lines.filter(one => one.kind === 'level' && lineRoleOf(one) === role))[0];

/** A point on the first of these levels that the piece has. @throws PatternError `adjust-needs-level` */
export function levelPoint(piece: Piece, roles: readonly LineRole[]): Point {
  const found = levelOf(piece, roles);
  if (found) return pathStart(found.path);
  throw refusal('adjust-needs-level', { piece: { piece: piece.name }, levels: roles }, { piece: piece.name });
}

/**
 * Where the line across the grain through a point meets an edge, in mm from the edge's start; the first edge of the
 * role that it meets. @throws PatternError `adjust-needs-edge`
 */
export function acrossAt(
  piece: Piece,
  point: Point,
  role: EdgeRole,
): { readonly edge: string; readonly along: number } {
  const { grain } = grainOrVertical(piece);
  const across = lineThrough(point, { x: -grain.y, y: grain.x }, reachOf(outlinePath(piece.outline)));
  const named = edgesOfRole(piece, role);
  const edges = named.length > 0 ? named : [edgeFor(piece, role)];
  for (const edge of edges) {
    const [meeting] = intersectPaths(across, edgePath(piece, edge));
    if (meeting) return { edge, along: meeting.alongB };
  }
  throw refusal('adjust-needs-edge', { piece: { piece: piece.name }, role }, { piece: piece.name });
}

/** Where the line along the grain through a point meets an edge, in mm from the edge's start. */
export function alongGrainAt(piece: Piece, point: Point, edge: string): number | undefined {
  const { grain } = grainOrVertical(piece);
  const way = lineThrough(point, grain, reachOf(outlinePath(piece.outline)));
  return intersectPaths(way, edgePath(piece, edge))[0]?.alongB;
}

/** The seam whose runs are all edges of a role. @throws PatternError `adjust-needs-seam` */
export function seamFor(pattern: Pattern, role: EdgeRole): Seam {
  return seamsFor(pattern, role)[0]!;
}

/** Every such seam, one at least. @throws PatternError `adjust-needs-seam` */
export function seamsFor(pattern: Pattern, role: EdgeRole): readonly Seam[] {
  const found = pattern.seams.filter(({ a, b }) =>
    [...a, ...b].every(run => {
      const piece = pattern.pieces.find(one => one.name === run.piece);
      return piece !== undefined && edgesOfRole(piece, role).includes(run.edge);
    }),
  );
  if (found.length > 0) return found;
  throw refusal('adjust-needs-seam', { role });
}

/** mm of an edge, and the unit direction it has as a whole. */
export const lengthOf = (piece: Piece, edge: string): number => pathLength(edgePath(piece, edge));
export const directionOf = (piece: Piece, edge: string): Point => {
  const path = edgePath(piece, edge);
  return unit(subtract(pathEnd(path), pathStart(path)));
};
