import {
  type EdgeRef,
  type EdgeRole,
  edgeNamed,
  edgeNames,
  edgePath,
  type FasteningKind,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  pieceRoleOf,
  roleOf,
  type Thing,
} from '@paperhinge/geometry';
import { neighboursOf } from '@paperhinge/geometry/pattern';
import { holdsEdge, isSewn, sameEdge } from '../edge-refs.js';
import { stretchOf } from './cloth.js';
import { garmentPieces } from './rings.js';

/** What straps are to a neck. */
export interface Straps {
  /** mm that they add to it between front and back, stretched as far as their cloth goes. */
  readonly mm: number;
  /** One that hangs from the neck's end by one end alone, to be tied or fastened: the neck is open there. */
  readonly open?: Thing;
}

/**
 * The straps that go on from the ends of a neck: pieces without a neck of their own. Sewn on with two of their edges, or
 * with one where the other is sewn to its mirror image or lies on a fold, they close the ring that the head goes through,
 * as a halter's does behind the neck; sewn on with one edge alone they do not.
 */
export function strapsOf(pattern: Pattern, necks: readonly EdgeRef[]): Straps {
  const beside = necks.flatMap(({ piece, edge }) => {
    const { start, end } = neighboursOf(pieceNamed(pattern, piece), edge);
    return [start, end].map(name => ({ piece, edge: name }));
  });
  const found = [...garmentPieces(pattern), ...pattern.pieces.filter(isLooseStrip)]
    .filter(piece => !necks.some(neck => neck.piece === piece.name))
    .map(piece => ({ piece, ...strapOf(pattern, piece, beside, necks) }));
  const hanging = found.find(one => one.isOpen)?.piece;
  const open = hanging ? { piece: hanging.name } : beside.find(ref => isFastenedEnd(pattern, ref, necks));
  return { mm: found.reduce((sum, one) => sum + one.mm, 0), ...(open ? { open } : {}) };
}

/** The end of a strap in one with its piece, that hooks, buttons or snaps hold. */
const isFastenedEnd = (pattern: Pattern, ref: EdgeRef, necks: readonly EdgeRef[]): boolean => {
  const piece = pieceNamed(pattern, ref.piece);
  return (
    (pattern.fastenings ?? []).some(({ kind, along }) => holding.has(kind) && sameEdge(along, ref)) &&
    edgeNames(piece).includes(ref.edge) &&
    roleOf(edgeNamed(piece, ref.edge)) !== 'shoulder' &&
    !isSewn(pattern, ref) &&
    carries(pattern, ref, necks)
  );
};
const holding: ReadonlySet<FasteningKind> = new Set<FasteningKind>(['buttons', 'hooks', 'snaps']);

const isLooseStrip = (piece: Piece): boolean => pieceRoleOf(piece) === 'strip' && piece.madeFor === undefined;

/** An end of a strap is at most a quarter as long as the strap (common practice, no source). */
const slender = 4;

function strapOf(
  pattern: Pattern,
  piece: Piece,
  beside: readonly EdgeRef[],
  necks: readonly EdgeRef[],
): { readonly mm: number; readonly isOpen: boolean } {
  const ring = edgeNames(piece);
  const lengthOf = (names: readonly string[]): number =>
    names.reduce((sum, name) => sum + pathLength(edgePath(piece, name)), 0);
  const longest = Math.max(...ring.map(edge => lengthOf([edge])));
  const isEnd = (edge: string): boolean => lengthOf([edge]) * slender <= longest;
  const partners = (edge: string) => partnersOf(pattern, { piece: piece.name, edge });
  const on = ring.filter(edge => partners(edge).some(run => holdsEdge(beside, run)));
  const isFold = (edge: string): boolean => edgeNamed(piece, edge).kind === 'fold' && isEnd(edge);
  const shut = ring.filter(
    edge => isFold(edge) || partners(edge).some(run => run.piece === piece.name && isEnd(edge)),
  );
  const [one, other] = on.length === 2 ? on : [...on, ...shut];
  if (on.length === 0 || on.length > 2) return { mm: 0, isOpen: false };
  if (other === undefined || on.length + shut.length > 2) {
    const free = ring.filter(edge => edge !== one && isSewn(pattern, { piece: piece.name, edge }));
    const carriers = partners(one!).filter(run => holdsEdge(beside, run));
    const hangs = isEnd(one!) && free.length === 0 && carriers.every(run => carries(pattern, run, necks));
    return { mm: 0, isOpen: on.length === 1 && hangs };
  }
  const [first, second] = [one!, other].map(edge => ring.indexOf(edge)).sort((p, q) => p - q) as [
    number,
    number,
  ];
  const between = ring.slice(first + 1, second);
  const around = [...ring.slice(second + 1), ...ring.slice(0, first)];
  // Opened out or folded along its length, a strap is as long; its shorter edge holds.
  const mm = Math.min(lengthOf(between), lengthOf(around)) * (isFold(other) ? 2 : 1);
  const { count, layers = 1, fabric } = piece.cutting;
  return { mm: ((mm * count) / layers) * (1 + stretchOf(pattern, fabric) / 100), isOpen: false };
}

/** The runs that an edge is sewn to. */
const partnersOf = ({ seams }: Pattern, ref: EdgeRef): readonly EdgeRef[] =>
  seams.flatMap(({ a, b }) =>
    [
      [a, b],
      [b, a],
    ].flatMap(([own, other]) => (own!.some(run => sameEdge(run, ref)) ? other! : [])),
  );

/** Whether an edge at the end of a neck is where a strap goes over the shoulder, and not the edge of a slit, or of a wrap. */
function carries(pattern: Pattern, { piece: name, edge }: EdgeRef, necks: readonly EdgeRef[]): boolean {
  const piece = pieceNamed(pattern, name);
  const { start, end } = neighboursOf(piece, edge);
  const beyond = [start, end].filter(next => !holdsEdge(necks, { piece: name, edge: next }));
  return (
    !elsewhere.has(roleOf(edgeNamed(piece, edge))) &&
    beyond.every(next => edgeNames(piece).includes(next) && !elsewhere.has(roleOf(edgeNamed(piece, next))))
  );
}

const elsewhere: ReadonlySet<EdgeRole | undefined> = new Set<EdgeRole>(['centre', 'opening', 'waist', 'hem']);
