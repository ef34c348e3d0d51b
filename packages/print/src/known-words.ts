import type { GeometryTellings } from '@paperhinge/geometry/sayings';
import { anyRefusal, type RefusalOf } from '@paperhinge/geometry/sayings';

/** Plain JavaScript may say any word. @throws PatternError `word-not-understood` with the words there are */
export function requireWord(attribute: string, said: unknown, words: readonly string[]): void {
  if (!words.includes(said as string)) throw refusal('word-not-understood', { attribute, words });
}

const refusal: RefusalOf<Pick<GeometryTellings, 'word-not-understood'>> = anyRefusal;
