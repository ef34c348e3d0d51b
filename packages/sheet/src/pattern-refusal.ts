import { type PatternTellings, sayingsOf } from '@paperhinge/geometry/sayings';

/** What a pattern itself would refuse, told of the place in the sheet that names it. */
export const { refusal } = sayingsOf<PatternTellings>();
