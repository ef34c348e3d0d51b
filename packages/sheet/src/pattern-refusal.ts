import { anyRefusal, type PatternTellings, type RefusalOf } from '@paperhinge/geometry/sayings';

/** What a pattern itself would refuse, told of the place in the sheet that names it. */
export const refusal: RefusalOf<PatternTellings> = anyRefusal;
