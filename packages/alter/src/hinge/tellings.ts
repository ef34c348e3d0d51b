import { sayingsOf } from '@paperhinge/geometry';

/** What is told of cuts, swings and what they leave. */
export type HingeTellings = Record<never, never>;

export const { refusal, finding } = sayingsOf<HingeTellings>();
