import { type Language, pageWords } from '../words.js';
import type { Outcome } from './laying.js';

/** Why something was not laid on the table, in words; nothing where it was. */
export const whyNot = (outcome: Outcome, language: Language): string =>
  outcome === 'laid' ? '' : 'refused' in outcome ? outcome.refused : pageWords[language].not[outcome.not];
