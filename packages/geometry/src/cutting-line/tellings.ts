import { sayingsOf } from '../sayings.js';

/** What is told of cutting lines and offsets. */
export type CuttingLineTellings = Record<never, never>;

export const { refusal, finding } = sayingsOf<CuttingLineTellings>();
