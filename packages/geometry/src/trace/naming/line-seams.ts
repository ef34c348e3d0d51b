import { edgeNamed } from '../../pattern/outline.js';
import type { EdgeRole, PieceRole } from '../../pattern/types.js';
import { agreement, isTurnedByShape } from './agreement.js';
import type { BodySide } from './front-and-back.js';
import { type Candidate, candidate, ofItself, usual } from './seam-candidates.js';
import { type Easing, exact, gathered, slightlyEased } from './seam-chances.js';
import { runsOf, type SewingLine } from './sewing-lines.js';
import { twinsOf } from './symmetric-pieces.js';

// Seams of one line to one line.

interface PairRule {
  readonly roles: readonly [EdgeRole, EdgeRole];
  readonly pieces: readonly (readonly [PieceRole, PieceRole])[];
  readonly easing: Easing;
}

const alike = (...roles: readonly PieceRole[]): readonly (readonly [PieceRole, PieceRole])[] =>
  roles.map(role => [role, role] as const);
const pairRules: readonly PairRule[] = [
  {
    roles: ['shoulder', 'shoulder'],
    pieces: [...alike('bodice', 'yoke'), ['bodice', 'yoke']],
    easing: slightlyEased,
  },
  { roles: ['shoulder', 'shoulder'], pieces: alike('facing'), easing: exact },
  { roles: ['side', 'side'], pieces: alike('facing'), easing: exact },
  { roles: ['side', 'side'], pieces: alike('bodice', 'skirt', 'yoke'), easing: exact },
  { roles: ['panel', 'panel'], pieces: alike('bodice', 'skirt'), easing: slightlyEased },
  { roles: ['armhole', 'armhole'], pieces: [['bodice', 'sleeve']], easing: exact },
  { roles: ['outseam', 'outseam'], pieces: alike('trouser'), easing: exact },
  { roles: ['inseam', 'inseam'], pieces: alike('trouser', 'bodice'), easing: exact },
  { roles: ['yoke', 'yoke'], pieces: [['bodice', 'yoke']], easing: gathered },
  { roles: ['waist', 'yoke'], pieces: [['skirt', 'yoke']], easing: gathered },
  {
    roles: ['waist', 'hem'],
    pieces: [
      ['skirt', 'bodice'],
      ['trouser', 'bodice'],
    ],
    easing: gathered,
  },
];

/** No surer than this where lengths say nothing: a line and its own mirror image, a curve and what was traced from it. */
const alikeAnyway = 0.9;

/** Of a line: what differs by more is gathered, pleated or much eased. */
const plainShare = 0.05;
/** Lines whose corners, bows or notches speak against a seam are never surely one. */
const unlike = 0.5;

/** Line to line, of two pieces. */
export function pairs(lines: readonly SewingLine[]): readonly Candidate[] {
  return lines.flatMap((first, i) =>
    lines.slice(i + 1).flatMap(second => {
      if (first.piece === second.piece || first.layer !== second.layer) return [];
      return pairRules.flatMap(rule =>
        [
          [first, second],
          [second, first],
        ].flatMap(([a, b], turn) =>
          fits(rule, a!, b!) && (turn === 0 || !fits(rule, b!, a!)) ? [pair(rule, a!, b!)] : [],
        ),
      );
    }),
  );
}

const fits = ({ roles, pieces }: PairRule, a: SewingLine, b: SewingLine): boolean =>
  a.role === roles[0] &&
  b.role === roles[1] &&
  pieces.some(([p, q]) => a.pieceRole === p && b.pieceRole === q) &&
  // A panel seam joins the middle of a front or back to its side.
  (roles[0] !== 'panel' || a.hasCentre !== b.hasCentre);

function pair({ roles, easing }: PairRule, a: SewingLine, b: SewingLine): Candidate {
  const across = roles[0] !== roles[1] || roles[0] === 'yoke';
  const turned = isTurned(a, b);
  // What is gathered runs otherwise than what it is sewn to.
  const isPlain = Math.abs(a.lengthMm - b.lengthMm) < plainShare * b.lengthMm;
  const agrees = isPlain ? agreement(a, b, turned) : 1;
  return candidate(roles[0], [a], [b], easing, {
    runs: { a: runsOf(a, false), b: runsOf(b, turned) },
    agrees,
    // Below one another, centre lies on centre: on folds both, or in a seam both.
    prior: usual * (across ? (a.onFold === b.onFold ? 2 : 0.3) : 1),
    ...(agrees < unlike ? { most: alikeAnyway } : {}),
  });
}

