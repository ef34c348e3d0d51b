import type { EdgeRole, EdgeRun } from '../../pattern/types.js';
import { isTurnedByShape } from './agreement.js';
import type { BodySide } from './front-and-back.js';
import { type Candidate, candidate, usual } from './seam-candidates.js';
import { capEased, cuffed, exact, lapped, lapsUnder } from './seam-chances.js';
import { isUpperTwin, runsOf, type SewingLine } from './sewing-lines.js';

// Seams of a line to several, all round an armhole, a neck, a waist or a lining.

/** A sleeve's cap into all armholes of one side. */
export function caps(lines: readonly SewingLine[], round: Round): readonly Candidate[] {
  const armholes = lines.filter(
    line => line.role === 'armhole' && line.pieceRole !== 'sleeve' && line.pieceRole !== 'facing',
  );
  if (armholes.length < 2) return [];
  // From the side up in front, down to the side behind: an armhole lies away from its centre.
  const b = round(armholes).flatMap(({ line, front }) => runsOf(line, isLower(line.after) === front));
  // Which half of a cap is its front is told by its notches, if by anything.
  return lines
    .filter(line => line.role === 'cap')
    .flatMap(cap =>
      [false, true].map(reversed =>
        candidate('armhole', [cap], armholes, capEased, {
          runs: { a: runsOf(cap, reversed), b },
          prior: usual,
        }),
      ),
    );
}

/** What an armhole comes to below, of a yoke the seam to what hangs from it. */
const isLower = (role: EdgeRole | undefined): boolean => role === 'side' || role === 'yoke';

/** Lines as one meets them from the centre in front round to the centre behind. */
export type Round = (
  lines: readonly SewingLine[],
) => readonly { readonly line: SewingLine; readonly front: boolean }[];

