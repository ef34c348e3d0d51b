import type { Pattern } from '@paperhinge/geometry';
import type { Alteration } from '../../alteration.js';
import * as field from '../../verb/fields.js';
import { formOf, perform, verbFrom } from '../../verb/verb.js';
import { inSteps } from './in-steps.js';
import { type Adjustment, adjustments } from './names.js';
import { recipes } from './recipes.js';

/** An adjustment to a figure. */
export interface Adjust {
  readonly for: Adjustment;
  /**
   * mm: round the whole garment for bust, abdomen, back, waist and hips, round the limb for arm and thigh; of length
   * for torso, crotch, seat, sway back, round back, chest and bust level; of each shoulder for its length, of its
   * armhole end for its slope and its place; into the neck.
   */
  readonly by: number;
}

/**
 * Adjusts a pattern to a figure, each as a composition of hinges, wedges and seams moved, with the pieces found by what
 * they are. What each does on paper stands with its parts: a full bust swings the side about the armhole; a square
 * shoulder slides shoulder and armhole up; a full arm swings a sleeve's four parts; a sway back folds a wedge out at
 * the waist. Source: Liechty, Pottberg and Rasband, Fitting and Pattern Alteration (1986), the slash method [memory]
 * (trade-notes §9). What else is sewn to a changed edge is told, not changed.
 *
 * @throws PatternError `adjust-needs-piece`, `adjust-needs-edge`, `adjust-needs-level`, `adjust-needs-seam`,
 *   `adjust-needs-dart`, `bust-point-unknown`, `adjust-too-much`; what its steps refuse; those of `perform`
 */
export const adjust = (pattern: Pattern, parameters: Adjust): Alteration =>
  perform(adjustVerb, pattern, parameters);

export const adjustForm = formOf<Adjust>()({
  verb: 'adjust',
  does: 'Adjusts the pattern to a figure: a full bust, a sway back, square shoulders and the rest, each by its usual cuts, on the pieces that it concerns.',
  fields: { for: field.choice(...adjustments), by: field.size() },
  leaves: () => ({ seams: 'unknown' }),
  sentence: 'Adjust for {for}, by {by}',
  startsAt: { table: [] },
  example: { pattern: 'woven-shift', step: { for: 'full bust', by: 60 } },
});
export const adjustVerb = /* @__PURE__ */ verbFrom(adjustForm, (pattern, wish) =>
  inSteps(pattern, recipes[wish.for](pattern, wish.by), { what: wish.for, byMm: wish.by }),
);
