import type { SleeveSentences, SleeveTellings } from '@paperhinge/alter/sayings';
import type { Say, Sentences, Tellings } from '../catalogue.js';

export const sleeves: Tellings<SleeveTellings> = {
  'no-cap': ({ piece }, say) => ({
    message: `${say.thing(piece)} hat keine Armkugel.`,
    remedy: 'Sagen Sie, welche Kante die Kugel ist: data-role="cap" an ihr.',
  }),
  'cap-too-low': ({ piece, heightMm, byMm }, say) => ({
    message: `Die Kugel von ${say.thing(piece)} ist ${say.length(heightMm)} hoch und lässt sich nicht um ${say.length(-byMm)} flacher machen.`,
    remedy: `Machen Sie sie um weniger als ${say.length(heightMm)} flacher.`,
  }),
  'seam-without-cap': ({ seam }, say) => ({
    message: `${say.thing(seam)} näht keine Armkugel in ein Armloch.`,
    remedy:
      'Nennen Sie die Naht, die es tut, oder sagen Sie, welche Kante die Kugel ist: data-role="cap" an ihr.',
  }),
  'cap-shorter-than-armhole': ({ capMm, armholeMm }, say) => ({
    message: `Die Kugel ist mit ${say.length(capMm)} kürzer als ihr Armloch mit ${say.length(armholeMm)}; die Mehrweite läge im Armloch.`,
    remedy:
      'Machen Sie erst die Kugel höher: change cap: { piece: sleeve, by: { so that: ease of armhole, is: 20 mm }, keep: width }.',
  }),
};

const change = (mm: number, say: Say, more: string, less: string): string =>
  Math.abs(mm) < 0.05 ? 'wie zuvor' : `${say.length(Math.abs(mm))} ${mm > 0 ? more : less}`;

export const sleevesDid: Sentences<SleeveSentences> = {
  'changed-cap': ({ piece, byMm, seamMm, widthMm }, say) =>
    `Kugel von ${say.thing(piece)} um ${say.length(Math.abs(byMm))} ${byMm < 0 ? 'flacher' : 'höher'}; ihre Naht ${change(seamMm, say, 'länger', 'kürzer')}, der Ärmel ${change(widthMm, say, 'weiter', 'enger')}.`,
  'walked-cap': ({ seam, easeMm, frontMm, backMm }, say) =>
    `${say.thing(seam)} abgemessen: von ${say.length(easeMm)} Mehrweite liegen ${say.length(frontMm)} vorn und ${say.length(backMm)} hinten, zwischen den Passzeichen und dem höchsten Punkt.`,
};
