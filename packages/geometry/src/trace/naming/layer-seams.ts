import { edgeNamed } from '../../pattern/outline.js';
import type { EdgeRole, Piece } from '../../pattern/types.js';
import { type Candidate, candidate, edgesTaken, ofItself } from './seam-candidates.js';
import { exact } from './seam-chances.js';
import { isSewable, runsOf, type SewingLine } from './sewing-lines.js';

// What is left open once a garment is sewn, and is sewn to its like: a band's ends, a collar's upper and under layer.
// Lengths say nothing here, so that none is sure.

/** Odds that a band is closed to a ring; one that a sleeve is gathered to, of what is buttoned; that two layers are sewn. */
const ringOdds = 1.5,
  cuffOdds = 0.4,
  layerOdds = 3,
  bagOdds = 1.5;
const mostSure = 0.85;
/** A piece surer than this is rather what it seems than not. */
const likelyKnown = 0.45;
/** mm: a band that differs by more laps over, or is drawn otherwise; ends of a band are alike to this. */
const asLong = 1,
  alike = 0.5;

/**
 * The ends of bands that go round: of a casing as long as the closed line it is sewn to, of a rib that is stretched onto
 * it, of a band that it is gathered to. What laps over is buttoned.
 */
export function ringEnds(all: readonly SewingLine[], sewn: readonly Candidate[]): readonly Candidate[] {
  const taken = new Set(sewn.flatMap(edgesTaken));
  const opens = all.some(line => line.layer === 0 && isUnsewnCentre(line, sewn));
  const turned = sewn.map(({ a, b, aMm, bMm, ...rest }) => ({ ...rest, a: b, b: a, aMm: bMm, bMm: aMm }));
  const found = [...sewn, ...turned].flatMap(({ a, b, aMm, bMm }) => {
    const [along, ...more] = a;
    if (!along || more.length > 0 || !isBand(along) || aMm > bMm + asLong) return [];
    if (b.some(isOpenBeside(all, sewn)) || b.some(({ role }) => alongBody.has(role!))) return [];
    const ends = all.filter(
      line => line.piece === along.piece && line.lengthMm < along.lengthMm - alike && isFree(line, taken),
    );
    const odds = Math.abs(aMm - bMm) <= asLong || !opens ? ringOdds : cuffOdds;
    const [first, second] = ends;
    if (along.onFold && ends.length === 1) return [ringEnd(first!, first!, odds)];
    if (ends.length !== 2 || Math.abs(first!.lengthMm - second!.lengthMm) > alike) return [];
    return [ringEnd(first!, second!, odds)];
  });
  return found.filter((one, i) => found.findIndex(other => other.a[0] === one.a[0]) === i);
}

const isBand = ({ isOfRectangle, pieceRole, confidence }: SewingLine): boolean =>
  isOfRectangle || (pieceRole === 'band' && confidence >= likelyKnown);

function ringEnd(first: SewingLine, second: SewingLine, odds: number): Candidate {
  const runs = { a: runsOf(first, false), b: runsOf(second, first !== second) };
  return { ...candidate('end', [first], [second], exact, { runs, most: mostSure }), odds };
}

/** A piece whose centre is neither on a fold nor sewn to its like is open there, and what goes round it ends there. */
const isOpenBeside =
  (all: readonly SewingLine[], sewn: readonly Candidate[]) =>
  ({ piece }: SewingLine): boolean =>
    all.some(line => line.piece === piece && isUnsewnCentre(line, sewn));

/** Edges that run up and down: what is sewn along one goes round nothing. */
const alongBody: ReadonlySet<EdgeRole> = new Set([
  'centre',
  'side',
  'outseam',
  'inseam',
  'panel',
  'shoulder',
]);

/** A centre that is sewn to no other, nor to its like: a band may be sewn along it. */
const isUnsewnCentre = (line: SewingLine, sewn: readonly Candidate[]): boolean =>
  line.role === 'centre' &&
  isSewable(line) &&
  !sewn.some(
    ({ a, b }) =>
      [...a, ...b].includes(line) && [...a, ...b].every(({ role }) => role === 'centre' || role === 'crotch'),
  );

const isFree = (line: SewingLine, taken: ReadonlySet<string>): boolean =>
  isSewable(line) && !edgesTaken({ a: [line], b: [] }).some(edge => taken.has(edge));

/** Collars, stands and cuffs of two layers and the bags of pockets, along the edges that nothing else is sewn to. */
export function layerSeams(all: readonly SewingLine[], sewn: readonly Candidate[]): readonly Candidate[] {
  const taken = new Set(sewn.flatMap(edgesTaken));
  return all
    .filter(line => isInLayers(line) && line.confidence >= likelyKnown && isFree(line, taken))
    .filter(line => line.pieceRole === 'pocket' || isSewnElsewhere(line.piece, taken))
    .map(line => {
      const odds = line.pieceRole === 'pocket' ? bagOdds : layerOdds;
      return ofItself(line, { name: 'edge', odds, most: mostSure });
    });
}

/** Cut twice on a fold, or four times: one for each layer. What is turned up is an opening. */
function isInLayers({ piece, isOfRectangle, pieceRole, role, edges, onFold }: SewingLine): boolean {
  const { count } = piece.cutting;
  if (pieceRole === 'hood') return count >= 4 && role === 'opening';
  if (role === 'opening' || edges.some(name => edgeNamed(piece, name).kind === 'hem')) return false;
  if (pieceRole === 'collar' || pieceRole === 'yoke') return count >= 4 || (onFold && count >= 2);
  const isShaped = pieceRole === 'band' && !isOfRectangle;
  return (
    (pieceRole === 'band' || pieceRole === 'pocket') && (count >= 4 || (isShaped && onFold && count >= 2))
  );
}

const isSewnElsewhere = ({ name }: Piece, taken: ReadonlySet<string>): boolean =>
  [...taken].some(edge => edge.startsWith(`${name}/`));
