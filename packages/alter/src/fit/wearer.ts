import { refusal } from './tellings.js';

/**
 * What is known of the wearer: measurements in mm by their ISO 8559-1 names (`bust girth`, `waist girth`,
 * `hip girth`, `head girth`, `upper-arm girth` ...).
 */
export type Wearer = Readonly<{ [measurement: string]: number | undefined }>;

/**
 * The body's girth at a level of the garment, in mm: the measurement `<level> girth`, hyphens and spaces alike
 * (level `upper arm` is `upper-arm girth`); undefined where it is not known.
 * @throws PatternError `measurement-not-usable`
 */
export function bodyGirth(wearer: Wearer, level: string): number | undefined {
  const wanted = plain(`${level} girth`);
  const name = Object.keys(wearer).find(name => plain(name) === wanted);
  return name === undefined ? undefined : measurementOf(wearer, name);
}

/** A measurement of the wearer in mm, where it is known. @throws PatternError `measurement-not-usable` */
export function measurementOf(wearer: Wearer, name: string): number | undefined {
  const mm = wearer[name];
  if (mm !== undefined && !(mm > 0 && mm <= largestMeasurement))
    throw refusal('measurement-not-usable', { measurement: name });
  return mm;
}

/** mm. Past any body. */
const largestMeasurement = 5000;

const plain = (name: string): string =>
  name
    .trim()
    .toLowerCase()
    .replace(/[-\s]+/g, ' ');

/**
 * Head girth in mm of an adult who has not been measured: the 99th percentile of men, the larger of the two (women
 * 611). Source: ANSUR II, every subject; US Army Natick, NATICK/TR-15/007 (2014) [derived].
 */
export const unknownHeadGirth = 614;

/** Head girth in mm of one woman in a hundred or fewer, same source: a smaller head is taken for a child's. */
export const smallestAdultHeadGirth = 521;
