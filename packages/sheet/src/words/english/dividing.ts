import type { DividingSentences, DividingTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Sentences, Tellings } from '../catalogue.js';
import { stepText } from '../step-text.js';

/** Pieces divided and joined, seams moved, folds and seams. */
export const dividing: Tellings<DividingTellings> = {
  'piece-name-taken': ({ name }, say) => ({
    message: `The pattern has a piece ${say.written(name)} already.`,
    remedy: 'Give the new piece another name.',
  }),
  'seam-name-taken': ({ name }, say) => ({
    message: `The pattern has a seam ${say.written(name)} already.`,
    remedy: 'Give the new seam another name: seam: NAME.',
  }),
  'edge-name-taken': ({ piece, name }, say) => ({
    message: capital(`${say.thing(piece)} has an edge or dart ${say.written(name)} already.`),
    remedy: 'Give the new seam another name: seam: NAME.',
  }),
  'division-end-unclear': ({ piece }, say) => ({
    message: `Where the cut through ${say.thing(piece)} begins or ends is not clear.`,
    remedy: 'Give each end as an edge with a place, or as a dart, not both.',
  }),
  'band-too-wide': ({ edge, widthMm }, say) => ({
    message: `A line ${say.length(widthMm)} inside ${say.thing(edge)} does not reach from one side of its piece to the other.`,
    remedy: 'Make the band narrower.',
  }),
  'cut-crosses-itself': ({ piece }, say) => ({
    message: `The line along which ${say.thing(piece)} would be cut crosses itself.`,
    remedy: 'Draw a line without a loop, or make what is cut off narrower.',
  }),
  'cut-as-pair': ({ piece, count }, say) => ({
    message: capital(`${say.thing(piece)} is no longer on the fold: it is cut ${count} times, as a pair.`),
    remedy: 'Nothing to do.',
  }),
  'seam-not-of-two-edges': ({ seam }, say) => ({
    message: capital(`${say.thing(seam)} does not sew one whole edge to one other.`),
    remedy: 'Choose a seam of two whole edges, or join or divide the pieces there first.',
  }),
  'seam-of-one-piece': ({ seam }, say) => ({
    message: capital(`${say.thing(seam)} sews a piece to itself.`),
    remedy: 'For a straight centre seam use "seam to fold".',
  }),
  'seam-not-of-piece': ({ seam, piece }, say) => ({
    message: capital(`${say.thing(seam)} does not sew ${say.thing(piece)}.`),
    remedy: 'Name one of the two pieces that the seam joins.',
  }),
  'join-through-dart': ({ seam, edge }, say) => ({
    message: `A dart or pleat opens into ${say.thing(edge)}, in ${say.thing(seam)}.`,
    remedy: 'Close or move it, or change it into ease, first.',
  }),
  'join-not-flat': ({ seam, apartMm, withinMm }, say) => ({
    message: capital(
      `laid edge to edge, the two lines of ${say.thing(seam)} lie ${say.length(apartMm)} apart; ${say.length(withinMm)} is allowed.`,
    ),
    remedy: 'Keep the seam, or allow more with "within" if the difference may be eased.',
  }),
  'rest-legs-unlike': ({ seam, firstMm, secondMm }, say) => ({
    message: `Beyond that place the two lines of ${say.thing(seam)} are ${say.slight(firstMm)} and ${say.slight(secondMm)} long: they cannot be the legs of one dart.`,
    remedy: 'Make both sides of the seam equally long first, with "match edge".',
  }),
  'joined-apart': ({ seam, apartMm }, say) => ({
    message: capital(
      `the two lines of ${say.thing(seam)} lay up to ${say.slight(apartMm)} apart; that much was lost or gained along it.`,
    ),
    remedy: 'True the edges that run across the place.',
  }),
  'joined-overlapping': ({ seam }, say) => ({
    message: `Laid edge to edge at ${say.thing(seam)} the two pieces would lie on one another.`,
    remedy: 'Keep this seam, or join them at another.',
  }),
  'joined-cut-unlike': ({ first, second }, say) => ({
    message: capital(`${say.thing(first)} and ${say.thing(second)} were cut in different numbers.`),
    remedy: 'Check how often the joined piece is to be cut.',
  }),
  'edge-renamed': ({ edge, now }, say) => ({
    message: capital(`${say.thing(edge)} is called ${say.thing(now)} now.`),
    remedy: 'Nothing to do.',
  }),
  'fold-there-already': ({ piece, fold }, say) => ({
    message: capital(`${say.thing(piece)} is cut on the fold already, at ${say.thing(fold)}.`),
    remedy: `Make a seam of that fold first: ${stepText('fold to seam', { piece: piece.piece ?? '' })}.`,
  }),
  'edge-not-for-fold': ({ edge, offMm }, say) => ({
    message: capital(
      `${say.thing(edge)} is ${say.slight(offMm)} off a straight line: it cannot lie on a fold.`,
    ),
    remedy: 'Draw it straight first: true with straight: yes; or keep the seam.',
  }),
  'fold-needs-pair': ({ piece, count }, say) => ({
    message: capital(
      `${say.thing(piece)} is cut ${count === 1 ? 'once' : `${count} times`}, not as a mirrored pair.`,
    ),
    remedy:
      'If it is a pair, say so in the drawing, data-cut="2"; only a pair can be laid together on a fold.',
  }),
  'fold-sewn-elsewhere': ({ edge, seam }, say) => ({
    message: capital(`${say.thing(edge)} is sewn to another piece in ${say.thing(seam)}.`),
    remedy: 'Choose an edge that is sewn to itself, or to nothing.',
  }),
  'no-fold-to-open': ({ piece }, say) => ({
    message: capital(`${say.thing(piece)} is not cut on a fold.`),
    remedy: 'Choose a piece that is.',
  }),
  'seam-strip-too-wide': ({ seam, byMm }, say) => ({
    message: `A strip ${say.length(byMm)} wide cannot be laid on at ${say.thing(seam)}: the outline would cross itself.`,
    remedy: 'Move the seam by less.',
  }),
  'seam-sides-unlike': ({ seam, apartMm }, say) => ({
    message: capital(
      `the two lines of ${say.thing(seam)} were not alike: they lay up to ${say.length(apartMm)} apart, and now both are one line.`,
    ),
    remedy: 'Check the fit there: ease that the seam had is gone.',
  }),
};

