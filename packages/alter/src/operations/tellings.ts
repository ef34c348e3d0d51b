import { sayingsOf } from '@paperhinge/geometry';

/** What is told of the alterations and what they draw anew. */
export type OperationTellings = Record<never, never>;

export const { refusal, finding } = sayingsOf<OperationTellings>();
