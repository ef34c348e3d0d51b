import type { TruingTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Tellings } from '../catalogue.js';
import { typedLength } from '../step-text.js';

export const truing: Tellings<TruingTellings> = {
  'truing-left': ({ edge, what, alongMm, angleDeg, needMm }, say) => {
    const place = `${say.length(alongMm)} from its start`;
    const seen = {
      kink: `a kink of ${say.angle(angleDeg)} ${place}`,
      step: `a step ${place}`,
      corner: `a corner of ${say.angle(angleDeg)} ${place}`,
      fold: `${say.angle(angleDeg)} out of square at the fold`,
      across: `a corner of ${say.angle(angleDeg)} at its end, where it runs on`,
    }[what];
    if (what === 'corner')
      return {
        message: capital(`${say.thing(edge)} was left with ${seen}: so sharp a corner is taken to be meant.`),
        remedy: 'Redraw it by hand if it is not.',
      };
    return {
      message: capital(
        `${say.thing(edge)} was left with ${seen}: a fair line would lie farther from it than allowed.`,
      ),
      remedy:
        needMm === undefined
          ? 'Redraw it by hand there.'
          : `Allow it more, within: ${typedLength(roomy(needMm), say.unit)}, if it is not meant.`,
    };
  },
  'straight-left': ({ edge, awayMm, withinMm }, say) => ({
    message: capital(
      `${say.thing(edge)} was left as it was: drawn straight, it would move by ${say.length(awayMm)}, and ${say.length(withinMm)} is allowed.`,
    ),
    remedy: `Allow it more, within: ${typedLength(roomy(awayMm), say.unit)}, or straighten a shorter stretch of it.`,
  }),
  'straight-over-dart': ({ edge }, say) => ({
    message: capital(`${say.thing(edge)} cannot be drawn straight across a dart or another edge.`),
    remedy: 'Name two places on one side of it, or close the dart first.',
  }),
  'straight-without-length': ({ edge }, say) => ({
    message: `The two places on ${say.thing(edge)} are one.`,
    remedy: 'Name two places that lie apart.',
  }),
  'places-without-straight': ({ edge }, say) => ({
    message: `"from" and "to" say where ${say.thing(edge)} is drawn straight, and it is not to be drawn straight.`,
    remedy: 'Add straight: yes, or leave the places out.',
  }),
  'truing-crosses': ({ edge }, say) => ({
    message: capital(`${say.thing(edge)}, trued, would run across the outline of its piece.`),
    remedy: 'Allow it less.',
  }),
};

/** mm. Rounded to an eighth of an inch the limit must still be enough. */
const roomy = (mm: number): number => mm * 1.05 + 1.6;
