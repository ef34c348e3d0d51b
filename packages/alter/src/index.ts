import * as field from './verb/fields.js';

export type { Alteration, Derived, DerivedKind, MakingNote } from './alteration.js';
// became: what became of what, and following it
export type { Became, EdgeSpan, SpanBecame, ThingBecame } from './became/became.js';
export type { EdgeCorner, Followable, PlaceOnEdge } from './became/follow.js';
export { follow, followThrough } from './became/follow.js';
export { inTurn } from './became/in-turn.js';
export { settled } from './became/settled.js';
export type { BecameTellings } from './became/tellings.js';
// derive: pieces made from edges
export type { DraftBand } from './derive/draft-band.js';
export { draftBand } from './derive/draft-band.js';
export type { DraftFacing } from './derive/draft-facing.js';
export { draftFacing } from './derive/draft-facing.js';
export type { DraftStay } from './derive/draft-stay.js';
export { draftStay } from './derive/draft-stay.js';
export type { DraftStrip } from './derive/draft-strip.js';
export { draftBinding, draftStrip } from './derive/draft-strip.js';
// tellings: what this package tells, as codes with their facts
export type { DeriveSentences, DeriveTellings } from './derive/tellings.js';
// edit: edges that are moved
export type { EditTellings } from './edit/tellings.js';
export type { BandLengths } from './fit/band-stretch.js';
// fit: the wearer beside the garment
export { bandStretch, bandStretchFindings, stretchOfBand } from './fit/band-stretch.js';
export type { Caution, GarmentUse } from './fit/cautions.js';
export { cautionsFor } from './fit/cautions.js';
export { isKnit, stretchOf } from './fit/cloth.js';
export type { EaseMinimum } from './fit/ease.js';
export { easeFindings, wovenEaseMinima } from './fit/ease.js';
export type { Girth } from './fit/girths.js';
export { girthsBesideBody } from './fit/girths.js';
export type { NeckOpening } from './fit/over-the-head.js';
export { neckOpening, overTheHead } from './fit/over-the-head.js';
export type { FitSentences } from './fit/sentences.js';
export { hasEdge, stillThere } from './fit/still-there.js';
export type { FitTellings, Passing } from './fit/tellings.js';
export type { Wearer } from './fit/wearer.js';
export { bodyGirth, unknownHeadGirth } from './fit/wearer.js';
// hinge: the engine under slashes, darts and figure adjustments
export type { Cut, CutEnd } from './hinge/cut.js';
export { holdingSection } from './hinge/holding.js';
export type { Opening } from './hinge/joins.js';
export type { CutPiece, Section } from './hinge/sections.js';
export { cutApart, sectionAt } from './hinge/sections.js';
export type { NewDart, SwingWishes, Swung } from './hinge/swing.js';
export { swing } from './hinge/swing.js';
export type { HingeSentences, HingeTellings } from './hinge/tellings.js';
export { inWords } from './in-words.js';
export type { NecklineTellings } from './neckline/tellings.js';
// operations: one trade verb a file
export type { AddNotches } from './operations/add-notches.js';
export { addNotches } from './operations/add-notches.js';
export type { CloseDart } from './operations/close-dart.js';
export { closeDart } from './operations/close-dart.js';
export type { MoveDart } from './operations/move-dart.js';
export { moveDart } from './operations/move-dart.js';
export type { RecutNeckline } from './operations/recut-neckline.js';
export { recutNeckline } from './operations/recut-neckline.js';
export type { RemovePiece } from './operations/remove-piece.js';
export { removePiece } from './operations/remove-piece.js';
export type { SetAllowance } from './operations/set-allowance.js';
export { setAllowance } from './operations/set-allowance.js';
export type { SetSeam } from './operations/set-seam.js';
export { setSeam } from './operations/set-seam.js';
export type { Shorten } from './operations/shorten.js';
export { lengthen, shorten } from './operations/shorten.js';
export type { Spread, SpreadEnd } from './operations/spread.js';
export { spread } from './operations/spread.js';
export type { TakeIn } from './operations/take-in.js';
export { letOut, takeIn } from './operations/take-in.js';
export type { OperationSentences, OperationTellings } from './operations/tellings.js';
export type { TrueEdges } from './operations/true-edges.js';
export { trueEdges } from './operations/true-edges.js';
export type { Unfold } from './operations/unfold.js';
export { unfold } from './operations/unfold.js';
export type { OrderedJob } from './order-of-work/order-of-work.js';
// order of work: what is sewn before what, and why
export { orderOfWork } from './order-of-work/order-of-work.js';
export type { OrderSentences } from './order-of-work/sentences.js';
export type { OrderTellings } from './order-of-work/tellings.js';
export type { AlterSentences, AlterTellings } from './tellings.js';
export type { TruingTellings } from './truing/tellings.js';
export type { UnfoldSentences, UnfoldTellings } from './unfold/tellings.js';
export type { Field, FieldKind, Fields, Giving } from './verb/fields.js';
export { inSheet } from './verb/fields.js';
export type { VerbTellings } from './verb/tellings.js';
export type { AnyVerb, Leaves, Start, Verb } from './verb/verb.js';
export { perform, verbOf } from './verb/verb.js';
export type { VerbName } from './verbs.js';
export { verbs } from './verbs.js';
// verb: how a trade verb is declared; `field.piece()`, `field.length()` … make its fields
export { field };
