import { cuttingLine } from '../cutting-line/cutting-line.js';
import { locating } from '../errors.js';
import { runLength } from '../joining/runs-taken.js';
import { pathLength } from '../path/length.js';
import { pathEnd, pathStart } from '../path/path.js';
import { dartsOf, edgeNamed, edgeNames, edgePath, outlinePath, pleatsOf } from '../pattern/outline.js';
import { requireWhole } from '../pattern/require-whole.js';
import type { Dart, Fastening, FasteningKind, Pattern, Piece, Pleat, TakenUp } from '../pattern/types.js';
import { signedArea } from '../region/area.js';
import { angleBetween, subtract } from '../vector.js';
import { measureSeam } from './walk-seam.js';

/** What a pattern measures, each piece once, as drawn; the shape that `measure --json` and the record share. */
export interface PatternMeasures {
  readonly pattern: string;
  readonly pieces: Readonly<Record<string, PieceMeasures>>;
  readonly seams: Readonly<Record<string, SeamMeasures>>;
  /** Absent where there are none. */
  readonly fastenings?: Readonly<Record<string, FasteningMeasures>>;
}

/** One piece as drawn: area with its darts open in mm², edges and darts by name, and its cutting line. */
export interface PieceMeasures {
  /** Within the stitching line, darts open: their intake lies outside. */
  readonly areaMm2: number;
  readonly edges: Readonly<Record<string, { readonly lengthMm: number; readonly allowanceMm: number }>>;
  readonly darts: Readonly<Record<string, DartMeasures>>;
  /** Absent where there are none. */
  readonly pleats?: Readonly<Record<string, PleatMeasures>>;
  readonly cuttingLine: { readonly lengthMm: number; readonly areaMm2: number };
}

/** A dart: the angle between the chords of its legs in degrees, the legs along the curve in mm, clockwise. */
export interface DartMeasures {
  /** Between the straight lines from the apex to the two ends of the mouth. */
  readonly angleDeg: number;
  /** Along the legs, in clockwise order. */
  readonly legMm: readonly [number, number];
}

/** A pleat: what it takes up of its edge, and how far down it is stitched. Lengths in mm. */
export interface PleatMeasures {
  readonly takenUpMm: number;
  readonly stitchedMm: number;
}

/** A fastening: the length of the opening it closes, and of an elastic or cord its relaxed length. In mm. */
export interface FasteningMeasures {
  readonly kind: FasteningKind;
  readonly lengthMm: number;
  readonly relaxedMm?: number;
}

/** One seam as drawn: both sides in mm, a − b, the ease wanted of that, and whether it matches within its tolerance. */
export interface SeamMeasures {
  readonly aMm: number;
  readonly bMm: number;
  /** a − b. */
  readonly differenceMm: number;
  readonly easeWantedMm: number;
  /** The difference is the ease wanted, within the tolerance of the seam, else of the pattern, else 0.8 mm. */
  readonly matches: boolean;
  /** How the difference is taken up, where the seam says. */
  readonly takenUp?: TakenUp;
  /** Where the seam or the pattern says. */
  readonly toleranceMm?: number;
}

/**
 * Measures a pattern: lengths in mm (arc length, within `lengthTolerance`), areas in mm², angles in degrees. Keys stand in pattern
 * order; any name is safe as a key.
 * @throws PatternError `unknown-piece`, `unknown-edge`, `empty-seam`; what `requireWhole` and the cutting line throw
 */
export function measurePattern(pattern: Pattern): PatternMeasures {
  requireWhole(pattern);
  return {
    pattern: pattern.name,
    pieces: record(pattern.pieces, piece =>
      locating({ piece: piece.name }, () => measurePiece(piece, pattern)),
    ),
    seams: record(pattern.seams, seam => {
      const { aMm, bMm, differenceMm, easeWantedMm, matches } = measureSeam(pattern, seam);
      const { takenUp, tolerance = pattern.tolerance } = seam;
      return {
        aMm,
        bMm,
        differenceMm,
        easeWantedMm,
        matches,
        ...(takenUp === undefined ? {} : { takenUp }),
        ...(tolerance === undefined ? {} : { toleranceMm: tolerance }),
      };
    }),
    ...(pattern.fastenings?.length
      ? { fastenings: record(pattern.fastenings, fastening => measureFastening(pattern, fastening)) }
      : {}),
  };
}

const measureFastening = (
  pattern: Pattern,
  { kind, length, along, relaxed }: Fastening,
): FasteningMeasures => ({
  kind,
  lengthMm: length ?? runLength(pattern, along),
  ...(relaxed === undefined ? {} : { relaxedMm: relaxed }),
});

function measurePiece(piece: Piece, pattern: Pattern): PieceMeasures {
  const cutting = cuttingLine(piece, pattern).path;
  return {
    areaMm2: signedArea(outlinePath(piece.outline)),
    edges: Object.fromEntries(
      edgeNames(piece).map(name => [
        name,
        { lengthMm: pathLength(edgePath(piece, name)), allowanceMm: edgeNamed(piece, name).allowance },
      ]),
    ),
    darts: record(dartsOf(piece), measureDart),
    ...(pleatsOf(piece).length === 0 ? {} : { pleats: record(pleatsOf(piece), measurePleat) }),
    cuttingLine: { lengthMm: pathLength(cutting), areaMm2: signedArea(cutting) },
  };
}

function measureDart({ legs, apex }: Dart): DartMeasures {
  const a = subtract(pathStart(legs[0]), apex),
    b = subtract(pathEnd(legs[1]), apex);
  return {
    angleDeg: (Math.abs(angleBetween(a, b)) * 180) / Math.PI,
    legMm: [pathLength(legs[0]), pathLength(legs[1])],
  };
}

const measurePleat = ({ mouth, stitched }: Pleat): PleatMeasures => ({
  takenUpMm: pathLength(mouth),
  stitchedMm: stitched,
});

/** By name, in the order given. `Object.fromEntries` makes own keys of every name, `__proto__` included. */
const record = <T extends { readonly name: string }, R>(items: readonly T[], measure: (item: T) => R) =>
  Object.fromEntries(items.map(item => [item.name, measure(item)])) as Readonly<Record<string, R>>;
