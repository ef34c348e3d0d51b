import type { DeriveSentences, DeriveTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Say, Sentences, Tellings } from '../catalogue.js';

/** Bands, bindings, facings and stays. */
export const derive: Tellings<DeriveTellings> = {
  'edges-do-not-join': ({ piece, groups }, say) => ({
    message: capital(
      `${say.thing({ piece })} cannot follow ${say.list(groups.map(say.saying))} in one: they do not meet in the garment.`,
    ),
    remedy: 'Name edges that meet at a seam, a fold or the gap, or draft one piece for each.',
  }),
  'edges-not-in-one-run': ({ edges }, say) => ({
    message: capital(`${say.things(edges)} do not follow one another with other edges at both ends.`),
    remedy: 'Name the edges between them too, close the darts between them, or draft one piece for each run.',
  }),
  'gap-also-along': ({ gap }, say) => ({
    message: capital(`${say.thing(gap)} cannot be both sewn to the band and left out as its gap.`),
    remedy: 'Take it out of the edges that the band follows, or leave the gap out.',
  }),
  'gap-not-beside': ({ gap, neighbours }, say) => ({
    message: capital(`${say.thing(gap)} touches none of the edges that the band follows.`),
    remedy: `It lies between ${say.list(neighbours.map(say.name))}: name one of them, or another gap.`,
  }),
  'band-too-short': ({ piece, betweenMm, gapMm }, say) => ({
    message: capital(
      `${say.thing({ piece })} would be ${say.length(betweenMm)} long between its joins, and the gap of ${say.length(gapMm)} uses that up.`,
    ),
    remedy: 'Make the ratio larger or the gap narrower.',
  }),
  'drafted-along-itself': ({ piece }, say) => ({
    message: capital(`${say.thing({ piece })} cannot be drafted along its own edges.`),
    remedy: 'Give the new piece another name.',
  }),
  'dart-in-facing': ({ dart }, say) => ({
    message: capital(`${say.thing(dart)} opens where the facing ends.`),
    remedy: 'Close or move it first.',
  }),
  'facing-too-wide': ({ piece, widthMm }, say) => ({
    message: `A facing ${say.length(widthMm)} wide does not fit into ${say.thing({ piece })} along that edge.`,
    remedy: 'Make it narrower.',
  }),
  'facings-do-not-join': ({ pieces }, say) => ({
    message: `The facings of ${say.things(pieces)} cannot be cut in one: no seam brings their ends together.`,
    remedy: 'Draft them without "joined".',
  }),
  'facings-overlap': ({ pieces }, say) => ({
    message: `Laid together, the facings of ${say.things(pieces)} lie over one another, so they cannot be cut in one.`,
    remedy: 'Draft them without "joined", or make them narrower.',
  }),
  'allowances-differ': ({ piece, edge, allowanceMm, others }, say) => ({
    message: capital(
      `${say.thing({ piece })} has the allowance of ${say.thing(edge)}, ${say.allowance(allowanceMm)}; ${say.things(others)} ${others.length > 1 ? 'have others' : 'has another'}.`,
    ),
    remedy: 'Set one allowance on all the edges it is sewn to before drafting it.',
  }),
  'hem-becomes-seam': ({ piece, edges, wasMm, allowanceMm }, say) => ({
    message: capital(
      `${say.things(edges)} ${edges.length > 1 ? 'are' : 'is'} no longer turned up: ${say.thing({ piece })} is sewn on there, so the ${say.allowance(wasMm)} of hem became a seam allowance of ${say.allowance(allowanceMm)}.`,
    ),
    remedy: 'Give another "allowance" in the step if it should be wider or narrower.',
  }),
  'one-for-each': ({ piece, count, lengthMm }, say) => ({
    message: `There ${count === 2 ? 'is one for the left and one for the right' : `are ${count}, one for each`}: ${say.thing({ piece })} is cut ${count === 2 ? 'twice' : `${count} times`}, each ${say.length(lengthMm)} long, joins included.`,
    remedy: 'Nothing to do.',
  }),
  'several-stretches': ({ piece, stretches, extraJoinsMm }, say) => ({
    message: `The edges of ${say.thing({ piece })} lie in ${stretches} separate stretches of the garment; its length is for all of them together.`,
    remedy: `Cut it apart for each${extraJoinsMm > 0 ? `, and add ${say.length(extraJoinsMm)} for their joins` : ''}.`,
  }),
  'narrower-than-allowances': ({ piece, widthMm, edgeAllowanceMm, allowanceMm }, say) => ({
    message: capital(
      `${say.thing({ piece })}, cut ${say.length(widthMm)} wide, would be used up by two allowances of ${say.allowance(edgeAllowanceMm)}; it is stitched ${say.allowance(allowanceMm)} in instead.`,
    ),
    remedy: 'Make it wider, or set a smaller allowance on its edge before drafting it.',
  }),
  'inner-line-trimmed': ({ piece }, say) => ({
    message: capital(
      `${say.thing({ piece })} follows a bend tighter than its width; its inner line is cut to a point there.`,
    ),
    remedy: 'Nothing to do; make it narrower for an inner line that follows the whole bend.',
  }),
  'piece-replaced': ({ piece, seam }, say) => ({
    message: `The drafted ${say.name(piece)} takes the place of the pattern's own${seam ? `, in ${say.thing(seam)} too` : ''}.`,
    remedy: 'Give the new piece another name if both are wanted.',
  }),
};

