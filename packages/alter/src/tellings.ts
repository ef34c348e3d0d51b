import type { BecameTellings } from './became/tellings.js';
import type { DartSentences, DartTellings } from './darts/tellings.js';
import type { DeriveSentences, DeriveTellings } from './derive/tellings.js';
import type { DividingSentences, DividingTellings } from './dividing/tellings.js';
import type { AdjustSentences, AdjustTellings } from './fit/adjust/tellings.js';
import type { FitSentences } from './fit/sentences.js';
import type { FitTellings } from './fit/tellings.js';
import type { FullnessSentences, FullnessTellings } from './fullness/tellings.js';
import type { GoalSentences, GoalTellings } from './goal/tellings.js';
import type { HingeSentences, HingeTellings } from './hinge/tellings.js';
import type { LapelSentences, LapelTellings } from './lapels/tellings.js';
import type { MatchingSentences, MatchingTellings } from './matching/tellings.js';
import type { MovedEdgesTellings } from './moved-edges/tellings.js';
import type { NecklineTellings } from './neckline/tellings.js';
import type { OperationSentences, OperationTellings } from './operations/tellings.js';
import type { OrderSentences } from './order-of-work/sentences.js';
import type { OrderTellings } from './order-of-work/tellings.js';
import type { RedrawnEdgeSentences, RedrawnEdgeTellings } from './redrawn-edges/tellings.js';
import type { SleeveSentences, SleeveTellings } from './sleeves/tellings.js';
import type { TruingTellings } from './truing/tellings.js';
import type { UnfoldSentences, UnfoldTellings } from './unfold/tellings.js';
import type { VerbTellings } from './verb/tellings.js';

/** Every code that this package tells, with its facts. Each folder lists its own. */
export interface AlterTellings
  extends BecameTellings,
    DartTellings,
    DividingTellings,
    FullnessTellings,
    RedrawnEdgeTellings,
    HingeTellings,
    LapelTellings,
    MatchingTellings,
    MovedEdgesTellings,
    NecklineTellings,
    OperationTellings,
    DeriveTellings,
    FitTellings,
    AdjustTellings,
    GoalTellings,
    OrderTellings,
    SleeveTellings,
    TruingTellings,
    UnfoldTellings,
    VerbTellings {}

/** Sentences without a remedy: what a step did, the jobs of the order of work and their reasons, cautions. */
export interface AlterSentences
  extends OperationSentences,
    DartSentences,
    DividingSentences,
    FullnessSentences,
    RedrawnEdgeSentences,
    HingeSentences,
    DeriveSentences,
    LapelSentences,
    MatchingSentences,
    UnfoldSentences,
    HingeSentences,
    FitSentences,
    SleeveSentences,
    AdjustSentences,
    GoalSentences,
    OrderSentences {
  /** A sentence that is already in words. */
  said: { readonly text: string };
}
