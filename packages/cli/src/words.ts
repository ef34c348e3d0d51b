import type { LengthUnit } from '@paperhinge/geometry';
import { english, type Words, wordsOf } from '@paperhinge/sheet';

/** What the command says, in the reader's unit. */
export const wordsIn = (unit: LengthUnit): Words => wordsOf(english, unit);
