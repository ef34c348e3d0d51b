import type { EditTellings } from '@paperhinge/alter';
import { capital } from '../capital.js';
import type { Tellings } from '../catalogue.js';
import { instead } from './instead.js';

export const edit: Tellings<EditTellings> = {
  'unknown-seam': ({ name, names }, say) => ({
    message: `The pattern has no seam ${say.written(name)}.`,
    remedy: instead(name, names, 'seams', say),
  }),
  'position-off-seam': ({ seam, alongMm, lengthMm }, say) => ({
    message: `The place lies ${say.length(alongMm)} along ${say.thing(seam)}, which is ${say.length(lengthMm)} long.`,
    remedy: 'Give a share from 0 to 100 %, or a length within the seam.',
  }),
  'seam-end-ambiguous': ({ seam, from }, say) => ({
    message: capital(`the ${say.name(from)} touches both ends of ${say.thing(seam)}.`),
    remedy: 'Write "from start" or "from end": a seam starts where its first edge is listed to begin.',
  }),
  'seam-end-unknown': ({ seam, from, neighbours }, say) => ({
    message: capital(`the ${say.name(from)} touches neither end of ${say.thing(seam)}.`),
    remedy: `Write ${neighbours.map(name => `"from ${name}"`).join(' or ')}, "from start" or "from end".`,
  }),
};
