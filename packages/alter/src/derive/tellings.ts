import { sayingsOf } from '@paperhinge/geometry';

/** What is told of pieces made from an edge. */
export type DeriveTellings = Record<never, never>;

export const { refusal, finding } = sayingsOf<DeriveTellings>();
