// What the table shows besides the pieces as they lie: pages, a seam that is walked, the garment whole, cloth, a job of the making.

import type { ToldFinding } from '@paperhinge/geometry';
import type { Box } from './view.js';

/** Which pages a paper makes, and where the pieces lie on them; mm of the large sheet. */
export interface PagesPicture {
  readonly paper: string;
  readonly pages: readonly {
    readonly kind: 'cover' | 'tile';
    readonly label: string;
    readonly window: Box;
  }[];
  readonly pieces: readonly {
    readonly piece: string;
    readonly matrix: readonly [number, number, number, number, number, number];
  }[];
  readonly findings: readonly ToldFinding[];
}

/** One stitch of a seam that is walked: which pieces meet, and what lays b beside a there. */
export interface Station {
  readonly a: string;
  readonly b: string;
  /** SVG order: carries b's own mm into a's. */
  readonly matrix: readonly [number, number, number, number, number, number];
  /** In a's own mm. */
  readonly at: readonly [number, number];
  /** mm walked on either side. */
  readonly alongA: number;
  readonly alongB: number;
}

export interface Walk {
  readonly seam: string;
  readonly title: string;
  readonly aMm: number;
  readonly bMm: number;
  /** a with the gaps that b bridges. */
  readonly reachMm: number;
  /** a − b beyond the ease wanted, in mm, and in words. */
  readonly offMm: number;
  readonly off: string;
  readonly ease: string;
  readonly matches: boolean;
  readonly stations: readonly Station[];
  /** Where notches are passed, as a share of the way; of a pair, how far apart they are. */
  readonly notches: readonly {
    readonly share: number;
    readonly side: 'a' | 'b' | 'both';
    readonly apart: string;
  }[];
  /** The lines that run on across the seam's ends, and the corner each makes. */
  readonly ends: readonly { readonly text: string; readonly deg: number }[];
}

/** A piece of the garment laid out whole: its stitching line where it lies then. */
export interface Joined {
  readonly piece: string;
  readonly path: string;
  readonly box: Box;
  /** SVG order: carries the piece's own mm to where it lies. */
  readonly matrix: readonly [number, number, number, number, number, number];
}

/** The garment laid out whole, after and before. */
export interface Whole {
  readonly after: readonly Joined[];
  readonly before: readonly Joined[];
}

/** A piece of cloth as it lies under what is cut of it, x across it and y along it. */
export interface LaidCloth {
  /** "Buy 1.25 m of main 150 cm wide, opened out.", or which piece no cloth of that width holds. */
  readonly told: string;
  readonly isTooNarrow: boolean;
  readonly name: string;
  /** mm; none where it is too narrow. */
  readonly acrossMm: number;
  readonly lengthMm: number;
  readonly cut: readonly {
    readonly title: string;
    readonly path: string;
    readonly middle: readonly [number, number];
    /** mm across, and along the cloth. */
    readonly width: number;
    readonly height: number;
  }[];
}

/** What is joined once a job of the making is done, as it lies flat then. */
export interface Sewn {
  readonly pieces: readonly Joined[];
  /** The edges and darts that the job is done to. */
  readonly lit: readonly string[];
}

/** mm from one point of a piece to another. */
export interface Measured {
  readonly straightMm: number;
  readonly along: readonly { readonly edge: string; readonly mm: number }[];
}
