import type { DeriveSentences, DeriveTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Say, Sentences, Tellings } from '../catalogue.js';
import { instead as instead_ } from './instead.js';

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
  'drafted-misshapen': ({ piece }, say) => ({
    message: `By these measures ${say.thing({ piece })} would be no shape that can be cut: its lines would cross, or one would have no length.`,
    remedy: 'Give it measures that lie nearer to one another.',
  }),
  'drafted-along-itself': ({ piece }, say) => ({
    message: capital(`${say.thing({ piece })} cannot be drafted along its own edges.`),
    remedy: 'Give the new piece another name.',
  }),
  'dart-in-facing': ({ dart }, say) => ({
    message: capital(`${say.thing(dart)} opens where the facing ends.`),
    remedy: 'Close or move it first.',
  }),
  'facing-over-darts': ({ piece, darts }, say) => ({
    message: capital(
      `${say.thing(piece)} was traced with ${say.things(darts)} closed, so that it lies flat.`,
    ),
    remedy: 'Nothing needs doing: sew the darts before the facing.',
  }),
  'facing-end-too-wide': ({ edge, widthMm, edgeMm }, say) => ({
    message: `A facing ${say.length(widthMm)} wide does not fit on ${say.thing(edge)}, which is ${say.length(edgeMm)} long there.`,
    remedy: 'Make it narrower there.',
  }),
  'no-shoulder-between': ({ piece, edges }, say) => ({
    message: `Of ${say.thing(piece)} a combined facing takes the neck and the armhole with the shoulder between them, not ${say.things(edges)}.`,
    remedy: 'Name its neck and its armhole, or draft a facing for each with "draft facing".',
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
  'shaped-band-folded': ({ piece }, say) => ({
    message: `The ${say.name(piece)} is shaped, so that it cannot be folded lengthwise.`,
    remedy: 'Leave "cut" out, to cut it in two layers, or "far edge", to cut it straight.',
  }),
  'shaped-band-too-steep': ({ piece, sewnMm, farMm, widthMm }, say) => ({
    message: `Between ${say.length(sewnMm)} and ${say.length(farMm)} the ${say.name(piece)}, ${say.length(widthMm)} wide, would run more than half round and lie over itself.`,
    remedy: `Give a far edge nearer to ${say.length(sewnMm)}, or a greater width.`,
  }),
  'edges-not-halved': ({ piece, edges }, say) => ({
    message: capital(
      `${say.things(edges)} have no two halves alike from the centre back to the centre front, as the ${say.name(piece)} needs them.`,
    ),
    remedy: 'Name every edge of the neck, and take care that both sides are alike.',
  }),
  'elastic-too-long': ({ elasticMm, edgeMm }, say) => ({
    message: `An elastic of ${say.length(elasticMm)} does not draw in an edge of ${say.length(edgeMm)}.`,
    remedy: `Give an elastic shorter than ${say.atMost(edgeMm)}, or make the edge longer first.`,
  }),
  'slit-too-long': ({ edge, slitMm, edgeMm }, say) => ({
    message: capital(
      `${say.thing(edge)} is ${say.length(edgeMm)} long, so that no slit of ${say.length(slitMm)} goes into it.`,
    ),
    remedy: `Give a slit of ${say.atMost(edgeMm)} at most.`,
  }),
  'loose-ends': ({ piece }, say) => ({
    message: `The ${say.name(piece)} hangs loose: on children's clothes ties, cords and loops can catch and strangle.`,
    remedy: 'None at the hood or neck of a child; local rules decide the rest.',
  }),
  'pocket-corners-too-large': ({ byMm, mostMm }, say) => ({
    message: `Corners of ${say.length(byMm)} do not go into this pocket.`,
    remedy: `Round them by ${say.atMost(mostMm)} at most.`,
  }),
  'pocket-mark-unknown': ({ piece, name, names }, say) => ({
    message: capital(`${say.thing({ piece })} has no mark ${say.written(name)}.`),
    remedy: instead_(name, names, 'marks', say),
  }),
  'pocket-off-piece': ({ pocket, piece }, say) => ({
    message: `The ${say.name(pocket)} would not lie within ${say.thing(piece)} there.`,
    remedy: 'Choose a place farther from edges and darts, or make the pocket smaller.',
  }),
  'mouth-beyond-seam': ({ seam, toMm, lengthMm }, say) => ({
    message: capital(
      `${say.thing(seam)} is ${say.length(lengthMm)} long, and the mouth would end at ${say.length(toMm)}.`,
    ),
    remedy: 'Begin higher up, or make the mouth shorter.',
  }),
  'fly-not-at-waist': ({ edge }, say) => ({
    message: capital(`${say.thing(edge)} does not meet a waist at either end.`),
    remedy:
      'Name the centre front edge that runs down from the waist, or say which edge is the waist: data-role="waist" on it.',
  }),
  'fly-on-fold': ({ edge }, say) => ({
    message: capital(`${say.thing(edge)} lies on the fold, where nothing opens.`),
    remedy: 'Make a seam of it first, with "fold to seam".',
  }),
  'fly-beyond-edge': ({ edge, wantedMm, lengthMm }, say) => ({
    message: `The fly would reach ${say.length(wantedMm)} down ${say.thing(edge)}, which is ${say.length(lengthMm)} long.`,
    remedy: 'Make the opening shorter.',
  }),
  'fly-edge-bent': ({ edge, offMm }, say) => ({
    message: `A fly in one is folded on the centre front, and along the opening ${say.thing(edge)} strays ${say.slight(offMm)} from a straight line.`,
    remedy: 'Give the front a facing of its own, with "draft fly", or make the opening shorter.',
  }),
  'hood-too-small': ({ heightMm, depthMm, neckMm }, say) => ({
    message: `A hood ${say.length(heightMm)} high and ${say.length(depthMm)} deep does not stand on half a neck of ${say.length(neckMm)}.`,
    remedy: 'Make it higher and deeper, or let its neck edge rise less.',
  }),
  'hood-without-cords': ({ piece }, say) => ({
    message: `The ${say.name(piece)}: for a child, no cord or drawstring at hood or neck; it can catch and strangle.`,
    remedy: 'Close it with elastic inside, or a press fastener; local rules decide.',
  }),
  'pocket-beyond-edge': ({ edge, wantedMm, lengthMm }, say) => ({
    message: capital(
      `${say.thing(edge)} has ${say.length(lengthMm)} up to the next corner or dart, and mouth and bag want ${say.length(wantedMm)}.`,
    ),
    remedy: 'Make the mouth or the bag smaller there.',
  }),
  'corner-not-there': ({ first, second }, say) => ({
    message: capital(`${say.thing(first)} and ${say.thing(second)} do not meet in a corner.`),
    remedy: 'Name the two edges that meet where the pocket is to lie.',
  }),
  'interfacing-too-far-inside': ({ piece, insideMm }, say) => ({
    message: `Trimmed ${say.slight(insideMm)} inside the stitching line, the interfacing of ${say.thing(piece)} would lose an edge.`,
    remedy: 'Trim it by less: a few millimetres keep it out of the seams.',
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
  'drafted-lapped': (
    { piece, count, edgeMm, sewnMm, lengthMm, widthMm, overlapMm, underlapMm, folded, replaced },
    say,
  ) => {
    const laps = [
      ...(overlapMm > 0 ? [`${say.length(overlapMm)} to overlap`] : []),
      ...(underlapMm > 0 ? [`${say.length(underlapMm)} to underlap`] : []),
    ];
    return capital(
      `${say.thing({ piece })} was drafted for ${say.length(edgeMm)} of edge: ${say.length(sewnMm)} when finished${laps.length > 0 ? `, and ${say.list(laps)}` : ''}; ${times(count)}${cut(lengthMm, widthMm, say)}${folded ? ', to be folded lengthwise' : ''}${instead(replaced)}.`,
    );
  },
  'drafted-pieces': ({ pieces }, say) => capital(`${pieces.map(say.saying).join('; ')}.`),
  'drafted-piece': ({ piece, count, lengthMm, widthMm }, say) =>
    `${say.thing({ piece })} was drafted, ${say.length(lengthMm)} × ${say.length(widthMm)} when finished; cut ${count}`,
  'drafted-casing': ({ piece, count, edgeMm, lengthMm, widthMm, elasticMm, drawnPercent, replaced }, say) =>
    capital(
      `${say.thing({ piece })} was drafted for ${say.length(edgeMm)} of edge: ${times(count)}${cut(lengthMm, widthMm, say)}, to be folded lengthwise over ${say.length(elasticMm)} of elastic, which draws it in by ${say.percent(drawnPercent)}${instead(replaced)}.`,
    ),
  'drafted-placket': ({ piece, edge, slitMm, lengthMm, widthMm }, say) =>
    capital(
      `${say.thing(edge)} opens by a slit of ${say.length(slitMm)}; ${say.thing({ piece })} that binds it is ${cut(lengthMm, widthMm, say)}.`,
    ),
  'drafted-seam-pocket': ({ seam, fromMm, mouthMm, pieces }, say) =>
    capital(
      `${say.thing(seam)} stays open for ${say.length(mouthMm)}, ${say.length(fromMm)} from its beginning; ${say.things(pieces)} were drafted for it.`,
    ),
  'drafted-slant-pocket': ({ piece, mouthMm, pieces }, say) =>
    capital(
      `${say.thing(piece)} was cut off slanting, the mouth ${say.length(mouthMm)} long; ${say.things(pieces)} were drafted for it.`,
    ),
  'drafted-fly': ({ edge, lengthMm, over, pieces }, say) =>
    capital(
      `${say.thing(edge)} opens by ${say.length(lengthMm)}, the ${over} front uppermost; for it ${say.things(pieces)} ${pieces.length === 1 ? 'was' : 'were'} drafted.`,
    ),
  'added-fly-extension': ({ edge, lengthMm, widthMm, over }, say) =>
    capital(
      `${say.thing(edge)} has a fly in one with it, ${say.length(widthMm)} wide, opening by ${say.length(lengthMm)}: the ${over} front is folded at the centre and lies uppermost.`,
    ),
  'drafted-lining': ({ pieces, shorterMm, pleatMm, seams }, say) =>
    capital(
      `${say.things(pieces)} were traced${shorterMm > 0 ? `, ${say.length(shorterMm)} shorter` : ''}${pleatMm > 0 ? `, with an ease pleat of ${say.length(pleatMm)} at the centre back` : ''}; ${seams === 1 ? 'one seam goes' : `${seams} seams go`} with them.`,
    ),
  'drafted-interfacing': ({ piece, of, count, insideMm, instead }, say) =>
    capital(
      `${say.thing(piece)} was traced from ${say.thing(of)}, ${
        insideMm === undefined
          ? 'with its allowances, to be caught in the seams'
          : insideMm === 0
            ? 'on the stitching line, without allowances'
            : `${say.slight(insideMm)} inside the stitching line, without allowances`
      }; cut ${count}${instead ? `, instead of ${say.thing(of)} cut of that cloth besides` : ''}.`,
    ),
  'drafted-strip': ({ kind, piece, count, edgeMm, lengthMm, widthMm, squareMm, replaced }, say) =>
    capital(
      `${say.thing({ piece })} was drafted for ${say.length(edgeMm)} of edge: ${times(count)}${cut(lengthMm, widthMm, say)}${
        kind === 'binding'
          ? ` on the bias${squareMm === undefined ? '' : `, from a square of ${say.length(squareMm)} in one, or joined`}`
          : ''
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
