/**
 * What is asked of `Math` most often, by names that a bundler can shorten: a page of one operation carries them more
 * than a hundred times. Where a nanosecond counts, as in lengths and checks of input, `Math` is asked itself.
 */
export const abs = Math.abs;
export const hypot = Math.hypot;
export const max = Math.max;
export const min = Math.min;
/** A number, as it is written out wherever it is used. */
export const infinite = 1 / 0;