/** Whether a second line goes the other way from the same corner: clockwise from what the first goes clockwise to. */
function isTurned(a: SewingLine, b: SewingLine): boolean {
  const roles = [a.before, a.after, b.before, b.after];
  const isShared = [b.before, b.after].some(
    role => role !== undefined && (role === a.before || role === a.after),
  );
  if (isShared || roles.includes(undefined)) return isTurnedByShape(a, b);
  const [first, second, third, last] = roles.map(role => corners.indexOf(role!));
  return Math.sign(second! - first!) * Math.sign(last! - third!) < 0;
}
/** Edges from the top of the body to its foot and from its middle outwards, so that lines are seen to go the same way. */
const corners: readonly EdgeRole[] = [
  'centre',
  'neck',
  'crotch',
  'shoulder',
  'cap',
  'yoke',
  'armhole',
  'waist',
  'underarm',
  'panel',
  'side',
  'outseam',
  'inseam',
  'hem',
  'wrist',
];

/** A piece with itself: the underarms of a sleeve, the sides of gores; the crotch and an open centre of a pair. */
export function own(
  lines: readonly SewingLine[],
  sides: ReadonlyMap<string, BodySide>,
): readonly Candidate[] {
  const twins = lines.flatMap((a, i) =>
    lines
      .slice(i + 1)
      .filter(b => b.piece === a.piece && a.role === b.role && twinRoles.includes(a.role ?? 'hem'))
      .map(b =>
        candidate(a.role!, [a], [b], exact, {
          runs: { a: runsOf(a, false), b: runsOf(b, true) },
          // Gores are cut alike; a whole front has a back.
          prior: a.role === 'side' ? (a.piece.cutting.count > 2 ? usual : 0.05) : usual,
          sure: Math.min(a.confidence, a.confidence < likelyKnown ? 0.05 : 1),
          // The two sides of one panel are as long as one another whether they are sewn or not.
          ...(a.role === 'side' ? { most: a.piece.cutting.count > 2 ? alikeAnyway : alikeAnyway / 2 } : {}),
        }),
      ),
  );
  const mirrors = twinsOf(lines);
  // Where a half is alike on both sides, as a plain rectangle is, either may be its centre.
  const isCentre = (line: SewingLine): boolean =>
    line.role === 'centre' || (line.role === 'side' && mirrors.get(line)?.line.role === 'centre');
  const halves = lines
    .filter(line => line.role === 'crotch' || (line.piece.cutting.mirrored && isCentre(line)))
    .filter(({ pieceRole, role }) => role === 'crotch' || pieceRole !== 'facing')
    .filter(({ piece, edges }) => edges.every(name => edgeNamed(piece, name).kind === 'seam'))
    .map(line => {
      // A crotch is always sewn to its other side; a centre is mostly a seam behind, and an opening in front.
      const ofCentre = { true: 0.35, false: 3, undefined: 1.5 }[`${sides.get(line.piece.name)?.front}`]!;
      const sure = line.confidence < likelyKnown ? line.confidence / 10 : line.confidence;
      const isCrotch = line.role === 'crotch';
      return ofItself(line, {
        name: isCrotch ? 'crotch' : 'centre',
        odds: sure * (isCrotch ? 30 : ofCentre),
        most: alikeAnyway,
      });
    });
  return [...twins, ...halves, ...lines.filter(isCrown).map(crownOf)];
}

/** A hood of two halves is sewn over the head, if there is no strip between them. */
const isCrown = ({ pieceRole, role, piece }: SewingLine): boolean =>
  pieceRole === 'hood' && role === 'panel' && piece.cutting.mirrored;
const crownOdds = 1.1;
const crownOf = (line: SewingLine): Candidate =>
  ofItself(line, { name: 'crown', odds: crownOdds * line.confidence, most: alikeAnyway });

/** A piece surer than this is rather what it seems than not. */
const likelyKnown = 0.45;
/** Edges that a piece may have twice and that are then sewn to one another. */
const twinRoles: readonly EdgeRole[] = ['underarm', 'inseam', 'side'];
