import { type Grey, halved } from './picture.js';

/** Dots across of the picture that blur is judged in: noise has cancelled there, and targets still show. */
const judgedWidth = 1000;
/** Of the steps of brightness over eight dots: what a sharp picture has of them over one. A lens out of focus leaves less. */
const sharpShare = 0.28;
/** Of all steps the largest thousandth: those at edges. */
const largest = 0.999;

/** Whether a picture has no sharp edge anywhere. */
export function isBlurred(grey: Grey): boolean {
  let small = grey;
  while (small.width > judgedWidth) small = halved(small);
  const over = (reach: number) => {
    const counts = new Uint32Array(256);
    let all = 0;
    for (let y = 0; y < small.height; y++)
      for (let x = reach; x < small.width; x++) {
        const k = y * small.width + x;
        counts[Math.abs(small.values[k]! - small.values[k - reach]!)]!++;
        all++;
      }
    let step = 255,
      above = counts[255]!;
    while (step > 0 && above < all * (1 - largest)) above += counts[--step]!;
    return step;
  };
  return over(1) < sharpShare * over(8);
}
