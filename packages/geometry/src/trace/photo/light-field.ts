import { levelHold } from '../../tolerance.js';
import { solvedDamped } from './least-squares.js';

/** How light falls on a floor: the logarithm of what each channel gains at a place, x and y from −1 to 1. */
export interface LightField {
  at(x: number, y: number, channel: number): number;
}

/** A place of the map and the logarithms of the three channels there. */
export interface LightSample {
  readonly x: number;
  readonly y: number;
  readonly log: readonly [number, number, number];
}

/** A sample, and the picture it is taken from, from 1. */
export interface SeenSample extends LightSample {
  readonly picture: number;
}

/** Samples without which a picture has no field of its own. */
const ownSamples = 60;

/**
 * A field for each picture of a floor, by its number: each was taken in its own light. Where samples say too little of
 * one, that of all together.
 */
export function lightFields(
  samples: readonly SeenSample[],
  pictures: number,
  degree: number,
): readonly LightField[] {
  const together = lightField(samples, degree);
  return Array.from({ length: pictures + 1 }, (_, picture) => {
    const own = pictures > 1 ? samples.filter(s => s.picture === picture) : [];
    return own.length < ownSamples ? together : lightField(own, degree);
  });
}

const terms = (x: number, y: number, degree: number): readonly number[] => {
  const out: number[] = [];
  for (let d = 0; d <= degree; d++) for (let k = 0; k <= d; k++) out.push(x ** (d - k) * y ** k);
  return out;
};

/** Of a sample's weight: keeps what samples say nothing of level. */
const level = 0.002;

/**
 * A field through samples, in least squares, as a polynomial of a degree (2: a lamp, a window, a lens dark at its rim;
 * 3 and 4 where many samples lie everywhere).
 */
export function lightField(samples: readonly LightSample[], degree: number): LightField {
  const n = terms(0, 0, degree).length;
  const matrix = new Float64Array(n * n);
  const rights = [0, 1, 2].map(() => new Float64Array(n));
  for (const { x, y, log } of samples) {
    const t = terms(x, y, degree);
    for (let i = 0; i < n; i++) {
      for (let j = 0; j <= i; j++) matrix[i * n + j]! += t[i]! * t[j]!;
      for (let c = 0; c < 3; c++) rights[c]![i]! += t[i]! * log[c]!;
    }
  }
  for (let i = 0; i < n; i++) matrix[i * n + i]! += i === 0 ? levelHold : (level * samples.length) / n;
  const fits = rights.map(right => solvedDamped(matrix, right, 0) ?? new Float64Array(n));
  return {
    at(x, y, channel) {
      const c = fits[channel]!;
      // Horner by hand up to the fourth degree would be faster; this is not where time goes.
      let sum = 0,
        k = 0;
      for (let d = 0; d <= degree; d++) for (let m = 0; m <= d; m++) sum += c[k++]! * x ** (d - m) * y ** m;
      return sum;
    },
  };
}
