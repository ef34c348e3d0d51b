import type { Saying, Thing } from '@paperhinge/geometry';
import {
  anyFinding,
  anyRefusal,
  anySaying,
  type FindingOf,
  type NoFacts,
  type RefusalOf,
  type SayingOf,
} from '@paperhinge/geometry/sayings';

/** What is told of cuts, swings and what they leave. A slash is a saying of its own, see {@link HingeSentences}. */
export interface HingeTellings {
  /** It is double-pointed; `names`: the darts that open at an edge. */
  'dart-within-piece': { readonly piece: string; readonly name: string; readonly names: readonly string[] };
  'unknown-dart': { readonly piece: string; readonly name: string; readonly names: readonly string[] };
  /** It would cross this edge, or lie outside altogether. */
  'slash-leaves-piece': { readonly slash: Saying; readonly edge?: Thing };
  'slash-crosses-dart': { readonly slash: Saying; readonly dart: Thing };
  'slash-crosses-pleat': { readonly slash: Saying; readonly pleat: Thing };
  'slashes-cross': { readonly first: Saying; readonly second: Saying };
  'slash-twice': { readonly slash: Saying };
  'slashes-too-near': { readonly first: Saying; readonly second: Saying };
  'slash-too-short': NoFacts;
  'slash-not-attached': { readonly slash: Saying };
  'dart-torn': { readonly dart: Thing };
  'dart-overclosed': { readonly dart: Thing };
  'pivot-out-of-reach': { readonly dart: Thing };
  'overlap-too-wide': { readonly stripMm: number };
  'outline-tangled': { readonly piece: string };
  'outline-open': { readonly gapMm: number };
  /** Slashes at `count` places; absent: one. */
  'edge-bridged': Opened;
  'edge-overlapped': Opened & { readonly stepMm: number };
  'hinge-kink': { readonly edge: Thing; readonly kinkDeg: number; readonly count?: number };
  'dart-step': { readonly dart: Thing; readonly stepMm: number };
  'fold-bent': { readonly edge: Thing; readonly offMm: number };
  'lines-parted': { readonly lines: readonly Thing[] };
  'grain-line-shortened': { readonly line: Thing; readonly keptMm: number };
  'grain-line-stays': { readonly line: Thing };
}

interface Opened {
  readonly edge: Thing;
  /** Negative: by so much its two sides overlapped. */
  readonly openedMm: number;
  readonly kinkDeg: number;
  readonly count?: number;
}

/** How a slash is spoken of within another sentence. */
export interface HingeSentences {
  slash: { readonly from: Saying; readonly to: Saying };
  'slash-at-edge': { readonly edge: Thing; readonly alongMm: number };
  'slash-at-dart': { readonly dart: Thing };
  'slash-at-point': NoFacts;
}

export const refusal: RefusalOf<HingeTellings> = anyRefusal;
export const finding: FindingOf<HingeTellings> = anyFinding;
export const saying: SayingOf<HingeSentences> = anySaying;
