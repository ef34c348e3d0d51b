/** Where a change along a seam has tapered to nothing, as shares of its length; absent: full to that end. */
export interface Taper {
  readonly from?: number;
  readonly to?: number;
}

/** What share of a change applies at a place on a seam. */
export function fullness({ from, to }: Taper, share: number): number {
  if (from === undefined && to === undefined) return 1;
  if (to === undefined) return share <= from! ? 0 : (share - from!) / (1 - from!);
  if (from === undefined) return share >= to ? 0 : 1 - share / to;
  const t = (share - from) / (to - from);
  // Full half way, and level both there and where it ends, so that the seam shows no corner.
  return t <= 0 || t >= 1 ? 0 : 16 * t * t * (1 - t) * (1 - t);
}

/** Whether the change grows evenly, so that a straight line stays straight. */
export const isEven = ({ from, to }: Taper): boolean => from === undefined || to === undefined;

/** The places strictly within a stretch of the seam at which the change begins or ends. */
export const breaksWithin = ({ from, to }: Taper, start: number, end: number): readonly number[] =>
  [from, to].filter((s): s is number => s !== undefined && s > start && s < end);