/** Fronts first, yokes of the shoulder between; where nothing tells, the first half of what is drawn. */
export function frontToBack(
  lines: readonly SewingLine[],
  sides: ReadonlyMap<string, BodySide>,
): ReturnType<Round> {
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

/** A pair of bands is for wrists or legs, not for the one line round the body. */
const isPairOnOne = ({ piece, pieceRole }: SewingLine, edge: readonly SewingLine[]): boolean =>
  pieceRole === 'band' && piece.cutting.count > 1 && edge.some(({ onFold }) => onFold);

/** Bands, collars and cuffs onto the necks, waists or wrists that they finish. */
export function bands(lines: readonly SewingLine[], round: Round): readonly Candidate[] {
  const longSides = lines.filter(
    line =>
      (line.pieceRole === 'band' || line.pieceRole === 'collar') &&
      ((line.pieceRole === 'collar' && line.role === 'neck') ||
        (line.straightness > bent && isLong(line, lines))) &&
      !isUpperTwin(line),
  );
  const necks = lines.filter(
    line => line.role === 'neck' && line.pieceRole !== 'collar' && line.pieceRole !== 'facing',
  );
  const waists = lines.filter(line => line.role === 'waist' && line.pieceRole !== 'facing');
  const wrists = lines.filter(
    line => line.role === 'hem' && line.pieceRole === 'sleeve' && isInOnePiece(line, lines),
  );
  const groups: readonly (readonly [string, readonly SewingLine[]])[] = [
    ['neck', necks],
    ['waist', waists],
    ...wrists.map(wrist => ['wrist', [wrist]] as const),
  ];
  return longSides.flatMap(side =>
    groups
      .filter(([name, edge]) => edge.length > 0 && (name !== 'wrist' || !isOneForTwo(side, edge[0]!)))
      .flatMap(([name, edge]) =>
        timesRound(side, name, edge).map(times => bandOnto(side, name, round(edge), times)),
      ),
  );
}

/** There are two wrists: what is cut once is sewn to neither. */
const isOneForTwo = (side: SewingLine, wrist: SewingLine): boolean =>
  side.piece.cutting.count === 1 && wrist.piece.cutting.count > 1;

/** Of a sleeve in one piece both edges under the arm are sewn to one another. */
const isInOnePiece = ({ piece }: SewingLine, lines: readonly SewingLine[]): boolean => {
  const [first, second] = lines.filter(line => line.piece === piece && line.role === 'underarm');
  return Boolean(first && second && Math.abs(first.lengthMm - second.lengthMm) < alikeUnderarms);
};
/** mm */
const alikeUnderarms = 6;

/** A band that is drawn whole goes round both halves; each of a pair round its own; one of gores round all of them. */
function timesRound(side: SewingLine, name: string, edge: readonly SewingLine[]): readonly number[] {
  if (name === 'wrist' || side.onFold) return [1];
  const [only] = edge;
  if (edge.length === 1 && only!.piece.cutting.count > 2) return [only!.piece.cutting.count];
  return side.pieceRole === 'collar' && side.piece.cutting.mirrored ? [2, 1] : [2];
}

function bandOnto(side: SewingLine, name: string, ring: ReturnType<Round>, times: number): Candidate {
  const edge = ring.map(({ line }) => line);
  const there = ring.flatMap(({ line, front }) => fromCentre(line, front));
  const back = [...ring].reverse().flatMap(({ line, front }) => fromCentre(line, !front));
  const b =
    times > 2
      ? Array.from({ length: times }, () => runsOf(edge[0]!, false)).flat()
      : times === 2
        ? [...there, ...back]
        : there;
  const easing = name === 'wrist' && side.pieceRole === 'band' ? cuffed : lapped;
  return candidate(name, [side], edge, easing, {
    // A collar's fold lies at the centre behind.
    runs: { a: runsOf(side, side.before === 'centre'), b },
    times,
    // A collar's neck edge is the one it is sewn by.
    prior: isPairOnOne(side, edge) ? 0.05 : side.pieceRole === 'collar' && side.role !== 'neck' ? 0.5 : 3,
  });
}

/** A collar onto its stand, which laps over beyond it. */
export function collars(lines: readonly SewingLine[]): readonly Candidate[] {
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

/** A collar as long as another one that is sewn to a neck is its under side: sewn to the same neck, and to it all round. */
export function underCollars(lines: readonly SewingLine[], sewn: readonly Candidate[]): readonly Candidate[] {
  const necks = lines.filter(line => line.pieceRole === 'collar' && line.role === 'neck');
  const isFree = (line: SewingLine): boolean => !sewn.some(one => [...one.a, ...one.b].includes(line));
  return sewn.flatMap(({ name, a, b, runs }) => {
    const [upper, ...more] = a;
    if (!upper || more.length > 0 || !necks.includes(upper)) return [];
    return necks
      .filter(
        line =>
          line.piece !== upper.piece && Math.abs(line.lengthMm - upper.lengthMm) < asCut && isFree(line),
      )
      .flatMap(under => {
        const isTurned = isTurnedByShape(upper, under);
        const neck = { a: runsOf(under, isTurned !== runs.a[0]!.reversed), b: runs.b };
        return [
          { ...candidate(name, [under], b, exact, { runs: neck, most: mostUnder }), odds: underOdds },
          ...layersOf(lines, [upper, under], isTurned)
            .filter(pair => pair.every(isFree))
            .map(pair => layered(pair, isTurned)),
        ];
      });
  });
}

/** The other edges of two collars, each with the one that lies on it. */
function layersOf(
  lines: readonly SewingLine[],
  [upper, under]: readonly [SewingLine, SewingLine],
  isTurned: boolean,
): readonly (readonly [SewingLine, SewingLine])[] {
  const [own, other] = [upper, under].map(neck => {
    const ring = lines.filter(({ piece }) => piece === neck.piece);
    return (step: number): SewingLine =>
      ring[(((ring.indexOf(neck) + step) % ring.length) + ring.length) % ring.length]!;
  });
  return [1, 2, 3]
    .map(step => [own!(step), other!(isTurned ? -step : step)] as const)
    .filter(([a, b]) => a.role !== 'neck' && a.role !== 'centre' && b.role !== 'neck' && b.role !== 'centre')
    .filter(([a, b]) => Math.abs(a.lengthMm - b.lengthMm) < rolledUnder);
}

function layered([a, b]: readonly [SewingLine, SewingLine], isTurned: boolean): Candidate {
  const runs = { a: runsOf(a, false), b: runsOf(b, isTurned) };
  return { ...candidate('edge', [a], [b], exact, { runs, most: mostUnder }), odds: underOdds };
}
/** mm: an under collar is cut smaller by as much at most, to roll under. */
const rolledUnder = 6;

/** mm: an under collar is drawn a little smaller at its outer edge, not at its neck. */
const asCut = 0.7;
const underOdds = 3,
  mostUnder = 0.8;

/** No straight line of its piece is clearly longer; one that goes round a cuff's corners is. */
const isLong = (line: SewingLine, lines: readonly SewingLine[]): boolean =>
  lines.every(
    other =>
      other.piece !== line.piece || other.straightness <= bent || other.lengthMm <= 1.3 * line.lengthMm,
  );
/** Of its length, the straight way along what goes round corners at most. */
const bent = 0.8;
