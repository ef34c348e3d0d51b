import type { Catalogue } from './catalogue.js';

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
