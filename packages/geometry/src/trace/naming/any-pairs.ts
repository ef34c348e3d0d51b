import { edgeNamed, edgeNames } from '../../pattern/outline.js';
import type { EdgeRole, Piece } from '../../pattern/types.js';
import { agreement, isTurnedByShape } from './agreement.js';
import { type Candidate, candidate } from './seam-candidates.js';
import { exact } from './seam-chances.js';
import { isUpperTwin, runsOf, type SewingLine } from './sewing-lines.js';

// Seams of one line to one line whatever its piece may be: by length, corners, bow and notches alone.

/** Nothing that goes by lines alone is surer: another pair may be as alike. */
export const byLinesAlone = 0.85;
/** Odds that a line is sewn to another of its length, what its piece is not being known; and where it is known. */
const unknown = 0.4,
  known = 0.03;
/**
 * A line that lies on one of the piece below is hardly sewn to one that does not, nor to another of the same piece: as
 * what is below is not sewn so.
 */
const laidApart = (a: Piece | undefined, b: Piece | undefined): number =>
  a === b && a !== undefined ? 0.1 : (a === undefined) === (b === undefined) ? 1 : 0.1;
/** Of a patch pocket, and of the end of a band. */
const hardly = 0.003;
/** A piece surer than this is known. */
const surelyKnown = 0.8;
/** mm: shorter lines are alike by chance. */
const shortest = 25;
/** Of its length, how much one line is longer than the other at most; and mm. */
const mostOff = 0.02,
  leastOff = 3;
/** Edges that close a garment off: what is known to be one is sewn to a line of another kind only. */
const closing: ReadonlySet<EdgeRole> = new Set(['hem', 'opening', 'wrist']);

/** All pairs of lines of two pieces that are about as long as one another. */
export function anyPairs(
  lines: readonly SewingLine[],
  laidOn: (line: SewingLine) => Piece | undefined,
): readonly Candidate[] {
  const open = lines.filter(line => line.lengthMm >= shortest && !isTurnedUp(line) && !isUpperTwin(line));
  return open.flatMap((a, i) =>
    open
      .slice(i + 1)
      .filter(
        b =>
          a.piece !== b.piece && mayLieTogether(a, b) && isNear(a.lengthMm, b.lengthMm) && !lieBeside(a, b),
      )
      .map(b => pairOf(a, b, laidApart(laidOn(a), laidOn(b)))),
  );
}

/** What is not known may lie under the garment as well. */
const mayLieTogether = (a: SewingLine, b: SewingLine): boolean =>
  a.layer === b.layer || [a, b].some(line => line.layer === 0 && line.confidence < hardlyKnown);
const hardlyKnown = 0.45;

const isNear = (a: number, b: number): boolean =>
  Math.abs(a - b) <= Math.max(leastOff, mostOff * Math.max(a, b));

/**
 * Edges across the body of pieces of one kind lie beside one another, front and back; so do the ends of bands. The hem
 * of a skirt turned about may be its waist, so that pieces of two kinds tell nothing.
 */
const lieBeside = (a: SewingLine, b: SewingLine): boolean =>
  (a.pieceRole === b.pieceRole &&
    Math.min(a.confidence, b.confidence) >= hardlyKnown &&
    across.has(a.role!) &&
    across.has(b.role!)) ||
  (isEnd(a) && isEnd(b)) ||
  (isPocket(a) && isPocket(b)) ||
  isOfFacing(a, b) ||
  isOuter(a) !== isOuter(b) ||
  (a.pieceRole === 'collar' && b.pieceRole === 'collar' && a.role === 'neck' && b.role === 'neck');
/** A facing is sewn to what is the same there, its neck to a neck. */
const isOfFacing = (a: SewingLine, b: SewingLine): boolean =>
  a.role !== b.role &&
  a.role !== undefined &&
  b.role !== undefined &&
  [a, b].some(({ pieceRole, confidence }) => pieceRole === 'facing' && confidence >= surelyKnown);
