import type { Saying } from '@paperhinge/geometry';
import {
  anyFinding,
  anyRefusal,
  anySaying,
  type FindingOf,
  type RefusalOf,
  type SayingOf,
} from '@paperhinge/geometry/sayings';

/** An amount by what its field takes; one of them is there. */
interface Amount {
  readonly amountMm?: number;
  readonly amountDeg?: number;
  readonly amountPercent?: number;
}
/** What was measured, in mm or, of an area, in mm². */
interface Measured {
  readonly isMm?: number;
  readonly isMm2?: number;
}

/** What is told of amounts that are given by what they are to bring about. */
export interface GoalTellings {
  'amount-found': Amount & Measured & { readonly field: string; readonly measure: Saying };
  /** The nearest that any amount in range comes, and that amount. */
  'goal-not-reached': Amount & Measured & { readonly field: string; readonly measure: Saying };
  'too-many-goals': { readonly fields: readonly string[]; readonly most: number };
  'goal-level-unknown': { readonly level: string; readonly levels: readonly string[] };
  'goal-body-unknown': { readonly level: string; readonly measurements: readonly string[] };
  'goal-hem-unknown': { readonly piece: string; readonly edge: string };
}

/** What can be measured, in words: "the girth at the bust". */
export interface GoalSentences {
  'measure-girth': { readonly level: string };
  'measure-ease': { readonly level: string };
  'measure-seam': { readonly seam: string };
  'measure-seam-ease': { readonly seam: string };
  'measure-edges': { readonly edges: readonly { readonly piece: string; readonly edge: string }[] };
  'measure-sweep': { readonly edge: { readonly piece: string; readonly edge: string } };
  'measure-neck': Readonly<Record<string, never>>;
  'measure-height': { readonly piece: string };
  'measure-width': { readonly piece: string };
  'measure-area': { readonly piece: string };
}

export const refusal: RefusalOf<GoalTellings> = anyRefusal;
export const finding: FindingOf<GoalTellings> = anyFinding;
export const saying: SayingOf<GoalSentences> = anySaying;
