import type { EdgeRole, Pattern, PieceRole } from '../../pattern/types.js';
import { withFacings } from './facings.js';
import type { BodySide } from './front-and-back.js';
import { overlaysOf } from './overlays.js';
import { type PieceProposal, proposePieces } from './propose-pieces.js';
import { proposeSeams, type SeamProposal } from './propose-seams.js';

/** What a piece and its edges might be called, and how sure that is. */
export interface NameProposal {
  /** As it is called now. */
  readonly piece: string;
  readonly name: string;
  readonly role?: PieceRole;
  /** From 0 to 1. */
  readonly confidence: number;
  /** Which side of the body it covers, and by what that was seen. */
  readonly side?: BodySide;
  /** Clockwise from the piece's first edge. */
  readonly edges: readonly EdgeProposal[];
}

/** What an edge may be called, and what it is. */
export interface EdgeProposal {
  /** As it is called now. */
  readonly edge: string;
  readonly name: string;
  readonly role?: EdgeRole;
}

/** Names and seams that the lines of a pattern suggest. Seams are of the names that the pieces and edges have now. */
export interface NamingProposal {
  readonly pieces: readonly NameProposal[];
  readonly seams: readonly SeamProposal[];
}

/** Below this a piece keeps its name: what it is is not known. */
const leastSure = 0.45;

/**
 * What the pieces of a pattern are, what their edges are and how they are sewn, from geometry alone: no name is looked
 * at. Each with how sure it is, from 0 to 1.
 */
export function proposeNames(pattern: Pattern): NamingProposal {
  const overlays = overlaysOf(pattern.pieces);
  const proposals = withFacings(pattern, proposePieces(pattern), overlays);
  const { seams, sides } = proposeSeams(pattern, proposals, overlays);
  const taken = new Set<string>();
  const hasBodice = proposals.some(p => p.role === 'bodice' && p.confidence >= leastSure);
  const pieces = proposals.map((proposal): NameProposal => {
    const { piece, role, confidence } = proposal;
    const known = role !== undefined && confidence >= leastSure;
    const side = sides.get(piece);
    const lining = overlays.some(({ over, isWhole }) => isWhole && over.name === piece);
    const name = known ? pieceNameOf(role, side?.front, { hasBodice, lining }) : piece;
    return {
      piece,
      name: unlike(name, taken),
      confidence,
      ...(known ? { role: lining ? 'lining' : role } : {}),
      ...(side ? { side } : {}),
      edges: known
        ? edgesOf(withWaist(proposal, seams))
        : [...proposal.edges.keys()].map(edge => ({ edge, name: edge })),
    };
  });
  return { pieces, seams };
}

interface Around {
  readonly hasBodice: boolean;
  readonly lining: boolean;
}

function pieceNameOf(role: PieceRole, front: boolean | undefined, { hasBodice, lining }: Around): string {
  const side = front === undefined ? undefined : front ? 'front' : 'back';
  const own =
    role === 'yoke' || role === 'facing'
      ? [side, role]
      : role === 'bodice' || role === 'trouser'
        ? [side ?? role]
        : role === 'skirt'
          ? hasBodice || side === undefined
            ? ['skirt', side]
            : [side]
          : [role];
  return [...own, ...(lining ? ['lining'] : [])].filter(word => word !== undefined).join(' ');
}

/** A bodice ends in a waist, not a hem, where a skirt is sewn to it. */
function withWaist(proposal: PieceProposal, seams: readonly SeamProposal[]): PieceProposal {
  const { piece, edges } = proposal;
  const isSewn = (edge: string): boolean =>
    seams.some(({ seam }) =>
      [...seam.a, ...seam.b].some(run => seam.name === 'waist' && run.piece === piece && run.edge === edge),
    );
  return {
    ...proposal,
    edges: new Map([...edges].map(([edge, role]) => [edge, role === 'hem' && isSewn(edge) ? 'waist' : role])),
  };
}

/** Each by its role; several of one role are counted, and one that is not known keeps its place in the round. */
function edgesOf({ edges, fit }: PieceProposal): readonly EdgeProposal[] {
  const taken = new Set<string>();
  return [...edges].map(([edge, role], i) => ({
    edge,
    name: unlike(role ?? fit?.called.get(edge) ?? `edge ${i + 1}`, taken),
    ...(role ? { role } : {}),
  }));
}

function unlike(name: string, taken: Set<string>): string {
  let own = name;
  for (let i = 2; taken.has(own); i++) own = `${name} ${i}`;
  taken.add(own);
  return own;
}
