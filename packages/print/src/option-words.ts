import type { GeometryTellings } from '@paperhinge/geometry/sayings';
import { anyRefusal, type RefusalOf } from '@paperhinge/geometry/sayings';
import { notchStyles } from './drawing/notches.js';
import { layers } from './layers.js';
import { arrangementKinds } from './pages/layout.js';
import { turnings } from './place/turning.js';
import { pageLanguages } from './words/reader.js';

/** The words that options of pages may say, by the option. */
const wordsOf: Readonly<Record<string, readonly string[]>> = {
  unit: ['mm', 'cm', 'in'],
  language: pageLanguages,
  orientation: ['portrait', 'landscape', 'auto'],
  arrangement: arrangementKinds,
  turning: turnings,
  notches: notchStyles,
  hidden: layers,
  ground: ['dark', 'light'],
  show: ['opened out', 'mirrored'],
};

/**
 * Plain JavaScript may say any word: one that none of the options knows is refused before work is done.
 * @throws PatternError `word-not-understood` with the words there are
 */
export function requireWords(options: object, needed: readonly string[] = []): void {
  for (const [attribute, words] of Object.entries(wordsOf)) {
    const said: unknown = (options as Readonly<Record<string, unknown>>)[attribute];
    if (said === undefined && !needed.includes(attribute)) continue;
    for (const word of Array.isArray(said) ? said : [said])
      if (!words.includes(word as string)) throw refusal('word-not-understood', { attribute, words });
  }
}

const refusal: RefusalOf<Pick<GeometryTellings, 'word-not-understood'>> = anyRefusal;
