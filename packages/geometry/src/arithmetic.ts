/**
 * What is asked of `Math` most often, by names that a bundler can shorten: a page of one operation carries them more
 * than a hundred times. Where a nanosecond counts, as in lengths and checks of input, `Math` is asked itself.
 */
export const abs = Math.abs;
export const max = Math.max;
export const min = Math.min;
/**
 * √(x² + y²). `Math.hypot` is three times as slow, and each engine rounds it in its own way; what it spares, squares
 * beyond 1e154, no coordinate reaches.
 */
export const hypot = (x: number, y: number): number => Math.sqrt(x * x + y * y);
/** A number, as it is written out wherever it is used. */
export const infinite = 1 / 0;
