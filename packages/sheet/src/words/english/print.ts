import type { PrintTellings } from '@paperhinge/print';
import type { Tellings } from '../catalogue.js';

export const print: Tellings<PrintTellings> = {
  'nothing-to-print': () => ({
    message: 'The pattern has no pieces.',
    remedy: 'Add a piece to the pattern, or leave out the step that removed the last one.',
  }),
  'too-many-pages': ({ pages, most }, say) => ({
    message: `The pattern would fill about ${say.number(pages, 0)} pages.`,
    remedy: `Check the unit that the drawing was saved in, or print on a larger paper; at most ${most} pages are made.`,
  }),
  'unknown-paper': ({ paper, papers }, say) => ({
    message: `There is no paper ${say.written(paper)}.`,
    remedy: `Use one of ${papers.join(', ')}, or give a size such as 600 x 900 mm.`,
  }),
  'paper-size': ({ widthMm, heightMm, leastMm, mostMm }, say) => ({
    message: `A paper of ${say.length(widthMm)} × ${say.length(heightMm)} cannot be printed on.`,
    remedy: `Give width and height, each from ${say.atLeast(leastMm)} to ${say.atMost(mostMm)}.`,
  }),
  'margins-too-wide': ({ widthMm, heightMm, leastMm, usualMm }, say) => ({
    message: `These margins leave ${say.length(widthMm)} × ${say.length(heightMm)} of the page to print on.`,
    remedy: `Leave at least ${say.atLeast(leastMm)} both ways; margins of ${say.length(usualMm)} suit most printers.`,
  }),
  'overlap-out-of-range': ({ overlapMm, usualMm }, say) => ({
    message: `Pages cannot overlap by ${say.length(overlapMm)}.`,
    remedy: `Use nothing to a quarter of the page; ${say.length(usualMm)} is usual.`,
  }),
  'correction-out-of-range': ({ acrossMm, downMm, mostPercent }, say) => ({
    message: `A test square of ${say.number(acrossMm)} × ${say.number(downMm)} mm is more than ${say.percent(mostPercent)} from 50 mm.`,
    remedy:
      'Print at 100 % ("actual size", no fitting to the page), measure again, and give what both sides of the square measure in mm.',
  }),
  'photo-frame-paper': () => ({
    message: 'A photo frame is printed on A4 or US letter.',
    remedy: 'Write --paper a4 or --paper letter.',
  }),
  'photo-frame-sheets': ({ fewest, most }) => ({
    message: `A photo frame has ${fewest} to ${most} sheets.`,
    remedy: `Write --sheets ${fewest} to --sheets ${most}.`,
  }),
  'font-not-usable': ({ broken }) => ({
    message: broken ? 'A font file is broken.' : 'A font file has no TrueType outlines.',
    remedy: 'Give a .ttf file, or a .woff made from one.',
  }),
  'no-grain-printed': () => ({
    message: 'The piece has no grain line, so none is printed on it.',
    remedy: 'Draw a line with data-line="grain" in the piece, along the lengthwise threads.',
  }),
  'wider-than-cloth': ({ cloth, acrossMm, mostMm }, say) => ({
    message: `The piece is ${say.length(acrossMm)} across; the cloth ${say.written(cloth)} has ${say.length(mostMm)} to cut from between its selvedges.`,
    remedy: 'Take a wider cloth and write its width, or divide the piece with a seam.',
  }),
  'sliver-on-page': ({ paper, pages, narrowestMm }, say) => ({
    message: `On ${paper} the piece reaches less than ${say.length(narrowestMm)} onto ${pages === 1 ? 'a page' : `${pages} pages`} wherever it is laid.`,
    remedy: 'Take care not to lose that strip, or print on a larger paper or the other way up.',
  }),
};
