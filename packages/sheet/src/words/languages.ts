import type { Catalogue } from './catalogue.js';

/** What a verb does and the sentence that says it, where the language has its own for it. */
export type VerbWords = Readonly<Record<string, { readonly does: string; readonly sentence: string }>>;

/** The languages there are catalogues for, by their tags. */
export const languages = ['en', 'de'] as const;
/** The tag of a language that a sheet may be answered in. */
export type Language = (typeof languages)[number];

/** The catalogue of a language, loaded once it is asked for. */
export async function catalogueOf(language: Language): Promise<Catalogue> {
  return language === 'de'
    ? (await import('./german/index.js')).german
    : (await import('./english/index.js')).english;
}

/** The verbs of a language, loaded once they are asked for; none where the verbs' own declarations speak it. */
export const verbWordsOf = async (language: Language): Promise<VerbWords> =>
  language === 'de' ? (await import('./german/verbs.js')).verbs : {};
