import type { Dart, Piece, Point } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { distance, scale, subtract } from '@paperhinge/geometry/plane';
import { nothingBecame } from '../became/became.js';
import { dartNamed } from '../hinge/dart-named.js';
import { withLegsTo } from '../hinge/redrawn-legs.js';
import type { Reshaped } from '../moved-edges/chains.js';
import { withLegsTrued } from './legs-trued.js';
import { inwardsOf } from './mouth.js';

/**
 * What stays of a dart that turned about a pivot gets its point back as far from the pivot as it lay, along its new
 * axis, and equal legs.
 * @param before the dart as it was drawn before its legs were led to the pivot
 */
export function withRestSetBack(swung: Piece, before: Dart, pivot: Point): Reshaped {
  const back = distance(before.apex, pivot);
  if (back <= tolerances.coincidenceTolerance) return { piece: swung, became: nothingBecame, findings: [] };
  const rest = dartNamed(swung, before.name);
  const drawn = withLegsTo(swung, rest, subtract(rest.apex, scale(inwardsOf(rest), back)));
  return withLegsTrued(drawn, dartNamed(drawn, rest.name));
}
