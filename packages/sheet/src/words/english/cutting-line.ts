import type { Thing } from '@paperhinge/geometry';
import type { CuttingLineTellings } from '@paperhinge/geometry/sayings';
import { capital } from '../capital.js';
import type { Say, Tellings } from '../catalogue.js';

export const cuttingLine: Tellings<CuttingLineTellings> = {
  'dart-fold-step': ({ dart, stepMm, ...beside }, say) => ({
    message: `With ${say.thing(dart)} folded, the cutting lines at its mouth do not meet: a step of ${say.slight(stepMm)} along its leg.`,
    remedy: withoutStep(beside, say),
  }),
  'dart-mouth-bridged': ({ dart }, say) => ({
    message: `The cloth within ${say.thing(dart)} cannot be folded onto the edge beside it; its mouth is cut straight across.`,
    remedy:
      'Cut wide there, fold the dart as it will be pressed, and cut along the edge; or press it the other way.',
  }),
  'pleat-fold-step': ({ pleat, stepMm, ...beside }, say) => ({
    message: `With ${say.thing(pleat)} folded, the cutting lines at its mouth do not meet: a step of ${say.slight(stepMm)}.`,
    remedy: withoutStep(beside, say),
  }),
  'pleat-mouth-bridged': ({ pleat, oneWay }, say) => ({
    message: `The cloth within ${say.thing(pleat)} reaches beyond the edge that it is folded onto; its mouth is cut straight across.`,
    remedy: `Cut wide there, fold the pleat as it will be pressed, and cut along the edge${oneWay ? '; or lay it the other way' : ''}.`,
  }),
  'cutting-line-not-simple': ({ edge }, say) => ({
    message: `The cutting line crosses itself at ${say.thing(edge)}, and its loops could not be removed.`,
    remedy:
      'Check that the stitching line does not cross itself, and that the allowances suit the size of the piece.',
  }),
  'corner-not-shaped': ({ edges }, say) => ({
    message: `The corner of ${say.things(edges)} is too sharp or too flat to be pressed open, turned up or run to the fold; it is mitred.`,
    remedy: 'Check the angle there, or ask for a mitre.',
  }),
  'allowance-too-wide': ({ edge, lostMm }, say) => ({
    message: `The allowance of ${say.thing(edge)} is wider than a bend or slot there has room for; along ${say.slight(lostMm)} of it, it is cut where the two sides meet.`,
    remedy: 'Set a narrower allowance on this edge, or face it.',
  }),
  'curved-hem': ({ hem, depthMm, excessMm, deepestMm }, say) => {
    const amount = say.slight(Math.abs(excessMm)),
      shallow = `make it ${say.atMost(deepestMm)} deep at most`;
    return {
      message: capital(
        `${say.thing(hem)} curves: ${say.allowance(depthMm)} deep, its edge is ${amount} ${excessMm > 0 ? 'longer' : 'shorter'} than the line it is turned up on.`,
      ),
      remedy:
        excessMm > 0
          ? `Ease in the ${amount}, or face the hem, or ${shallow}.`
          : `Snip or stretch the edge, or face the hem, or ${shallow}.`,
    };
  },
  'parallel-trimmed': ({ part, lostMm }, say) => ({
    message: `The line beside ${say.written(part)} is cut by ${say.slight(lostMm)} where a bend, a slot or its neighbours leave no room for it.`,
    remedy: 'Nothing to do, unless its whole length is wanted: then take a smaller distance.',
  }),
  'parallel-not-closed': ({ part }, say) => ({
    message: `The line beside the outline crosses itself at ${say.written(part)}, and its loops could not be removed.`,
    remedy: 'Take a distance a little smaller or larger, or redraw that part.',
  }),
  'parallel-vanished': ({ inwards }) => ({
    message: `Nothing is left of the outline, moved ${inwards ? 'inwards' : 'outwards'} so far.`,
    remedy: 'Take a smaller distance.',
  }),
  'parallel-in-parts': ({ inwards, loops }) => ({
    message: `The outline, moved ${inwards ? 'inwards' : 'outwards'} so far, falls into ${loops} closed curves.`,
    remedy: 'Take a smaller distance to keep it in one.',
  }),
  'offset-both-ways': () => ({
    message: 'An outline cannot be moved outwards along some of its parts and inwards along others.',
    remedy: 'Give distances of one sign, or move it in two steps.',
  }),
  'corner-tail-dropped': ({ edges, lengthMm }, say) => ({
    message: `A corner tail of ${say.slight(lengthMm)} between ${say.things(edges)} lies outside the stitching line and was left out.`,
    remedy: 'The cutting line is drawn anew from the allowances; check its corner there.',
  }),
  'dart-tip-dropped': ({ edge, dart, lengthMm }, say) => ({
    message: `The tip of ${say.slight(lengthMm)} at the end of ${say.thing(edge)}, over ${say.thing(dart)}, lies outside the stitching line and was left out.`,
    remedy: 'The cutting line is drawn anew from the allowances; check its mouth there.',
  }),
  'corner-guessed': ({ edges, lengthMm }, say) => ({
    message: `The corner of ${say.things(edges)} is a guess: a curve is cut off there by the allowances, and was run on straight for ${say.length(lengthMm)}.`,
    remedy:
      'Measure both edges on the paper pattern, and draw the corner on the stitching line if they differ.',
  }),
  'corner-doubted': ({ edge, next, lengthMm, kept }, say) => ({
    message: `The last ${say.length(lengthMm)} of ${say.thing(edge)}, towards ${say.thing(next)}, ${
      kept
        ? 'were kept as part of the edge; they may only be how the corner of its allowance was shaped.'
        : 'were left out as the shape that the corner of its allowance has; they may be part of the edge.'
    }`,
    remedy:
      'Measure both edges on the paper pattern, and draw the corner on the stitching line if they differ.',
  }),
  'corner-not-recovered': ({ edges }, say) => ({
    message: capital(
      `${say.things(edges)}, moved in by their allowances, do not meet; they are joined straight.`,
    ),
    remedy:
      'If they run on in one line, give both one included allowance; else draw their corner on the stitching line.',
  }),
  'included-allowance-too-wide': ({ edge }, say) => ({
    message: `Nothing is left of ${say.thing(edge)} once the included allowance is taken off.`,
    remedy:
      'Check the included allowance and its unit, or whether the outline is drawn on the stitching line.',
  }),
};

interface Beside {
  readonly edges: readonly Thing[];
  readonly unlike: boolean;
}
const withoutStep = ({ edges, unlike }: Beside, say: Say): string =>
  unlike
    ? `Give ${say.things(edges)} the same allowance, or trim the step once it is sewn.`
    : 'Fold it on the paper and draw the cutting line across it in one, or trim the step once it is sewn.';
