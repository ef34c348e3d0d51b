// What is said to a maker, by language and unit, without the reader and runner of sheets. Every name is listed.

export { commandRefusal, commandSaying, refuseSheet } from '../command-sayings.js';
export type { Spoken } from '../faults.js';
export { faultsIn, SheetFaults } from '../faults.js';
export type { FileKind } from '../file-kind.js';
export type { Catalogue, Sentences, Tellings, Told } from './catalogue.js';
export type { ChoiceWords } from './choices.js';
export { choiceWordsOf, measureWordsOf } from './choices.js';
export { english } from './english/index.js';
export type { Language, VerbWords } from './languages.js';
export { catalogueOf, languages, verbWordsOf } from './languages.js';
export type { Grammar, Say } from './say.js';
export type { Entries, Words } from './words.js';
export { wordsOf } from './words.js';
