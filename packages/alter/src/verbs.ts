import { closeDartVerb } from './operations/close-dart.js';
import { lengthenVerb, shortenVerb } from './operations/shorten.js';
import type { AnyVerb } from './verb/verb.js';

/** Every trade verb, in the order in which a reference lists them. To add one: its file, its test, and its line here. */
export const verbs: readonly AnyVerb[] = [shortenVerb, lengthenVerb, closeDartVerb];
