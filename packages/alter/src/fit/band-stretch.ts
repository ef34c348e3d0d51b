import type { Finding, Pattern } from '@paperhinge/geometry';
import { requireDistance, requireWhole } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { lengthInGarment } from '@paperhinge/geometry/measure';
import type { Derived } from '../alteration.js';
import { bandRecovery } from './band-recovery.js';
import { stretchOf } from './cloth.js';
import { stillThere } from './still-there.js';
import { finding } from './tellings.js';

/** What a band is sewn to, and how much of it there is to sew; lengths in mm. */
export interface BandLengths {
  readonly name: string;
  /** E: stitching length of the edges it is sewn to, over the whole garment or, of a pair, on one side. */
  readonly edgeMm: number;
  /** Cut length of the band. */
  readonly lengthMm: number;
  readonly joinMm: number;
  /** G: straight distance that the band bridges unsewn and unstretched. */
  readonly gapMm: number;
}

/** Wear needs some stretch kept in hand: a band uses at most this share of its cloth's (common practice, no source). */
const bandStretchForWear = 0.8;

/**
 * Per cent by which the sewn part of a band is stretched: E / (length − 2 join − G) − 1; negative where it is eased.
 * @throws PatternError `not-a-number`, `coordinate-out-of-range`
 */
export function stretchOfBand({ edgeMm, lengthMm, joinMm, gapMm }: BandLengths): number {
  for (const mm of [edgeMm, lengthMm, joinMm, gapMm]) requireDistance(mm, 'length');
  return (edgeMm / (lengthMm - 2 * joinMm - gapMm) - 1) * 100;
}

/**
 * What is found of the bands of a pattern: the drafted ones each against its own cloth and its edges as they are now,
 * all against how far their cloth springs back.
 */
export function bandStretch(pattern: Pattern, derived: readonly Derived[]): readonly Finding[] {
  requireWhole(pattern);
  return [
    ...stillThere(pattern, derived)
      .filter(d => d.kind === 'band')
      .flatMap(({ name, lengthMm, fabric, along, count = 1, figures: { joinMm = 0, gapMm = 0 } }) => {
        const edgeMm = along.reduce((sum, ref) => sum + lengthInGarment(pattern, ref), 0) / count;
        return bandStretchFindings({ name, edgeMm, lengthMm, joinMm, gapMm }, stretchOf(pattern, fabric));
      }),
    ...bandRecovery(pattern),
  ];
}

/** A fault where a band must stretch by more than its cloth gives, a warning above 80 % of that. Stretch in per cent. */
export function bandStretchFindings(band: BandLengths, clothPercent: number): readonly Finding[] {
  const neededPercent = stretchOfBand(band);
  requireDistance(clothPercent, 'share');
  const sewnMm = band.lengthMm - 2 * band.joinMm - band.gapMm;
  // Compared as lengths, so that rounding far below a millimetre decides nothing.
  const reaches = (percent: number) =>
    band.edgeMm <= sewnMm * (1 + percent / 100) + tolerances.coincidenceTolerance;
  if (reaches(clothPercent * bandStretchForWear)) return [];
  const least = band.edgeMm / (1 + (clothPercent * bandStretchForWear) / 100) + band.gapMm + 2 * band.joinMm;
  const facts = {
    band: { piece: band.name },
    neededPercent,
    clothPercent,
    edgeMm: band.edgeMm,
    sewnMm,
    leastMm: least,
  };
  const where = { piece: band.name };
  return reaches(clothPercent)
    ? [finding('warning', 'band-near-stretch', where, { ...facts, usablePercent: bandStretchForWear * 100 })]
    : [finding('fault', 'band-beyond-stretch', where, facts)];
}
