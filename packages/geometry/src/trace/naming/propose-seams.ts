import type { Pattern, Seam } from '../../pattern/types.js';
import { anyPairs, byLinesAlone } from './any-pairs.js';
import { lookingAround } from './around-corners.js';
import { centresRunningOn } from './centres-running-on.js';
import { closedCorners } from './closed-corners.js';
import { type BodySide, bodySides } from './front-and-back.js';
import { bands, caps, collars, frontToBack, underCollars } from './group-seams.js';
import { bagSeams, hipBags, laidFlat } from './hip-pockets.js';
import { joinedLines } from './joined-lines.js';
import { joinedSeams } from './joined-seams.js';
import { layerSeams, ringEnds } from './layer-seams.js';
import { own, pairs } from './line-seams.js';
import { crotchesOfLegs } from './mirrored-seams.js';
import { facedLines, laidOnto, overlaySeams } from './overlay-seams.js';
import type { Overlay } from './overlays.js';
import { withSupport } from './pair-support.js';
import { panelsInRound } from './panels-in-round.js';
import type { PieceProposal } from './propose-pieces.js';
import { type Candidate, edgesTaken, outside } from './seam-candidates.js';
import { besideOf, type Chosen, chosenOf, joinsBeside, makesTube, seamOf } from './seam-choice.js';
import { isSewable, type SewingLine, sewingLines } from './sewing-lines.js';
import { isSecondOfTwo, takenWithTwins, twinsOf, withoutMirrorImages } from './symmetric-pieces.js';

/** Why a seam is proposed: what its sides are, and how their lengths compare. */
export interface SeamProposal {
  readonly seam: Seam;
  /** From 0 to 1. */
  readonly confidence: number;
  readonly aMm: number;
  readonly bMm: number;
}

/**
 * Seams that the lines of a pattern suggest: all pairs and groups of lines, weighed by their lengths against chance, by
 * what their parts in a garment are and by their corners, and against one another; the likeliest first and each line
 * once. What is sewn makes longer lines, which are then sewn in turn, as a maker goes about it.
 */
export function proposeSeams(
  pattern: Pattern,
  proposals: readonly PieceProposal[],
  overlays: readonly Overlay[],
): SeamsProposed {
  const bags = hipBags(overlays, proposals);
  const laid = overlays.filter(overlay => !bags.includes(overlay));
  const all = sewingLines(pattern, proposals, laid);
  const lines = all.filter(isSewable);
  const faced = facedLines(lines, laid);
  const flat = withSupport(withoutMirrorImages([...pairs(lines), ...anyPairs(lines, laidOnto(laid))], all));
  // Front and back are told apart first: what runs over both begins in front.
  const joins = chosenOf(all, flat, firm).map(({ seam }) => ({
    pieces: [seam.a[0]!.piece, seam.b[0]!.piece] as const,
    sameSide: seam.name === 'panel',
    isRound: aroundBody.includes(seam.name),
  }));
  const sides = bodySides(pattern, proposals, [
    ...joins.filter(({ isRound }) => isRound),
    ...joins.filter(({ sameSide }) => sameSide),
    ...laid.map(({ over, under }) => ({ pieces: [over.name, under.name] as const, sameSide: true })),
  ]);
  const shell = lines.filter(outside);
  const round = (of: readonly SewingLine[]) => frontToBack(of, sides);
  const ofBags = bagSeams(lines, bags);
  const open = [
    ...flat.filter(one => !isOfBag(one, bags, ofBags)).map(one => onOneSide(one, sides)),
    ...own(lines, sides).filter(({ a, name }) => name !== 'centre' || !faced.has(a[0]!)),
    ...panelsInRound(lines),
    ...caps(shell, round),
    ...bands(shell, round),
    ...collars(lines),
    ...ofBags,
  ];
  const sewn = sewnInTurn(all, open, { bags, sides });
  const before = sewn.map(one => one.candidate);
  const under = overlaySeams(lines, laid, before);
  const last = [
    ...ringEnds(all, before),
    ...layerSeams(lines, [...before, ...under]),
    ...underCollars(lines, before),
  ];
  return { seams: [...sewn, ...[...under, ...last].map(byItself)].map(proposalOf), sides };
}

