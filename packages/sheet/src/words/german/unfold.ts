import type { UnfoldSentences, UnfoldTellings } from '@paperhinge/alter/sayings';
import type { Sentences, Tellings } from '../catalogue.js';

export const unfold: Tellings<UnfoldTellings> = {
  'pair-needed': ({ piece, count }, say) => ({
    message: `${say.thing(piece)} wird ${count}-mal oder im Bruch zugeschnitten, nicht als gespiegeltes Paar.`,
    remedy: 'Klappen Sie ein Teil im Bruch stattdessen auf, mit „unfold“.',
  }),
  'unfolded-overlaps': ({ piece }, say) => ({
    message: `Aufgeklappt würden sich die beiden Hälften abseits des Bruchs berühren: ${say.thing(piece)}.`,
    remedy: 'Lassen Sie das Teil im Bruch, oder teilen Sie es erst in mehr Bahnen.',
  }),
  'no-fold': ({ piece }, say) => ({
    message: `${say.thing(piece)} hat keinen Bruch, um den es sich aufklappen ließe.`,
    remedy: 'Machen Sie seine Mittelkante zum Bruch, oder lassen Sie es, wie es ist.',
  }),
  'several-folds': ({ piece, folds }, say) => ({
    message: `${say.thing(piece)} hat ${folds.length} Brüche: ${say.things(folds)}.`,
    remedy: 'Lassen Sie nur den Bruch, um den aufgeklappt wird.',
  }),
  'unfold-not-straight': ({ edge, offMm }, say) => ({
    message: `${say.thing(edge)} ist ein Bruch und weicht um ${say.slight(offMm)} von einer Geraden ab.`,
    remedy: 'Zeichnen Sie den Bruch gerade; Stoff lässt sich nur entlang einer Geraden falten.',
  }),
  'seam-followed': ({ seam, how }, say) => ({
    message: `${say.thing(seam)} ${say.saying(how)}.`,
    remedy: 'Nichts zu tun.',
  }),
  'seam-to-check': ({ seam, how }, say) => ({
    message: `${say.thing(seam)} ${say.saying(how)}.`,
    remedy: 'Prüfen Sie, wo sie beginnt und wie ihre Passzeichen liegen.',
  }),
};

/** How a seam goes on: after its name. */
export const opened: Sentences<UnfoldSentences> = {
  'separated-pair': ({ piece, other, count }, say) =>
    `${say.thing(piece)} und sein Spiegelbild, ${say.thing(other)}, sind jetzt eigene Teile, je ${count}-mal mit der rechten Seite nach oben zugeschnitten.`,
  'seam-sewn-twice': ({ second }, say) =>
    `wird jetzt zweimal genäht: ${say.thing(second)} verbindet die gespiegelte Hälfte`,
  'seam-one-run-across-fold': () => 'läuft jetzt über den Bruch hinweg weiter',
  'seam-both-halves': () => 'ist jetzt eine Naht über den Bruch hinweg, mit beiden Hälften',
  'seam-left-at-fold': () => 'blieb, wie sie war, obwohl sie in ihrer Mitte auf den Bruch trifft',
  'seam-begins-elsewhere': () => 'ist ein Ring, der nicht mehr am Bruch beginnt',
};
