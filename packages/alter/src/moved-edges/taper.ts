/** How a change along a seam grows and fades; places are shares of the seam's length. */
export type Taper =
  /** The same all along. */
  | { readonly kind: 'whole' }
  /** `atFrom` of it up to `from`, `atTo` of it beyond `to`, growing evenly between; `from` may lie after `to`. */
  | {
      readonly kind: 'ends';
      readonly from: number;
      readonly to: number;
      readonly atFrom: number;
      readonly atTo: number;
    }
  /** Nothing at either place and outside them, all of it half way, running smoothly to nothing. */
  | { readonly kind: 'between'; readonly from: number; readonly to: number };

/** What share of a change applies at a place on a seam. */
export function fullness(taper: Taper, share: number): number {
  if (taper.kind === 'whole') return 1;
  const { from, to } = taper;
  const t = (share - from) / (to - from);
  if (taper.kind === 'ends') {
    if (t <= 0) return taper.atFrom;
    return t >= 1 ? taper.atTo : taper.atFrom + (taper.atTo - taper.atFrom) * t;
  }
  // Full half way, and level both there and where it ends, so that the seam shows no corner.
  return t <= 0 || t >= 1 ? 0 : 16 * t * t * (1 - t) * (1 - t);
}

/** Whether the change grows evenly, so that a straight line stays straight. */
export const isEven = (taper: Taper): boolean => taper.kind !== 'between';

/** The places strictly within a stretch of the seam at which the change begins or ends. */
export const breaksWithin = (taper: Taper, start: number, end: number): readonly number[] =>
  taper.kind === 'whole' ? [] : [taper.from, taper.to].filter(s => s > start && s < end);
