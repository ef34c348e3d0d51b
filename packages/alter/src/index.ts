// The public surface. Every name is listed; nothing is exported by star. More stands at /operations, /became, /fit,
// /hinge, /verb and /sayings.

export type { Alteration, Derived, DerivedKind, MakingNote } from './alteration.js';
export type { Became } from './became/became.js';
export { follow, followThrough } from './became/follow.js';
export { draftBand } from './derive/draft-band.js';
export { draftFacing } from './derive/draft-facing.js';
export { draftStay } from './derive/draft-stay.js';
export { draftBinding, draftStrip } from './derive/draft-strip.js';
export { bandStretch } from './fit/band-stretch.js';
export type { Caution } from './fit/cautions.js';
export { cautionsFor } from './fit/cautions.js';
export { easeFindings } from './fit/ease.js';
export type { Girth } from './fit/girths.js';
export { girthsBesideBody } from './fit/girths.js';
export { overTheHead } from './fit/over-the-head.js';
export type { Wearer } from './fit/wearer.js';
export { inWords } from './in-words.js';
export { addNotches } from './operations/add-notches.js';
export { closeDart } from './operations/close-dart.js';
export { moveDart } from './operations/move-dart.js';
export { recutNeckline } from './operations/recut-neckline.js';
export { removePiece } from './operations/remove-piece.js';
export { setAllowance } from './operations/set-allowance.js';
export { setSeam } from './operations/set-seam.js';
export { lengthen, shorten } from './operations/shorten.js';
export { spread } from './operations/spread.js';
export { letOut, takeIn } from './operations/take-in.js';
export { trueEdges } from './operations/true-edges.js';
export { unfold } from './operations/unfold.js';
export type { OrderedJob } from './order-of-work/order-of-work.js';
export { orderOfWork } from './order-of-work/order-of-work.js';
export type { AlterSentences, AlterTellings } from './tellings.js';
export type { AnyVerb, Leaves, Start, Verb } from './verb/verb.js';
export { perform, verbOf } from './verb/verb.js';
export type { VerbName } from './verbs.js';
export { verbs } from './verbs.js';
