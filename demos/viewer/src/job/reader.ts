import type { Field } from '@paperhinge/alter/verb';
import {
  type ChoiceWords,
  choiceWordsOf,
  measureWordsOf,
  type VerbWords,
  verbWordsOf,
} from '@paperhinge/sheet/words';
import { createEffect, createSignal } from 'solid-js';
import { type Language, pageWords } from '../words.js';
import { remembered } from './remembered.js';

/** Who reads: in what unit and language, and the words that verbs and what may be chosen have in it. */
export function createReader() {
  const [unit, setUnit] = remembered<'mm' | 'cm' | 'in'>('unit', ['cm', 'in', 'mm']);
  const [language, setLanguage] = remembered<Language>(
    'language',
    navigator.language.startsWith('de') ? ['de', 'en'] : ['en', 'de'],
  );
  const [verbWords, setVerbWords] = createSignal<VerbWords>({});
  const [choiceWords, setChoiceWords] = createSignal<ChoiceWords>({});
  const [measureWords, setMeasureWords] = createSignal<Readonly<Record<string, string>>>({});
  createEffect(() => {
    void verbWordsOf(language()).then(setVerbWords);
    void choiceWordsOf(language()).then(setChoiceWords);
    void measureWordsOf(language()).then(setMeasureWords);
  });
  return { unit, setUnit, language, setLanguage, verbWords, choiceWords, measureWords };
}

/** How the reader's language says what stands in a blank. */
export interface Spoken {
  readonly and: string;
  /** What may be chosen in a field, by the word the sheet is written in. */
  readonly chosen: (field: Field, word: string) => string;
  /** A figure with its decimal sign. */
  readonly figure: (text: string) => string;
}

/** The reader's words for the blanks of a verb, or of another sentence; `at` is where a word may mean another thing. */
export const spokenBy = (
  { language, choiceWords }: Pick<ReturnType<typeof createReader>, 'language' | 'choiceWords'>,
  at: string,
): Spoken => ({
  and: pageWords[language()].and,
  chosen: ({ kind, words = [] }, word) =>
    choiceWords()[`${at} ${word}`] ??
    (kind === 'yes-or-no' || words.includes(word) ? choiceWords()[word] : undefined) ??
    word,
  figure: text => (language() === 'de' ? text.replace('.', ',') : text),
});
