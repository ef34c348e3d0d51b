import { type Pattern, PatternError, pieceNamed, type Seam } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { edgesOfRole } from '@paperhinge/geometry/pattern';
import type { Alteration } from '../alteration.js';
import { alterSoThat } from '../goal/alter-so-that.js';
import { findAmount } from '../goal/find-amount.js';
import { seamNamed, sideLength } from '../moved-edges/seam-place.js';
import { changeCap, changeCapVerb, raisedCapLength } from '../operations/change-cap.js';
import type { AnyVerb } from '../verb/form.js';

/** A seam that sets a sleeve's cap into an armhole. */
export interface CapSeam {
  readonly seam: Seam;
  readonly sleeve: string;
  readonly onSideA: boolean;
}

/** Every seam one of whose sides is cap throughout. */
export const capSeams = (pattern: Pattern): readonly CapSeam[] =>
  pattern.seams.flatMap(seam => {
    const cap = [seam.a, seam.b].find(side =>
      side.every(run => edgesOfRole(pieceNamed(pattern, run.piece), 'cap').includes(run.edge)),
    );
    return cap ? [{ seam, sleeve: cap[0]!.piece, onSideA: cap === seam.a }] : [];
  });

/** mm that side a of a seam is longer than side b. */
export const differenceIn = (pattern: Pattern, { a, b }: Seam): number =>
  sideLength(pattern, a) - sideLength(pattern, b);

/**
 * The cap raised or lowered until its seam has so much ease, side a over side b. Each try draws the cap alone, as the
 * rest of the seam stays as it is; where the height found that way does not come to it on the whole garment, the search
 * of a goal says so.
 * @throws PatternError `goal-not-reached`; those of `change cap`
 */
export function capEased(pattern: Pattern, name: string, piece: string, ease: number): Alteration {
  const seam = seamNamed(pattern, name);
  const sleeve = pieceNamed(pattern, piece);
  const now = differenceIn(pattern, seam);
  const capMm = raisedCapLength(sleeve, 0);
  const onSideA = seam.a.some(run => run.piece === piece);
  const outcome = (by: number): number | undefined => {
    try {
      const longer = raisedCapLength(sleeve, by) - capMm;
      return now + (onSideA ? longer : -longer);
    } catch (error) {
      if (error instanceof PatternError) return undefined;
      throw error;
    }
  };
  const gained = (outcome(tryMm) ?? now) - now;
  // From where a straight line through two heights has it.
  const near = gained === 0 ? 0 : ((ease - now) / gained) * tryMm;
  const found = findAmount(outcome, {
    least: -mostMm,
    most: mostMm,
    stride: tryMm,
    from: ease,
    to: ease,
    within: tolerances.goalTolerance,
    near,
  });
  if (found?.reached) {
    const raised = changeCap(pattern, { piece, by: found.amount, keep: 'width' });
    const is = differenceIn(raised.pattern, seamNamed(raised.pattern, name));
    if (Math.abs(is - ease) <= 2 * tolerances.goalTolerance) return raised;
  }
  const by = { soThat: { of: 'seam-ease', seam: name }, is: ease };
  return alterSoThat(changeCapVerb as AnyVerb, pattern, { piece, by, keep: 'width' });
}

/** mm. A height to measure by, and the most that a cap is raised or lowered. */
const tryMm = 5;
const mostMm = 500;
