import { sayingsOf } from '@paperhinge/geometry';

/** What is told of the alteration sheet and the files of a job. */
export type SheetTellings = Record<never, never>;

export const { refusal, finding } = sayingsOf<SheetTellings>();
