import {
  type EdgeRef,
  edgeNamed,
  edgeNames,
  edgePath,
  type Pattern,
  type Piece,
  type PieceRole,
  pathLength,
  pieceNamed,
  pieceRoleOf,
  roleOf,
} from '@paperhinge/geometry';
import { foldEdgeOf, isLimb, neighboursOf } from '@paperhinge/geometry/pattern';
import { holdsEdge, sameEdge } from '../edge-refs.js';

/** A slit that lets a ring of the garment open: a placket, a zip, a buttoned or free front edge. Length in mm. */
export interface Slit extends EdgeRef {
  readonly lengthMm: number;
}

/**
 * The slits in the edges of a ring and those that end at it (a zip in the centre back seam, a placket in a shoulder,
 * a front that is sewn to nothing), each once: what both sides of a seam speak of, or both fronts, is one slit.
 */
export function slitsAt(pattern: Pattern, ring: readonly EdgeRef[]): readonly Slit[] {
  const counted: Slit[] = [];
  const held = heldTogether(pattern, ring);
  for (const { piece, edge } of ring.flatMap(ref => withNeighbours(pattern, ref))) {
    const lengthMm = slitLength(pattern, { piece, edge }, held);
    const ref = { piece, edge, lengthMm };
    if (lengthMm > 0 && !counted.some(c => isSameSlit(pattern, c, ref))) counted.push(ref);
  }
  return counted;
}

function withNeighbours(pattern: Pattern, { piece: name, edge }: EdgeRef): readonly EdgeRef[] {
  const piece = pieceNamed(pattern, name);
  const beside = (['start', 'end'] as const).flatMap(end => beyond(pattern, piece, edge, end));
  const own = [edge, ...beside].map(e => ({ piece: name, edge: e }));
  return [...own, ...own.flatMap(ref => fastenedBeyond(pattern, ref))];
}

/**
 * The edge beside another, and on past what lies between the neck and the front edge that opens: a lapel, or the centre
 * back of a collar in one with the front.
 */
function beyond(pattern: Pattern, piece: Piece, edge: string, end: 'start' | 'end'): readonly string[] {
  const isPassed = (name: string): boolean =>
    roleOf(edgeNamed(piece, name)) === 'opening' ||
    pattern.seams.some(({ a, b }) =>
      [...a, ...b].every(run => sameEdge(run, { piece: piece.name, edge: name })),
    );
  const found: string[] = [];
  for (let next = neighboursOf(piece, edge)[end]; ; next = neighboursOf(piece, next)[end]) {
    if (!edgeNames(piece).includes(next) || found.includes(next)) return found;
    found.push(next);
    if (!isPassed(next)) return found;
  }
}

const bands = ['band', 'strip', 'placket', 'facing'] as const;
const bandRoles: ReadonlySet<PieceRole | undefined> = new Set<PieceRole>(bands);

/** The edges that close over one another on bands sewn along an edge: the buttons of a shirt lie on its band. */
function fastenedBeyond(pattern: Pattern, ref: EdgeRef): readonly EdgeRef[] {
  const bands = pattern.seams
    .filter(({ a, b }) => [a, b].some(side => side.length === 1 && sameEdge(side[0]!, ref)))
    .flatMap(({ a, b }) => (sameEdge(a[0]!, ref) ? b : a))
    .filter(run => run.piece !== ref.piece && bandRoles.has(pieceRoleOf(pieceNamed(pattern, run.piece))));
  return (pattern.fastenings ?? [])
    .filter(({ kind, along }) => closing.has(kind) && bands.some(band => band.piece === along.piece))
    .map(({ along: { piece, edge } }) => ({ piece, edge }));
}

/**
 * Whether some piece of a ring holds left and right together. Where front and back alike are halves that are free at
 * the centre, they would fall apart: their centre seams are not listed, and no slit is taken from them.
 */
const heldTogether = (pattern: Pattern, ring: readonly EdgeRef[]): boolean =>
  ring
    .map(({ piece }) => pieceNamed(pattern, piece))
    .some(
      piece => !isLimb(piece) && !edgeNames(piece).some(edge => isFree(pattern, { piece: piece.name, edge })),
    );

/** mm of an edge that open: as it says itself, by a fastening along it, or wholly where it is a free front or back. */
function slitLength(pattern: Pattern, ref: EdgeRef, held: boolean): number {
  const piece = pieceNamed(pattern, ref.piece);
  const whole = () => pathLength(edgePath(piece, ref.edge));
  const fastened = (pattern.fastenings ?? [])
    .filter(f => closing.has(f.kind) && sameEdge(f.along, ref))
    .map(f => Math.min(f.length ?? whole(), whole()));
  const said = Math.max(edgeNamed(piece, ref.edge).opening ?? 0, ...fastened);
  return said === 0 && held && isFree(pattern, ref) ? whole() : said;
}

/** Fastenings that close an opening; an elastic or a cord draws an edge in. */
const closing: ReadonlySet<string> = new Set(['zip', 'buttons', 'hooks', 'snaps']);

/** A centre edge of a half, or one that opens by its role, that is neither folded nor sewn shut. */
function isFree(pattern: Pattern, ref: EdgeRef): boolean {
  const piece = pieceNamed(pattern, ref.piece);
  const edge = edgeNamed(piece, ref.edge);
  const opens = roleOf(edge) === 'centre' || roleOf(edge) === 'opening';
  return opens && foldEdgeOf(piece) === undefined && !isShut(pattern, ref);
}

/** Whether something of the garment is sewn to an edge: what faces, lines or edges it leaves it open. */
const isShut = (pattern: Pattern, ref: EdgeRef): boolean =>
  pattern.seams.some(({ a, b }) =>
    [
      [a, b],
      [b, a],
    ].some(
      ([own, other]) =>
        holdsEdge(own!, ref) &&
        other!.some(({ piece }) => !edging.has(pieceRoleOf(pieceNamed(pattern, piece)))),
    ),
  );

const edging: ReadonlySet<PieceRole | undefined> = new Set<PieceRole>([...bands, 'binding', 'lining']);

function isSameSlit(pattern: Pattern, one: Slit, other: Slit): boolean {
  if (sameEdge(one, other)) return true;
  const sewnTogether = pattern.seams.some(
    ({ a, b }) => (holdsEdge(a, one) && holdsEdge(b, other)) || (holdsEdge(b, one) && holdsEdge(a, other)),
  );
  // A left and a right front, each drawn by itself, leave one opening between them.
  return sewnTogether || (isFree(pattern, one) && isFree(pattern, other) && meetOnBody(pattern, one, other));
}

/** Whether two free centre edges are of pieces cut once each: a left and a right half. */
const meetOnBody = (pattern: Pattern, one: EdgeRef, other: EdgeRef): boolean =>
  [one, other].every(ref => pieceNamed(pattern, ref.piece).cutting.count === 1);