/** Whether it is a seam of a hip pocket's bag, or takes up what such a seam does: those are told by themselves. */
const isOfBag = (one: Candidate, bags: readonly Overlay[], own: readonly Candidate[]): boolean =>
  [...one.a, ...one.b].some(({ piece }) =>
    bags.some(({ over, under }) => over === piece || under === piece),
  ) || own.some(bag => edgesTaken(one).every(edge => edgesTaken(bag).includes(edge)));

/** A candidate that no other stands against. */
const byItself = (candidate: Candidate): Chosen => ({
  candidate,
  confidence: Math.min(candidate.odds / (1 + candidate.odds), candidate.most ?? 1),
  seam: seamOf(candidate),
});

/** What hangs from a piece, or lies beside it, mostly belongs to the same side of the body. */
function onOneSide(one: Candidate, sides: ReadonlyMap<string, BodySide>): Candidate {
  const [a, b] = [one.a[0]!, one.b[0]!];
  const [front, other] = [a, b].map(({ piece }) => sides.get(piece.name)?.front);
  if (!['waist', 'yoke', 'panel'].includes(a.role!) || front === undefined || other === undefined) return one;
  return { ...one, odds: one.odds * (front === other ? sameSide : 1 / sameSide) };
}
const sameSide = 3;

/** Rounds of sewing: each of what is firm, then with the lines that it made; at last what is likelier than not. */
function sewnInTurn(
  all: readonly SewingLine[],
  candidates: readonly Candidate[],
  { bags, sides }: { readonly bags: readonly Overlay[]; readonly sides: ReadonlyMap<string, BodySide> },
): readonly Chosen[] {
  const twins = twinsOf(all);
  let sewn: readonly Chosen[] = [];
  for (let turn = 0, limit = firm; turn < mostTurns; turn++) {
    const taken = new Set(sewn.flatMap(({ candidate }) => takenWithTwins(candidate, twins)));
    const isOpen = (line: SewingLine): boolean =>
      isSewable(line) && !edgesTaken({ a: [line], b: [] }).some(edge => taken.has(edge));
    const before = sewn.map(({ candidate }) => candidate);
    const around = lookingAround(all, before, isOpen);
    const joined = joinedLines(all, isOpen, around).map(line => laidFlat(line, bags));
    const across = before.map(candidate => besideOf(all, candidate));
    const made = [
      ...joinedSeams(joined).filter(one => !isSecondOfTwo(one, twins)),
      ...crotchesOfLegs(all, before),
      ...centresRunningOn(all, isOpen, around, sides),
      ...closedCorners(all, isOpen, around),
    ];
    const open = [...candidates, ...made].filter(
      one =>
        [...one.a, ...one.b].every(isOpen) &&
        !across.some(beside => joinsBeside(one, beside)) &&
        !before.some(candidate => makesTube(one, candidate)) &&
        (turn > 0 || !waits(one)),
    );
    const more = chosenOf(all, open, limit);
    sewn = [...sewn, ...more];
    if (more.length > 0) continue;
    if (limit === least) break;
    limit = least;
  }
  return sewn;
}
const mostTurns = 8;

/** What is not drawn to match by lines alone, or is gathered, waits until it is seen what other lines make together. */
function waits({ name, aMm, bMm, most }: Candidate): boolean {
  const off = Math.abs(aMm - bMm);
  return (most === byLinesAlone && off > drawnToMatch) || (across.includes(name) && off > plainShare * bMm);
}
/** mm */
const drawnToMatch = 1;
/** Of a line: what differs by more is gathered or pleated. */
const plainShare = 0.05;
const across: readonly string[] = ['waist', 'yoke'];

/** What is proposed of the sewing. */
export interface SeamsProposed {
  readonly seams: readonly SeamProposal[];
  /** By piece; only of pieces that are seen to lie beside another. */
  readonly sides: ReadonlyMap<string, BodySide>;
}

const aroundBody: readonly string[] = ['side', 'shoulder', 'outseam', 'inseam'];

const proposalOf = ({ candidate: { aMm, bMm }, confidence, seam }: Chosen): SeamProposal => ({
  seam,
  confidence,
  aMm,
  bMm,
});

/** Below this a proposal says nothing; what others are built on is likelier than not. */
const least = 0.3,
  firm = 0.55;
