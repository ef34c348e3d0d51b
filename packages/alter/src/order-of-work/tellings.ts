import type { Saying, Thing } from '@paperhinge/geometry';
import { anyFinding, type FindingOf } from '@paperhinge/geometry/sayings';

/** What is told of the order of work. */
export interface OrderTellings {
  /** Each must come before the next and the last before the first. */
  'order-trapped': { readonly jobs: readonly Saying[]; readonly count: number };
  /** A seam that is not listed: its two edges, each from the edge that is faced. */
  'facings-not-joined': {
    readonly seam: Thing;
    readonly edges: readonly Thing[];
    readonly from: readonly string[];
  };
  'lining-cannot-be-turned': { readonly seam: Thing; readonly gapMm: number };
}

export const finding: FindingOf<OrderTellings> = anyFinding;
