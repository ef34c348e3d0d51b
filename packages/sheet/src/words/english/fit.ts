import type { Passing } from '@paperhinge/alter/fit';
import type { FitSentences, FitTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Say, Sentences, Tellings } from '../catalogue.js';

const decides = 'Local rules and licensed practice decide.';

export const cautions: Sentences<FitSentences> = {
  'printed-square': () =>
    'Measure the printed test square before you cut; a page printed "to fit" makes every piece too small.',
  blades: () =>
    'Rotary blades, shears and pins cut more than cloth: close, cap and count them, and keep them from children.',
  'head-opening': () =>
    'The neck must pass the head without force. Try it on, or measure the finished edge stretched, before the last stitching.',
  'children-small-parts': () =>
    `Buttons, snaps and beads that come off can choke a small child: sew them so that they hold, or leave them out. ${decides}`,
  cords: () =>
    `Cords and drawstrings at the hood, neck, waist or hem of children's clothing catch and strangle; many places forbid or limit them. ${decides}`,
  'sleepwear-flame': () =>
    `Children's sleepwear must in many places resist flame or fit tightly; loose cotton burns fast. ${decides}`,
  'back-closure': () =>
    'Someone who dresses alone may not reach a closure at the back: ask, and move it to the front or the side if need be.',
  'after-surgery': () =>
    `After surgery keep seams, bands and fastenings clear of scars, ports and swelling; ask the wearer and those who care for them. ${decides}`,
};

const parts: Readonly<Record<Passing, string>> = {
  head: 'the head',
  hips: 'the hips',
  hand: 'the hand',
  heel: 'the heel',
};
/** What passes what. */
const through: Readonly<Record<Passing, string>> = {
  head: 'the head passes the neck',
  hips: 'the hips pass the waist',
  hand: 'the hand passes the sleeve',
  heel: 'the heel passes the leg',
};
const ways: Readonly<Record<Passing, string>> = {
  head: 'Over the head',
  hips: 'Over the hips',
  hand: 'Through the sleeve',
  heel: 'Through the leg',
};

/** "The neckband opens to 590 mm with its slit of 120 mm". */
const opens = (
  {
    tightest,
    openingMm,
    slitMm,
  }: { tightest: Parameters<Say['thing']>[0]; openingMm: number; slitMm?: number },
  say: Say,
): string =>
  `${say.thing(tightest)} opens to ${say.length(openingMm)}${slitMm === undefined ? '' : ` with its slit of ${say.length(slitMm)}`}`;

/** A band is made longer, an edge wider: the width of a band is what it is high. */
const wider = (tightest: Parameters<Say['thing']>[0], missingMm: number, say: Say): string =>
  `Make ${say.thing(tightest)} ${say.atLeast(missingMm)} ${tightest.edge === undefined ? 'longer' : 'wider'}, use cloth that stretches more, or open it with a slit of at least ${say.atLeast(missingMm / 2)}.`;

