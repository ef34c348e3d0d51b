import { edgeNamed } from '../../pattern/outline.js';
import type { Piece } from '../../pattern/types.js';
import { type Candidate, candidate, edgesTaken } from './seam-candidates.js';
import { exact } from './seam-chances.js';
import { isSewable, runsOf, type SewingLine } from './sewing-lines.js';

// What is left open once a garment is sewn, and is sewn to its like: a band's ends, a collar's upper and under layer.
// Lengths say nothing here, so that none is sure.

/** Odds that a band as long as what it goes round is closed to a ring; that two layers are sewn round their edge. */
const ringOdds = 1.5,
  layerOdds = 3,
  bagOdds = 1.5;
const mostSure = 0.85;
/** A piece surer than this is rather what it seems than not. */
const likelyKnown = 0.45;
/** mm: a band that differs by more laps over, or is drawn otherwise; ends of a band are alike to this. */
const asLong = 1,
  alike = 0.5;

/** The ends of bands that are as long as the closed line they are sewn to: a casing, a band at a foot. */
export function ringEnds(all: readonly SewingLine[], sewn: readonly Candidate[]): readonly Candidate[] {
  const taken = new Set(sewn.flatMap(edgesTaken));
  return sewn.flatMap(({ a, b, aMm, bMm }) => {
    const [along, ...more] = a;
    if (!along || more.length > 0 || along.pieceRole !== 'band' || along.onFold) return [];
    if (along.confidence < likelyKnown || Math.abs(aMm - bMm) > asLong || b.some(isOpenBeside(all, taken)))
      return [];
    const ends = all.filter(
      line => line.piece === along.piece && line.lengthMm < along.lengthMm - alike && isFree(line, taken),
    );
    const [first, second] = ends;
    if (ends.length !== 2 || Math.abs(first!.lengthMm - second!.lengthMm) > alike) return [];
    const runs = { a: runsOf(first!, false), b: runsOf(second!, true) };
    return [{ ...candidate('end', [first!], [second!], exact, { runs, most: mostSure }), odds: ringOdds }];
  });
}

/** A piece whose centre is neither on a fold nor sewn is open there, and what goes round it ends there. */
const isOpenBeside =
  (all: readonly SewingLine[], taken: ReadonlySet<string>) =>
  ({ piece }: SewingLine): boolean =>
    all.some(line => line.piece === piece && line.role === 'centre' && isFree(line, taken));

const isFree = (line: SewingLine, taken: ReadonlySet<string>): boolean =>
  isSewable(line) && !edgesTaken({ a: [line], b: [] }).some(edge => taken.has(edge));

/** Collars, stands and cuffs of two layers and the bags of pockets, along the edges that nothing else is sewn to. */
export function layerSeams(all: readonly SewingLine[], sewn: readonly Candidate[]): readonly Candidate[] {
  const taken = new Set(sewn.flatMap(edgesTaken));
  return all
    .filter(line => isInLayers(line) && line.confidence >= likelyKnown && isFree(line, taken))
    .filter(line => line.pieceRole === 'pocket' || isSewnElsewhere(line.piece, taken))
    .map(line => {
      const runs = runsOf(line, false);
      const odds = line.pieceRole === 'pocket' ? bagOdds : layerOdds;
      const how = { runs: { a: runs, b: runs }, most: mostSure };
      return { ...candidate('edge', [line], [line], exact, how), odds };
    });
}

/** Cut twice on a fold, or four times: one for each layer. What is turned up is an opening. */
function isInLayers({ piece, pieceRole, role, edges, onFold }: SewingLine): boolean {
  const { count } = piece.cutting;
  if (role === 'opening' || edges.some(name => edgeNamed(piece, name).kind === 'hem')) return false;
  if (pieceRole === 'collar') return count >= 4 || (onFold && count >= 2);
  return (pieceRole === 'band' || pieceRole === 'pocket') && count >= 4;
}

const isSewnElsewhere = ({ name }: Piece, taken: ReadonlySet<string>): boolean =>
  [...taken].some(edge => edge.startsWith(`${name}/`));
