import { notchStyles } from './drawing/notches.js';
import { requireWord } from './known-words.js';
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
 * Refuses a word that an option does not know before any work is done.
 * @throws PatternError `word-not-understood` with the words there are
 */
export function requireWords(options: object, needed: readonly string[] = []): void {
  for (const [attribute, words] of Object.entries(wordsOf)) {
    const said: unknown = (options as Readonly<Record<string, unknown>>)[attribute];
    if (said === undefined && !needed.includes(attribute)) continue;
    for (const word of Array.isArray(said) ? said : [said]) requireWord(attribute, word, words);
  }
}
