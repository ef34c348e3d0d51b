import { edgeNamed } from '../../pattern/outline.js';
import type { EdgeRole, EdgeRun, Pattern, PieceRole, Seam } from '../../pattern/types.js';
import { type BodySide, bodySides } from './front-and-back.js';
import type { PieceProposal } from './propose-pieces.js';
import {
  byChance,
  capEased,
  type Easing,
  exact,
  gathered,
  lapped,
  lapsUnder,
  slightlyEased,
} from './seam-chances.js';
import { isSewable, runsOf, type SewingLine, sewingLines } from './sewing-lines.js';

/** Why a seam is proposed: what its sides are, and how their lengths compare. */
export interface SeamProposal {
  readonly seam: Seam;
  /** From 0 to 1. */
  readonly confidence: number;
  readonly aMm: number;
  readonly bMm: number;
}

interface Candidate {
  readonly name: string;
  readonly a: readonly SewingLine[];
  readonly b: readonly SewingLine[];
  readonly runs: { readonly a: readonly EdgeRun[]; readonly b: readonly EdgeRun[] };
  readonly odds: number;
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
  for (let best = likeliest(open); best; best = likeliest(open)) {
    const { candidate, confidence } = best;
    const own = new Set([...candidate.a, ...candidate.b]);
    open = open.filter(({ a, b }) => ![...a, ...b].some(line => own.has(line)));
    // What is likeliest only once others are settled is no surer than they are.
    const before = chosen.at(-1)?.confidence ?? 1;
    chosen.push({ ...proposal(candidate), confidence: Math.min(confidence, before) });
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
/** Odds that a line which is sewn in every garment is sewn to one that it may be sewn to. */
const usual = 6;
const outside = ({ layer }: SewingLine): boolean => layer === 0;

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
  { roles: ['side', 'side'], pieces: alike('bodice', 'skirt', 'yoke'), easing: exact },
  { roles: ['panel', 'panel'], pieces: alike('bodice', 'skirt'), easing: slightlyEased },
  { roles: ['armhole', 'armhole'], pieces: [['bodice', 'sleeve']], easing: exact },
  { roles: ['outseam', 'outseam'], pieces: alike('trouser'), easing: exact },
  { roles: ['inseam', 'inseam'], pieces: alike('trouser'), easing: exact },
  { roles: ['yoke', 'yoke'], pieces: [['bodice', 'yoke']], easing: gathered },
  { roles: ['waist', 'yoke'], pieces: [['skirt', 'yoke']], easing: gathered },
  { roles: ['waist', 'hem'], pieces: [['skirt', 'bodice']], easing: gathered },
];

/** Line to line, of two pieces. */
function pairs(lines: readonly SewingLine[]): readonly Candidate[] {
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
  return candidate(roles[0], [a], [b], easing, {
    runs: { a: runsOf(a, false), b: runsOf(b, isTurned(a, b)) },
    // Below one another, centre lies on centre: on folds both, or in a seam both.
    prior: usual * (across ? (a.onFold === b.onFold ? 2 : 0.3) : 1),
  });
}

/** Whether a second line goes the other way from the same corner: clockwise from what the first goes clockwise to. */
function isTurned(a: SewingLine, b: SewingLine): boolean {
  const rank = (role: EdgeRole | undefined): number => corners.indexOf(role ?? 'panel');
  const forward = (line: SewingLine): number => Math.sign(rank(line.after) - rank(line.before));
  return forward(a) * forward(b) < 0;
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
function own(lines: readonly SewingLine[]): readonly Candidate[] {
  const twins = lines.flatMap((a, i) =>
    lines
      .slice(i + 1)
      .filter(b => b.piece === a.piece && a.role === b.role && twinRoles.includes(a.role ?? 'hem'))
      .map(b =>
        candidate(a.role!, [a], [b], exact, {
          runs: { a: runsOf(a, false), b: runsOf(b, true) },
          // Gores are cut alike; a whole front has a back.
          prior: a.role === 'side' ? (a.piece.cutting.count > 2 ? usual : 0.05) : usual,
        }),
      ),
  );
  const halves = lines
    .filter(({ piece, role }) => role === 'crotch' || (piece.cutting.mirrored && role === 'centre'))
    .filter(({ layer, pieceRole, role }) => role === 'crotch' || (layer === 0 && pieceRole !== 'collar'))
    .filter(({ piece, edges }) => edges.every(name => edgeNamed(piece, name).kind === 'seam'))
    .map(line => {
      const runs = runsOf(line, false);
      // A crotch is always sewn to its other side; a centre may be an opening.
      const odds = line.role === 'crotch' ? 30 * line.confidence : 1.5 * line.confidence;
      return {
        name: line.role!,
        a: [line],
        b: [line],
        runs: { a: runs, b: runs },
        odds,
        aMm: line.lengthMm,
        bMm: line.lengthMm,
      };
    });
  return [...twins, ...halves];
}

/** Edges that a piece may have twice and that are then sewn to one another. */
const twinRoles: readonly EdgeRole[] = ['underarm', 'inseam', 'side'];

/** A sleeve's cap into all armholes of one side. */
function caps(lines: readonly SewingLine[], round: Round): readonly Candidate[] {
  const armholes = lines.filter(line => line.role === 'armhole' && line.pieceRole !== 'sleeve');
  if (armholes.length < 2) return [];
  // From the side up in front, down to the side behind: an armhole lies away from its centre.
  const b = round(armholes).flatMap(({ line, front }) => runsOf(line, (line.after === 'side') === front));
  return lines
    .filter(line => line.role === 'cap')
    .map(cap =>
      candidate('armhole', [cap], armholes, capEased, { runs: { a: runsOf(cap, false), b }, prior: usual }),
    );
}

/** Lines as one meets them from the centre in front round to the centre behind. */
type Round = (
  lines: readonly SewingLine[],
) => readonly { readonly line: SewingLine; readonly front: boolean }[];

/** Fronts first, yokes of the shoulder between; where nothing tells, the first half of what is drawn. */
function frontToBack(lines: readonly SewingLine[], sides: ReadonlyMap<string, BodySide>): ReturnType<Round> {
  const known = lines.map((line, i) => ({
    line,
    front: sides.get(line.piece.name)?.front ?? i < lines.length / 2,
  }));
  const rank = ({ line, front }: { readonly line: SewingLine; readonly front: boolean }): number =>
    (front ? 0 : 3) + (line.pieceRole === 'yoke' ? (front ? 1 : -1) : 0);
  return [...known].sort((a, b) => rank(a) - rank(b));
}

/** A line from the centre outwards, or back to it. */
const fromCentre = (line: SewingLine, outwards: boolean): readonly EdgeRun[] =>
  runsOf(line, (line.before === 'centre' || line.before === 'crotch') !== outwards);

/** Bands, collars and cuffs onto the necks, waists or wrists that they finish. */
function bands(lines: readonly SewingLine[], round: Round): readonly Candidate[] {
  const longSides = lines.filter(
    line =>
      (line.pieceRole === 'band' || line.pieceRole === 'collar') &&
      line.straightness > 0.8 &&
      isLong(line, lines) &&
      !isUpperTwin(line, lines),
  );
  const necks = lines.filter(line => line.role === 'neck' && line.pieceRole !== 'collar');
  const waists = lines.filter(line => line.role === 'waist');
  const wrists = lines.filter(line => line.role === 'hem' && line.pieceRole === 'sleeve');
  const groups: readonly (readonly [string, readonly SewingLine[]])[] = [
    ['neck', necks],
    ['waist', waists],
    ...wrists.map(wrist => ['wrist', [wrist]] as const),
  ];
  return longSides.flatMap(side =>
    groups
      .filter(([, edge]) => edge.length > 0)
      .map(([name, edge]) => {
        const whole = name !== 'wrist' && !side.onFold;
        const gores = whole && edge.length === 1 && edge[0]!.piece.cutting.count > 2 ? edge[0]! : undefined;
        const ring = round(edge);
        const there = ring.flatMap(({ line, front }) => fromCentre(line, front));
        const back = [...ring].reverse().flatMap(({ line, front }) => fromCentre(line, !front));
        const b = gores
          ? Array.from({ length: gores.piece.cutting.count }, () => runsOf(gores, false)).flat()
          : whole
            ? [...there, ...back]
            : there;
        return candidate(name, [side], edge, lapped, {
          // A collar's fold lies at the centre behind.
          runs: { a: runsOf(side, side.before === 'centre'), b },
          times: gores ? gores.piece.cutting.count : whole ? 2 : 1,
          prior: 3,
        });
      }),
  );
}

/** Of the two sides of a straight band either may be sewn: the one drawn lower is taken. */
const isUpperTwin = (line: SewingLine, lines: readonly SewingLine[]): boolean =>
  lines.some(
    other =>
      other !== line &&
      other.piece === line.piece &&
      Math.abs(other.lengthMm - line.lengthMm) <= 0.5 &&
      other.middle.y > line.middle.y,
  );

/** A collar onto its stand, which laps over beyond it. */
function collars(lines: readonly SewingLine[]): readonly Candidate[] {
  const own = lines.filter(line => line.pieceRole === 'collar');
  return own
    .filter(line => line.role === 'neck')
    .flatMap(collar =>
      own
        .filter(stand => stand.piece !== collar.piece && stand.role === undefined && isLong(stand, own))
        .map(stand =>
          candidate('collar', [collar], [stand], lapsUnder, {
            runs: { a: runsOf(collar, false), b: runsOf(stand, true) },
          }),
        ),
    );
}

/** The outer edges of a lining, and those of what it lies under: its hem may also hang free. */
function linings(lines: readonly SewingLine[], round: Round): readonly Candidate[] {
  const inside = lines.filter(line => line.layer === 1);
  if (inside.length === 0) return [];
  const covered = new Set(
    lines.filter(line => outside(line) && hasLining(line, inside)).map(line => line.piece),
  );
  // A lining is as long as what it lies under, sewn to it or not: lengths tell nothing here.
  const group = (name: string, odds: number, ...roles: readonly EdgeRole[]): readonly Candidate[] => {
    const of = (line: SewingLine): boolean => line.role !== undefined && roles.includes(line.role);
    const [a, b] = [inside, lines.filter(line => covered.has(line.piece))].map(side => side.filter(of));
    const along = (side: readonly SewingLine[]): readonly EdgeRun[] =>
      round([...side].sort((x, y) => roles.indexOf(x.role!) - roles.indexOf(y.role!))).flatMap(
        ({ line, front }) =>
          line.role === 'centre' ? runsOf(line, line.after !== 'neck') : fromCentre(line, front),
      );
    const runs = { a: along(a!), b: along(b!) };
    return a!.length === 0 ? [] : [{ ...candidate(name, a!, b!, exact, { runs }), odds }];
  };
  return [
    ...group('lining edge', 5, 'centre', 'neck'),
    ...group('lining armhole', 3, 'armhole'),
    ...group('lining hem', 1.2, 'hem'),
  ];
}

const hasLining = (line: SewingLine, inside: readonly SewingLine[]): boolean =>
  inside.some(other => other.role === line.role && Math.abs(other.lengthMm - line.lengthMm) <= 0.5);

const isLong = (line: SewingLine, lines: readonly SewingLine[]): boolean =>
  lines.every(other => other.piece !== line.piece || other.lengthMm <= 1.3 * line.lengthMm);

interface How {
  readonly runs: Candidate['runs'];
  readonly prior?: number;
  /** How often the second side is gone along. */
  readonly times?: number;
}

function candidate(
  name: string,
  a: readonly SewingLine[],
  b: readonly SewingLine[],
  easing: Easing,
  { runs, prior = 1, times = 1 }: How,
): Candidate {
  const sum = (lines: readonly SewingLine[]): number => lines.reduce((all, line) => all + line.lengthMm, 0);
  const aMm = sum(a),
    bMm = times * sum(b);
  const sure = Math.min(...[...a, ...b].map(line => line.confidence));
  const odds = (prior * sure * easing(aMm - bMm, bMm)) / byChance(bMm);
  return { name, a, b, runs, odds, aMm, bMm };
}
