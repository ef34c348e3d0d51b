import { sayingsOf } from '@paperhinge/geometry/sayings';

/** What is told of pages and what stands on them. */
export type PrintTellings = Record<never, never>;

export const { refusal, finding } = sayingsOf<PrintTellings>();
