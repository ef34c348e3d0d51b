// What a maker may choose of pages.

export type { PageWords } from '../words/page-words.js';
export { pageLanguages } from '../words/reader.js';
export type { FormatOptions, Margins, Orientation, PrintedSquare } from './format.js';
export { defaultMargin, defaultOverlap } from './format.js';
export type { ArrangementKind } from './layout.js';
export { arrangementKinds } from './layout.js';
