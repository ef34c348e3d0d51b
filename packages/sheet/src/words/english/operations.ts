import type { OperationTellings } from '@paperhinge/alter/sayings';
import type { Thing } from '@paperhinge/geometry';
import { capital } from '../capital.js';
import type { Tellings } from '../catalogue.js';
import { stepText, typedLength } from '../step-text.js';

export const operations: Tellings<OperationTellings> = {
  'dart-legs-unlike': ({ dart, firstMm, secondMm }, say) => ({
    message: capital(
      `${say.thing(dart)} has legs of ${say.length(firstMm)} and ${say.length(secondMm)}: sewn, its ends would not meet.`,
    ),
    remedy: 'Redraw the dart so that its legs are equally long, within 1 mm (1/32 in).',
  }),
  'point-back-too-long': ({ dart, deepMm, backMm }, say) => ({
    message: capital(
      `${say.thing(dart)} is ${say.length(deepMm)} deep at its new place: its point cannot be set back by ${say.length(backMm)}.`,
    ),
    remedy: 'Set its point back by less than that depth.',
  }),
  'pressing-by-default': ({ dart }, say) => ({
    message: capital(
      `${say.thing(dart)} was to be pressed its own way at its old place; at the new one it goes by the usual rule.`,
    ),
    remedy: 'Say anew which way to press it, if the rule does not suit.',
  }),
  'range-needed': ({ edge, slashes }, say) => ({
    message: `${slashes} slashes cannot all open at one place of ${say.thing(edge)}.`,
    remedy: 'Give two places between which they are spread, such as [1/4, 3/4], or leave the place out.',
  }),
  'spread-too-wide': ({ slashMm, byMm }, say) => ({
    message: `A slash ${say.length(slashMm)} long cannot open by ${say.length(byMm)}.`,
    remedy: 'Spread by less, or make more slashes.',
  }),
  'spread-needs-length': () => ({
    message: 'Without a hinge nothing turns, so the piece cannot be spread by an angle.',
    remedy: 'Give "by" as a length, or name the end that hinges.',
  }),
  'fold-needs-opening': () => ({
    message: 'Where the pattern overlaps there is nothing to fold.',
    remedy: 'Spread by more than 0, or leave "into" out.',
  }),
  'pleat-name-taken': ({ piece, name }, say) => ({
    message: capital(`${say.thing(piece)} has an edge, dart or pleat ${say.written(name)} already.`),
    remedy: 'Give the folds another name.',
  }),
  'taper-with-between': ({ seam }, say) => ({
    message: capital(`${say.thing(seam)} is to taper both "between" two places and from one to another.`),
    remedy: 'Give either "between" with one amount, or "from" and "to".',
  }),
  'taper-without-length': ({ seam }, say) => ({
    message: `On ${say.thing(seam)} the two places of the taper are one.`,
    remedy: 'Give two places that lie apart.',
  }),
  'inset-without-depth': () => ({
    message: 'An inset V needs some depth.',
    remedy: 'Give a depth over 0.',
  }),
  'half-width-or-shoulder': () => ({
    message: 'Both a half width and a length of shoulder say where the neck ends.',
    remedy: 'Keep one of the two.',
  }),
  'shoulder-not-cut': ({ shape }, say) => ({
    message: `A neckline of the shape ${say.written(shape)} does not cut the shoulder.`,
    remedy: 'Leave "shoulder" out, or choose another shape, such as V or round.',
  }),
  'shoulder-cut': ({ edge, changeMm, shoulderMm, sewnTo }, say) => ({
    message: capital(
      `${say.thing(edge)} is ${say.slight(Math.abs(changeMm))} ${changeMm < 0 ? 'shorter' : 'longer'} than before, and it no longer fits ${say.things(sewnTo)}.`,
    ),
    remedy: `Recut the neckline of ${say.things(piecesOf(sewnTo))} too, with shoulder: ${typedLength(shoulderMm, say.unit)}.`,
  }),
  'no-allowance-there': ({ edge, kind }, say) => ({
    message: capital(
      `${say.thing(edge)} is ${kind === 'fold' ? 'laid on the fold' : 'left raw'}, so it has no allowance.`,
    ),
    remedy: kind === 'fold' ? 'Unfold the piece first, or leave this edge out.' : 'Leave this edge out.',
  }),
  'not-drafted-here': ({ piece }, say) => ({
    message: capital(`how ${say.thing(piece)} was drafted is not known, as no step here drafted it.`),
    remedy: 'Draft it anew under the same name: it takes its place.',
  }),
  'nothing-to-refresh': () => ({
    message: 'No step before drafted a piece for an edge, so that nothing was drafted again.',
    remedy: 'Leave the step out, or put it after the drafts.',
  }),
  'last-piece': ({ piece }, say) => ({
    message: capital(`${say.thing(piece)} is the only piece of the pattern.`),
    remedy: 'Keep it, or start from another pattern.',
  }),
  'made-for-removed-piece': ({ piece, removed }, say) => ({
    message: capital(
      `${say.thing({ piece })} was made for an edge of ${say.thing({ piece: removed })}, which is gone.`,
    ),
    remedy: `Remove it too (${stepText('remove piece', { piece })}), or draft it anew.`,
  }),
  'notches-already-there': ({ seam }, say) => ({
    message: capital(`${say.thing(seam)} had these notches already; none was added.`),
    remedy: 'Choose other places, or leave the step out.',
  }),
};

const piecesOf = (things: readonly Thing[]): readonly Thing[] =>
  [...new Set(things.map(thing => thing.piece!))].map(piece => ({ piece }));
