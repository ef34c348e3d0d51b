import { type VerbWords, verbWordsOf } from '@paperhinge/sheet/words';
import { createEffect, createSignal } from 'solid-js';
import type { Language } from '../words.js';
import { remembered } from './remembered.js';

/** Who reads: in what unit and language, and the words that verbs have in it. */
export function createReader() {
  const [unit, setUnit] = remembered<'mm' | 'cm' | 'in'>('unit', ['cm', 'in', 'mm']);
  const [language, setLanguage] = remembered<Language>(
    'language',
    navigator.language.startsWith('de') ? ['de', 'en'] : ['en', 'de'],
  );
  const [verbWords, setVerbWords] = createSignal<VerbWords>({});
  createEffect(() => void verbWordsOf(language()).then(setVerbWords));
  return { unit, setUnit, language, setLanguage, verbWords };
}
