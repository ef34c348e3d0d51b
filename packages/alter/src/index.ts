// The public surface. Every name is listed; nothing is exported by star. The operations stand by family at /darts,
// /fullness, /length, /edges, /seams, /sleeves, /made and /fit; more at /became, /hinge, /verb and /sayings.

export type { Alteration, Derived, DerivedKind, MakingNote } from './alteration.js';
export type { Became } from './became/became.js';
export { follow, followThrough } from './became/follow.js';
export { bandStretch } from './fit/band-stretch.js';
export type { Caution } from './fit/cautions.js';
export { cautionsFor } from './fit/cautions.js';
export { easeFindings } from './fit/ease.js';
export type { Girth } from './fit/girths.js';
export { girthsBesideBody } from './fit/girths.js';
export { overTheHead } from './fit/over-the-head.js';
export type { Wearer } from './fit/wearer.js';
export { alterSoThat } from './goal/alter-so-that.js';
export type { Goal } from './goal/goal.js';
export { goalsIn, isGoal } from './goal/goal.js';
export type { Measure } from './goal/measure.js';
export { measured } from './goal/measure.js';
export { inWords } from './in-words.js';
export { changedSeams } from './matching/changed-seams.js';
export type { OrderedJob } from './order-of-work/order-of-work.js';
export { orderOfWork } from './order-of-work/order-of-work.js';
export type { AlterSentences, AlterTellings } from './tellings.js';
export type { AnyVerb, AnyVerbForm, Leaves, Start, Verb, VerbForm } from './verb/form.js';
export { formOf, perform, verbFrom, verbOf } from './verb/verb.js';
export type { VerbName } from './verbs.js';
export { verbForms, verbs } from './verbs.js';
