import { anySaying, type NoFacts, type SayingOf } from '@paperhinge/geometry/sayings';

/** The cautions that a maker is shown. */
export interface FitSentences {
  'printed-square': NoFacts;
  blades: NoFacts;
  'head-opening': NoFacts;
  'children-small-parts': NoFacts;
  cords: NoFacts;
  'sleepwear-flame': NoFacts;
  'back-closure': NoFacts;
  'after-surgery': NoFacts;
}

export const saying: SayingOf<FitSentences> = anySaying;
