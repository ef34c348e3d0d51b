import { pathLength, pointAlong } from '../../path/length.js';
import { type Path, pathEnd, pathStart } from '../../path/path.js';
import { edgeNamed, edgeNames, edgePath, foldEdgeOf, pieceNamed } from '../../pattern/outline.js';
import type { EdgeRole, EdgeRun, Pattern, Piece, PieceRole } from '../../pattern/types.js';
import { cornerTurn } from '../../tolerance.js';
import { distance, dot, leftOf, lerp, type Point, subtract, unit } from '../../vector.js';
import { cornerBetween, isRectangle } from './edge-ends.js';
import type { Overlay } from './overlays.js';
import type { PieceProposal } from './propose-pieces.js';
import type { MarkedEdge } from './seam-marks.js';

/** An edge, or what was taken for one, as it may be sewn: the edges in it go clockwise. */
export interface SewingLine {
  readonly piece: Piece;
  readonly pieceRole: PieceRole | undefined;
  readonly role: EdgeRole | undefined;
  readonly edges: readonly string[];
  readonly lengthMm: number;
  /** Of the straight way from its beginning to its end, in its length. */
  readonly straightness: number;
  readonly middle: Point;
  /** How far from its chord it lies at a quarter, half and three quarters of its way, as a share of the chord. */
  readonly course: readonly number[];
  /** rad within the piece at its two ends, clockwise; undefined where it ends at a dart. */
  readonly corners: readonly [number | undefined, number | undefined];
  /** Of each of its edges. */
  readonly marks: readonly MarkedEdge[];
  /** Roles of the edges that it meets, clockwise. */
  readonly before: EdgeRole | undefined;
  readonly after: EdgeRole | undefined;
  /** How sure it is that the piece is what it seems. */
  readonly confidence: number;
  /** Of the garment: 0 outside, 1 what lies under it, a lining or a facing. */
  readonly layer: number;
  readonly hasCentre: boolean;
  /** The piece is a rectangle. */
  readonly isOfRectangle: boolean;
  /** mm: of the piece's edges. */
  readonly longestMm: number;
  /** The piece is the half of one whose centre lies on a fold. */
  readonly onFold: boolean;
  /** It runs up to that fold. */
  readonly meetsFold: boolean;
  /** Whether it begins, and ends, at the middle of the body: at a fold, a centre or a crotch. */
  readonly atMiddle: readonly [boolean, boolean];
}

/** All lines of a pattern by the proposals for its pieces, in the order of their outlines. */
export function sewingLines(
  pattern: Pattern,
  proposals: readonly PieceProposal[],
  overlays: readonly Overlay[],
): readonly SewingLine[] {
  return proposals.flatMap(proposal => {
    const piece = pieceNamed(pattern, proposal.piece);
    return linesOf(piece, proposal, overlays.some(({ over }) => over === piece) ? 1 : 0);
  });
}

/** What a piece is less sure to be takes no edges of it together: a robe's armhole and side lie on one straight line. */
const likelyKnown = 0.45;

/** The edges of a piece, those taken together that seem to be one edge with a corner or a dart in it. */
function grouped(piece: Piece, { edges, confidence }: PieceProposal): readonly (readonly string[])[] {
  const names = [...edges.keys()];
  const runsOn = (name: string, next: string): boolean => {
    const role = edges.get(name);
    const corner = cornerBetween(piece, name, next);
    return (
      confidence >= likelyKnown &&
      role !== undefined &&
      role === edges.get(next) &&
      (corner === undefined || Math.abs(corner - Math.PI) <= cornerTurn)
    );
  };
  const before = (i: number): string => names[(i + names.length - 1) % names.length]!;
  const begins = Math.max(
    0,
    names.findIndex((name, i) => !runsOn(before(i), name)),
  );
  const ring = names.map((_, i) => names[(begins + i) % names.length]!);
  const groups: string[][] = [];
  for (const name of ring) {
    const last = groups.at(-1)?.at(-1);
    if (last !== undefined && runsOn(last, name)) groups.at(-1)!.push(name);
    else groups.push([name]);
  }
  return groups;
}

