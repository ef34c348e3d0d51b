import { english } from './words/english.js';
import { german } from './words/german.js';
import type { PageWords } from './words/page-words.js';

export type Language = 'en' | 'de';

/** What the page says, by language. */
export const pageWords: Readonly<Record<Language, PageWords>> = { en: english, de: german };
