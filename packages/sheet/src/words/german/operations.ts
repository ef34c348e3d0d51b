import type { OperationTellings } from '@paperhinge/alter';
import type { Tellings } from '../catalogue.js';

export const operations: Tellings<OperationTellings> = {
  'dart-legs-unlike': ({ dart, firstMm, secondMm }, say) => ({
    message: `${say.thing(dart)}: Die Schenkel sind ${say.length(firstMm)} und ${say.length(secondMm)} lang; genäht träfen sich ihre Enden nicht.`,
    remedy: 'Zeichnen Sie den Abnäher mit gleich langen Schenkeln, auf 1 mm (1/32 in) genau.',
  }),
};
