import { oncePer } from '../../once-per.js';
import { edgeNamed, edgeNames } from '../outline.js';
import type {
  Edge,
  EdgeRole,
  Fabric,
  LineRole,
  Mark,
  MarkRole,
  Pattern,
  Piece,
  PieceLine,
  PieceRole,
} from '../types.js';
import { edgeWords } from './edge-words.js';
import { isFrontEdge } from './front-edge.js';
import { lineWords, markWords } from './line-words.js';
import { plainWords, roleInName } from './name-words.js';
import { pieceWords } from './piece-words.js';
import { type Guessing, rolesBySeams } from './sewn-roles.js';
import { type EdgeRoles, rolesByShape } from './shape.js';

/**
 * A pattern with a role on every edge, piece, line and mark whose role is known: what was given stays; all else is
 * guessed from names (in seven languages), kinds, what is sewn to what, and shape. This is the one place that looks
 * at a name; all other code asks for the role. A guess is marked as one and made anew each time.
 */
export function withRoles(pattern: Pattern): Pattern {
  const { pieces, seams, fabrics } = pattern;
  const first = new Map(pieces.map(piece => [piece.name, firstGuess(piece, fabrics)]));
  const sewn = rolesBySeams(seams, first);
  // What a shape tells of one piece tells by the seams of the next.
  const shaped = new Map(
    pieces.map(piece => {
      const role = first.get(piece.name)!.role;
      return [piece.name, { role, edges: rolesByShape(piece, sewn.get(piece.name)!) }];
    }),
  );
  const edges = rolesBySeams(seams, shaped);
  const guessed = pieces.map(piece =>
    marked(piece, edges.get(piece.name)!, first.get(piece.name)!.role ?? roleByEdges(edges.get(piece.name)!)),
  );
  return guessed.every((piece, i) => piece === pieces[i]) ? pattern : { ...pattern, pieces: guessed };
}

/** {@link withRoles} for a piece by itself: without what seams tell. */
export function pieceWithRoles(piece: Piece): Piece {
  const first = firstGuess(piece, []);
  const edges = rolesByShape(piece, first.edges);
  return marked(piece, edges, first.role ?? roleByEdges(edges));
}

/** What an edge is, guessed from its name and kind alone. */
export const guessedEdgeRole = /* @__PURE__ */ oncePer(({ name, kind }: Edge): EdgeRole | undefined => {
  const isCentre = /^cent(re|er)\b/.test(plainWords(name)) && kind !== 'hem';
  return isCentre
    ? 'centre'
    : (roleInName(name, edgeWords) ?? (kind === 'hem' ? 'hem' : kind === 'fold' ? 'centre' : undefined));
});

/** What a line is, guessed from its name. */
export const guessedLineRole = /* @__PURE__ */ oncePer(({ kind, name }: PieceLine): LineRole | undefined =>
  kind === 'dart' ? undefined : roleInName(name, lineWords),
);

/** What a mark is, guessed from its kind and name. */
export const guessedMarkRole = /* @__PURE__ */ oncePer(
  ({ kind, name }: Mark): MarkRole | undefined => roleInName(kind, markWords) ?? roleInName(name, markWords),
);

function firstGuess(piece: Piece, fabrics: readonly Fabric[]): Guessing {
  const edges = edgeNames(piece).flatMap((name): readonly [string, EdgeRole][] => {
    const edge = edgeNamed(piece, name);
    const role = given(edge) ?? guessedRoleIn(piece, edge);
    return role === undefined ? [] : [[name, role]];
  });
  const role = given(piece) ?? bagInNames(piece) ?? roleOfCloth(piece, fabrics) ?? roleInNames(piece);
  return { role, edges: new Map(edges) };
}

/** What is called no hem and runs down to one is a front edge. */
function guessedRoleIn(piece: Piece, edge: Edge): EdgeRole | undefined {
  const role = guessedEdgeRole(edge);
  const isNamed = roleInName(edge.name, edgeWords) !== undefined;
  return role === 'hem' && !isNamed && isFrontEdge(piece, edge) ? 'opening' : role;
}

const roleInNames = ({ name, title }: Piece): PieceRole | undefined =>
  roleInName(name, pieceWords) ?? roleInName(title, pieceWords);

/** Pockets' bags are cut of lining more often than not, and are no lining for that. */
const bagInNames = ({ name, title }: Piece): PieceRole | undefined =>
  [name, title].some(words => roleInName(words, pieceWords) === 'pocket') ? 'pocket' : undefined;

function roleOfCloth({ cutting }: Piece, fabrics: readonly Fabric[]): PieceRole | undefined {
  const role = fabrics.find(fabric => fabric.name === cutting.fabric)?.role ?? cutting.fabric;
  return role === 'lining' || role === 'interfacing' ? role : undefined;
}

function roleByEdges(edges: EdgeRoles): PieceRole | undefined {
  const has = (...roles: readonly EdgeRole[]): boolean =>
    [...edges.values()].some(role => roles.includes(role));
  if (has('cap')) return 'sleeve';
  if (has('crotch', 'inseam')) return 'trouser';
  // Below a yoke a bodice has no shoulder, and a skirt no waist.
  if (has('armhole') && has('shoulder', 'neck', 'side')) return 'bodice';
  return has('waist', 'yoke') && has('hem') && has('side', 'centre', 'panel') ? 'skirt' : undefined;
}

interface Guessable<Role> {
  readonly role?: Role;
  readonly roleGuessed?: true;
}

const given = <Role>({ role, roleGuessed }: Guessable<Role>): Role | undefined =>
  roleGuessed ? undefined : role;

/** The thing itself where its role stays what it was. */
function withRole<Role, Thing extends Guessable<Role>>(thing: Thing, role: Role | undefined): Thing {
  if (given(thing) !== undefined || thing.role === role) return thing;
  const { role: _, roleGuessed: __, ...rest } = thing;
  return (role === undefined ? rest : { ...rest, role, roleGuessed: true }) as Thing;
}

function marked(piece: Piece, edges: EdgeRoles, role: PieceRole | undefined): Piece {
  const parts = piece.outline.parts.map(part =>
    part.type === 'edge' ? withRole<EdgeRole, Edge>(part, edges.get(part.name)) : part,
  );
  const lines = piece.lines.map(line => withRole<LineRole, PieceLine>(line, guessedLineRole(line)));
  const marks = piece.marks.map(mark => withRole<MarkRole, Mark>(mark, guessedMarkRole(mark)));
  const same = <T>(after: readonly T[], before: readonly T[]): boolean =>
    after.every((t, i) => t === before[i]);
  const changed: Piece = {
    ...piece,
    ...(same(parts, piece.outline.parts) ? {} : { outline: { parts } }),
    ...(same(lines, piece.lines) ? {} : { lines }),
    ...(same(marks, piece.marks) ? {} : { marks }),
  };
  const isSame =
    changed.outline === piece.outline && changed.lines === piece.lines && changed.marks === piece.marks;
  return withRole<PieceRole, Piece>(isSame ? piece : changed, role);
}
