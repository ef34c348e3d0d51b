import { refusal } from './tellings.js';

/** mm that a slash opens at its wide end and at the other. */
export type Openings = readonly [wide: number, other: number];

/**
 * mm from the wide end of a slash to the point it turns about: its other end where nothing opens there, beyond it where
 * that end opens too (the two openings are as their distances), between the ends where it overlaps.
 */
export const radiusOf = (length: number, [wide, other]: Openings): number => (length * wide) / (wide - other);

/**
 * rad by which a slash of some length turns so that its ends open by as much, as chords.
 * @param edge the edge that opens, for the refusal
 * @throws PatternError `spread-too-wide`
 */
export function turnOf(length: number, openings: Openings, edge: string): number {
  const [wide, other] = openings;
  if (wide === 0 && other === 0) return 0;
  // Where only the far end opens, the slash turns about its wide end.
  const share = wide === 0 ? -other / (2 * length) : wide / (2 * radiusOf(length, openings));
  if (Math.abs(share) <= 1) return 2 * Math.asin(share);
  const byMm = Math.max(Math.abs(wide), Math.abs(other));
  throw refusal('spread-too-wide', { slashMm: length, byMm }, { edge });
}
