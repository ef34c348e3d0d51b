import type { EdgeRef, Finding, Pattern, Saying } from '@paperhinge/geometry';
import type { Became } from './became/became.js';

/** What one step did to a pattern. The pattern given is never changed; every operation returns one of these. */
export interface Alteration {
  readonly pattern: Pattern;
  /** What was done, with its figures: "The bust dart of the front (13.2°) was closed into the hem, which opened by …". */
  readonly did: Saying | string;
  readonly findings: readonly Finding[];
  /** What became of what; absent: `perform` tells it by names and lengths. */
  readonly became?: Became;
  /** Edges whose notches this step set anew, so that the old ones are not missed. */
  readonly notchedAnew?: readonly EdgeRef[];
  /** Pieces made from an edge by this step. */
  readonly derived?: readonly Derived[];
  /** What this step adds to the order of work. */
  readonly making?: readonly MakingNote[];
}

/** An alteration that says what became of what. */
export type Said = Alteration & { readonly became: Became };

/** An alteration of what is there: it drafts nothing, and says what became of what. */
export type Redrawn = Omit<Said, 'derived'> & { readonly derived?: never };

/** The kinds of piece that are made from an edge. */
export type DerivedKind =
  | 'band'
  | 'strip'
  | 'binding'
  | 'facing'
  | 'stay'
  | 'cuff'
  | 'collar'
  | 'hood'
  | 'pocket'
  | 'placket'
  | 'lining'
  | 'interfacing';

/** A piece made from an edge, with the figures a maker cuts and marks it by. Lengths in mm. */
export interface Derived {
  readonly name: string;
  readonly kind: DerivedKind;
  /** Cut length; of a facing or stay, that of its outer edge. */
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly fabric: string;
  readonly along: readonly EdgeRef[];
  /** Stitching length of the edges that one of it is sewn to, when it was drafted. */
  readonly edgeMm: number;
  /** How many are cut, each for edges of its own, as a pair of cuffs; absent: one. All lengths are those of one. */
  readonly count?: number;
  /** Further exact figures by name (`gapMm`, `ratioPercent`, `stretchPercent`, `joinMm`, `quarterMm` ...). */
  readonly figures: Readonly<Record<string, number>>;
}

/** One job of the sewing and the jobs that must be done before it, each with its reason. */
export interface MakingNote {
  /** Names the job for others to refer to, e.g. `seam shoulder`, `dart bust`, `band neckband`, `inset front.inset`. */
  readonly job: string;
  /** What to do, in one sentence. */
  readonly text: Saying | string;
  readonly after: readonly { readonly job: string; readonly because: Saying | string }[];
}
