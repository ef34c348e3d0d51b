import type { JoinedLine } from './joined-lines.js';
import { goesAgainst, linesOnOneAnother } from './overlay-seams.js';
import type { Overlay } from './overlays.js';
import type { PieceProposal } from './propose-pieces.js';
import { type Candidate, candidate } from './seam-candidates.js';
import { exact } from './seam-chances.js';
import { isSewable, runsOf, type SewingLine } from './sewing-lines.js';

// Pockets at the hip: the bag is sewn to the mouth that is cut away and lies behind it, the piece of the hip lies behind
// the bag and is sewn to it all round below. Waist and side then run over both, the bag's own ends under them.

/** Odds that a bag is sewn to what it lies on, and to a mouth as long as its own. */
const roundOdds = 6,
  mouthOdds = 3;
const mostSure = 0.85;
/** A piece surer than this is what it seems. */
const likelyKnown = 0.6;
/** mm: a mouth and the bag's edge along it differ by less; shorter ones are alike by chance. */
const alike = 0.7,
  shortest = 60;

/** A bag that lies on the piece of the hip: neither is a part of the body by itself. */
export function hipBags(
  overlays: readonly Overlay[],
  proposals: readonly PieceProposal[],
): readonly Overlay[] {
  const isSmall = (name: string): boolean => {
    const known = proposals.find(({ piece }) => piece === name);
    return !known || known.confidence < likelyKnown || known.role === 'pocket' || known.role === undefined;
  };
  return overlays.filter(
    ({ over, under, isWhole, shared }) =>
      !isWhole && shared.size === 1 && isSmall(over.name) && isSmall(under.name),
  );
}

/** The seams of such bags: round the piece that they lie on, and along the mouth. */
export function bagSeams(lines: readonly SewingLine[], bags: readonly Overlay[]): readonly Candidate[] {
  return bags.flatMap(bag => {
    const round = linesOnOneAnother(lines, bag).filter(([a, b]) => isSewable(a) && isSewable(b));
    const own = lines.filter(
      ({ piece, edges, lengthMm }) =>
        piece === bag.over && lengthMm > shortest && !edges.some(edge => bag.shared.has(edge)),
    );
    const mouths = own.flatMap(a =>
      lines
        .filter(({ piece }) => piece !== bag.over && piece !== bag.under)
        .filter(b => Math.abs(a.lengthMm - b.lengthMm) < alike && isSewable(a) && isSewable(b))
        .map(b => [a, b] as const),
    );
    return [...round.map(pair => laid(pair, roundOdds)), ...mouths.map(pair => laid(pair, mouthOdds))];
  });
}

function laid([a, b]: readonly [SewingLine, SewingLine], odds: number): Candidate {
  const runs = { a: runsOf(a, false), b: runsOf(b, goesAgainst(a, b)) };
  return { ...candidate('pocket', [a], [b], exact, { runs, most: mostSure }), odds };
}

/** A joined line as it lies: the ends of a bag are folded back behind what comes before them, and on what comes after. */
export function laidFlat(joined: JoinedLine, bags: readonly Overlay[]): JoinedLine {
  const { parts } = joined;
  const isFolded = (i: number): boolean =>
    bags.some(
      ({ over, under }) =>
        parts[i]!.line.piece === over &&
        i > 0 &&
        i < parts.length - 1 &&
        [parts[i - 1]!, parts[i + 1]!].some(({ line }) => line.piece === under),
    );
  const folded = parts.filter((_, i) => isFolded(i));
  if (folded.length === 0) return joined;
  const lost = 2 * folded.reduce((sum, { line }) => sum + line.lengthMm, 0);
  return {
    ...joined,
    parts: parts.filter((_, i) => !isFolded(i)),
    lengthMm: joined.lengthMm - lost,
  };
}