/** What was done to pieces and their seams. */
export const dividingDone: Sentences<DividingSentences> = {
  divided: ({ piece, fresh, seam, lengthMm }, say) =>
    capital(
      `${say.thing(piece)} was divided; ${say.thing(fresh)} is a piece of its own, sewn to it in ${say.thing(seam)}, cut ${say.length(lengthMm)} long.`,
    ),
  'cut-off-band': ({ edge, band, seam, widthMm, lengthMm, count }, say) =>
    capital(
      `a band ${say.length(widthMm)} wide was cut off along ${say.thing(edge)}: ${say.thing(band)}, cut ${count === 1 ? 'once' : `${count} times`}, sewn on in ${say.thing(seam)}, ${say.length(lengthMm)} long.`,
    ),
  'joined-pieces': ({ piece, other, seam, lengthMm }, say) =>
    capital(
      `${say.thing(other)} was joined to ${say.thing(piece)} along ${say.thing(seam)}, ${say.length(lengthMm)}; the two are one piece.`,
    ),
  'moved-seam': ({ seam, from, to, byMm }, say) =>
    capital(
      `${say.thing(seam)} was moved into ${say.thing(to)} by ${byMm.length === 1 ? say.length(byMm[0]!) : `${say.length(byMm[0]!)} at its beginning and ${say.length(byMm[1]!)} at its end`}; ${say.thing(from)} has the strip.`,
    ),
  'fold-became-seam': ({ edge, seam, allowanceMm }, say) =>
    capital(
      `${say.thing(edge)} is a seam now, with ${say.allowance(allowanceMm)} of allowance, sewn to itself in ${say.thing(seam)}; the piece is cut as a pair.`,
    ),
  'seam-became-fold': ({ edge }, say) =>
    capital(`${say.thing(edge)} is laid on the fold now; its seam is gone and the piece is cut once.`),
};
