import { english } from './words/english.js';
import { german } from './words/german.js';
import type { PageWords } from './words/page-words.js';

/** What the page says, by language. */
export const pageWords: Readonly<Record<'en' | 'de', PageWords>> = { en: english, de: german };
