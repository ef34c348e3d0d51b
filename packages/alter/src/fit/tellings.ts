import { sayingsOf } from '@paperhinge/geometry';

/** What is told of the garment beside the wearer. */
export type FitTellings = Record<never, never>;

export const { refusal, finding } = sayingsOf<FitTellings>();
