import type { Pattern, Seam } from '../../pattern/types.js';
import { type BodySide, bodySides } from './front-and-back.js';
import { bands, caps, collars, frontToBack, linings } from './group-seams.js';
import { own, pairs } from './line-seams.js';
import { panelsInRound } from './panels-in-round.js';
import type { PieceProposal } from './propose-pieces.js';
import { type Candidate, outside } from './seam-candidates.js';
import { isSewable, type SewingLine, sewingLines } from './sewing-lines.js';

/** Why a seam is proposed: what its sides are, and how their lengths compare. */
export interface SeamProposal {
  readonly seam: Seam;
  /** From 0 to 1. */
  readonly confidence: number;
  readonly aMm: number;
  readonly bMm: number;
}

/**
 * Seams that the lines of a pattern suggest: all pairs and groups of lines whose parts in a garment may be sewn to one
 * another, weighed by their lengths against chance and against one another, the likeliest first and each line once.
 */
export function proposeSeams(pattern: Pattern, proposals: readonly PieceProposal[]): SeamsProposed {
  const lines = sewingLines(pattern, proposals).filter(isSewable);
  const sewn = pairs(lines);
  // Front and back are told apart first: what runs over both begins in front.
  const joins = chosenOf(sewn).filter(({ seam }) => aroundBody.includes(seam.name));
  const sides = bodySides(
    pattern,
    proposals,
    joins.map(({ seam }) => [seam.a[0]!.piece, seam.b[0]!.piece]),
  );
  const shell = lines.filter(outside);
  const round = (of: readonly SewingLine[]) => frontToBack(of, sides);
  const seams = chosenOf([
    ...sewn,
    ...own(lines),
    ...panelsInRound(lines),
    ...caps(shell, round),
    ...bands(shell, round),
    ...collars(lines),
    ...linings(lines, round),
  ]);
  return { seams, sides };
}

/** What is proposed of the sewing. */
export interface SeamsProposed {
  readonly seams: readonly SeamProposal[];
  /** By piece; only of pieces that are seen to lie beside another. */
  readonly sides: ReadonlyMap<string, BodySide>;
}

const aroundBody: readonly string[] = ['side', 'shoulder', 'outseam', 'inseam'];

function chosenOf(candidates: readonly Candidate[]): readonly SeamProposal[] {
  const chosen: SeamProposal[] = [];
  let open = candidates;
  let before = 1;
  for (let best = likeliest(open); best; best = likeliest(open)) {
    const { candidate, confidence } = best;
    const own = new Set([...candidate.a, ...candidate.b]);
    open = open.filter(({ a, b }) => ![...a, ...b].some(line => own.has(line)));
    // What is likeliest only once others are settled is no surer than they are.
    before = Math.min(confidence, before);
    chosen.push({ ...proposal(candidate), confidence: Math.min(before, candidate.most ?? 1) });
  }
  return chosen;
}

/** The candidate with the best odds among all that its lines are in, nothing among them. */
function likeliest(candidates: readonly Candidate[]) {
  const all = new Map<SewingLine, number>();
  for (const { a, b, odds } of candidates)
    for (const line of new Set([...a, ...b])) all.set(line, (all.get(line) ?? 1) + odds);
  const sure = ({ a, b, odds }: Candidate): number =>
    Math.min(...[...a, ...b].map(line => odds / all.get(line)!));
  const [best] = candidates
    .map(candidate => ({ candidate, confidence: sure(candidate) }))
    .sort((x, y) => y.confidence - x.confidence);
  return best && best.confidence >= least ? best : undefined;
}

function proposal({ name, runs, aMm, bMm }: Candidate): Omit<SeamProposal, 'confidence'> {
  const difference = aMm - bMm;
  return { seam: { name, ...runs, ease: { mm: Math.abs(difference) < 1 ? 0 : difference } }, aMm, bMm };
}

/** Below this a proposal says nothing. */
const least = 0.3;
