import type { AlterSentences } from '@paperhinge/alter';
import { capital } from '../capital.js';
import type { Sentences } from '../catalogue.js';

/** What each step did. */
export const did: Sentences<AlterSentences> = {
  said: ({ text }) => text,
  'closed-dart': ({ dart, into, wholeDeg, closedDeg, sharePercent, alongMm, openedMm }, say) => {
    const how =
      sharePercent === 100
        ? `(${say.angle(wholeDeg)}) was closed`
        : `was closed by ${say.percent(sharePercent)} (${say.angle(closedDeg)} of ${say.angle(wholeDeg)})`;
    return capital(
      `${say.thing(dart)} ${how} into ${say.thing(into)}, slashed ${say.length(alongMm)} from its start; it opened by ${say.length(openedMm)}.`,
    );
  },
  shortened: ({ pieces, at, byMm }, say) =>
    capital(
      `${say.things(pieces)} ${pieces.length > 1 ? 'were' : 'was'} ${byMm < 0 ? 'lengthened' : 'shortened'} by ${say.length(Math.abs(byMm))} at ${at === 'hem' ? 'the hem' : say.thing({ line: at })}.`,
    ),
};
