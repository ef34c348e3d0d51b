// How likely two lines are to be of their lengths, if they are sewn to one another and if they are not.

/** Chances to the mm that lines which are sewn differ by so much; differences in mm, first less second. */
export type Easing = (differenceMm: number, lengthMm: number) => number;

const laplace = (d: number, spread: number): number => Math.exp(-Math.abs(d) / spread) / (2 * spread);
const even = (d: number, from: number, to: number): number => (d >= from && d <= to ? 1 / (to - from) : 0);

/** Drawn to match: traced paper is a millimetre out now and then. */
export const exact: Easing = (d, length) =>
  0.8 * laplace(d, 0.3) + 0.15 * laplace(d, 2) + 0.05 * laplace(d, Math.max(2, 0.01 * length));
/** A back shoulder may be eased into the front by up to 12 mm (common practice, no source). */
export const slightlyEased: Easing = (d, length) => 0.85 * exact(d, length) + 0.15 * even(Math.abs(d), 0, 12);
/** A cap is 0 to 45 mm longer than its armhole, and a puffed one by up to half of it (common practice, no source). */
export const capEased: Easing = (d, length) =>
  0.3 * exact(d, length) + 0.6 * even(d, -3, 45) + 0.1 * even(d, 45, Math.max(46, length / 2));
/** Plain, or gathered to up to twice its length. */
export const gathered: Easing = (d, length) => 0.7 * exact(d, length) + 0.3 * even(d, 0, length);
/** A waistband, cuff or collar with what laps over, or stretched by up to a third onto cloth; common practice, no source. */
export const lapped: Easing = (d, length) => 0.5 * exact(d, length) + 0.5 * even(d, -0.25 * length, 60);
/** A sleeve is gathered or pleated into its cuff by up to a good third, or the cuff laps over. */
export const cuffed: Easing = (d, length) => 0.5 * exact(d, length) + 0.5 * even(d, -0.4 * length, 60);

/** A collar may end where the stand's overlap begins. */
export const lapsUnder: Easing = (d, length) => 0.5 * exact(d, length) + 0.5 * even(d, -35, 0);

/** To the mm, that two lines of any pattern differ by so little: lengths of one garment spread over a third of theirs. */
export const byChance = (lengthMm: number): number => 1 / (2 * Math.max(50, 0.35 * lengthMm));