/** What was drafted, and how it is sewn on. */
export const drafts: Sentences<DeriveSentences> = {
  'drafted-band': (
    { piece, count, edgeMm, gapMm, lengthMm, widthMm, ratioPercent, stretchPercent, replaced },
    say,
  ) =>
    capital(
      `${say.thing({ piece })} was drafted for ${say.length(edgeMm)} of edge${
        gapMm > 0 ? ` and a gap of ${say.length(gapMm)}` : ''
      } at ${say.percent(ratioPercent)}: ${times(count)}${cut(lengthMm, widthMm, say)}; its sewn part stretches by ${say.percent(stretchPercent)}${instead(replaced)}.`,
    ),
  'drafted-strip': ({ kind, piece, count, edgeMm, lengthMm, widthMm, replaced }, say) =>
    capital(
      `${say.thing({ piece })} was drafted for ${say.length(edgeMm)} of edge: ${times(count)}${cut(lengthMm, widthMm, say)}${
        kind === 'binding' ? ' on the bias' : ''
      }${instead(replaced)}.`,
    ),
  'drafted-facing': ({ kind, pieces }, say) => `A ${kind} was drafted: ${pieces.map(say.saying).join('; ')}.`,
  'drafted-facing-piece': ({ piece, lengthMm, widthMm }, say) =>
    `${say.thing({ piece })}, ${say.length(lengthMm)} along its outer edge and ${say.length(widthMm)} wide`,
  'edges-together': ({ edges }, say) => say.things(edges),
  'sew-band-on': ({ piece, edges, gap, stretchPercent, ring }, say) =>
    `Sew ${say.thing({ piece })} to ${say.things(edges)}: pin mark on mark${gap ? ", the gap's ends first" : ''}, ${
      stretchPercent > 0
        ? `stretch it evenly by ${say.number(stretchPercent, 0)} % between them`
        : 'ease it evenly between them'
    }${ring ? '' : ', ends left open'}.`,
};

const times = (count: number): string => (count > 1 ? `${count} of them, each ` : '');

/** Figures to cut by say that inches are rounded. */
const cut = (lengthMm: number, widthMm: number, say: Say): string =>
  `cut ${say.length(lengthMm)} × ${say.length(widthMm)}${say.unit === 'in' ? ' (to the nearest 1/8 in)' : ''}`;

const instead = (replaced: boolean): string =>
  replaced ? '; it takes the place of the old piece of that name' : '';
