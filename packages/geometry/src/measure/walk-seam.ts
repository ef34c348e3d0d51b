import type { Finding } from '../errors.js';
import { oncePerAll } from '../once-per.js';
import type { Pattern, Piece, Seam } from '../pattern/types.js';
import { coincidenceTolerance, seamTolerance } from '../tolerance.js';
import { type JoinedLine, joinedLineFinding, joinedLinesOf } from './joined-lines.js';
import { checkNotches, type SeamStretch } from './notch-check.js';
import { easeWanted, type RunsCounted, runsTaken, matches as sidesMatch } from './runs-taken.js';
import { laidOut, type SeamSide, sideLabel } from './side.js';

/** What a seam measures when both its sides are walked; lengths in mm on the stitching line, darts closed. */
export interface SeamWalk {
  readonly seam: string;
  /** Whether both sides are the edges as written, or every copy in the whole garment. */
  readonly counted: RunsCounted;
  readonly aMm: number;
  readonly bMm: number;
  /** a − b. */
  readonly differenceMm: number;
  /** a − b as it should be; an ease in per cent is one of b. */
  readonly easeWantedMm: number;
  /** The difference is the ease wanted, within `seamTolerance`. */
  readonly matches: boolean;
  /** Where the ease sits: between the notches that meet, from the beginning to the end. */
  readonly stretches: readonly SeamStretch[];
  /** The lines that must run on across the seam's two ends, with the corner and step that each makes. */
  readonly joined: readonly JoinedLine[];
  /** A fault where the sides do not match; warnings on notches and joined lines; notes on notches alone. */
  readonly findings: readonly Finding[];
}

/**
 * Walks a seam: both sides measured and compared with the ease wanted, their notches paired and compared, and the
 * lines that must run on at its two ends held together (trade-notes §4 and §5).
 * @throws PatternError `unknown-piece`, `unknown-edge`, `empty-seam`
 */
export const walkSeam: (pattern: Pattern, seam: Seam) => SeamWalk = oncePerAll(
  // Only the seam's own pieces and the list of seams decide what is found.
  (pattern, seam) => [pattern.seams, seam, ...piecesOf(pattern, seam)],
  walked,
);

const piecesOf = ({ pieces }: Pattern, { a, b }: Seam): readonly Piece[] =>
  pieces.filter(({ name }) => a.some(r => r.piece === name) || b.some(r => r.piece === name));

function walked(pattern: Pattern, seam: Seam): SeamWalk {
  const { counted, aMm, bMm, differenceMm, easeWantedMm, matches, a, b } = measureSeam(pattern, seam);
  const remainder = differenceMm - easeWantedMm;
  const notches = checkNotches(pattern, seam, a, b, easeWantedMm);
  const joined = joinedLinesOf(pattern, seam, matches ? 0 : remainder);
  const findings = [
    ...(matches ? [] : [mismatch(pattern, seam, a, b, remainder, notches.stretches, easeWantedMm)]),
    ...notches.findings,
    ...joined.flatMap(joinedLineFinding),
  ];
  return {
    seam: seam.name,
    counted,
    aMm,
    bMm,
    differenceMm,
    easeWantedMm,
    matches,
    stretches: notches.stretches,
    joined,
    findings,
  };
}

/** Every seam of a pattern, walked in its order. @throws as `walkSeam` */
export const walkSeams = (pattern: Pattern): readonly SeamWalk[] =>
  pattern.seams.map(seam => walkSeam(pattern, seam));

/** The lengths of a seam's sides without its notches and corners. @throws as `walkSeam` */
export function measureSeam(pattern: Pattern, seam: Seam) {
  const { counted, ...runs } = runsTaken(pattern, seam);
  const a = laidOut(pattern, runs.a),
    b = laidOut(pattern, runs.b);
  const aMm = a.lengthMm,
    bMm = b.lengthMm;
  const differenceMm = aMm - bMm,
    easeWantedMm = easeWanted(seam, bMm);
  const matches = sidesMatch(pattern, seam, { aMm, bMm });
  return { counted, a, b, aMm, bMm, differenceMm, easeWantedMm, matches };
}

function mismatch(
  pattern: Pattern,
  seam: Seam,
  a: SeamSide,
  b: SeamSide,
  remainder: number,
  stretches: readonly SeamStretch[],
  wanted: number,
): Finding {
  const by = `${Math.abs(remainder).toFixed(1)} mm`;
  const [long, short] = remainder > 0 ? [a, b] : [b, a];
  const at = guiltyStretch(stretches, remainder, wanted);
  const part = at && stretches.length > 1 ? ` The difference lies between ${at.from} and ${at.to}.` : '';
  const edge = lastRunWithin(long, stretches, at, remainder > 0),
    other = lastRunWithin(short, stretches, at, remainder < 0);
  const drafted = (run: { readonly piece: string }) =>
    pattern.pieces.some(p => p.name === run.piece && p.madeFor);
  const shorten = `shorten ${edge.piece}.${edge.edge} by ${by}`,
    lengthen = `lengthen ${other.piece}.${other.edge} by ${by}`;
  const remedy = drafted(edge)
    ? `draft ${edge.piece} again for the edges as they are now, or ${shorten}`
    : drafted(other)
      ? `draft ${other.piece} again for the edges as they are now, or ${lengthen}`
      : `${shorten}, or ${lengthen}`;
  const ease =
    Math.abs(wanted) > coincidenceTolerance
      ? ` with the ${Math.abs(wanted).toFixed(1)} mm of ease wanted`
      : '';
  return {
    severity: 'fault',
    code: 'seam-does-not-match',
    where: { piece: edge.piece, edge: edge.edge },
    message:
      `Seam "${seam.name}": ${sideLabel(a)} measures ${a.lengthMm.toFixed(1)} mm, ${sideLabel(b)} ` +
      `${b.lengthMm.toFixed(1)} mm; ${sideLabel(long)} is ${by} too long${ease}.${part}`,
    figures: {
      aMm: a.lengthMm,
      bMm: b.lengthMm,
      differenceMm: a.lengthMm - b.lengthMm,
      easeWantedMm: wanted,
      offMm: remainder,
    },
    remedy: `${remedy[0]!.toUpperCase()}${remedy.slice(1)}.`,
  };
}

/** The one stretch between notches that alone explains the remainder; undefined where it is shared or unclear. */
function guiltyStretch(
  stretches: readonly SeamStretch[],
  remainder: number,
  wanted: number,
): SeamStretch | undefined {
  // With ease wanted, nobody can say which stretch has too much of it; without, every stretch should be even.
  if (Math.abs(wanted) > seamTolerance) return undefined;
  return stretches.find(s => Math.abs(s.easeMm - remainder) <= seamTolerance);
}

/** The run that holds the end of the guilty stretch; else the last. */
function lastRunWithin(
  side: SeamSide,
  stretches: readonly SeamStretch[],
  at: SeamStretch | undefined,
  isA: boolean,
) {
  if (!at) return side.runs.at(-1)!.run;
  const length = (s: SeamStretch) => (isA ? s.aMm : s.bMm);
  const end = stretches.slice(0, stretches.indexOf(at) + 1).reduce((sum, s) => sum + length(s), 0);
  return side.runs.findLast(r => r.fromMm < end - coincidenceTolerance)?.run ?? side.runs[0]!.run;
}
