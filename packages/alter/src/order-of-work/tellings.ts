import { sayingsOf } from '@paperhinge/geometry';

/** What is told of the order of work. */
export type OrderTellings = Record<never, never>;

export const { refusal, finding } = sayingsOf<OrderTellings>();
