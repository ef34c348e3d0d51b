import { sayingsOf } from '../sayings.js';

/** What is told of curves, paths and regions. */
export type CurveTellings = Record<never, never>;

export const { refusal, finding } = sayingsOf<CurveTellings>();
