import type { EdgeRun } from '../../pattern/types.js';
import type { BodySide } from './front-and-back.js';
import { type Candidate, candidate, usual } from './seam-candidates.js';
import { capEased, cuffed, lapped, lapsUnder } from './seam-chances.js';
import { isUpperTwin, runsOf, type SewingLine } from './sewing-lines.js';

// Seams of a line to several, all round an armhole, a neck, a waist or a lining.

/** A sleeve's cap into all armholes of one side. */
export function caps(lines: readonly SewingLine[], round: Round): readonly Candidate[] {
  const armholes = lines.filter(
    line => line.role === 'armhole' && line.pieceRole !== 'sleeve' && line.pieceRole !== 'facing',
  );
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
      line.straightness > bent &&
      isLong(line, lines) &&
      !isUpperTwin(line),
  );
  const necks = lines.filter(
    line => line.role === 'neck' && line.pieceRole !== 'collar' && line.pieceRole !== 'facing',
  );
  const waists = lines.filter(line => line.role === 'waist' && line.pieceRole !== 'facing');
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
        return candidate(
          name,
          [side],
          edge,
          name === 'wrist' && side.pieceRole === 'band' ? cuffed : lapped,
          {
            // A collar's fold lies at the centre behind.
            runs: { a: runsOf(side, side.before === 'centre'), b },
            times: gores ? gores.piece.cutting.count : whole ? 2 : 1,
            // A collar's neck edge is the one it is sewn by.
            prior: (side.pieceRole === 'collar' && side.role !== 'neck') || isPairOnOne(side, edge) ? 0.5 : 3,
          },
        );
      }),
  );
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

/** No straight line of its piece is clearly longer; one that goes round a cuff's corners is. */
const isLong = (line: SewingLine, lines: readonly SewingLine[]): boolean =>
  lines.every(
    other =>
      other.piece !== line.piece || other.straightness <= bent || other.lengthMm <= 1.3 * line.lengthMm,
  );
/** Of its length, the straight way along what goes round corners at most. */
const bent = 0.8;
