import { pathLength } from '../../path/length.js';
import { edgeNamed, edgeNames, edgePath } from '../../pattern/outline.js';
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
        b => a.piece !== b.piece && a.layer === b.layer && isNear(a.lengthMm, b.lengthMm) && !lieBeside(a, b),
      )
      .map(b => pairOf(a, b, laidApart(laidOn(a), laidOn(b)))),
  );
}

const isNear = (a: number, b: number): boolean =>
  Math.abs(a - b) <= Math.max(leastOff, mostOff * Math.max(a, b));

/**
 * Edges across the body of pieces of one kind lie beside one another, front and back; so do the ends of bands. The hem
 * of a skirt turned about may be its waist, so that pieces of two kinds tell nothing.
 */
const lieBeside = (a: SewingLine, b: SewingLine): boolean =>
  a.pieceRole === b.pieceRole &&
  ((across.has(a.role!) && across.has(b.role!)) || (a.pieceRole === 'band' && isEnd(a) && isEnd(b)));
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
/** Of a band's length, what its ends are at most. */
const endShare = 0.7;
const isEnd = (line: SewingLine): boolean =>
  edgeNames(line.piece).some(name => pathLength(edgePath(line.piece, name)) * endShare > line.lengthMm);

const isTurnedUp = ({ piece, edges }: SewingLine): boolean =>
  edges.some(edge => edgeNamed(piece, edge).kind === 'hem');

function pairOf(a: SewingLine, b: SewingLine, share: number): Candidate {
  const turned = isTurnedByShape(a, b);
  return candidate(a.role === b.role && a.role ? a.role : 'seam', [a], [b], exact, {
    runs: { a: runsOf(a, false), b: runsOf(b, turned) },
    prior: share * priorOf(a, b),
    sure: 1,
    agrees: agreement(a, b, turned),
    most: byLinesAlone,
  });
}

function priorOf(a: SewingLine, b: SewingLine): number {
  const isKnown = ({ confidence, role }: SewingLine): boolean =>
    confidence >= surelyKnown && role !== undefined;
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
/** Edges that are sewn to edges of a certain kind: to no other, whatever its length. */
const ownPartner: ReadonlySet<EdgeRole> = new Set([
  'armhole',
  'cap',
  'crotch',
  'inseam',
  'outseam',
  'underarm',
]);
