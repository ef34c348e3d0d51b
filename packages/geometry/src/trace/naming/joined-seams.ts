import type { EdgeRole, EdgeRun } from '../../pattern/types.js';
import { byLinesAlone } from './any-pairs.js';
import { type JoinedLine, runsOfJoined } from './joined-lines.js';
import { type Candidate, candidate } from './seam-candidates.js';
import { capEased, cuffed, type Easing, exact, gathered, lapped } from './seam-chances.js';
import { isUpperTwin, type SewingLine } from './sewing-lines.js';

// Seams of lines that others make together: a cap into its armhole, a band onto a waist, a skirt onto a bodice.

/** Odds that a line is sewn to one that others make together; a band to a ring; a ring to a ring. */
const joinedUsual = 0.6,
  bandUsual = 3,
  ringUsual = 12;
/** Of its length, the straight way along a band. */
const straightest = 0.995;
/** mm: shorter lines are alike by chance. */
const shortest = 60;

/** What is gathered most; common practice, no source. */
const mostGathered = 3;

/** All pairs of joined lines of a layer that may go together, one of them of several lines or closed in the round. */
export function joinedSeams(joined: readonly JoinedLine[]): readonly Candidate[] {
  const open = joined.filter(
    line =>
      line.lengthMm >= shortest &&
      !(line.parts.length === 1 && isUpperTwin(line.parts[0]!.line)) &&
      !line.parts.some(isFree),
  );
  return open.flatMap((p, i) =>
    open.slice(i + 1).flatMap(q => {
      const [few, many] = mostRound(p, q);
      return mayMeet(few, many) ? waysOf(few, many).flatMap(way => seamOf(few, many, way) ?? []) : [];
    }),
  );
}

/** The one that is sewn onto the other: what is open goes round what is closed, one line along several. */
function mostRound(p: JoinedLine, q: JoinedLine): readonly [few: JoinedLine, many: JoinedLine] {
  const rank = ({ isRing, isHalfRing }: JoinedLine): number => (isHalfRing ? 2 : isRing ? 1 : 0);
  const order = rank(p) - rank(q) || p.parts.length - q.parts.length;
  return order <= 0 ? [p, q] : [q, p];
}

/** The outer edge of a collar is sewn to its other layer. */
const isFree = ({ line: { pieceRole, confidence, role } }: JoinedLine['parts'][number]): boolean =>
  pieceRole === 'collar' && confidence > surelyKnown && role !== 'neck';

const linesOf = ({ parts }: JoinedLine): readonly SewingLine[] => parts.map(({ line }) => line);

function mayMeet(few: JoinedLine, many: JoinedLine): boolean {
  const [a, b] = [linesOf(few), linesOf(many)];
  return (
    !isOneForTwo(few, many) &&
    (many.parts.length > 1 || many.isRing || (many.isHalfRing && few.isHalfRing !== many.isHalfRing)) &&
    a.every(line => b.every(other => other.piece !== line.piece && other.layer === line.layer))
  );
}

/** Closed lines of halves of the garment, an armhole or a leg, are there twice: what is cut once is sewn to neither. */
const isOneForTwo = (few: JoinedLine, many: JoinedLine): boolean =>
  many.isRing &&
  linesOf(few).every(({ piece }) => piece.cutting.count === 1) &&
  linesOf(many).every(({ piece, onFold }) => onFold || piece.cutting.count > 1);

/** A band is drawn open and closed to a ring once it is sewn, as those at the feet of trousers are. */
const isBand = ({ parts, isRing }: JoinedLine): boolean =>
  !isRing && parts.length === 1 && isAlongBand(parts[0]!.line);

/** A side of what is known for a band, or of any rectangle, that is as long as its longest. */
const isAlongBand = ({ isOfRectangle, longestMm, pieceRole, confidence, lengthMm }: SewingLine): boolean =>
  longestMm <= lengthMm + 0.5 && (isOfRectangle || (pieceRole === 'band' && confidence > likelyKnown));
/** A piece surer than this is rather what it seems than not. */
const likelyKnown = 0.5;

/** How two joined lines may be laid along one another. */
interface Way {
  readonly b: readonly EdgeRun[];
  /** How often the second is gone along: twice where it is half of what goes round. */
  readonly times: 1 | 2;
}

function waysOf(few: JoinedLine, many: JoinedLine): readonly Way[] {
  const there = runsOfJoined(many, false),
    back = runsOfJoined(many, true);
  const straightOn: readonly Way[] = [
    { b: there, times: 1 },
    { b: back, times: 1 },
  ];
  if (many.isRing)
    return few.isRing || isBand(few) ? [there, back].flatMap(ring => begunAnywhere(ring, 1)) : [];
  const twice: readonly Way[] = [
    { b: [...there, ...back], times: 2 },
    { b: [...back, ...there], times: 2 },
  ];
  if (many.isHalfRing && (few.isRing || isWhole(few)))
    return [...(isPair(few) ? straightOn : []), ...twice, ...begunAnywhere([...there, ...back], 2)];
  return isWhole(few) ? [...straightOn, ...twice] : few.isRing ? [] : straightOn;
}

/** One line of a piece that is drawn whole. */
const isWhole = ({ parts, isRing, isHalfRing }: JoinedLine): boolean =>
  parts.length === 1 && !isRing && !isHalfRing && !parts[0]!.line.onFold;

