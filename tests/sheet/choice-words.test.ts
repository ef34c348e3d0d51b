// What may be chosen in a sheet is said in the reader's language; the sheet itself is written in its own words.
import { verbForms } from '@paperhinge/alter';
import type { Field } from '@paperhinge/alter/verb';
import { hideable } from '@paperhinge/sheet';
import { choiceWordsOf, measureWordsOf } from '@paperhinge/sheet/words';
import { expect, test } from 'vitest';
import { measurementNames } from '../../packages/sheet/src/wearer-names.js';

const german = await choiceWordsOf('de');
const english = await choiceWordsOf('en');

/** Every word that a field of a verb may be chosen from, with the place of the field: `spread.hinge to`. */
const choicesIn = (at: string, fields: Readonly<Record<string, Field>>): readonly string[] =>
  Object.entries(fields).flatMap(([name, field]) => [
    ...(field.kind === 'choice' || field.kind === 'edges-of-pieces' ? (field.words ?? []) : []).map(
      word => `${at}.${name} ${word}`,
    ),
    ...choicesIn(`${at}.${name}`, field.fields ?? {}),
  ]);
const choices = verbForms.flatMap(({ verb, fields }) => choicesIn(verb, fields));
const wordOf = (choice: string): string => choice.slice(choice.indexOf(' ', choice.lastIndexOf('.')) + 1);

test('every choice of every verb has its German, at its own place or anywhere', () => {
  expect(choices.length).toBeGreaterThan(80);
  expect(choices.filter(choice => !(german[choice] ?? german[wordOf(choice)]))).toEqual([]);
});

test('so have yes and no, what can be hidden of a page, and what is known of a wearer', async () => {
  expect(['yes', 'no', ...hideable.map(layer => `hide ${layer}`)].filter(word => !german[word])).toEqual([]);
  const measures = await measureWordsOf('de');
  expect(measurementNames.filter(name => !measures[name])).toEqual([]);
});

test('no place is named that no verb has', () => {
  const places = new Set([...choices, ...choices.map(wordOf)]);
  const isOfVerb = (key: string): boolean => /^[a-z ]+\.\w/.test(key);
  for (const words of [german, english])
    expect(Object.keys(words).filter(key => isOfVerb(key) && !places.has(key))).toEqual([]);
});
