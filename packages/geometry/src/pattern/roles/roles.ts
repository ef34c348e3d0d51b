import type { Finding } from '../../telling.js';
import { edgeNamed, edgeNames, edgeParts } from '../outline.js';
import { finding } from '../tellings.js';
import type { Edge, EdgeRole, LineRole, Mark, MarkRole, Piece, PieceLine, PieceRole } from '../types.js';
import { namesCentre } from './centre-name.js';
import { guessedEdgeRole, guessedLineRole, guessedMarkRole, pieceWithRoles } from './guess-roles.js';

/** What an edge is: the role it has, else what its name and kind tell. */
export const roleOf = (edge: Edge): EdgeRole | undefined => edge.role ?? guessedEdgeRole(edge);

/** What a piece is: the role it has, else what its names, cloth and edges tell. */
export const pieceRoleOf = (piece: Piece): PieceRole | undefined => piece.role ?? pieceWithRoles(piece).role;

/** Where on the body a line lies: the role it has, else what its name tells. */
export const lineRoleOf = (line: PieceLine): LineRole | undefined => line.role ?? guessedLineRole(line);

/** What a mark is for: the role it has, else what its kind and name tell. */
export const markRoleOf = (mark: Mark): MarkRole | undefined => mark.role ?? guessedMarkRole(mark);

/** The names of a piece's edges of one role, clockwise. */
export const edgesOfRole = (piece: Piece, ...roles: readonly EdgeRole[]): readonly string[] =>
  edgeNames(piece).filter(name => {
    const role = roleOf(edgeNamed(piece, name));
    return role !== undefined && roles.includes(role);
  });

/** Whether an edge lies on the garment's centre: a fold, or a centre seam or opening. */
export const isCentreEdge = ({ kind, role, name }: Edge): boolean =>
  kind === 'fold' || (role === undefined ? kind !== 'hem' && namesCentre(name) : role === 'centre');

/** The first edge on the garment's centre, folds first; `undefined` where there is none. */
export const centreEdgeOf = (piece: Piece): Edge | undefined =>
  edgeParts(piece).find(edge => edge.kind === 'fold') ?? edgeParts(piece).find(isCentreEdge);

/** Whether a line lies on the garment's centre. */
export const isCentreLine = ({ kind, role, name }: PieceLine): boolean =>
  role === undefined ? kind !== 'dart' && namesCentre(name) : role === 'centre';

/** What a check that hangs on the roles of edges has to say of those that were guessed; nothing where all were given. */
export const guessFindings = (piece: Piece, edges: readonly string[]): readonly Finding[] =>
  edges.flatMap(name => {
    const edge = edgeNamed(piece, name);
    const role = roleOf(edge);
    if (role === undefined || (edge.role !== undefined && !edge.roleGuessed)) return [];
    const thing = { piece: piece.name, edge: name };
    return [finding('note', 'role-guessed', thing, { edge: thing, role })];
  });
