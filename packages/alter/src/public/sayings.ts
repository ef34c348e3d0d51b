// What this package tells, folder by folder, as codes with their facts. Every name is listed; nothing is exported by star.

export type { BecameTellings } from '../became/tellings.js';
export type { DartSentences, DartTellings } from '../darts/tellings.js';
export type { DeriveSentences, DeriveTellings } from '../derive/tellings.js';
export type { DividingSentences, DividingTellings } from '../dividing/tellings.js';
export type { AdjustSentences, AdjustTellings } from '../fit/adjust/tellings.js';
export type { FitSentences } from '../fit/sentences.js';
export type { FitTellings } from '../fit/tellings.js';
export type { FullnessSentences, FullnessTellings } from '../fullness/tellings.js';
export type { GoalSentences, GoalTellings } from '../goal/tellings.js';
export type { HingeSentences, HingeTellings } from '../hinge/tellings.js';
export type { LapelSentences, LapelTellings } from '../lapels/tellings.js';
export type { MatchingSentences, MatchingTellings } from '../matching/tellings.js';
export type { MovedEdgesTellings } from '../moved-edges/tellings.js';
export type { NecklineTellings } from '../neckline/tellings.js';
export type { OperationSentences, OperationTellings } from '../operations/tellings.js';
export type { OrderSentences } from '../order-of-work/sentences.js';
export type { OrderTellings } from '../order-of-work/tellings.js';
export type { RedrawnEdgeSentences, RedrawnEdgeTellings } from '../redrawn-edges/tellings.js';
export type { SleeveSentences, SleeveTellings } from '../sleeves/tellings.js';
export type { TruingTellings } from '../truing/tellings.js';
export type { UnfoldSentences, UnfoldTellings } from '../unfold/tellings.js';
export type { VerbTellings } from '../verb/tellings.js';
