import type { AlterSentences } from '@paperhinge/alter';
import type { Sentences } from '../catalogue.js';

/** What each step did. */
export const did: Sentences<AlterSentences> = {
  said: ({ text }) => text,
  'closed-dart': ({ dart, into, wholeDeg, closedDeg, sharePercent, alongMm, openedMm }, say) => {
    const how =
      sharePercent === 100
        ? `geschlossen (${say.angle(wholeDeg)})`
        : `zu ${say.percent(sharePercent)} geschlossen (${say.angle(closedDeg)} von ${say.angle(wholeDeg)})`;
    return `${say.thing(dart)} ${how}; ${say.thing(into)} ${say.length(alongMm)} von ihrem Anfang aufgeschnitten und um ${say.length(openedMm)} geöffnet.`;
  },
  shortened: ({ pieces, at, byMm }, say) =>
    `${say.things(pieces)} ${at === 'hem' ? 'am Saum' : `an ${say.thing({ line: at })}`} um ${say.length(Math.abs(byMm))} ${byMm < 0 ? 'verlängert' : 'gekürzt'}.`,
};
