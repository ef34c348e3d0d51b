import type { LapelSentences, LapelTellings } from '@paperhinge/alter/sayings';
import type { Sentences, Tellings } from '../catalogue.js';

/** Revers und die Kragen, die mit ihnen umbrechen. */
export const lapels: Tellings<LapelTellings> = {
  'front-edge-not-at-neck': ({ edge, neck, beside }, say) => ({
    message: `${say.thing(edge)} stößt nicht an den Hals: ${say.thing(neck)}.`,
    remedy: `Nennen Sie die Vorderkante, die daran stößt: Daneben liegen ${say.list(beside.map(one => say.written(one.edge ?? one.dart ?? one.pleat ?? '')))}.`,
  }),
  'lapel-on-fold': ({ edge }, say) => ({
    message: `${say.thing(edge)} liegt im Stoffbruch, dort lässt sich nichts umschlagen.`,
    remedy:
      'Öffnen Sie sie erst mit „add button stand“: Ein Revers bricht an der Kante eines offenen Vorderteils um.',
  }),
  'break-at-neck': ({ edge }, say) => ({
    message: `Der Umbruch läge am Halsende: ${say.thing(edge)}. Dort kann kein Revers umbrechen.`,
    remedy: 'Legen Sie ihn tiefer an die Vorderkante: auf die Höhe des obersten Knopfes.',
  }),
  'break-at-hem': ({ edge }, say) => ({
    message: `Der Umbruch läge am unteren Ende: ${say.thing(edge)}. Unter dem Revers bliebe nichts von der Kante.`,
    remedy: 'Legen Sie ihn höher an die Vorderkante: auf die Höhe des obersten Knopfes.',
  }),
  'break-at-shoulder-level': ({ edge }, say) => ({
    message: `Von dieser Stelle liefe die Umbruchlinie durch das Halsende an der Schulter: ${say.thing(edge)}.`,
    remedy: 'Legen Sie den Umbruch tiefer an die Vorderkante, oder lassen Sie den Kragen höher stehen.',
  }),
  'neck-not-whole': ({ neck, along }, say) => ({
    message: `${say.things(along)} und ${say.thing(neck)} sind nicht der ganze Hals, von der hinteren Mitte bis vorn.`,
    remedy:
      'Nennen Sie alle Kanten des hinteren Halses: die über die Schulternaht auf den vorderen Hals folgen.',
  }),
  'notch-beyond-gorge': ({ notchMm, gorgeMm }, say) => ({
    message: `Ein Einschnitt von ${say.length(notchMm)} passt nicht an die obere Reverskante, die ${say.length(gorgeMm)} lang ist.`,
    remedy: 'Machen Sie den Einschnitt kleiner oder das Revers breiter.',
  }),
  'lapel-crosses': ({ piece }, say) => ({
    message: `Nach diesen Maßen würden die Linien des Revers andere kreuzen: ${say.thing(piece)}.`,
    remedy: 'Machen Sie das Revers schmaler, oder legen Sie den Umbruch tiefer an die Vorderkante.',
  }),
  'no-roll-line': ({ piece, line }, say) => ({
    message: `${say.thing(piece)} hat keine Bruchlinie ${say.written(line)}, an der der Kragen umbrechen könnte.`,
    remedy: 'Zeichnen Sie erst das Revers, mit „cut lapel“.',
  }),
  'gorge-not-last': ({ along }, say) => ({
    message: `${say.things(along)} laufen nicht von der hinteren Mitte bis an den Hals eines Vorderteils mit Revers.`,
    remedy: 'Nennen Sie alle Kanten des hinteren Halses und den Hals des Vorderteils.',
  }),
  'no-shoulder-beside': ({ piece, beside }, say) => ({
    message: `Der vordere Beleg muss vom Saum bis an die Schulter laufen (${say.thing(piece)}); seine Kanten enden neben ${say.things(beside)}.`,
    remedy: 'Nennen Sie alle Kanten von der Vorderkante bis an die Schulter, eine nach der anderen.',
  }),
  'rolling-not-along': ({ edge }, say) => ({
    message: `${say.thing(edge)} gehört nicht zu den Kanten, denen der Beleg folgt.`,
    remedy: 'Nennen Sie von diesen Kanten die, die nach außen umbrechen, oder lassen Sie „rolling“ weg.',
  }),
};

export const lapelsDone: Sentences<LapelSentences> = {
  'cut-lapel': ({ piece, widthMm, frontMm, gorgeMm, notchMm }, say) =>
    `${say.thing(piece)} hat ein ${say.length(widthMm)} breites Revers, das ${say.length(frontMm)} über dem Saum umbricht; der Kragen wird an ${say.length(gorgeMm)} Hals genäht, bis an den Einschnitt von ${say.length(notchMm)}.`,
  'grown-shawl-collar': ({ piece, neckMm, layMm, widthMm, outerMm }, say) =>
    `Ein Schalkragen wurde angezeichnet (${say.thing(piece)}): Halskante ${say.length(neckMm)}, um ${say.length(layMm)} ausgelegt, hinten ${say.length(widthMm)} breit; die Außenkante ist ${say.length(outerMm)} lang.`,
};
