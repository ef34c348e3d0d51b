import type { OperationTellings } from '@paperhinge/alter';
import { capital } from '../capital.js';
import type { Tellings } from '../catalogue.js';

export const operations: Tellings<OperationTellings> = {
  'dart-legs-unlike': ({ dart, firstMm, secondMm }, say) => ({
    message: capital(
      `${say.thing(dart)} has legs of ${say.length(firstMm)} and ${say.length(secondMm)}: sewn, its ends would not meet.`,
    ),
    remedy: 'Redraw the dart so that its legs are equally long, within 1 mm (1/32 in).',
  }),
};
