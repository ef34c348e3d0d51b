import type { EditTellings } from '@paperhinge/alter';
import type { Tellings } from '../catalogue.js';
import { instead } from './instead.js';

export const edit: Tellings<EditTellings> = {
  'unknown-seam': ({ name, names }, say) => ({
    message: `Der Schnitt hat keine Naht ${say.written(name)}.`,
    remedy: instead(name, names, 'Nähte', say),
  }),
  'position-off-seam': ({ seam, alongMm, lengthMm }, say) => ({
    message: `Die Stelle liegt ${say.length(alongMm)} vom Anfang: ${say.thing(seam)} ist nur ${say.length(lengthMm)} lang.`,
    remedy: 'Geben Sie einen Anteil von 0 bis 100 % an, oder eine Länge innerhalb der Naht.',
  }),
  'seam-end-ambiguous': ({ seam, from }, say) => ({
    message: `${say.written(from)} berührt beide Enden: ${say.thing(seam)}.`,
    remedy: 'Schreiben Sie „from start“ oder „from end“; eine Naht beginnt, wo ihre erste Kante beginnt.',
  }),
  'seam-end-unknown': ({ seam, from, neighbours }, say) => ({
    message: `${say.written(from)} berührt kein Ende: ${say.thing(seam)}.`,
    remedy: `Schreiben Sie ${neighbours.map(name => `„from ${name}“`).join(' oder ')}, „from start“ oder „from end“.`,
  }),
};
