import { pathLength } from '../../path/length.js';
import { pathEnd, pathStart } from '../../path/path.js';
import { edgeNamed, edgePath, foldEdgeOf, pieceNamed } from '../../pattern/outline.js';
import type { EdgeRole, EdgeRun, Pattern, Piece, PieceRole } from '../../pattern/types.js';
import { distance, lerp, type Point } from '../../vector.js';
import { layersOf } from './layers.js';
import type { PieceProposal } from './propose-pieces.js';

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
  /** Roles of the edges that it meets, clockwise. */
  readonly before: EdgeRole | undefined;
  readonly after: EdgeRole | undefined;
  /** How sure it is that the piece is what it seems. */
  readonly confidence: number;
  /** Of the garment: 0 outside, 1 its lining. */
  readonly layer: number;
  readonly hasCentre: boolean;
  /** The piece is the half of one whose centre lies on a fold. */
  readonly onFold: boolean;
}

/** All lines of a pattern by the proposals for its pieces. */
export function sewingLines(pattern: Pattern, proposals: readonly PieceProposal[]): readonly SewingLine[] {
  const layers = layersOf(pattern.pieces, proposals);
  return proposals.flatMap(proposal =>
    linesOf(pieceNamed(pattern, proposal.piece), proposal, layers.get(proposal.piece)!),
  );
}

function linesOf(
  piece: Piece,
  { role: pieceRole, edges, confidence }: PieceProposal,
  layer: number,
): readonly SewingLine[] {
  const names = [...edges.keys()];
  const begins = names.findIndex(
    (name, i) => edges.get(name) !== edges.get(names[(i + names.length - 1) % names.length]!),
  );
  const ring = names.map((_, i) => names[(Math.max(0, begins) + i) % names.length]!);
  const groups: string[][] = [];
  for (const name of ring) {
    const last = groups.at(-1)?.at(-1);
    const role = edges.get(name);
    if (last !== undefined && role !== undefined && edges.get(last) === role) groups.at(-1)!.push(name);
    else groups.push([name]);
  }
  const onFold = foldEdgeOf(piece) !== undefined;
  return groups.map((group, i): SewingLine => {
    const neighbour = (step: number): EdgeRole | undefined =>
      edges.get(groups[(i + step + groups.length) % groups.length]![0]!);
    const paths = group.map(name => edgePath(piece, name));
    const lengthMm = paths.reduce((sum, path) => sum + pathLength(path), 0);
    return {
      piece,
      pieceRole,
      role: edges.get(group[0]!),
      edges: group,
      lengthMm,
      middle: lerp(pathStart(paths[0]!), pathEnd(paths.at(-1)!), 1 / 2),
      straightness: distance(pathStart(paths[0]!), pathEnd(paths.at(-1)!)) / lengthMm,
      before: neighbour(-1),
      after: neighbour(1),
      confidence,
      layer,
      hasCentre: [...edges.values()].includes('centre'),
      onFold,
    };
  });
}

/** Whether an edge of the line is laid on a fold or left raw: it is sewn to nothing. */
export const isSewable = ({ piece, edges }: SewingLine): boolean =>
  edges.every(name => ['seam', 'hem'].includes(edgeNamed(piece, name).kind));

/** The runs of a line, travelled clockwise or against it. */
export function runsOf({ piece, edges }: SewingLine, reversed: boolean): readonly EdgeRun[] {
  const runs = edges.map((edge): EdgeRun => ({ piece: piece.name, edge, reversed }));
  return reversed ? runs.reverse() : runs;
}