function linesOf(piece: Piece, proposal: PieceProposal, layer: number): readonly SewingLine[] {
  const { role: pieceRole, edges, confidence } = proposal;
  const groups = grouped(piece, proposal);
  const onFold = foldEdgeOf(piece) !== undefined;
  const isOfRectangle = isRectangle(piece);
  const longestMm = Math.max(...edgeNames(piece).map(name => pathLength(edgePath(piece, name))));
  const isFold = (name: string): boolean => edgeNamed(piece, name).kind === 'fold';
  const isMiddle = ([name]: readonly string[]): boolean =>
    isFold(name!) || (confidence >= surelyKnown && middles.has(edges.get(name!)!));
  return groups.map((group, i): SewingLine => {
    const beside = (step: number) => groups[(i + step + groups.length) % groups.length]!;
    const paths = group.map(name => edgePath(piece, name));
    const lengths = paths.map(pathLength);
    const lengthMm = lengths.reduce((sum, mm) => sum + mm, 0);
    const [from, to] = [pathStart(paths[0]!), pathEnd(paths.at(-1)!)];
    const middle = lerp(from, to, 1 / 2);
    return {
      piece,
      pieceRole,
      role: edges.get(group[0]!),
      edges: group,
      lengthMm,
      middle,
      straightness: distance(from, to) / lengthMm,
      course: courseOf(paths, lengthMm),
      corners: [
        cornerBetween(piece, beside(-1).at(-1)!, group[0]!),
        cornerBetween(piece, group.at(-1)!, beside(1)[0]!),
      ],
      marks: group.map((name, k) => ({
        name,
        lengthMm: lengths[k]!,
        notches: piece.notches.filter(({ edge }) => edge === name),
      })),
      before: edges.get(beside(-1)[0]!),
      after: edges.get(beside(1)[0]!),
      confidence,
      layer,
      isOfRectangle,
      longestMm,
      hasCentre: [...edges.values()].includes('centre'),
      onFold,
      meetsFold: [...beside(-1), ...beside(1)].some(isFold),
      atMiddle: [isMiddle(beside(-1)), isMiddle(beside(1))],
    };
  });
}

/** A piece surer than this is what it seems. */
const surelyKnown = 0.85;
const middles: ReadonlySet<EdgeRole> = new Set(['centre', 'crotch']);

/** Unsigned: what bulges on one piece is hollow on the other, or bulges as well. */
function courseOf(paths: readonly Path[], lengthMm: number): readonly number[] {
  const [from, to] = [pathStart(paths[0]!), pathEnd(paths.at(-1)!)];
  const chord = distance(from, to);
  if (chord === 0) return [0, 0, 0];
  const across = leftOf(unit(subtract(to, from)));
  return [0.25, 0.5, 0.75].map(
    share => Math.abs(dot(subtract(pointOn(paths, share * lengthMm), from), across)) / chord,
  );
}

/** The place at a length along paths that follow one another. */
function pointOn(paths: readonly Path[], along: number): Point {
  const [first, ...more] = paths;
  const own = pathLength(first!);
  return along <= own || more.length === 0
    ? pointAlong(first!, Math.min(along, own))
    : pointOn(more, along - own);
}

/** Whether an edge of the line is laid on a fold or left raw: it is sewn to nothing. */
export const isSewable = ({ piece, edges }: SewingLine): boolean =>
  edges.every(name => ['seam', 'hem'].includes(edgeNamed(piece, name).kind));

/** The runs of a line, travelled clockwise or against it. */
export function runsOf({ piece, edges }: SewingLine, reversed: boolean): readonly EdgeRun[] {
  const runs = edges.map((edge): EdgeRun => ({ piece: piece.name, edge, reversed }));
  return reversed ? runs.reverse() : runs;
}

/** Of the two sides of a straight band either may be sewn: the one drawn lower is taken. */
export function isUpperTwin({ piece, pieceRole, edges, lengthMm, middle }: SewingLine): boolean {
  if (pieceRole !== 'band' && pieceRole !== 'collar') return false;
  return edgeNames(piece).some(name => {
    const path = edgePath(piece, name);
    const twin = lerp(pathStart(path), pathEnd(path), 1 / 2);
    return !edges.includes(name) && Math.abs(pathLength(path) - lengthMm) <= alikeTwins && twin.y > middle.y;
  });
}
/** mm */
const alikeTwins = 0.5;