export const fit: Tellings<FitTellings> = {
  'band-beyond-stretch': ({ band, neededPercent, clothPercent, leastMm }, say) => ({
    message: capital(
      `${say.thing(band)} must stretch by ${say.percent(neededPercent)} where it is sewn; its cloth ${
        clothPercent === 0 ? 'is not said to stretch at all' : `gives ${say.percent(clothPercent)}`
      }.`,
    ),
    remedy: `Make it at least ${say.atLeast(leastMm)} long, or cut it from cloth that stretches more.`,
  }),
  'band-near-stretch': ({ band, neededPercent, clothPercent, usablePercent, leastMm }, say) => ({
    message: capital(
      `${say.thing(band)} must stretch by ${say.percent(neededPercent)} where it is sewn; its cloth gives ${say.percent(clothPercent)}, of which ${say.percent(usablePercent)} is enough to wear.`,
    ),
    remedy: `Make it at least ${say.atLeast(leastMm)} long, or cut it from cloth that stretches more.`,
  }),
  'band-recovers-little': ({ band, recoveryPercent, wantedPercent }, say) => ({
    message: capital(
      `${say.thing(band)} is cut from cloth that springs back by ${say.percent(recoveryPercent)} only: it grows slack in wear.`,
    ),
    remedy: `Cut it from cloth that springs back by ${say.percent(wantedPercent)} or more.`,
  }),
  'level-not-all-round': ({ level, having, lacking }, say) => ({
    message: `The ${say.name(level)} level is drawn on ${say.things(having)}, but not on ${say.things(lacking)}: its girth is not that of the whole garment.`,
    remedy: `Draw the ${say.name(level)} level on ${say.things(lacking)}, too.`,
  }),
  'lap-not-known': ({ level, edge }, say) => ({
    message: `The ${say.name(level)} is measured out to ${say.thing(edge)}: by as much as the two laps lie over one another it is smaller.`,
    remedy: `Draw the centre line on the ${say.name(edge.piece ?? '')}, data-line="style" with "centre front" as its name: what lies beyond it then counts once. A front that meets without a lap needs none.`,
  }),
  'measures-without-level': ({ measures, levels }, say) => ({
    message: `Not compared with the garment: ${say.list(measures)}. The pattern has ${
      levels.length === 0 ? 'no level lines' : `level lines for ${say.list(levels.map(say.name))} only`
    }.`,
    remedy: `Draw a level line across each piece at the ${say.list(measures.map(m => m.replace(/ girth$/, '')))} to have ${measures.length > 1 ? 'them' : 'it'} checked.`,
  }),
  'girth-too-small': ({ level, bodyMm, garmentMm, stretchPercent, missingMm, woven }, say) => ({
    message:
      `At the ${say.name(level)} the garment measures ${say.length(garmentMm)} round, the body ${say.length(bodyMm)}: ` +
      (woven
        ? `woven cloth does not stretch over the missing ${say.length(missingMm)}.`
        : `${say.length(missingMm)} too small even at half the cloth's stretch of ${say.percent(stretchPercent)}.`),
    remedy: `Add at least ${say.atLeast(missingMm)} at the ${say.name(level)} (spread, or let out the side seams)${woven ? '' : ', or use cloth that stretches more'}.`,
  }),
  'ease-below-usual': ({ level, easeMm, usualMm }, say) => ({
    message: `At the ${say.name(level)} a woven garment has ${say.length(easeMm)} of ease; ${say.length(usualMm)} is the usual least.`,
    remedy: `Add ${say.atLeast(usualMm - easeMm)} at the ${say.name(level)}, or try it in muslin first.`,
  }),
  'head-passes': ({ headGirthMm, assumed, spareMm, ...ring }, say) => ({
    message: `Over the head: ${opens(ring, say)}; ${aHead(headGirthMm, assumed, say)} passes with ${say.length(spareMm)} to spare.`,
    remedy: assumed
      ? "Give the wearer's head girth to check against it."
      : 'Nothing to do; try it on before the last stitching all the same.',
  }),
  'head-does-not-pass': ({ headGirthMm, assumed, missingMm, ...ring }, say) => ({
    message: `Over the head: ${opens(ring, say)}; ${aHead(headGirthMm, assumed, say)} does not pass, ${say.length(missingMm)} are missing.`,
    remedy: wider(ring.tightest, missingMm, say),
  }),
  'neck-opens-at-strap': ({ strap }, say) => ({
    message: `Over the head: ${say.thing(strap)} is sewn on at one end only, so the neck is open until it is tied or fastened, and any head passes.`,
    remedy:
      'If its other end is sewn on as well, list that seam: then its length counts, and the head is checked.',
  }),
  'neck-not-found': ({ pieces }, say) => ({
    message: `Whether the head passes was not checked: no edge of ${say.things(pieces)} is known to be the neck.`,
    remedy: 'Mark the neck edges with data-role="neck" in the drawing.',
  }),
  'part-passes': ({ part, bodyMm, spareMm, ...ring }, say) => ({
    message: `${ways[part]}: ${opens(ring, say)}; ${parts[part]} of ${say.length(bodyMm)} ${part === 'hips' ? 'pass' : 'passes'} with ${say.length(spareMm)} to spare.`,
    remedy: 'Nothing to do.',
  }),
  'part-does-not-pass': ({ part, bodyMm, missingMm, ...ring }, say) => ({
    message: `${ways[part]}: ${opens(ring, say)}; ${parts[part]} of ${say.length(bodyMm)} ${part === 'hips' ? 'do' : 'does'} not pass, ${say.length(missingMm)} are missing.`,
    remedy: wider(ring.tightest, missingMm, say),
  }),
  'measurement-not-usable': ({ measurement }) => ({
    message: `The wearer's ${measurement} is no length that a body has.`,
    remedy: 'Measure it again, or leave it out.',
  }),
  'passage-not-checked': ({ parts: unchecked, measures }, say) => ({
    message: `Not checked: whether ${say.list(unchecked.map(p => through[p]))}.`,
    remedy: `Give the wearer's ${say.list(measures)} to have ${unchecked.length > 1 ? 'them' : 'it'} checked.`,
  }),
};

const aHead = (mm: number, assumed: boolean, say: Say): string =>
  assumed ? `an adult head of ${say.length(mm)} (99th percentile)` : `a head of ${say.length(mm)}`;
