import type { RunsCounted } from '../joining/runs-taken.js';
import type { TakenUp } from '../pattern/types.js';
import { anyFinding, type FindingOf } from '../sayings.js';
import type { Thing } from '../telling.js';

/** A place along a seam: one of its ends, or a notch, by its name or style, on its edge. */
export type SeamPlace = 'beginning' | 'end' | Thing;

/** What an edge that is left raw is, by its own role or its piece's. */
export type RawEdge = 'neck' | 'armhole' | 'waist' | 'opening' | 'wrist' | 'hem' | 'hood' | 'collar';

/** What is told of what is measured and walked. Edges are named by `{ piece, edge }`, notches by `{ piece, edge, notch }`. */
export interface MeasureTellings {
  'seam-does-not-match': {
    readonly seam: Thing;
    readonly aMm: number;
    readonly bMm: number;
    readonly differenceMm: number;
    readonly easeWantedMm: number;
    /** By how much side a is too long with the ease wanted allowed for; negative: side b. */
    readonly offMm: number;
    readonly takenUp: TakenUp;
    readonly longer: readonly Thing[];
    readonly shorter: readonly Thing[];
    /** The edges that most likely are at fault. */
    readonly shorten: Thing;
    readonly lengthen: Thing;
    /** How often each is sewn in the seam: what changes on paper counts so many times. */
    readonly shortenTimes: number;
    readonly lengthenTimes: number;
    /** Between which places of the seam the difference lies, where that is clear. */
    readonly from?: SeamPlace;
    readonly to?: SeamPlace;
    /** A drafted piece that can be drafted again. */
    readonly redraft?: Thing;
    /** The sleeve whose cap makes one side of the seam: it can be raised or lowered to fit. */
    readonly cap?: Thing;
    readonly counted: RunsCounted;
    /** What both sides measure counted the other way, where that differs. */
    readonly otherAMm?: number;
    readonly otherBMm?: number;
    /** A strap drawn at its full width, that makes the seam agree folded along its length. */
    readonly folded?: Thing;
    /** The piece that makes the seam agree where so many of it lie on one another. */
    readonly layered?: Thing;
    readonly layers?: number;
  };
  'contour-dart-cut': { readonly dart: Thing };
  'crossing-seams-apart': {
    readonly seam: Thing;
    readonly first: Thing;
    readonly second: Thing;
    readonly aMm: number;
    readonly bMm: number;
    readonly offMm: number;
  };
  'notches-do-not-meet': {
    readonly seam: Thing;
    readonly notch: Thing;
    readonly partner: Thing;
    readonly aMm: number;
    readonly bMm: number;
    readonly differenceMm: number;
    readonly offMm: number;
  };
  'ease-the-wrong-way': {
    readonly seam: Thing;
    readonly notch: Thing;
    readonly partner: Thing;
    readonly easeMm: number;
  };
  'notch-misses-seam': {
    readonly seam: Thing;
    readonly notch: Thing;
    readonly notchMm: number;
    readonly crossingMm: number;
    readonly offMm: number;
  };
  'notch-without-partner': {
    readonly seam: Thing;
    readonly notches: readonly Thing[];
    readonly count: number;
    readonly alongMm: number;
  };
  'notches-wanted': { readonly seams: readonly Thing[]; readonly count: number; readonly longestMm: number };
  'joined-line-broken': {
    readonly closed: Thing;
    readonly first: Thing;
    readonly second: Thing;
    readonly cornerDeg: number;
    readonly stepMm: number;
    readonly takeMm: number;
    readonly blendMm: number;
    /** The corner is broken, the step is. */
    readonly corner: boolean;
    readonly step: boolean;
  };
  'turned-back-end-off': {
    readonly seam: Thing;
    readonly under: Thing;
    readonly over: Thing;
    readonly piece: Thing;
    readonly angleDeg: number;
  };
  'edge-kinked': {
    readonly edge: Thing;
    /** The edge it runs on as, where the kink lies between the two. */
    readonly next?: Thing;
    readonly count: number;
    readonly angleDeg: number;
    readonly alongMm?: number;
    /** What the edge begins at, so that the place is found from there. */
    readonly from?: Thing;
  };
  'edge-turns-back': {
    readonly edge: Thing;
    readonly spurMm: number;
    readonly alongMm: number;
    readonly from: Thing;
  };
  'edge-ends-hooked': {
    readonly edge: Thing;
    readonly hookMm: number;
    readonly beside: Thing;
  };
  'edge-stepped': {
    readonly edge: Thing;
    readonly stepMm: number;
    readonly alongMm: number;
    readonly from: Thing;
  };
  'fold-corner-not-square': {
    readonly edge: Thing;
    readonly angleDeg: number;
    readonly amountMm: number;
    readonly dips: boolean;
  };
  'small-differences': {
    readonly kinks: number;
    readonly sharpestDeg: number;
    readonly edges: readonly Thing[];
    readonly seams: readonly Thing[];
    readonly mostMm: number;
  };
  'opening-longer-than-edge': { readonly edge: Thing; readonly openingMm: number; readonly edgeMm: number };
  'piece-in-no-seam': { readonly piece: Thing };
  'edges-left-raw': { readonly role: RawEdge; readonly edges: readonly Thing[] };
  /** Of a lining or a facing. */
  'lining-edges-loose': { readonly edges: readonly Thing[] };
  /** Ties, straps, belts and cords; `guessed`: by their shape. */
  'ends-hang-loose': { readonly things: readonly Thing[]; readonly guessed: boolean };
  'no-seams': { readonly pieces: number };
}

export const finding: FindingOf<MeasureTellings> = anyFinding;
