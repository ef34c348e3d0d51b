import type { Catalogue } from '../catalogue.js';
import { grammar } from './grammar.js';
import { pattern } from './pattern.js';

/** What the project says, in English. */
export const english: Catalogue = {
  grammar,
  tellings: { ...pattern },
  sentences: { said: ({ text }) => text },
};
