import { sayingsOf } from '../sayings.js';

/** What is told of drawings that are read. */
export type SvgTellings = Record<never, never>;

export const { refusal, finding } = sayingsOf<SvgTellings>();