/** Pockets of one garment are as wide as one another. */
const isPocket = ({ pieceRole, piece, confidence }: SewingLine): boolean =>
  pieceRole === 'pocket' && confidence >= perhapsKnown && edgeNames(piece).length > 3;
const perhapsKnown = 0.5;
/** What is not the neck of a collar is sewn to another collar only. */
const isOuter = ({ pieceRole, role, confidence }: SewingLine): boolean =>
  pieceRole === 'collar' && role !== 'neck' && confidence >= surelyKnown;
const across: ReadonlySet<EdgeRole> = new Set([
  'hem',
  'opening',
  'wrist',
  'waist',
  'yoke',
  'neck',
  'armhole',
  'cap',
]);
/** A short side of a rectangle or of a band: those of one garment are as wide as one another, and are not sewn end to end. */
const isEnd = ({ isOfRectangle, longestMm, pieceRole, edges, lengthMm }: SewingLine): boolean =>
  edges.length === 1 &&
  ((isOfRectangle && longestMm > lengthMm + alikeSides) ||
    (pieceRole === 'band' && lengthMm < endShare * longestMm));
/** Of a band's length, what its ends are at most. */
const endShare = 0.4;
/** mm */
const alikeSides = 0.5;

const isTurnedUp = ({ piece, edges }: SewingLine): boolean =>
  edges.some(edge => edgeNamed(piece, edge).kind === 'hem');

function pairOf(a: SewingLine, b: SewingLine, share: number): Candidate {
  const turned = isTurnedByShape(a, b);
  return candidate(a.role === b.role && a.role ? a.role : 'seam', [a], [b], exact, {
    runs: { a: runsOf(a, false), b: runsOf(b, turned) },
    prior: share * meetInMiddle(a, b) * priorOf(a, b),
    sure: 1,
    agrees: agreement(a, b, turned),
    most: byLinesAlone,
  });
}

/** What runs up to the fold is sewn to what runs up to the middle as well. */
const meetInMiddle = (a: SewingLine, b: SewingLine): number =>
  [
    [a, b],
    [b, a],
  ].some(([half, other]) => half!.meetsFold && !other!.atMiddle.includes(true))
    ? apart
    : 1;
const apart = 0.15;

function priorOf(a: SewingLine, b: SewingLine): number {
  // The edges of a collar are all known, those without a role as well.
  const isKnown = ({ confidence, role, pieceRole }: SewingLine): boolean =>
    confidence >= surelyKnown && (role !== undefined || pieceRole === 'collar');
  if (isPatch(a) || isPatch(b) || isEnd(a) || isEnd(b)) return hardly;
  const bothClose = closing.has(a.role!) && closing.has(b.role!) ? 0.3 : 1;
  if (isKnown(a) && isKnown(b)) return bothClose * known;
  const hasItsOwn = [a, b].some(line => isKnown(line) && ownPartner.has(line.role!));
  // A pair of bands is for wrists or legs, not for one piece's part of the waist.
  const isPairOnWaist = [
    [a, b],
    [b, a],
  ].some(
    ([one, other]) =>
      one!.pieceRole === 'band' && one!.piece.cutting.count > 1 && isKnown(other!) && other!.role === 'waist',
  );
  return bothClose * (hasItsOwn || isPairOnWaist ? known : unknown);
}
/** What is sewn onto the cloth or into a slit, not to a whole line: a pocket between its sides, the opening of a bag. */
const isPatch = ({ pieceRole, role, confidence, piece }: SewingLine): boolean =>
  pieceRole === 'pocket' && confidence >= perhapsKnown && (edgeNames(piece).length > 3 || role === 'opening');
/** Edges that are sewn to edges of a certain kind: to no other, whatever its length. */
const ownPartner: ReadonlySet<EdgeRole> = new Set([
  'armhole',
  'cap',
  'crotch',
  'inseam',
  'outseam',
  'underarm',
]);
