import type { Thing } from '@paperhinge/geometry';
import { anyFinding, type FindingOf } from '@paperhinge/geometry/sayings';

interface OpeningChanged {
  readonly edge: Thing;
  readonly openMm: number;
  readonly wasMm: number;
  readonly edgeMm: number;
}

/** What is told of things that a step left no place for, whoever wrote the step. */
export interface BecameTellings {
  'notch-cut-away': { readonly notch?: string | undefined; readonly edge: Thing; readonly atMm: number };
  'edge-cut-away': { readonly edge: Thing };
  'line-cut-away': { readonly line: Thing };
  'mark-cut-away': { readonly mark: Thing };
  /** It lost a whole side, with these edges. */
  'seam-gone': { readonly seam: Thing; readonly edges: readonly Thing[] };
  'seam-run-gone': { readonly seam: Thing; readonly edges: readonly Thing[] };
  /** Open from end to end before and after; lengths of the opening and of the edge then and now. */
  'opening-follows': OpeningChanged;
  /** Of a stated length, which it keeps. */
  'opening-kept': OpeningChanged;
  'fastening-gone': { readonly fastening: Thing; readonly edge: Thing };
}

export const finding: FindingOf<BecameTellings> = anyFinding;
