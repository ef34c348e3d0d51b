import { sayingsOf } from '../sayings.js';

/** What is told of what is measured and walked. */
export type MeasureTellings = Record<never, never>;

export const { refusal, finding } = sayingsOf<MeasureTellings>();
