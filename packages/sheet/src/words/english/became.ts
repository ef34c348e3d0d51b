import type { BecameTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Tellings } from '../catalogue.js';
import { edgeText, typedLength } from '../step-text.js';

/** What a step left no place for. */
export const became: Tellings<BecameTellings> = {
  'notch-cut-away': ({ notch, edge, atMm }, say) => ({
    message: `${notch === undefined ? 'A notch' : `The notch ${say.written(notch)}`} of ${say.thing(edge)}, ${say.length(atMm)} along it, was cut away.`,
    remedy: 'Strike out the notch that it met on the other side of the seam, or mark both anew.',
  }),
  'edge-cut-away': ({ edge }, say) => ({
    message: capital(`${say.thing(edge)} was cut away altogether.`),
    remedy: 'Cut off less if it is still wanted.',
  }),
  'line-cut-away': ({ line }, say) => ({
    message: capital(`${say.thing(line)} lay in what was cut away and went with it.`),
    remedy: 'Draw it anew if it is still wanted.',
  }),
  'mark-cut-away': ({ mark }, say) => ({
    message: capital(`${say.thing(mark)} lay in what was cut away and went with it.`),
    remedy: 'Mark it anew if it is still wanted.',
  }),
  'seam-gone': ({ seam, edges }, say) => ({
    message: capital(`${say.thing(seam)} is gone: nothing is left of ${say.things(edges)}.`),
    remedy: 'If what was sewn there is still sewn to something, say to what.',
  }),
  'seam-run-gone': ({ seam, edges }, say) => ({
    message: capital(`${say.thing(seam)} no longer has ${say.things(edges)} in it.`),
    remedy: 'Say what is sewn to the edges that are left.',
  }),
  'opening-follows': ({ edge, wasMm, edgeMm }, say) => ({
    message: capital(
      `${say.thing(edge)} was open from end to end, ${say.length(wasMm)}, and still is: ${say.length(edgeMm)} now.`,
    ),
    remedy: 'Space buttons anew, and buy a zip or a facing to the new length.',
  }),
  'opening-kept': ({ edge, openMm, wasMm, edgeMm }, say) => ({
    message: capital(
      `${say.thing(edge)} is ${say.length(edgeMm)} long now instead of ${say.length(wasMm)}; its opening stays ${say.length(openMm)}.`,
    ),
    remedy: `If it is to be open from end to end, say so above the steps, and it follows: opening: { ${edgeText(edge)}: ${typedLength(wasMm, say.unit)} }.`,
  }),
  'fastening-gone': ({ fastening, edge }, say) => ({
    message: capital(`${say.thing(fastening)} is gone: it closed ${say.thing(edge)}, which was cut away.`),
    remedy: 'Put one in anew, if the garment still needs it.',
  }),
};
