import type { Garment } from '../job/garment.js';

/** What the sheet says of its pages. */
export const printOf = (garment: Garment): Readonly<Record<string, unknown>> =>
  (garment.values().print ?? {}) as Readonly<Record<string, unknown>>;

/** The papers it is printed on. */
export function papersOf(garment: Garment): readonly string[] {
  const { paper = 'a4' } = printOf(garment);
  return (Array.isArray(paper) ? paper : [paper]).map(String);
}
