export type { Alteration, Derived, DerivedKind, MakingNote } from './alteration.js';

// sheet: the alteration sheet and its run
export type { Place } from './sheet/document.js';
export { faultsIn, SheetFaults } from './sheet/faults.js';
export { sheetJsonSchema } from './sheet/json-schema.js';
export { readSheet } from './sheet/read-sheet.js';
export type { Sheet, SheetFabric, SheetOpening, SheetStep } from './sheet/sheet.js';
export type { Verb } from './sheet/verbs.js';
