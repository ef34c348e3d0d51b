import type { LengthUnit } from '@paperhinge/geometry';
import { catalogueOf, type Language, type Words, wordsOf } from '@paperhinge/sheet/words';

/** The words of the command in a language and unit; English and mm where nothing is known of either. */
export const wordsFor = async ({
  language = 'en',
  unit = 'mm',
}: {
  readonly language?: Language;
  readonly unit?: LengthUnit;
} = {}): Promise<Words> => wordsOf(await catalogueOf(language), unit);
