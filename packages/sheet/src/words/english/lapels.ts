import type { LapelSentences, LapelTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Sentences, Tellings } from '../catalogue.js';

/** Lapels and the collars that roll with them. */
export const lapels: Tellings<LapelTellings> = {
  'front-edge-not-at-neck': ({ edge, neck, beside }, say) => ({
    message: capital(`${say.thing(edge)} does not meet ${say.thing(neck)}.`),
    remedy: `Name the front edge that does: ${say.list(beside.map(one => say.written(one.edge ?? one.dart ?? one.pleat ?? '')))} lie beside it.`,
  }),
  'lapel-on-fold': ({ edge }, say) => ({
    message: capital(`${say.thing(edge)} lies on the fold, so that nothing could be turned back there.`),
    remedy: 'Open it first, with "add button stand": a lapel rolls from the edge of a front that opens.',
  }),
  'break-at-neck': ({ edge }, say) => ({
    message: `The break point lies at the neck's end of ${say.thing(edge)}, where no lapel can roll.`,
    remedy: 'Let it lie farther down the front edge: at the height of the topmost button.',
  }),
  'break-at-hem': ({ edge }, say) => ({
    message: `The break point lies at the lower end of ${say.thing(edge)}, so that nothing of it would be left below the lapel.`,
    remedy: 'Let it lie farther up the front edge: at the height of the topmost button.',
  }),
  'break-at-shoulder-level': ({ edge }, say) => ({
    message: `From that place on ${say.thing(edge)} the roll line would run through the neck's end at the shoulder.`,
    remedy: 'Let the break point lie farther down the front edge, or the collar stand higher.',
  }),
  'neck-not-whole': ({ neck, along }, say) => ({
    message: `${capital(say.things(along))} and ${say.thing(neck)} are not the whole neck, from the centre back to the front.`,
    remedy: 'Name all edges of the back neck: those that follow the front neck across the shoulder seam.',
  }),
  'notch-beyond-gorge': ({ notchMm, gorgeMm }, say) => ({
    message: `A notch of ${say.length(notchMm)} does not fit on the lapel's upper edge, which is ${say.length(gorgeMm)} long.`,
    remedy: 'Make the notch smaller, or the lapel wider.',
  }),
  'lapel-crosses': ({ piece }, say) => ({
    message: `By these measures the lines of the lapel would cross others of ${say.thing(piece)}.`,
    remedy: 'Make the lapel narrower, or let it break farther down the front edge.',
  }),
  'no-roll-line': ({ piece, line }, say) => ({
    message: capital(
      `${say.thing(piece)} has no fold line ${say.written(line)} that the collar could roll on.`,
    ),
    remedy: 'Draw the lapel first, with "cut lapel".',
  }),
  'gorge-not-last': ({ along }, say) => ({
    message: `${capital(say.things(along))} do not run from the centre back to the neck of a front with a lapel.`,
    remedy: 'Name the edges of the back neck and the neck of the front, all of them.',
  }),
  'no-shoulder-beside': ({ piece, beside }, say) => ({
    message: `The front facing of ${say.thing(piece)} must run from the hem to the shoulder; its edges end beside ${say.things(beside)}.`,
    remedy: 'Name all edges from the front edge up to the shoulder, one after the other.',
  }),
  'rolling-not-along': ({ edge }, say) => ({
    message: capital(`${say.thing(edge)} is not one of the edges that the facing follows.`),
    remedy: 'Name of those edges the ones that roll to the outside, or leave "rolling" out.',
  }),
};

export const lapelsDone: Sentences<LapelSentences> = {
  'cut-lapel': ({ piece, widthMm, frontMm, gorgeMm, notchMm }, say) =>
    capital(
      `${say.thing(piece)} has a lapel ${say.length(widthMm)} wide, which breaks ${say.length(frontMm)} up the front edge; the collar is sewn to ${say.length(gorgeMm)} of its neck, up to the notch of ${say.length(notchMm)}.`,
    ),
  'grown-shawl-collar': ({ piece, neckMm, layMm, widthMm, outerMm }, say) =>
    capital(
      `a shawl collar was drawn on to ${say.thing(piece)}: ${say.length(neckMm)} of neck edge, laid back by ${say.length(layMm)}, ${say.length(widthMm)} deep at the centre back; its outer edge is ${say.length(outerMm)} long.`,
    ),
};
