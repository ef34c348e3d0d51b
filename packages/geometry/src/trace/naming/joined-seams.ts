import { pathLength } from '../../path/length.js';
import { edgeNames, edgePath } from '../../pattern/outline.js';
import type { EdgeRole } from '../../pattern/types.js';
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

/** All pairs of joined lines of a layer, one of them of several lines or a ring. */
export function joinedSeams(joined: readonly JoinedLine[]): readonly Candidate[] {
  const open = joined.filter(
    line => line.lengthMm >= shortest && !(line.parts.length === 1 && isUpperTwin(line.parts[0]!.line)),
  );
  return open.flatMap((p, i) =>
    open.slice(i + 1).flatMap(q => {
      const [few, many] = p.parts.length <= q.parts.length ? [p, q] : [q, p];
      return mayMeet(few, many) ? seamsOf(few, many) : [];
    }),
  );
}

const linesOf = ({ parts }: JoinedLine): readonly SewingLine[] => parts.map(({ line }) => line);

function mayMeet(few: JoinedLine, many: JoinedLine): boolean {
  const [a, b] = [linesOf(few), linesOf(many)];
  return (
    (few.isRing === many.isRing || isBand(few)) &&
    (many.parts.length > 1 || many.isRing) &&
    a.every(line => b.every(other => other.piece !== line.piece && other.layer === line.layer))
  );
}

/** A band is drawn open and closed to a ring once it is sewn, as those at the feet of trousers are. */
const isBand = ({ parts, isRing }: JoinedLine): boolean =>
  !isRing &&
  parts.length === 1 &&
  parts[0]!.line.pieceRole === 'band' &&
  parts[0]!.line.confidence > likelyKnown &&
  isAlongBand(parts[0]!.line);
/** A piece surer than this is rather what it seems than not. */
const likelyKnown = 0.5;
const isAlongBand = ({ piece, lengthMm }: SewingLine): boolean =>
  edgeNames(piece).every(name => pathLength(edgePath(piece, name)) <= lengthMm + 0.5);

function seamsOf(few: JoinedLine, many: JoinedLine): readonly Candidate[] {
  const [only] = linesOf(few);
  const isWhole = few.parts.length === 1 && !only!.onFold && !few.isRing;
  return (isWhole && !many.isRing ? [1, 2] : [1]).flatMap(times => {
    const bMm = times * many.lengthMm;
    const there = runsOfJoined(many, false);
    const b = times === 1 ? there : [...there, ...runsOfJoined(many, true)];
    return isLikely(few, bMm)
      ? [
          candidate(nameOf(few, many), linesOf(few), linesOf(many), easingOf(few, many), {
            runs: { a: runsOfJoined(few, false), b },
            times,
            prior: priorOf(few, many),
            sure: 1,
            most: byLinesAlone,
          }),
        ]
      : [];
  });
}

const isLikely = (few: JoinedLine, bMm: number): boolean =>
  few.lengthMm > bMm / mostGathered && few.lengthMm < bMm * mostGathered;

/** What is not gathered is eased a little, or laps over. */
const plain: Easing = (d, length) =>
  0.75 * exact(d, length) + 0.17 * lapped(d, length) + 0.08 * gathered(Math.abs(d), 2 * length);
const banded: Easing = (d, length) => 0.5 * exact(d, length) + 0.5 * lapped(d, length);

function easingOf({ parts, isRing }: JoinedLine, many: JoinedLine): Easing {
  if (isRing) return capEased;
  // Open, onto a ring: a band at a foot or a wrist.
  if (many.isRing) return cuffed;
  return parts.length === 1 && parts[0]!.line.straightness > straightest ? banded : plain;
}

/** What lines are known to be makes them likelier to be sewn to one another, or less. */
function priorOf(few: JoinedLine, many: JoinedLine): number {
  const usual = few.isRing ? ringUsual : many.isRing ? bandUsual : joinedUsual;
  const base = usual * (isPairOnOne(few, many) ? pairOnOne : 1);
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
  return fits ? fitting * base : base;
}
/** A pair of bands is for wrists or legs, not for the one line round the body. */
const isPairOnOne = (few: JoinedLine, many: JoinedLine): boolean =>
  linesOf(few).every(({ piece, pieceRole }) => pieceRole === 'band' && piece.cutting.count > 1) &&
  linesOf(many).some(({ onFold }) => onFold);
const pairOnOne = 0.05;
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
  return roles.find(role => role !== 'hem') ?? 'seam';
}
