import { oncePer } from '../once-per.js';
import { joined, type Path } from '../path/path.js';
import { refusal } from './tellings.js';
import type { Dart, Edge, EdgeRun, Outline, OutlinePart, Pattern, Piece, Pleat } from './types.js';

/** The parts of an outline sorted, as they are asked for again and again. */
const sorted = /* @__PURE__ */ oncePer(({ parts }: Outline) => {
  const edges = parts.filter((part): part is Edge => part.type === 'edge');
  const darts = parts.filter((part): part is Dart => part.type === 'dart');
  const places = new Map<string, readonly number[]>();
  for (const [i, { type, name }] of parts.entries())
    if (type === 'edge') places.set(name, [...(places.get(name) ?? []), i]);
  const byName = new Map(
    [...places].map(([name, indices]) => {
      const own = inOrderOfTravel(parts, indices);
      return [name, { parts: own, path: own.length === 1 ? own[0]!.path : joined(...own.map(e => e.path)) }];
    }),
  );
  return { edges, darts, byName, names: [...byName.keys()] };
});

/** Every edge part in clockwise order; an edge interrupted by a dart is listed once for each part. */
export const edgeParts = (piece: Piece): readonly Edge[] => sorted(piece.outline).edges;

/** The names of a piece's edges, clockwise, each once. */
export const edgeNames = (piece: Piece): readonly string[] => sorted(piece.outline).names;

/** The darts that open into the outline, clockwise. */
export const dartsOf = (piece: Piece): readonly Dart[] => sorted(piece.outline).darts;

/** The pleats that open into the outline, clockwise. */
export const pleatsOf = (piece: Piece): readonly Pleat[] =>
  piece.outline.parts.filter(part => part.type === 'pleat');

/** What a part of an outline is drawn of, in its direction: an edge's path, a dart's legs, a pleat's mouth. */
export function pathsOfPart(part: OutlinePart): readonly Path[] {
  switch (part.type) {
    case 'edge':
      return [part.path];
    case 'dart':
      return part.legs;
    case 'pleat':
      return [part.mouth];
    default:
      throw refusal('word-not-understood', { attribute: 'type', words: ['edge', 'dart', 'pleat'] });
  }
}

/**
 * The parts of one edge in the order of travel: one, or more where a dart or an inset interrupts it. Where the outline's list
 * starts within an edge, its parts are given from the edge's true start.
 * @throws PatternError `unknown-edge`: the remedy lists the edges there are
 */
export const partsOfEdge = (piece: Piece, name: string): readonly Edge[] => sortedEdge(piece, name).parts;

function sortedEdge(piece: Piece, name: string) {
  const edge = sorted(piece.outline).byName.get(name);
  if (edge) return edge;
  throw refusal(
    'unknown-edge',
    { piece: piece.name, name, names: edgeNames(piece) },
    { piece: piece.name, edge: name },
  );
}

function inOrderOfTravel(parts: readonly OutlinePart[], indices: readonly number[]): readonly Edge[] {
  // More than an interruption between two parts of one edge is where the list wraps round.
  const wrap = indices.findIndex((at, i) => i > 0 && !interrupts(parts.slice(indices[i - 1]! + 1, at)));
  const ordered = wrap > 0 ? [...indices.slice(wrap), ...indices.slice(0, wrap)] : indices;
  return ordered.map(i => parts[i] as Edge);
}

/**
 * Whether what stands between two parts of one edge leaves it one edge: darts and pleats, and a single other edge (an
 * inset, a keyhole), which darts may part in its turn.
 */
export const interrupts = (between: readonly OutlinePart[]): boolean => {
  const edges = between.flatMap(part => (part.type === 'edge' ? [part.name] : []));
  return between.length > 0 && edges.every(name => name === edges[0]);
};

/** The attributes of an edge (those of its first part). @throws PatternError `unknown-edge` */
export const edgeNamed = (piece: Piece, name: string): Edge => partsOfEdge(piece, name)[0]!;

/** The whole stitching line of an edge, clockwise; it leaps over the mouth of a dart that interrupts it. */
export const edgePath = (piece: Piece, name: string): Path => sortedEdge(piece, name).path;

/** What the outline does in clockwise order, legs of darts included: one closed chain of segments. */
export const outlinePath = /* @__PURE__ */ oncePer(
  (outline: Outline): Path => joined(...outline.parts.flatMap(pathsOfPart)),
);

/** @throws PatternError `unknown-piece`: the remedy lists the pieces there are */
export function pieceNamed(pattern: Pattern, name: string): Piece {
  const piece = pattern.pieces.find(p => p.name === name);
  if (piece) return piece;
  throw refusal('unknown-piece', { name, names: pattern.pieces.map(p => p.name) }, { piece: name });
}

/** The same pattern with one piece replaced by another of the same name. */
export const withPiece = (pattern: Pattern, piece: Piece): Pattern => ({
  ...pattern,
  pieces: pattern.pieces.map(p => (p.name === piece.name ? piece : p)),
});

/** The edge a piece is cut on the fold by, if there is one. */
export const foldEdgeOf = ({ outline }: Pick<Piece, 'outline'>): Edge | undefined =>
  sorted(outline).edges.find(e => e.kind === 'fold');

/** The names before and after an edge in clockwise order: edges or darts that share its start and its end corner. */
export function neighboursOf(piece: Piece, name: string): { readonly start: string; readonly end: string } {
  const ring = piece.outline.parts;
  const own = partsOfEdge(piece, name);
  const first = ring.indexOf(own[0]!),
    last = ring.indexOf(own.at(-1)!);
  return {
    start: ring[(first + ring.length - 1) % ring.length]!.name,
    end: ring[(last + 1) % ring.length]!.name,
  };
}

/** A run in words: `piece.edge`. */
export const runLabel = (run: EdgeRun): string => `${run.piece}.${run.edge}`;
