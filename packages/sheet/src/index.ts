// The public surface: the alteration sheet and its run. Every name is listed; nothing is exported by star. What is said
// to a maker, by language and unit, stands at /words.

export type { StepDone } from './apply-step.js';
export { applyStep } from './apply-step.js';
export type { Place } from './document.js';
export type { JsonSchema } from './fields/kind.js';
export type { Parameters } from './fields/of-verb.js';
export type { Job, JobPages, JobTold, JobWishes, PrintedOn } from './job.js';
export { doJob, jobTold, printedOn } from './job.js';
export { sheetJsonSchema } from './json-schema.js';
export { laidOver, withLateFacts } from './laid-over.js';
export type { NamingWishes } from './naming-sheet.js';
export { namingSheet } from './naming-sheet.js';
export { pageOptions, paperWord } from './page-options.js';
export { patternOfSheet } from './pattern-of-sheet.js';
export type { EdgeFacts, PieceFacts } from './piece-fields.js';
export type { Hideable, PrintArguments, PrintWishes, SheetPaper } from './print-wishes.js';
export { hideable, readPrintWishes } from './print-wishes.js';
export type { SheetOptions } from './read-sheet.js';
export { readSheet } from './read-sheet.js';
export type { DerivedJson, RecordJson, StepRecord } from './record.js';
export type { Included } from './replay/included.js';
export { sheetOfRecord } from './replay/sheet-of-record.js';
export type { Run, RunDone, RunOptions } from './run-sheet.js';
export { concludeRun, runSheet } from './run-sheet.js';
export type { StepSource } from './run-steps.js';
export { runSteps } from './run-steps.js';
export type { SheetFastening, SheetSeam } from './seam-fields.js';
export type { LaidOver } from './seams-over.js';
export type { Sheet, SheetFabric, SheetOpening, Step, StepPlaces } from './sheet.js';
export { sheetReader } from './sheet-reader.js';
export type { SheetSize } from './size-fields.js';
export type { State } from './state.js';
export { stateOf } from './state.js';
export type { SheetTellings } from './tellings.js';
