import type { Language } from './languages.js';

/**
 * What may be chosen in a sheet, as the sentences of a language say it: by the word that the sheet is written in, or,
 * where a word means another thing in one field, by `verb.field word`.
 */
export type ChoiceWords = Readonly<Record<string, string>>;

/** The words of a language for what may be chosen, loaded once they are asked for. */
export const choiceWordsOf = async (language: Language): Promise<ChoiceWords> =>
  (language === 'de' ? await import('./german/choices.js') : await import('./english/choices.js')).choices;

/** The words of a language for what is known of the wearer, loaded once they are asked for; English says the names themselves. */
export const measureWordsOf = async (language: Language): Promise<Readonly<Record<string, string>>> =>
  language === 'de' ? (await import('./german/measures.js')).measures : {};
