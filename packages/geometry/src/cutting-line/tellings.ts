import { anyFinding, anyRefusal, type FindingOf, type NoFacts, type RefusalOf } from '../sayings.js';
import type { Thing } from '../telling.js';

/** A step over a folded mouth, the edges on both sides of it, and whether their allowances differ. */
interface FoldStep {
  readonly stepMm: number;
  readonly edges: readonly Thing[];
  readonly unlike: boolean;
}

/** What is told of cutting lines and offsets. */
export interface CuttingLineTellings {
  'dart-fold-step': { readonly dart: Thing } & FoldStep;
  'dart-mouth-bridged': { readonly dart: Thing };
  'pleat-fold-step': { readonly pleat: Thing } & FoldStep;
  /** Whether it could as well be laid the other way. */
  'pleat-mouth-bridged': { readonly pleat: Thing; readonly oneWay: boolean };
  'cutting-line-not-simple': { readonly edge: Thing };
  'corner-not-shaped': { readonly edges: readonly Thing[] };
  'allowance-too-wide': { readonly edge: Thing; readonly lostMm: number };
  /** `excessMm`: how much longer its edge is than its fold; shorter, if negative. `deepestMm`: eases itself flat. */
  'curved-hem': {
    readonly hem: Thing;
    readonly depthMm: number;
    readonly excessMm: number;
    readonly deepestMm: number;
  };
  'parallel-trimmed': { readonly part: string; readonly lostMm: number };
  /** The part where it stays open. */
  'parallel-not-closed': { readonly part: string };
  'parallel-vanished': { readonly inwards: boolean };
  'parallel-in-parts': { readonly inwards: boolean; readonly loops: number };
  'offset-both-ways': NoFacts;
  'corner-tail-dropped': { readonly edges: readonly Thing[]; readonly lengthMm: number };
  'dart-tip-dropped': { readonly edge: Thing; readonly dart: Thing; readonly lengthMm: number };
  /** A curve that was cut off before the corner was run on straight, so far. */
  'corner-guessed': { readonly edges: readonly Thing[]; readonly lengthMm: number };
  /** Whether an end of so many mm is the edge's own, or its corner's shape: neither gives the line that was drawn. */
  'corner-doubted': {
    readonly edge: Thing;
    readonly next: Thing;
    readonly lengthMm: number;
    readonly kept: boolean;
  };
  'corner-not-recovered': { readonly edges: readonly Thing[] };
  'included-allowance-too-wide': { readonly edge: Thing };
}

export const refusal: RefusalOf<CuttingLineTellings> = anyRefusal;
export const finding: FindingOf<CuttingLineTellings> = anyFinding;