const isPair = ({ parts }: JoinedLine): boolean => parts.every(({ line }) => line.piece.cutting.count > 1);

/** A closed line begun at any of the seams that cross it. */
const begunAnywhere = (ring: readonly EdgeRun[], times: 1 | 2): readonly Way[] =>
  ring.map((_, i) => ({ b: [...ring.slice(i), ...ring.slice(0, i)], times }));

function seamOf(few: JoinedLine, many: JoinedLine, { b, times }: Way): Candidate | undefined {
  if (!isLikely(few, times * many.lengthMm)) return undefined;
  return candidate(nameOf(few, many), linesOf(few), linesOf(many), easingOf(few, many), {
    runs: { a: runsOfJoined(few, false), b },
    times,
    twice: [liesTwice(few), times * liesTwice(many)],
    prior: priorOf(few, many),
    sure: 1,
    most: byLinesAlone,
  });
}

/** mm of its lines that lie under others of them. */
const liesTwice = (joined: JoinedLine): number =>
  linesOf(joined).reduce((sum, { lengthMm }) => sum + lengthMm, 0) - joined.lengthMm;

const isLikely = (few: JoinedLine, bMm: number): boolean =>
  few.lengthMm > bMm / mostGathered && few.lengthMm < bMm * mostGathered;

/** What is not gathered is eased a little, or laps over. */
const plain: Easing = (d, length) =>
  0.75 * exact(d, length) + 0.17 * lapped(d, length) + 0.08 * gathered(Math.abs(d), 2 * length);
/** Or what it goes round is gathered to it. */
const banded: Easing = (d, length) =>
  0.4 * exact(d, length) + 0.35 * lapped(d, length) + 0.25 * (d < 0 && d > -length / 2 ? 2 / length : 0);

function easingOf({ parts, isRing }: JoinedLine, many: JoinedLine): Easing {
  if (isRing) return many.isRing ? capEased : plain;
  // Open, onto a ring: a band at a foot or a wrist.
  if (many.isRing) return cuffed;
  return parts.length === 1 && parts[0]!.line.straightness > straightest ? banded : plain;
}

/** What lines are known to be makes them likelier to be sewn to one another, or less. */
function priorOf(few: JoinedLine, many: JoinedLine): number {
  const usual = few.isRing
    ? ringUsual
    : many.isRing || (many.isHalfRing && isBand(few))
      ? bandUsual
      : joinedUsual;
  const base = usual * (isPairOnOne(few, many) ? pairOnOne : 1) * notPocket(few);
  const known = (line: SewingLine): boolean => line.confidence > surelyKnown && line.role !== undefined;
  const [a, b] = [linesOf(few).filter(known), linesOf(many).filter(known)];
  const along = [...a, ...b].filter(({ role }) => endsHere.includes(role!));
  if (along.length > 0) return [...a, ...b].every(({ role }) => role === along[0]!.role) ? base : base / 10;
  const fits = meets.some(
    ([one, other]) =>
      a.length > 0 &&
      b.length > 0 &&
      ((a.every(line => one.includes(line.role!)) && b.every(line => other.includes(line.role!))) ||
        (a.every(line => other.includes(line.role!)) && b.every(line => one.includes(line.role!)))),
  );
  const isKnownApart =
    a.length > 0 && b.length > 0 && a.length + b.length === few.parts.length + many.parts.length;
  return fits ? fitting * base : isKnownApart ? base / fitting : base;
}
/** A rectangle that looks like a pocket is a band only as far as it is not one. */
const notPocket = (few: JoinedLine): number =>
  Math.min(...linesOf(few).map(({ pieceRole, confidence }) => (pieceRole === 'pocket' ? 1 - confidence : 1)));

/** A pair of bands is for wrists or legs, not for the one line round the body, but where each goes round half of it. */
const isPairOnOne = (few: JoinedLine, many: JoinedLine): boolean =>
  few.lengthMm < longer * many.lengthMm &&
  (many.isHalfRing || Math.abs(few.lengthMm - many.lengthMm) > halfOf) &&
  linesOf(few).every(({ piece, pieceRole }) => pieceRole === 'band' && piece.cutting.count > 1) &&
  linesOf(many).some(({ onFold }) => onFold);
const pairOnOne = 0.003;
/** mm */
const halfOf = 2;
/** What is longer than half of the line by more is gathered to it, each of a pair to its half. */
const longer = 1.1;
/** A piece surer than this is known. */
const surelyKnown = 0.7;
const fitting = 8;
/** Seams along the body, which are sewn to their like. */
const endsHere: readonly EdgeRole[] = ['side', 'centre', 'shoulder', 'outseam', 'inseam', 'crotch'];
const meets: readonly (readonly [readonly EdgeRole[], readonly EdgeRole[]])[] = [
  [
    ['waist', 'yoke'],
    ['waist', 'yoke', 'hem'],
  ],
  [['cap'], ['armhole']],
  [['neck'], ['neck']],
];

function nameOf(few: JoinedLine, many: JoinedLine): string {
  if (few.isRing) return 'armhole';
  const roles = [...linesOf(many), ...linesOf(few)].flatMap(({ role }) => role ?? []);
  return (
    roles.find(role => role !== 'hem' && role !== 'opening') ?? roles.find(role => role === 'hem') ?? 'seam'
  );
}
